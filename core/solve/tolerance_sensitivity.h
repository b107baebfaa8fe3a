// SPDX-License-Identifier: MIT
// How an answer follows small changes of the given values: derivatives of the vector equation itself.
#pragma once

#include "core/solve/solve.h"

#include <optional>
#include <vector>

namespace tailpoint::tolerance {

/// One vector's change for a change of one given value, all in the sheet's units; directions grow in the
/// sheet's sense.
struct Change {
    double magnitude = 0, direction = 0, x = 0, y = 0;
};

/// Of one given value.
struct InputSlope {
    int index = kSumIndex; ///< of its vector
    bool isDirection = false;
    std::vector<Change> vectors; ///< by all vectors of the equation: forces in order, the sum last
};

/// One answer's derivatives by every given magnitude and direction, at the given values, in the order of the
/// vectors, magnitude before direction. Empty where there are none: a tangent, a vector to be found that is
/// zero and has no direction, the force that is zero because it would have to push (smallest). Of
/// one unknown for two equations: of what leaves least over, at nothing left over.
///
/// Source: with F(x, p) = sum of forces - S = 0, dx/dp = -J^-1 dF/dp, J = dF/dx two by two, by Cramer's rule.
/// The smallest vector keeps square to its line: its direction turns with the line's.
using Sensitivity = std::optional<std::vector<InputSlope>>;
Sensitivity sensitivityOf(const Sketch& sketch, const Solved& solved, std::size_t answer);

} // namespace tailpoint::tolerance
