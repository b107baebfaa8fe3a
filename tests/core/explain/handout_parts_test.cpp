// SPDX-License-Identifier: MIT
#include "core/explain/handout.h"
#include "tests/support/sketches.h"
#include "tests/support/steps.h"

#include <gtest/gtest.h>

namespace tailpoint {
namespace TAILPOINT_FILE {

using namespace testing;

Handout handoutOf(const Sketch& sketch, const ExplainOptions& options = {}) {
    Handout handout;
    const Solved solved = solve(sketch);
    for (std::size_t i = 0; i < std::max<std::size_t>(1, solved.solutions.size()); ++i)
        handout.answers.push_back(explain(sketch, solved, construct(sketch, solved, i), i, options));
    return handout;
}

std::vector<std::string> keys(const HandoutPart& part) {
    std::vector<std::string> out;
    for (const Step* step : part.steps)
        out.push_back(testing::keyOf(*step));
    return out;
}

using Keys = std::vector<std::string>;

TEST(HandoutParts, OneAnswerIsOneSolution) {
    const Handout raft = handoutOf(sketch({force("P", 340, 25), force("Q", 275, -40)}));
    const auto parts = partsOf(raft);
    ASSERT_EQ(parts.size(), 1U);
    EXPECT_EQ(parts[0].heading, "Solution");
    EXPECT_EQ(parts[0].steps.size(), raft.answers[0].steps.size());
}

/// Told twice is only what differs, and in the order in which it was worked out: also where the answers
/// differ in the sense along a line.
TEST(HandoutParts, TwoAnswersShareTheirWorkingAndAreToldTogether) {
    for (const Sketch& two :
         {sketch({force("P", kToFind, 40), force("Q", 260, kToFind)}, force("R", 400, 10)),
          sketch({either(force("P", kToFind, 115)), force("Q", 320, kToFind)}, force("R", 300, 10)),
          sketch({either(force("P", kToFind, -65)), force("Q", 320, kToFind)}, force("R", 300, 10)),
          sketch({force("P", 300, kToFind), force("Q", 400, kToFind)}, force("R", 500, 0))}) {
        const Handout handout = handoutOf(two);
        const auto parts = partsOf(handout);
        ASSERT_EQ(parts.size(), 3U);
        const Keys shared = keys(parts[0]);
        EXPECT_EQ(shared.front(), "given");
        EXPECT_EQ(shared.back(), "answer");
        for (std::size_t i : {1U, 2U}) {
            EXPECT_EQ(parts[i].heading, "Answer " + std::to_string(i) + " of 2");
            EXPECT_EQ(keys(parts[i]), Keys{"check"});
        }
        EXPECT_EQ(parts[1].first, shared.size() + 1);
        EXPECT_EQ(parts[2].first, shared.size() + 2);
    }
}

TEST(HandoutParts, ByHandTheCostOfTheRoundingBelongsToEachAnswer) {
    ExplainOptions options;
    options.handRounding = true;
    const Handout handout =
        handoutOf(sketch({force("P", kToFind, 40), force("Q", 260, kToFind)}, force("R", 400, 10)), options);
    const auto parts = partsOf(handout);
    ASSERT_EQ(parts.size(), 3U);
    EXPECT_EQ(keys(parts[2]), (Keys{"check", "rounding"}));
}

TEST(HandoutParts, AnExerciseHasNone) {
    Handout handout = handoutOf(sketch({force("P", 340, 25), force("Q", 275, -40)}));
    handout.solution = false;
    EXPECT_TRUE(partsOf(handout).empty());
}

} // namespace TAILPOINT_FILE
} // namespace tailpoint
