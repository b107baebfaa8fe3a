// SPDX-License-Identifier: MIT
// Which angles of a figure can be pointed at before its answer is known, and how large they are.
#include "core/figure/pointable_angles.h"
#include "tests/support/sketches.h"

#include <algorithm>
#include <gtest/gtest.h>
#include <numbers>

namespace tailpoint::testing {
namespace TAILPOINT_FILE {

const VectorId kP = forceVector(0), kQ = forceVector(1);

Sketch raft() {
    return sketch({force("P", 340, 25), force("Q", 275, -40)});
}
const PointableAngle* find(const std::vector<PointableAngle>& all, const QuantityId& angle,
                           VectorId tip = kNobody) {
    const auto found = std::find_if(all.begin(), all.end(), [&](const PointableAngle& one) {
        return isSame(one.angle, angle) && one.tip == tip;
    });
    return found == all.end() ? nullptr : &*found;
}

/// By hand: 25 - (-40) = 65 between the tails, 180 - 65 = 115 where Q is laid on at P's tip.
TEST(PointableAngles, TheAngleBetweenTheTailsAndTheTrianglesAreTwo) {
    const auto all = pointableAngles(raft(), {});
    const auto *tails = find(all, betweenId(kP, kQ)), *atP = find(all, oppositeId(kSumVector), kP),
               *atQ = find(all, oppositeId(kSumVector), kQ);
    ASSERT_TRUE(tails && atP && atQ);
    EXPECT_NEAR(tails->value, 65, 1e-9);
    EXPECT_NEAR(atP->value, 115, 1e-9);
    EXPECT_NEAR(atQ->value, 115, 1e-9);
    EXPECT_NEAR(atP->corner.norm(), 340, 1e-9);
    ASSERT_TRUE(find(all, directionId(kQ)));
    EXPECT_NEAR(find(all, directionId(kQ))->value, -40, 1e-9);
    EXPECT_EQ(all.size(), 5U) << "nothing with the resultant, whose direction is not known";
}

/// R drawn at 10 degrees: 15 to P, which lies opposite to Q, and 50 to Q (by hand).
TEST(PointableAngles, WhatIsDrawnHasAnglesToo) {
    const double ten = 10 * std::numbers::pi / 180;
    const auto all =
        pointableAngles(raft(), {{kSumVector, 400 * Eigen::Vector2d(std::cos(ten), std::sin(ten))}});
    const auto *beta = find(all, oppositeId(kQ)), *alpha = find(all, oppositeId(kP));
    ASSERT_TRUE(alpha && beta);
    EXPECT_NEAR(beta->value, 15, 1e-9);
    EXPECT_NEAR(alpha->value, 50, 1e-9);
    EXPECT_EQ(beta->tip, kNobody);
}

TEST(PointableAngles, OfManyForcesNoneIsOffered) {
    const auto all = pointableAngles(sketch({force("P", 1, 0), force("Q", 1, 70), force("S", 1, 140),
                                             force("T", 1, 210), force("U", 1, 280)}),
                                     {});
    EXPECT_TRUE(all.empty());
}

TEST(PointableAngles, AreSaidInWords) {
    const Sketch asked = raft();
    const Things things(asked);
    std::vector<std::string> words;
    for (const PointableAngle& one : pointableAngles(asked, {}))
        words.push_back(plain(wordsOf(one, asked, things)));
    EXPECT_EQ(words, (std::vector<std::string>{"direction of P, from +x", "direction of Q, from +x",
                                               "angle between P and Q",
                                               "angle at the tip of P, with Q laid on there",
                                               "angle at the tip of Q, with P laid on there"}));
}

} // namespace TAILPOINT_FILE
} // namespace tailpoint::testing
