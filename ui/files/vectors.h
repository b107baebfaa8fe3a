// SPDX-License-Identifier: MIT
// A sketch's vectors by their indexes: into its forces, or kSumIndex.
#pragma once

#include "core/solve/solve.h"

#include <string>

namespace tailpoint {

/// Precondition: hasVector().
const Force& vectorOf(const Sketch& sketch, int vector);
Force& vectorOf(Sketch& sketch, int vector);
bool hasVector(const Sketch& sketch, int vector);
/// Who keeps a vector while the sketch may change (a menu, an open field) keeps its name and asks anew:
/// kNoVector where it has gone.
int vectorNamed(const Sketch& sketch, const std::string& name);

} // namespace tailpoint
