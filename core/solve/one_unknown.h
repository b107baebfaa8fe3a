// SPDX-License-Identifier: MIT
// One unknown for two equations. Used inside solve/ only.
#pragma once

#include "core/solve/question.h"

namespace tailpoint {

/// Answers a question with one unknown where both equations hold with it, by the rule that stands at solve();
/// else says by how much the best value misses. Precondition: one scalar is to be found.
void solveOneUnknown(Solved& solved, const Sketch& sketch, const Question& question);

} // namespace tailpoint
