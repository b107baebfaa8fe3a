// Given tolerances: an answer is computed from the values alone.
#pragma once

#include "core/explain/wording.h"
#include "core/sketch/sketch.h"

#include <optional>

namespace tailpoint {

/// That the answer does not have them in it; empty where none is given.
std::optional<Wording> toleranceNote(const Sketch& sketch);

} // namespace tailpoint
