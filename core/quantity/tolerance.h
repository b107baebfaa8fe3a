// SPDX-License-Identifier: MIT
// How far a given number may be off.
#pragma once

#include <optional>
#include <string>

namespace tailpoint {

/// Upwards and downwards, each >= 0 and one of them above 0: in the number's own unit, or in percent of its
/// size (then the same both ways).
struct Tolerance {
    double plus = 0, minus = 0;
    bool percent = false;
    bool operator==(const Tolerance&) const = default;
};

inline Tolerance plusMinus(double both) {
    return {both, both, false};
}
inline Tolerance plusMinusPercent(double both) {
    return {both, both, true};
}
inline bool isEven(const Tolerance& tolerance) {
    return tolerance.plus == tolerance.minus;
}

/// What `convert` makes of both ends; a percentage stays.
template <class Convert>
Tolerance convertedTolerance(const Tolerance& tolerance, Convert convert) {
    return tolerance.percent ? tolerance
                             : Tolerance{convert(tolerance.plus), convert(tolerance.minus), false};
}

/// A tolerance behind its number: "± 5 N", "± 5 %", "+5/-0 N"; with `eachUnit` "+2°/-0°".
std::string shownTolerance(const Tolerance& tolerance, const std::string& unit, bool eachUnit = false);
/// A number with its tolerance and what stands behind it (" N", "°" or nothing), in full, as it can be typed:
/// "340 ± 5 N", "340 N ± 5 %", "340 +5/-0 N"; with `eachUnit` "25° ± 0.5°", "25° +2°/-0°".
std::string withTolerance(const std::string& number, const std::optional<Tolerance>& tolerance,
                          const std::string& unit, bool eachUnit = false);

} // namespace tailpoint
