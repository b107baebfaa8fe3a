// SPDX-License-Identifier: MIT
#include "core/quantity/typed.h"

#include "core/quantity/angle.h"
#include "core/quantity/typed_tolerance.h"

#include <algorithm>

namespace tailpoint {

using namespace typing;

namespace {

TypedError leftOver(std::string_view text, std::string_view word, std::string_view units) {
    return {TypedCode::unknownUnit, inQuotes(text) + ": " + (word.empty() ? "its end" : inQuotes(word)) +
                                        " is not a unit known here; use " + std::string(units)};
}

constexpr std::string_view kLoadUnitWords =
    "N, kN, daN, lbf (or lb), kip, kgf, tonf, short tonf, or of a mass kg, t";
constexpr std::string_view kAngleUnitWords = "deg (or °), rad, gon";

std::optional<LoadUnit> loadUnitTyped(std::string_view word) {
    if (word == "lb" || word == "lbs") {
        return ForceUnit::lbf;
    }
    if (word == "kips") {
        return ForceUnit::kip;
    }
    return loadUnitFrom(word);
}

// "kN"; "short tonf" is two words, with any spaces between.
std::string takeLoadUnit(Reader& reader) {
    std::string word = reader.takeLetters();
    if (word == "short") {
        reader.skipSpaces();
        word += ' ' + reader.takeLetters();
    }
    return word;
}

// A ton may be three masses and three forces.
TypedError whichTon(std::string_view text, std::string_view word) {
    return {TypedCode::unknownUnit,
            inQuotes(text) + ": which " + std::string(word) +
                "? Type t for a tonne's mass, tonf for its weight, short tonf for 2000 lbf"};
}

bool isSomeTon(std::string_view word) {
    return word == "ton" || word == "tons" || word == "tonne" || word == "tonnes" || word == "short ton" ||
           word == "short tons";
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

Typed<Part<LoadUnit>> takeLoad(Reader& reader, std::string_view text) {
    const Typed<double> number = takeNumber(reader, text);
    if (failed(number)) {
        return std::get<TypedError>(number);
    }
    reader.skipSpaces();
    const std::string word = takeLoadUnit(reader);
    const std::optional<LoadUnit> unit = loadUnitTyped(word);
    if (!word.empty() && !unit) {
        return isSomeTon(word) ? whichTon(text, word) : leftOver(text, word, kLoadUnitWords);
    }
    return Part<LoadUnit>{std::get<double>(number), unit};
}

using AngleParts = Part<AngleUnit>;

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

TypedError restIsLeft(std::string_view text, std::string_view example) {
    return {TypedCode::leftOver,
            inQuotes(text) + " goes on after what can be read; type " + std::string(example)};
}

// In the sheet's unit, or in percent.
Typed<std::optional<Tolerance>> takeAngleTolerance(Reader& reader, std::string_view text, AngleUnit unspoken,
                                                   AngleUnit sheet) {
    const auto read = takeTolerance<AngleUnit>(reader, text, [&] { return takeAngle(reader, text); });
    if (failed(read)) {
        return std::get<TypedError>(read);
    }
    const auto& parts = std::get<std::optional<ToleranceParts<AngleUnit>>>(read);
    if (!parts) {
        return std::optional<Tolerance>();
    }
    const auto side = [&](const AngleParts& part) {
        return parts->percent ? part.value : convert(part.value, part.unit.value_or(unspoken), sheet);
    };
    return std::optional(Tolerance{side(parts->plus), side(parts->minus), parts->percent});
}

constexpr std::string_view kDirectionExamples =
    "an angle such as 25, a slope such as 3:4 or a bearing such as N30E";

Typed<TypedDirection> finished(Reader& reader, TypedDirection direction, AngleUnit unspoken, AngleUnit sheet,
                               std::string_view text) {
    const auto tolerance = takeAngleTolerance(reader, text, unspoken, sheet);
    if (failed(tolerance)) {
        return std::get<TypedError>(tolerance);
    }
    direction.tolerance = std::get<std::optional<Tolerance>>(tolerance);
    reader.skipSpaces();
    if (!reader.atEnd()) {
        return restIsLeft(text, kDirectionExamples);
    }
    const bool percent = direction.tolerance && direction.tolerance->percent;
    if (percent && direction.form != TypedDirection::Form::angle) {
        return percentOfNoNumber(text);
    }
    return percent && direction.angle == 0 ? percentOfNothing(text) : Typed<TypedDirection>(direction);
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
    angle.unit = unit.value_or(sheet);
    return finished(reader, angle, unit.value_or(sheet), sheet, text);
}

// A number in a unit, as another of the same kind has it; empty for a mass and a force.
std::optional<double> inUnit(double value, const LoadUnit& from, const LoadUnit& to) {
    if (from.index() != to.index()) {
        return std::nullopt;
    }
    if (const auto* force = std::get_if<ForceUnit>(&from)) {
        return convert(value, *force, std::get<ForceUnit>(to));
    }
    const double own = kilogrammesPer(std::get<MassUnit>(from)),
                 other = kilogrammesPer(std::get<MassUnit>(to));
    return own == other ? value : value * own / other;
}

// One unit speaks for all numbers that have none: the value's own, else the first of the tolerance's.
Typed<TypedLoad> loadOf(const Part<LoadUnit>& value, const std::optional<ToleranceParts<LoadUnit>>& tolerance,
                        ForceUnit sheet, std::string_view text) {
    TypedLoad load{value.value, sheet, std::nullopt};
    if (!tolerance) {
        load.unit = value.unit.value_or(sheet);
        return load;
    }
    const auto spoken = tolerance->plus.unit ? tolerance->plus.unit : tolerance->minus.unit;
    load.unit = value.unit.value_or(spoken.value_or(sheet));
    if (tolerance->percent) {
        load.tolerance = Tolerance{tolerance->plus.value, tolerance->minus.value, true};
        return load.value == 0 ? percentOfNothing(text) : Typed<TypedLoad>(load);
    }
    const auto side = [&](const Part<LoadUnit>& part) {
        return inUnit(part.value, part.unit.value_or(load.unit), load.unit);
    };
    const auto plus = side(tolerance->plus), minus = side(tolerance->minus);
    if (!plus || !minus) {
        return TypedError{TypedCode::unitOfAnotherKind,
                          inQuotes(text) + " has a mass and a force in it; give both in one unit"};
    }
    load.tolerance = Tolerance{*plus, *minus, false};
    return load;
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

Typed<TypedLoad> parseLoad(std::string_view text, ForceUnit sheet) {
    const std::optional<std::u32string> points = soundCodePoints(text);
    if (!points) {
        return TypedError{TypedCode::notUtf8,
                          "this text is no UTF-8; type a magnitude such as 340 or 1.2 kN"};
    }
    Reader reader(*points);
    const Typed<Part<LoadUnit>> value = takeLoad(reader, text);
    if (failed(value)) {
        return std::get<TypedError>(value);
    }
    const auto tolerance = takeTolerance<LoadUnit>(reader, text, [&] { return takeLoad(reader, text); });
    if (failed(tolerance)) {
        return std::get<TypedError>(tolerance);
    }
    reader.skipSpaces();
    if (!reader.atEnd()) {
        return restIsLeft(text, "a magnitude such as 340, 1.2 kN or 340 +- 5");
    }
    if (std::get<Part<LoadUnit>>(value).value < 0) {
        return TypedError{TypedCode::negative,
                          inQuotes(text) + " is negative; turn the direction round instead"};
    }
    return loadOf(std::get<Part<LoadUnit>>(value),
                  std::get<std::optional<ToleranceParts<LoadUnit>>>(tolerance), sheet, text);
}

Typed<TypedMagnitude> parseMagnitude(std::string_view text, ForceUnit sheet) {
    const Typed<TypedLoad> read = parseLoad(text, sheet);
    if (failed(read)) {
        return std::get<TypedError>(read);
    }
    const auto& load = std::get<TypedLoad>(read);
    const auto* unit = std::get_if<ForceUnit>(&load.unit);
    if (unit == nullptr) {
        return TypedError{TypedCode::unitOfAnotherKind, inQuotes(text) + " is a mass; type a force, in " +
                                                            std::string(symbolOf(sheet)) + " say"};
    }
    const auto inSheets = [&](double value) { return convert(value, *unit, sheet); };
    TypedMagnitude magnitude{inSheets(load.value), std::nullopt};
    if (load.tolerance) {
        magnitude.tolerance = convertedTolerance(*load.tolerance, inSheets);
    }
    return magnitude;
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
