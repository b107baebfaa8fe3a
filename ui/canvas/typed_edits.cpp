// SPDX-License-Identifier: MIT
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

/// Readings of a part of a text as readings of the whole.
Refused amid(Refused refused, const QString& before, const QString& after) {
    for (QString& reading : refused.readings) {
        reading = before + reading + after;
    }
    return refused;
}

/// What stands before and after a part of a text.
std::pair<QString, QString> around(const QString& text, const QString& part) {
    const qsizetype at = text.indexOf(part);
    return {text.left(at), text.mid(at + part.size())};
}

std::optional<double> namedAxis(const QString& text) {
    static const QStringList names{QStringLiteral("+x"), QStringLiteral("+y"), QStringLiteral("-x"),
                                   QStringLiteral("-y")};
    QString plain = text;
    plain.replace(QChar(0x2212), QLatin1Char('-'));
    if (plain == QLatin1String("x") || plain == QLatin1String("y")) {
        plain.prepend(QLatin1Char('+'));
    }
    const qsizetype named = names.indexOf(plain);
    return named >= 0 ? std::optional(90.0 * static_cast<double>(named)) : std::nullopt;
}

Refused noAxis() {
    return {words::tr("Type an axis such as +x, -y or 35 (degrees), then ccw or cw.")};
}

/// Degrees of an axis, or why not.
std::variant<double, Refused> axisFrom(const QString& text) {
    if (const auto named = namedAxis(text)) {
        return *named;
    }
    QString plain = text;
    plain.remove(QChar(0x00B0));
    const Typed<double> number = parseNumber(utf8(plain));
    if (const auto* degrees = std::get_if<double>(&number)) {
        return *degrees;
    }
    const auto& error = std::get<TypedError>(number);
    return error.readings.empty() ? noAxis() : refusedFor(error);
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
    const QString whole = text.trimmed();
    const auto [size, direction] = splitAtDirection(whole);
    Outcome magnitude = typedInto(sketch, vector, Entry::magnitude, size);
    if (direction.isEmpty()) {
        return magnitude;
    }
    if (auto* refused = std::get_if<Refused>(&magnitude)) {
        return amid(std::move(*refused), {}, whole.mid(size.size()));
    }
    Outcome both = withTypedDirection(std::get<Accepted>(magnitude).sketch, vector, direction);
    auto* refused = std::get_if<Refused>(&both);
    return refused ? amid(std::move(*refused), whole.left(whole.size() - direction.size()), {}) : both;
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
    return Accepted{after, {}};
}

Outcome withTypedFigures(const Sketch& sketch, const QString& text) {
    static const QRegularExpression number(QStringLiteral("^\\s*(\\d{1,3})\\s*[a-z]*\\s*$"),
                                           QRegularExpression::CaseInsensitiveOption);
    const QRegularExpressionMatch match = number.match(text);
    const int figures = match.hasMatch() ? match.captured(1).toInt() : 0;
    if (figures < 1 || figures > kMostFigures) {
        return Refused{words::tr("Type a number of figures from 1 to %1.").arg(kMostFigures)};
    }
    Sketch after = sketch;
    after.figures = figures;
    return Accepted{after, {}};
}

Outcome withTypedReference(const Sketch& sketch, const QString& text, Numbers numbers) {
    // A comma between digits is a decimal mark.
    static const QRegularExpression apart(QStringLiteral("(?:\\s|,(?!\\d)|(?<!\\d),)+"));
    Reference reference = sketch.reference;
    QString words = text.toLower();
    QStringList parts = words.remove(QLatin1String("from ")).split(apart, Qt::SkipEmptyParts);
    if (!parts.isEmpty()) {
        if (const std::optional<Sense> sense = senseFrom(parts.last())) {
            reference.sense = *sense;
            parts.removeLast();
        }
    }
    if (parts.size() > 1) {
        return noAxis();
    }
    if (!parts.isEmpty()) {
        auto axis = axisFrom(parts.first());
        if (auto* refused = std::get_if<Refused>(&axis)) {
            const auto [before, after] = around(words, parts.first());
            return amid(std::move(*refused), before, after);
        }
        reference.axisDegrees = std::get<double>(axis);
    }
    return Accepted{withReference(sketch, reference, numbers), {}};
}

QString typedMagnitude(const Sketch& sketch, int vector) {
    return forceAt(sketch, vector)->magnitude.typed ? editedText(sketch, vector, Entry::magnitude)
                                                    : keptText(sketch, vector, Entry::magnitude);
}

QString typedDirection(const Sketch& sketch, int vector) {
    const auto* angle = std::get_if<AngleForm>(&forceAt(sketch, vector)->direction.form);
    return sketch.angleUnit != AngleUnit::deg || (angle && angle->typed)
               ? editedText(sketch, vector, Entry::direction)
               : keptText(sketch, vector, Entry::direction);
}

QString typedReference(const Sketch& sketch) {
    const QString sense = sketch.reference.sense == Sense::ccw ? QStringLiteral("ccw") : QStringLiteral("cw");
    const QString named = QString::fromStdString(axisName(sketch.reference));
    const bool along = named.size() == 2; // "+x" and its like, not "35.0° axis"
    const QString axis = along ? named : QString::fromStdString(shortest(sketch.reference.axisDegrees));
    return QStringLiteral("%1 %2").arg(axis, sense);
}

} // namespace tailpoint
