// SPDX-License-Identifier: MIT
// How a lecture begins and ends.
#pragma once

#include "core/explain/explain.h"

namespace tailpoint {

/// What is asked, in the question's own `words` where it has some, beside the bare given forces.
Step opening(const Sketch& sketch, const std::string& words);
/// The answer, or both.
Step closing(const Sketch& sketch, std::vector<Prose> answers);

} // namespace tailpoint
