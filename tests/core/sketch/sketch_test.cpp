// SPDX-License-Identifier: MIT
#include "core/sketch/sketch.h"

#include "tests/support/sketches.h"

#include <gtest/gtest.h>

namespace tailpoint::testing {
namespace TAILPOINT_FILE {

CosSin unitOf(const Force& force, const Sketch& sketch) {
    return unitVector(force.direction, sketch).value();
}

Sketch from(double axisDegrees, Sense sense = Sense::ccw) {
    Sketch made = emptySketch();
    made.reference = {axisDegrees, sense};
    return made;
}

TEST(ADirection, IsCountedFromTheReferenceAxisInItsSense) {
    EXPECT_EQ(unitOf(force("P", 1, 30), from(0)).sin, 0.5L);
    EXPECT_EQ(unitOf(force("P", 1, 30), from(0, Sense::cw)).sin, -0.5L);
    EXPECT_EQ(unitOf(force("P", 1, 0), from(90)).cos, 0);
    EXPECT_EQ(unitOf(force("P", 1, 0), from(90)).sin, 1);
    EXPECT_EQ(unitOf(force("P", 1, 90), from(90, Sense::cw)).cos, 1);
    EXPECT_EQ(unitOf(force("P", 1, 30), from(180)).sin, -0.5L);
    EXPECT_EQ(unitOf(force("P", 1, 54.7), from(35.3)).sin, 1);
}

TEST(ADirection, LosesNothingWhenAxisAndAngleAreAddedUp) {
    // 35.3 + 24.7 is not 60 in binary: the unit vector belongs to the true sum of the two doubles.
    const CosSin unit = unitOf(force("P", 1, 24.7), from(35.3));
    EXPECT_NEAR(static_cast<double>(unit.cos - 0.5L), 0, 1e-15);
    EXPECT_NEAR(static_cast<double>(unit.cos * unit.cos + unit.sin * unit.sin - 1), 0, 1e-18);
}

TEST(Slopes, AreAbsoluteAndSigned) {
    for (const Sketch& sheet : {from(0), from(90), from(35, Sense::cw)}) {
        EXPECT_EQ(unitOf(slope("P", 1, 3, 4), sheet).cos, 0.6L);
        EXPECT_EQ(unitOf(slope("P", 1, 3, 4), sheet).sin, 0.8L);
        EXPECT_EQ(unitOf(slope("P", 1, -3, -4), sheet).sin, -0.8L);
        EXPECT_EQ(unitOf(slope("P", 1, 0, -2), sheet).cos, 0);
    }
    EXPECT_EQ(unitOf(slope("P", 1, 1e150, 1e150), from(0)).cos,
              unitOf(slope("P", 1, 1e-150, 1e-150), from(0)).cos);
}

TEST(Bearings, AreAbsoluteWithNorthUpAndEastRight) {
    for (const Sketch& sheet : {from(0), from(90, Sense::cw)}) {
        EXPECT_EQ(unitOf(bearing("P", 1, 'N', 30, 'E'), sheet).cos, 0.5L);
        EXPECT_EQ(unitOf(bearing("P", 1, 'S', 30, 'E'), sheet).cos, 0.5L);
        EXPECT_LT(unitOf(bearing("P", 1, 'S', 30, 'E'), sheet).sin, 0);
        EXPECT_EQ(unitOf(bearing("P", 1, 'S', 90, 'W'), sheet).cos, -1);
        EXPECT_EQ(unitOf(bearing("P", 1, 'N', 0, 'W'), sheet).sin, 1);
    }
}

TEST(AGivenAngle, IsReferredAsItWasTyped) {
    for (const double axis : {0.0, 90.0, 35.3}) {
        EXPECT_EQ(referredDirection(force("P", 1, 25).direction, from(axis)), 25);
        EXPECT_EQ(referredDirection(force("P", 1, 12.9).direction, from(axis, Sense::cw)), 12.9);
        EXPECT_EQ(referredDirection(force("P", 1, 385).direction, from(axis)), 25);
        EXPECT_EQ(referredDirection(force("P", 1, -180).direction, from(axis)), 180);
    }
}

TEST(SlopesAndBearings, AreReferredToTheAxisOfTheSheet) {
    EXPECT_EQ(referredDirection(bearing("P", 1, 'N', 30, 'E').direction, from(0)), 60);
    EXPECT_EQ(referredDirection(bearing("P", 1, 'N', 30, 'E').direction, from(90)), -30);
    EXPECT_EQ(referredDirection(bearing("P", 1, 'N', 30, 'E').direction, from(90, Sense::cw)), 30);
    EXPECT_EQ(referredDirection(bearing("P", 1, 'N', 12.5, 'E').direction, from(0)), 77.5);
    EXPECT_EQ(referredDirection(bearing("P", 1, 'S', 0, 'E').direction, from(90, Sense::cw)), 180);
    EXPECT_EQ(referredDirection(slope("P", 1, 1, 1).direction, from(0)), 45);
    EXPECT_EQ(referredDirection(slope("P", 1, -1, 1).direction, from(180)), -45);
    EXPECT_FALSE(referredDirection(force("P", 1, kToFind).direction, from(0)));
}

TEST(AVectorsDirection, IsReferredExactlyOnTheAxes) {
    EXPECT_EQ(referredDirection(0.0L, 5.0L, from(90)), 0);
    EXPECT_EQ(referredDirection(0.0L, -5.0L, from(90)), 180);
    EXPECT_EQ(referredDirection(0.0L, -5.0L, from(90, Sense::cw)), 180);
    EXPECT_EQ(referredDirection(-5.0L, 0.0L, from(0, Sense::cw)), 180);
    EXPECT_EQ(referredDirection(0.0L, 5.0L, from(0, Sense::cw)), -90);
    EXPECT_FALSE(referredDirection(0.0L, 0.0L, from(0)));
    Sketch gon = from(0);
    gon.angleUnit = AngleUnit::gon;
    EXPECT_EQ(referredDirection(1.0L, 1.0L, gon), 50);
}

TEST(AnglesInGonAndRadians, PointWhereTheirDegreesDo) {
    Sketch gon = from(90);
    gon.angleUnit = AngleUnit::gon;
    EXPECT_EQ(unitOf(force("P", 1, 100), gon).cos, -1);
    Sketch rad = from(0);
    rad.angleUnit = AngleUnit::rad;
    EXPECT_NEAR(static_cast<double>(unitOf(force("P", 1, 0.5235987755982988), rad).sin), 0.5, 1e-16);
}

TEST(Names, AreGivenInOrderAndNeverTwice) {
    Sketch made = emptySketch();
    std::vector<std::string> names;
    for (int i = 0; i < 9; ++i) {
        names.push_back(nextForceName(made));
        made.forces.push_back(force(names.back(), 1, 0));
    }
    EXPECT_EQ(names, (std::vector<std::string>{"P", "Q", "S", "T", "U", "V", "W", "F1", "F2"}));
    EXPECT_FALSE(firstFault(made));
    Sketch sumNamedP = sketch({}, force("P", kToFind, kToFind));
    EXPECT_EQ(nextForceName(sumNamedP), "Q");
}

TEST(TheSum, TakesTheFirstFreeOfItsLetters) {
    EXPECT_EQ(defaultSumName({}), "R");
    EXPECT_EQ(defaultSumName({force("R", 1, 0)}), "S");
    EXPECT_EQ(defaultSumName({force("S", 1, 0), force("R", 1, 0)}), "T");
    const std::vector<Force> all{force("R", 1, 0), force("S", 1, 0), force("T", 1, 0)};
    EXPECT_EQ(defaultSumName(all), "R1");
}

TEST(Sketches, AreEqualWhenAllThatIsGivenIsEqual) {
    const Sketch one = sketch({force("P", 340, 25)});
    Sketch other = one;
    EXPECT_EQ(one, other);
    other.forces[0].direction.form = SlopeForm{3, 4};
    EXPECT_NE(one, other);
    EXPECT_TRUE(isEquilibrium(balanced({})));
    EXPECT_FALSE(isEquilibrium(one));
}

} // namespace TAILPOINT_FILE
} // namespace tailpoint::testing
