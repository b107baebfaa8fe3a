// SPDX-License-Identifier: MIT
// Several known forces and two with an unknown: polygon and loci are one construction.
#include "figure_support.h"
#include "tests/support/cases.h"

#include <gtest/gtest.h>

namespace tailpoint::testing {
namespace TAILPOINT_FILE {

using Strings = std::vector<std::string>;

/// Two known pulls and two of known direction, in a mixed order.
Sketch knownPulls() {
    return sketch(
        {force("P", kToFind, 20), force("A", 120, 75), force("Q", kToFind, -60), force("B", 90, 140)},
        force("R", 350, 0));
}

/// The locus of a force, and the side of the polygon that is this force.
struct OnLocus {
    const Locus* locus = nullptr;
    Eigen::Vector2d tail, tip;
};

std::vector<OnLocus> soughtSides(const Drawn& d, const DrawnLoci& loci) {
    std::vector<OnLocus> out;
    const ForcePolygon& polygon = d.construction.polygon;
    for (const Locus& locus : loci.loci)
        for (std::size_t i = 0; i < polygon.vectors.size(); ++i)
            if (polygon.vectors[i] == std::visit([](const auto& l) { return l.vector; }, locus))
                out.push_back({&locus, polygon.corners[i], polygon.corners[i + 1]});
    return out;
}

double offLine(const LineLocus& line, const Eigen::Vector2d& p) {
    const Eigen::Vector2d from = p - line.through;
    return std::abs(from.x() * line.unit.y() - from.y() * line.unit.x());
}

/// A line has both ends of its force, a circle one of them, and the other is its centre.
double offLocus(const OnLocus& side) {
    if (const auto* line = std::get_if<LineLocus>(side.locus))
        return std::max(offLine(*line, side.tail), offLine(*line, side.tip));
    const auto& circle = std::get<CircleLocus>(*side.locus);
    const double first = (side.tail - circle.centre).norm(), second = (side.tip - circle.centre).norm();
    return std::min(first, second) + std::abs(std::max(first, second) - circle.radius);
}

TEST(LociOfAPolygon, StartWhereTheKnownForcesEndAndMeetAtItsCorner) {
    const std::uint64_t seed = 20261129;
    int looked = 0;
    for (std::uint64_t i = 0; i < 400; ++i) {
        Dice dice(seed + i);
        Sketch asked = sketch({}, dice.toss() ? force("R", dice.between(50, 400), anyDegrees(dice))
                                              : force("R", 0, kToFind));
        for (const char* name : {"A", "B", "C"})
            asked.forces.push_back(force(name, dice.between(50, 400), anyDegrees(dice)));
        for (const char* name : {"P", "Q"}) { // anywhere among them, by a line or by a circle
            const bool line = dice.toss();
            const Force sought = force(name, line ? kToFind : std::optional(dice.between(50, 600)),
                                       line ? std::optional(anyDegrees(dice)) : kToFind);
            asked.forces.insert(asked.forces.begin() + static_cast<int>(dice.whole(3)), sought);
        }
        const Drawn d = drawn(asked);
        const DrawnLoci loci = drawnLoci(d.solved, d.construction, {});
        if (d.solved.solutions.empty())
            continue;
        SCOPED_TRACE("seed " + std::to_string(seed + i));
        const auto sides = soughtSides(d, loci);
        ASSERT_EQ(sides.size(), 2u);
        const auto& corners = d.construction.polygon.corners;
        for (const OnLocus& side : sides)
            EXPECT_LT(offLocus(side), 1e-6);
        EXPECT_LT((corners[3] - d.solved.knownSum).norm(), 1e-6) << "the known forces come first";
        EXPECT_LT((loci.meetings.front() - corners[4]).norm(), 1e-6);
        ++looked;
    }
    EXPECT_GT(looked, 150);
}

TEST(LociOfAPolygon, HaveTheKnownForcesAddedUpBeforeAnythingIsFound) {
    FigureOptions options;
    options.stage = Stage::construction;
    const Drawn d = drawn(knownPulls(), options);
    EXPECT_TRUE(groupOf(d.figure, "polygon-B")) << "A stands at the common point already";
    EXPECT_FALSE(groupOf(d.figure, "polygon-P") || groupOf(d.figure, "polygon-Q"));
    const Group* known = groupOf(d.figure, "knowns-K");
    ASSERT_TRUE(known);
    EXPECT_EQ(textsOf(known), Strings{"K = R \u2212 A \u2212 B"});
    // From the end of A + B to the tip of R: 120 cos 75 + 90 cos 140 = -37.886, 120 sin 75 + 90 sin 140 =
    // 173.762.
    const auto& shaft = std::get<Path>(known->items.front()).points;
    const Point from = d.view.toSheet({-37.886, 173.762}), to = d.view.toSheet({350, 0});
    EXPECT_NEAR(shaft.front().x, from.x, 0.01);
    EXPECT_NEAR(shaft.front().y, from.y, 0.01);
    EXPECT_NEAR(to.x - shaft.back().x, 0, 10) << "but for the head";
    EXPECT_EQ(textsOf(groupOf(d.figure, "locus-force-P")), Strings{"parallel to P"});
    options.stage = Stage::directions;
    const Drawn before = drawn(knownPulls(), options);
    EXPECT_FALSE(groupOf(before.figure, "polygon-B") || groupOf(before.figure, "knowns-K"));
}

TEST(LociOfAPolygon, OfATriangleStartAtTheCommonPoint) {
    FigureOptions options;
    options.construction = ConstructionKind::triangle;
    const Drawn d = drawn(knownPulls(), options);
    const DrawnLoci loci = drawnLoci(d.solved, d.construction, options);
    EXPECT_EQ(std::get<LineLocus>(loci.loci.at(0)).through, Eigen::Vector2d(0, 0));
    EXPECT_FALSE(groupOf(d.figure, "polygon-B")) << "one construction at a time";
    EXPECT_TRUE(groupOf(d.figure, "knowns-K"));
}

/// At rest the known forces end in what the others must take back: no R, and K from the common point.
TEST(LociOfAPolygon, AtRestLeadBackToTheCommonPoint) {
    Sketch rest = knownPulls();
    rest.sum = force("R", 0, kToFind);
    rest.forces[0].direction.form = AngleForm{200};
    rest.forces[2].direction.form = AngleForm{290};
    const Drawn d = drawn(rest);
    ASSERT_EQ(d.solved.solutions.size(), 1u);
    EXPECT_EQ(textsOf(groupOf(d.figure, "knowns-K")), Strings{"K = A + B"});
    EXPECT_LT(d.construction.polygon.corners.back().norm(), 1e-9);
}

/// About the known forces' end lie the tips of the first; back from the sum's tip, the tails of the second.
TEST(LociOfAPolygon, SayTipsOrTails) {
    const Drawn d = drawn(
        sketch({force("A", 100, 60), force("B", 80, 120), force("P", 250, kToFind), force("Q", 200, kToFind)},
               force("R", 300, 0)));
    ASSERT_EQ(d.solved.status, Status::two);
    EXPECT_EQ(groupOf(d.figure, "locus-force-P")->title.name, "Circle of possible tips of P");
    EXPECT_EQ(groupOf(d.figure, "locus-force-Q")->title.name, "Circle of possible tails of Q");
}

} // namespace TAILPOINT_FILE
} // namespace tailpoint::testing
