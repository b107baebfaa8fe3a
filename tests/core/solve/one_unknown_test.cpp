// SPDX-License-Identifier: MIT
// One unknown for two equations: answered where both hold with it, exactly or within rounding.
// Numbers by mpmath, 30 digits, where nothing else is said.
#include "core/solve/solve.h"

#include "core/construct/construct.h"
#include "core/explain/explain.h"
#include "core/mark/mark.h"
#include "tests/support/sketches.h"

#include <gtest/gtest.h>
#include <random>

namespace tailpoint::testing {
namespace TAILPOINT_FILE {

Sketch inKilonewtons(Sketch made) {
    made.forceUnit = ForceUnit::kN;
    return made;
}

Sketch legs(double second, double secondWay) {
    return inKilonewtons(
        balanced({force("A", 2.5, 35), force("B", second, secondWay), force("W", kToFind, -90)}));
}

TEST(OneUnknown, ALoadUnderTwoLegsIsFound) {
    const Solved solved = solve(legs(2.5, 145));
    ASSERT_EQ(solved.status, Status::unique);
    EXPECT_EQ(solved.family, Family::oneUnknown);
    EXPECT_NEAR(solved.solutions.at(0).forces[2].magnitude, 2.86788218175523048, 1e-15); // 5 sin 35
    EXPECT_EQ(solved.solutions[0].forces[2].direction, -90);
    EXPECT_LT(solved.solutions[0].residual, 1e-15);
    EXPECT_EQ(solved.message().text(),
              "One unknown for two equations: with W = 2.87 kN both hold, and nothing is left over.");
    EXPECT_EQ(solved.messageCode(), MessageCode::holdsByChance);
    EXPECT_TRUE(solved.remarkCodes().empty());
}

TEST(OneUnknown, WhatRoundingMayLeaveIsSaid) {
    // At 145.1: 0.0025 kN is left across W; three magnitudes to 0.005 and their directions to 0.05 degrees
    // may leave 0.0219.
    const Solved solved = solve(legs(2.5, 145.1));
    ASSERT_EQ(solved.status, Status::unique);
    EXPECT_NEAR(solved.solutions.at(0).forces[2].magnitude, 2.86430577449140583, 1e-14);
    EXPECT_NEAR(solved.solutions[0].residual, 0.00249957896195083927, 1e-14);
    EXPECT_EQ(solved.message().text(),
              "One unknown for two equations: with W = 2.86 kN both hold within rounding; 0.00250 kN is left "
              "over, no more than the rounding of the given values may leave.");
    EXPECT_EQ(solved.messageCode(), MessageCode::holdsWithinRounding);
}

TEST(OneUnknown, WhatIsMoreThanRoundingIsNoAnswer) {
    // 2.6 cos 35 is 0.0819 more than 2.5 cos 35, where rounding may leave 0.0220.
    const Solved solved = solve(legs(2.6, 145));
    EXPECT_EQ(solved.status, Status::overdetermined);
    EXPECT_TRUE(solved.solutions.empty());
    EXPECT_EQ(
        solved.message().text(),
        "One unknown only, the magnitude of W, but a plane gives two equations. Free one more: the "
        "direction of W, the magnitude of A, the direction of A, the magnitude of B or the direction of "
        "B. No magnitude of W makes the equation hold: the best, W = 2.93 kN, misses by 0.0819 kN, more "
        "than the rounding of the given values may leave.");
}

TEST(OneUnknown, ADirectionIsFoundToo) {
    const Solved right = solve(balanced({force("P", 4, kToFind), force("Q", 4, 90)}));
    ASSERT_EQ(right.status, Status::unique);
    EXPECT_NEAR(*right.solutions.at(0).forces[0].direction, -90, 1e-14);
    EXPECT_EQ(right.message().text(),
              "One unknown for two equations: with P at -90.0\u00B0 both hold, and nothing is left over.");
    // The two legs amount to 2.86788 kN, 0.00212 short of 2.87.
    const Solved near = solve(
        inKilonewtons(balanced({force("A", 2.5, 35), force("B", 2.5, 145), force("W", 2.87, kToFind)})));
    ASSERT_EQ(near.status, Status::unique);
    EXPECT_NEAR(near.solutions.at(0).residual, 0.00211781824476951946, 1e-14);
    EXPECT_EQ(near.messageCode(), MessageCode::holdsWithinRounding);
    const Solved off = solve(balanced({force("P", 3, kToFind), force("Q", 4, 90)}));
    EXPECT_EQ(off.status, Status::overdetermined);
    EXPECT_NE(
        off.message().text().find("No direction of P makes the equation hold: the best, P at -90.0\u00B0, "
                                  "misses by 1.00 N"),
        std::string::npos)
        << off.message().text();
    const Solved none = solve(balanced({force("A", 5, 0), force("B", 5, 180), force("P", 3, kToFind)}));
    EXPECT_NE(none.message().text().find(
                  "No direction of P makes the equation hold: without it nothing is left over."),
              std::string::npos);
}

TEST(OneUnknown, AGivenSumIsHeldByItsOwnLastPlaces) {
    // Q = 274.85; what is left over, 0.257 N along R and 0.349 N across it, is less than 0.5 and 0.454 N.
    const Solved solved =
        solve(sketch({force("P", 340, 25), force("Q", kToFind, -40)}, force("R", 520, -3.6)));
    ASSERT_EQ(solved.status, Status::unique);
    EXPECT_NEAR(solved.solutions.at(0).forces[1].magnitude, 274.854565633237537, 1e-12);
    EXPECT_NEAR(solved.solutions[0].residual, 0.433173441463752512, 1e-12);
    const Solved sum = solve(sketch({force("P", 3, 0), force("Q", 4, 90)}, force("R", 5, kToFind)));
    ASSERT_EQ(sum.status, Status::unique);
    EXPECT_NEAR(*sum.solutions.at(0).sum.direction, 53.1301023541559787, 1e-13); // atan(4/3)
}

TEST(OneUnknown, AnAnswerAgainstTheSenseIsNone) {
    const Solved lost = solve(balanced({force("Q", 4, 205), force("P", kToFind, 205)}));
    EXPECT_EQ(lost.status, Status::none);
    EXPECT_EQ(lost.message().text(),
              "No answer in the given sense of P; one answer if P may act the other way.");
    ASSERT_EQ(lost.reversed.size(), 1U);
    EXPECT_TRUE(lost.reversed[0].forces[1].turned);
    EXPECT_NEAR(lost.reversed[0].forces[1].magnitude, 4, 1e-15);
    const Solved either_ = solve(balanced({force("Q", 4, 205), either(force("P", kToFind, 205))}));
    ASSERT_EQ(either_.status, Status::unique);
    EXPECT_TRUE(either_.solutions.at(0).forces[1].turned);
    EXPECT_EQ(either_.remarkCodes(), std::vector{MessageCode::otherSense});
}

/// Random closed polygons of which one magnitude or one direction is taken out: seed said.
TEST(OneUnknown, IsWhatWasTakenOut) {
    constexpr std::uint64_t kSeed = 20261129;
    constexpr int kCases = 2'000;
    std::mt19937_64 random(kSeed);
    std::uniform_real_distribution<double> size(1, 1000), way(-180, 180);
    for (int i = 0; i < kCases; ++i) {
        std::vector<Force> forces;
        for (int k = 0; k < 2 + i % 4; ++k)
            forces.push_back(force("F" + std::to_string(k + 1), size(random), way(random)));
        const Solved whole = solve(sketch(forces));
        const SolvedForce& sum = whole.solutions.at(0).sum;
        Sketch asked = sketch(forces, force("R", sum.magnitude, sum.direction));
        Force& taken = i % 3 == 0 ? asked.sum : asked.forces.front();
        const Force before = taken;
        const bool isWay = i % 2 == 0;
        if (isWay)
            taken.direction = {};
        else
            taken.magnitude = {};
        const Solved solved = solve(asked);
        ASSERT_EQ(solved.status, Status::unique) << "seed " << kSeed << ", case " << i;
        const SolvedForce& found = i % 3 == 0 ? solved.solutions[0].sum : solved.solutions[0].forces.front();
        const double scale = 4000 / *before.magnitude.value;
        EXPECT_NEAR(found.magnitude, *before.magnitude.value, 1e-11) << i;
        const double turned =
            std::remainder(*found.direction - std::get<AngleForm>(before.direction.form).value, 360);
        EXPECT_NEAR(turned, 0, 1e-11 * scale) << i;
    }
}

TEST(OneUnknown, IsMarked) {
    const Sketch asked = legs(2.5, 145);
    const Marker marker(asked, solve(asked));
    const auto right = marker.read({"W = 2.87 kN"});
    ASSERT_TRUE(std::holds_alternative<Attempt>(right));
    EXPECT_TRUE(marker.mark(std::get<Attempt>(right)).isRight());
    const auto wrong = marker.read({"W = 4.10 kN"}); // 5 cos 35
    ASSERT_TRUE(std::holds_alternative<Attempt>(wrong));
    EXPECT_FALSE(marker.mark(std::get<Attempt>(wrong)).isRight());
}

} // namespace TAILPOINT_FILE
} // namespace tailpoint::testing
