// SPDX-License-Identifier: MIT
// Between a worked example and a bare problem: solutions with blank lines, each with a prompt for its
// principle (Atkinson, Renkl, Merrill, J. Educ. Psychol. 95, 774 (2003)); and worked solutions in which one
// line is rewritten by a slip, to be found and mended (McLaren, Adams, Mayer, Int. J. Artif. Intell. Educ.
// 25, 520 (2015)).
#pragma once

#include "core/explain/explain.h"
#include "core/mark/mark.h"
#include "core/sketch/things.h"

#include <span>

namespace tailpoint {

/// A working of a solution: of which step, and which of its workings.
struct WorkingPlace {
    std::size_t step = 0, working = 0;
    auto operator<=>(const WorkingPlace&) const = default;
};

/// Workings that calculate: with a subject and a value. In their order; what only checks the answer is not
/// among them.
std::vector<WorkingPlace> calculatedLines(const Worked& worked);

/// The question for the principle behind a step's lines: "Which law gives this line, and why …?"
std::string principlePrompt(const Step& step);

/// What comes next, and the question for its principle. A step that rests on a law names it in its title: of
/// such a one what the line gives is said instead. `subject`: of one of the step's workings.
Prose askedNext(const Step& step, const Formula& subject, const Things& things);

struct FadedLine {
    WorkingPlace place;
    std::string prompt; ///< for the principle: "Which law gives this line, and why?"
};
struct FadedSolution {
    Worked worked;                ///< blank lines keep their subject; what would tell them is taken out
    std::vector<FadedLine> blank; ///< in the solution's order
    bool onlyLaw = false;         ///< all are blank: what is left is 'Which law starts, and why?'
    std::string prompt;           ///< of `onlyLaw`
};

/// The last `blank` calculated lines are blank: their formula and number, the reasoning, the conclusions and
/// the notes of their steps, what else leads to them there, every later step and the answer. With as many as
/// there are, or more, nothing is left but the question for the law.
FadedSolution faded(const Worked& worked, std::size_t blank);

/// How many lines are blank on the sheet's problem `place` (from 1) of `count`, for a solution of so many
/// lines: one at first, and in the end all of them.
std::size_t risingBlanks(std::size_t place, std::size_t count, std::size_t lines);

/// A worked solution with one line rewritten by a slip; what follows from it carries its number on.
struct FlawedSolution {
    Worked worked;
    WorkingPlace flaw;
    std::string slip; ///< id
    Working right;    ///< the line as it should be
    Route route;      ///< of whose chain it is
    Prose mend;       ///< what to do instead
};

/// By a slip in the calculation of that sketch. Empty where that slip changes no line of the solution that
/// explain() tells, or its numbers have no answer. Where several lines can be changed by it the seed picks.
std::optional<FlawedSolution> flawed(const Sketch& sketch, std::string_view slip, std::uint32_t seed);

/// By one of the slips in the calculation: of those among `likely` and of the most frequent ones the seed
/// picks; where none of them changes a line, by the others, the more frequent first. Empty where none does.
std::optional<FlawedSolution> flawedBySome(const Sketch& sketch, std::span<const std::string_view> likely,
                                           std::uint32_t seed);

} // namespace tailpoint
