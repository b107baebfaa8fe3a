// What a gesture or a key makes of a sketch: sketch in, sketch out. Magnitudes in the sheet's force
// unit; directions `referred`: the sheet's angle unit, from its axis, in its sense.
#pragma once

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
/// Degrees counter-clockwise from +x, in (-180, 180].
double absoluteDegrees(double referred, const Sketch& sketch);
double referredFromAbsolute(double degrees, const Sketch& sketch);

/// The step of the last shown digit.
double lastDigitOfAngle(const Sketch& sketch);
double lastDigitOfMagnitude(double magnitude, const Sketch& sketch);

/// Sets a magnitude to the shown digits, in the sheet's unit; the tolerance stays.
void setShownMagnitude(Force& force, double magnitude, const Sketch& sketch);
/// Sets a direction to the shown digits. A bearing stays a bearing; a slope becomes an angle, since the run
/// and rise that somebody measured say nothing any more once the arrow was turned by hand.
void setShownDirection(Force& force, double referred, const Sketch& sketch);

/// The sketch with one more force, named by nextForceName.
Sketch withForce(const Sketch& sketch, const Polar& polar);

} // namespace tailpoint
