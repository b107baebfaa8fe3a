// SPDX-License-Identifier: MIT
// A short way to give a force tolerances in tests.
#pragma once

#include "core/quantity/tolerance.h"
#include "core/sketch/sketch.h"

namespace tailpoint::testing {

/// The same force with ± so much of its magnitude and of its direction, in the sheet's units; 0: none.
inline Force loose(Force made, double magnitude, double direction) {
    if (magnitude > 0)
        made.magnitude.tolerance = plusMinus(magnitude);
    if (direction > 0)
        made.direction.tolerance = plusMinus(direction);
    return made;
}

} // namespace tailpoint::testing
