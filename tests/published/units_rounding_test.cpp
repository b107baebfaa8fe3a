// SPDX-License-Identifier: MIT
// Unit factors and rounding rules as printed in standards and books.
#include "tests/support/printed.h"

#include "core/quantity/angle.h"
#include "core/quantity/decimals.h"
#include "core/quantity/units.h"

namespace tailpoint::testing {
namespace TAILPOINT_FILE {

// Source: NIST Special Publication 811 (2008), appendix B.9 and its footnote (as quoted elsewhere).
TEST(PublishedUnits, OfForceHaveTheirPrintedFactors) {
    expectPrinted("pound-force", convert(1, ForceUnit::lbf, ForceUnit::N), "4.448222");
    EXPECT_EQ(convert(1, ForceUnit::lbf, ForceUnit::N), 4.4482216152605);
    expectPrinted("ton-force of 2000 lbf", convert(2000, ForceUnit::lbf, ForceUnit::N), "8.896443e3");
    EXPECT_EQ(convert(2, ForceUnit::kip, ForceUnit::N), 8896.443230521);
    expectPrinted("kilogram-force", convert(1, ForceUnit::kgf, ForceUnit::N), "9.80665");
}

// Source: SI Brochure, 9e, table 8 (degree, second of arc); NIST SP 811 B.9 (mil of 6400 to the turn; the
// degree's and the mil's further digits from memory).
TEST(PublishedUnits, OfAngleHaveTheirPrintedFactors) {
    expectPrinted("degree", toRadians(1, AngleUnit::deg), "1.745329e-2");
    expectPrinted("second of arc", toRadians(1.0 / 3600, AngleUnit::deg), "4.848137e-6");
    expectPrinted("mil", toRadians(turnIn(AngleUnit::deg) / 6400, AngleUnit::deg), "9.817477e-4");
    expectPrinted("mil in degrees", fromRadians(turnIn(AngleUnit::rad) / 6400, AngleUnit::deg), "5.625e-2");
}

struct Row {
    double typed;
    int figures;
    const char* printed;
};

void expectRounded(const Row& row) {
    EXPECT_EQ(significant(row.typed, row.figures, Origin::typed), row.printed) << row.typed;
}

// Source: NIST SP 811 (2008), B.7.1 (as quoted elsewhere).
TEST(PublishedRoundings, OfNistSp811) {
    expectRounded({6.9749515, 3, "6.97"});
    expectRounded({6.9749515, 5, "6.9750"});
}

// Source: ISO 80000-1, annex B.3, rule A with the range 0.1 (as quoted elsewhere).
TEST(PublishedRoundings, OfIso80000GoToTheEvenDigit) {
    EXPECT_EQ(fixedDecimals(12.25, 1, Origin::typed), "12.2");
    EXPECT_EQ(fixedDecimals(-12.25, 1, Origin::typed), "-12.2");
    EXPECT_EQ(fixedDecimals(12.251, 1, Origin::typed), "12.3") << "one step only, never staged";
}

// Source: Hibbeler, Engineering Mechanics: Statics, sec. 1.5 (rule; attribution from memory).
TEST(PublishedRoundings, OfAStaticsBook) {
    for (const Row& row : {Row{3.5587, 3, "3.56"}, Row{0.5896, 3, "0.590"}, Row{9.3866, 3, "9.39"},
                           Row{1.341, 3, "1.34"}, Row{0.3762, 3, "0.376"}, Row{9.871, 3, "9.87"},
                           Row{75.25, 3, "75.2"}, Row{0.1275, 3, "0.128"}, Row{0.2555, 3, "0.256"}}) {
        expectRounded(row);
    }
}

// Source: Hartnell College, rules of rounding.
TEST(PublishedRoundings, OfACollegeSheet) {
    for (const Row& row : {Row{56.748, 3, "56.7"}, Row{2.146, 3, "2.15"}, Row{21.4501, 3, "21.5"},
                           Row{21.350, 3, "21.4"}, Row{21.45, 3, "21.4"}}) {
        expectRounded(row);
    }
}

// Source: GUM (JCGM 100:2008), 7.2.6 (as quoted elsewhere).
TEST(PublishedRoundings, OfAMeasuredResistance) {
    EXPECT_EQ(fixedDecimals(10.05762, 3, Origin::typed), "10.058");
}

// Decimal ties that are no binary ties: the typed decimal decides here.
TEST(PublishedRoundings, OfDecimalTiesThatAreNoBinaryTies) {
    expectRounded({2.675, 3, "2.68"});
    expectRounded({1.15, 2, "1.2"});
    expectRounded({0.285, 2, "0.28"});
}

} // namespace TAILPOINT_FILE
} // namespace tailpoint::testing
