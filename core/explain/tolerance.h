// SPDX-License-Identifier: MIT
// Given tolerances: the steps of a solution go by the values alone.
#pragma once

#include "core/explain/wording.h"
#include "core/sketch/sketch.h"

#include <optional>

namespace tailpoint {

/// That they do not have the tolerances in them; empty where none is given.
std::optional<Wording> toleranceNote(const Sketch& sketch);

} // namespace tailpoint
