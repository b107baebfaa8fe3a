// SPDX-License-Identifier: MIT
// All is given: what the rounding of given values can leave over of an equation that holds.
#pragma once

#include "core/solve/solve.h"

namespace tailpoint {

/// In the sheet's force unit. A given sum other than zero is held to be the result, rounded as it is shown,
/// of forces that are as typed: its tip may lie off by half of one in the last place of its magnitude along
/// it, and by the same of its direction across it. Of forces that are to balance any may be rounded: together
/// they may leave n times half of one in the last place of the greatest, and for each its magnitude times the
/// sine of half of one in the last place of an angle.
struct RoundingRoom {
    double along = 0, across = 0; ///< of a sum; both the whole of what balance may leave
    double half = 0;      ///< of one in the last place of the magnitude: the sum's, or the greatest force's
    double halfAngle = 0; ///< of one in the last place of an angle, sheet's angle unit
};
/// Precondition: everything is given.
RoundingRoom roundingRoom(const Sketch& sketch);

/// With what was found typed in, unrounded.
Sketch filledIn(const Sketch& sketch, const Solution& solution);

/// Whether a difference along and across the sum (of balance: its length, and zero) is no more than that.
bool isWithin(const RoundingRoom& room, double along, double across);

} // namespace tailpoint
