// SPDX-License-Identifier: MIT
#include "core/construct/construct.h"
#include "tests/support/cases.h"
#include "tests/support/sketches.h"

#include <gtest/gtest.h>
#include <numbers>

namespace tailpoint::testing {
namespace TAILPOINT_FILE {

constexpr double kPi = std::numbers::pi;
constexpr double kDegree = kPi / 180;
/// Four angles, each rounded on its own.
constexpr double kSumError = 8 * 0x1p-52;

Construction constructed(const Sketch& sketch, std::size_t solution = 0) {
    return construct(sketch, solve(sketch), solution);
}

Eigen::Vector2d polar(double size, double degrees) {
    return {size * std::cos(degrees * kDegree), size * std::sin(degrees * kDegree)};
}

void expectNear(const Eigen::Vector2d& a, const Eigen::Vector2d& b, double within) {
    EXPECT_NEAR(a.x(), b.x(), within);
    EXPECT_NEAR(a.y(), b.y(), within);
}

Sketch raft() {
    return sketch({force("P", 340, 25), force("Q", 275, -40)});
}

TEST(Parallelogram, HasTheForcesAsSidesAndTheSumAsDiagonal) {
    const Sketch given = raft();
    const Solved solved = solve(given);
    const Construction c = construct(given, solved);
    ASSERT_TRUE(c.parallelogram);
    EXPECT_EQ(c.parallelogram->first, "P");
    EXPECT_EQ(c.parallelogram->second, "Q");
    expectNear(c.parallelogram->corners[0], {0, 0}, 0);
    expectNear(c.parallelogram->corners[1], polar(340, 25), 1e-12 * 340);
    expectNear(c.parallelogram->corners[2], solved.solutions.at(0).sum.vector, 0);
    expectNear(c.parallelogram->corners[3], polar(275, -40), 1e-12 * 275);
    EXPECT_EQ(c.shape, Shape::proper);
}

TEST(Parallelogram, InteriorAnglesAreTheAngleBetweenTheTailsAndItsSupplement) {
    const Construction c = constructed(raft());
    ASSERT_TRUE(c.parallelogram);
    EXPECT_NEAR(*c.parallelogram->interior[0], 65 * kDegree, 4 * 0x1p-52);
    EXPECT_NEAR(*c.parallelogram->interior[1], 115 * kDegree, 4 * 0x1p-52);
    EXPECT_EQ(c.parallelogram->interior[0], c.parallelogram->interior[2]);
    EXPECT_EQ(c.parallelogram->interior[1], c.parallelogram->interior[3]);
}

TEST(Parallelogram, IsMadeOfTwoForcesOnly) {
    EXPECT_FALSE(constructed(sketch({force("P", 340, 25)})).parallelogram);
    EXPECT_FALSE(constructed(sketch({force("P", 1, 0), force("Q", 1, 90), force("S", 1, 45)})).parallelogram);
    EXPECT_EQ(constructed(sketch({force("P", 340, 25)})).shape, Shape::tooFew);
}

struct Degenerate {
    const char* name;
    Sketch sketch;
    Shape shape;
    std::optional<double> tails; ///< degrees
};

class DegenerateTest : public ::testing::TestWithParam<Degenerate> {};

TEST_P(DegenerateTest, SaysWhatItIsAndKeepsItsNumbersFinite) {
    const Construction c = constructed(GetParam().sketch);
    ASSERT_TRUE(c.parallelogram);
    EXPECT_EQ(c.shape, GetParam().shape);
    EXPECT_EQ(c.parallelogram->shape, GetParam().shape);
    EXPECT_EQ(wordsFor(c.shape).empty(), GetParam().shape == Shape::proper);
    for (const Eigen::Vector2d& corner : c.parallelogram->corners)
        EXPECT_TRUE(corner.allFinite());
    ASSERT_EQ(c.parallelogram->interior[0].has_value(), GetParam().tails.has_value());
    EXPECT_NEAR(c.parallelogram->interior[0].value_or(0), GetParam().tails.value_or(0) * kDegree, 1e-14);
}

INSTANTIATE_TEST_SUITE_P(
    Pairs, DegenerateTest,
    ::testing::Values(
        Degenerate{"parallel", sketch({force("P", 340, 30), force("Q", 275, 30)}), Shape::parallel, 0},
        Degenerate{"opposite", sketch({force("P", 340, 30), force("Q", 275, -150)}), Shape::opposite, 180},
        Degenerate{"equalAndOpposite", sketch({force("P", 300, 17), force("Q", 300, 197)}), Shape::opposite,
                   180},
        Degenerate{"equalForces", sketch({force("P", 300, 12.5), force("Q", 300, 12.5)}), Shape::parallel, 0},
        Degenerate{"oneZero", sketch({force("P", 340, 30), force("Q", 0, 90)}), Shape::zeroForce, {}},
        Degenerate{"bothZero", sketch({force("P", 0, 30), force("Q", 0, 90)}), Shape::zeroForce, {}},
        Degenerate{"needle", sketch({force("P", 340, 30), force("Q", 275, 30.0000001)}), Shape::proper, 1e-7},
        Degenerate{"equalAtRightAngles", sketch({force("P", 300, 0), force("Q", 300, 90)}), Shape::proper,
                   90},
        Degenerate{"tiny", sketch({force("P", 1e-150, 0), force("Q", 1e-150, 60)}), Shape::proper, 60},
        Degenerate{"huge", sketch({force("P", 1e150, 0), force("Q", 1e150, 60)}), Shape::proper, 60},
        Degenerate{"tinyAndHuge", sketch({force("P", 1e-150, 0), force("Q", 1e150, 60)}), Shape::proper, 60}),
    [](const auto& instance) { return std::string(instance.param.name); });

TEST(Parallelogram, InteriorAnglesAddUpToAFullTurnInTwentyThousandCases) {
    constexpr std::uint64_t seed = 2024;
    Dice dice(seed);
    for (int i = 0; i < 20'000; ++i) {
        const double first = anyDegrees(dice);
        const double second =
            i % 3 == 0 ? first + (dice.toss() ? 180 : 0) + 40 * hair(dice) : anyDegrees(dice);
        const Kind kind = kindOf(static_cast<std::uint64_t>(i));
        const Sketch given = sketch(
            {force("P", anyMagnitude(dice, kind), first), force("Q", anyMagnitude(dice, kind), second)});
        const Construction c = constructed(given);
        ASSERT_TRUE(c.parallelogram) << "seed " << seed << " case " << i;
        double sum = 0;
        for (const auto& angle : c.parallelogram->interior) {
            ASSERT_TRUE(angle) << "seed " << seed << " case " << i;
            ASSERT_TRUE(*angle >= 0 && *angle <= kPi) << "seed " << seed << " case " << i;
            sum += *angle;
        }
        ASSERT_NEAR(sum, 2 * kPi, kSumError) << "seed " << seed << " case " << i;
    }
}

TEST(ForceTriangle, NamesItsSidesAndTheAnglesOppositeToThem) {
    const Construction c = constructed(raft());
    ASSERT_TRUE(c.triangle && c.otherTriangle);
    EXPECT_EQ(c.triangle->names, (std::array<std::string, 3>{"P", "Q", "R"}));
    EXPECT_EQ(c.otherTriangle->names, (std::array<std::string, 3>{"Q", "P", "R"}));
    EXPECT_EQ(c.triangle->vectors, (std::array<int, 3>{0, 1, kSumIndex}));
    // Opposite to the sum stands the supplement of the angle between the tails.
    EXPECT_NEAR(*c.triangle->opposite[2], 115 * kDegree, 1e-15);
    EXPECT_NEAR(*c.triangle->opposite[1], (25 + 3.65) * kDegree, 1e-3);
    EXPECT_NEAR(c.triangle->sides[2], 520, 0.5);
    EXPECT_TRUE(c.triangle->knowns.empty());
}

TEST(ForceTriangle, EachAngleStandsAtTheCornerThatTheHeaderSays) {
    const Construction c = constructed(raft());
    for (const auto& t : {*c.triangle, *c.otherTriangle})
        for (std::size_t side = 0; side < 3; ++side) {
            const std::size_t at = ForceTriangle::cornerOpposite(side);
            const auto angle =
                signedAngle(t.corners[(at + 1) % 3] - t.corners[at], t.corners[(at + 2) % 3] - t.corners[at]);
            EXPECT_NEAR(std::abs(*angle), *t.opposite[side], 1e-14);
            EXPECT_NEAR((t.corners[(at + 1) % 3] - t.corners[(at + 2) % 3]).norm(), t.sides[side],
                        1e-12 * 520);
        }
}

TEST(ForceTriangle, AnglesAddUpToAHalfTurnInTwentyThousandCases) {
    constexpr std::uint64_t seed = 77;
    Dice dice(seed);
    int triangles = 0;
    for (int i = 0; i < 20'000; ++i) {
        const double first = anyDegrees(dice);
        const double second =
            i % 3 == 0 ? first + (dice.toss() ? 180 : 0) + 40 * hair(dice) : anyDegrees(dice);
        const Sketch given = sketch({force("P", anyMagnitude(dice, Kind::plain), first),
                                     force("Q", anyMagnitude(dice, Kind::plain), second)});
        const Construction c = constructed(given);
        if (!c.triangle || !c.triangle->opposite[0])
            continue; // a sum of nothing has no direction
        ++triangles;
        const auto& angles = c.triangle->opposite;
        // Each angle is exact for the vectors as rounded; the sum's own rounding is the rest.
        ASSERT_NEAR(*angles[0] + *angles[1] + *angles[2], kPi, 4 * kSumError)
            << "seed " << seed << " case " << i;
    }
    EXPECT_GT(triangles, 19'000);
}

TEST(ForceTriangle, OfThreeForcesInEquilibriumIsClosedByTheLast) {
    const Construction c =
        constructed(balanced({force("P", 300, 20), force("Q", kToFind, 135), force("S", kToFind, -100)}));
    ASSERT_TRUE(c.triangle);
    // The two with unknowns first, drawn as their loci are; the known one closes.
    EXPECT_EQ(c.triangle->names, (std::array<std::string, 3>{"Q", "S", "P"}));
    EXPECT_EQ(c.triangle->vectors, (std::array<int, 3>{1, 2, 0}));
    expectNear(c.triangle->corners[2], -polar(300, 20), 1e-9);
    EXPECT_NEAR(*c.triangle->opposite[2], 55 * kDegree, 1e-12); // between the lines of Q and S
}

TEST(ForceTriangle, AddsKnownForcesUpToOneSide) {
    const Construction c = constructed(balanced(
        {force("A", 120, 75), force("B", 90, 140), force("P", kToFind, -30), force("Q", kToFind, -120)}));
    ASSERT_TRUE(c.triangle);
    EXPECT_EQ(c.triangle->names, (std::array<std::string, 3>{"P", "Q", "K"}));
    EXPECT_EQ(c.triangle->vectors, (std::array<int, 3>{2, 3, kNoVector}));
    EXPECT_EQ(c.triangle->knowns, (std::vector<std::string>{"A", "B"}));
    EXPECT_NEAR(c.triangle->sides[2], (polar(120, 75) + polar(90, 140)).norm(), 1e-9);
}

TEST(ForceTriangle, CallsTheKnownSideSomethingElseWhereAForceIsNamedK) {
    const Construction c = constructed(balanced(
        {force("A", 120, 75), force("B", 90, 140), force("K", kToFind, -30), force("Q", kToFind, -120)}));
    ASSERT_TRUE(c.triangle);
    EXPECT_EQ(c.triangle->names, (std::array<std::string, 3>{"K", "Q", "L"}));
}

TEST(ForceTriangle, OfAMissingForceHasKnownsMissingOneAndSum) {
    const Construction c = constructed(sketch(
        {force("P", 340, 25), force("Q", 275, -40), force("S", kToFind, kToFind)}, force("R", 700, 0)));
    ASSERT_TRUE(c.triangle);
    EXPECT_EQ(c.triangle->names, (std::array<std::string, 3>{"K", "S", "R"}));
    EXPECT_EQ(c.triangle->knowns, (std::vector<std::string>{"P", "Q"}));
}

TEST(ForceTriangle, IsNotThereWhereTheQuestionHasNone) {
    EXPECT_FALSE(constructed(sketch({force("P", 1, 0), force("Q", 2, 90), force("S", 3, 45)})).triangle);
    EXPECT_FALSE(constructed(sketch({force("P", 1, 0)})).triangle);
    EXPECT_FALSE(constructed(balanced({force("P", 1, 0), force("Q", kToFind, kToFind)})).triangle);
    // Given throughout, but the equation doesn't hold: no triangle closes.
    EXPECT_FALSE(constructed(sketch({force("P", 3, 0), force("Q", 4, 90)}, force("R", 6, 10))).triangle);
}

TEST(ForcePolygon, GoesTipToTailInTheSketchsOrder) {
    const Construction c =
        constructed(sketch({force("P", 1, 0), force("Q", 2, 90), force("S", 3, 180), force("T", 4, -90)}));
    EXPECT_EQ(c.polygon.names, (std::vector<std::string>{"P", "Q", "S", "T"}));
    ASSERT_EQ(c.polygon.corners.size(), 5U);
    expectNear(c.polygon.corners[1], {1, 0}, 1e-15);
    expectNear(c.polygon.corners[2], {1, 2}, 1e-15);
    expectNear(c.polygon.corners[3], {-2, 2}, 1e-15);
    expectNear(c.polygon.corners[4], {-2, -2}, 1e-15);
}

TEST(ForcePolygon, LeavesOutWhatIsNotKnown) {
    const Construction c =
        constructed(sketch({force("P", 1, 0), force("Q", kToFind, kToFind), force("S", kToFind, 30)}));
    EXPECT_EQ(c.polygon.names, (std::vector<std::string>{"P"}));
    EXPECT_FALSE(c.triangle);
    EXPECT_FALSE(c.parallelogram);
}

/// Is the point on the locus?
double distanceFrom(const Locus& locus, const Eigen::Vector2d& p) {
    if (const auto* circle = std::get_if<CircleLocus>(&locus))
        return std::abs((p - circle->centre).norm() - circle->radius);
    const auto& line = std::get<LineLocus>(locus);
    const Eigen::Vector2d from = p - line.through;
    return std::abs(from.x() * line.unit.y() - from.y() * line.unit.x());
}

struct Met {
    const char* name;
    Sketch sketch;
    std::size_t meetings;
};

class LociTest : public ::testing::TestWithParam<Met> {};

TEST_P(LociTest, MeetAtTheMeetingPointOfEveryAnswer) {
    const Solved solved = solve(GetParam().sketch);
    for (std::size_t s = 0; s < solved.solutions.size(); ++s) {
        const Construction c = construct(GetParam().sketch, solved, s);
        ASSERT_EQ(c.meetings.size(), GetParam().meetings);
        ASSERT_FALSE(c.loci.empty());
        for (const Eigen::Vector2d& at : c.meetings)
            for (const Locus& locus : c.loci)
                EXPECT_LT(distanceFrom(locus, at), 1e-9 * 500);
    }
    EXPECT_EQ(solved.solutions.size(), GetParam().meetings);
}

INSTANTIATE_TEST_SUITE_P(
    Families, LociTest,
    ::testing::Values(
        Met{"lineMeetsLine", sketch({force("A", kToFind, 50), force("B", kToFind, -15)}, force("R", 400, 20)),
            1},
        Met{"lineMeetsCircleTwice",
            sketch({force("P", kToFind, 40), force("Q", 260, kToFind)}, force("R", 400, 10)), 2},
        Met{"circleMeetsCircle",
            sketch({force("P", 250, kToFind), force("Q", 300, kToFind)}, force("R", 420, 5)), 2},
        Met{"forceAndSum", sketch({force("P", 340, 25), force("Q", kToFind, -40)}, force("R", 500, kToFind)),
            1},
        Met{"knownsAddedUp",
            sketch({force("A", 120, 75), force("P", kToFind, 20), force("Q", kToFind, -60)},
                   force("R", 350, 0)),
            1},
        Met{"equilibrium",
            balanced({force("P", 300, 20), force("Q", kToFind, 135), force("S", kToFind, -100)}), 1}),
    [](const auto& instance) { return std::string(instance.param.name); });

TEST(Loci, AreOfTheKindThatTheUnknownAsksFor) {
    const Construction c =
        constructed(sketch({force("P", kToFind, 40), force("Q", 260, kToFind)}, force("R", 400, 10)));
    ASSERT_EQ(c.loci.size(), 2U);
    const auto& circle =
        std::get<CircleLocus>(c.loci[0]); // round the common point: where the tip of Q can be
    EXPECT_EQ(circle.vector, 1);
    EXPECT_EQ(circle.radius, 260);
    expectNear(circle.centre, {0, 0}, 0);
    const auto& line = std::get<LineLocus>(c.loci[1]); // back from the tip of R
    EXPECT_EQ(line.vector, 0);
    EXPECT_TRUE(line.ray);
    expectNear(line.through, polar(400, 10), 1e-10);
    ASSERT_EQ(c.meetings.size(), 2U);
    for (const Eigen::Vector2d& tip : c.meetings)
        EXPECT_NEAR(tip.norm(), 260, 1e-10);
}

TEST(Loci, AreWholeLinesWhereOnlyTheLineOfActionIsGiven) {
    const Construction c =
        constructed(sketch({either(force("P", kToFind, 40)), force("Q", 260, kToFind)}, force("R", 400, 10)));
    EXPECT_FALSE(std::get<LineLocus>(c.loci[1]).ray);
}

TEST(Loci, AreDrawnFromTheCommonPointWhereTheQuestionCantBeAnswered) {
    const Construction c = constructed(
        sketch({force("P", kToFind, 40), force("Q", 260, kToFind), force("S", kToFind, kToFind)}));
    ASSERT_EQ(c.loci.size(), 2U);
    expectNear(std::get<LineLocus>(c.loci[0]).through, {0, 0}, 0);
    expectNear(std::get<CircleLocus>(c.loci[1]).centre, {0, 0}, 0);
    EXPECT_TRUE(c.meetings.empty());
}

TEST(Loci, AreNotThereForAResultant) {
    EXPECT_TRUE(constructed(raft()).loci.empty());
}

TEST(Construct, IsFiniteForEveryKindOfCaseAndAnswer) {
    constexpr std::uint64_t seed = 5;
    Dice dice(seed);
    for (int i = 0; i < 3'000; ++i) {
        const Kind kind = kindOf(static_cast<std::uint64_t>(i));
        std::vector<Force> forces;
        const auto count = 1 + dice.whole(5);
        for (std::uint64_t f = 0; f < count; ++f)
            forces.push_back(force("F" + std::to_string(f),
                                   dice.whole(9) == 0 ? std::optional<double>() : anyMagnitude(dice, kind),
                                   dice.whole(9) == 0 ? std::optional<double>() : anyDegrees(dice)));
        const Sketch given = dice.toss() ? sketch(std::move(forces)) : balanced(std::move(forces));
        const Solved solved = solve(given);
        for (std::size_t s = 0; s <= solved.solutions.size(); ++s) {
            const Construction c = construct(given, solved, s);
            for (const Eigen::Vector2d& corner : c.polygon.corners)
                ASSERT_TRUE(corner.allFinite()) << "seed " << seed << " case " << i;
            for (const auto& t : {c.triangle, c.otherTriangle})
                for (std::size_t k = 0; t && k < 3; ++k) {
                    ASSERT_TRUE(t->corners[k].allFinite() && std::isfinite(t->sides[k]))
                        << "seed " << seed << " case " << i;
                    ASSERT_TRUE(!t->opposite[k] || std::isfinite(*t->opposite[k]))
                        << "seed " << seed << " case " << i;
                }
        }
    }
}

} // namespace TAILPOINT_FILE
} // namespace tailpoint::testing
