// SPDX-License-Identifier: MIT
// In a parallelogram the angles of the solution's triangle: each letter at the angle that the solution gives
// it.
#include "core/explain/explain.h"
#include "figure_support.h"
#include "tests/support/cases.h"

#include <gtest/gtest.h>

#include <numbers>

namespace tailpoint::testing {
namespace TAILPOINT_FILE {

/// All letters that the solution gives.
std::vector<AngleName> toldNames(const Sketch& sketch) {
    const Solved solved = solve(sketch);
    std::vector<AngleName> names;
    for (const Step& step : explain(sketch, solved, construct(sketch, solved)).steps)
        names.insert(names.end(), step.angles.begin(), step.angles.end());
    return names;
}

Drawn withNames(const Sketch& sketch) {
    FigureOptions options;
    options.names = toldNames(sketch);
    return drawn(sketch, options);
}

const Arc* arcOf(const Group* group) {
    if (group == nullptr)
        return nullptr;
    for (const Item& item : group->items)
        if (const auto* arc = std::get_if<Arc>(&item))
            return arc;
    return nullptr;
}

double apart(Point a, Point b) {
    return std::hypot(a.x - b.x, a.y - b.y);
}

// By hand: R = 519.86 N; sin beta = 275 sin 115 / 519.86, beta = 28.6; alpha = 180 - 115 - 28.6 = 36.4.
TEST(AnglesOfTheHalf, OfTheRaftStandWithTheAngleBetweenTheTails) {
    const Drawn d = withNames(sketch({force("P", 340, 25), force("Q", 275, -40)}));
    const auto says = [&](const char* id) { return textsOf(groupOf(d.figure, id)); };
    using Strings = std::vector<std::string>;
    EXPECT_EQ(says("angle-tails"), Strings{"φ = 65.0°"});
    EXPECT_EQ(says("angle-1"), Strings{"γ = 115.0°"});
    EXPECT_EQ(says("opposite-Q"), Strings{"β = 28.6°"});
    EXPECT_EQ(says("opposite-P"), Strings{"α = 36.4°"});
    EXPECT_EQ(arcOf(groupOf(d.figure, "opposite-Q"))->centre, d.view.toSheet({0, 0}));
    const Point tip = (*groupOf(d.figure, "sum")->ends)[1];
    EXPECT_LT(apart(arcOf(groupOf(d.figure, "opposite-P"))->centre, tip), 1e-6);
    EXPECT_FALSE(groupOf(d.figure, "angle-2")) << "where α stands φ does not stand again";
}

/// The text keeps the half that begins with the greater force; so does the figure.
TEST(AnglesOfTheHalf, BeginWithTheGreaterForce) {
    const Drawn d = withNames(sketch({force("P", 180, 62), force("Q", 240, -71)}));
    const Point common = d.view.toSheet({0, 0});
    EXPECT_LT(apart(arcOf(groupOf(d.figure, "opposite-P"))->centre, common), 1e-6);
    EXPECT_GT(apart(arcOf(groupOf(d.figure, "opposite-Q"))->centre, common), 10);
}

TEST(AnglesOfTheHalf, AreAsWideAsTheTrianglesWhateverTheForces) {
    const std::uint64_t seed = 20261130;
    int looked = 0;
    for (std::uint64_t i = 0; i < 300; ++i) {
        Dice dice(seed + i);
        const Sketch asked = sketch({force("P", dice.between(50, 400), anyDegrees(dice)),
                                     force("Q", dice.between(50, 400), anyDegrees(dice))});
        const Drawn d = withNames(asked);
        SCOPED_TRACE("seed " + std::to_string(seed + i));
        for (std::size_t side = 0; side < 2 && d.construction.triangle; ++side) {
            const ForceTriangle& t = *d.construction.triangle;
            const Arc* arc = arcOf(groupOf(d.figure, "opposite-" + t.names[side]));
            if (!arc)
                continue; // no room for an arc
            EXPECT_NEAR(std::abs(arc->sweepDegrees), *t.opposite[side] * 180 / std::numbers::pi, 1e-6);
            ++looked;
        }
    }
    EXPECT_GT(looked, 400);
}

/// An angle of which the answer is a side is not there before the answer.
TEST(AnglesOfTheHalf, WaitForTheAnswer) {
    const Sketch raft = sketch({force("P", 340, 25), force("Q", 275, -40)});
    FigureOptions options;
    options.names = toldNames(raft);
    for (const Stage stage :
         {Stage::given, Stage::directions, Stage::between, Stage::construction, Stage::interior}) {
        options.stage = stage;
        const Drawn d = drawn(raft, options);
        EXPECT_FALSE(groupOf(d.figure, "opposite-P") || groupOf(d.figure, "opposite-Q"));
    }
    options.stage = Stage::found;
    const Drawn found = drawn(raft, options);
    EXPECT_EQ(textsOf(groupOf(found.figure, "opposite-Q")), std::vector<std::string>{"β"})
        << "its value comes later";
}

} // namespace TAILPOINT_FILE
} // namespace tailpoint::testing
