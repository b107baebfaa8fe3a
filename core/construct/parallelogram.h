// SPDX-License-Identifier: MIT
// The parallelogram on two vectors. Internal to construct/.
#pragma once

#include "core/construct/construct.h"
#include "core/construct/vectors.h"

namespace tailpoint {

/// `far`: the tip of the sum. Precondition: both vectors are complete().
Parallelogram parallelogramOf(const PlainVector& a, const PlainVector& b, const Eigen::Vector2d& far);

} // namespace tailpoint
