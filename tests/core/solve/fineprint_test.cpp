// SPDX-License-Identifier: MIT
// The design's fine print on directions, sums and zero forces, and what must hold for every sketch
// whatsoever.
#include "core/solve/rounding_room.h"
#include "core/solve/solve.h"

#include "tests/support/cases.h"

#include <gtest/gtest.h>

#include <numbers>

namespace tailpoint::testing {
namespace TAILPOINT_FILE {

TEST(GivenDirections, ComeBackAsTypedBroughtIntoOneTurn) {
    const Solved result =
        solve(sketch({force("P", 340, 25), force("Q", 275, 680), force("S", 1, -180), force("T", 1, 12.9)}));
    const auto& forces = result.solutions.at(0).forces;
    EXPECT_EQ(forces[0].direction, 25);
    EXPECT_EQ(forces[1].direction, -40);
    EXPECT_EQ(forces[2].direction, 180);
    EXPECT_EQ(forces[3].direction, 12.9);
    EXPECT_EQ(forces[0].magnitude, 340);
}

TEST(Directions, AreReportedFromTheReferenceAxisAndComponentsAlongTheSheet) {
    Sketch made = sketch({bearing("P", 10, 'N', 30, 'E')});
    made.reference = {90, Sense::cw};
    const SolvedForce sum = solve(made).solutions.at(0).sum;
    EXPECT_NEAR(*sum.direction, 30, 1e-14);
    EXPECT_NEAR(sum.vector.x(), 5, 1e-15);
    EXPECT_NEAR(sum.vector.y(), 5 * std::sqrt(3.0), 1e-14);
}

TEST(Directions, AreReportedInTheAngleUnitOfTheSheet) {
    Sketch gon = sketch({slope("P", 10, -1, -1)});
    gon.angleUnit = AngleUnit::gon;
    EXPECT_EQ(solve(gon).solutions.at(0).sum.direction, -150);
    Sketch rad = sketch({slope("P", 10, -1, 0)});
    rad.angleUnit = AngleUnit::rad;
    EXPECT_EQ(solve(rad).solutions.at(0).sum.direction, std::numbers::pi);
}

TEST(ZeroForces, AreAllowedAndChangeNothing) {
    const Solved with = solve(sketch({force("P", 340, 25), force("Z", 0, 77), force("Y", 0, kToFind)}));
    const Solved without = solve(sketch({force("P", 340, 25)}));
    ASSERT_EQ(with.status, Status::unique);
    EXPECT_EQ(with.solutions.at(0).sum.magnitude, without.solutions.at(0).sum.magnitude);
    EXPECT_EQ(with.solutions[0].sum.direction, without.solutions[0].sum.direction);
    EXPECT_EQ(with.solutions[0].forces[1].direction, 77);
    EXPECT_FALSE(with.solutions[0].forces[2].direction);
    EXPECT_EQ(with.unknowns.size(), 2u);
}

TEST(AllForcesZero, MakeAZeroResultant) {
    const Solved result = solve(sketch({force("P", 0, 25), force("Q", 0, 90)}));
    EXPECT_EQ(result.status, Status::unique);
    EXPECT_EQ(result.solutions.at(0).sum.magnitude, 0);
    EXPECT_FALSE(result.solutions[0].sum.direction);
}

TEST(ASumOfZero, HasNoDirectionToFind) {
    for (const auto direction : {std::optional<double>{}, std::optional<double>{30.0}}) {
        const Solved result =
            solve(sketch({force("P", 3, 0), force("Q", kToFind, kToFind)}, force("R", 0, direction)));
        EXPECT_EQ(result.status, Status::unique);
        EXPECT_EQ(result.solutions.at(0).forces[1].magnitude, 3);
        EXPECT_EQ(result.solutions[0].forces[1].direction, 180);
    }
}

TEST(KnownForces, AreAddedUpBesideTheAnswer) {
    const Solved result =
        solve(sketch({force("A", 3, 0), force("B", 4, 90), force("P", kToFind, kToFind)}, force("R", 9, 0)));
    EXPECT_EQ(result.knownSum, Eigen::Vector2d(3, 4));
}

TEST(ALineOfActionAlone, MattersOnlyWhereAMagnitudeIsToBeFound) {
    const Solved given = solve(sketch({either(force("P", 340, 25)), force("Q", 275, -40)}));
    const Solved plain = solve(sketch({force("P", 340, 25), force("Q", 275, -40)}));
    EXPECT_EQ(given.status, Status::unique);
    EXPECT_EQ(given.solutions.at(0).sum.magnitude, plain.solutions.at(0).sum.magnitude);
}

TEST(TheZeroBand, IsFourUnitRoundoffsOfAllMagnitudesForEachForce) {
    const double step = 0x1p-53;
    const auto sumOf = [](double second) {
        return solve(sketch({force("P", 1, 0), force("Q", second, 180)})).solutions.at(0).sum.magnitude;
    };
    EXPECT_EQ(sumOf(1 + 14 * step), 0);
    EXPECT_EQ(sumOf(1 + 18 * step), 18 * step);
}

TEST(NearlyOppositeForces, LeaveAResultantWithinItsBound) {
    // 1000 at 0 and 1000 at 180 less 1e-6 degrees: the sum is 2000 sin(0.5e-6 deg), pointing at 90 less
    // 0.5e-6.
    const SolvedForce sum =
        solve(sketch({force("P", 1000, 0), force("Q", 1000, 179.999999)})).solutions.at(0).sum;
    const long double half = (180 - 179.999999) / 2 * std::numbers::pi_v<long double> / 180;
    const double kappa = 2000 / sum.magnitude;
    EXPECT_NEAR(sum.magnitude / static_cast<double>(2000 * std::sin(half)), 1, 8 * 0x1p-53 + kappa * 0x1p-58);
    EXPECT_NEAR(*sum.direction, 90 - (180 - 179.999999) / 2, kappa * 0x1p-58 * 180 / std::numbers::pi);
}

TEST(ThirdsOfATurn, BalanceExactly) {
    const Solved result = solve(sketch({force("P", 7.3, 10), force("Q", 7.3, 130), force("S", 7.3, 250)}));
    EXPECT_EQ(result.solutions.at(0).sum.magnitude, 0);
}

TEST(TenThousandForces, AreAddedUpRight) {
    Sketch many = emptySketch();
    for (int i = 0; i < 10'000; ++i) {
        many.forces.push_back(
            force("F" + std::to_string(i), 1 + i % 7, (i * 37) % 360 + (i % 2 == 0 ? 0.0 : 0.1)));
    }
    ASSERT_FALSE(firstFault(many));
    long double x = 0, y = 0;
    for (const Force& each : many.forces) {
        const CosSin unit = *unitVector(each.direction, many);
        x += *each.magnitude.value * unit.cos;
        y += *each.magnitude.value * unit.sin;
    }
    const SolvedForce sum = solve(many).solutions.at(0).sum;
    EXPECT_NEAR(sum.magnitude, static_cast<double>(std::hypot(x, y)), 1e-11);
    many.forces[17].magnitude.value.reset();
    many.forces[9000].direction.form = ToFind{};
    many.sum = force("R", 0, kToFind);
    const Solved two = solve(many);
    EXPECT_EQ(two.family, Family::magnitudeAndDirection);
}

// --- for every sketch ---

bool isFinite(const SolvedForce& force) {
    return std::isfinite(force.magnitude) && force.magnitude >= 0 && force.vector.allFinite() &&
           force.unit.allFinite() && std::isfinite(force.direction.value_or(0)) &&
           !(force.magnitude == 0 && std::signbit(force.magnitude));
}

bool isWithinOneTurn(const SolvedForce& force, const Sketch& sketch) {
    const double half = turnIn(sketch.angleUnit) / 2;
    return !force.direction || (*force.direction > -half && *force.direction <= half);
}

std::optional<double> maybe(Dice& dice, double value) {
    return dice.whole(3) == 0 ? kToFind : std::optional(value);
}

// Anything a window could hold: every form, unit, axis and sense, zeros, equal and opposite ones, many
// unknowns.
Sketch wildCase(Dice& dice) {
    Sketch made = emptySketch();
    made.angleUnit = kAngleUnits[dice.whole(3)];
    made.reference = {15.0 * static_cast<double>(dice.whole(24)), dice.toss() ? Sense::cw : Sense::ccw};
    const auto wild = [&](std::string name) {
        const double magnitude = dice.whole(6) == 0 ? 0
                                 : dice.toss()      ? static_cast<double>(1 + dice.whole(3))
                                                    : dice.power(-150, 150);
        Force one = force(std::move(name), maybe(dice, magnitude),
                          maybe(dice, 15.0 * static_cast<double>(dice.whole(48))));
        if (dice.whole(5) == 0) {
            one.direction.form = SlopeForm{dice.between(-1, 1), dice.toss() ? 0 : dice.power(-150, 150)};
        } else if (dice.whole(5) == 0) {
            one.direction.form = BearingForm{
                dice.toss() ? 'N' : 'S', 15.0 * static_cast<double>(dice.whole(7)), dice.toss() ? 'E' : 'W'};
        }
        one.lineOfActionOnly = dice.whole(3) == 0;
        return one;
    };
    for (std::uint64_t i = dice.whole(5); i > 0; --i) {
        made.forces.push_back(wild(nextForceName(made)));
    }
    made.sum = dice.toss() ? force("R", kToFind, kToFind) : wild("R");
    if (dice.whole(6) == 0) {
        made.smallest = made.forces.empty() || dice.toss() ? "R" : made.forces[0].name;
    }
    return made;
}

TEST(EverySketch, GivesFiniteAnswersAndAMessageWhereItMust) {
    constexpr std::uint64_t kSeed = 4;
    Dice dice(kSeed);
    std::array<int, 6> seen{};
    int ofOneUnknown = 0;
    for (int i = 0; i < 50'000; ++i) {
        const Sketch made = wildCase(dice);
        ASSERT_FALSE(firstFault(made))
            << "seed " << kSeed << ", case " << i << ": " << firstFault(made)->message;
        const Solved result = solve(made);
        ++seen[static_cast<std::size_t>(result.status)];
        const std::size_t expected = result.status == Status::unique ? 1
                                     : result.status == Status::two  ? 2
                                                                     : 0;
        ASSERT_EQ(result.solutions.size(), expected) << "seed " << kSeed << ", case " << i;
        ASSERT_EQ(result.message().empty(), result.message().empty() && result.status == Status::unique) << i;
        std::vector<Solution> all = result.solutions;
        all.insert(all.end(), result.reversed.begin(), result.reversed.end());
        for (const Solution& solution : all) {
            ASSERT_EQ(solution.forces.size(), made.forces.size());
            ASSERT_TRUE(isFinite(solution.sum) && isWithinOneTurn(solution.sum, made))
                << "seed " << kSeed << ", case " << i;
            ASSERT_TRUE(std::isfinite(solution.residual)) << "seed " << kSeed << ", case " << i;
            double scale = solution.sum.magnitude;
            for (const SolvedForce& each : solution.forces) {
                ASSERT_TRUE(isFinite(each) && isWithinOneTurn(each, made))
                    << "seed " << kSeed << ", case " << i;
                scale += each.magnitude;
            }
            double room = 32 * 0x1p-53 * scale;
            if (result.family == Family::oneUnknown) { // for two equations: what rounding may leave over
                const RoundingRoom rounding = roundingRoom(filledIn(made, solution));
                room += (1 + 1e-6) * std::hypot(rounding.along, rounding.across);
                ++ofOneUnknown;
            }
            ASSERT_LE(solution.residual, room)
                << "seed " << kSeed << ", case " << i << ": " << result.message().text();
        }
    }
    for (const int count : seen) {
        EXPECT_GT(count, 25) << "every status should turn up";
    }
    EXPECT_GT(ofOneUnknown, 25);
}

} // namespace TAILPOINT_FILE
} // namespace tailpoint::testing
