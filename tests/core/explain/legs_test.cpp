// SPDX-License-Identifier: MIT
// Legs under a load: which they are, their angles, what they take. Numbers by hand and by mpmath.
#include "core/explain/legs.h"

#include "core/explain/caution.h"
#include "tests/support/sketches.h"

#include <gtest/gtest.h>

namespace tailpoint {
namespace TAILPOINT_FILE {

using namespace testing;

std::optional<Legs> legsOf(const Sketch& sketch) {
    return tailpoint::legsOf(sketch, solve(sketch), 0);
}

Sketch twoLegs(double first, double second) {
    Sketch made = balanced({force("W", 10, -90), force("A", kToFind, first), force("B", kToFind, second)});
    made.forceUnit = ForceUnit::kN;
    return made;
}

TEST(Legs, HaveTheirAnglesAndTheirShareOfTheLoad) {
    const auto legs = legsOf(twoLegs(35, 120));
    ASSERT_TRUE(legs);
    EXPECT_EQ(legs->load, forceVector(0));
    EXPECT_EQ(legs->magnitude, 10);
    ASSERT_EQ(legs->legs.size(), 2U);
    const Leg &a = legs->legs[0], &b = legs->legs[1];
    EXPECT_EQ(a.vector, forceVector(1));
    EXPECT_EQ(a.fromHorizontal, 35);
    EXPECT_EQ(a.fromVertical, 55);
    EXPECT_EQ(b.fromHorizontal, 60);
    EXPECT_EQ(b.fromVertical, 30);
    ASSERT_EQ(a.neighbours.size(), 1U);
    EXPECT_EQ(a.neighbours[0].vector, b.vector);
    EXPECT_EQ(a.neighbours[0].angle, 85);
    EXPECT_EQ(b.neighbours[0].angle, 85);
    EXPECT_NEAR(a.overLoad, 0.501909918772, 1e-12); // cos 60 / sin 85
    EXPECT_NEAR(b.overLoad, 0.822281072021, 1e-12); // cos 35 / sin 85
    EXPECT_FALSE(a.isLow);
}

TEST(Legs, ThatStandLowAreRemarkedUpon) {
    const Sketch low = twoLegs(29.96, 150);
    const auto legs = legsOf(low);
    ASSERT_TRUE(legs);
    EXPECT_TRUE(legs->legs[0].isLow);  // though it is shown as 30.0
    EXPECT_FALSE(legs->legs[1].isLow); // 30 is not less than 30
    EXPECT_EQ(toText(*lowLegsTold(*legs, low)),
              "A stands less than 30\u00B0 from the horizontal: common codes advise against it. Ask the "
              "maker. " +
                  std::string(cautionLine()));
    const Sketch both = twoLegs(20, 160);
    EXPECT_TRUE(toText(*lowLegsTold(*legsOf(both), both))
                    .starts_with("A and B stand less than 30\u00B0 from the horizontal: common codes advise "
                                 "against it. Ask the maker."));
    Sketch cautioned = both; // which has it from its own words
    cautioned.title = "Lifting a crate";
    EXPECT_TRUE(toText(*lowLegsTold(*legsOf(both), cautioned)).ends_with("Ask the maker."));
    EXPECT_FALSE(lowLegsTold(*legsOf(twoLegs(35, 120)), low));
    const auto flat = legsOf(twoLegs(0, 120)); // a tie that lies flat carries none of the load
    ASSERT_TRUE(flat);
    EXPECT_EQ(flat->legs[0].fromHorizontal, 0);
    EXPECT_FALSE(flat->legs[0].isLow);
}

/// 31 and 35 degrees, give or take 2 and 10: down to 29 and 25. 32.5 give or take 2 is not below 30.
TEST(Legs, AreJudgedAtTheLowEndOfTheirTolerance) {
    const auto isLow = [](double direction, double plusMinus, Sense sense) {
        Sketch made = twoLegs(direction, sense == Sense::cw ? -145 : 145);
        made.reference.sense = sense;
        if (sense == Sense::cw)
            made.forces[0].direction.form = AngleForm{90};
        made.forces[1].direction.tolerance = Tolerance{plusMinus, plusMinus, false};
        const Solved solved = solve(made);
        const auto ranges = tolerance::rangesOf(made, solved);
        const auto legs = tailpoint::legsOf(made, solved, 0, &ranges.at(0));
        EXPECT_FALSE(legs.value().legs[0].isLowAtMiddle || legs->legs[1].isLow);
        const auto told = lowLegsTold(*legs, made);
        EXPECT_EQ(told.has_value(), legs->legs[0].isLow);
        if (told) {
            EXPECT_TRUE(
                toText(*told).starts_with("Within the tolerances A can stand less than 30\u00B0 from the "
                                          "horizontal: "))
                << toText(*told);
        }
        return legs->legs[0].isLow;
    };
    EXPECT_TRUE(isLow(31, 2, Sense::ccw));
    EXPECT_TRUE(isLow(35, 10, Sense::ccw));
    EXPECT_TRUE(isLow(35, 40, Sense::ccw)); // through the horizontal
    EXPECT_FALSE(isLow(32.5, 2, Sense::ccw));
    EXPECT_FALSE(isLow(32, 2, Sense::ccw)); // 30 is not less than 30
    EXPECT_TRUE(isLow(-31, 2, Sense::cw));
    EXPECT_FALSE(isLow(-32.5, 2, Sense::cw));
}

TEST(Legs, HangUnderAHookToo) {
    const auto legs =
        legsOf(balanced({force("A", kToFind, -60), force("H", 12, 90), force("B", kToFind, -120)}));
    ASSERT_TRUE(legs);
    EXPECT_EQ(legs->load, forceVector(1));
    ASSERT_EQ(legs->legs.size(), 2U);
    EXPECT_EQ(legs->legs[0].vector, forceVector(2)); // counter-clockwise from the hook's pull
    EXPECT_EQ(legs->legs[0].fromHorizontal, 60);
    EXPECT_NEAR(legs->legs[0].overLoad, 0.577350269190, 1e-12); // 1 / (2 cos 30)
    EXPECT_EQ(legs->legs[0].neighbours.at(0).angle, 60);
}

TEST(Legs, OfThreeEachHasItsNeighbours) {
    const auto legs = legsOf(
        balanced({force("W", kToFind, -90), force("C", 4, 140), force("A", 4, 40), force("B", 2, 90)}));
    ASSERT_TRUE(legs) << "one unknown: W = 8 sin 40 + 2";
    EXPECT_NEAR(legs->magnitude, 7.14230087749, 1e-10);
    ASSERT_EQ(legs->legs.size(), 3U);
    EXPECT_EQ(legs->legs[0].neighbours.size(), 1U);
    EXPECT_EQ(legs->legs[1].neighbours.size(), 2U);
    EXPECT_EQ(legs->legs[1].fromVertical, 0);
    EXPECT_EQ(legs->legs[1].neighbours[1].angle, 50);
}

TEST(Legs, AreThereWhereAllIsGivenAndHolds) {
    // 2 x 5 sin 30 = 5
    EXPECT_TRUE(legsOf(balanced({force("W", 5, -90), force("A", 5, 30), force("B", 5, 150)})));
    EXPECT_FALSE(legsOf(balanced({force("W", 6, -90), force("A", 5, 30), force("B", 5, 150)})));
}

TEST(Legs, OfASumAreThereWithTheCaution) {
    Sketch lifted = sketch({force("A", 5, 60), force("B", 5, 120)});
    EXPECT_FALSE(legsOf(lifted));
    lifted.caution = true;
    const auto legs = legsOf(lifted);
    ASSERT_TRUE(legs);
    EXPECT_EQ(legs->load, kSumVector);
    EXPECT_NEAR(legs->legs[0].overLoad, 0.577350269190, 1e-12);
    lifted.forces[1].direction.form = AngleForm{119}; // the sum is not upright
    EXPECT_FALSE(legsOf(lifted));
}

TEST(Legs, AreNotSeenWhereThereIsNoLoad) {
    EXPECT_FALSE(legsOf(balanced({force("P", 3, 0), force("Q", kToFind, 120), force("S", kToFind, 240)})));
    // A strut may push: its line of action leaves the sense open.
    EXPECT_FALSE(legsOf(
        balanced({force("W", 5, -90), either(force("A", kToFind, 45)), either(force("B", kToFind, 180))})));
    // Something else pulls down with the load.
    EXPECT_FALSE(legsOf(balanced({force("W", 5, -90), force("A", kToFind, 100), force("G", kToFind, -60)})));
    EXPECT_FALSE(legsOf(sketch({force("P", 340, 25), force("Q", 275, -40)})));
}

TEST(Legs, AreToldInTheSheetsUnitFromAnyAxis) {
    Sketch turned = twoLegs(35, 120);
    turned.reference = {90, Sense::cw}; // clockwise from +y: the load at 180, the legs at 55 and -30
    turned.forces[0].direction.form = AngleForm{180};
    turned.forces[1].direction.form = AngleForm{55};
    turned.forces[2].direction.form = AngleForm{-30};
    const auto legs = legsOf(turned);
    ASSERT_TRUE(legs);
    EXPECT_NEAR(legs->legs[0].fromHorizontal, 35, 1e-12);
    Sketch gon = balanced({force("W", 10, -100), force("A", kToFind, 50), force("B", kToFind, 150)});
    gon.angleUnit = AngleUnit::gon;
    const auto inGon = legsOf(gon);
    ASSERT_TRUE(inGon);
    EXPECT_NEAR(inGon->legs[0].fromHorizontal, 50, 1e-12);
    EXPECT_NEAR(inGon->legs[0].neighbours.at(0).angle, 100, 1e-12);
    const LegsTold told = tailpoint::told(*inGon, gon);
    EXPECT_EQ(told.heading, "Legs that carry W");
    ASSERT_EQ(told.table.rows.size(), 2U);
    EXPECT_EQ(toText(told.table.rows[0][1]), "50.0 gon");
    EXPECT_EQ(toText(told.table.rows[0][3]), "100.0 gon to B");
    EXPECT_EQ(toText(told.table.rows[0][4]), "0.707");
}

} // namespace TAILPOINT_FILE
} // namespace tailpoint
