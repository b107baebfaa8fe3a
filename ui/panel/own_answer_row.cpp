#include "ui/panel/own_answer_row.h"

#include "ui/style/symbols.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QLineEdit>
#include <QToolButton>
#include <algorithm>

namespace tailpoint {

namespace {

constexpr int kField = 108, kLeastField = 64, kRowGap = 6; // pixels

QString unitText(Dimension dimension, const Sketch& sketch) {
    if (dimension == Dimension::force)
        return text(symbolOf(sketch.forceUnit));
    if (dimension == Dimension::angle)
        return sketch.angleUnit == AngleUnit::deg ? QStringLiteral("\u00b0") : text(nameOf(sketch.angleUnit));
    return {};
}

QToolButton* smallButton(const QString& objectName, const QString& sign, const QString& words) {
    auto* button = new QToolButton;
    button->setObjectName(objectName);
    button->setText(sign);
    button->setAutoRaise(true);
    button->setMinimumSize(24, 24);
    button->setAccessibleName(words);
    button->setToolTip(words);
    return button;
}

QFont symbolFont(QFont font) {
    font.setPointSizeF(font.pointSizeF() * 1.2);
    return font;
}

/// A name on the way, with where it stands in the figure.
QString placed(const Answerable& of, const Things& things) {
    const QString name = text(of.name), vector = text(things.name(of.id.of));
    if (of.id.what == What::between)
        return OwnAnswerRow::tr("%1, between %2 and %3,").arg(name, vector, text(things.name(of.id.with)));
    if (of.id.what == What::opposite)
        return OwnAnswerRow::tr("%1, opposite to %2,").arg(name, vector);
    return name;
}

} // namespace

QString spokenName(const Answerable& of, const Sketch& sketch, const Things& things) {
    const QString unit = of.dimension == Dimension::angle && sketch.angleUnit == AngleUnit::deg
                             ? OwnAnswerRow::tr("degrees")
                             : unitText(of.dimension, sketch);
    const QString vector = text(things.name(of.id.of));
    const QString name = of.id.what == What::magnitude   ? OwnAnswerRow::tr("Magnitude of %1").arg(vector)
                         : of.id.what == What::direction ? OwnAnswerRow::tr("Direction of %1").arg(vector)
                                                         : placed(of, things);
    return OwnAnswerRow::tr("%1 in %2").arg(name, unit);
}

OwnAnswerRow::OwnAnswerRow(const Answerable& of, const Sketch& sketch, const Things& things)
    : m_of(of), m_symbol(new QLabel(symbolHtml(things.symbol(of.id)))),
      m_unit(new QLabel(unitText(of.dimension, sketch))), m_verdict(new QLabel), m_field(new QLineEdit) {
    const QString name = text(of.name);
    m_symbol->setFont(symbolFont(m_symbol->font()));
    m_field->setObjectName(QStringLiteral("ownField-") + name);
    m_field->setMinimumWidth(kLeastField);
    m_field->setMaximumWidth(kField);
    m_field->setAccessibleName(spokenName(of, sketch, things));
    m_field->setToolTip(OwnAnswerRow::tr("Type a value, with a unit of its own if you like; where you have "
                                         "two answers, put a semicolon between them. Enter marks it"));
    m_verdict->setObjectName(QStringLiteral("ownVerdict-") + name);
    m_verdict->setWordWrap(true);
    m_verdict->setTextFormat(Qt::PlainText);
    m_verdict->setSizePolicy(QSizePolicy::Ignored, QSizePolicy::Ignored); // no verdict moves anything
    m_unit->setForegroundRole(QPalette::PlaceholderText);
    m_unit->setFixedWidth(std::max(m_unit->sizeHint().width(), fontMetrics().horizontalAdvance(u'M') * 2));
    auto* row = new QHBoxLayout(this);
    row->setContentsMargins(0, 0, 0, 0);
    row->setSpacing(kRowGap);
    row->addWidget(m_symbol);
    row->addWidget(new QLabel(QStringLiteral("=")));
    row->addWidget(m_field, 3);
    row->addWidget(m_unit);
    row->addWidget(m_verdict, 5);
    setVerdictLines(2);
    if (of.id.what == What::between || of.id.what == What::opposite) {
        m_point = smallButton(QStringLiteral("ownPoint-") + name, QStringLiteral("\u2220"),
                              OwnAnswerRow::tr("Point at %1 on the sheet").arg(name));
        row->insertWidget(row->indexOf(m_verdict), m_point);
        connect(m_point, &QToolButton::clicked, this, &OwnAnswerRow::pointing);
    }
    if (!of.asked) {
        m_remove = smallButton(QStringLiteral("ownRemove-") + name, QStringLiteral("\u00d7"),
                               OwnAnswerRow::tr("Leave out %1").arg(name));
        row->addWidget(m_remove);
        connect(m_remove, &QToolButton::clicked, this, &OwnAnswerRow::removed);
    }
    connect(m_field, &QLineEdit::textEdited, this, &OwnAnswerRow::typed);
    connect(m_field, &QLineEdit::returnPressed, this, &OwnAnswerRow::entered);
}

void OwnAnswerRow::setVerdictLines(int lines) {
    setFixedHeight(std::max(m_field->sizeHint().height(), lines * m_verdict->fontMetrics().lineSpacing()) +
                   6);
}

int OwnAnswerRow::symbolWidth() const {
    return m_symbol->sizeHint().width();
}

void OwnAnswerRow::setSymbolWidth(int width) {
    m_symbol->setFixedWidth(width);
}

void OwnAnswerRow::setDrawn(const QString& reading, const QString& spoken) {
    m_field->setPlaceholderText(reading);
    m_spoken = spoken;
    describe();
}

void OwnAnswerRow::setCanPoint(bool can) {
    if (m_point != nullptr)
        m_point->setEnabled(can);
}

/// Of the field, which has the keyboard when it is marked: what is drawn, and the verdict.
void OwnAnswerRow::describe() {
    QStringList parts;
    if (!m_spoken.isEmpty())
        parts << m_spoken;
    if (!m_verdict->text().isEmpty())
        parts << m_verdict->text();
    m_field->setAccessibleDescription(parts.join(u'\n'));
}

QString OwnAnswerRow::verdict() const {
    return m_verdict->text();
}

void OwnAnswerRow::setVerdict(const QString& words, const QString& right, bool isFault) {
    const QString all = right.isEmpty() ? words : words + u'\n' + right;
    m_verdict->setText(all);
    m_verdict->setToolTip(all);
    m_verdict->setAccessibleName(all.isEmpty() ? QString()
                                               : m_field->accessibleName() + QStringLiteral(": ") + all);
    m_verdict->setForegroundRole(isFault ? QPalette::BrightText : QPalette::WindowText);
    describe();
}

} // namespace tailpoint
