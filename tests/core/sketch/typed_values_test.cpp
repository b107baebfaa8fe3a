// SPDX-License-Identifier: MIT
// Values with a unit of their own, and the one rule for the decimals of angles.
#include "core/sketch/shown.h"

#include "tests/support/sketches.h"

#include <gtest/gtest.h>

namespace tailpoint::testing {
namespace TAILPOINT_FILE {

// NIST SP 811 (2008), B.8: 1 kgf = 9.80665 N and 1 lbf = 4.4482216152605 N (footnote), both exact.
TEST(AForceInAUnitOfItsOwn, IsConvertedIntoTheSheets) {
    struct Row {
        TypedForce typed;
        ForceUnit sheet;
        double value;
    };
    const Row table[] = {{{850, ForceUnit::kgf, {}}, ForceUnit::N, 8335.6525},
                         {{850, ForceUnit::kgf, {}}, ForceUnit::kN, 8.3356525},
                         {{1, ForceUnit::lbf, {}}, ForceUnit::N, 4.4482216152605},
                         {{1.2, ForceUnit::kN, {}}, ForceUnit::N, 1200},
                         {{3, ForceUnit::kip, {}}, ForceUnit::lbf, 3000},
                         {{0.1, ForceUnit::kip, {}}, ForceUnit::kip, 0.1}};
    for (const Row& row : table) {
        const Magnitude made = magnitudeOf(row.typed, row.sheet, kStandardGravity);
        EXPECT_EQ(made.value, row.value) << shownAsTyped(row.typed);
        EXPECT_EQ(made.typed, row.typed);
    }
    EXPECT_EQ(magnitudeOf({850, ForceUnit::kgf, plusMinus(10)}, ForceUnit::N, kStandardGravity).tolerance,
              plusMinus(98.0665));
}

// A right angle is 90 degrees, 100 gon and pi/2.
TEST(AnAngleInAUnitOfItsOwn, IsConvertedIntoTheSheets) {
    const Direction gon = directionOf({27.8, AngleUnit::gon, plusMinus(10)}, AngleUnit::deg);
    EXPECT_DOUBLE_EQ(std::get<AngleForm>(gon.form).value, 25.02);
    EXPECT_EQ(gon.tolerance, plusMinus(9));
    const Direction rad = directionOf({90, AngleUnit::deg, {}}, AngleUnit::rad);
    EXPECT_DOUBLE_EQ(std::get<AngleForm>(rad.form).value, 1.5707963267948966);
}

TEST(AValueInAUnitOfItsOwn, IsShownInFullWithIt) {
    EXPECT_EQ(shownAsTyped(TypedForce{850, ForceUnit::kgf, {}}), "850 kgf");
    EXPECT_EQ(shownAsTyped(TypedForce{1.25, ForceUnit::kN, plusMinus(0.05)}), "1.25 ± 0.05 kN");
    EXPECT_EQ(shownAsTyped(TypedAngle{27.8, AngleUnit::gon, {}}), "27.8 gon");
    EXPECT_EQ(shownAsTyped(TypedAngle{25, AngleUnit::deg, plusMinus(0.5)}), "25 ± 0.5°");
}

TEST(AValueInAUnitOfItsOwn, IsAFaultWhereItIsNotTheValueBesideIt) {
    Sketch raft = sketch({force("P", 340, 25), force("Q", 275, -40)});
    raft.forces[1].magnitude =
        magnitudeOf({850, ForceUnit::kgf, plusMinus(10)}, raft.forceUnit, raft.gravity);
    raft.sum.direction = directionOf({100, AngleUnit::gon, {}}, raft.angleUnit);
    EXPECT_FALSE(firstFault(raft));
    const auto placeAfter = [&](auto damage) {
        Sketch damaged = raft;
        damage(damaged);
        const auto fault = firstFault(damaged);
        return fault ? fault->place : "sound";
    };
    const std::string size = "forces[1].magnitude.unit", angle = "sum.direction.unit";
    EXPECT_EQ(placeAfter([](Sketch& s) { s.forces[1].magnitude.value = 850; }), size);
    EXPECT_EQ(placeAfter([](Sketch& s) { s.forces[1].magnitude.value.reset(); }),
              "forces[1].magnitude.plusMinus");
    EXPECT_EQ(placeAfter([](Sketch& s) { s.forces[1].magnitude.tolerance.reset(); }), size);
    EXPECT_EQ(placeAfter([](Sketch& s) { s.forceUnit = ForceUnit::kN; }), size);
    EXPECT_EQ(placeAfter([](Sketch& s) { std::get<AngleForm>(s.sum.direction.form).value = 91; }), angle);
    EXPECT_EQ(placeAfter([](Sketch& s) { s.sum.direction.tolerance = plusMinus(1); }), angle);
    EXPECT_EQ(placeAfter([](Sketch& s) { s.angleUnit = AngleUnit::gon; }), angle);
}

TEST(TheDecimalsOfAnAngle, AreTheSheetsAndTwoMoreInRadians) {
    Sketch sheet = emptySketch();
    sheet.angleDecimals = 1;
    EXPECT_EQ(roundedAsShown(25.0449, sheet), 25.0);
    sheet.angleUnit = AngleUnit::rad;
    EXPECT_EQ(shownAngleDecimals(sheet), 3);
    EXPECT_EQ(roundedAsShown(0.43633, sheet), 0.436);
    EXPECT_EQ(shownAngle(0.43633, sheet, Origin::typed), "0.436 rad");
}

} // namespace TAILPOINT_FILE
} // namespace tailpoint::testing
