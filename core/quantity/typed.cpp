#include "core/quantity/typed.h"

#include "core/quantity/angle.h"
#include "core/quantity/typed_number.h"

#include <algorithm>

namespace tailpoint {

using namespace typing;

namespace {

// Skips "+-", "+/-" or the sign; false (and nothing skipped) where none stands there.
bool takePlusMinus(Reader& reader) {
    reader.skipSpaces();
    if (reader.takeIf(kPlusMinusSign)) {
        return true;
    }
    if (reader.peek() != '+') {
        return false;
    }
    const std::size_t slash = reader.peek(1) == '/' ? 1 : 0;
    const char32_t minus = reader.peek(1 + slash);
    if (minus != '-' && minus != kMinusSign) {
        return false;
    }
    for (std::size_t i = 0; i < 2 + slash; ++i) {
        reader.take();
    }
    return true;
}

TypedError leftOver(std::string_view text, std::string_view word, std::string_view units) {
    return {TypedCode::unknownUnit, inQuotes(text) + ": " + (word.empty() ? "its end" : inQuotes(word)) +
                                        " is not a unit known here; use " + std::string(units)};
}

constexpr std::string_view kForceUnitWords = "N, kN, lbf (or lb), kip, kgf";
constexpr std::string_view kAngleUnitWords = "deg (or °), rad, gon";

std::optional<ForceUnit> forceUnitTyped(std::string_view word) {
    if (word == "lb" || word == "lbs") {
        return ForceUnit::lbf;
    }
    if (word == "kips") {
        return ForceUnit::kip;
    }
    return forceUnitFrom(word);
}

std::optional<AngleUnit> takeAngleUnit(Reader& reader, std::string& word) {
    if (reader.takeIf(kDegreeSign)) {
        return AngleUnit::deg;
    }
    word = reader.takeLetters();
    if (word == "degree" || word == "degrees") {
        return AngleUnit::deg;
    }
    return angleUnitFrom(word);
}

struct MagnitudeParts {
    double value = 0;
    std::optional<ForceUnit> unit;
};

Typed<MagnitudeParts> takeMagnitude(Reader& reader, std::string_view text) {
    const Typed<double> number = takeNumber(reader, text);
    if (failed(number)) {
        return std::get<TypedError>(number);
    }
    reader.skipSpaces();
    const std::string word = reader.takeLetters();
    const std::optional<ForceUnit> unit = forceUnitTyped(word);
    if (!word.empty() && !unit) {
        return leftOver(text, word, kForceUnitWords);
    }
    return MagnitudeParts{std::get<double>(number), unit};
}

struct AngleParts {
    double value = 0;
    std::optional<AngleUnit> unit;
};

Typed<AngleParts> takeAngle(Reader& reader, std::string_view text) {
    const Typed<double> number = takeNumber(reader, text);
    if (failed(number)) {
        return std::get<TypedError>(number);
    }
    reader.skipSpaces();
    std::string word;
    const std::optional<AngleUnit> unit = takeAngleUnit(reader, word);
    if (!word.empty() && !unit) {
        return leftOver(text, word, kAngleUnitWords);
    }
    return AngleParts{std::get<double>(number), unit};
}

TypedError badTolerance(std::string_view text) {
    return {TypedCode::toleranceNotPositive,
            inQuotes(text) + " has a tolerance that is not above 0; type one such as 5 or leave it out"};
}

TypedError restIsLeft(std::string_view text, std::string_view example) {
    return {TypedCode::leftOver,
            inQuotes(text) + " has something left over at its end; type " + std::string(example)};
}

using MaybeTolerance = Typed<std::optional<double>>;

MaybeTolerance takeAngleTolerance(Reader& reader, std::string_view text, AngleUnit unspoken,
                                  AngleUnit sheet) {
    if (!takePlusMinus(reader)) {
        return std::optional<double>{};
    }
    const Typed<AngleParts> parts = takeAngle(reader, text);
    if (failed(parts)) {
        return std::get<TypedError>(parts);
    }
    const auto [value, unit] = std::get<AngleParts>(parts);
    if (!(value > 0)) {
        return badTolerance(text);
    }
    return std::optional<double>{convert(value, unit.value_or(unspoken), sheet)};
}

constexpr std::string_view kDirectionExamples =
    "an angle such as 25, a slope such as 3:4 or a bearing such as N30E";

Typed<TypedDirection> finished(Reader& reader, TypedDirection direction, AngleUnit unspoken, AngleUnit sheet,
                               std::string_view text) {
    const MaybeTolerance tolerance = takeAngleTolerance(reader, text, unspoken, sheet);
    if (failed(tolerance)) {
        return std::get<TypedError>(tolerance);
    }
    direction.plusMinus = std::get<std::optional<double>>(tolerance);
    reader.skipSpaces();
    if (!reader.atEnd()) {
        return restIsLeft(text, kDirectionExamples);
    }
    return direction;
}

char upper(char32_t c) {
    return static_cast<char>(c >= 'a' && c <= 'z' ? c - 32 : c);
}

bool isCompassLetter(char32_t c) {
    const char letter = upper(c);
    return letter == 'N' || letter == 'S' || letter == 'E' || letter == 'W';
}

TypedError badBearing(std::string_view text) {
    return {TypedCode::bearing,
            inQuotes(text) + " is no bearing; type N or S, 0 to 90 degrees, E or W, as in N30E"};
}

Typed<TypedDirection> takeBearing(Reader& reader, std::string_view text, AngleUnit sheet) {
    TypedDirection bearing;
    bearing.form = TypedDirection::Form::bearing;
    const char first = upper(reader.take());
    reader.skipSpaces();
    if (first == 'E' || first == 'W') {
        bearing.toward = first;
        bearing.degrees = 90;
        return finished(reader, bearing, sheet, sheet, text);
    }
    bearing.from = first;
    if (isDigit(reader.peek()) || isMark(reader.peek())) {
        const Typed<double> degrees = takeNumber(reader, text);
        if (failed(degrees)) {
            return std::get<TypedError>(degrees);
        }
        bearing.degrees = std::get<double>(degrees);
        reader.skipSpaces();
        reader.takeIf(kDegreeSign);
        reader.skipSpaces();
    } else if (isCompassLetter(reader.peek())) {
        bearing.degrees = 45;
    } else {
        return finished(reader, bearing, sheet, sheet, text);
    }
    bearing.toward = upper(reader.take());
    if (bearing.degrees > 90 || (bearing.toward != 'E' && bearing.toward != 'W')) {
        return badBearing(text);
    }
    return finished(reader, bearing, sheet, sheet, text);
}

Typed<TypedDirection> takeSlope(Reader& reader, double run, std::string_view text, AngleUnit sheet) {
    const Typed<double> rise = takeNumber(reader, text);
    if (failed(rise)) {
        return std::get<TypedError>(rise);
    }
    TypedDirection slope;
    slope.form = TypedDirection::Form::slope;
    slope.run = run;
    slope.rise = std::get<double>(rise);
    if (slope.run == 0 && slope.rise == 0) {
        return TypedError{TypedCode::pointsNowhere,
                          inQuotes(text) + " points nowhere; give run or rise a value other than 0"};
    }
    return finished(reader, slope, sheet, sheet, text);
}

Typed<TypedDirection> takeAngleOrSlope(Reader& reader, std::string_view text, AngleUnit sheet) {
    const Typed<AngleParts> parts = takeAngle(reader, text);
    if (failed(parts)) {
        return std::get<TypedError>(parts);
    }
    const auto [value, unit] = std::get<AngleParts>(parts);
    reader.skipSpaces();
    if (!unit && reader.takeIf(':')) {
        return takeSlope(reader, value, text, sheet);
    }
    TypedDirection angle;
    angle.angle = convert(value, unit.value_or(sheet), sheet);
    return finished(reader, angle, unit.value_or(sheet), sheet, text);
}

} // namespace

Typed<double> parseNumber(std::string_view text) {
    const std::optional<std::u32string> points = soundCodePoints(text);
    if (!points) {
        return TypedError{TypedCode::notUtf8, "this text is no UTF-8; type a number such as 340 or 1.5"};
    }
    Reader reader(*points);
    Typed<double> number = takeNumber(reader, text);
    reader.skipSpaces();
    if (!failed(number) && !reader.atEnd()) {
        return restIsLeft(text, "a number alone, such as 340 or 1.5");
    }
    return number;
}

Typed<TypedMagnitude> parseMagnitude(std::string_view text, ForceUnit sheet) {
    const std::optional<std::u32string> points = soundCodePoints(text);
    if (!points) {
        return TypedError{TypedCode::notUtf8,
                          "this text is no UTF-8; type a magnitude such as 340 or 1.2 kN"};
    }
    Reader reader(*points);
    const Typed<MagnitudeParts> first = takeMagnitude(reader, text);
    if (failed(first)) {
        return std::get<TypedError>(first);
    }
    MagnitudeParts value = std::get<MagnitudeParts>(first);
    std::optional<MagnitudeParts> tolerance;
    if (takePlusMinus(reader)) {
        const Typed<MagnitudeParts> second = takeMagnitude(reader, text);
        if (failed(second)) {
            return std::get<TypedError>(second);
        }
        tolerance = std::get<MagnitudeParts>(second);
    }
    reader.skipSpaces();
    if (!reader.atEnd()) {
        return restIsLeft(text, "a magnitude such as 340, 1.2 kN or 340 +- 5");
    }
    if (value.value < 0) {
        return TypedError{TypedCode::negative,
                          inQuotes(text) + " is negative; turn the direction round instead"};
    }
    if (tolerance && !(tolerance->value > 0)) {
        return badTolerance(text);
    }
    // One unit at the end speaks for both numbers.
    const ForceUnit unit = value.unit.value_or(tolerance ? tolerance->unit.value_or(sheet) : sheet);
    TypedMagnitude result{convert(value.value, unit, sheet), std::nullopt};
    if (tolerance) {
        result.plusMinus = convert(tolerance->value, tolerance->unit.value_or(unit), sheet);
    }
    return result;
}

Typed<TypedDirection> parseDirection(std::string_view text, AngleUnit sheet) {
    const std::optional<std::u32string> points = soundCodePoints(text);
    if (!points) {
        return TypedError{TypedCode::notUtf8, "this text is no UTF-8; type a direction such as 25"};
    }
    Reader reader(*points);
    reader.skipSpaces();
    if (isCompassLetter(reader.peek())) {
        return takeBearing(reader, text, sheet);
    }
    if (std::none_of(points->begin(), points->end(), isDigit)) {
        return unreadable(text, "a direction such as 25, 3:4 or N30E");
    }
    return takeAngleOrSlope(reader, text, sheet);
}

} // namespace tailpoint
