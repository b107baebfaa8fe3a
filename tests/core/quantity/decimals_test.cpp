// SPDX-License-Identifier: MIT
#include "core/quantity/decimals.h"

#include "tests/support/cases.h"
#include "tests/support/many_digits.h"

#include <gtest/gtest.h>

#include <cmath>

namespace tailpoint {
namespace TAILPOINT_FILE {

struct Row {
    double value;
    int digits;
    const char* shown;
};

TEST(SignificantFigures, AreShownAsPeopleWriteThem) {
    const Row table[] = {
        {520.374, 3, "520"},         {5, 3, "5.00"},        {1234, 3, "1230"},       {0.5, 1, "0.5"},
        {0.00123456, 3, "0.00123"},  {97.7349, 4, "97.73"}, {999.6, 3, "1000"},      {999.4, 3, "999"},
        {0.09996, 3, "0.100"},       {-3.6, 2, "-3.6"},     {9999999, 7, "9999999"}, {100000, 3, "100000"},
        {0.1, 12, "0.100000000000"}, {45, 1, "40"}};
    for (const Row& row : table) {
        EXPECT_EQ(significant(row.value, row.digits), row.shown) << row.value << " to " << row.digits;
    }
}

TEST(SignificantFigures, TurnToPowersOfTenOutsideTheUsualRange) {
    EXPECT_EQ(significant(1e-4, 3), "0.000100");
    EXPECT_EQ(significant(9.994e-5, 3), "9.99e-5");
    EXPECT_EQ(significant(9.996e-5, 3), "0.000100");
    EXPECT_EQ(significant(9994000, 3), "9990000");
    EXPECT_EQ(significant(9996000, 3), "1.00e7");
    EXPECT_EQ(significant(1.234e8, 3), "1.23e8");
    EXPECT_EQ(significant(-1.234e150, 3), "-1.23e150");
    EXPECT_EQ(significant(2e-150, 1), "2e-150");
}

TEST(SignificantFigures, OfZeroAreAPlainZero) {
    EXPECT_EQ(significant(0, 3), "0");
    EXPECT_EQ(significant(-0.0, 3), "0");
}

TEST(Decimals, AreShownInFull) {
    const Row table[] = {{-3.6042, 1, "-3.6"}, {25, 1, "25.0"},   {179.96, 1, "180.0"}, {0.04, 1, "0.0"},
                         {-0.04, 1, "0.0"},    {-0.0, 2, "0.00"}, {12.5, 0, "12"},      {13.5, 0, "14"},
                         {0.06, 1, "0.1"},     {0.05, 1, "0.0"},  {-0.4, 0, "0"},       {99.95, 1, "100.0"},
                         {1e-300, 2, "0.00"},  {0.5, 0, "0"},     {1.5, 0, "2"},        {0.44, 3, "0.440"}};
    for (const Row& row : table) {
        EXPECT_EQ(fixedDecimals(row.value, row.digits, Origin::typed), row.shown)
            << row.value << " to " << row.digits;
    }
}

// Typed: the decimal that was typed decides, not the double nearest to it.
TEST(TypedTies, GoToTheEvenDigit) {
    EXPECT_EQ(significant(2.675, 3, Origin::typed), "2.68");
    EXPECT_EQ(significant(1.15, 2, Origin::typed), "1.2");
    EXPECT_EQ(significant(0.285, 2, Origin::typed), "0.28");
    EXPECT_EQ(significant(2.665, 3, Origin::typed), "2.66");
    EXPECT_EQ(significant(2.6750000001, 3, Origin::typed), "2.68");
    EXPECT_EQ(significant(2.6649999999, 3, Origin::typed), "2.66");
    EXPECT_EQ(fixedDecimals(12.25, 1, Origin::typed), "12.2");
    EXPECT_EQ(fixedDecimals(12.35, 1, Origin::typed), "12.4");
    EXPECT_EQ(fixedDecimals(-12.25, 1, Origin::typed), "-12.2");
}

TEST(TypedNumbers, OffATieByTheirLastDigitAreNoTie) {
    EXPECT_EQ(significant(2.6650000000001, 3, Origin::typed), "2.67");
    EXPECT_EQ(significant(2.6749999999999, 3, Origin::typed), "2.67");
}

TEST(ComputedTies, CountWithinTheirBandAndNotBeyond) {
    EXPECT_EQ(significant(2.665 * (1 + 4e-13), 3), "2.66");
    EXPECT_EQ(significant(2.675 * (1 - 4e-13), 3), "2.68");
    EXPECT_EQ(significant(2.665 * (1 + 4e-12), 3), "2.67");
    EXPECT_EQ(significant(2.675 * (1 - 4e-12), 3), "2.67");
    EXPECT_EQ(fixedDecimals(0.05 * (1 + 5e-13), 1), "0.0");
    EXPECT_EQ(fixedDecimals(0.05 * (1 + 5e-12), 1), "0.1");
}

TEST(ComputedTies, DoNotSwallowNumbersShownToTwelveFigures) {
    EXPECT_EQ(significant(1.23456789012, 12), "1.23456789012");
    EXPECT_EQ(significant(1.234567890124, 12), "1.23456789012");
    EXPECT_EQ(significant(1.234567890127, 12), "1.23456789013");
    EXPECT_EQ(significant(9.87654321012345, 15), "9.87654321012345");
}

TEST(RoundedNumbers, AreNearestInRandomCases) {
    constexpr std::uint64_t kSeed = 31;
    using Real = boost::multiprecision::number<boost::multiprecision::cpp_bin_float<50>>;
    testing::Dice dice(kSeed);
    for (int i = 0; i < 20'000; ++i) {
        const double value = (dice.toss() ? 1 : -1) * dice.power(-20, 20);
        const int figures = 1 + static_cast<int>(dice.whole(12));
        const Real shown(significant(value, figures));
        const Real unit =
            pow(Real(10), static_cast<int>(std::floor(std::log10(std::fabs(value)))) + 1 - figures);
        ASSERT_LE(abs(shown - Real(value)), unit / 2 * Real(1.0021)) << "seed " << kSeed << ": " << value;
        ASSERT_EQ(roundedToFigures(value, figures), static_cast<double>(shown)) << value;
        ASSERT_EQ(significant(roundedToFigures(value, figures), figures), significant(value, figures))
            << value;
    }
}

TEST(ShortestNumbers, ReadBackAsThemselvesAndStayPlain) {
    EXPECT_EQ(shortest(340), "340");
    EXPECT_EQ(shortest(100000), "100000");
    EXPECT_EQ(shortest(-0.0), "0");
    EXPECT_EQ(shortest(0.1), "0.1");
    EXPECT_EQ(shortest(-12.25), "-12.25");
    EXPECT_EQ(shortest(1e150), "1e+150");
    testing::Dice dice(7);
    for (int i = 0; i < 20'000; ++i) {
        const double value = dice.between(-1, 1) * dice.power(-150, 150);
        ASSERT_EQ(std::stod(shortest(value)), value);
    }
}

TEST(DraggedValues, AreTheNumbersThatAreShown) {
    EXPECT_EQ(roundedToFigures(342.7, 3), 343);
    EXPECT_EQ(roundedToFigures(0, 3), 0);
    EXPECT_EQ(roundedToDecimals(24.96, 1), 25);
    EXPECT_FALSE(std::signbit(roundedToDecimals(-0.01, 1)));
}

} // namespace TAILPOINT_FILE
} // namespace tailpoint
