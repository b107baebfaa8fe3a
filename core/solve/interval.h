// SPDX-License-Identifier: MIT
// Intervals rounded outward: whatever their ends say holds for all between them. Plain doubles.
#pragma once

#include <algorithm>
#include <cmath>

namespace tailpoint {

struct Interval {
    double low = 0, high = 0;

    bool has(double value) const { return low <= value && value <= high; }
    double farthest() const { return std::max(std::fabs(low), std::fabs(high)); } ///< from 0
};

/// Outward by the rounding of one operation.
inline Interval widened(double low, double high) {
    constexpr double kUnit = 0x1p-52, kTiny = 1e-300;
    return {low - kUnit * std::fabs(low) - kTiny, high + kUnit * std::fabs(high) + kTiny};
}

inline Interval operator-(Interval a) {
    return {-a.high, -a.low};
}
inline Interval operator+(Interval a, Interval b) {
    return widened(a.low + b.low, a.high + b.high);
}
inline Interval operator-(Interval a, Interval b) {
    return a + -b;
}
inline Interval operator*(Interval a, Interval b) {
    const auto [low, high] = std::minmax({a.low * b.low, a.low * b.high, a.high * b.low, a.high * b.high});
    return widened(low, high);
}
/// Precondition: b does not have 0.
inline Interval operator/(Interval a, Interval b) {
    return a * widened(1 / b.high, 1 / b.low);
}
inline Interval squared(Interval a) {
    const Interval square = a * a;
    return {std::max(0.0, square.low), square.high};
}
/// Of what is at least 0.
inline Interval root(Interval a) {
    const Interval made = widened(std::sqrt(std::max(0.0, a.low)), std::sqrt(std::max(0.0, a.high)));
    return {std::max(0.0, made.low), made.high};
}

struct IntervalVec {
    Interval x, y;
};
inline IntervalVec operator-(IntervalVec a) {
    return {-a.x, -a.y};
}
inline IntervalVec operator+(IntervalVec a, IntervalVec b) {
    return {a.x + b.x, a.y + b.y};
}
inline IntervalVec operator-(IntervalVec a, IntervalVec b) {
    return {a.x - b.x, a.y - b.y};
}
inline IntervalVec operator*(Interval s, IntervalVec a) {
    return {s * a.x, s * a.y};
}
inline Interval dot(IntervalVec a, IntervalVec b) {
    return a.x * b.x + a.y * b.y;
}
inline Interval cross(IntervalVec a, IntervalVec b) {
    return a.x * b.y - a.y * b.x;
}
inline IntervalVec leftOf(IntervalVec a) {
    return {-a.y, a.x};
}

} // namespace tailpoint
