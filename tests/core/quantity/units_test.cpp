// SPDX-License-Identifier: MIT
#include "core/quantity/units.h"

#include <gtest/gtest.h>

#include <cmath>

namespace tailpoint {
namespace TAILPOINT_FILE {

TEST(ForceUnits, HaveTheExactFactorsOfNistSp811) {
    EXPECT_EQ(newtonsPer(ForceUnit::N), 1);
    EXPECT_EQ(newtonsPer(ForceUnit::kN), 1000);
    EXPECT_EQ(newtonsPer(ForceUnit::lbf), 4.4482216152605);
    EXPECT_EQ(newtonsPer(ForceUnit::kip), 4448.2216152605);
    EXPECT_EQ(newtonsPer(ForceUnit::kgf), 9.80665);
    EXPECT_EQ(newtonsPer(ForceUnit::daN), 10);
    EXPECT_EQ(newtonsPer(ForceUnit::tonf), 9806.65);
    EXPECT_EQ(newtonsPer(ForceUnit::shortTonf), 8896.443230521); // B.9: ton-force (2000 lbf), 8.896443 E+03
}

// 850 x 9.80665 = 8335.6525 and 850 x 9.81 = 8338.5, by hand; a tonne is 1000 kg (SP 811, B.8).
TEST(MassUnits, AreConvertedAsTheirWeightByTheGivenG) {
    EXPECT_EQ(convert(850, MassUnit::kg, ForceUnit::N, kStandardGravity), 8335.6525);
    EXPECT_EQ(convert(850, MassUnit::kg, ForceUnit::kN, 9.81), 8.3385);
    EXPECT_EQ(convert(1, MassUnit::t, ForceUnit::N, kStandardGravity), 9806.65);
    EXPECT_EQ(convert(1, MassUnit::t, ForceUnit::tonf, kStandardGravity), 1);
    EXPECT_EQ(convert(0.1, MassUnit::kg, ForceUnit::kgf, kStandardGravity), 0.1);
    EXPECT_EQ(convert(2, MassUnit::kg, ForceUnit::N, 1.62), 3.24) << "the moon";
}

TEST(ForceUnits, BesideAValueDoNotHeedG) {
    EXPECT_EQ(convert(1, ForceUnit::kgf, ForceUnit::N, 1.62), 9.80665);
    EXPECT_EQ(convert(1.5, ForceUnit::tonf, ForceUnit::kN, 9.81), 14.709975);
}

TEST(ForceUnits, LeaveAValueAloneBetweenTheSameUnit) {
    for (const ForceUnit unit : kForceUnits) {
        EXPECT_EQ(convert(0.1 + 0.2, unit, unit), 0.1 + 0.2);
    }
}

TEST(ForceUnits, ConvertRoundNumbersExactly) {
    EXPECT_EQ(convert(1.2, ForceUnit::kN, ForceUnit::N), 1200);
    EXPECT_EQ(convert(1, ForceUnit::kip, ForceUnit::lbf), 1000);
    EXPECT_EQ(convert(75, ForceUnit::lbf, ForceUnit::kip), 0.075);
    EXPECT_EQ(convert(1, ForceUnit::lbf, ForceUnit::N), 4.4482216152605);
    EXPECT_EQ(convert(2, ForceUnit::kgf, ForceUnit::N), 19.6133);
}

TEST(ForceUnits, ComeBackWithinTwoRoundings) {
    for (const ForceUnit from : kForceUnits) {
        for (const ForceUnit to : kForceUnits) {
            for (const double value : {340.0, 1e-150, 1e150, 0.123456789}) {
                const double there = convert(value, from, to);
                EXPECT_NEAR(convert(there, to, from) / value, 1, 4 * 0x1p-53)
                    << value << symbolOf(from) << " by way of " << symbolOf(to);
            }
        }
    }
}

TEST(UnitNames, ReadBackAsTheirUnit) {
    for (const ForceUnit unit : kForceUnits) {
        EXPECT_EQ(forceUnitFrom(symbolOf(unit)), unit);
    }
    for (const ForceUnit unit : kForceUnits) {
        EXPECT_EQ(loadUnitFrom(symbolOf(unit)), LoadUnit(unit));
    }
    for (const MassUnit unit : kMassUnits) {
        EXPECT_EQ(loadUnitFrom(symbolOf(unit)), LoadUnit(unit));
        EXPECT_FALSE(forceUnitFrom(symbolOf(unit)));
    }
    EXPECT_FALSE(sheetForceUnitFrom("short tonf"));
    for (const AngleUnit unit : kAngleUnits) {
        EXPECT_EQ(angleUnitFrom(nameOf(unit)), unit);
    }
}

TEST(UnitNames, AreTakenLetterForLetter) {
    for (const char* name :
         {"", "n", "KN", "kn", "pound", "N ", "Kip", "ton", "dan", "Tonf", "short  tonf"}) {
        EXPECT_FALSE(forceUnitFrom(name)) << name;
    }
    for (const char* name : {"", "DEG", "degrees", "grad"}) {
        EXPECT_FALSE(angleUnitFrom(name)) << name;
    }
}

} // namespace TAILPOINT_FILE
} // namespace tailpoint
