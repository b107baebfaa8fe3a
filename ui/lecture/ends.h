// SPDX-License-Identifier: MIT
// How a lecture begins and ends.
#pragma once

#include "core/explain/explain.h"

namespace tailpoint {

/// What is asked, as the sketch's file words it where it does, beside the bare given forces.
Step opening(const Sketch& sketch);
/// The answer, or both.
Step closing(const Sketch& sketch, std::vector<Prose> answers);

} // namespace tailpoint
