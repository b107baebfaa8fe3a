// SPDX-License-Identifier: MIT
// A problem's own pages, block by block, made from its sketch alone: nothing that knows an answer is
// included.
#pragma once

#include "core/practice/problem.h"
#include "core/sketch/things.h"
#include "ui/handout/handout_pages.h"
#include "ui/problems/exercise_figure.h"
#include "ui/problems/look.h"

namespace tailpoint {

/// Where a problem stands: what is printed above and below it.
struct ProblemPlace {
    QString title;   ///< of the sheet
    QString student; ///< empty: a line to write a name on
    std::size_t number = 1, count = 1;
};

/// What stands before each line for an answer: two of a question that wants both.
std::vector<std::string> answerHeads(const Problem& problem);
/// What is asked, by its symbol: each gets a line to write on.
std::vector<Formula> askedSymbols(const Sketch& sketch);

/// Behind those that are there.
void addGroups(std::vector<HandoutPages::Kept>& groups, std::vector<HandoutPages::Kept> more);

/// The blocks of one problem. `task`: what is handed out besides, above the room to work in (task_blocks.h).
std::vector<HandoutPages::Kept> problemGroups(const Problem& problem, const ProblemPlace& place,
                                              const ExerciseFigure& figure, bool grid, double width,
                                              std::vector<HandoutPages::Kept> task = {});
/// The exercise's figure as the look wants it. `width`: of the column, layout units.
ExerciseFigure figureOf(const Problem& problem, const SheetLook& look, double width,
                        double mostHeight = kMostExerciseHeight);

/// "Problem 3 · Raft at the quay".
std::string problemHeading(const Problem& problem, const ProblemPlace& place);

/// What the room below the figure is for, and how large its squares are.
std::string roomWords(const Problem& problem, const ExerciseFigure& figure, bool grid);

} // namespace tailpoint
