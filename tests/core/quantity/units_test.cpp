#include "core/quantity/units.h"

#include <gtest/gtest.h>

#include <cmath>

namespace tailpoint {
namespace {

TEST(ForceUnits, HaveTheExactFactorsOfNistSp811) {
    EXPECT_EQ(newtonsPer(ForceUnit::N), 1);
    EXPECT_EQ(newtonsPer(ForceUnit::kN), 1000);
    EXPECT_EQ(newtonsPer(ForceUnit::lbf), 4.4482216152605);
    EXPECT_EQ(newtonsPer(ForceUnit::kip), 4448.2216152605);
    EXPECT_EQ(newtonsPer(ForceUnit::kgf), 9.80665);
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
    for (const AngleUnit unit : kAngleUnits) {
        EXPECT_EQ(angleUnitFrom(nameOf(unit)), unit);
    }
}

TEST(UnitNames, AreTakenLetterForLetter) {
    for (const char* name : {"", "n", "KN", "kn", "pound", "N ", "Kip"}) {
        EXPECT_FALSE(forceUnitFrom(name)) << name;
    }
    for (const char* name : {"", "DEG", "degrees", "grad"}) {
        EXPECT_FALSE(angleUnitFrom(name)) << name;
    }
}

} // namespace
} // namespace tailpoint
