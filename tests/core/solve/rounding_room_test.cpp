// SPDX-License-Identifier: MIT
// Whether rounding explains what an equation leaves over. 200 sums rounded as they are shown, and numbers
// from Python.
#include "core/sketch/shown.h"
#include "core/solve/rounding_room.h"
#include "core/solve/solve.h"

#include "tests/support/cases.h"
#include "tests/support/sketches.h"

#include <gtest/gtest.h>

#include <cmath>
#include <numbers>

namespace tailpoint::testing {
namespace TAILPOINT_FILE {

using Code = MessageCode;

/// 73 N at 38 degrees and 35 N at -20 make 96.2387 N at 20.0361: 96.2 N at 20.0 is that, rounded.
TEST(RoundingRoom, TakesWhatIsRightToItsOwnLastPlaces) {
    const std::vector<Force> two{force("P", 73, 38), force("Q", 35, -20)};
    const auto code = [&](double size, double way) {
        return solve(sketch(two, force("R", size, way))).messageCode();
    };
    EXPECT_EQ(code(96.2, 20), Code::equationHoldsShown);
    EXPECT_EQ(code(96.3, 20), Code::equationFails);
    EXPECT_EQ(code(96.2, 20.1), Code::equationFails);
    EXPECT_EQ(code(96.24, 20.04), Code::equationHoldsShown);
    EXPECT_EQ(code(96.23, 20.04), Code::equationFails) << "typed to more places, it is held to them";
}

/// 340 N at 25 degrees and 275 N at -40 make 519.8602 N at -3.6478: -4.0 degrees is no rounding of that.
TEST(RoundingRoom, OfFewFiguresStillHoldsTheDirectionToItsDecimals) {
    Sketch asked = sketch({force("P", 340, 25), force("Q", 275, -40)}, force("R", 520, -4));
    asked.figures = 2;
    EXPECT_EQ(solve(asked).messageCode(), Code::equationFails);
    const RoundingRoom room = roundingRoom(sketch({force("P", 340, 25)}, force("R", 520, -3.6)));
    EXPECT_DOUBLE_EQ(room.along, 0.5);
    EXPECT_NEAR(room.across, 0.4537856, 1e-7); // 520 sin 0.05 degrees
}

/// 200 pairs: every sum rounded to three figures and one decimal holds, and two last places off doesn't.
TEST(RoundingRoom, HoldsForEverySumThatIsRoundedAsItIsShown) {
    Dice dice(20261129);
    for (int i = 0; i < 200; ++i) {
        const double p = 10 + 990 * dice.part(), q = 10 + 990 * dice.part(), a = 360 * dice.part() - 180,
                     b = a + 20 + 120 * dice.part();
        const auto rounded = [](double value) { return std::round(value * 10) / 10; };
        const std::vector<Force> two{force("P", rounded(p), rounded(a)), force("Q", rounded(q), rounded(b))};
        const Solution found = solve(sketch(two)).solutions.at(0);
        const double size = roundedToFigures(found.sum.magnitude, 3),
                     way = roundedToDecimals(*found.sum.direction, 1);
        EXPECT_NE(solve(sketch(two, force("R", size, way))).messageCode(), Code::equationFails)
            << "case " << i << ": " << size << " at " << way;
        EXPECT_EQ(solve(sketch(two, force("R", size, way + 0.2))).messageCode(), Code::equationFails)
            << "case " << i;
        EXPECT_EQ(solve(sketch(two, force("R", roundedToFigures(size * 1.02, 3), way))).messageCode(),
                  Code::equationFails)
            << "case " << i;
    }
}

/// Three forces in equilibrium, two of them rounded: 200 rings found and rounded hold.
TEST(RoundingRoom, HoldsForARingWhoseForcesAreRounded) {
    Dice dice(20261130);
    for (int i = 0; i < 200; ++i) {
        const double w = std::round(100 + 800 * dice.part());
        const double a = std::round(20 + 50 * dice.part()), b = std::round(110 + 50 * dice.part());
        const Solution found =
            solve(balanced({force("W", w, -90), force("A", kToFind, a), force("B", kToFind, b)}))
                .solutions.at(0);
        const Sketch told =
            balanced({force("W", w, -90), force("A", roundedToFigures(found.forces[1].magnitude, 3), a),
                      force("B", roundedToFigures(found.forces[2].magnitude, 3), b)});
        EXPECT_NE(solve(told).messageCode(), Code::equationFails) << "case " << i;
        Sketch off = told;
        *off.forces[1].magnitude.value *= 1.05;
        EXPECT_EQ(solve(off).messageCode(), Code::equationFails) << "case " << i;
    }
}

} // namespace TAILPOINT_FILE
} // namespace tailpoint::testing
