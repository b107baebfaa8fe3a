// SPDX-License-Identifier: MIT
// The two questions of extreme value. Used inside solve/ only.
#pragma once

#include "core/solve/question.h"

namespace tailpoint {

/// Answers `sketch.smallest` (which must be set): the smallest force that puts the sum on a given line, the
/// smallest one that balances, or makes a given sum, together with another force of given direction, or the
/// smallest sum that a force of given direction can leave. All are perpendicular to that line.
void solveSmallest(Solved& solved, const Sketch& sketch, const Question& question);

} // namespace tailpoint
