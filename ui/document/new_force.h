// SPDX-License-Identifier: MIT
// One more force that nobody drew or typed: with the ones that are there it makes a figure worth looking at.
#pragma once

#include "core/sketch/sketch.h"

namespace tailpoint {

struct Result;

/// The sketch with one more given force, named by nextForceName(). The first is 25 degrees up from the right,
/// as seen, and four divisions long. Any other stands 40 to 110 degrees from its nearest neighbour, if there
/// is room, is about as large as the others, and neither it nor the new resultant covers another force. Both
/// values are round: multiples of 5 degrees, 5 gon or pi/36; of half a division or less. `division`: force
/// units in one division of the sheet, > 0.
Sketch withNewForce(const Result& result, double division);

} // namespace tailpoint
