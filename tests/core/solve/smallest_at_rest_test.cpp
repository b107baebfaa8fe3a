// SPDX-License-Identifier: MIT
// The smallest force beside another one, with the sum zero or given. Numbers by mpmath, 30 digits.
#include "core/solve/solve.h"

#include "tests/support/sketches.h"

#include <gtest/gtest.h>

namespace tailpoint::testing {
namespace TAILPOINT_FILE {

Sketch underLoad(double line) {
    Sketch made = smallest(
        balanced({force("W", 12, -90), force("A", kToFind, line), force("B", kToFind, kToFind)}), "B");
    made.forceUnit = ForceUnit::kN;
    return made;
}

TEST(TheSmallestAtRest, StandsAtRightAnglesToTheOtherLine) {
    const Solved solved = solve(underLoad(50));
    ASSERT_EQ(solved.status, Status::unique);
    EXPECT_EQ(solved.family, Family::smallestForce);
    EXPECT_TRUE(solved.message().empty()) << solved.message().text();
    const Solution& found = solved.solutions.at(0);
    EXPECT_NEAR(found.forces[2].magnitude, 7.71345131623847187, 2e-15); // 12 cos 50
    EXPECT_NEAR(*found.forces[2].direction, 140, 1e-13);
    EXPECT_NEAR(found.forces[1].magnitude, 9.19253331742773642, 2e-15); // 12 sin 50
    EXPECT_LT(found.residual, 1e-14);
}

TEST(TheSmallestAtRest, IsFoundInWhicheverOrderTheForcesStand) {
    Sketch turned =
        smallest(balanced({force("B", kToFind, kToFind), force("A", kToFind, 50), force("W", 12, -90)}), "B");
    const Solved solved = solve(turned);
    ASSERT_EQ(solved.status, Status::unique);
    EXPECT_NEAR(solved.solutions.at(0).forces[0].magnitude, 7.71345131623847187, 2e-15);
    EXPECT_NEAR(*solved.solutions[0].forces[0].direction, 140, 1e-13);
}

TEST(TheSmallestAtRest, NoOtherBalancesWithLess) {
    // Every direction of B from 91 to 229 degrees leaves A on its line; none gives a smaller B.
    for (int way = 91; way < 230; ++way) {
        const Solved solved =
            solve(balanced({force("W", 12, -90), force("A", kToFind, 50), force("B", kToFind, double(way))}));
        if (solved.status == Status::unique) {
            EXPECT_GE(solved.solutions.at(0).forces[2].magnitude, 7.71345131623847187 - 1e-12) << way;
        }
    }
}

TEST(TheSmallestAtRest, WouldTurnTheOtherRoundAndSaysSo) {
    // A would have to push up along -50 degrees: it is zero, and B takes the load alone.
    const Solved solved = solve(underLoad(-50));
    ASSERT_EQ(solved.status, Status::unique);
    EXPECT_EQ(solved.messageCode(), MessageCode::smallestForceResisted);
    EXPECT_EQ(solved.message().text(), "In its given sense any A makes B larger, so A is zero. A smaller B, "
                                       "7.71 kN, if A may act the other way.");
    EXPECT_EQ(solved.solutions.at(0).forces[1].magnitude, 0);
    EXPECT_NEAR(solved.solutions[0].forces[2].magnitude, 12, 1e-15);
    EXPECT_NEAR(*solved.solutions[0].forces[2].direction, 90, 1e-14);
    ASSERT_EQ(solved.reversed.size(), 1U);
    EXPECT_NEAR(solved.reversed[0].forces[2].magnitude, 7.71345131623847187, 2e-15);
    EXPECT_TRUE(solved.reversed[0].forces[1].turned);
    Sketch open = underLoad(-50);
    open.forces[1].lineOfActionOnly = true;
    EXPECT_NEAR(solve(open).solutions.at(0).forces[2].magnitude, 7.71345131623847187, 2e-15);
}

TEST(TheSmallestAtRest, IsNotNeededWhereTheOtherCarriesAll) {
    const Solved solved = solve(underLoad(90));
    EXPECT_EQ(solved.messageCode(), MessageCode::smallestNotNeeded);
    EXPECT_EQ(solved.message().text(), "What is left to make up lies along A already: no B is needed.");
    EXPECT_EQ(solved.solutions.at(0).forces[2].magnitude, 0);
}

TEST(TheSmallestBesideAForce, MakesUpAGivenSum) {
    // R = 10 upwards, A at 60 degrees: A = 10 cos 30, B = 10 sin 30 at 150 degrees.
    const Solved solved = solve(
        smallest(sketch({force("A", kToFind, 60), force("B", kToFind, kToFind)}, force("R", 10, 90)), "B"));
    ASSERT_EQ(solved.status, Status::unique);
    EXPECT_NEAR(solved.solutions.at(0).forces[0].magnitude, 8.66025403784438647, 2e-15);
    EXPECT_NEAR(solved.solutions[0].forces[1].magnitude, 5, 1e-15);
    EXPECT_NEAR(*solved.solutions[0].forces[1].direction, 150, 1e-13);
}

TEST(TheSmallestAtRest, IsToldWhatItNeeds) {
    const auto said = [](Sketch made) { return solve(smallest(std::move(made), "B")).message().text(); };
    EXPECT_EQ(said(balanced({force("W", 12, -90), force("A", 3, 50), force("B", kToFind, kToFind)})),
              "The smallest B is found when B and the magnitude of one other force are to be found: free the "
              "magnitude of one other force.");
    EXPECT_EQ(said(balanced({force("W", 12, -90), force("A", kToFind, 50), force("B", 4, kToFind)})),
              "The smallest B is found when B and the magnitude of one other force are to be found: free the "
              "magnitude of B.");
    EXPECT_EQ(said(balanced({force("W", 12, -90), force("A", kToFind, 50), force("C", kToFind, 70),
                             force("B", kToFind, kToFind)})),
              "The smallest B is found when B and the magnitude of one other force are to be found: fix the "
              "magnitude of C.");
}

TEST(ThreeUnknownTensions, AreToldWhyStaticsCantShareTheLoad) {
    const Solved solved = solve(balanced(
        {force("W", 10, -90), force("A", kToFind, 45), force("B", kToFind, 90), force("C", kToFind, 135)}));
    EXPECT_EQ(solved.status, Status::underdetermined);
    EXPECT_EQ(solved.messageCode(), MessageCode::tooManyUnknowns);
    EXPECT_EQ(solved.remarkCodes(), std::vector{MessageCode::indeterminate});
    EXPECT_EQ(
        solved.message().text(),
        "Three unknowns, but a plane gives only two equations. Fix one of these: the magnitude of A, the "
        "magnitude of B or the magnitude of C. Statics alone can't share the load between A, B and C: a "
        "stiffer or shorter one takes more, and of stiffness and length the equation says nothing. "
        "Common practice counts on two of them alone.");
    EXPECT_EQ(solve(balanced({force("W", 10, -90), force("A", kToFind, kToFind), force("B", kToFind, 90)}))
                  .remarkCodes(),
              std::vector<MessageCode>());
}

} // namespace TAILPOINT_FILE
} // namespace tailpoint::testing
