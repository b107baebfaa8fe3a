// SPDX-License-Identifier: MIT
// The bar of a limit: places by hand from the shares named at each.
#include "core/explain/limit_bar.h"
#include "core/solve/tolerance.h"

#include <gtest/gtest.h>

namespace tailpoint {
namespace TAILPOINT_FILE {

LimitBar barOf(double best, std::optional<double> worst) {
    LimitUse use;
    use.leastUse = best;
    use.utilisation = worst;
    return tailpoint::barOf(use);
}

/// A quarter more than the limit is in sight: the limit at 1/1.25 = 0.8, 90 per cent at 0.72, 110 at 0.88.
TEST(LimitBar, IsHatchedWhereTheToleranceStraddles) {
    const LimitBar bar = barOf(90, 110);
    EXPECT_DOUBLE_EQ(bar.limit, 0.8);
    EXPECT_DOUBLE_EQ(bar.certain, 0.72);
    EXPECT_DOUBLE_EQ(bar.possible, 0.88);
    EXPECT_FALSE(bar.isOpen);
}

/// 150 per cent and 5 more of it: the limit at 1/1.575, the end at 1/1.05.
TEST(LimitBar, HasRoomForWhatIsOver) {
    const LimitBar bar = barOf(150, 150);
    EXPECT_DOUBLE_EQ(bar.limit, 1 / 1.575);
    EXPECT_DOUBLE_EQ(bar.certain, 1 / 1.05);
    EXPECT_DOUBLE_EQ(bar.certain, bar.possible);
}

/// Never more than twice the limit: it stays in the middle.
TEST(LimitBar, GoesOnBeyondItsEnd) {
    for (const LimitBar& bar : {barOf(50, 1000), barOf(50, std::nullopt)}) {
        EXPECT_DOUBLE_EQ(bar.limit, 0.5);
        EXPECT_DOUBLE_EQ(bar.certain, 0.25);
        EXPECT_DOUBLE_EQ(bar.possible, 1);
        EXPECT_TRUE(bar.isOpen);
    }
    EXPECT_DOUBLE_EQ(barOf(1000, 1000).certain, 1);
}

TEST(LimitBar, HatchesWithinItsBoxAtHalfARightAngle) {
    const auto strokes = hatch(10, 2, 20, 8, 4);
    ASSERT_GE(strokes.size(), 5U);
    for (const HatchStroke& each : strokes) {
        EXPECT_GE(each.x1, 10);
        EXPECT_LE(each.x2, 30);
        EXPECT_LE(each.y1, 10);
        EXPECT_GE(each.y2, 2);
        EXPECT_NEAR(each.x2 - each.x1, each.y1 - each.y2, 1e-12);
        EXPECT_GT(each.x2, each.x1);
    }
    EXPECT_TRUE(hatch(10, 2, 0, 8, 4).empty());
}

/// 5 +- 1 kN beside 5.5 kN: 4/5.5 = 72.73 and 6/5.5 = 109.09 per cent; up to 3 degrees off of 2.
TEST(LimitBar, IsReadOutAndHasAWord) {
    Sketch sketch = emptySketch();
    sketch.forceUnit = ForceUnit::kN;
    Force pull;
    pull.name = "P";
    pull.magnitude = {5, Tolerance{1, 1, false}};
    pull.direction.form = AngleForm{1};
    pull.direction.tolerance = Tolerance{2, 2, false};
    pull.limit = TypedForce{5.5, ForceUnit::kN, {}};
    pull.permitted = Permitted{0, 2};
    sketch.forces = {pull};
    const Solved solved = solve(sketch);
    const auto ranges = tolerance::rangesOf(sketch, solved);
    const auto shown = limitsShown(sketch, solved.solutions.at(0), &ranges.at(0));
    ASSERT_EQ(shown.size(), 2U);
    EXPECT_EQ(shown[0].spoken, "P uses 72.8 % of its limit at best, 109.1 % at worst");
    EXPECT_EQ(verdictWord(shown[0].verdict), "! straddles");
    EXPECT_EQ(shown[1].spoken, "the direction of P is up to 3.0\u00B0 off, 2.0\u00B0 allowed");
    const std::string svg = barSvg(shown[0].bar, "P & Q < 5");
    EXPECT_NE(svg.find("aria-label=\"P &amp; Q &lt; 5\""), std::string::npos) << svg;
    EXPECT_NE(svg.find("</svg>"), std::string::npos);
}

} // namespace TAILPOINT_FILE
} // namespace tailpoint
