// The numeric heart of solve/: fixed-size input and output, no strings, no allocation.
#pragma once

#include "core/quantity/angle.h"

#include <cfloat>
#include <cmath>

namespace tailpoint::kernel {

static_assert(LDBL_MANT_DIG >= 64, "the stated error bounds need at least 64 bits in long double");

/// Half an ulp of 1 in double.
inline constexpr double kUnitRoundoff = 0x1p-53;

struct Vec {
    long double x = 0, y = 0;
};
inline Vec operator+(Vec a, Vec b) {
    return {a.x + b.x, a.y + b.y};
}
inline Vec operator-(Vec a, Vec b) {
    return {a.x - b.x, a.y - b.y};
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
inline Vec along(const CosSin& unit) {
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
        magnitudes_ += magnitude;
        ++count_;
    }
    Vec value() const { return {x_.value(), y_.value()}; }
    long double magnitudes() const { return magnitudes_; } ///< sum of |F|, the scale of every band
    std::size_t count() const { return count_; }

private:
    Sum x_, y_;
    long double magnitudes_ = 0;
    std::size_t count_ = 0;
};

} // namespace tailpoint::kernel
