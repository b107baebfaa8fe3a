// Lines of action and circles of possible tips, and where they meet.
#pragma once

#include "core/construct/construct.h"

namespace tailpoint {

std::vector<Locus> lociOf(const Sketch& sketch, const Solved& solved);
std::vector<Eigen::Vector2d> meetingsOf(const Solved& solved);

} // namespace tailpoint
