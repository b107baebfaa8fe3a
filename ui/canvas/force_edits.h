// SPDX-License-Identifier: MIT
// What a gesture or a key makes of a sketch: sketch in, sketch out. Magnitudes in the sheet's force
// unit; directions `referred`: the sheet's angle unit, from its axis, in its sense.
#pragma once

#include "core/sketch/shown_digits.h"
#include "core/solve/solve.h"

namespace tailpoint {

/// The force with this index, the sum for kSumIndex; null where there is none.
const Force* forceAt(const Sketch& sketch, int vector);
Force* forceAt(Sketch& sketch, int vector);
/// The same in an answer.
const SolvedForce* solvedAt(const Solution& solution, int vector);
/// Is there something given that a drag of its tip, of its body, changes?
bool tipCanMove(const Sketch& sketch, int vector);
bool bodyCanTurn(const Sketch& sketch, int vector);

/// Magnitude and direction of one vector.
struct Polar {
    double magnitude = 0;
    double referred = 0;
    bool operator==(const Polar&) const = default;
};

/// (x, y) along the sheet's axes as the sheet says it; the direction of the zero vector is 0.
Polar polarOf(const Eigen::Vector2d& v, const Sketch& sketch);

/// The sketch with one more force, named by nextForceName.
Sketch withForce(const Sketch& sketch, const Polar& polar);

} // namespace tailpoint
