// Numbers as people type them. Never guesses: what could be read two ways is refused with a reason.
#pragma once

#include "core/quantity/units.h"

#include <optional>
#include <string>
#include <string_view>
#include <variant>

namespace tailpoint {

/// Why a typed text was not taken: one short line, with the mend.
struct TypedError {
    std::string message;
};

template <class T>
using Typed = std::variant<T, TypedError>;

/// A finite decimal. One decimal mark, '.' or ','; '-', U+2212 or '+' in front; spaces, no-break and narrow
/// spaces as grouping in threes only; exponent allowed (1.5e3). Refused: two different marks, a repeated
/// mark, grouping not in threes, nan, inf, overflow, anything left over.
Typed<double> parseNumber(std::string_view text);

/// A magnitude with optional unit ("340", "1.2 kN", "75 lbf"), converted to `sheet`; with optional tolerance
/// "340 +- 5" / "340 ± 5". Negative is refused ('turn the direction round instead').
struct TypedMagnitude {
    double value = 0; ///< in the sheet's unit
    std::optional<double> plusMinus;
};
Typed<TypedMagnitude> parseMagnitude(std::string_view text, ForceUnit sheet);

/// A direction: an angle with optional unit ("25", "25°", "25 deg", "0.4 rad", "27.8 gon"), a slope
/// ("3:4", "3 : -4", run : rise) or a bearing ("N30E", "S 12.5 W", "N", "E").
struct TypedDirection {
    enum class Form { angle, slope, bearing } form = Form::angle;
    double angle = 0; ///< in the sheet's angle unit, from its axis in its sense
    std::optional<double> plusMinus;
    double run = 0, rise = 0;
    char from = 'N', toward = 'E'; ///< bearing: from N or S toward E or W
    double degrees = 0;            ///< bearing: 0..90
};
Typed<TypedDirection> parseDirection(std::string_view text, AngleUnit sheet);

} // namespace tailpoint
