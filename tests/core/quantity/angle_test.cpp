// SPDX-License-Identifier: MIT
#include "core/quantity/angle.h"

#include "tests/support/cases.h"
#include "tests/support/many_digits.h"
#include "tests/support/oracle.h"

#include <gtest/gtest.h>

#include <limits>
#include <numbers>

namespace tailpoint {
namespace TAILPOINT_FILE {

using testing::Dice;
using Real =
    boost::multiprecision::number<boost::multiprecision::cpp_bin_float<50>, boost::multiprecision::et_off>;

constexpr double kPi = std::numbers::pi;

double ulpOf(double value) {
    const double size = std::fabs(value);
    return std::nextafter(size, std::numeric_limits<double>::infinity()) - size;
}

/// Distance of two angles whose turn is `turn`: -180 and 180 degrees are one direction.
Real apart(const Real& a, const Real& b, const Real& turn) {
    const Real distance = abs(a - b);
    return distance > turn / 2 ? Real(turn - distance) : distance;
}

struct Exact {
    double degrees;
    long double cos, sin;
};

TEST(CosineAndSine, AreExactAtMultiplesOf30And45Degrees) {
    const long double half = 0.5L;
    const long double diagonal = std::sqrt(0.5L);
    const long double steep = std::sqrt(3.0L) / 2;
    const Exact table[] = {
        {0, 1, 0},    {30, steep, half},    {45, diagonal, diagonal},    {60, half, steep},
        {90, 0, 1},   {120, -half, steep},  {135, -diagonal, diagonal},  {150, -steep, half},
        {180, -1, 0}, {210, -steep, -half}, {225, -diagonal, -diagonal}, {240, -half, -steep},
        {270, 0, -1}, {300, half, -steep},  {315, diagonal, -diagonal},  {330, steep, -half}};
    for (const Exact& row : table) {
        for (const double turns : {0.0, 360.0, -360.0, 720.0, 3.6e9, -3.6e15}) {
            const CosSin value = cosSin(row.degrees + turns, AngleUnit::deg);
            EXPECT_EQ(value.cos, row.cos) << row.degrees << " + " << turns;
            EXPECT_EQ(value.sin, row.sin) << row.degrees << " + " << turns;
            EXPECT_FALSE(std::signbit(value.cos) && value.cos == 0) << row.degrees;
            EXPECT_FALSE(std::signbit(value.sin) && value.sin == 0) << row.degrees;
        }
    }
}

TEST(CosineAndSine, AreExactAtMultiplesOf50Gon) {
    EXPECT_EQ(cosSin(100, AngleUnit::gon).cos, 0);
    EXPECT_EQ(cosSin(200, AngleUnit::gon).sin, 0);
    EXPECT_EQ(cosSin(50, AngleUnit::gon).cos, std::sqrt(0.5L));
    EXPECT_EQ(cosSin(-300, AngleUnit::gon).sin, 1);
}

TEST(CosineAndSine, OfOppositeDirectionsAreOppositeToTheLastBit) {
    for (const double degrees : {25.0, 12.9, -40.0, 0.1, 89.9}) {
        const CosSin one = cosSin(degrees, AngleUnit::deg);
        const CosSin other = cosSin(degrees + 180, AngleUnit::deg);
        if (degrees + 180 - 180 == degrees) {
            EXPECT_EQ(one.cos, -other.cos) << degrees;
            EXPECT_EQ(one.sin, -other.sin) << degrees;
        }
    }
}

TEST(CosineAndSine, StayWithinTwoToTheMinus62OfTheTruth) {
    constexpr std::uint64_t kSeed = 90;
    Dice dice(kSeed);
    for (int i = 0; i < 20'000; ++i) {
        const double degrees = i % 3 == 0 ? dice.between(-1e6, 1e6) : dice.between(-360, 360);
        const CosSin value = cosSin(degrees, AngleUnit::deg);
        const auto truth = oracle::unitAt<Real>(Real(degrees));
        ASSERT_LE(abs(Real(value.cos) - truth.x), Real(0x1p-62)) << "seed " << kSeed << ": " << degrees;
        ASSERT_LE(abs(Real(value.sin) - truth.y), Real(0x1p-62)) << "seed " << kSeed << ": " << degrees;
    }
}

TEST(Normalizing, BringsAnglesIntoOneTurnAndKeepsThoseThatAreInIt) {
    EXPECT_EQ(normalized(25, AngleUnit::deg), 25);
    EXPECT_EQ(normalized(385, AngleUnit::deg), 25);
    EXPECT_EQ(normalized(-335, AngleUnit::deg), 25);
    EXPECT_EQ(normalized(180, AngleUnit::deg), 180);
    EXPECT_EQ(normalized(-180, AngleUnit::deg), 180);
    EXPECT_EQ(normalized(540, AngleUnit::deg), 180);
    EXPECT_EQ(normalized(181, AngleUnit::deg), -179);
    EXPECT_EQ(normalized(0.1, AngleUnit::deg), 0.1);
    EXPECT_EQ(normalized(-200, AngleUnit::gon), 200);
    EXPECT_EQ(normalized(427.8, AngleUnit::gon), std::remainder(427.8, 400));
    EXPECT_EQ(normalized(-kPi, AngleUnit::rad), kPi);
    EXPECT_EQ(normalized(0.4, AngleUnit::rad), 0.4);
    EXPECT_NEAR(normalized(0.4 + 2 * kPi, AngleUnit::rad), 0.4, 1e-15);
}

TEST(Normalizing, NeverGivesMinusZero) {
    for (const AngleUnit unit : kAngleUnits) {
        for (const double value : {-0.0, 0.0, -turnIn(unit), turnIn(unit)}) {
            EXPECT_FALSE(std::signbit(normalized(value, unit)) && normalized(value, unit) == 0);
        }
    }
}

TEST(Normalizing, IsFinitelyDoneForTheLargestNumbers) {
    for (const AngleUnit unit : kAngleUnits) {
        for (const double value : {1e300, -1e300, 1e16}) {
            const double angle = normalized(value, unit);
            EXPECT_GT(angle, -turnIn(unit) / 2);
            EXPECT_LE(angle, turnIn(unit) / 2);
        }
    }
}

TEST(DirectionOfAVector, IsExactOnAxesAndDiagonals) {
    EXPECT_EQ(directionOf(5, 0, AngleUnit::deg), 0);
    EXPECT_EQ(directionOf(5, -0.0L, AngleUnit::deg), 0);
    EXPECT_EQ(directionOf(0, 1e-150L, AngleUnit::deg), 90);
    EXPECT_EQ(directionOf(-1e150L, 0, AngleUnit::deg), 180);
    EXPECT_EQ(directionOf(-1, -0.0L, AngleUnit::deg), 180);
    EXPECT_EQ(directionOf(0, -2, AngleUnit::deg), -90);
    EXPECT_EQ(directionOf(3, 3, AngleUnit::deg), 45);
    EXPECT_EQ(directionOf(-3, 3, AngleUnit::deg), 135);
    EXPECT_EQ(directionOf(-3, -3, AngleUnit::deg), -135);
    EXPECT_EQ(directionOf(3, -3, AngleUnit::gon), -50);
    EXPECT_EQ(directionOf(-1, 0, AngleUnit::rad), kPi);
    EXPECT_FALSE(directionOf(0, 0, AngleUnit::deg));
    EXPECT_FALSE(directionOf(-0.0L, 0, AngleUnit::deg));
}

TEST(DirectionOfAVector, GivesBackEveryTenthOfADegreeThatMadeIt) {
    for (int tenths = -1799; tenths <= 1800; ++tenths) {
        const double degrees = tenths / 10.0;
        const CosSin unit = cosSin(degrees, AngleUnit::deg);
        EXPECT_EQ(directionOf(unit.cos, unit.sin, AngleUnit::deg), degrees);
    }
}

TEST(DirectionOfAVector, StaysWithinOneUlpOfTheTruth) {
    constexpr std::uint64_t kSeed = 62;
    Dice dice(kSeed);
    for (int i = 0; i < 20'000; ++i) {
        const double x = dice.between(-1, 1) * dice.power(-150, 150);
        const double y = i % 2 == 0 ? x * dice.power(-12, 12) * (dice.toss() ? 1 : -1) : dice.between(-1, 1);
        const double degrees = directionOf(x, y, AngleUnit::deg).value();
        const Real truth = oracle::degreesOf(oracle::Vec<Real>{Real(x), Real(y)});
        ASSERT_LE(apart(Real(degrees), truth, Real(360)), Real(ulpOf(degrees)))
            << "seed " << kSeed << ": " << x << ", " << y;
    }
}

TEST(AngleBetweenVectors, IsCountedCounterClockwiseFromTheFirst) {
    EXPECT_EQ(signedAngle({1, 0}, {0, 1}), kPi / 2);
    EXPECT_EQ(signedAngle({0, 1}, {1, 0}), -kPi / 2);
    EXPECT_EQ(signedAngle({1, 0}, {-1, 0}), kPi);
    EXPECT_EQ(signedAngle({1, 0}, {-1, -0.0}), kPi);
    EXPECT_EQ(signedAngle({2, 2}, {3, 3}), 0);
    EXPECT_FALSE(signedAngle({0, 0}, {1, 0}));
    EXPECT_FALSE(signedAngle({1, 0}, {0, 0}));
}

// Pairs that nearly agree, nearly oppose, nearly stand upright on each other, and pairs of very unlike
// lengths.
TEST(AngleBetweenVectors, StaysWithinItsErrorForAllPairs) {
    constexpr std::uint64_t kSeed = 82;
    Dice dice(kSeed);
    for (int i = 0; i < 20'000; ++i) {
        const double size = dice.power(-149, 149);
        const Eigen::Vector2d a{size * dice.between(-1, 1), size * dice.between(-1, 1)};
        Eigen::Vector2d b{dice.between(-1, 1), dice.between(-1, 1)};
        if (i % 4 != 0) {
            const double factor = dice.power(-1, 1) / size;
            const Eigen::Vector2d turned = i % 4 == 1   ? a
                                           : i % 4 == 2 ? Eigen::Vector2d(-a)
                                                        : Eigen::Vector2d(-a.y(), a.x());
            b = factor * turned;
            b.x() *= 1 + testing::hair(dice);
        }
        const double angle = signedAngle(a, b).value();
        const oracle::Vec<Real> p{Real(a.x()), Real(a.y())};
        const oracle::Vec<Real> q{Real(b.x()), Real(b.y())};
        const Real truth = atan2(oracle::cross(p, q), oracle::dot(p, q));
        ASSERT_LE(apart(Real(angle), truth, 2 * boost::math::constants::pi<Real>()),
                  Real(kAngleErrorUlp * ulpOf(angle)))
            << "seed " << kSeed << ", case " << i << ": " << angle;
    }
}

TEST(RadiansInUnits, GiveRoundAnglesForRoundParts) {
    EXPECT_EQ(fromRadians(kPi / 2, AngleUnit::deg), 90);
    EXPECT_EQ(fromRadians(kPi, AngleUnit::gon), 200);
    EXPECT_EQ(fromRadians(1.25, AngleUnit::rad), 1.25);
    EXPECT_EQ(toRadians(180, AngleUnit::deg), kPi);
    EXPECT_EQ(toRadians(400, AngleUnit::gon), 2 * kPi);
}

} // namespace TAILPOINT_FILE
} // namespace tailpoint
