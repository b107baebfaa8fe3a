// SPDX-License-Identifier: MIT
// One given value varied. Numbers by mpmath with 30 digits from the closed form that stands beside each case.
#include "core/solve/kernel.h"
#include "core/solve/sweep.h"

#include "tests/support/cases.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <limits>
#include <numbers>

namespace tailpoint::testing {
namespace TAILPOINT_FILE {

constexpr double kPlace = 1e-7; ///< of a least or greatest, degrees or force units
const Force kAtRest = force("R", 0, kToFind);

/// 12 kN down, held by A and by B at 115 degrees.
Sketch legs() {
    return sketch({force("W", 12, -90), force("A", kToFind, 30), force("B", kToFind, 115)}, kAtRest);
}
const Scalar kDirectionOfA{1, true};

const Curve& curve(const Sweep& sweep, Swept::Kind kind, int vector, int answer = 0) {
    const auto found = std::find_if(sweep.curves.begin(), sweep.curves.end(), [&](const Curve& each) {
        return each.of == Swept{kind, vector, answer};
    });
    if (found == sweep.curves.end()) {
        throw std::runtime_error("no such curve");
    }
    return *found;
}

void expectAt(const std::optional<Extreme>& extreme, double at, double value, Extreme::Where where) {
    ASSERT_TRUE(extreme);
    EXPECT_NEAR(extreme->at, at, kPlace);
    EXPECT_NEAR(extreme->value, value, 1e-13 * std::max(1.0, std::fabs(value)));
    EXPECT_EQ(extreme->where, where);
    EXPECT_FALSE(extreme->isUnbounded);
}

// --- what can be varied ---

TEST(WhatCanBeVaried, IsWhatIsGiven) {
    std::vector<std::string> names;
    for (const Scalar& scalar : variable(legs())) {
        names.push_back(nameOf(scalar, legs()));
    }
    EXPECT_EQ(names, (std::vector<std::string>{"magnitude of W", "direction of W", "direction of A",
                                               "direction of B"}));
}

TEST(WhatCanBeVaried, ASlopeIsTakenAsItsAngle) {
    const Sketch sketch = testing::sketch({slope("P", 5, 3, 4), force("Q", 2, 10)});
    // atan(4/3) = 53.13010235415597870 degrees
    EXPECT_NEAR(*presentValue(sketch, {0, true}), 53.130102354155978, 1e-13);
    EXPECT_EQ(withValue(sketch, {0, true}, 20).forces[0].direction.form,
              decltype(Direction::form)(AngleForm{20}));
}

TEST(WhatCanBeVaried, ARangeThatCantBeTakenIsSaid) {
    const Sketch sketch = legs();
    EXPECT_FALSE(faultOf({kDirectionOfA, 0, 90, 90}, sketch));
    EXPECT_TRUE(faultOf({{1, false}, 0, 90, 90}, sketch)) << "the magnitude of A is not given";
    EXPECT_TRUE(faultOf({kDirectionOfA, 30, 30, 90}, sketch));
    EXPECT_TRUE(faultOf({kDirectionOfA, 0, 90, 0}, sketch));
    EXPECT_TRUE(faultOf({kDirectionOfA, 0, 90, kMostSweepSteps + 1}, sketch));
    EXPECT_TRUE(faultOf({{0, false}, -1, 90, 90}, sketch)) << "a negative magnitude";
    EXPECT_TRUE(faultOf({kDirectionOfA, 0, std::numeric_limits<double>::infinity(), 90}, sketch));
}

// --- least and greatest ---

/// A = 12 sin 25 / sin(115 - a), B = 12 cos a / sin(115 - a): A is least where A is square to B, the larger
/// of both where they are equal, at 65 degrees: 6 / sin 65.
TEST(ASweep, FindsTheLeastBetweenItsSteps) {
    for (const std::size_t steps : {1, 7, 90, 1000, 3001}) {
        SCOPED_TRACE(steps);
        const Sweep swept = sweep(legs(), {kDirectionOfA, 0, 90, steps});
        expectAt(curve(swept, Swept::Kind::magnitude, 1).least, 25, 5.07141914088839323,
                 Extreme::Where::inside);
        expectAt(curve(swept, Swept::Kind::magnitude, 1).greatest, 90, 12, Extreme::Where::endOfRange);
        expectAt(curve(swept, Swept::Kind::larger, 1).least, 65, 6.62026751377495054, Extreme::Where::inside);
        EXPECT_TRUE(swept.gaps.empty());
        EXPECT_EQ(swept.at.size(), steps + 1);
        EXPECT_EQ(swept.at.front(), 0);
        EXPECT_EQ(swept.at.back(), 90);
    }
}

TEST(ASweep, MayRunDownward) {
    const Sweep up = sweep(legs(), {kDirectionOfA, 0, 90, 9}),
                down = sweep(legs(), {kDirectionOfA, 90, 0, 9});
    EXPECT_EQ(down.at.front(), 90);
    for (std::size_t c = 0; c < up.curves.size(); ++c) {
        std::vector<std::optional<double>> values = down.curves[c].values;
        std::reverse(values.begin(), values.end());
        EXPECT_EQ(values, up.curves[c].values);
        EXPECT_NEAR(down.curves[c].least->at, up.curves[c].least->at, kPlace);
    }
}

/// Both senses ruled out beyond 90 degrees; parallel to B at 295.
TEST(ASweep, SaysWhereThereIsNoAnswerAndWhereOneGrowsWithoutBound) {
    const Sweep swept = sweep(legs(), {kDirectionOfA, 0, 360, 90});
    ASSERT_EQ(swept.gaps.size(), 1u);
    EXPECT_NEAR(swept.gaps[0].from, 90, 1e-12);
    EXPECT_NEAR(swept.gaps[0].to, 295, 1e-12);
    const Curve& a = curve(swept, Swept::Kind::magnitude, 1);
    ASSERT_EQ(a.pieces.size(), 2u);
    EXPECT_TRUE(a.greatest->isUnbounded);
    EXPECT_NEAR(a.greatest->at, 295, 1e-12);
    EXPECT_FALSE(a.least->isUnbounded);
    EXPECT_FALSE(a.values[50]) << "at 200 degrees";
    EXPECT_FALSE(a.between(200));
}

/// R = 340 cos t + and - the root of 275^2 - (340 sin t)^2; the circle is touched at arcsin(275/340).
TEST(ASweep, FollowsBothAnswersToWhereTheyMeet) {
    const Sketch sketch =
        testing::sketch({force("P", 340, 25), force("Q", 275, kToFind)}, force("R", kToFind, 0));
    const Sweep swept = sweep(sketch, {{0, true}, -180, 180, 77});
    constexpr double kEdge = 53.9811458073571740518, kThere = 199.937490231322049573;
    ASSERT_EQ(swept.gaps.size(), 2u);
    EXPECT_NEAR(swept.gaps[0].to, -kEdge, 1e-11);
    EXPECT_NEAR(swept.gaps[1].from, kEdge, 1e-11);
    const Curve &first = curve(swept, Swept::Kind::magnitude, kSumIndex, 1),
                &second = curve(swept, Swept::Kind::magnitude, kSumIndex, 2);
    const Curve &less = first.least->value < second.least->value ? first : second,
                &more = &less == &first ? second : first;
    expectAt(less.least, 0, 65, Extreme::Where::inside);
    expectAt(more.greatest, 0, 615, Extreme::Where::inside);
    EXPECT_NEAR(less.greatest->value, kThere, 1e-9);
    EXPECT_NEAR(more.least->value, kThere, 1e-9);
    for (std::size_t i = 0; i < swept.at.size(); ++i) {
        if (less.values[i]) {
            const double t = swept.at[i] * std::numbers::pi / 180;
            const double root = std::sqrt(275.0 * 275 - std::pow(340 * std::sin(t), 2));
            EXPECT_NEAR(*less.values[i], 340 * std::cos(t) - root, 1e-9) << swept.at[i];
            EXPECT_NEAR(*more.values[i], 340 * std::cos(t) + root, 1e-9) << swept.at[i];
        }
    }
}

/// The line of R turns past the one place where P's tip is farther from it than Q reaches: square to P, at
/// 115 degrees, within arccos(1 - 1e-10) = 8.1028e-4 degrees of it. The samples are 0.11 degrees apart.
TEST(ASweep, SeesAGapNarrowerThanItsSteps) {
    const Sketch sketch = testing::sketch({force("P", 340, 25), force("Q", 340 * (1 - 1e-10), kToFind)},
                                          either(force("R", kToFind, 60)));
    const Sweep swept = sweep(sketch, {{kSumIndex, true}, 60, 171, 7});
    ASSERT_EQ(swept.gaps.size(), 1u);
    constexpr double kHalf = 8.10284694e-4;
    // What the solver takes for touching: 16 u of 680 N, by the slope at the edge.
    constexpr double kBand = 2e-8;
    EXPECT_NEAR(swept.gaps[0].from, 115 - kHalf, kBand);
    EXPECT_NEAR(swept.gaps[0].to, 115 + kHalf, kBand);
}

// --- directions ---

/// |Q| < |P|: R leans at most arcsin(275/340) from P, where Q is square to R.
/// What reaches the line of P is 10 + 5 sin t, and Q is 5.0000001 long: P has an answer only where 5 (1 + sin
/// t) is 1e-7 or less, t from -90.01145915593776 to -89.98854084406222 degrees (arccosine of 1 - 2e-8, the
/// double 5.0000001), a seventh of a part of the grid. The grid's places are all beside it.
TEST(ASweep, SeesAnAnswerNarrowerThanItsSteps) {
    const Sketch island = sketch({either(force("P", kToFind, 0)), force("Q", 5.0000001, kToFind),
                                  force("K", 10, 90), force("S", 5, -30)},
                                 kAtRest);
    // What touches within the kernel's band is taken to touch: there 5 (1 + sin t) grows by 1e-3 a radian.
    const double room = 1.01 * kernel::kTangentBand * 20 / 1e-3 * 180 / std::numbers::pi;
    for (const std::size_t steps : {1, 90, 999}) {
        SCOPED_TRACE(steps);
        const Sweep swept = sweep(island, {{3, true}, -173.1, -3.3, steps});
        ASSERT_EQ(swept.gaps.size(), 2u);
        EXPECT_NEAR(swept.gaps[0].to, -90.01145915593776, room);
        EXPECT_NEAR(swept.gaps[1].from, -89.98854084406222, room);
        EXPECT_TRUE(swept.hasAnswer());
    }
}

/// Two directions: Q and P of 1 reach as far as 2, what is left of 5 and 3.0000001 opposite to it
/// is 1.9999999 at least: from 179.99064363865536 to 180.00935636134464 degrees (law of cosines).
TEST(ASweep, SeesWhereTwoCirclesMeetForAMoment) {
    const Sketch island =
        sketch({force("P", 1, kToFind), force("Q", 1, kToFind), force("K", 5, 0), force("S", 3.0000001, 90)},
               kAtRest);
    const Sweep swept = sweep(island, {{3, true}, 0.7, 359.9, 90});
    ASSERT_EQ(swept.gaps.size(), 2u);
    EXPECT_NEAR(swept.gaps[0].to, 179.99064363865536, 1e-8);
    EXPECT_NEAR(swept.gaps[1].from, 180.00935636134464, 1e-8);
}

/// A bridle of two like legs: both are alike under every load, so that the larger is neither. Nothing hangs.
TEST(ASweep, OfWhatStaysAlikeIsPlain) {
    const Sketch bridle =
        sketch({force("W", 12, -90), force("A", kToFind, 35), force("B", kToFind, 145)}, kAtRest);
    const Sweep swept = sweep(bridle, {{0, false}, 1, 20, 90});
    // 20 / (2 sin 35)
    EXPECT_NEAR(curve(swept, Swept::Kind::larger, 1).greatest->value, 17.434467956210983, 1e-12);
    EXPECT_LT(curve(swept, Swept::Kind::larger, 1).pieces.at(0).size(), 2000u);
}

TEST(ASweptDirection, HasItsGreatestWhereTheArcIsTouched) {
    const Sketch sketch = testing::sketch({force("P", 340, 25), force("Q", 275, -40)});
    const Sweep swept = sweep(sketch, {{1, true}, -180, 180, 90});
    expectAt(curve(swept, Swept::Kind::direction, kSumIndex).greatest, 168.981145807357174,
             78.9811458073571741, Extreme::Where::inside);
    expectAt(curve(swept, Swept::Kind::magnitude, kSumIndex).least, -155, 65, Extreme::Where::inside);
}

TEST(ASweptDirection, RunsOnBeyondAHalfTurnAndAWholeOne) {
    const Sketch sketch = testing::sketch({force("P", 340, 25)});
    for (const std::size_t steps : {3, 50}) { // also where a step is more than a half turn
        const Sweep swept = sweep(sketch, {{0, true}, -500, 500, steps});
        const Curve& direction = curve(swept, Swept::Kind::direction, kSumIndex);
        ASSERT_EQ(direction.pieces.size(), 1u);
        EXPECT_NEAR(*direction.values.back() - *direction.values.front(), 1000, 1e-9);
    }
}

/// Two equal forces: R = 680 cos((q - 25)/2), and where it passes through zero its direction turns round.
TEST(ASweptDirection, BreaksOffWhereTheVectorIsZero) {
    const Sketch sketch = testing::sketch({force("P", 340, 25), force("Q", 340, -40)});
    for (const std::size_t steps : {80, 81, 73}) {
        const Sweep swept = sweep(sketch, {{1, true}, -400, 400, steps});
        expectAt(curve(swept, Swept::Kind::magnitude, kSumIndex).least,
                 curve(swept, Swept::Kind::magnitude, kSumIndex).least->at < 0 ? -155 : 205, 0,
                 Extreme::Where::inside);
        const Curve& direction = curve(swept, Swept::Kind::direction, kSumIndex);
        ASSERT_EQ(direction.pieces.size(), 3u) << steps;
        EXPECT_NEAR(direction.pieces[0].back().at, -155, 1e-3);
        EXPECT_NEAR(direction.pieces[1].back().at - direction.pieces[1].front().at, 360, 1e-3);
        EXPECT_NEAR(direction.pieces[1].back().value - direction.pieces[1].front().value, 180, 1e-3);
    }
}

/// P = 3 and Q = 4 close with S: cos = (16 + s^2 - 9) / 8s is least at s = root 7.
TEST(ASweptDirection, OfTwoCirclesHasItsLeastInside) {
    const Sketch sketch = testing::sketch({force("P", 3, kToFind), force("Q", 4, kToFind)}, force("R", 5, 0));
    const Sweep swept = sweep(sketch, {{kSumIndex, false}, 0, 10, 90});
    const Curve &first = curve(swept, Swept::Kind::direction, 1, 1),
                &second = curve(swept, Swept::Kind::direction, 1, 2);
    expectAt(first.least, 2.64575131106459059, -48.5903778907291407, Extreme::Where::inside);
    expectAt(second.greatest, 2.64575131106459059, 48.5903778907291407, Extreme::Where::inside);
    ASSERT_EQ(swept.gaps.size(), 2u);
    EXPECT_NEAR(swept.gaps[0].to, 1, 1e-12);
    EXPECT_NEAR(swept.gaps[1].from, 7, 1e-12);
}

// --- properties ---

double valueOf(const Solution& solution, const Swept& of) {
    const SolvedForce& vector =
        of.vector == kSumIndex ? solution.sum : solution.forces[static_cast<std::size_t>(of.vector)];
    return of.kind == Swept::Kind::direction ? vector.direction.value_or(0) : vector.magnitude;
}

/// At every step each curve's value is that of one of the solver's answers, and no value lies beyond the
/// least and the greatest. Reference: the solver itself, asked for each step.
TEST(AnySweep, HasTheSolversAnswersAndNothingBeyondItsExtremes) {
    constexpr std::uint64_t kSeed = 20261129;
    constexpr int kCases = 60;
    Dice dice(kSeed);
    for (int i = 0; i < kCases; ++i) {
        const Sketch sketch = anyCase(dice, static_cast<std::uint64_t>(i));
        const auto scalars = variable(sketch);
        if (scalars.empty()) {
            continue;
        }
        const Scalar varied = scalars[dice.whole(scalars.size())];
        const double scale = varied.isDirection ? 400 : 2 * presentValue(sketch, varied).value_or(1);
        const SweepRange range{varied, varied.isDirection ? -scale : 0, scale, 1 + dice.whole(30)};
        ASSERT_FALSE(faultOf(range, sketch));
        const Sweep swept = sweep(sketch, range);
        SCOPED_TRACE("seed " + std::to_string(kSeed) + " case " + std::to_string(i));
        for (const Curve& each : swept.curves) {
            for (std::size_t step = 0; step < swept.at.size(); ++step) {
                if (!each.values[step]) {
                    continue;
                }
                const double value = *each.values[step];
                ASSERT_TRUE(std::isfinite(value));
                EXPECT_LE(each.least->value, value);
                EXPECT_TRUE(each.greatest->isUnbounded || each.greatest->value >= value);
                const Solved solved = solve(withValue(sketch, varied, swept.at[step]));
                if (each.of.kind != Swept::Kind::larger) {
                    EXPECT_TRUE(std::any_of(solved.solutions.begin(), solved.solutions.end(),
                                            [&](const Solution& solution) {
                                                const double own = valueOf(solution, each.of);
                                                const double turn = turnIn(sketch.angleUnit);
                                                return each.of.kind == Swept::Kind::direction
                                                           ? std::fabs(std::remainder(own - value, turn)) <
                                                                 1e-9
                                                           : own == value;
                                            }))
                        << nameOf(varied, sketch) << " " << swept.at[step];
                }
            }
        }
    }
}

} // namespace TAILPOINT_FILE
} // namespace tailpoint::testing
