// SPDX-License-Identifier: MIT
// A problem with the marker that it was drawn with: whether its slips are told apart was asked of that.
// Internal to practice/.
#pragma once

#include "core/mark/mark.h"
#include "core/practice/problem.h"

namespace tailpoint {

struct DrawnProblem {
    Problem problem;
    Marker marker; ///< as its scheme has it: of the level's likely slips alone
};

namespace practising {

std::optional<DrawnProblem> drawProblem(const ProblemId& id); ///< as problem()
std::string givenText(const Sketch& sketch);                  ///< alike where isSameQuestion()

} // namespace practising
} // namespace tailpoint
