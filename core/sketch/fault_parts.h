// SPDX-License-Identifier: MIT
// Parts of firstFault(). Used inside sketch/ only.
#pragma once

#include "core/sketch/sketch.h"

namespace tailpoint {

/// The first fault of a force or the sum, its place relative to that vector (".magnitude").
std::optional<SketchFault> vectorFault(const Force& force, const Sketch& sketch);

/// The first fault of a sketch's cases. Precondition: the sketch itself has none.
std::optional<SketchFault> casesFault(const Sketch& sketch);

} // namespace tailpoint
