// SPDX-License-Identifier: MIT
// The same letter is the same angle in figure and worked solution, whichever way it is told.
#include "core/construct/construct.h"
#include "core/explain/explain.h"
#include "core/figure/compose.h"
#include "tests/core/explain/questions.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <set>

namespace tailpoint::testing {
namespace TAILPOINT_FILE {

struct Asked {
    Sketch sketch;
    std::size_t solution = 0;
    ExplainOptions options{};
    Solved solved = solve(sketch);
    Construction construction = construct(sketch, solved, solution);
    Things things{sketch};

    std::vector<AngleName> inFigure() const {
        return namesOfAnswer(sketch, things, solved, construction, solution, options.parallelograms);
    }
    /// A force found to be zero leaves no triangle to bear letters.
    bool isFlat() const {
        const auto& triangle = construction.triangle;
        return triangle && std::any_of(triangle->opposite.begin(), triangle->opposite.end(),
                                       [](const auto& angle) { return !angle; });
    }
    /// As its steps bring them in; of two answers without what the other one's step says. Three angles round
    /// the common point that only check a missing force are the solution's alone.
    std::vector<AngleName> inWords() const {
        const Worked worked = explain(sketch, solved, construction, solution, options);
        const StepKey others = solution == 0 ? StepKey::second : StepKey::first;
        const bool standTails =
            construction.parallelogram.has_value() || solved.family == Family::twoMagnitudes;
        std::vector<AngleName> names;
        for (const Step& step : worked.steps)
            for (const AngleName& name : step.angles)
                if (step.key != others &&
                    (name.angle.what != What::between || name.angle.part > 0 || standTails))
                    names.push_back(name);
        return names;
    }
};

/// The last word on an angle counts, as in a figure.
const AngleName* lastFor(const std::vector<AngleName>& names, const QuantityId& angle) {
    const auto found = std::find_if(names.rbegin(), names.rend(),
                                    [&](const AngleName& name) { return isSame(name.angle, angle); });
    return found == names.rend() ? nullptr : &*found;
}

/// How many letters of the solution were looked up.
std::size_t expectSameLetters(const Asked& asked) {
    if (asked.isFlat())
        return 0;
    const auto words = asked.inWords(), figure = asked.inFigure();
    for (const AngleName& name : words) {
        const AngleName *said = lastFor(words, name.angle), *drawn = lastFor(figure, name.angle);
        if (!drawn)
            ADD_FAILURE() << said->symbol.base << said->symbol.sub << " has no letter in the figure";
        else
            EXPECT_EQ(drawn->symbol, said->symbol) << drawn->symbol.base << " for " << said->symbol.base;
    }
    std::set<std::string> letters;
    for (const AngleName& name : figure)
        EXPECT_TRUE(letters.insert(name.symbol.base + "_" + name.symbol.sub).second) << name.symbol.base;
    return words.size();
}

TEST(AngleNames, AreThoseOfTheWorkedSolutionWhicheverWayItIsTold) {
    constexpr int kEach = 100; // of each kind, by three methods, both answers
    std::size_t looked = 0;
    for (int kind = 0; kind < kQuestionKinds; ++kind)
        for (int number = 0; number < kEach; ++number) {
            Dice dice(static_cast<unsigned>(7000 + kind * kEach + number));
            const Sketch sketch = someQuestion(dice, kind);
            for (std::size_t answer = 0; answer < solve(sketch).solutions.size(); ++answer)
                for (const Method method : {Method::suited, Method::triangle, Method::components}) {
                    SCOPED_TRACE("kind " + std::to_string(kind) + " number " + std::to_string(number) +
                                 " answer " + std::to_string(answer) + " " + std::string(nameOf(method)));
                    ExplainOptions options;
                    options.method = method;
                    options.parallelograms = method == Method::triangle;
                    looked += expectSameLetters({sketch, answer, options});
                }
            if (HasFailure())
                return;
        }
    EXPECT_GT(looked, 5000u);
}

TEST(AngleNames, AFlatTriangleHasNone) {
    EXPECT_TRUE(Asked{sketch({force("P", 40, 30), force("Q", 50, 30)})}.inFigure().empty());
}

} // namespace TAILPOINT_FILE
} // namespace tailpoint::testing
