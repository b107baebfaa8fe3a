// SPDX-License-Identifier: MIT
// What a given value may be off: how much that is on the sheet, and how it is shown.
#include "core/sketch/shown.h"
#include "core/sketch/stated.h"

#include "tests/support/sketches.h"

#include <gtest/gtest.h>

namespace tailpoint::testing {
namespace TAILPOINT_FILE {

Magnitude sized(double value, std::optional<Tolerance> tolerance) {
    return {value, tolerance};
}
Direction turned(double angle, std::optional<Tolerance> tolerance) {
    return {AngleForm{angle}, tolerance};
}
Sketch clockwise() {
    Sketch made = sheet();
    made.reference.sense = Sense::cw;
    return made;
}

void expectMargins(const Margins& margins, double plus, double minus) {
    EXPECT_DOUBLE_EQ(margins.plus, plus);
    EXPECT_DOUBLE_EQ(margins.minus, minus);
}

// A percentage is of the value's size: 5 % of 340 is 17, of -40 it is 2.
TEST(TheMarginsOfAValue, AreInTheSheetsUnit) {
    expectMargins(marginsOf(sized(340, std::nullopt)), 0, 0);
    expectMargins(marginsOf(sized(340, plusMinus(5))), 5, 5);
    expectMargins(marginsOf(sized(340, Tolerance{5, 0, false})), 5, 0);
    expectMargins(marginsOf(sized(340, plusMinusPercent(5))), 17, 17);
    expectMargins(marginsOf(turned(-40, plusMinusPercent(5)), sheet()), 2, 2);
    expectMargins(marginsOf(Magnitude{}), 0, 0);
}

// 850 kgf are 8335.6525 N (SP 811, B.8), 5 % of which are 416.782625 N.
TEST(TheMarginsOfAValue, InAUnitOfItsOwnAreConvertedWithIt) {
    expectMargins(marginsOf(magnitudeOf({850, ForceUnit::kgf, plusMinusPercent(5)}, ForceUnit::N, 9.81)),
                  416.782625, 416.782625);
    expectMargins(marginsOf(magnitudeOf({1, MassUnit::t, Tolerance{0.1, 0, false}}, ForceUnit::kN, 9.81)),
                  0.981, 0);
}

// N30°E +2° is N32°E, clockwise of it; S30°E +2° is S32°E, counter-clockwise of it.
TEST(TheMarginsOfABearing, AreCountedFromItsPoleAndTurnedAsTheSheetCounts) {
    const Tolerance up{2, 0.5, false};
    expectMargins(marginsOf({BearingForm{'N', 30, 'E'}, up}, sheet()), 0.5, 2);
    expectMargins(marginsOf({BearingForm{'S', 30, 'E'}, up}, sheet()), 2, 0.5);
    expectMargins(marginsOf({BearingForm{'N', 30, 'W'}, up}, sheet()), 2, 0.5);
    expectMargins(marginsOf({BearingForm{'S', 30, 'W'}, up}, sheet()), 0.5, 2);
    expectMargins(marginsOf({BearingForm{'N', 30, 'E'}, up}, clockwise()), 2, 0.5);
    expectMargins(marginsOf({SlopeForm{3, 4}, up}, clockwise()), 2, 0.5);
}

TEST(AToleranceBesideItsValue, IsRoundedToAsManyFigures) {
    const Sketch three = sheet();
    EXPECT_EQ(shownWithTolerance(sized(340, plusMinus(5)), three), "340 ± 5 N");
    EXPECT_EQ(shownWithTolerance(sized(8335.6525, plusMinus(98.0665)), three), "8340 ± 98.1 N");
    EXPECT_EQ(shownWithTolerance(sized(340, plusMinus(12.5)), three), "340 ± 12.5 N");
    EXPECT_EQ(shownWithTolerance(sized(340, plusMinus(0.012345)), three), "340 ± 0.0123 N")
        << "never dropped";
    EXPECT_EQ(shownWithTolerance(sized(5, plusMinus(1234.56)), three), "5.00 ± 1234.56 N")
        << "to its last place";
    EXPECT_EQ(shownWithTolerance(sized(340, plusMinusPercent(2.5)), three), "340 N ± 2.5 %");
    EXPECT_EQ(shownWithTolerance(sized(340, Tolerance{5, 0, false}), three), "340 +5/-0 N");
    EXPECT_EQ(shownWithTolerance(sized(345.5, plusMinus(5)), three), "345.5 ± 5 N");
    EXPECT_EQ(shownWithTolerance(sized(0, plusMinus(2)), three), "0 ± 2 N");
    EXPECT_EQ(shownWithTolerance(sized(340, std::nullopt), three), "340 N");
}

TEST(AToleranceBesideItsValue, OfADirectionHasTheUnitOfTheAngle) {
    EXPECT_EQ(shownWithTolerance(turned(25, plusMinus(0.5)), sheet()), "25.0° ± 0.5°");
    EXPECT_EQ(shownWithTolerance(turned(25, Tolerance{2, 0, false}), sheet()), "25.0° +2°/-0°");
    EXPECT_EQ(shownWithTolerance(turned(25, plusMinusPercent(5)), sheet()), "25.0° ± 5 %");
    EXPECT_EQ(shownWithTolerance(turned(0.44, plusMinus(0.01)), sheet(AngleUnit::rad)),
              "0.440 rad ± 0.01 rad");
    EXPECT_EQ(shownWithTolerance(Direction{SlopeForm{3, 4}, plusMinus(1)}, sheet()), "3 : 4 ± 1°");
    EXPECT_EQ(shownWithTolerance(Direction{BearingForm{'N', 30, 'E'}, Tolerance{2, 1, false}}, sheet()),
              "N30°E +2°/-1°");
    EXPECT_EQ(withMinusSigns("25.0° +2°/-1°"), "25.0° +2°/\u22121°");
}

TEST(TheToleranceOfASize, IsTurnedRoundWhereTheAngleIsNegative) {
    const Direction below = turned(-40, Tolerance{2, 1, false});
    EXPECT_EQ(toleranceOfSize(below, -40, sheet()), "+1°/-2°") << "-38 is 38 clockwise";
    EXPECT_EQ(toleranceOfSize(turned(40, Tolerance{2, 1, false}), 40, sheet()), "+2°/-1°");
    EXPECT_EQ(toleranceOfSize(turned(-40, std::nullopt), -40, sheet()), "");
}

TEST(WhatWasStated, StandsBeforeWhatTheSheetMakesOfIt) {
    Sketch sketch = sheet();
    sketch.forceUnit = ForceUnit::kN;
    const auto stated = [&](const TypedForce& typed) {
        return statedMagnitude(magnitudeOf(typed, sketch.forceUnit, sketch.gravity), sketch);
    };
    EXPECT_EQ(stated({850, ForceUnit::kgf, {}}), "850 kgf = 8.34 kN");
    EXPECT_EQ(stated({850, MassUnit::kg, {}}), "weight of 850 kg = 8.34 kN (g = 9.80665 m/s²)");
    EXPECT_EQ(stated({1.5, ForceUnit::shortTonf, plusMinusPercent(5)}),
              "1.5 short tonf ± 5 % = 13.3 kN ± 5 %");
    sketch.gravity = 9.81;
    EXPECT_EQ(stated({1, MassUnit::t, plusMinus(0.05)}),
              "weight of 1 ± 0.05 t = 9.81 ± 0.49 kN (g = 9.81 m/s²)");
    EXPECT_EQ(statedMagnitude({8.34, std::nullopt}, sketch), "8.34 kN");
    EXPECT_EQ(statedDirection(directionOf({50, AngleUnit::gon, {}}, AngleUnit::deg), sketch),
              "50 gon = 45.0°");
}

// 10 kN; 1 t by 9.81 m/s2 is 9.81 kN.
TEST(ALimit, IsConvertedFromItsOwnUnit) {
    Sketch sketch = sheet();
    sketch.gravity = 9.81;
    Force held = force("P", 340, 25);
    EXPECT_FALSE(limitOf(held, sketch));
    held.limit = TypedForce{10, ForceUnit::kN, {}};
    EXPECT_EQ(limitOf(held, sketch), 10'000);
    held.limit = TypedForce{1, MassUnit::t, {}};
    EXPECT_EQ(limitOf(held, sketch), 9810);
    EXPECT_FALSE(hasMass(sketch));
    sketch.forces = {held};
    EXPECT_TRUE(hasMass(sketch)) << "of a limit too";
}

} // namespace TAILPOINT_FILE
} // namespace tailpoint::testing
