// SPDX-License-Identifier: MIT
// A resultant of several forces, parallelogram by parallelogram: each takes the sum so far and the next
// force.
#pragma once

#include "core/construct/construct.h"

namespace tailpoint {

inline constexpr std::size_t kMostPaired = 6; ///< forces; beyond, the component table is the shorter way

/// Forces 1 and 2, their sum and force 3, and so on; the far corner of the last is the tip of the resultant.
/// `first` is the sum so far (by the name that Things gives it; the first force at the start),
/// `second` the next force. Empty unless the resultant of three to kMostPaired forces is asked for and each
/// pair opens a proper angle and leaves something to go on with, to kPairBand of their magnitudes.
std::vector<Parallelogram> pairsOf(const Sketch& sketch, const Solved& solved, std::size_t solution = 0);
inline constexpr double kPairBand = 1e-9; ///< below it the next angle would be rounding alone

} // namespace tailpoint
