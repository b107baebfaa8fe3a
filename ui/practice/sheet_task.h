// SPDX-License-Identifier: MIT
// What is to be done with the problems of a sheet: solve them, fill in the last lines of their solutions, or
// find the line that a slip has rewritten.
#pragma once

#include "core/practice/faded.h"
#include "ui/practice/problem_sheet.h"

namespace tailpoint {

/// What stands on the problem's page besides the question, and what its key says of it.
struct TaskOnPage {
    std::optional<FadedSolution> faded;
    std::optional<FlawedSolution> flawed;
    std::vector<Working> blank; ///< of `faded`, the blank lines as they should be
};

/// The same for the same sheet. Nothing is there on a sheet of questions, and no `flawed` where no slip can
/// be made in a line of this solution. Of a question with two answers it is the first one's solution. A faded
/// solution costs a tenth of a millisecond, a flawed one ten of them.
TaskOnPage taskOf(const ProblemSheet& sheet, std::size_t index);

/// What stands on the page of a solution: without what is given, which the statement says; lines that
/// calculate have their number in front ("(3)") where `numbered`, and blank ones are left out.
Worked shownOnPage(const TaskOnPage& task, bool numbered);
/// Of the flawed line among those that calculate, counted from 1. Precondition: there is one.
std::size_t flawedLine(const FlawedSolution& flawed);
/// As the page has it. Precondition as above.
const Working& workingOf(const FlawedSolution& flawed);

/// "R = √(…) = 520 N" on one line.
std::string lineText(const Working& working);

/// What the page asks for.
std::string taskWords(SheetTask task, bool bothAnswers);

} // namespace tailpoint
