// SPDX-License-Identifier: MIT
#include "core/solve/tolerance_uncertainty.h"

#include "core/solve/tolerance_sensitivity.h"
#include "tests/support/loose.h"
#include "tests/support/sketches.h"

#include <cmath>
#include <gtest/gtest.h>
#include <numbers>

namespace tailpoint::tolerance {
namespace TAILPOINT_FILE {

using testing::balanced;
using testing::force;
using testing::kToFind;
using testing::loose;
using testing::sketch;

struct Told {
    AnswerRange range;
    std::vector<VectorUncertainty> all;
    const VectorUncertainty& of(int index) const {
        for (const VectorUncertainty& each : all)
            if (each.index == index)
                return each;
        ADD_FAILURE();
        return all.front();
    }
};

Told told(const Sketch& sketch, std::size_t answer = 0, const UncertaintyAsked& asked = {}) {
    const Solved solved = solve(sketch);
    const AnswerRange range = rangesOf(sketch, solved).at(answer);
    return {range, uncertaintyOf(sketch, solved, answer, range, asked)};
}

// The numbers of u_c: root of the sum of squares of sensitivity times half-width over sqrt 3, the
// sensitivities by central differences of own solutions (outside of the program), to their printed digits.
TEST(Uncertainty, OfTheRaftOnTwoTowLines) {
    const Told raft = told(sketch({loose(force("P", 340, 25), 5, 2), force("Q", 275, -40)}));
    const VectorUncertainty& sum = raft.of(kSumIndex);
    EXPECT_NEAR(sum.magnitude->standard, 4.148, 0.0006);
    EXPECT_NEAR(sum.direction->standard, 0.6801, 0.00006);
    EXPECT_EQ(sum.magnitude->withheld, Withheld::no);
    EXPECT_EQ(sum.direction->withheld, Withheld::no);
    EXPECT_NEAR(sum.magnitude->expanded(), 2 * 4.148, 0.0012);
    ASSERT_EQ(sum.magnitude->shares.size(), 2u);
    EXPECT_TRUE(sum.magnitude->shares[0].isDirection);
    EXPECT_NEAR(sum.magnitude->shares[0].part + sum.magnitude->shares[1].part, 1, 1e-12);
    // By hand: dR/dP = cos(28.6479 deg), times 5/sqrt 3.
    const double byMagnitude = std::cos((25 + 3.6479) * std::numbers::pi / 180) * 5 / std::sqrt(3.0);
    EXPECT_NEAR(sum.magnitude->shares[1].part, std::pow(byMagnitude / 4.148, 2), 1e-3);
    EXPECT_NEAR(sum.magnitude->drawn, 4.148, 0.05);
}

TEST(Uncertainty, OfALoadOnTwoLines) {
    const Told load = told(balanced({loose(force("W", 12, -90), 0.3, 0), loose(force("A", kToFind, 50), 0, 2),
                                     loose(force("B", kToFind, 115), 0, 2)}));
    EXPECT_NEAR(load.of(1).magnitude->standard, 0.2124, 0.00006);
    EXPECT_NEAR(load.of(2).magnitude->standard, 0.1923, 0.00006);
    EXPECT_EQ(load.of(1).magnitude->withheld, Withheld::no);
    EXPECT_FALSE(load.of(1).direction);
}

TEST(Uncertainty, OfTwoAnswers) {
    const Sketch made = sketch({loose(force("P", kToFind, 40), 0, 1), loose(force("Q", 220, kToFind), 5, 0)},
                               force("R", 400, 10));
    const Solved solved = solve(made);
    for (std::size_t i = 0; i < 2; ++i) {
        const bool large = solved.solutions[i].forces[0].magnitude > 300;
        EXPECT_NEAR(told(made, i).of(0).magnitude->standard, large ? 11.87 : 8.91, 0.006);
    }
}

TEST(Uncertainty, IsWithheldWhereItIsUnlikeTheRange) {
    const Told flat = told(balanced(
        {force("W", 12, -90), loose(force("A", kToFind, 3), 0, 2), loose(force("B", kToFind, 177), 0, 2)}));
    EXPECT_EQ(flat.of(1).magnitude->withheld, Withheld::unlikeRange);
    const Told opposed = told(sketch({force("P", 100, 0), loose(force("Q", 90, 178), 0, 5)}));
    EXPECT_NEAR(opposed.of(kSumIndex).magnitude->standard, 1.502, 0.0006);
    EXPECT_EQ(opposed.of(kSumIndex).magnitude->withheld, Withheld::unlikeRange);
    const Told parallel = told(balanced({force("W", 12, -90), loose(force("A", kToFind, 1.5), 0, 2),
                                         loose(force("B", kToFind, 178.5), 0, 2)}));
    EXPECT_EQ(parallel.of(1).magnitude->withheld, Withheld::partWithout);
}

TEST(Uncertainty, ANormalSpreadIsTheHalfwidthOverK) {
    UncertaintyAsked asked;
    asked.spread = Spread::normal;
    asked.k = 2;
    const Told one = told(sketch({loose(force("P", 100, 0), 4, 0), force("Q", 50, 0)}), 0, asked);
    EXPECT_NEAR(one.of(kSumIndex).magnitude->standard, 2, 1e-12);
    EXPECT_NEAR(one.of(kSumIndex).magnitude->drawn, 2, 0.02);
    EXPECT_EQ(one.of(kSumIndex).magnitude->withheld, Withheld::no);
}

TEST(Uncertainty, WithoutAToleranceThereIsNone) {
    EXPECT_TRUE(told(sketch({force("P", 100, 0), force("Q", 50, 90)})).all.empty());
}

// By central differences of solve(), every family.
void expectSlopes(const Sketch& made) {
    const Solved solved = solve(made);
    ASSERT_FALSE(solved.solutions.empty());
    for (std::size_t answer = 0; answer < solved.solutions.size(); ++answer) {
        const Sensitivity slopes = sensitivityOf(made, solved, answer);
        ASSERT_TRUE(slopes);
        for (const InputSlope& slope : *slopes) {
            const auto moved = [&](double by) {
                Sketch other = made;
                Force& force = slope.index == kSumIndex ? other.sum
                                                        : other.forces[static_cast<std::size_t>(slope.index)];
                if (slope.isDirection)
                    std::get<AngleForm>(force.direction.form).value += by;
                else
                    *force.magnitude.value += by;
                return solve(other).solutions.at(answer);
            };
            const double step = 1e-4;
            const Solution less = moved(-step), more = moved(step);
            for (std::size_t i = 0; i <= made.forces.size(); ++i) {
                const SolvedForce& a = i < made.forces.size() ? less.forces[i] : less.sum;
                const SolvedForce& b = i < made.forces.size() ? more.forces[i] : more.sum;
                EXPECT_NEAR(slope.vectors[i].magnitude, (b.magnitude - a.magnitude) / (2 * step), 1e-5);
                EXPECT_NEAR(slope.vectors[i].x, (b.vector.x() - a.vector.x()) / (2 * step), 1e-5);
                EXPECT_NEAR(slope.vectors[i].y, (b.vector.y() - a.vector.y()) / (2 * step), 1e-5);
                if (a.direction && b.direction) {
                    EXPECT_NEAR(slope.vectors[i].direction,
                                std::remainder(*b.direction - *a.direction, 360) / (2 * step), 1e-5);
                }
            }
        }
    }
}

TEST(Sensitivity, IsTheDifferenceQuotientInEveryFamily) {
    expectSlopes(sketch({force("P", 34, 25), force("Q", 27, -40)}));
    expectSlopes(balanced({force("W", 12, -90), force("A", kToFind, 50), force("B", kToFind, 115)}));
    expectSlopes(sketch({force("P", kToFind, 40), force("Q", 22, kToFind)}, force("R", 40, 10)));
    expectSlopes(sketch({force("P", 60, kToFind), force("Q", 50, kToFind)}, force("R", 80, 10)));
    expectSlopes(testing::smallest(
        sketch({force("K", 40, 30), force("P", kToFind, kToFind)}, force("R", kToFind, 10)), "P"));
    expectSlopes(testing::smallest(sketch({force("K", 40, 130), force("P", kToFind, 0)}), "R"));
    Sketch turned = sketch({force("P", 34, 25), force("Q", 27, -40)});
    turned.reference = {90, Sense::cw};
    expectSlopes(turned);
}

// Two legs of 2.5 (±0.1) kN at 35 degrees: W = 2 * 2.5 sin 35, each leg moves it by sin 35 of itself. B of 13
// against 5 (±0.2) along +x and 12 (±0.4) down: its direction turns by the change square to it over 13, in
// which 5 has the part 12/13 and 12 the part 5/13.
TEST(Sensitivity, OfOneUnknownIsThatOfWhatLeavesLeastOver) {
    const Told legs = told(balanced(
        {loose(force("A", 2.5, 35), 0.1, 0), loose(force("B", 2.5, 145), 0.1, 0), force("W", kToFind, -90)}));
    const double sine = std::sin(35 * std::numbers::pi / 180);
    EXPECT_NEAR(legs.of(2).magnitude->standard, std::sqrt(2.0) * sine * 0.1 / std::sqrt(3.0), 1e-12);
    EXPECT_NEAR(legs.of(2).magnitude->shares.at(1).part, 0.5, 1e-9);
    EXPECT_EQ(legs.of(2).magnitude->withheld, Withheld::no);
    const Told way = told(balanced(
        {loose(force("W", 12, -90), 0.4, 0), loose(force("A", 5, 0), 0.2, 0), force("B", 13, kToFind)}));
    const double turned = std::hypot(0.4 * 5 / 13, 0.2 * 12 / 13) / 13 / std::sqrt(3.0);
    EXPECT_NEAR(way.of(2).direction->standard, turned * 180 / std::numbers::pi, 1e-9);
    EXPECT_EQ(way.of(2).direction->withheld, Withheld::no);
    EXPECT_FALSE(way.of(2).magnitude);
}

TEST(Sensitivity, OfATangentThereIsNone) {
    const Sketch touching = sketch({force("P", kToFind, 0), force("Q", 30, kToFind)},
                                   force("R", 50, std::asin(0.6) * 180 / std::numbers::pi));
    const Solved solved = solve(touching);
    ASSERT_TRUE(solved.tangent);
    EXPECT_FALSE(sensitivityOf(touching, solved, 0));
}

} // namespace TAILPOINT_FILE
} // namespace tailpoint::tolerance
