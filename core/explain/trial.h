// SPDX-License-Identifier: MIT
// Vectors put into the equation with numbers that are no answer's: what is left over of it. Internal to
// explain/.
#pragma once

#include "core/explain/board.h"

namespace tailpoint::explaining {

/// `way`: as the sheet says it. `sign`: 1 as a force, -1 on the other side of the equation or the other way.
struct Tried {
    Formula size, way;
    int sign = 1;
};

/// A line worked from its numbers alone: subject = numbers = result, to the places of the forces.
Working worked(const Board& board, Formula subject, Formula numbers);

/// Writes Δ_x, Δ_y and the magnitude that they make; returns that.
Formula writeTrial(const Board& board, Step& step, const std::vector<Tried>& tried);

} // namespace tailpoint::explaining
