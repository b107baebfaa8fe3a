// SPDX-License-Identifier: MIT
// Each family of two unknowns with each count of answers, by cases whose answers are known without a
// computer.
#include "core/solve/solve.h"

#include "tests/support/sketches.h"

#include <gtest/gtest.h>

#include <numbers>

namespace tailpoint::testing {
namespace TAILPOINT_FILE {

const double kRoot3 = std::sqrt(3.0);

Solved solved(const Sketch& sketch) {
    const auto fault = firstFault(sketch);
    EXPECT_FALSE(fault) << fault->place << " " << fault->message;
    return solve(sketch);
}

void expectVector(const SolvedForce& force, double magnitude, double degrees) {
    EXPECT_NEAR(force.magnitude, magnitude, 1e-13 * magnitude) << force.name;
    ASSERT_TRUE(force.direction) << force.name;
    EXPECT_NEAR(*force.direction, degrees, 1e-12) << force.name;
    const double radians = degrees * std::numbers::pi / 180;
    EXPECT_NEAR(force.vector.x(), magnitude * std::cos(radians), 1e-12 * magnitude) << force.name;
    EXPECT_NEAR(force.vector.y(), magnitude * std::sin(radians), 1e-12 * magnitude) << force.name;
}

void expectEachClosed(const Solved& solved) {
    for (const Solution& solution : solved.solutions) {
        double scale = solution.sum.magnitude;
        for (const SolvedForce& force : solution.forces) {
            scale += force.magnitude;
        }
        EXPECT_LE(solution.residual, 1e-15 * scale);
    }
}

// --- magnitude and direction of one vector ---

TEST(ClosingThePolygon, FindsTheResultant) {
    const Solved result = solved(sketch({force("P", 30, 0), force("Q", 40, 90)}));
    EXPECT_EQ(result.status, Status::unique);
    EXPECT_EQ(result.family, Family::closePolygon);
    EXPECT_EQ(result.message().text(), "");
    EXPECT_EQ(result.unknowns, (std::vector<std::string>{"magnitude of R", "direction of R"}));
    EXPECT_EQ(result.unknownVectors, (std::array<int, 2>{kSumIndex, kNoVector}));
    expectVector(result.solutions.at(0).sum, 50, std::atan2(4, 3) * 180 / std::numbers::pi);
    expectEachClosed(result);
}

TEST(ClosingThePolygon, FindsAMissingForce) {
    const Solved result =
        solved(sketch({force("P", 30, 0), force("Q", kToFind, kToFind)}, force("R", 40, 90)));
    EXPECT_EQ(result.status, Status::unique);
    EXPECT_EQ(result.unknownVectors, (std::array<int, 2>{1, kNoVector}));
    expectVector(result.solutions.at(0).forces[1], 50, 180 - std::atan2(4, 3) * 180 / std::numbers::pi);
    EXPECT_TRUE(result.solutions[0].forces[1].magnitudeFound);
    EXPECT_TRUE(result.solutions[0].forces[1].directionFound);
    EXPECT_FALSE(result.solutions[0].forces[0].magnitudeFound);
}

TEST(ClosingThePolygon, FindsTheForceThatHoldsEquilibrium) {
    const Solved result =
        solved(balanced({force("P", 30, 0), force("Q", 40, 90), force("E", kToFind, kToFind)}));
    expectVector(result.solutions.at(0).forces[2], 50, -180 + std::atan2(4, 3) * 180 / std::numbers::pi);
}

TEST(ClosingThePolygon, OfOneForceIsThatForce) {
    const Solved result = solved(sketch({force("P", 340, 25)}));
    EXPECT_EQ(result.solutions.at(0).sum.magnitude, 340);
    EXPECT_EQ(result.solutions[0].sum.direction, 25);
}

TEST(TheEquilibrant, IsTheResultantTurnedRound) {
    const Sketch made = sketch({force("P", 340, 25), force("Q", 275, -40)});
    const SolvedForce sum = solved(made).solutions.at(0).sum;
    const SolvedForce holds = equilibrant(sum, made);
    EXPECT_EQ(holds.magnitude, sum.magnitude);
    EXPECT_EQ(*holds.direction, *sum.direction + 180);
    EXPECT_EQ(holds.vector.x(), -sum.vector.x());
    EXPECT_EQ(holds.vector.y(), -sum.vector.y());
    EXPECT_FALSE(equilibrant(SolvedForce{}, made).direction);
}

// --- two magnitudes ---

TEST(TwoMagnitudes, ResolveAForceAlongTwoObliqueLines) {
    // 600 along 0 by lines at 30 and -60: the triangle is right-angled.
    const Solved result =
        solved(sketch({force("P", kToFind, 30), force("Q", kToFind, -60)}, force("R", 600, 0)));
    EXPECT_EQ(result.status, Status::unique);
    EXPECT_EQ(result.family, Family::twoMagnitudes);
    EXPECT_EQ(result.message().text(), "");
    expectVector(result.solutions.at(0).forces[0], 300 * kRoot3, 30);
    expectVector(result.solutions[0].forces[1], 300, -60);
    EXPECT_EQ(result.solutions[0].forces[0].direction, 30);
    expectEachClosed(result);
}

TEST(TwoMagnitudes, CanBeAForcesAndTheSums) {
    const Solved result =
        solved(sketch({force("W", 100, 90), force("P", kToFind, 180)}, force("R", kToFind, 135)));
    expectVector(result.solutions.at(0).forces[1], 100, 180);
    expectVector(result.solutions[0].sum, 100 * std::sqrt(2.0), 135);
    EXPECT_EQ(result.unknownVectors, (std::array<int, 2>{1, kSumIndex}));
}

TEST(TwoMagnitudes, HoldAWeightByTwoRopes) {
    const Solved result =
        solved(balanced({force("W", 100, -90), force("P", kToFind, 150), force("Q", kToFind, 30)}));
    expectVector(result.solutions.at(0).forces[1], 100, 150);
    expectVector(result.solutions[0].forces[2], 100, 30);
}

TEST(TwoMagnitudes, ThatWouldBeNegativeAreNoAnswerOnARay) {
    const Solved result =
        solved(sketch({force("P", kToFind, 0), force("Q", kToFind, 90)}, force("R", 50, -45)));
    EXPECT_EQ(result.status, Status::none);
    EXPECT_TRUE(result.solutions.empty());
    ASSERT_EQ(result.reversed.size(), 1u);
    expectVector(result.reversed[0].forces[1], 25 * std::sqrt(2.0), -90);
    EXPECT_TRUE(result.reversed[0].forces[1].turned);
    EXPECT_FALSE(result.reversed[0].forces[0].turned);
}

TEST(TwoMagnitudes, ThatWouldBeNegativeTurnRoundOnALineOfAction) {
    const Solved result =
        solved(sketch({force("P", kToFind, 0), either(force("Q", kToFind, 90))}, force("R", 50, -45)));
    EXPECT_EQ(result.status, Status::unique);
    EXPECT_TRUE(result.reversed.empty());
    expectVector(result.solutions.at(0).forces[1], 25 * std::sqrt(2.0), -90);
    EXPECT_TRUE(result.solutions[0].forces[1].turned);
    EXPECT_EQ(result.message().text(), "Q acts in the other sense of its line of action: -90.0°.");
}

TEST(TwoMagnitudes, TurnTheSumRoundToo) {
    const Solved result =
        solved(sketch({force("W", 100, -90), force("P", kToFind, 0)}, either(force("R", kToFind, 135))));
    EXPECT_EQ(result.status, Status::unique);
    expectVector(result.solutions.at(0).sum, 100 * std::sqrt(2.0), -45);
    EXPECT_TRUE(result.solutions[0].sum.turned);
    expectVector(result.solutions[0].forces[1], 100, 0);
}

TEST(TwoMagnitudes, AlongParallelLinesAcrossTheSumHaveNoAnswer) {
    for (const double second : {25.0, 205.0}) {
        const Solved result =
            solved(sketch({force("P", kToFind, 25), force("Q", kToFind, second)}, force("R", 520, 0)));
        EXPECT_EQ(result.status, Status::none) << second;
        EXPECT_TRUE(result.reversed.empty());
    }
}

TEST(TwoMagnitudes, AlongTheLineOfTheSumHaveEndlesslyMany) {
    for (const double second : {25.0, 205.0}) {
        const Solved result =
            solved(sketch({force("P", kToFind, 25), force("Q", kToFind, second)}, force("R", 520, 25)));
        EXPECT_EQ(result.status, Status::endless) << second;
        EXPECT_TRUE(result.solutions.empty());
    }
}

TEST(TwoMagnitudes, OnRaysThatBothPointAwayHaveNoAnswer) {
    const Solved result =
        solved(sketch({force("P", kToFind, 25), force("Q", kToFind, 25)}, force("R", 520, 205)));
    EXPECT_EQ(result.status, Status::none);
    const Solved lines =
        solved(sketch({force("P", kToFind, 25), either(force("Q", kToFind, 25))}, force("R", 520, 205)));
    EXPECT_EQ(lines.status, Status::endless);
}

TEST(TwoMagnitudes, WithNothingToBalanceAreZero) {
    const Solved result = solved(balanced({force("P", kToFind, 25), force("Q", kToFind, 90)}));
    EXPECT_EQ(result.status, Status::unique);
    EXPECT_EQ(result.solutions.at(0).forces[0].magnitude, 0);
    EXPECT_EQ(result.solutions[0].forces[1].magnitude, 0);
    EXPECT_EQ(result.solutions[0].forces[0].direction, 25);
    EXPECT_NE(result.message().text(), "");
    EXPECT_EQ(solved(balanced({force("P", kToFind, 25), force("Q", kToFind, 25)})).status, Status::unique);
    EXPECT_EQ(solved(balanced({force("P", kToFind, 25), force("Q", kToFind, 205)})).status, Status::endless);
}

TEST(TwoMagnitudes, LeaveNothingForTheOtherWhereTheSumLiesOnOneLine) {
    for (const double other : {26.0, 100.0, -40.0, 204.999}) {
        const Solved result =
            solved(sketch({force("P", kToFind, 25.3), force("Q", kToFind, other)}, force("R", 520, 25.3)));
        EXPECT_EQ(result.status, Status::unique) << other;
        EXPECT_EQ(result.solutions.at(0).forces[1].magnitude, 0) << other;
        EXPECT_EQ(result.solutions[0].forces[0].magnitude, 520) << other;
        EXPECT_EQ(result.solutions[0].forces[1].direction, other > 180 ? other - 360 : other);
    }
}

// --- one magnitude, another's direction ---

Sketch sideSideAngle(double known, double opposite, double angle) {
    return sketch({force("K", known, 0), force("Q", opposite, kToFind)}, force("R", kToFind, angle));
}

TEST(MagnitudeAndDirection, HaveTwoAnswersWhereTheCircleCutsTheRayTwice) {
    // Sides 5 and 4 with the sine of the angle 3/5: the roots along the ray are 4 + sqrt 7 and 4 - sqrt 7.
    Sketch made = sideSideAngle(5, 4, 0);
    made.sum.direction.form = SlopeForm{4, 3};
    const Solved result = solved(made);
    EXPECT_EQ(result.status, Status::two);
    EXPECT_EQ(result.family, Family::magnitudeAndDirection);
    EXPECT_FALSE(result.tangent);
    ASSERT_EQ(result.solutions.size(), 2u);
    EXPECT_NEAR(result.solutions[0].sum.magnitude, 4 - std::sqrt(7.0), 1e-15);
    EXPECT_NEAR(result.solutions[1].sum.magnitude, 4 + std::sqrt(7.0), 1e-15);
    expectEachClosed(result);
}

TEST(MagnitudeAndDirection, HaveOneWhereTheOtherRootLiesBehind) {
    const Solved result = solved(sideSideAngle(9, 12, 85));
    EXPECT_EQ(result.status, Status::unique);
    EXPECT_FALSE(result.tangent);
    ASSERT_EQ(result.reversed.size(), 1u);
    EXPECT_TRUE(result.reversed[0].sum.turned);
    EXPECT_EQ(result.message().text(), "There is a second answer if R may act the other way.");
}

TEST(MagnitudeAndDirection, HaveTwoOnALineOfAction) {
    Sketch made = sideSideAngle(9, 12, 85);
    made.sum.lineOfActionOnly = true;
    const Solved result = solved(made);
    EXPECT_EQ(result.status, Status::two);
    EXPECT_TRUE(result.reversed.empty());
    EXPECT_FALSE(result.solutions.at(0).sum.turned);
    EXPECT_TRUE(result.solutions.at(1).sum.turned);
    EXPECT_EQ(result.solutions[1].sum.direction, -95);
}

TEST(MagnitudeAndDirection, AreTangentWhereTheSideJustReaches) {
    const Solved result = solved(sideSideAngle(8, 4, 30));
    EXPECT_EQ(result.status, Status::unique);
    EXPECT_TRUE(result.tangent);
    EXPECT_NE(result.message().text().find("tangent"), std::string::npos);
    expectVector(result.solutions.at(0).sum, 4 * kRoot3, 30);
    expectVector(result.solutions[0].forces[1], 4, 120);
    EXPECT_EQ(result.solutions[0].forces[1].magnitude, 4);
}

TEST(MagnitudeAndDirection, StayTangentWithinTheBandAndNotBeyond) {
    const double band = 16 * 0x1p-53 * (8 + 4);
    EXPECT_TRUE(solved(sideSideAngle(8, 4 + 0.9 * band, 30)).tangent);
    EXPECT_TRUE(solved(sideSideAngle(8, 4 - 0.9 * band, 30)).tangent);
    EXPECT_EQ(solved(sideSideAngle(8, 4 + 1.2 * band, 30)).status, Status::two);
    EXPECT_EQ(solved(sideSideAngle(8, 4 - 1.2 * band, 30)).status, Status::none);
}

TEST(MagnitudeAndDirection, HaveNoneWhereTheSideIsTooShort) {
    const Solved result = solved(sideSideAngle(10, 4, 50));
    EXPECT_EQ(result.status, Status::none);
    EXPECT_TRUE(result.reversed.empty());
    EXPECT_EQ(
        result.message().text(),
        "No answer: Q = 4.00 N is 3.66 N too short to reach the parallel to the line of action of R. Make Q "
        "larger, or give R another direction.");
}

TEST(MagnitudeAndDirection, HaveNoneWhereBothRootsLieBehind) {
    const Solved result = solved(sideSideAngle(8, 6, 145));
    EXPECT_EQ(result.status, Status::none);
    EXPECT_EQ(result.reversed.size(), 2u);
    EXPECT_EQ(result.message().text(),
              "No answer in the given sense of R; two answers if R may act the other way.");
}

TEST(MagnitudeAndDirection, TakeARootOfZeroAsAnAnswer) {
    // |K| = |Q|: one root is R = 0 with Q against K, whatever the direction of R.
    for (const double angle : {20.0, 33.3, 70.0}) {
        const Solved result = solved(sideSideAngle(7.7, 7.7, angle));
        ASSERT_EQ(result.status, Status::two) << angle;
        const bool firstIsZero = result.solutions[0].sum.magnitude == 0;
        const Solution& zero = result.solutions[firstIsZero ? 0 : 1];
        EXPECT_EQ(zero.sum.magnitude, 0) << angle;
        EXPECT_EQ(zero.sum.direction, angle);
        EXPECT_EQ(zero.forces[1].direction, 180) << angle;
    }
}

TEST(MagnitudeAndDirection, DoNotDependOnWhichVectorHoldsWhich) {
    const Solved one = solved(sketch({force("P", kToFind, 60), force("Q", 5, kToFind)}, force("R", 6, 20)));
    const Solved other = solved(sketch({force("Q", 5, kToFind), force("P", kToFind, 60)}, force("R", 6, 20)));
    ASSERT_EQ(one.status, Status::two);
    ASSERT_EQ(other.status, Status::two);
    for (std::size_t i = 0; i < 2; ++i) {
        EXPECT_EQ(one.solutions[i].forces[0].magnitude, other.solutions[i].forces[1].magnitude);
        EXPECT_EQ(one.solutions[i].forces[1].direction, other.solutions[i].forces[0].direction);
    }
}

// --- two directions ---

TEST(TwoDirections, HaveTwoAnswersForAProperTriangle) {
    const Solved result = solved(sketch({force("P", 3, kToFind), force("Q", 4, kToFind)}, force("R", 5, 0)));
    EXPECT_EQ(result.status, Status::two);
    EXPECT_EQ(result.family, Family::twoDirections);
    ASSERT_EQ(result.solutions.size(), 2u);
    const double atTail = std::atan2(4, 3) * 180 / std::numbers::pi;
    expectVector(result.solutions[0].forces[0], 3, atTail);
    expectVector(result.solutions[0].forces[1], 4, atTail - 90);
    expectVector(result.solutions[1].forces[0], 3, -atTail);
    expectVector(result.solutions[1].forces[1], 4, 90 - atTail);
    EXPECT_EQ(result.solutions[0].forces[0].magnitude, 3);
    expectEachClosed(result);
}

TEST(TwoDirections, PutTheFirstVectorCounterClockwiseOfTheClosingSideFirst) {
    for (const double turn : {0.0, 77.0, 180.0, -120.0}) {
        const Solved given =
            solved(sketch({force("P", 3, kToFind), force("Q", 4, kToFind)}, force("R", 5, turn)));
        const auto firstSide = [&](const Solved& result, std::size_t i) {
            const SolvedForce& p = result.solutions.at(i).forces[0];
            return std::remainder(*p.direction - turn, 360);
        };
        EXPECT_GT(firstSide(given, 0), 0) << turn;
        EXPECT_LT(firstSide(given, 1), 0) << turn;
        // The sum to find: the closing side is the known force itself.
        const Solved summed =
            solved(sketch({force("P", 3, kToFind), force("K", 5, turn)}, force("R", 4, kToFind)));
        EXPECT_GT(firstSide(summed, 0), 0) << turn;
        EXPECT_LT(firstSide(summed, 1), 0) << turn;
    }
}

TEST(TwoDirections, AreTangentWhereTheTriangleIsFlat) {
    const Solved outer =
        solved(sketch({force("P", 200, kToFind), force("Q", 600, kToFind)}, force("R", 800, 10)));
    EXPECT_EQ(outer.status, Status::unique);
    EXPECT_TRUE(outer.tangent);
    expectVector(outer.solutions.at(0).forces[0], 200, 10);
    expectVector(outer.solutions[0].forces[1], 600, 10);
    const Solved inner =
        solved(sketch({force("P", 800, kToFind), force("Q", 600, kToFind)}, force("R", 200, 10)));
    EXPECT_TRUE(inner.tangent);
    expectVector(inner.solutions.at(0).forces[0], 800, 10);
    expectVector(inner.solutions[0].forces[1], 600, -170);
    const Solved other =
        solved(sketch({force("P", 600, kToFind), force("Q", 800, kToFind)}, force("R", 200, 10)));
    expectVector(other.solutions.at(0).forces[0], 600, -170);
    EXPECT_TRUE(
        solved(sketch({force("P", 0.1, kToFind), force("Q", 0.2, kToFind)}, force("R", 0.3, 0))).tangent);
}

TEST(TwoDirections, HaveNoneWhereNoTriangleCloses) {
    for (const auto& [p, q] : {std::pair{100.0, 600.0}, std::pair{600.0, 100.0}, std::pair{2000.0, 1000.0}}) {
        const Solved result =
            solved(sketch({force("P", p, kToFind), force("Q", q, kToFind)}, force("R", 800, 10)));
        EXPECT_EQ(result.status, Status::none) << p << ", " << q;
        EXPECT_TRUE(result.reversed.empty());
    }
}

TEST(TwoDirections, HaveEndlesslyManyWhereEqualForcesMustUndoEachOther) {
    EXPECT_EQ(solved(balanced({force("P", 600, kToFind), force("Q", 600, kToFind)})).status, Status::endless);
    EXPECT_EQ(solved(sketch({force("P", 600, kToFind)}, force("R", 600, kToFind))).status, Status::endless);
    EXPECT_EQ(solved(balanced({force("P", 600, kToFind), force("Q", 601, kToFind)})).status, Status::none);
    const Solved undone = solved(
        balanced({force("A", 5, 10), force("B", 5, 190), force("P", 6, kToFind), force("Q", 6, kToFind)}));
    EXPECT_EQ(undone.status, Status::endless);
}

TEST(TwoDirections, HoldForANeedle) {
    const Solved result =
        solved(sketch({force("P", 1e12, kToFind), force("Q", 1e12, kToFind)}, force("R", 1, 0)));
    ASSERT_EQ(result.status, Status::two);
    EXPECT_NEAR(*result.solutions[0].forces[0].direction, 90, 1e-10);
    EXPECT_NEAR(*result.solutions[0].forces[1].direction, -90, 1e-10);
}

// --- smallest force, smallest sum ---

TEST(TheSmallestForce, IsPerpendicularToTheSum) {
    const Solved result = solved(
        smallest(sketch({force("P", 800, 60), force("Q", kToFind, kToFind)}, force("R", kToFind, 0)), "Q"));
    EXPECT_EQ(result.status, Status::unique);
    EXPECT_EQ(result.family, Family::smallestForce);
    EXPECT_EQ(result.message().text(), "");
    expectVector(result.solutions.at(0).forces[1], 400 * kRoot3, -90);
    expectVector(result.solutions[0].sum, 400, 0);
    EXPECT_EQ(result.unknownVectors, (std::array<int, 2>{1, kSumIndex}));
    expectEachClosed(result);
}

TEST(TheSmallestForce, SaysWhenTheSumPointsTheOtherWay) {
    const Sketch made =
        smallest(sketch({force("P", 800, 120), force("Q", kToFind, kToFind)}, force("R", kToFind, 0)), "Q");
    const Solved result = solved(made);
    EXPECT_EQ(result.status, Status::unique);
    expectVector(result.solutions.at(0).forces[1], 400 * kRoot3, -90);
    expectVector(result.solutions[0].sum, 400, 180);
    EXPECT_TRUE(result.solutions[0].sum.turned);
    EXPECT_EQ(result.message().text(),
              "The smallest Q makes R point the other way, 180.0°. In the given sense of R the "
              "smallest is 800 N, which leaves ΣF = 0.");
}

TEST(TheSmallestForce, IsZeroWhereTheSumLiesOnItsLineAlready) {
    const Solved result = solved(smallest(
        sketch({force("P", 800, 33.3), force("Q", kToFind, kToFind)}, force("R", kToFind, 33.3)), "Q"));
    EXPECT_EQ(result.solutions.at(0).forces[1].magnitude, 0);
    EXPECT_FALSE(result.solutions[0].forces[1].direction);
    EXPECT_EQ(result.solutions[0].sum.magnitude, 800);
    EXPECT_EQ(result.message().text(), "The other forces lead along R already: no Q is needed.");
}

TEST(TheSmallestSum, IsPerpendicularToTheForceOfGivenDirection) {
    const Solved result = solved(smallest(sketch({force("P", 800, 60), force("Q", kToFind, 180)}), "R"));
    EXPECT_EQ(result.status, Status::unique);
    EXPECT_EQ(result.family, Family::smallestSum);
    EXPECT_EQ(result.message().text(), "");
    expectVector(result.solutions.at(0).forces[1], 400, 180);
    expectVector(result.solutions[0].sum, 400 * kRoot3, 90);
    EXPECT_EQ(result.unknownVectors, (std::array<int, 2>{1, kSumIndex}));
}

TEST(TheSmallestSum, IsWithoutTheForceWhereItsRayLeadsAway) {
    const Solved result = solved(smallest(sketch({force("P", 800, 60), force("Q", kToFind, 0)}), "R"));
    EXPECT_EQ(result.status, Status::unique);
    EXPECT_EQ(result.solutions.at(0).forces[1].magnitude, 0);
    expectVector(result.solutions[0].sum, 800, 60);
    ASSERT_EQ(result.reversed.size(), 1u);
    expectVector(result.reversed[0].forces[1], 400, 180);
    expectVector(result.reversed[0].sum, 400 * kRoot3, 90);
    EXPECT_EQ(result.message().text(),
              "In its given sense any Q makes R larger, so Q is zero. A smaller R, 693 N, if Q may "
              "act the other way.");
}

TEST(TheSmallestSum, TurnsTheForceRoundOnALineOfAction) {
    const Solved result =
        solved(smallest(sketch({force("P", 800, 60), either(force("Q", kToFind, 0))}), "R"));
    expectVector(result.solutions.at(0).forces[1], 400, 180);
    EXPECT_TRUE(result.solutions[0].forces[1].turned);
    EXPECT_TRUE(result.reversed.empty());
}

TEST(TheSmallestSum, CanBeZero) {
    const Solved result = solved(smallest(sketch({force("P", 800, 60), force("Q", kToFind, 240)}), "R"));
    EXPECT_EQ(result.solutions.at(0).forces[1].magnitude, 800);
    EXPECT_EQ(result.solutions[0].sum.magnitude, 0);
    EXPECT_FALSE(result.solutions[0].sum.direction);
    EXPECT_EQ(result.message().text(), "ΣF = 0 then: R is zero and has no direction.");
}

} // namespace TAILPOINT_FILE
} // namespace tailpoint::testing
