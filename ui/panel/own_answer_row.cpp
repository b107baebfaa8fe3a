// SPDX-License-Identifier: MIT
#include "ui/panel/own_answer_row.h"

#include "core/sketch/shown.h"

#include "ui/style/symbols.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QLineEdit>
#include <QToolButton>
#include <QVBoxLayout>
#include <algorithm>

namespace tailpoint {

namespace {

constexpr int kAnswerField = 108, kLeastField = 64, kRowGap = 6; // pixels

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

bool isBearing(const Answerable& of, const Sketch& sketch) {
    return of.id.what == What::direction && !bearingWords(0, sketch).empty();
}

QString vectorWords(VectorId vector, const Things& things) {
    const QString name = text(things.name(vector));
    if (vector.kind == VectorId::Kind::known)
        return OwnAnswerRow::tr("%1, the known forces together,").arg(name);
    return vector.kind == VectorId::Kind::partial
               ? OwnAnswerRow::tr("%1, the first %2 forces together,").arg(name).arg(vector.index + 1)
               : name;
}

/// What a quantity is, without a letter of its own.
QString meaningOf(const QuantityId& id, const Things& things) {
    const QString vector = vectorWords(id.of, things);
    switch (id.what) {
    case What::magnitude:
        return OwnAnswerRow::tr("Magnitude of %1").arg(vector);
    case What::direction:
        return id.part == 0 ? OwnAnswerRow::tr("Direction of %1").arg(vector)
                            : OwnAnswerRow::tr("Direction in which %1 acts").arg(vector);
    case What::fromX:
        return OwnAnswerRow::tr("Direction of %1 from +x, counter-clockwise,").arg(vector);
    case What::x:
        return OwnAnswerRow::tr("Component of %1 along x").arg(vector);
    case What::y:
        return OwnAnswerRow::tr("Component of %1 along y").arg(vector);
    case What::along:
        return OwnAnswerRow::tr("Component of %1 along the line").arg(vector);
    case What::between:
        return OwnAnswerRow::tr("Angle between %1 and %2").arg(vector, vectorWords(id.with, things));
    case What::opposite:
        return OwnAnswerRow::tr("Angle of the triangle opposite to %1").arg(vector);
    case What::acute:
        return id.part == kOfInverseSine
                   ? OwnAnswerRow::tr("Angle that the inverse sine gives opposite to %1").arg(vector)
                   : OwnAnswerRow::tr("Acute angle between %1 and the x axis").arg(vector);
    case What::distance:
        return id.part == 0 ? OwnAnswerRow::tr("Distance of the circle's centre from the line")
                            : OwnAnswerRow::tr("Half the chord that the circle cuts off the line");
    default:
        return text(inPrint(things.symbol(id)));
    }
}

} // namespace

QString spokenName(const Answerable& of, const Sketch& sketch, const Things& things) {
    if (isBearing(of, sketch))
        return OwnAnswerRow::tr("%1 as a bearing").arg(meaningOf(of.id, things));
    const QString unit = of.dimension == Dimension::angle && sketch.angleUnit == AngleUnit::deg
                             ? OwnAnswerRow::tr("degrees")
                             : unitText(of.dimension, sketch);
    return OwnAnswerRow::tr("%1 in %2").arg(meaningOf(of.id, things), unit);
}

/// One field below the other, for the first answer and the second.
void OwnAnswerRow::addFields(const Sketch& sketch, const QString& spoken, std::size_t answers) {
    const QString name = text(m_of.name);
    m_form = answers == 2 ? tr("first") : isBearing(m_of, sketch) ? tr("N/S 0.0 E/W") : QString();
    const QString form =
        isBearing(m_of, sketch) ? tr("Type a bearing: N or S, the angle from there, E or W. Enter marks it")
        : answers == 2
            ? tr("Type a value, with a unit of its own if you like; the order of the two answers doesn't "
                 "matter. Enter marks it")
            : tr("Type a value, with a unit of its own if you like; where you have two answers, put a "
                 "semicolon between them. Enter marks it");
    for (std::size_t answer = 0; answer < answers; ++answer) {
        auto* field = new QLineEdit;
        field->setObjectName((answer == 0 ? QStringLiteral("ownField-") : QStringLiteral("ownSecond-")) +
                             name);
        field->setMinimumWidth(kLeastField);
        field->setMaximumWidth(kAnswerField);
        field->setAccessibleName(answers == 1  ? spoken
                                 : answer == 0 ? tr("%1, first answer").arg(spoken)
                                               : tr("%1, second answer").arg(spoken));
        field->setPlaceholderText(answer == 0 ? m_form : tr("second"));
        field->setToolTip(form);
        connect(field, &QLineEdit::textEdited, this,
                [this, answer](const QString& typedText) { emit typed(typedText, answer); });
        connect(field, &QLineEdit::returnPressed, this, &OwnAnswerRow::entered);
        m_fields << field;
    }
}

OwnAnswerRow::OwnAnswerRow(const Answerable& of, const Sketch& sketch, const Things& things,
                           std::size_t answers)
    : m_of(of), m_symbol(new QLabel(symbolHtml(things.symbol(of.id)))),
      m_unit(new QLabel(isBearing(of, sketch) ? QString() : unitText(of.dimension, sketch))),
      m_verdict(new QLabel) {
    const QString name = text(of.name), symbol = text(inPrint(things.symbol(of.id)));
    m_symbol->setFont(symbolFont(m_symbol->font()));
    addFields(sketch, spokenName(of, sketch, things), answers);
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
    auto* column = new QVBoxLayout;
    column->setSpacing(2);
    for (QLineEdit* field : std::as_const(m_fields))
        column->addWidget(field);
    row->addLayout(column, 3);
    row->addWidget(m_unit);
    row->addWidget(m_verdict, 5);
    setVerdictLines(2);
    if (of.id.what == What::between || of.id.what == What::opposite) {
        m_point = smallButton(QStringLiteral("ownPoint-") + name, QStringLiteral("\u2220"),
                              OwnAnswerRow::tr("Point at %1 on the sheet").arg(symbol));
        row->insertWidget(row->indexOf(m_verdict), m_point);
        connect(m_point, &QToolButton::clicked, this, &OwnAnswerRow::pointing);
    }
    if (!of.asked) {
        m_remove = smallButton(QStringLiteral("ownRemove-") + name, QStringLiteral("\u00d7"),
                               OwnAnswerRow::tr("Leave out %1").arg(symbol));
        row->addWidget(m_remove);
        connect(m_remove, &QToolButton::clicked, this, &OwnAnswerRow::removed);
    }
}

void OwnAnswerRow::setVerdictLines(int lines) {
    const int fields = static_cast<int>(m_fields.size()) * (field()->sizeHint().height() + 2);
    setFixedHeight(std::max(fields, lines * m_verdict->fontMetrics().lineSpacing()) + 6);
}

int OwnAnswerRow::symbolWidth() const {
    return m_symbol->sizeHint().width();
}

void OwnAnswerRow::setSymbolWidth(int width) {
    m_symbol->setFixedWidth(width);
}

void OwnAnswerRow::setDrawn(const QString& reading, const QString& spoken) {
    field()->setPlaceholderText(reading.isEmpty() ? m_form : reading);
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
    for (QLineEdit* one : std::as_const(m_fields))
        one->setAccessibleDescription(parts.join(u'\n'));
}

QString OwnAnswerRow::verdict() const {
    return m_verdict->text();
}

void OwnAnswerRow::setVerdict(const QString& words, const QString& right, bool isFault) {
    const QString all = right.isEmpty() ? words : words + u'\n' + right;
    m_verdict->setText(all);
    m_verdict->setToolTip(all);
    m_verdict->setAccessibleName(all.isEmpty() ? QString()
                                               : field()->accessibleName() + QStringLiteral(": ") + all);
    m_verdict->setForegroundRole(isFault ? QPalette::BrightText : QPalette::WindowText);
    describe();
}

} // namespace tailpoint
