// SPDX-License-Identifier: MIT
#include "core/solve/tolerance.h"

#include "tests/support/loose.h"
#include "tests/support/sketches.h"

#include <algorithm>
#include <cmath>
#include <gtest/gtest.h>
#include <numbers>

namespace tailpoint::tolerance {
namespace TAILPOINT_FILE {

using testing::balanced;
using testing::either;
using testing::force;
using testing::kToFind;
using testing::loose;
using testing::sketch;
using testing::smallest;

constexpr double kDegree = std::numbers::pi / 180;

Ranges rangesOf(const Sketch& sketch) {
    EXPECT_FALSE(firstFault(sketch)) << firstFault(sketch)->message;
    return tolerance::rangesOf(sketch, solve(sketch));
}

AnswerRange only(const Sketch& sketch) {
    const Ranges ranges = rangesOf(sketch);
    EXPECT_EQ(ranges.size(), 1u);
    return ranges.empty() ? AnswerRange{} : ranges.front();
}

const VectorRange& of(const AnswerRange& range, int index) {
    const VectorRange* found = range.find(index);
    EXPECT_NE(found, nullptr);
    return *found;
}

void expectRange(const Range& range, double least, double greatest, double within) {
    ASSERT_TRUE(range.least && range.greatest);
    EXPECT_NEAR(*range.least, least, within);
    EXPECT_NEAR(*range.greatest, greatest, within);
    EXPECT_FALSE(range.marked);
}

void expectArc(const DirectionRange& range, double from, double to, double within) {
    EXPECT_FALSE(range.any);
    EXPECT_NEAR(range.from, from, within);
    EXPECT_NEAR(range.to, to, within);
    EXPECT_FALSE(range.marked);
}

// The values of the table below are from own dense grids over all inputs, ends included, then zoomed
// (double precision, outside of the program); to their printed digits.
constexpr double k3 = 0.0006, k4 = 0.00006;

TEST(Tolerance, OfTheRaftOnTwoTowLines) {
    const AnswerRange range = only(sketch({loose(force("P", 340, 25), 5, 2), force("Q", 275, -40)}));
    EXPECT_TRUE(range.everywhere);
    expectRange(of(range, kSumIndex).magnitude, 509.747, 529.901, k3);
    expectArc(of(range, kSumIndex).direction, -5.0506, -2.2263, k4);
}

TEST(Tolerance, ADirectionsExtremeWithinTheBoxIsFound) {
    const AnswerRange range = only(sketch({force("P", 100, 0), loose(force("Q", 60, 130), 0, 20)}));
    const DirectionRange& direction = of(range, kSumIndex).direction;
    expectArc(direction, 31.985, std::asin(0.6) / kDegree, k3);
    ASSERT_EQ(direction.atTo.size(), 1u);
    EXPECT_EQ(direction.atTo[0].end, InputAt::End::between);
    EXPECT_NEAR(direction.atTo[0].value, 90 + std::asin(0.6) / kDegree, 1e-3); // Q square to R
}

TEST(Tolerance, AMagnitudesExtremeWithinTheBoxIsFound) {
    const AnswerRange range = only(sketch({force("P", 100, 0), loose(force("Q", 90, 178), 0, 5)}));
    const Range& magnitude = of(range, kSumIndex).magnitude;
    expectRange(magnitude, 10, 15.303, k3);
    EXPECT_EQ(*magnitude.least, 10); // not a hair below: it is written as 10.0
    ASSERT_EQ(magnitude.atLeast.size(), 1u);
    EXPECT_NEAR(std::fabs(magnitude.atLeast[0].value), 180, 1e-6);
}

TEST(Tolerance, ARegionThatHoldsTheCommonPointLeavesAnyDirection) {
    const AnswerRange range =
        only(sketch({loose(force("P", 100, 0), 5, 2), loose(force("Q", 98, 180), 5, 2)}));
    const VectorRange& sum = of(range, kSumIndex);
    expectRange(sum.magnitude, 0, 13.841, k3);
    expectRange(sum.x, -8.0579, 12.0567, k4);
    EXPECT_TRUE(sum.direction.any);
    EXPECT_FALSE(sum.direction.marked);
    EXPECT_TRUE(sum.slack);
}

TEST(Tolerance, OfALoadOnTwoLines) {
    const AnswerRange range =
        only(balanced({loose(force("W", 12, -90), 0.3, 0), loose(force("A", kToFind, 50), 0, 2),
                       loose(force("B", kToFind, 115), 0, 2)}));
    EXPECT_TRUE(range.everywhere);
    expectRange(of(range, 1).magnitude, 5.0442, 6.1614, k4);
    expectRange(of(range, 2).magnitude, 7.9479, 9.0811, k4);
    expectArc(of(range, 1).direction, 48, 52, 1e-9);
    expectRange(of(range, 0).magnitude, 11.7, 12.3, 1e-12);
    EXPECT_FALSE(of(range, 0).magnitudeFound);
}

TEST(Tolerance, OfAFlatBridle) {
    const AnswerRange range = only(balanced(
        {force("W", 12, -90), loose(force("A", kToFind, 3), 0, 2), loose(force("B", kToFind, 177), 0, 2)}));
    EXPECT_TRUE(range.everywhere);
    for (const int leg : {1, 2})
        expectRange(of(range, leg).magnitude, 68.842, 343.792, k3);
}

TEST(Tolerance, LinesThatMayBeParallelLeaveItUnbounded) {
    const AnswerRange range = only(balanced({force("W", 12, -90), loose(force("A", kToFind, 1.5), 0, 2),
                                             loose(force("B", kToFind, 178.5), 0, 2)}));
    EXPECT_FALSE(range.everywhere);
    for (const int leg : {1, 2}) {
        const Range& magnitude = of(range, leg).magnitude;
        ASSERT_TRUE(magnitude.least);
        EXPECT_NEAR(*magnitude.least, 98.282, k3);
        EXPECT_FALSE(magnitude.greatest);
        EXPECT_FALSE(magnitude.marked);
    }
}

TEST(Tolerance, EachOfTwoAnswersHasItsOwnRange) {
    const Ranges ranges = rangesOf(sketch(
        {loose(force("P", kToFind, 40), 0, 1), loose(force("Q", 220, kToFind), 5, 0)}, force("R", 400, 10)));
    ASSERT_EQ(ranges.size(), 2u);
    const Solved solved =
        solve(sketch({force("P", kToFind, 40), force("Q", 220, kToFind)}, force("R", 400, 10)));
    for (std::size_t i = 0; i < 2; ++i) {
        const bool large = solved.solutions[i].forces[0].magnitude > 300;
        EXPECT_TRUE(ranges[i].everywhere);
        expectRange(of(ranges[i], 0).magnitude, large ? 404.371 : 235.749, large ? 463.947 : 281.363, k3);
    }
}

// A short vector B beside a long one, both of unknown direction: A = R - C - B goes farthest along x where B
// lies along x, which each of the two answers can reach on one side. A's own magnitude must then be met to a
// hair, a lopsided top within its tolerance.
TEST(Tolerance, ATopBetweenTheEndsOfAnInputIsNeverCutOff) {
    const Ranges ranges =
        rangesOf(sketch({loose(force("A", 466.4, kToFind), 86.8, 0), loose(force("B", 1.2, kToFind), 0.2, 0),
                         loose(force("C", 140, 40), 0, 10)},
                        force("R", 359.4, -93.2)));
    ASSERT_EQ(ranges.size(), 2u);
    double least = 0, greatest = -1000;
    for (const AnswerRange& range : ranges) {
        ASSERT_TRUE(of(range, 0).x.least && of(range, 0).x.greatest);
        least = std::min(least, *of(range, 0).x.least);
        greatest = std::max(greatest, *of(range, 0).x.greatest);
    }
    const double x = 359.4 * std::cos(93.2 * kDegree);
    const double from = x - 140 * std::cos(30 * kDegree) - 1.4, to = x - 140 * std::cos(50 * kDegree) + 1.4;
    EXPECT_LE(least, from + 1e-11);
    EXPECT_GE(greatest, to - 1e-11);
    EXPECT_NEAR(least, from, 1e-3 * (to - from));
    EXPECT_NEAR(greatest, to, 1e-3 * (to - from));
}

TEST(Tolerance, WithoutAnyTheRangeIsTheAnswer) {
    const Sketch raft = sketch({force("P", 340, 25), force("Q", 275, -40)});
    const SolvedForce sum = solve(raft).solutions[0].sum;
    const AnswerRange range = only(raft);
    const VectorRange& found = of(range, kSumIndex);
    expectRange(found.magnitude, sum.magnitude, sum.magnitude, 1e-12);
    expectRange(found.x, sum.vector.x(), sum.vector.x(), 1e-12);
    expectRange(found.y, sum.vector.y(), sum.vector.y(), 1e-12);
    expectArc(found.direction, *sum.direction, *sum.direction, 1e-12);
    EXPECT_TRUE(found.magnitude.atLeast.empty());
}

// |R| is greatest where it is the support function's: the greatest over a direction u of the sum of each
// sector's farthest point along u. Here by a fine scan of u, all sectors on one side.
TEST(Tolerance, TheGreatestLengthIsTheSupportFunctions) {
    const std::vector<std::array<double, 4>> all{{340, 5, 25, 2}, {275, 8, -40, 6}, {120, 3, 10, 15}};
    std::vector<Force> forces;
    for (const auto& each : all)
        forces.push_back(
            loose(force("F" + std::to_string(forces.size()), each[0], each[2]), each[1], each[3]));
    double greatest = 0;
    for (int i = 0; i < 360'000; ++i) {
        double sum = 0;
        for (const auto& each : all) {
            const double off = std::fabs(std::remainder(i * 0.001 - each[2], 360));
            sum += (each[0] + each[1]) * std::cos(std::fmax(0, off - each[3]) * kDegree);
        }
        greatest = std::fmax(greatest, sum);
    }
    const AnswerRange range = only(sketch(forces));
    EXPECT_NEAR(*of(range, kSumIndex).magnitude.greatest, greatest, 1e-6 * greatest);
}

TEST(Tolerance, OneSidedAndInPercent) {
    Force p = force("P", 100, 0);
    p.magnitude.tolerance = plusMinusPercent(10);
    Force q = force("Q", 50, 0);
    q.magnitude.tolerance = Tolerance{0, 5, false};
    const AnswerRange range = only(sketch({p, q}));
    expectRange(of(range, kSumIndex).magnitude, 135, 160, 1e-12);
}

TEST(Tolerance, DirectionsAreTheSheets) {
    Sketch made = sketch({loose(force("P", 100, 30), 0, 2), loose(force("Q", 100, 30), 0, 2)});
    made.reference = {90, Sense::cw};
    expectArc(of(only(made), kSumIndex).direction, 28, 32, 1e-9);
    made = sketch({loose(testing::bearing("P", 100, 'N', 30, 'E'), 0, 2)});
    expectArc(of(only(made), kSumIndex).direction, 58, 62, 1e-9);
    made.forces[0] = loose(testing::slope("P", 100, -1, 0), 0, 2);
    expectArc(of(only(made), kSumIndex).direction, 178, 182, 1e-9);
    made.angleUnit = AngleUnit::gon;
    expectArc(of(only(made), kSumIndex).direction, 198, 202, 1e-9);
}

TEST(Tolerance, AMagnitudeIsNeverNegative) {
    const AnswerRange range = only(sketch({loose(force("P", 3, 0), 5, 0), force("Q", 10, 90)}));
    expectRange(of(range, kSumIndex).x, 0, 8, 1e-12);
}

// 100 N at 30 +- 1 on a line at 0: P = 100 sin 30.. by hand: the smallest force is |R off the line|.
TEST(Tolerance, OfTheSmallestForce) {
    const Sketch made = smallest(
        sketch({loose(force("K", 100, 30), 0, 1), force("P", kToFind, kToFind)}, force("R", kToFind, 0)),
        "P");
    const AnswerRange range = only(made);
    expectRange(of(range, 1).magnitude, 100 * std::sin(29 * kDegree), 100 * std::sin(31 * kDegree), 1e-9);
    expectRange(of(range, kSumIndex).magnitude, 100 * std::cos(31 * kDegree), 100 * std::cos(29 * kDegree),
                1e-9);
    expectArc(of(range, 1).direction, -90, -90, 1e-9);
}

// 12 kN down, A along 50 +- 2, B free: B = 12 cos of A's angle, square to A.
TEST(Tolerance, OfTheSmallestForceInEquilibrium) {
    const AnswerRange range = only(smallest(
        balanced({force("W", 12, -90), loose(force("A", kToFind, 50), 0, 2), force("B", kToFind, kToFind)}),
        "B"));
    expectRange(of(range, 2).magnitude, 12 * std::cos(52 * kDegree), 12 * std::cos(48 * kDegree), 1e-9);
    expectArc(of(range, 2).direction, 138, 142, 1e-9);
}

// K = 100 at 100 +- 20, P along 0: the smallest sum is 100 sin where P helps (K beyond 90), and all of K
// where P would have to push.
TEST(Tolerance, OfTheSmallestSumWhereTheForceMayBeSlack) {
    const AnswerRange range =
        only(smallest(sketch({loose(force("K", 100, 100), 0, 20), force("P", kToFind, 0)}), "R"));
    expectRange(of(range, kSumIndex).magnitude, 100 * std::sin(120 * kDegree), 100, 1e-3);
    expectRange(of(range, 1).magnitude, 0, 50, 1e-6);
    EXPECT_TRUE(of(range, 1).slack);
    EXPECT_TRUE(range.everywhere);
    expectArc(of(range, kSumIndex).direction, 80, 90, 1e-4);
}

// Two legs of 2.5 +- 0.1 kN at 35 degrees: W between 2 2.4 sin 35 and 2 2.6 sin 35.
TEST(Tolerance, OfOneUnknownForTwoEquations) {
    const Sketch made = balanced(
        {loose(force("A", 2.5, 35), 0.1, 0), loose(force("B", 2.5, 145), 0.1, 0), force("W", kToFind, -90)});
    ASSERT_EQ(solve(made).family, Family::oneUnknown);
    const AnswerRange range = only(made);
    const double sine = 2 * std::sin(35 * kDegree);
    expectRange(of(range, 2).magnitude, 2.4 * sine, 2.6 * sine, 1e-9);
    EXPECT_EQ(range.vectors.size(), 4u);
}

// W 12 +- 0.4 straight down, A 5 +- 0.2 at 0 +- 3: B of 13 is the direction that is asked for. A dense grid
// of A and W, ends included: the direction of -(A + W).
TEST(Tolerance, OfOneUnknownDirection) {
    const Sketch made = balanced({loose(force("W", 12, -90), 0.4, 0), loose(force("A", 5, 0), 0.2, 3),
                                  loose(force("B", 13, kToFind), 0.5, 0)});
    ASSERT_EQ(solve(made).family, Family::oneUnknown);
    ASSERT_EQ(solve(made).status, Status::unique);
    double from = 1000, to = -1000, left = 0, up = 0;
    constexpr int kParts = 40;
    for (int w = 0; w <= kParts; ++w)
        for (int a = 0; a <= kParts; ++a)
            for (int t = 0; t <= kParts; ++t) {
                const auto part = [](int i) { return 2.0 * i / kParts - 1; };
                const double size = 5 + 0.2 * part(a), way = 3 * part(t) * kDegree;
                const double x = -size * std::cos(way), y = 12 + 0.4 * part(w) - size * std::sin(way);
                const double direction = std::atan2(y, x) / kDegree;
                from = std::fmin(from, direction);
                to = std::fmax(to, direction);
            }
    left = 13.5 * std::cos(to * kDegree);
    up = 13.5 * std::sin(from * kDegree);
    const AnswerRange range = only(made);
    expectArc(of(range, 2).direction, from, to, 1e-3 * (to - from));
    EXPECT_LE(of(range, 2).direction.from, from + 1e-9);
    EXPECT_GE(of(range, 2).direction.to, to - 1e-9);
    expectRange(of(range, 2).magnitude, 12.5, 13.5, 1e-12);
    EXPECT_NEAR(*of(range, 2).x.least, left, 0.01);
    EXPECT_NEAR(*of(range, 2).y.greatest, up, 0.01);
    EXPECT_FALSE(of(range, 2).magnitudeFound);
    EXPECT_TRUE(range.everywhere);
}

// R 50 at 0 +- 30 of P on the line at 0 and Q of 20 +- 8: Q reaches P's line only where R's tip is no farther
// off than Q is long. 50 sin 30 = 25, so that all of Q's magnitudes have answers, but of R's directions only
// those up to arcsin(28/50) = 34.06 > 30. With Q 10 +- 8: up to arcsin(18/50) = 21.10 degrees.
TEST(Tolerance, OfAGivenValueIsOfThePartThatHasAnAnswer) {
    const auto made = [](double q) {
        return sketch({force("P", kToFind, 0), loose(force("Q", q, kToFind), 8, 0)},
                      loose(force("R", 50, 2), 0, 30));
    };
    const Solved solved = solve(made(10));
    ASSERT_EQ(solved.solutions.size(), 2u);
    for (const AnswerRange& range : tolerance::rangesOf(made(10), solved)) {
        EXPECT_FALSE(range.everywhere);
        const double end = std::asin(18 / 50.0) / kDegree;
        expectArc(of(range, kSumIndex).direction, -end, end, 0.03);
        EXPECT_LE(of(range, kSumIndex).direction.from, -end);
        EXPECT_GE(of(range, kSumIndex).direction.to, end);
        expectRange(of(range, 1).magnitude, 2, 18, 1e-9);
        expectRange(of(range, kSumIndex).y, -18, 18, 0.03);
        expectRange(of(range, kSumIndex).magnitude, 50, 50, 1e-9);
    }
}

// R 50 at 32 +- 1 of the same P, and Q 30 +- 8: below 50 sin 31 = 25.752 Q never reaches the line.
TEST(Tolerance, OfAGivenMagnitudeIsOfThePartThatHasAnAnswer) {
    const Sketch made = sketch({force("P", kToFind, 0), loose(force("Q", 30, kToFind), 8, 0)},
                               loose(force("R", 50, 32), 0, 1));
    for (const AnswerRange& range : tolerance::rangesOf(made, solve(made))) {
        EXPECT_FALSE(range.everywhere);
        expectRange(of(range, 1).magnitude, 50 * std::sin(31 * kDegree), 38, 0.01);
        EXPECT_LE(*of(range, 1).magnitude.least, 50 * std::sin(31 * kDegree));
        expectArc(of(range, kSumIndex).direction, 31, 33, 1e-9);
    }
}

TEST(Tolerance, AnAnswerIsLostWhereALineWouldPush) {
    const std::vector<Force> forces{force("W", 12, -90), loose(force("A", kToFind, 50), 0, 2),
                                    loose(force("B", kToFind, 91), 0, 2)};
    const AnswerRange range = only(balanced(forces));
    EXPECT_FALSE(range.everywhere);
    EXPECT_TRUE(of(range, 1).slack);
    EXPECT_EQ(*of(range, 1).magnitude.least, 0);
    std::vector<Force> both = forces;
    both[1] = either(both[1]);
    const AnswerRange free = only(balanced(both));
    EXPECT_TRUE(free.everywhere);
    EXPECT_EQ(*of(free, 1).magnitude.least, 0);
}

TEST(Tolerance, WhereTheCirclesMayMissOneAnotherAPartHasNoAnswer) {
    const AnswerRange sure =
        rangesOf(sketch({loose(force("P", 60, kToFind), 2, 0), force("Q", 50, kToFind)}, force("R", 100, 0)))
            .front();
    EXPECT_TRUE(sure.everywhere);
    const AnswerRange partly =
        rangesOf(sketch({loose(force("P", 60, kToFind), 15, 0), force("Q", 50, kToFind)}, force("R", 100, 0)))
            .front();
    EXPECT_FALSE(partly.everywhere);
    // Touching needs P = 50: then both lie along R.
    EXPECT_NEAR(of(partly, 0).direction.from * of(partly, 0).direction.to, 0, 1e-3);
}

TEST(Tolerance, WhereTheExtremesLie) {
    const AnswerRange range = only(sketch({loose(force("P", 340, 25), 5, 2), force("Q", 275, -40)}));
    const Place& most = of(range, kSumIndex).magnitude.atGreatest;
    ASSERT_EQ(most.size(), 2u);
    EXPECT_EQ(most[0].index, 0);
    EXPECT_FALSE(most[0].isDirection);
    EXPECT_EQ(most[0].value, 345);
    EXPECT_EQ(most[0].end, InputAt::End::greatest);
    EXPECT_TRUE(most[1].isDirection);
    EXPECT_EQ(most[1].value, 23);
    EXPECT_EQ(most[1].end, InputAt::End::least);
}

TEST(Tolerance, WhileDraggingTheRangeIsNoNarrower) {
    const Sketch made = balanced({loose(force("W", 12, -90), 0.3, 1), loose(force("A", kToFind, 50), 0, 2),
                                  loose(force("B", kToFind, 115), 0, 2)});
    const Solved solved = solve(made);
    const AnswerRange exact = tolerance::rangesOf(made, solved).front();
    const AnswerRange quick = tolerance::rangesOf(made, solved, kWhileDragging).front();
    for (const int leg : {1, 2}) {
        EXPECT_LE(*of(quick, leg).magnitude.least, *of(exact, leg).magnitude.least + 1e-12);
        EXPECT_GE(*of(quick, leg).magnitude.greatest, *of(exact, leg).magnitude.greatest - 1e-12);
    }
}

double areaOf(const TipRegion& region) {
    double area = 0;
    for (const Outline& outline : region.outlines)
        for (std::size_t i = 0; i < outline.size(); ++i) {
            const Eigen::Vector2d& a = outline[i];
            const Eigen::Vector2d& b = outline[(i + 1) % outline.size()];
            area += (a.x() * b.y() - a.y() * b.x()) / 2;
        }
    return area;
}

// One force alone fills its own sector: area of a ring's part, by hand.
TEST(Tolerance, TheTipsRegionOfOneForceIsItsSector) {
    const Sketch made = sketch({loose(force("P", 100, 30), 10, 10)});
    const std::vector<TipRegion> regions = tipRegions(made, solve(made), 0);
    ASSERT_EQ(regions.size(), 1u);
    EXPECT_EQ(regions[0].index, kSumIndex);
    EXPECT_NEAR(areaOf(regions[0]), 10 * kDegree * (110 * 110 - 90 * 90), 0.01 * 10 * kDegree * 4000);
}

// Two magnitudes at right angles with tolerances alone: a rectangle.
// One unknown direction: the region is the sector of a ring, B's own magnitude by the direction of what is
// left.
TEST(Tolerance, TheTipsRegionOfOneUnknownDirectionIsASector) {
    const Sketch made = balanced(
        {force("W", 12, -90), loose(force("A", 5, 0), 0.2, 0), loose(force("B", 13, kToFind), 0.5, 0)});
    const auto regions = tipRegions(made, solve(made), 0);
    const double width = std::atan2(12, -5.2) - std::atan2(12, -4.8);
    EXPECT_NEAR(areaOf(regions.at(0)), width / 2 * (13.5 * 13.5 - 12.5 * 12.5), 0.01 * width * 26);
}

TEST(Tolerance, TheTipsRegionOfTwoMagnitudesIsAParallelogram) {
    const Sketch made = sketch({loose(force("P", 100, 0), 10, 0), loose(force("Q", 50, 90), 5, 0)});
    EXPECT_NEAR(areaOf(tipRegions(made, solve(made), 0)[0]), 20 * 10, 0.02 * 200);
}

TEST(Tolerance, AnUnboundedTipsRegionSaysSo) {
    const Sketch made = balanced({force("W", 12, -90), loose(force("A", kToFind, 1.5), 0, 2),
                                  loose(force("B", kToFind, 178.5), 0, 2)});
    const std::vector<TipRegion> regions = tipRegions(made, solve(made), 0);
    ASSERT_EQ(regions.size(), 2u);
    EXPECT_TRUE(regions[0].open);
    EXPECT_GT(areaOf(regions[0]), 100);
}

} // namespace TAILPOINT_FILE
} // namespace tailpoint::tolerance
