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

Outcome withTypedMagnitude(const Sketch& sketch, int vector, const QString& text) {
    const auto [size, direction] = splitAtDirection(text.trimmed());
    Outcome magnitude = typedInto(sketch, vector, Entry::magnitude, size);
    const Taken* taken = std::get_if<Taken>(&magnitude);
    return taken == nullptr || direction.isEmpty() ? magnitude
                                                   : withTypedDirection(taken->sketch, vector, direction);
}

Outcome withTypedDirection(const Sketch& sketch, int vector, const QString& text) {
    return typedInto(sketch, vector, Entry::direction, text);
}

Outcome withTypedName(const Sketch& sketch, int vector, const QString& text) {
    return typedInto(sketch, vector, Entry::name, text);
}

Outcome withTypedTitle(const Sketch& sketch, const QString& text) {
    Sketch after = sketch;
    after.title = utf8(text.simplified());
    return Taken{after, {}};
}

Outcome withTypedFigures(const Sketch& sketch, const QString& text) {
    static const QRegularExpression number(QStringLiteral("^\\s*(\\d{1,3})\\b"));
    const QRegularExpressionMatch match = number.match(text);
    const int figures = match.hasMatch() ? match.captured(1).toInt() : 0;
    if (figures < 1 || figures > kMostFigures) {
        return NotTaken{words::tr("Type a number of figures from 1 to %1.").arg(kMostFigures)};
    }
    Sketch after = sketch;
    after.figures = figures;
    return Taken{after, {}};
}

Outcome withTypedReference(const Sketch& sketch, const QString& text, Numbers numbers) {
    Reference reference = sketch.reference;
    QStringList parts = text.toLower()
                            .remove(QLatin1String("from "))
                            .split(QRegularExpression(QStringLiteral("[,\\s]+")), Qt::SkipEmptyParts);
    if (!parts.isEmpty()) {
        if (const std::optional<Sense> sense = senseFrom(parts.last())) {
            reference.sense = *sense;
            parts.removeLast();
        }
    }
    const std::optional<double> axis = parts.size() == 1 ? axisFrom(parts.first()) : std::nullopt;
    if (!axis && !parts.isEmpty()) {
        return NotTaken{words::tr("Type an axis such as +x, -y or 35 (degrees), then ccw or cw.")};
    }
    reference.axisDegrees = axis.value_or(sketch.reference.axisDegrees);
    return Taken{withReference(sketch, reference, numbers), {}};
}

QString typedMagnitude(const Sketch& sketch, int vector) {
    const QString value = editedText(sketch, vector, Entry::magnitude);
    const std::string_view unit = symbolOf(sketch.forceUnit);
    return value.isEmpty() ? value
                           : value + QChar::Space + QString::fromUtf8(unit.data(), qsizetype(unit.size()));
}

QString typedDirection(const Sketch& sketch, int vector) {
    const QString value = editedText(sketch, vector, Entry::direction);
    const bool degrees = std::holds_alternative<AngleForm>(forceAt(sketch, vector)->direction.form) &&
                         sketch.angleUnit == AngleUnit::deg;
    return degrees ? value + QChar(0x00B0) : value;
}

QString typedReference(const Sketch& sketch) {
    const QString sense = sketch.reference.sense == Sense::ccw ? QStringLiteral("ccw") : QStringLiteral("cw");
    const QString named = QString::fromStdString(axisName(sketch.reference));
    const bool along = named.size() == 2; // "+x" and its like, not "35.0° axis"
    const QString axis = along ? named : QString::fromStdString(shortest(sketch.reference.axisDegrees));
    return QStringLiteral("%1 %2").arg(axis, sense);
}

} // namespace tailpoint
