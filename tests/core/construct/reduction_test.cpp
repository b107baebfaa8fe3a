// SPDX-License-Identifier: MIT
// A question as one triangle: what is sought of it, and what its known side adds up.
#include "core/construct/reduction.h"
#include "tests/support/sketches.h"

#include <gtest/gtest.h>

namespace tailpoint {
namespace TAILPOINT_FILE {

using namespace testing;

using Parts = std::vector<std::pair<VectorId, int>>;

Reduction reduced(const Sketch& sketch) {
    const auto reduction = reductionOf(sketch, solve(sketch));
    EXPECT_TRUE(reduction);
    return reduction.value_or(Reduction{});
}

TEST(Reduction, AddsTheKnownForcesUpBesideTheSum) {
    const Reduction r = reduced(
        sketch({force("A", 10, 0), force("U", kToFind, 30), force("B", 20, 90)}, force("R", kToFind, 60)));
    EXPECT_EQ(r.known, (Parts{{forceVector(0), 1}, {forceVector(2), 1}}));
    EXPECT_EQ(r.sought, (std::vector<std::uint8_t>{1, 2}));
    EXPECT_EQ(r.knownSide(), 0U);
    EXPECT_TRUE(r.isOwnAngle(0, 2)) << "both tails at the common point";
    EXPECT_FALSE(r.isOwnAngle(0, 1));
    EXPECT_EQ(r.sign(2), -1);
}

TEST(Reduction, TakesTheKnownForcesFromTheSumWhereTwoForcesAreSought) {
    const Reduction r = reduced(
        sketch({force("U", kToFind, 0), force("A", 10, 45), force("V", kToFind, 90)}, force("R", 20, 30)));
    EXPECT_EQ(r.known, (Parts{{kSumVector, 1}, {forceVector(1), -1}}));
    EXPECT_EQ(r.sought, (std::vector<std::uint8_t>{0, 1}));
    EXPECT_EQ(r.knownSide(), 2U);
}

TEST(Reduction, ClosesALoopInEquilibrium) {
    const Reduction r =
        reduced(balanced({force("U", kToFind, 150), force("W", 100, 270), force("V", kToFind, 45)}));
    EXPECT_TRUE(r.loop);
    EXPECT_FALSE(r.addsUp());
    EXPECT_TRUE(r.known.empty());
    EXPECT_EQ(r.side[2], forceVector(1));
    EXPECT_EQ(r.sign(2), 1);
    EXPECT_FALSE(r.isOwnAngle(1, 2)) << "a tip meets a tail at every corner";
}

TEST(Reduction, LeadsBackToTheIndicesOfTheAnswer) {
    EXPECT_EQ(indexOf(vectorId(kSumIndex)), kSumIndex);
    EXPECT_EQ(indexOf(vectorId(3)), 3);
    EXPECT_EQ(indexOf(kKnownVector), kNoVector);
    EXPECT_EQ(vectorId(kNoVector), kNobody);
}

} // namespace TAILPOINT_FILE
} // namespace tailpoint
