// SPDX-License-Identifier: MIT
#include "core/sketch/shown_digits.h"

#include "core/sketch/shown.h"
#include "tests/support/sketches.h"

#include <cmath>
#include <gtest/gtest.h>
#include <tuple>

namespace tailpoint::testing {
namespace TAILPOINT_FILE {

TEST(ShownDigits, AMagnitudeSetByHandIsTheOneThatIsShown) {
    Force moved = force("P", 340, 25);
    moved.magnitude.tolerance = plusMinus(2);
    moved.magnitude.typed = TypedForce{34, ForceUnit::kgf, {}};
    setShownMagnitude(moved, 347.83, sheet());
    EXPECT_EQ(moved.magnitude.value, 348); // three figures
    EXPECT_EQ(moved.magnitude.tolerance, plusMinus(2)) << "the tolerance stays";
    EXPECT_FALSE(moved.magnitude.typed) << "nobody typed this value";
}

TEST(ShownDigits, ADirectionSetByHandIsTheOneThatIsShown) {
    Force turned = force("P", 340, 25);
    setShownDirection(turned, 31.4159, sheet());
    EXPECT_EQ(std::get<AngleForm>(turned.direction.form).value, 31.4);
    setShownDirection(turned, 0.31416, sheet(AngleUnit::rad)); // two decimals more in radians
    EXPECT_EQ(std::get<AngleForm>(turned.direction.form).value, 0.314);
}

TEST(ShownDigits, TheHalfTurnHasOneSign) {
    Force turned = force("P", 340, 25);
    for (const double near : {-179.99, -180.0, 179.99, 180.04}) {
        setShownDirection(turned, near, sheet());
        EXPECT_EQ(std::get<AngleForm>(turned.direction.form).value, 180) << near;
    }
}

TEST(ShownDigits, ABearingStaysABearingInEveryQuadrant) {
    struct Case {
        double degrees; // counter-clockwise from +x, which is east
        const char* shown;
    };
    for (const auto& [degrees, shown] :
         {Case{60, "N30°E"}, Case{120, "N30°W"}, Case{-60, "S30°E"}, Case{-120, "S30°W"}}) {
        Force turned = bearing("P", 1, 'N', 10, 'E');
        setShownDirection(turned, degrees, sheet());
        EXPECT_EQ(shownAsGiven(turned.direction, sheet()), shown);
    }
}

TEST(ShownDigits, ASlopeBecomesAnAngle) {
    Force turned = slope("P", 1, 3, 4);
    setShownDirection(turned, 53.13, sheet());
    EXPECT_EQ(std::get<AngleForm>(turned.direction.form).value, 53.1);
}

TEST(ShownDigits, TheStepIsOneOfTheLastShownDigit) {
    EXPECT_DOUBLE_EQ(lastDigitOfMagnitude(340, sheet()), 1);
    EXPECT_DOUBLE_EQ(lastDigitOfMagnitude(1, sheet()), 0.01);
    EXPECT_DOUBLE_EQ(lastDigitOfMagnitude(0, sheet()), 0.01);
    EXPECT_DOUBLE_EQ(lastDigitOfAngle(sheet()), 0.1);
    EXPECT_DOUBLE_EQ(lastDigitOfAngle(sheet(AngleUnit::rad)), 0.001);
}

TEST(ShownDigits, DirectionsGoToTheSheetsAxisAndBack) {
    // 25° clockwise from +y is 65° counter-clockwise from +x.
    EXPECT_DOUBLE_EQ(absoluteDegrees(25, sheet(AngleUnit::deg, 90, Sense::cw)), 65);
    EXPECT_DOUBLE_EQ(referredFromAbsolute(65, sheet(AngleUnit::deg, 90, Sense::cw)), 25);
    for (const AngleUnit unit : {AngleUnit::deg, AngleUnit::rad, AngleUnit::gon}) {
        for (double degrees = -170; degrees <= 180; degrees += 10) {
            const Sketch made = sheet(unit, 35, Sense::cw);
            EXPECT_NEAR(absoluteDegrees(referredFromAbsolute(degrees, made), made), degrees, 1e-12 * 180);
        }
    }
}

/// A hand takes a direction on from where it was given: 223 degrees go to 222.9, through 180 and 0, in their
/// sense.
TEST(ShownDigits, ADirectionBeyondAHalfTurnStaysInItsSense) {
    const Sketch made = sheet();
    for (const auto& [given, to, shown] :
         {std::tuple{223.0, -137.14, 222.9}, std::tuple{223.0, 170.0, 170.0}, std::tuple{223.0, -0.06, 359.9},
          std::tuple{-223.0, 137.14, -222.9}, std::tuple{170.0, -179.9, -179.9},
          std::tuple{223.0, 0.0, 0.0}}) {
        Force turned = force("P", 340, given);
        setShownDirection(turned, to, made);
        EXPECT_DOUBLE_EQ(std::get<AngleForm>(turned.direction.form).value, shown) << given << " to " << to;
    }
}

} // namespace TAILPOINT_FILE
} // namespace tailpoint::testing
