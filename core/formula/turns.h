// SPDX-License-Identifier: MIT
// Full, half and quarter turn as numbers of a formula (isTurn), in the words of each unit.
#pragma once

#include "core/formula/formula.h"

namespace tailpoint {

Formula fullTurn(AngleUnit unit);    ///< 360°, 2π rad, 400 gon
Formula halfTurn(AngleUnit unit);    ///< 180°, π rad, 200 gon
Formula quarterTurn(AngleUnit unit); ///< 90°, π/2 rad, 100 gon

} // namespace tailpoint
