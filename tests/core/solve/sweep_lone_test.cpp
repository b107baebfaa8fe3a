// SPDX-License-Identifier: MIT
// Sweeps of one unknown for two equations, which has an answer only where it is consistent: to the digits of
// a fine sheet that is a stretch far narrower than what lies between two places that are looked at.
#include "core/explain/swept.h"
#include "core/solve/sweep.h"
#include "tests/support/sketches.h"

#include <cmath>
#include <gtest/gtest.h>

namespace tailpoint::testing {
namespace TAILPOINT_FILE {

Sketch fine(Sketch made) {
    made.figures = 12;
    made.angleDecimals = 8;
    return made;
}

/// The only curve, with one unbroken run about `at`, narrower than a hundred thousandth of the range.
void expectLone(const Sketch& made, const SweepRange& range, double at, double value) {
    SCOPED_TRACE(at);
    ASSERT_FALSE(faultOf(range, made));
    const Sweep swept = sweep(made, range);
    ASSERT_EQ(swept.curves.size(), 1u);
    const Curve& curve = swept.curves[0];
    ASSERT_EQ(curve.pieces.size(), 1u) << "no answer was found";
    EXPECT_LE(curve.pieces[0].front().at, at + 1e-12);
    EXPECT_GE(curve.pieces[0].back().at, at - 1e-12);
    EXPECT_LT(curve.pieces[0].back().at - curve.pieces[0].front().at,
              1e-5 * std::fabs(range.to - range.from));
    EXPECT_NEAR(*curve.between(at), value, 1e-6);
    EXPECT_EQ(swept.gaps.size(), 2u);
    EXPECT_TRUE(swept.isProven);
}

/// 12 down, 24 up to the left, A along +x: 24 sin 150 = 12, A = 24 cos 30 = 20.784609690826528.
Sketch lines(double w, double b, double at) {
    return fine(balanced({force("W", w, -90), force("B", b, at), force("A", kToFind, 0)}));
}

TEST(SweepOfOneUnknown, FindsTheOnlyDirectionThatHolds) {
    expectLone(lines(12, 24, 120), {{1, true}, 100, 170.123, 90}, 150, 20.784609690826528);
    expectLone(lines(12, 24, 120), {{1, true}, 170.123, 100, 90}, 150, 20.784609690826528);
}

TEST(SweepOfOneUnknown, FindsTheOnlyMagnitudeThatHolds) {
    expectLone(lines(12, 20, 150), {{1, false}, 10, 30.77, 90}, 24, 20.784609690826528);
}

// 3 along +x and 4 along +y leave 5: B of that magnitude points back at -126.8699 degrees (atan2(-4, -3)).
TEST(SweepOfOneUnknown, FindsWhereACircleIsMet) {
    const Sketch made = fine(balanced({force("W", 3, 0), force("P", 4, 70), force("B", 5, kToFind)}));
    expectLone(made, {{1, true}, 10, 170.123, 90}, 90, std::atan2(-4, -3) * 180 / std::acos(-1));
}

// 12 down and 12 at 80 degrees: only at 90 does nothing lie across A, which is touched, not crossed.
TEST(SweepOfOneUnknown, FindsWhereWhatIsLeftOnlyTouchesNothing) {
    const Sketch made = lines(12, 12, 80);
    const Sweep swept = sweep(made, {{1, true}, 10, 170.123, 90});
    ASSERT_EQ(swept.curves.at(0).pieces.size(), 1u);
    EXPECT_NEAR(swept.curves[0].pieces[0].front().at, 90, 1e-9);
    EXPECT_NEAR(swept.curves[0].least->value, 0, 1e-9);
}

TEST(SweepOfOneUnknown, WhereItHoldsThroughoutThereIsNoGap) {
    const Sketch made = fine(balanced({force("W", 3, -150), force("B", kToFind, 30)}));
    const Sweep swept = sweep(made, {{0, false}, 1, 10, 90});
    EXPECT_TRUE(swept.gaps.empty());
    EXPECT_TRUE(swept.isProven);
    EXPECT_NEAR(swept.curves.at(0).greatest->value, 10, 1e-9);
}

// Q of 100 along a sum whose direction is varied: its magnitude is 100 throughout, and by intervals it can't
// be ruled out that it turns. The words say so.
TEST(Sweep, SaysWhereItCouldNotRuleAllOut) {
    const Sweep level =
        sweep(sketch({force("Q", 100, kToFind)}, force("R", kToFind, 30)), {{kSumIndex, true}, 0, 90, 90});
    EXPECT_FALSE(level.isProven);
    EXPECT_NE(sweptProofNote(level).find("may be missing"), std::string::npos);
    const Sweep plain = sweep(lines(12, 24, 120), {{1, true}, 100, 170.123, 90});
    EXPECT_EQ(sweptProofNote(plain), "");
}

} // namespace TAILPOINT_FILE
} // namespace tailpoint::testing
