// SPDX-License-Identifier: MIT
// Rounding outward to doubles, by no more than the rounding.
#pragma once

#include <cmath>
#include <limits>

namespace tailpoint {

inline double down(double value) {
    return value == 0 ? 0.0 : std::nextafter(value, -std::numeric_limits<double>::infinity());
}
inline double up(double value) {
    return value == 0 ? 0.0 : std::nextafter(value, std::numeric_limits<double>::infinity());
}
/// Never above `value`, never minus zero.
inline double downward(long double value) {
    const double rounded = static_cast<double>(value);
    return rounded > value ? down(rounded) : rounded + 0.0;
}
/// Never below it.
inline double upward(long double value) {
    const double rounded = static_cast<double>(value);
    return rounded < value ? up(rounded) : rounded + 0.0;
}

} // namespace tailpoint
