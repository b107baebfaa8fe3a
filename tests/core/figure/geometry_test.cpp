// SPDX-License-Identifier: MIT
#include "core/figure/obstacles.h"
#include "tests/core/figure/figure_support.h"
#include "tests/support/cases.h"

#include <gtest/gtest.h>

namespace tailpoint::testing {
namespace TAILPOINT_FILE {

Box anyBox(Dice& dice) {
    return {dice.between(0, 80), dice.between(0, 80), dice.between(1, 30), dice.between(1, 15)};
}
Point anyPoint(Dice& dice) {
    return {dice.between(-20, 120), dice.between(-20, 120)};
}

TEST(Segments, MeetABoxExactlyWhereTheirDistanceIsNothing) {
    constexpr std::uint64_t seed = 11;
    Dice dice(seed);
    int met = 0;
    for (int i = 0; i < 5'000; ++i) {
        const Box box = anyBox(dice);
        const Point a = anyPoint(dice), b = anyPoint(dice);
        const double away = distanceTo(box, a, b);
        if (away > 1e-6 && away < 1e-3)
            continue; // the search is no finer
        EXPECT_EQ(meets(box, a, b), away < 1e-6) << "seed " << seed << " case " << i;
        met += away < 1e-6 ? 1 : 0;
    }
    EXPECT_GT(met, 300);
}

TEST(Arcs, MeetABoxExactlyWhereTheirDistanceIsNothing) {
    constexpr std::uint64_t seed = 12;
    Dice dice(seed);
    int met = 0;
    for (int i = 0; i < 5'000; ++i) {
        const Box box = anyBox(dice);
        Arc arc;
        arc.centre = anyPoint(dice);
        arc.radius = dice.between(1, 90);
        arc.startDegrees = dice.between(-180, 180);
        arc.sweepDegrees = i % 10 == 0 ? 360 : dice.between(-359, 359);
        const double away = distanceTo(box, arc);
        const bool touches = ArcShape(arc.centre, arc.radius, arc.startDegrees, arc.sweepDegrees).meets(box);
        met += touches ? 1 : 0;
        // The sampled distance is right to half a step.
        if (touches)
            EXPECT_LT(away, 0.3) << "seed " << seed << " case " << i;
        else
            EXPECT_GE(away, 0) << "seed " << seed << " case " << i;
        if (away == 0) {
            EXPECT_TRUE(touches || distanceTo(grown(box, -0.3), arc) > 0) << "seed " << seed << " case " << i;
        }
    }
    EXPECT_GT(met, 300);
}

TEST(VisibleParts, LeaveOutTheBoxesAndWhatIsBeyondTheRoom) {
    const Box block[] = {{40, -5, 20, 10}};
    const auto parts = visibleParts({-50, 0}, {150, 0}, {0, -50, 100, 100}, block);
    ASSERT_EQ(parts.size(), 2U);
    EXPECT_NEAR(parts[0][0], 0.25, 1e-12);
    EXPECT_NEAR(parts[0][1], 0.45, 1e-12);
    EXPECT_NEAR(parts[1][0], 0.55, 1e-12);
    EXPECT_NEAR(parts[1][1], 0.75, 1e-12);
    EXPECT_TRUE(visibleParts({-50, 60}, {150, 60}, {0, -50, 100, 100}, block).empty());
}

TEST(VisibleArcs, OfACircleInTheOpenAreTheCircle) {
    const auto arcs = visibleArcs({50, 50}, 20, {0, 0, 100, 100}, {});
    ASSERT_EQ(arcs.size(), 1U);
    EXPECT_EQ(arcs[0], (std::array<double, 2>{0, 360}));
}

TEST(VisibleArcs, StayInTheRoomAndOutOfTheBoxes) {
    constexpr std::uint64_t seed = 13;
    Dice dice(seed);
    for (int i = 0; i < 2'000; ++i) {
        const Box room{0, 0, 100, 100}, out[] = {anyBox(dice)};
        const Point centre = anyPoint(dice);
        const double radius = dice.between(5, 200);
        double swept = 0;
        for (const auto& [start, sweep] : visibleArcs(centre, radius, room, out)) {
            swept += sweep;
            for (const double at : {0.01, 0.3, 0.5, 0.99}) {
                const Point p = onCircle(centre, radius, start + at * sweep);
                EXPECT_TRUE(contains(grown(room, 1e-6), p)) << "seed " << seed << " case " << i;
                EXPECT_FALSE(contains(grown(out[0], -1e-6), p)) << "seed " << seed << " case " << i;
            }
        }
        int seen = 0;
        constexpr int samples = 720;
        for (int k = 0; k < samples; ++k) {
            const Point p = onCircle(centre, radius, 0.5 * k);
            seen += contains(room, p) && !contains(out[0], p) ? 1 : 0;
        }
        EXPECT_NEAR(swept, seen * 360.0 / samples, 4) << "seed " << seed << " case " << i;
    }
}

TEST(View, HasADivisionOfOneTwoOrFiveTimesAPowerOfTen) {
    Dice dice(14);
    for (int i = 0; i < 2'000; ++i) {
        View view;
        view.scale = dice.power(-150, 150);
        const double division = divisionOf(view);
        const double power = std::pow(10, std::floor(std::log10(division) + 1e-9)), digit = division / power;
        EXPECT_TRUE(std::abs(digit - 1) < 1e-9 || std::abs(digit - 2) < 1e-9 || std::abs(digit - 5) < 1e-9)
            << division;
        EXPECT_GE(division * view.scale, 28.3);
        EXPECT_LE(division * view.scale, 71.0);
    }
}

TEST(View, WritesTheDivisionExactly) {
    View view;
    view.scale = 1;
    EXPECT_EQ(divisionOf(view), 50);
    view.scale = 400;
    EXPECT_EQ(divisionOf(view), 0.1);
    view.scale = 1000;
    EXPECT_EQ(divisionOf(view), 0.05);
}

TEST(View, FlipsYAndComesBack) {
    const View view{720, 480, {100, 300}, 0.5};
    EXPECT_EQ(view.toSheet({40, 60}), (Point{120, 270}));
    EXPECT_EQ(view.toSketch({120, 270}), Eigen::Vector2d(40, 60));
}

} // namespace TAILPOINT_FILE
} // namespace tailpoint::testing
