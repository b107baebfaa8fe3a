// SPDX-License-Identifier: MIT
#include "core/construct/pairs.h"
#include "tests/support/cases.h"
#include "tests/support/sketches.h"

#include <gtest/gtest.h>
#include <numbers>

namespace tailpoint::testing {
namespace TAILPOINT_FILE {

std::vector<Parallelogram> pairs(const Sketch& sketch) {
    return pairsOf(sketch, solve(sketch));
}

Sketch five() {
    return sketch({force("P", 340, 25), force("Q", 275, -40), force("S", 160, 118), force("T", 210, -152.5),
                   force("U", 95, 90)});
}

TEST(TwoAtATime, TakeTheSumSoFarAndTheNextForceUpToTheResultant) {
    const Sketch given = five();
    const Solved solved = solve(given);
    const auto made = pairsOf(given, solved);
    ASSERT_EQ(made.size(), 4U);
    const std::vector<std::string> firsts{"P", "K1", "K2", "K3"}, seconds{"Q", "S", "T", "U"};
    for (std::size_t i = 0; i < 4; ++i) {
        EXPECT_EQ(made[i].first, firsts[i]);
        EXPECT_EQ(made[i].second, seconds[i]);
        EXPECT_EQ(made[i].corners[1],
                  i > 0 ? made[i - 1].corners[2] : solved.solutions.at(0).forces[0].vector);
        EXPECT_LT((made[i].corners[1] + made[i].corners[3] - made[i].corners[2]).norm(), 1e-12 * 1080);
    }
    EXPECT_EQ(made.back().corners[2], solved.solutions.at(0).sum.vector);
}

TEST(TwoAtATime, TheirAnglesAreThoseBetweenTheTailsAndTheSupplements) {
    // 30 N and 40 N at right angles make 50 N at atan2(4, 3); the next force stands at 200 degrees.
    const auto made = pairs(sketch({force("P", 30, 0), force("Q", 40, 90), force("S", 20, 200)}));
    ASSERT_EQ(made.size(), 2U);
    const double between = 200 * std::numbers::pi / 180 - std::atan2(4, 3);
    EXPECT_NEAR(*made[0].interior[0], std::numbers::pi / 2, 1e-15);
    EXPECT_NEAR(*made[1].interior[0], between, 1e-15);
    EXPECT_NEAR(*made[1].interior[1], std::numbers::pi - between, 1e-15);
}

TEST(TwoAtATime, GiveThePartialSumsNamesThatNoVectorHas) {
    const auto made =
        pairs(sketch({force("K1", 30, 0), force("Q", 40, 90), force("K2", 20, 200), force("S", 9, 300)}));
    ASSERT_EQ(made.size(), 3U);
    EXPECT_EQ(made[1].first, "L1");
    EXPECT_EQ(made[2].first, "L2");
}

TEST(TwoAtATime, AreNoneWhereTwoAreInLineOrCancelOrTheQuestionIsAnother) {
    EXPECT_TRUE(pairs(sketch({force("P", 3, 0), force("Q", 4, 90)})).empty());
    EXPECT_TRUE(pairs(sketch({force("P", 3, 0), force("Q", 4, 0), force("S", 5, 90)})).empty());
    EXPECT_TRUE(pairs(sketch({force("P", 3, 0), force("Q", 3, 180), force("S", 5, 90)})).empty());
    EXPECT_TRUE(pairs(sketch({force("P", 3, 0), force("Q", 0, 90), force("S", 5, 90)})).empty());
    EXPECT_TRUE(pairs(sketch({force("P", 3, 0), force("Q", 4, 90), force("S", 5, 180 + 53.1301023541559835)}))
                    .empty()); // the last takes all back
    EXPECT_TRUE(pairs(balanced({force("P", 3, 0), force("Q", 4, 90), force("S", kToFind, kToFind)})).empty());
    Sketch seven = five();
    seven.forces.push_back(force("V", 20, 10));
    EXPECT_EQ(pairs(seven).size(), 5U);
    seven.forces.push_back(force("W", 20, -10));
    EXPECT_TRUE(pairs(seven).empty());
}

} // namespace TAILPOINT_FILE
} // namespace tailpoint::testing
