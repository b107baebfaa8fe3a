// SPDX-License-Identifier: MIT
// Numbers as people type them. Never guesses: what could be read two ways is refused with a reason.
#pragma once

#include "core/quantity/tolerance.h"
#include "core/quantity/units.h"

#include <optional>
#include <string>
#include <string_view>
#include <variant>
#include <vector>

namespace tailpoint {

/// Why a typed text was not taken, as a code beside its words.
enum class TypedCode {
    notUtf8,
    unreadable,    ///< holds no number, or no direction, where one is due
    severalMarks,  ///< decimal marks
    strayedSpaces, ///< spaces that don't part groups of three
    twoReadings,   ///< a comma that may be a decimal mark or part thousands
    tooLarge,      ///< for a number of the machine
    tooSmall,
    unknownUnit,
    leftOver, ///< something behind the end
    negative, ///< a magnitude
    toleranceNotPositive,
    toleranceOneSided, ///< +5 without its -0
    tolerancePercent,  ///< not the same both ways, or of a slope or a bearing
    unitOfAnotherKind, ///< a mass where a force is due; a mass and a force in one text
    bearing,           ///< none: letters or angle
    pointsNowhere      ///< a slope of 0 : 0
};
inline constexpr std::size_t kTypedCodes = static_cast<std::size_t>(TypedCode::pointsNowhere) + 1;

/// Why a typed text was not taken: one short line, with the mend.
struct TypedError {
    TypedCode code;
    std::string message;
    /// Where a number in it reads two ways: the whole text with the one and with the other in its place.
    std::vector<std::string> readings{};
};

template <class T>
using Typed = std::variant<T, TypedError>;

/// A finite decimal. '-', U+2212, an en dash or '+' in front; exponent allowed (1.5e3).
/// Marks: a point alone is the decimal mark. A comma alone is one too (1,5; 0,125; 1234,567), but for one
/// that might part thousands, between one to three digits and exactly three (1,234): refused, with both
/// readings. Several commas part groups of three (1,234,567); of two sorts the one parts groups of three
/// before the other, which is the decimal mark (1,234.5; 1.234,5). Spaces, no-break and narrow ones too, part
/// groups of three. Refused: any other marks or spaces, nan, inf, overflow, anything left over.
Typed<double> parseNumber(std::string_view text);

// Behind a magnitude or a direction may stand a tolerance: "± 5" (+-, +/-), "± 5 %" of the value, or
// "+5/-0" ("+5 -0", the sides in any order, both said). Its unit is that of the value where it has none; one
// unit speaks for all numbers of a text.

/// A magnitude with optional unit, as it is typed: "340", "1.2 kN", "75 lbf", "850 kg ± 5 %", "1.5 short tonf
/// +0.1/-0". Negative is refused ('turn the direction round instead').
struct TypedLoad {
    double value = 0;
    LoadUnit unit = ForceUnit::N;       ///< the sheet's where none is typed
    std::optional<Tolerance> tolerance; ///< in that unit
};
Typed<TypedLoad> parseLoad(std::string_view text, ForceUnit sheet);

/// A force, converted to `sheet`; a mass is refused.
struct TypedMagnitude {
    double value = 0; ///< in the sheet's unit
    std::optional<Tolerance> tolerance;
};
Typed<TypedMagnitude> parseMagnitude(std::string_view text, ForceUnit sheet);

/// A direction: an angle with optional unit ("25", "25°", "25 deg", "0.4 rad", "27.8 gon"), a slope
/// ("3:4", "3 : -4", run : rise) or a bearing ("N30E", "S 12.5 W", "N", "E").
struct TypedDirection {
    enum class Form { angle, slope, bearing } form = Form::angle;
    double angle = 0;                   ///< in the sheet's angle unit, from its axis in its sense
    std::optional<Tolerance> tolerance; ///< in the sheet's angle unit; percent of an angle alone
    double run = 0, rise = 0;
    char from = 'N', toward = 'E';   ///< bearing: from N or S toward E or W
    double degrees = 0;              ///< bearing: 0..90
    AngleUnit unit = AngleUnit::deg; ///< in which an angle was typed
};
Typed<TypedDirection> parseDirection(std::string_view text, AngleUnit sheet);

} // namespace tailpoint
