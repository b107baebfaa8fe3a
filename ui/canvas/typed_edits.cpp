#include "ui/canvas/typed_edits.h"

#include "core/quantity/decimals.h"
#include "core/quantity/typed.h"
#include "core/sketch/shown.h"
#include "ui/canvas/force_edits.h"
#include "ui/canvas/words.h"

#include <QRegularExpression>
#include <QStringList>

namespace tailpoint {

namespace {

Refused refused(const TypedError& error) {
    return {QString::fromStdString(error.message)};
}

std::string utf8(const QString& text) {
    return text.trimmed().toStdString();
}

/// "340 N at 25°" in two; the second is empty without "at".
std::pair<QString, QString> splitAtDirection(const QString& text) {
    static const QRegularExpression at(QStringLiteral("\\s+(?:at|@)\\s+|\\s*[@;]\\s*"));
    const qsizetype found = text.indexOf(at);
    if (found < 0) {
        return {text, {}};
    }
    const qsizetype length = at.match(text, found).capturedLength();
    return {text.left(found), text.mid(found + length)};
}

Direction directionFrom(const TypedDirection& typed) {
    Direction direction;
    direction.plusMinus = typed.plusMinus;
    switch (typed.form) {
    case TypedDirection::Form::angle:
        direction.form = AngleForm{typed.angle};
        break;
    case TypedDirection::Form::slope:
        direction.form = SlopeForm{typed.run, typed.rise};
        break;
    case TypedDirection::Form::bearing:
        direction.form = BearingForm{typed.from, typed.degrees, typed.toward};
        break;
    }
    return direction;
}

QString withTolerance(const QString& text, const std::optional<double>& plusMinus) {
    return plusMinus ? QStringLiteral("%1 ± %2").arg(text, QString::fromStdString(shortest(*plusMinus)))
                     : text;
}

std::optional<double> axisFrom(const QString& text) {
    static const QStringList names{QStringLiteral("+x"), QStringLiteral("+y"), QStringLiteral("-x"),
                                   QStringLiteral("-y")};
    QString plain = text;
    plain.replace(QChar(0x2212), QLatin1Char('-'));
    if (plain == QLatin1String("x") || plain == QLatin1String("y")) {
        plain.prepend(QLatin1Char('+'));
    }
    const qsizetype named = names.indexOf(plain);
    if (named >= 0) {
        return 90.0 * static_cast<double>(named);
    }
    plain.remove(QChar(0x00B0));
    const Typed<double> number = parseNumber(utf8(plain));
    const double* degrees = std::get_if<double>(&number);
    return degrees != nullptr ? std::optional(*degrees) : std::nullopt;
}

std::optional<Sense> senseFrom(const QString& text) {
    static const QStringList ccw{QStringLiteral("ccw"), QStringLiteral("counter-clockwise"),
                                 QStringLiteral("counterclockwise"), QStringLiteral("anticlockwise")};
    static const QStringList cw{QStringLiteral("cw"), QStringLiteral("clockwise")};
    if (ccw.contains(text)) {
        return Sense::ccw;
    }
    return cw.contains(text) ? std::optional(Sense::cw) : std::nullopt;
}

} // namespace

Edited withTypedMagnitude(const Sketch& sketch, int vector, const QString& text) {
    const auto [size, direction] = splitAtDirection(text.trimmed());
    const Typed<TypedMagnitude> typed = parseMagnitude(utf8(size), sketch.forceUnit);
    if (const TypedError* error = std::get_if<TypedError>(&typed)) {
        return refused(*error);
    }
    Sketch after = sketch;
    const TypedMagnitude& magnitude = std::get<TypedMagnitude>(typed);
    forceAt(after, vector)->magnitude = {magnitude.value, magnitude.plusMinus};
    return direction.isEmpty() ? Edited(after) : withTypedDirection(after, vector, direction);
}

Edited withTypedDirection(const Sketch& sketch, int vector, const QString& text) {
    const Typed<TypedDirection> typed = parseDirection(utf8(text), sketch.angleUnit);
    if (const TypedError* error = std::get_if<TypedError>(&typed)) {
        return refused(*error);
    }
    Sketch after = sketch;
    forceAt(after, vector)->direction = directionFrom(std::get<TypedDirection>(typed));
    return after;
}

Edited withTypedName(const Sketch& sketch, int vector, const QString& text) {
    Sketch after = sketch;
    Force& force = *forceAt(after, vector);
    const std::string old = force.name;
    force.name = utf8(text);
    if (after.smallest == old) {
        after.smallest = force.name;
    }
    if (const std::optional<SketchFault> fault = firstFault(after)) {
        return Refused{QString::fromStdString(fault->message)};
    }
    return after;
}

Edited withTypedTitle(const Sketch& sketch, const QString& text) {
    Sketch after = sketch;
    after.title = utf8(text.simplified());
    return after;
}

Edited withTypedFigures(const Sketch& sketch, const QString& text) {
    static const QRegularExpression number(QStringLiteral("^\\s*(\\d{1,3})\\b"));
    const QRegularExpressionMatch match = number.match(text);
    const int figures = match.hasMatch() ? match.captured(1).toInt() : 0;
    if (figures < 1 || figures > kMostFigures) {
        return Refused{words::tr("Type a number of figures from 1 to %1.").arg(kMostFigures)};
    }
    Sketch after = sketch;
    after.figures = figures;
    return after;
}

Edited withTypedReference(const Sketch& sketch, const QString& text) {
    Sketch after = sketch;
    QStringList parts = text.toLower()
                            .remove(QLatin1String("from "))
                            .split(QRegularExpression(QStringLiteral("[,\\s]+")), Qt::SkipEmptyParts);
    if (!parts.isEmpty()) {
        if (const std::optional<Sense> sense = senseFrom(parts.last())) {
            after.reference.sense = *sense;
            parts.removeLast();
        }
    }
    const std::optional<double> axis = parts.size() == 1 ? axisFrom(parts.first()) : std::nullopt;
    if (!axis && !parts.isEmpty()) {
        return Refused{words::tr("Type an axis such as +x, -y or 35 (degrees), then ccw or cw.")};
    }
    after.reference.axisDegrees = axis.value_or(sketch.reference.axisDegrees);
    return after;
}

QString typedMagnitude(const Sketch& sketch, int vector) {
    const Magnitude& magnitude = forceAt(sketch, vector)->magnitude;
    if (!magnitude.value) {
        return {};
    }
    const QString number = QString::fromStdString(shortest(*magnitude.value));
    const QString unit = QString::fromUtf8(symbolOf(sketch.forceUnit).data());
    return QStringLiteral("%1 %2").arg(withTolerance(number, magnitude.plusMinus), unit);
}

QString typedDirection(const Sketch& sketch, int vector) {
    const Direction& direction = forceAt(sketch, vector)->direction;
    QString text;
    if (const AngleForm* angle = std::get_if<AngleForm>(&direction.form)) {
        const QString number = QString::fromStdString(shortest(angle->value));
        text = sketch.angleUnit == AngleUnit::deg ? number + QChar(0x00B0) : number;
    } else if (const SlopeForm* slope = std::get_if<SlopeForm>(&direction.form)) {
        text = QStringLiteral("%1 : %2").arg(QString::fromStdString(shortest(slope->run)),
                                             QString::fromStdString(shortest(slope->rise)));
    } else if (const BearingForm* bearing = std::get_if<BearingForm>(&direction.form)) {
        text = QStringLiteral("%1%2%3")
                   .arg(QLatin1Char(bearing->from))
                   .arg(QString::fromStdString(shortest(bearing->degrees)))
                   .arg(QLatin1Char(bearing->toward));
    }
    return text.isEmpty() ? text : withTolerance(text, direction.plusMinus);
}

QString typedReference(const Sketch& sketch) {
    const QString sense = sketch.reference.sense == Sense::ccw ? QStringLiteral("ccw") : QStringLiteral("cw");
    const QString named = QString::fromStdString(axisName(sketch.reference));
    const bool along = named.size() == 2; // "+x" and its like, not "35.0° axis"
    const QString axis = along ? named : QString::fromStdString(shortest(sketch.reference.axisDegrees));
    return QStringLiteral("%1 %2").arg(axis, sense);
}

} // namespace tailpoint
