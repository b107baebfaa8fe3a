// SPDX-License-Identifier: MIT
#include "ui/window/title_block_dialog.h"

#include "ui/document/sketch_document.h"
#include "ui/style/symbols.h"

#include <QDialogButtonBox>
#include <QFormLayout>
#include <QLabel>
#include <QLineEdit>
#include <QVBoxLayout>

namespace tailpoint {

TitleBlockDialog::TitleBlockDialog(SketchDocument& document, QWidget* parent)
    : QDialog(parent), m_document(document), m_fault(new QLabel) {
    const Sketch& sketch = document.sketch();
    setObjectName(QStringLiteral("titleBlockDialog"));
    setAttribute(Qt::WA_DeleteOnClose);
    setWindowTitle(tr("Title block"));
    auto* column = new QVBoxLayout(this);
    auto* form = new QFormLayout;
    m_title = addField(*form, tr("&Title"), "blockTitle", sketch.title);
    m_drawn = addField(*form, tr("&Drawn by"), "blockDrawn", sketch.titleBlock.drawn);
    m_checked = addField(*form, tr("&Checked by"), "blockChecked", sketch.titleBlock.checked);
    m_revision = addField(*form, tr("&Revision"), "blockRevision", sketch.titleBlock.revision);
    column->addLayout(form);
    auto* note =
        new QLabel(tr("Every report, print and copy says it, with the file's name, the date and what "
                      "is assumed; students' exercises don't."));
    note->setWordWrap(true);
    note->setForegroundRole(QPalette::PlaceholderText);
    column->addWidget(note);
    m_fault->setObjectName(QStringLiteral("blockFault"));
    m_fault->setWordWrap(true);
    m_fault->setForegroundRole(QPalette::BrightText);
    m_fault->hide();
    column->addWidget(m_fault);
    auto* buttons = new QDialogButtonBox(QDialogButtonBox::Ok | QDialogButtonBox::Cancel);
    for (QAbstractButton* button : buttons->buttons()) {
        button->setIcon({});
    }
    connect(buttons, &QDialogButtonBox::accepted, this, &TitleBlockDialog::accept);
    connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
    column->addWidget(buttons);
}

QLineEdit* TitleBlockDialog::addField(QFormLayout& form, const QString& title, const char* name,
                                      const std::string& now) {
    auto* field = new QLineEdit(text(now));
    field->setObjectName(QLatin1String(name));
    field->setMinimumWidth(field->fontMetrics().averageCharWidth() * 44);
    form.addRow(title, field);
    return field;
}

void TitleBlockDialog::accept() {
    Sketch after = m_document.sketch();
    after.title = m_title->text().trimmed().toStdString();
    after.titleBlock = {m_drawn->text().trimmed().toStdString(), m_checked->text().trimmed().toStdString(),
                        m_revision->text().trimmed().toStdString()};
    if (after == m_document.sketch()) {
        QDialog::accept();
        return;
    }
    if (const auto fault = m_document.edit(after, tr("Title block"))) {
        m_fault->setText(QStringLiteral("\u25b2 %1: %2").arg(text(fault->place), text(fault->message)));
        m_fault->show();
        return;
    }
    QDialog::accept();
}

} // namespace tailpoint
