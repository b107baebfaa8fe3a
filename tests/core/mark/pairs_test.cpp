// SPDX-License-Identifier: MIT
// Pairs of slips: what is kept of them, and shared between a question and its wrong readings, is what each of
// them comes to by itself.
#include "core/mark/pairs.h"
#include "tests/core/explain/questions.h"

#include <algorithm>
#include <gtest/gtest.h>

namespace tailpoint::testing {
namespace TAILPOINT_FILE {

using namespace marking;

constexpr std::uint64_t kSeed = 20261201;

template <class Check>
void forEachQuestion(std::uint64_t count, Check check) {
    Dice dice(kSeed);
    for (std::uint64_t number = 0; number < count; ++number) {
        const Sketch sketch = someQuestion(dice, static_cast<int>(number % kQuestionKinds));
        const Question question(sketch, solve(sketch), {});
        if (question.refusal)
            continue;
        Alternatives alternatives(question);
        Pairs pairs(question, alternatives);
        check(number, question, alternatives, pairs);
    }
}

bool areSame(const Line& a, const Line& b) {
    const auto isSame = [](const Case& one, const Case& other) {
        return one.when == other.when && one.formula == other.formula;
    };
    return a.subject == b.subject &&
           std::equal(a.cases.begin(), a.cases.end(), b.cases.begin(), b.cases.end(), isSame);
}
bool areSame(const Rewrite& a, const Rewrite& b) {
    const auto isSame = [](const Change& one, const Change& other) {
        return one.line == other.line && areSame(one.now, other.now);
    };
    return std::equal(a.changes.begin(), a.changes.end(), b.changes.begin(), b.changes.end(), isSame);
}

TEST(MarkPairs, WhatIsKeptOfAPairIsWhatItComesTo) {
    std::size_t checked = 0;
    forEachQuestion(24, [&](std::uint64_t number, const Question& question, Alternatives&, Pairs& pairs) {
        for (std::size_t pair = 0; pair < pairs.all().size(); ++pair) {
            const Numbers numbers = pairs.numbersOf(pair);
            for (std::size_t cell = 0; cell < pairs.columns(); ++cell) {
                const double kept = pairs.value(pair, cell), anew = numbers.value[cell];
                if (!isThere(kept))
                    continue;
                ASSERT_LE(question.apart(cell, kept, anew), 1e-5 * std::max(1.0, std::abs(anew)))
                    << "seed " << kSeed << ", question " << number << ", pair " << pair;
                ++checked;
            }
        }
    });
    EXPECT_GT(checked, 10'000U);
}

TEST(MarkPairs, ASlipInAQuestionReadWronglyIsOneThatItsOwnChainHas) {
    std::size_t checked = 0;
    forEachQuestion(36, [&](std::uint64_t number, const Question& question, Alternatives& alternatives,
                            Pairs& pairs) {
        for (std::size_t pair = 0; pair < pairs.all().size(); pair += 7) {
            if (!pairs.all()[pair].isRead)
                continue;
            const Alternative& second = alternatives.at(pairs.slipsOf(pair).second);
            const SlipOrigin& origin = alternatives.origin(second);
            const Ways& ways = alternatives.ways(origin);
            const auto reduction = reductionOf(ways.sketch, ways.solved);
            const auto own =
                alternatives.slip(second).rewrites(Pattern{question, ways, ways.ways[origin.way], reduction});
            EXPECT_TRUE(std::any_of(own.begin(), own.end(),
                                    [&](const Rewrite& one) { return areSame(one, *origin.rewrite); }))
                << "seed " << kSeed << ", question " << number << ", " << alternatives.slip(second).id;
            ++checked;
        }
    });
    EXPECT_GT(checked, 500U);
}

TEST(MarkRounding, CarriedBySlopesItIsWhatEvaluatingAnewGives) {
    std::size_t checked = 0, off = 0;
    forEachQuestion(36, [&](std::uint64_t, const Question& question, Alternatives& alternatives, Pairs&) {
        for (const Alternative& one : alternatives.singles()) {
            const SlipOrigin& origin = alternatives.origin(one);
            if (!origin.rewrite)
                continue;
            const Way& way = question.own.ways[origin.way];
            const Alternatives::Run run = Alternatives::run(way, *origin.rewrite);
            Numbers slopes = alternatives.numbersIn(way, run.state), anew = slopes;
            Rounding(question, way).addTolerance(run.state, run.patches, kMostInSlip, slopes);
            question.addTolerance(way, run.state, run.patches, kMostInSlip, anew);
            for (std::size_t cell = 0; cell < question.cells(); ++cell, ++checked)
                off += std::abs(slopes.tolerance[cell] - anew.tolerance[cell]) >
                               0.02 * std::max(slopes.tolerance[cell], anew.tolerance[cell])
                           ? 1
                           : 0;
        }
    });
    EXPECT_GT(checked, 20'000U);
    EXPECT_LT(off * 100, checked) << off; // near the end of an inverse sine halves add up otherwise
}

TEST(MarkPairs, WhereForcesAreAddedTwoAtATimeThereAreNone) {
    std::size_t checked = 0;
    forEachQuestion(48, [&](std::uint64_t, const Question&, Alternatives& alternatives, Pairs& pairs) {
        for (std::size_t pair = 0; pair < pairs.all().size(); ++pair) {
            const SlipOrigin& origin = alternatives.origin(alternatives.at(pairs.slipsOf(pair).second));
            if (!origin.rewrite)
                continue;
            EXPECT_NE(alternatives.ways(origin).ways[origin.way].chain.route.way, Route::Way::parallelograms);
            ++checked;
        }
    });
    EXPECT_GT(checked, 10'000U);
}

} // namespace TAILPOINT_FILE
} // namespace tailpoint::testing
