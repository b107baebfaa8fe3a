// SPDX-License-Identifier: MIT
// Who is who on the display list: every group of strokes and every label says by ids what it stands for.
#include "core/construct/reduction.h"
#include "tests/core/figure/any_figure.h"
#include "tests/core/figure/figure_support.h"

#include <gtest/gtest.h>

namespace tailpoint::testing {
namespace TAILPOINT_FILE {

using Kind = FigureShape::Kind;

const VectorId kP = forceVector(0), kQ = forceVector(1), kS = forceVector(2);

Sketch raft() {
    return sketch({force("P", 340, 25), force("Q", 275, -40)});
}

Sketch three() {
    return sketch({force("P", 30, 0), force("Q", 40, 90), force("S", 20, 200)});
}

struct Expected {
    const char* group;
    FigurePart part;
};

void expectParts(const Figure& figure, std::initializer_list<Expected> table) {
    for (const Expected& row : table) {
        const Group* group = groupOf(figure, row.group);
        ASSERT_NE(group, nullptr) << row.group;
        EXPECT_EQ(group->part, row.part) << row.group;
    }
}

/// What the group's only label says.
std::optional<FigurePart> saidBy(const Figure& figure, const char* id) {
    const Group* group = groupOf(figure, id);
    const Text* label = group ? labelOf(*group) : nullptr;
    return label ? label->part : std::nullopt;
}

TEST(FigureParts, ArrowsAnglesAndTheParallelogram) {
    const Figure figure = drawn(raft()).figure;
    expectParts(figure, {{"force-P", kP},
                         {"force-Q", kQ},
                         {"sum", kSumVector},
                         {"direction-force-P", directionId(kP)},
                         {"direction-sum", directionId(kSumVector)},
                         {"angle-tails", betweenId(kP, kQ)},
                         {"angle-1", oppositeId(kSumVector)},
                         {"angle-2", betweenId(kP, kQ)},
                         {"angle-3", oppositeId(kSumVector)},
                         {"parallelogram", FigureShape{Kind::parallelogram, kNobody}},
                         {"axis", FigureShape{Kind::axis, kNobody}}});
    for (const char* nobody : {"sheet", "grid", "point", "titleblock"}) {
        ASSERT_NE(groupOf(figure, nobody), nullptr) << nobody;
        EXPECT_FALSE(groupOf(figure, nobody)->part) << nobody;
    }
}

TEST(FigureParts, ALabelIsTheMagnitudeOnceItSaysIt) {
    FigureOptions options;
    options.stage = Stage::found;
    const Figure named = drawn(raft(), options).figure, whole = drawn(raft()).figure;
    EXPECT_EQ(saidBy(named, "sum"), FigurePart(kSumVector));
    EXPECT_EQ(saidBy(whole, "sum"), FigurePart(magnitudeId(kSumVector)));
    EXPECT_EQ(saidBy(named, "force-P"), FigurePart(magnitudeId(kP)));
    EXPECT_EQ(saidBy(whole, "direction-sum"), FigurePart(directionId(kSumVector)));
    EXPECT_EQ(saidBy(whole, "angle-tails"), FigurePart(betweenId(kP, kQ)));
    options.values = false;
    EXPECT_EQ(saidBy(drawn(raft(), options).figure, "force-P"), FigurePart(kP));
}

TEST(FigureParts, TheTriangleAndItsMovedForce) {
    FigureOptions options;
    options.construction = ConstructionKind::triangle;
    expectParts(drawn(raft(), options).figure, {{"opposite-P", oppositeId(kP)},
                                                {"opposite-Q", oppositeId(kQ)},
                                                {"opposite-R", oppositeId(kSumVector)},
                                                {"home-Q", kQ}});
}

TEST(FigureParts, ASideOfThePolygonKnowsItsForceAlsoWhereAnotherIsMissing) {
    FigureOptions options;
    options.construction = ConstructionKind::polygon;
    expectParts(drawn(three(), options).figure, {{"polygon-Q", FigureShape{Kind::polygon, kQ}},
                                                 {"polygon-S", FigureShape{Kind::polygon, kS}}});
    // two to find and nothing that says the sum: A is not known, B and C are
    const Sketch open = sketch({force("A", kToFind, kToFind), force("B", 30, 10), force("C", 40, 100)});
    expectParts(drawn(open, options).figure, {{"polygon-C", FigureShape{Kind::polygon, forceVector(2)}}});
}

/// K + F = R with K = A + B; the side that stands for the known forces is K's.
TEST(FigureParts, KnownForcesAddedUpAreK) {
    const Sketch given =
        sketch({force("A", 100, 0), force("B", 80, 60), force("F", kToFind, kToFind)}, force("R", 250, 20));
    FigureOptions options;
    options.construction = ConstructionKind::triangle;
    expectParts(drawn(given, options).figure,
                {{"knowns-K", kKnownVector}, {"opposite-K", oppositeId(kKnownVector)}});
}

TEST(FigureParts, SuccessiveParallelogramsCountFromOne) {
    FigureOptions options;
    options.pair = 1;
    const VectorId made = partialVector(1);
    expectParts(drawn(three(), options).figure, {{"pair-1", FigureShape{Kind::parallelogram, kQ}},
                                                 {"partial-K1", made},
                                                 {"pair-tails", betweenId(kP, kQ, 1)},
                                                 {"pair-inner", oppositeId(made, 1)}});
    options.pair = 2;
    const Figure last = drawn(three(), options).figure;
    expectParts(last, {{"pair-2", FigureShape{Kind::parallelogram, kS}},
                       {"pair-tails", betweenId(made, kS, 2)},
                       {"pair-inner", oppositeId(kSumVector, 2)}});
    EXPECT_EQ(saidBy(last, "partial-K1"), FigurePart(magnitudeId(made)));
}

TEST(FigureParts, LociSlopesAndTheOtherAnswer) {
    // from the tip of P = 300 along +x the line at 150 degrees is nearest to the common point at 150: a
    // circle of 200 meets it twice
    const Sketch two = sketch({force("P", 300, 0), force("Q", kToFind, 150)}, force("R", 200, kToFind));
    const Figure figure = drawn(two).figure;
    expectParts(figure, {{"locus-force-Q", FigureShape{Kind::locus, kQ}},
                         {"locus-sum", FigureShape{Kind::locus, kSumVector}},
                         {"other-force-Q", kQ},
                         {"other-sum", kSumVector}});
    EXPECT_TRUE(groupOf(figure, "other-sum")->otherAnswer);
    EXPECT_FALSE(groupOf(figure, "sum")->otherAnswer);
    EXPECT_EQ(vectorOf(*groupOf(figure, "other-sum")), kSumVector);
    EXPECT_FALSE(isArrow(*groupOf(figure, "other-sum")));
    EXPECT_TRUE(isArrow(*groupOf(figure, "sum")));
    const Figure steep = drawn(sketch({slope("P", 340, 3, 4), force("Q", 275, -40)})).figure;
    expectParts(steep, {{"slope-force-P", slopeId(kP)}});
}

TEST(FigureParts, TheRightAngleOfASmallestForceIsTheOneOppositeToWhatIsKnown) {
    const Sketch given =
        smallest(sketch({force("P", 300, 0), force("Q", kToFind, kToFind)}, force("R", kToFind, 30)), "Q");
    expectParts(drawn(given).figure, {{"right-angle", oppositeId(kP)}});
}

/// K and partial sums have no ray at the common point: an angle with one of them is drawn only where they
/// are, whichever of the two it names first.
TEST(FigureParts, AnAngleWithKIsNotAmongTheRays) {
    const VectorId partial = partialVector(1);
    for (const QuantityId& angle : {betweenId(kP, kKnownVector), betweenId(kKnownVector, kP),
                                    betweenId(kP, partial), betweenId(kP, kQ, 1)}) {
        FigureOptions options;
        options.names = {{angle, "φ"}};
        for (const Group& group : drawn(three(), options).figure.list.groups)
            EXPECT_NE(group.part, FigurePart(angle)) << group.id;
    }
    FigureOptions options;
    options.names = {{betweenId(kP, kS), "φ"}};
    const Figure figure = drawn(three(), options).figure;
    expectParts(figure, {{"angle-force-P-force-S", betweenId(kP, kS)}});
}

/// Whatever is drawn to the forces stands for something.
TEST(FigureParts, NoStrokeOfTheConstructionIsNobodys) {
    constexpr std::uint64_t seed = 4711;
    int looked = 0;
    for (std::uint64_t i = 0; i < 500; ++i) {
        const AnyFigure any = anyFigure(seed, i);
        const Drawn d = drawn(any.sketch, any.options, any.width, any.height);
        for (const Group& group : d.figure.list.groups) {
            const bool isOf = group.role == Role::given || group.role == Role::sum ||
                              group.role == Role::construction || group.role == Role::locus ||
                              group.role == Role::axis;
            EXPECT_TRUE(!isOf || group.part) << "seed " << seed << " case " << i << ": " << group.id;
            looked += isOf ? 1 : 0;
            const Text* label = labelOf(group);
            EXPECT_TRUE(!isOf || !label || label->part)
                << "seed " << seed << " case " << i << ": " << group.id;
        }
    }
    EXPECT_GT(looked, 2000);
}

TEST(SameParts, AnAngleBetweenTailsHasNoOrder) {
    EXPECT_TRUE(isSame(betweenId(kP, kQ), betweenId(kQ, kP)));
    EXPECT_TRUE(isSame(FigurePart(betweenId(kP, kQ)), FigurePart(betweenId(kQ, kP))));
    EXPECT_FALSE(isSame(betweenId(kP, kQ), betweenId(kP, kS)));
    EXPECT_FALSE(isSame(betweenId(kP, kQ, 1), betweenId(kP, kQ)));
    EXPECT_FALSE(isSame(oppositeId(kP), oppositeId(kQ)));
    EXPECT_FALSE(isSame(FigurePart(kP), FigurePart(magnitudeId(kP))));
}

TEST(SameParts, TheWholeTriangleCoversItsSidesAndNotTheOtherWayRound) {
    const FigurePart whole = FigureShape{Kind::triangle, kNobody}, side = FigureShape{Kind::triangle, kQ};
    EXPECT_TRUE(covers(whole, side));
    EXPECT_TRUE(covers(side, side));
    EXPECT_FALSE(covers(side, whole));
    EXPECT_FALSE(covers(FigureShape{Kind::polygon, kNobody}, side));
}

TEST(SameParts, ADirectionCoversTheSlopeItIsGivenBy) {
    EXPECT_TRUE(covers(directionId(kP), slopeId(kP)));
    EXPECT_FALSE(covers(directionId(kP), slopeId(kQ)));
    EXPECT_FALSE(covers(slopeId(kP), directionId(kP)));
    EXPECT_FALSE(covers(magnitudeId(kP), slopeId(kP)));
}

} // namespace TAILPOINT_FILE
} // namespace tailpoint::testing
