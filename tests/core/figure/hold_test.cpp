// SPDX-License-Identifier: MIT
// The view that holds still: the common point stays, the scale goes down only as far as the figure needs.
#include "core/figure/hold.h"
#include "tests/core/figure/figure_support.h"

#include <gtest/gtest.h>

namespace tailpoint {
namespace TAILPOINT_FILE {

constexpr double kStep = 72 / 25.4 * 1.25; // points: a division is a multiple of an eighth of a centimetre

/// A sketch whose forces have these magnitudes and degrees from +x.
struct Drawn {
    explicit Drawn(std::vector<std::pair<double, double>> forces) {
        for (const auto& [magnitude, degrees] : forces) {
            Force force;
            force.name = nextForceName(sketch);
            force.magnitude.value = magnitude;
            force.direction.form = AngleForm{degrees};
            sketch.forces.push_back(force);
        }
        solved = solve(sketch);
        construction = construct(sketch, solved, 0);
    }
    Seen seen() const { return {sketch, solved, construction, {}, nullptr}; }

    Sketch sketch = emptySketch();
    Solved solved;
    Construction construction;
};

const View kMiddle{720, 480, {360, 240}, 1};

TEST(HeldView, TheScaleIsTheGreatestThatKeepsTheFigureInsideAroundTheCommonPoint) {
    // To the right there are 720 - 34 - 360 = 326 points for 100 N: at most 3.26 points a newton. A division
    // is then 10 N of 32.6 points, which is 9 whole steps of 3.5433: 31.890 points, 3.1890 a newton.
    const Drawn one({{100, 0}});
    const auto scale = heldScale(one.seen(), kMiddle);
    ASSERT_TRUE(scale);
    EXPECT_NEAR(*scale, 9 * kStep / 10, 1e-12);
    EXPECT_TRUE(isWhole(one.seen(), {720, 480, {360, 240}, *scale}));
}

TEST(HeldView, TheResultantAndTheParallelogramCountToo) {
    // Up: 300 N and 100 N at right angles, the resultant reaches 300 up and 100 to the right. There are
    // 240 - 26 = 214 points for 300 N: 0.71333; a division of 50 N has 35.67 points, 10 steps: 35.433.
    const Drawn two({{300, 90}, {100, 0}});
    const auto scale = heldScale(two.seen(), kMiddle);
    ASSERT_TRUE(scale);
    EXPECT_NEAR(*scale, 10 * kStep / 50, 1e-12);
}

TEST(HeldView, WhatLeavesTheSheetOrRunsIntoTheTitleBlockIsNotWhole) {
    EXPECT_TRUE(isWhole(Drawn({{200, 0}}).seen(), kMiddle));
    EXPECT_TRUE(isWhole(Drawn({{353, 0}}).seen(), kMiddle));  // its tip is 7 points from the edge
    EXPECT_FALSE(isWhole(Drawn({{355, 0}}).seen(), kMiddle)); // 5 points
    const Drawn down({{385, -34}}); // into the corner of the title block: 319 to the right, 215 down
    EXPECT_TRUE(isOnSheet(down.seen(), kMiddle));
    EXPECT_FALSE(isWhole(down.seen(), kMiddle));
    const auto scale = heldScale(down.seen(), kMiddle);
    ASSERT_TRUE(scale);
    EXPECT_LT(*scale, 1);
    EXPECT_TRUE(isWhole(down.seen(), {720, 480, {360, 240}, *scale}));
}

TEST(HeldView, ThereIsNoneWhereTheCommonPointLeavesNoRoomOrNothingIsDrawn) {
    EXPECT_FALSE(heldScale(Drawn({{100, 180}}).seen(), {720, 480, {20, 240}, 1}));
    EXPECT_TRUE(heldScale(Drawn({{100, 0}}).seen(), {720, 480, {20, 240}, 1}));
    EXPECT_FALSE(heldScale(Drawn({}).seen(), kMiddle));
    EXPECT_TRUE(isWhole(Drawn({}).seen(), kMiddle));
}

TEST(HeldView, AStepOutIsAboutAFifthAndItsDivisionCanBeSaid) {
    // 1 point a newton: 50 N have 50 points. Four fifths are 40, 11 whole steps: 38.976 points.
    EXPECT_NEAR(scaleStepOut(kMiddle), 11 * kStep / 50, 1e-12);
    View view = kMiddle;
    for (int i = 0; i < 40; ++i) {
        const double next = scaleStepOut(view);
        EXPECT_LE(next, 0.8 * view.scale * (1 + 1e-9));
        EXPECT_GE(next, 0.65 * view.scale); // a step of a division of eight is an eighth
        view.scale = next;
    }
}

TEST(HeldView, PointsAreBroughtInByTheLeastMove) {
    // 500 N to the right end at 860 points; 24 from the edge is 696: 164 to the left.
    const View moved = broughtIn(kMiddle, {{0, 0}, {500, 0}}, 24);
    EXPECT_EQ(moved.scale, 1);
    EXPECT_NEAR(moved.origin.x, 360 - 164, 1e-9);
    EXPECT_NEAR(moved.origin.y, 240, 1e-9);
    // 2000 N don't fit 672 points at 1: at most 0.336, a division of 100 N 9 steps long. The tip, at
    // 360 + 2000 * 0.31890 = 997.8, comes to 696.
    const View smaller = broughtIn(kMiddle, {{0, 0}, {2000, 0}}, 24);
    EXPECT_NEAR(smaller.scale, 9 * kStep / 100, 1e-12);
    EXPECT_NEAR(smaller.toSheet({2000, 0}).x, 696, 1e-9);
    EXPECT_GE(smaller.origin.x, 24);
    EXPECT_EQ(broughtIn(kMiddle, {{0, 0}, {100, 100}}, 24), kMiddle) << "already in";
}

} // namespace TAILPOINT_FILE
} // namespace tailpoint
