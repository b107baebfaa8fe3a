// SPDX-License-Identifier: MIT
// Angles and areas of a triangle from its three sides, right for needles too.
// Source: W. Kahan, 'Miscalculating Area and Angles of a Needle-like Triangle' (notes, 1999-2014).
// The parentheses matter: they keep every subtraction one that loses nothing.
#include "core/construct/construct.h"

#include <algorithm>
#include <cmath>

namespace tailpoint {
namespace {

/// Power of two that brings the longest side near 1, so that products neither overflow nor vanish.
int exponentOf(double longest) {
    int exponent = 0;
    std::frexp(longest, &exponent);
    return exponent;
}

bool areLengths(double a, double b, double c) {
    return std::isfinite(a) && std::isfinite(b) && std::isfinite(c) && a >= 0 && b >= 0 && c >= 0;
}

} // namespace

std::optional<double> angleFromSides(double a, double b, double c) {
    if (!areLengths(a, b, c))
        return std::nullopt;
    const int exponent = exponentOf(std::max({a, b, c}));
    a = std::ldexp(a, -exponent);
    b = std::ldexp(b, -exponent);
    c = std::ldexp(c, -exponent);
    if (a < b)
        std::swap(a, b);
    const double mu = b >= c ? c - (a - b) : b - (a - c);
    const double below = ((a - c) + b) * (a + (b + c));
    const double above = ((a - b) + c) * mu;
    if (b <= 0 || mu < 0 || below < 0 || (above == 0 && below == 0))
        return std::nullopt;
    return 2 * std::atan2(std::sqrt(above), std::sqrt(below));
}

std::optional<double> areaFromSides(double a, double b, double c) {
    if (!areLengths(a, b, c))
        return std::nullopt;
    std::array<double, 3> side{a, b, c};
    std::sort(side.begin(), side.end(), std::greater<>());
    const int exponent = exponentOf(side[0]);
    for (double& length : side)
        length = std::ldexp(length, -exponent);
    const auto [p, q, r] = side;
    const double slack = r - (p - q);
    if (slack < 0)
        return std::nullopt;
    const double product = (p + (q + r)) * slack * (r + (p - q)) * (p + (q - r));
    return std::ldexp(std::sqrt(product) / 4, 2 * exponent);
}

} // namespace tailpoint
