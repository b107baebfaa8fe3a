// SPDX-License-Identifier: MIT
// Sides and angles of the triangle that two unknown directions make with what is known. Used inside
// solve/tolerance.
#pragma once

#include <algorithm>
#include <cmath>

namespace tailpoint::tolerance {

/// What rounding can make of cosineBeside(), as a part of its `size`. With u = 2^-53 the term with the
/// difference of squares has a relative error of at most 5u to first order (a difference, a sum, two
/// products, a division; doubling is exact), the other one of u, and their sum adds u: in all at most 6u of
/// both terms' sizes. The rest is for the second order, and for a leg that a root left rounded (of second
/// order too: there the cosine is least).
inline constexpr double kOfCosine = 16 * 0x1p-53;

struct Cosine {
    double value = 0, size = 0; ///< size: of its two terms together, at most |value| + 1
};

/// Of the angle between the sides a and b of a triangle, c opposite to it; beyond -1 or 1 where there is
/// none. All > 0, and no product of two overflows or vanishes. The difference of squares is taken at the
/// larger of a and b: its term is then at most a half larger than the cosine, however unequal the sides are.
/// (a a + b b - c c would lose the shorter side altogether.)
inline Cosine cosineBeside(double a, double b, double c) {
    const double large = std::max(a, b), small = std::min(a, b);
    const double one = (large - c) * (large + c) / (2 * large * small), other = small / (2 * large);
    return {one + other, std::fabs(one) + other};
}

} // namespace tailpoint::tolerance
