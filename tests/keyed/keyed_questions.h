// SPDX-License-Identifier: MIT
// Seeded questions whose worked solutions are keyed: every family, unit of force and of angle, reference,
// both roundings, both ways where there are two.
#pragma once

#include "core/explain/explain.h"
#include "tests/core/explain/questions.h"
#include "tests/keyed/report_lines.h"

#include <array>

namespace tailpoint::keyed {

struct Question {
    Sketch sketch;
    ExplainOptions options;
    Setting setting() const {
        const Angles angles = sketch.angleUnit == AngleUnit::deg   ? Angles::degrees
                              : sketch.angleUnit == AngleUnit::rad ? Angles::radians
                                                                   : Angles::gon;
        return {angles, sketch.figures, options.handRounding, sketch.moreAfterOne};
    }
};

inline Question someQuestion(testing::Dice& dice, std::uint64_t number) {
    Question made;
    made.sketch = testing::someQuestion(dice, static_cast<int>(number % testing::kQuestionKinds));
    made.sketch.forceUnit = static_cast<ForceUnit>(dice.whole(5));
    made.sketch.figures = 2 + static_cast<int>(dice.whole(5));
    made.sketch.moreAfterOne = dice.whole(4) == 0;
    made.sketch.angleDecimals = static_cast<int>(dice.whole(4));
    made.options.handRounding = dice.whole(4) == 0;
    made.options.parallelograms = dice.toss();
    made.options.method = std::array{Method::suited, Method::triangle, Method::components}[dice.whole(3)];
    return made;
}

/// All answers of a question, keyed.
inline Keyed keyed(const Question& question) {
    Keyed all;
    const Solved solved = solve(question.sketch);
    for (std::size_t i = 0; i < std::max<std::size_t>(1, solved.solutions.size()); ++i) {
        const Worked worked =
            explain(question.sketch, solved, construct(question.sketch, solved, i), i, question.options);
        Keyed one = keyReport(toText(worked, Minus::ascii), question.setting());
        all.tally += one.tally;
        all.wrong.insert(all.wrong.end(), one.wrong.begin(), one.wrong.end());
    }
    return all;
}

} // namespace tailpoint::keyed
