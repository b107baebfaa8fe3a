// SPDX-License-Identifier: MIT
// Every family against arithmetic of 50 digits: the bounds that core/solve/solve.h states.
#include "tests/support/many_digits.h"
#include "tests/support/referee.h"

#include <gtest/gtest.h>

namespace tailpoint::testing {
namespace TAILPOINT_FILE {

using Real =
    boost::multiprecision::number<boost::multiprecision::cpp_bin_float<50>, boost::multiprecision::et_off>;

constexpr std::uint64_t kCases = 20'000;
constexpr std::uint64_t kSeed = 811;

void report(const Referee<Real>& referee) {
    for (const std::string& fault : referee.faults()) {
        ADD_FAILURE() << "seed " << kSeed << ", " << fault;
    }
    EXPECT_EQ(referee.cases(), kCases);
    EXPECT_LT(referee.exempt(), kCases / 20) << "too many cases fall into the bands: nothing is tested there";
}

TEST(Resultant, KeepsItsErrorBoundIn20000SeededCases) {
    Dice dice(kSeed);
    Referee<Real> referee;
    for (std::uint64_t i = 0; i < kCases; ++i) {
        referee.judge(anyReference(dice, resultantCase(dice, kindOf(i))));
    }
    report(referee);
    EXPECT_GT(referee.tallies().at("resultant direction").checks, kCases * 9 / 10);
}

TEST(AnyTwoUnknowns, KeepTheirErrorBoundsIn20000SeededCases) {
    Dice dice(kSeed);
    Referee<Real> referee;
    for (std::uint64_t i = 0; i < kCases; ++i) {
        referee.judge(anyCase(dice, i));
    }
    report(referee);
    for (const char* family :
         {"resultant magnitude", "two magnitudes magnitude", "magnitude and direction magnitude",
          "two directions direction", "smallest magnitude", "backward", "shown magnitude"}) {
        EXPECT_GT(referee.tallies().at(family).checks, 2'000u) << family;
    }
}

} // namespace TAILPOINT_FILE
} // namespace tailpoint::testing
