// SPDX-License-Identifier: MIT
// Angles and plane directions. One convention everywhere in core/:
//
//        y ^   counter-clockwise is positive,
//          |  / angle from +x; y points up.
//          | /)
//          +-----> x
#pragma once

#include "core/quantity/units.h"

#include <Eigen/Core>
#include <optional>

namespace tailpoint {

/// A direction as the pair (cos, sin) in extended precision, each within 2^-62 of the true value.
struct CosSin {
    long double cos = 1;
    long double sin = 0;
};

/// Cosine and sine of `value` (finite, any size) given in `unit`. Degrees and gon are reduced exactly before
/// evaluation, so multiples of 30 and 45 degrees (100/3 gon is not representable; 50 gon is) give exact
/// zeros, halves and ones, and the correctly rounded sqrt(2)/2, sqrt(3)/2.
CosSin cosSin(double value, AngleUnit unit);

/// `value` (finite) brought into (-half turn, half turn] of `unit`; exact in degrees and gon; never -0.
double normalized(double value, AngleUnit unit);

/// Direction of (x, y), counter-clockwise from +x, in `unit`, in (-half turn, half turn]. Exact at the
/// axes and diagonals in degrees and gon. Empty for the zero vector. Error at most 1 ulp.
std::optional<double> directionOf(long double x, long double y, AngleUnit unit);

/// Counter-clockwise angle from `a` to `b`, radians, in (-pi, pi]. Empty where either vector is zero.
/// Error at most kAngleErrorUlp of the result. Vectors within 1e-150 .. 1e150.
/// Source: atan2 of cross and dot, each a 2x2 determinant by Kahan's fma scheme; error analysis in
/// Jeannerod, Louvet, Muller, 'Further analysis of Kahan's algorithm ...', Math. Comp. 82 (2013).
std::optional<double> signedAngle(const Eigen::Vector2d& a, const Eigen::Vector2d& b);
inline constexpr double kAngleErrorUlp = 4;

/// `radians` expressed in `unit`, rounded once.
double fromRadians(double radians, AngleUnit unit);
double toRadians(double value, AngleUnit unit);
/// `value` in `from`, expressed in `to`. Unchanged bit for bit when the units are the same.
double convert(double value, AngleUnit from, AngleUnit to);

/// Full turn in `unit`: 360, 2*pi, 400.
double turnIn(AngleUnit unit);

} // namespace tailpoint
