// SPDX-License-Identifier: MIT
#include "ui/panel/bound_dialog.h"

#include "core/sketch/shown.h"
#include "ui/document/sketch_document.h"
#include "ui/panel/panel_parts.h"
#include "ui/panel/spoken_line.h"
#include "ui/style/symbols.h"

#include <QDialogButtonBox>
#include <QFormLayout>
#include <QLabel>
#include <QLineEdit>
#include <QVBoxLayout>

namespace tailpoint {

BoundDialog::BoundDialog(SketchDocument& document, int vector, QWidget* parent)
    : QDialog(parent), m_document(document), m_name(vectorOf(document.sketch(), vector).name) {
    const Sketch& sketch = document.sketch();
    const BoundTexts now = boundTexts(sketch, vector);
    setObjectName(QStringLiteral("boundDialog"));
    setAttribute(Qt::WA_DeleteOnClose);
    setWindowTitle(tr("Limit of %1").arg(text(m_name)));
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(20, 18, 20, 16);
    column->setSpacing(10);
    auto* form = new QFormLayout;
    m_limit = addField(*form, tr("&At most"), "boundLimit", now.limit,
                       tr("no limit; or such as 10 %1, 1 t").arg(text(symbolOf(sketch.forceUnit))));
    m_axis =
        addField(*form, tr("Permitted &direction"), "boundAxis", now.axis, tr("any; or an angle such as 90"));
    const QString reference = tr("An angle %1").arg(onScreen(referenceWords(sketch.reference)));
    m_axis->setToolTip(reference);
    m_axis->setAccessibleDescription(reference);
    m_within = addField(*form, tr("&Within, either way"), "boundWithin", now.within, tr("such as 20"));
    column->addLayout(form);
    auto* note = quietLabel(QStringLiteral("boundNote"));
    note->setText(tr("Typed by you, not rated data: rated loads come from the maker."));
    note->setWordWrap(true);
    column->addWidget(note);
    m_fault = new SpokenLine(QStringLiteral("boundFault"));
    m_fault->setWordWrap(true);
    m_fault->setForegroundRole(QPalette::BrightText);
    m_fault->setAlignment(Qt::AlignLeft | Qt::AlignTop);
    m_fault->setMinimumHeight(2 * m_fault->fontMetrics().lineSpacing()); // nothing moves when it speaks
    column->addWidget(m_fault);
    auto* buttons = new QDialogButtonBox(QDialogButtonBox::Ok | QDialogButtonBox::Cancel);
    for (QAbstractButton* button : buttons->buttons()) {
        button->setIcon({});
    }
    connect(buttons, &QDialogButtonBox::accepted, this, &BoundDialog::accept);
    connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
    column->addWidget(buttons);
}

QLineEdit* BoundDialog::addField(QFormLayout& form, const QString& title, const char* name,
                                 const QString& text, const QString& empty) {
    auto* field = new QLineEdit(text);
    field->setObjectName(QLatin1String(name));
    field->setPlaceholderText(empty);
    field->setMinimumWidth(field->fontMetrics().averageCharWidth() * 36);
    form.addRow(title, field);
    return field;
}

BoundTexts BoundDialog::typed() const {
    return {m_limit->text(), m_axis->text(), m_within->text()};
}

void BoundDialog::refuse(const QString& message) {
    m_fault->say(QStringLiteral("\u25b2 ") + message, message);
}

void BoundDialog::accept() {
    const int vector = vectorNamed(m_document.sketch(), m_name);
    if (vector == kNoVector) {
        refuse(tr("%1 is no longer in the sketch.").arg(text(m_name)));
        return;
    }
    if (typed() == boundTexts(m_document.sketch(), vector)) {
        QDialog::accept();
        return;
    }
    const Outcome outcome = withBounds(m_document.sketch(), vector, typed());
    if (const auto* refused = std::get_if<Refused>(&outcome)) {
        refuse(refused->message);
        return;
    }
    const QString step = tr("Limit %1").arg(text(m_name));
    if (const auto fault = m_document.edit(std::get<tailpoint::Accepted>(outcome).sketch, step)) {
        refuse(text(fault->message));
        return;
    }
    QDialog::accept();
}

} // namespace tailpoint
