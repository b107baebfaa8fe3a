// SPDX-License-Identifier: MIT
#include "core/sketch/shown.h"

#include "tests/support/sketches.h"

#include <gtest/gtest.h>

namespace tailpoint::testing {
namespace TAILPOINT_FILE {

TEST(ShownForces, HaveTheSheetsFiguresAndUnit) {
    Sketch made = sheet();
    EXPECT_EQ(shownForceWithUnit(520.37, made), "520 N");
    made.figures = 4;
    made.forceUnit = ForceUnit::kip;
    EXPECT_EQ(shownForceWithUnit(520.37, made), "520.4 kip");
    EXPECT_EQ(shownForce(0, made), "0");
    EXPECT_EQ(shownForce(2.675, sheet(), Origin::typed), "2.68");
}

TEST(ShownForces, HaveOneFigureMoreAfterAOneWhereThatIsSet) {
    Sketch made = sheet();
    made.moreAfterOne = true;
    for (const auto& [value, text] :
         {std::pair(1234.5, "1234"), std::pair(2345.6, "2350"), std::pair(19.996, "20.0"),
          std::pair(19.994, "19.99"), std::pair(-0.10049, "-0.1005"), std::pair(9.9996, "10.00"),
          std::pair(520.37, "520"), std::pair(0.0, "0")})
        EXPECT_EQ(shownForce(value, made), text);
    EXPECT_EQ(figuresOf(186, made), 4);
    EXPECT_EQ(figuresOf(286, made), 3);
    EXPECT_EQ(shownAngle(-123.604, made), "-123.6°");
}

TEST(ShownAngles, HaveTheSheetsDecimalsAndUnit) {
    EXPECT_EQ(shownAngle(-3.604, sheet()), "-3.6°");
    EXPECT_EQ(shownAngle(-0.01, sheet()), "0.0°");
    EXPECT_EQ(shownAngle(0.4363, sheet(AngleUnit::rad)), "0.436 rad");
    EXPECT_EQ(shownAngle(27.78, sheet(AngleUnit::gon)), "27.8 gon");
    EXPECT_EQ(shownAngleFromRadians(1.1344640137963142, sheet()), "65.0°");
}

TEST(GivenDirections, AreShownInTheFormTheyWereGivenIn) {
    EXPECT_EQ(shownAsGiven(force("P", 1, 25).direction, sheet()), "25.0°");
    EXPECT_EQ(shownAsGiven(slope("P", 1, 3, -4).direction, sheet()), "3 : -4");
    EXPECT_EQ(shownAsGiven(bearing("P", 1, 'N', 30, 'E').direction, sheet()), "N30°E");
    EXPECT_EQ(shownAsGiven(force("P", 1, kToFind).direction, sheet()), "to find");
}

// Who solves the question from the sheet has the numbers that it is solved with; what was converted from
// another unit (850 kgf, 100 lbf) has no such end.
TEST(GivenValues, HaveUpToTwoPlacesMoreWhereTheyWereTyped) {
    const Sketch three = sheet();
    const auto size = [&](double value) {
        return shownWithTolerance(force("P", value, 25).magnitude, three);
    };
    EXPECT_EQ(size(345.5), "345.5 N");
    EXPECT_EQ(size(345.25), "345.25 N");
    EXPECT_EQ(size(2.675), "2.675 N");
    EXPECT_EQ(size(340), "340 N");
    EXPECT_EQ(size(8335.6525), "8340 N");
    EXPECT_EQ(size(444.82216152605), "445 N");
    const auto way = [&](double degrees) { return shownAsGiven(force("P", 1, degrees).direction, three); };
    EXPECT_EQ(way(25.25), "25.25°");
    EXPECT_EQ(way(-0.125), "-0.125°");
    EXPECT_EQ(way(25), "25.0°");
    EXPECT_EQ(way(27.777777777777779), "27.8°");
}

TEST(AxisNames, AreTheAxesOrTheirAngle) {
    EXPECT_EQ(axisName({0, Sense::ccw}), "+x");
    EXPECT_EQ(axisName({90, Sense::ccw}), "+y");
    EXPECT_EQ(axisName({180, Sense::ccw}), "-x");
    EXPECT_EQ(axisName({270, Sense::ccw}), "-y");
    EXPECT_EQ(axisName({-90, Sense::ccw}), "-y");
    EXPECT_EQ(axisName({35, Sense::ccw}), "35.0° axis");
    EXPECT_EQ(referenceWords({90, Sense::cw}), "from +y, clockwise");
}

TEST(DirectionWords, SayTheTurnFromTheAxisAsItIsSeen) {
    EXPECT_EQ(directionWords(-3.604, sheet()), "3.6° clockwise from +x");
    EXPECT_EQ(directionWords(12.94, sheet()), "12.9° counter-clockwise from +x");
    EXPECT_EQ(directionWords(12.94, sheet(AngleUnit::deg, 90, Sense::cw)), "12.9° clockwise from +y");
    EXPECT_EQ(directionWords(-12.94, sheet(AngleUnit::deg, 90, Sense::cw)),
              "12.9° counter-clockwise from +y");
    EXPECT_EQ(directionWords(0.0, sheet()), "along +x");
    EXPECT_EQ(directionWords(180.0, sheet()), "opposite to +x");
    EXPECT_EQ(directionWords(200.0, sheet(AngleUnit::gon)), "opposite to +x");
    EXPECT_EQ(directionWords(std::nullopt, sheet()), "no direction");
}

TEST(DirectionWords, DoNotCallASmallAngleNone) {
    EXPECT_EQ(directionWords(0.04, sheet()), "less than 0.1° counter-clockwise from +x");
    EXPECT_EQ(directionWords(-0.0004, sheet(AngleUnit::rad)), "less than 0.001 rad clockwise from +x");
    EXPECT_EQ(directionWords(1e-15, sheet()), "along +x");
    EXPECT_EQ(directionWords(-179.99999999999997, sheet()), "opposite to +x");
}

} // namespace TAILPOINT_FILE
} // namespace tailpoint::testing
