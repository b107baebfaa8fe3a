// SPDX-License-Identifier: MIT
// Other numbers for an open question: the same structure, new sensible values.
#pragma once

#include "core/sketch/sketch.h"

#include <cstdint>
#include <optional>

namespace tailpoint {

/// The same vectors, names, unknowns, forms, units and axis with new given values: magnitudes from two thirds
/// to one and a half times the old ones, as round as those; angles within the same quadrant, as round; slopes
/// with the same signs; bearings with the same letters. What stands along an axis stays, and values that were
/// equal stay equal. The new question has as many answers as the old one, in the same senses. The title, the
/// caution and unknown keys are kept, typed units and tolerances too; labels put by hand and cases are not.
/// Empty where everything is given, where nothing can be varied, or where no such numbers were found in 300
/// trials. The same arguments give the same sketch.
std::optional<Sketch> otherNumbers(const Sketch& sketch, std::uint32_t seed);

} // namespace tailpoint
