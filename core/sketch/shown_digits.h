// SPDX-License-Identifier: MIT
// Values set by hand, not typed: a drag or a key goes from one shown digit to the next, and what is kept is
// what is shown. Magnitudes in the sheet's force unit; directions `referred`: the sheet's angle unit, from
// its axis, in its sense.
#pragma once

#include "core/sketch/sketch.h"

namespace tailpoint {

/// Degrees counter-clockwise from +x, in (-180, 180].
double absoluteDegrees(double referred, const Sketch& sketch);
double referredFromAbsolute(double degrees, const Sketch& sketch);

/// The step of the last shown digit; of the magnitude 0 as of 1.
double lastDigitOfAngle(const Sketch& sketch);
double lastDigitOfMagnitude(double magnitude, const Sketch& sketch);

/// Sets a magnitude to the shown digits, in the sheet's unit; the tolerance stays.
void setShownMagnitude(Force& force, double magnitude, const Sketch& sketch);
/// Sets a direction to the shown digits. A bearing stays a bearing; a slope becomes an angle, since the run
/// and rise that somebody measured say nothing any more once the arrow was turned by hand.
void setShownDirection(Force& force, double referred, const Sketch& sketch);

} // namespace tailpoint
