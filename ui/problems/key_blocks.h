// SPDX-License-Identifier: MIT
// A problem's entry in the key: what is right, the numbers that the common slips would give, and, if wished,
// the worked solution.
#pragma once

#include "core/practice/scheme.h"
#include "ui/handout/handout_pages.h"
#include "ui/problems/sheet_blocks.h"
#include "ui/problems/task_blocks.h"

namespace tailpoint {

/// A number of the margin's list.
struct MarginLine {
    std::string number; ///< "335 N"
    Formula symbol;     ///< of what it is
    int answer = 0;     ///< 1, 2: of which of two answers; 0: of either
    std::string points; ///< that the whole answer earns: "1"
    Prose slip;         ///< "sign of a component: P_x"
};
/// One list of all that is asked, ascending as a marker reads it; bearings, where directions are given so,
/// stand last, by their quadrant.
std::vector<MarginLine> marginOf(const Scheme& scheme);
/// How the list is to be read.
std::string marginNote(const Scheme& scheme);
std::string answerName(int answer);         ///< "", " (1st)", " (2nd)"
std::string pointsOf(const Scheme& scheme); ///< all that can be had: "2"

/// "R = 520 N and θ_R = 3.6°"; of a question with two answers one line each.
std::vector<Prose> answerLines(const Scheme& scheme);
/// "2 points: R 1, θ_R 1".
Prose pointsLine(const Scheme& scheme);

/// The worked solution, with its figure as a handout has it.
struct KeySolution {
    Handout handout;
    DisplayList figure;
};
/// `room`: points that are left on the page; where a figure can be read that is no higher, it is drawn so.
KeySolution keySolution(const Sketch& sketch, double room = kMostFigureHeight);

/// Where a slip is to be found, its line stands in place of the slips' numbers.
std::vector<HandoutPages::Kept> keyGroups(const Problem& problem, const ProblemPlace& place,
                                          const Scheme& scheme, const TaskOnPage& task, double width);
/// A solution's caution, in front of it.
std::vector<HandoutPages::Kept> keyCaution(const Problem& problem, double width);
/// Figure and steps.
std::vector<HandoutPages::Kept> solutionGroups(const Problem& problem, const KeySolution& solution,
                                               double width);
/// The head of a key, or of a student's part of it.
HandoutPages::Kept keyHead(const QString& title, const QString& student, double width);

} // namespace tailpoint
