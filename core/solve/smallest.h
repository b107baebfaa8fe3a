// The two questions of extreme value. Used inside solve/ only.
#pragma once

#include "core/solve/question.h"

namespace tailpoint {

/// Answers `sketch.smallest` (which must be set): the smallest force that puts the sum on a given line, or
/// the smallest sum that a force of given direction can leave. Both are perpendicular to that line.
void solveSmallest(Solved& solved, const Sketch& sketch, const Question& question);

} // namespace tailpoint
