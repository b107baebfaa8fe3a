// SPDX-License-Identifier: MIT
// The numeric heart of solve/: fixed-size input and output, no strings, no allocation.
//
//   first + second = target       each side a vector with one unknown: a line of action or a circle of tips
//
#pragma once

#include "core/quantity/angle.h"

#include <array>
#include <cfloat>
#include <cmath>
#include <cstddef>

namespace tailpoint::kernel {

static_assert(LDBL_MANT_DIG >= 64, "the stated error bounds need at least 64 bits in long double");
static_assert(LDBL_MAX_EXP > 4096, "products of four magnitudes must stay in range");

/// Half an ulp of 1 in double: the precision of everything that is typed.
inline constexpr double kUnitRoundoff = 0x1p-53;
/// Lengths closer than this part of the scale (sum of all given magnitudes) are one: line and circle, or two
/// circles, touch instead of crossing or missing one another. Inputs moved by as much would make it so
/// exactly.
inline constexpr double kTangentBand = 16 * kUnitRoundoff;
/// Lines whose directions differ by less than this (sine) are parallel, for the same reason.
inline constexpr double kParallelBand = 16 * kUnitRoundoff;
/// A sum of n vectors within this times n times the sum of their magnitudes is zero and has no direction.
inline constexpr double kZeroBand = 4 * kUnitRoundoff;

/// Not Eigen's vector: 0 - x, as every difference here, never makes -0, where Eigen's negative does.
struct Vec {
    long double x = 0, y = 0;
};
inline Vec operator+(Vec a, Vec b) {
    return {a.x + b.x, a.y + b.y};
}
inline Vec operator-(Vec a, Vec b) {
    return {a.x - b.x, a.y - b.y};
}
inline Vec operator-(Vec a) {
    return {0.0L - a.x, 0.0L - a.y};
}
inline Vec operator*(long double s, Vec v) {
    return {s * v.x, s * v.y};
}
inline long double dot(Vec a, Vec b) {
    return a.x * b.x + a.y * b.y;
}
inline long double cross(Vec a, Vec b) {
    return a.x * b.y - a.y * b.x;
}
inline long double length(Vec v) {
    return std::hypot(v.x, v.y);
}
inline Vec leftOf(Vec v) {
    return {0.0L - v.y, v.x};
} ///< a quarter turn counter-clockwise
inline Vec vec(const CosSin& unit) {
    return {unit.cos, unit.sin};
}

/// A compensated sum. Source: A. Neumaier, 'Rundungsfehleranalyse einiger Verfahren zur Summation endlicher
/// Summen', ZAMM 54 (1974) 39-51.
class Sum {
public:
    void add(long double term) {
        const long double next = sum_ + term;
        rest_ += std::fabs(sum_) >= std::fabs(term) ? (sum_ - next) + term : (term - next) + sum_;
        sum_ = next;
    }
    long double value() const { return sum_ + rest_; }

private:
    long double sum_ = 0, rest_ = 0;
};

/// Vectors added up component by component, with the sum of their magnitudes beside it.
class VectorSum {
public:
    void add(Vec v, long double magnitude) {
        x_.add(v.x);
        y_.add(v.y);
        scale_ += magnitude;
        ++count_;
    }
    Vec value() const { return {x_.value(), y_.value()}; }
    long double scale() const { return scale_; } ///< sum of the magnitudes
    /// At or below this length the sum counts as zero.
    long double zero() const { return kZeroBand * static_cast<long double>(count_) * scale_; }
    /// The sum, or the zero vector within the band.
    Vec settled() const { return length(value()) <= zero() ? Vec{} : value(); }

private:
    Sum x_, y_;
    long double scale_ = 0;
    std::size_t count_ = 0;
};

/// A vector of which only the direction is given: its tips lie on a line (or ray) through its tail.
struct Line {
    Vec unit;
    bool ray = true; ///< only magnitudes >= 0 count when it is asked whether there is an answer at all
};
/// A vector of which only the magnitude (> 0) is given: its tips lie on a circle about its tail.
struct Circle {
    long double magnitude = 0;
};

/// One found vector: `magnitude` along `unit`, negative where a line is taken against its sense.
struct Found {
    Vec unit;
    long double magnitude = 0;
    Vec vector() const { return magnitude * unit; }
};
struct Root {
    Found first, second;
};

enum class Outcome {
    one,
    tangent, ///< one answer, where line or circles touch
    two,
    apart,   ///< none: the line misses the circle, the circles miss one another, the lines are parallel
    against, ///< none: parallel rays that both point away from the target
    endless
};
struct Roots {
    Outcome outcome = Outcome::apart;
    int count = 0;
    std::array<Root, 2> root;
    /// Sine of the angle at which the two loci cross, >= 0; where it is small, small changes move the answer
    /// far.
    long double sine = 1;
};

/// The target as far as the loci need it: a vector, the scale of all given magnitudes, zero already settled.
struct Target {
    Vec vector;
    long double scale = 0;
};

/// One wholly unknown vector. Zero target: magnitude 0 (and the unit vector +x, which means nothing).
Found close(const Target& target);
/// Two magnitudes to find. Where the target lies on one line, within the band, the other magnitude is zero.
Roots meet(const Line& first, const Line& second, const Target& target);
/// One magnitude, the other's direction to find. Root 0 lies farther along the line than root 1. A magnitude
/// is zero where the target is as long, within the band, as the circle is wide.
Roots meet(const Line& first, const Circle& second, const Target& target);
Roots meet(const Circle& first, const Line& second, const Target& target);
/// Two directions to find. In root 0 the first vector lies counter-clockwise of the target.
/// Source: W. Kahan, 'Miscalculating Area and Angles of a Needle-like Triangle', University of California,
/// Berkeley (notes, 1999-2014): differences of sorted sides, tangent of the half angle.
Roots meet(const Circle& first, const Circle& second, const Target& target);
/// The shortest `second` that closes the gap when `first` may have any magnitude on its line: perpendicular.
Root nearest(const Line& first, const Target& target);

} // namespace tailpoint::kernel
