// SPDX-License-Identifier: MIT
// Lines of action and circles of possible tips, and where they meet.
#pragma once

#include "core/construct/construct.h"

namespace tailpoint {

/// The two unknown vectors in the order in which their loci are drawn: the first from the common point, the
/// second back from what is left for both. A circle comes before a line, so that it is the circle of the tips
/// of its force.
std::array<int, 2> lociOrder(const Sketch& sketch, const Solved& solved);
/// Whether the question is answered where two loci meet.
bool lociMeet(const Solved& solved);
std::vector<Locus> lociOf(const Sketch& sketch, const Solved& solved);
std::vector<Eigen::Vector2d> meetingsOf(const Sketch& sketch, const Solved& solved);

} // namespace tailpoint
