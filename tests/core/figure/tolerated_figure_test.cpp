// SPDX-License-Identifier: MIT
// Tolerances and limits on the figure. Ranges: dense grid over all inputs, then local zoom (Python), or the
// closed form by hand, named at each.
#include "core/construct/reduction.h"
#include "core/figure/geometry.h"
#include "core/figure/tolerated.h"
#include "core/figure/words.h"
#include "tests/core/figure/figure_support.h"
#include "tests/support/loose.h"
#include "tests/support/sketches.h"
#include "tests/support/tolerances.h"

#include <gtest/gtest.h>
#include <random>

namespace tailpoint::testing {
namespace TAILPOINT_FILE {

using Strings = std::vector<std::string>;

FigureOptions knowing(const Sketch& given, FigureOptions options = {}) {
    const Solved solved = solve(given);
    Tolerated all{tolerance::rangesOf(given, solved), {}};
    if (options.solution < solved.solutions.size())
        all.regions = tolerance::tipRegions(given, solved, options.solution);
    options.tolerated = std::make_shared<const Tolerated>(std::move(all));
    return options;
}

Drawn tolerated(const Sketch& given, const FigureOptions& options = {}) {
    return drawn(given, knowing(given, options));
}

/// Its lines, one after the other.
std::string said(const Figure& figure, std::string_view id) {
    const Group* group = groupOf(figure, id);
    const Text* text = group ? labelOf(*group) : nullptr;
    return text ? plainText(text->runs) : std::string();
}

Sketch raft() {
    return sketch({loose(force("P", 340, 25), 5, 2), force("Q", 275, -40)});
}

/// 509.747 to 529.901 and -5.0506 to -2.2263, by the grid.
TEST(ToleratedFigure, WhatWasFoundStandsThereWithItsRange) {
    const Figure figure = tolerated(raft()).figure;
    EXPECT_EQ(said(figure, "sum"), "R = 520 N; 509 to 530 N");
    EXPECT_EQ(said(figure, "force-P"), "P = 340 ± 5 N");
    EXPECT_EQ(said(figure, "force-Q"), "Q = 275 N");
    EXPECT_EQ(said(figure, "direction-sum"), "3.6°; 2.2° to 5.1°") << "the arc says the sense";
    EXPECT_EQ(said(figure, "direction-force-P"), "25.0° ± 2°");
    EXPECT_EQ(groupOf(figure, "sum")->title.detail,
              "520 N (509 to 530 N) at 3.6° clockwise from +x (−5.1° to −2.2°)");
    EXPECT_NE(figure.list.description.find("520 N (509 to 530 N)"), std::string::npos);
}

/// Without tolerances nothing is said of ranges; and where a value is exact none stands beside it.
TEST(ToleratedFigure, OnlyWhatAToleranceMovesHasARange) {
    const Sketch exact = sketch({force("P", 340, 25), force("Q", 275, -40)});
    EXPECT_EQ(said(tolerated(exact).figure, "sum"), "R = 520 N");
    // P alone, its magnitude loose: R's direction is P's.
    const Sketch one = sketch({loose(force("P", 100, 30), 10, 0)});
    EXPECT_EQ(said(tolerated(one).figure, "sum"), "R = 100 N; 90.0 to 110 N");
    EXPECT_EQ(said(tolerated(one).figure, "direction-force-P"), "30.0°");
}

/// Direction 36.803, from 31.985 to arcsin 0.6 = 36.870: P 100 at 0, Q 60 at 130 ± 20. About zero the signs
/// stand there: P 100 at -1 ± 2 and Q 50 at 0 make -0.6667, from -atan(100 sin 3 / (100 cos 3 + 50)) =
/// -2.0001 to atan(100 sin 1 / (100 cos 1 + 50)) = 0.6667, by hand.
TEST(ToleratedFigure, ADirectionAboutTheAxisHasItsSigns) {
    const Sketch above = sketch({force("P", 100, 0), loose(force("Q", 60, 130), 0, 20)});
    EXPECT_EQ(said(tolerated(above).figure, "direction-sum"), "36.8°; 31.9° to 36.9°");
    const Sketch about = sketch({loose(force("P", 100, -1), 0, 2), force("Q", 50, 0)});
    EXPECT_EQ(said(tolerated(about).figure, "direction-sum"), "−0.7°; −2.1° to 0.7°");
}

/// A slack sum: 0 to 13.841, any direction; x from -8.0579: P 100 ± 5 at 0 ± 2, Q 98 ± 5 at 180 ± 2.
TEST(ToleratedFigure, AnyDirectionIsSaidInWords) {
    const Sketch given = sketch({loose(force("P", 100, 0), 5, 2), loose(force("Q", 98, 180), 5, 2)});
    const Figure figure = tolerated(given).figure;
    EXPECT_EQ(said(figure, "sum"), "R = 2.00 N; 0 to 13.9 N");
    EXPECT_NE(groupOf(figure, "sum")->title.detail.find("(any direction)"), std::string::npos);
}

/// 98.282 N and no upper bound; a part has no answer: 12 at -90, A at 1.5 ± 2, B at 178.5 ± 2.
TEST(ToleratedFigure, AnOpenRangeIsSaidInWordsAndItsRegionEndsWithTheSheet) {
    const Sketch given = balanced({force("W", 12, -90), loose(force("A", kToFind, 1.5), 0, 2),
                                   loose(force("B", kToFind, 178.5), 0, 2)});
    const Drawn d = tolerated(given);
    EXPECT_EQ(said(d.figure, "force-A"), "A = 229 N; at least 98.2 N");
    const Group* region = groupOf(d.figure, "region-A");
    ASSERT_TRUE(region);
    for (const Item& item : region->items)
        for (const Point p : std::get<Path>(item).points)
            EXPECT_TRUE(contains(grown({0, 0, 720, 480}, 41), p));
    const Text* note = labelOf(*groupOf(d.figure, "note"));
    ASSERT_TRUE(note);
}

TEST(ToleratedFigure, WhereTheRangeIsNotKnownItSaysSo) {
    const Figure figure = drawn(raft()).figure;
    EXPECT_EQ(said(figure, "sum"), "R = 520 N; range not known");
    EXPECT_EQ(said(figure, "direction-sum"), "3.6°; range not known");
    EXPECT_FALSE(groupOf(figure, "region-R"));
}

TEST(ToleratedFigure, NothingOfItIsToldBeforeTheAnswer) {
    for (const Stage stage : {Stage::given, Stage::directions, Stage::interior, Stage::found}) {
        FigureOptions options;
        options.stage = stage;
        const Figure figure = tolerated(raft(), options).figure;
        for (const Group& group : figure.list.groups) {
            EXPECT_NE(group.id, stage < Stage::found ? "region-R" : "") << nameOf(group.role);
            for (const std::string& text : textsOf(&group))
                EXPECT_EQ(text.find(" to "), std::string::npos) << text;
        }
    }
    FigureOptions hidden;
    hidden.values = false;
    const Figure figure = tolerated(raft(), hidden).figure;
    EXPECT_EQ(said(figure, "sum"), "R");
}

Box boundsOf(const Drawn& d, std::string_view id) {
    const Group* group = groupOf(d.figure, id);
    double left = 1e300, right = -1e300, down = 1e300, up = -1e300;
    for (const Item& item : group ? group->items : std::vector<Item>())
        for (const Point p : std::get<Path>(item).points) {
            const Eigen::Vector2d at = d.view.toSketch(p);
            left = std::min(left, at.x()), right = std::max(right, at.x());
            down = std::min(down, at.y()), up = std::max(up, at.y());
        }
    return {left, down, right - left, up - down};
}

/// Two magnitudes at right angles: a rectangle of 2 · 10 by 2 · 5 about (100, 50), by hand.
TEST(TipsRegion, OfTwoMagnitudesIsTheirRectangle) {
    const Box region = boundsOf(
        tolerated(sketch({loose(force("P", 100, 0), 10, 0), loose(force("Q", 50, 90), 5, 0)})), "region-R");
    EXPECT_NEAR(region.left, 90, 0.1);
    EXPECT_NEAR(region.right(), 110, 0.1);
    EXPECT_NEAR(region.top, 45, 0.1);
    EXPECT_NEAR(region.bottom(), 55, 0.1);
}

/// In the raft: x from 509.747 cos ... is not it: the greatest length is the farthest point of the region,
/// 529.901, and the least the nearest, 509.747 (the grid).
TEST(TipsRegion, ReachesFromTheLeastToTheGreatestLength) {
    const Drawn d = tolerated(raft());
    const Group* group = groupOf(d.figure, "region-R");
    ASSERT_TRUE(group);
    double least = 1e300, greatest = 0;
    for (const Item& item : group->items)
        for (const Point p : std::get<Path>(item).points) {
            const double length = d.view.toSketch(p).norm();
            least = std::min(least, length);
            greatest = std::max(greatest, length);
        }
    EXPECT_NEAR(least, 509.747, 0.3);
    EXPECT_NEAR(greatest, 529.901, 0.3);
}

/// How often a closed path goes round a point, counter-clockwise as seen.
int windings(const Path& path, Point about) {
    double turn = 0;
    for (std::size_t i = 0; i < path.points.size(); ++i) {
        const Point a = path.points[i] - about, b = path.points[(i + 1) % path.points.size()] - about;
        turn -= std::atan2(a.x * b.y - a.y * b.x, dot(a, b));
    }
    return static_cast<int>(std::lround(turn / (2 * std::numbers::pi)));
}

const Path* groundOf(const Group& group) {
    for (const Item& item : group.items)
        if (const auto* path = std::get_if<Path>(&item); path && path->filled)
            return path;
    return nullptr;
}

/// Outlines of a ring from 90 to 110, the inner one clockwise, by hand.
std::vector<tolerance::Outline> ring() {
    std::vector<tolerance::Outline> outlines(2);
    for (int i = 0; i < 72; ++i) {
        const double t = 5 * i * std::numbers::pi / 180;
        outlines[0].emplace_back(110 * std::cos(t), 110 * std::sin(t));
        outlines[1].emplace_back(90 * std::cos(t), -90 * std::sin(t));
    }
    return outlines;
}

TEST(TipsRegion, KeepsAHollowMiddleHollow) {
    const Sketch given = sketch({loose(force("P", 100, 30), 10, 180)});
    FigureOptions options;
    options.tolerated = std::make_shared<const Tolerated>(
        Tolerated{tolerance::rangesOf(given, solve(given)), {{kSumIndex, ring(), false}}});
    const Drawn d = drawn(given, options);
    const Group* group = groupOf(d.figure, "region-R");
    ASSERT_TRUE(group);
    EXPECT_EQ(group->role, Role::region);
    const Path* ground = groundOf(*group);
    ASSERT_TRUE(ground);
    EXPECT_EQ(ground->role, Role::region);
    EXPECT_EQ(ground->width, 0);
    for (const double degrees : {10.0, 100.0, 190.0, 280.0}) {
        EXPECT_EQ(windings(*ground, onCircle(d.view.origin, 80 * d.view.scale, degrees)), 0) << degrees;
        EXPECT_NE(windings(*ground, onCircle(d.view.origin, 100 * d.view.scale, degrees)), 0) << degrees;
        EXPECT_EQ(windings(*ground, onCircle(d.view.origin, 120 * d.view.scale, degrees)), 0) << degrees;
    }
}

/// A region that is a line: P 100 ± 10 on its line, to be seen as a band.
TEST(TipsRegion, OfOneMagnitudeIsABandAlongItsLine) {
    const Drawn d = tolerated(sketch({loose(force("P", 100, 30), 10, 0)}));
    const Group* group = groupOf(d.figure, "region-R");
    ASSERT_TRUE(group);
    const auto& band = std::get<Path>(group->items.front());
    EXPECT_EQ(band.role, Role::region);
    EXPECT_GT(band.width, 2);
    const Box region = boundsOf(d, "region-R");
    EXPECT_NEAR(region.width, 20 * std::cos(std::numbers::pi / 6), 0.2);
    EXPECT_NEAR(region.height, 20 * std::sin(std::numbers::pi / 6), 0.2);
}

TEST(TipsRegion, IsLeftOutOnDemandAndExplainedWhereItIs) {
    FigureOptions options;
    options.regions = false;
    EXPECT_FALSE(groupOf(tolerated(raft(), options).figure, "region-R"));
    const auto note = [](const Figure& figure) {
        std::string all;
        for (const std::string& line : textsOf(groupOf(figure, "note")))
            all += line + ' ';
        return all;
    };
    EXPECT_EQ(note(tolerated(raft()).figure).find("Shaded: where the tip of R can lie."), 0U);
    EXPECT_EQ(note(tolerated(raft(), options).figure).find("Shaded"), std::string::npos);
}

/// How often a closed path goes round a place.
double windingOf(const Path& path, Point place) {
    double turns = 0;
    for (std::size_t i = 0; i < path.points.size(); ++i) {
        const Point a = path.points[i] - place, b = path.points[(i + 1) % path.points.size()] - place;
        turns += std::atan2(a.x * b.y - a.y * b.x, a.x * b.x + a.y * b.y);
    }
    return turns / (2 * std::numbers::pi);
}

/// P 100 ± 10 in any direction: the ground leaves the ring's middle bare, filled by winding or by even and
/// odd.
TEST(ToleratedFigure, ARegionThatIsARingIsBareInTheMiddle) {
    const Drawn d = tolerated(sketch({loose(force("P", 100, 30), 10, 180)}));
    const Group* group = groupOf(d.figure, "region-R");
    ASSERT_TRUE(group);
    const Path* ground = nullptr;
    for (const Item& item : group->items)
        if (const auto* path = std::get_if<Path>(&item); path && path->filled)
            ground = path;
    ASSERT_TRUE(ground);
    for (int way = 0; way < 8; ++way) {
        const Point along{std::cos(way + 0.5), std::sin(way + 0.5)};
        const auto around = [&](double newtons) {
            return std::fabs(windingOf(*ground, d.view.origin + newtons * d.view.scale * along));
        };
        EXPECT_NEAR(around(20), 0, 1e-6);
        EXPECT_NEAR(around(85), 0, 1e-6);
        EXPECT_NEAR(around(100), 1, 1e-6);
        EXPECT_NEAR(around(115), 0, 1e-6);
    }
}

/// Counted from +y clockwise: 30 ± 10 of it is 60 ± 10 from +x counter-clockwise.
TEST(PermittedSector, HasItsLinesWhereTheSheetSaysThem) {
    Sketch given = sketch({force("P", 340, 25), force("Q", 275, 140)});
    given.reference = {90, Sense::cw};
    given.sum.permitted = Permitted{30, 10};
    const Drawn d = drawn(given);
    const Group* group = groupOf(d.figure, "permitted-R");
    ASSERT_TRUE(group);
    const auto angle = [&](std::size_t i) {
        const auto& edge = std::get<Path>(group->items.at(i));
        EXPECT_EQ(edge.dash, Dash::dashed);
        return degreesOf(edge.points[1] - d.view.origin);
    };
    EXPECT_NEAR(angle(0), 50, 1e-9);
    EXPECT_NEAR(angle(1), 70, 1e-9);
    const auto& rim = std::get<Arc>(group->items.at(2));
    EXPECT_NEAR(rim.startDegrees, 50, 1e-9);
    EXPECT_NEAR(rim.sweepDegrees, 20, 1e-9);
    EXPECT_EQ(rim.centre, d.view.origin);
    EXPECT_EQ(textsOf(group), Strings{"permitted"});
}

TEST(PermittedSector, SaysWhoseItIsWhereThereAreSeveral) {
    Sketch given = sketch({force("P", 340, 25), force("Q", 275, 140)});
    given.forces[0].permitted = Permitted{30, 10};
    given.forces[1].permitted = Permitted{150, 20};
    FigureOptions options;
    options.stage = Stage::given; // it is given
    const Figure figure = drawn(given, options).figure;
    EXPECT_EQ(textsOf(groupOf(figure, "permitted-P")), Strings{"P permitted"});
    EXPECT_EQ(textsOf(groupOf(figure, "permitted-Q")), Strings{"Q permitted"});
}

/// 6 kN at 75 and 6 kN at 140: 10.1207 kN at 107.5 degrees, 101.21 per cent of 10 kN, 17.5 off an axis at 90.
Sketch bridle(double within) {
    Sketch given = sketch({force("P", 6, 75), force("Q", 6, 140)});
    given.forceUnit = ForceUnit::kN;
    given.sum.limit = TypedForce{10, ForceUnit::kN, {}};
    given.sum.permitted = Permitted{90, within};
    return given;
}

bool hasBold(const Figure& figure, std::string_view id, std::string_view words) {
    const Text* text = labelOf(*groupOf(figure, id));
    return std::any_of(text->runs.begin(), text->runs.end(),
                       [&](const Run& run) { return run.bold && run.text == words; });
}

TEST(OverLimit, IsSaidInWordsAtTheValue) {
    const Figure figure = drawn(bridle(20)).figure;
    EXPECT_EQ(said(figure, "sum"), "R = 10.1 kN; ! over limit, 101.3 %");
    EXPECT_TRUE(hasBold(figure, "sum", "! over limit, 101.3 %"));
    Sketch wider = bridle(20);
    wider.sum.limit->value = 10.2;
    EXPECT_EQ(said(drawn(wider).figure, "sum"), "R = 10.1 kN");
}

TEST(OverLimit, ADirectionThatIsNotPermittedSaysSo) {
    EXPECT_EQ(said(drawn(bridle(17)).figure, "sum"),
              "R = 10.1 kN; ! over limit, 101.3 %; ! direction not permitted");
}

/// R at 509.747 to 529.901 N beside 525 N: 100.94 per cent at worst; its direction -5.0506 to -2.2263 beside
/// 4 either side of 0: in part.
TEST(OverLimit, APartOfTheToleranceStraddles) {
    Sketch given = raft();
    given.sum.limit = TypedForce{525, ForceUnit::N, {}};
    given.sum.permitted = Permitted{0, 4};
    EXPECT_EQ(said(tolerated(given).figure, "sum"),
              "R = 520 N; 509 to 530 N; ! straddles limit, 101.0 %; ! direction partly not permitted");
    FigureOptions options;
    options.stage = Stage::magnitudes;
    EXPECT_EQ(said(tolerated(given, options).figure, "sum"),
              "R = 520 N; 509 to 530 N; ! straddles limit, 101.0 %")
        << "its direction is not told yet";
}

TEST(ToleratedFigure, LabelsWithTheirLinesTouchNothing) {
    constexpr std::uint64_t seed = 1632;
    std::mt19937_64 dice(seed);
    std::uniform_real_distribution<double> size(80, 400), turn(-180, 180), off(1, 12), open(0.5, 6);
    for (int i = 0; i < 150; ++i) {
        std::vector<Force> forces;
        for (int f = 0; f < 2 + i % 3; ++f)
            forces.push_back(loose(force(std::string(1, static_cast<char>('P' + f)), size(dice), turn(dice)),
                                   off(dice), open(dice)));
        Sketch given = sketch(forces, force("Z", kToFind, kToFind));
        if (i % 4 == 0)
            given.sum.limit = TypedForce{150, ForceUnit::N, {}};
        const auto touching = collisions(tolerated(given).figure.list);
        EXPECT_TRUE(touching.empty()) << "seed " << seed << " case " << i << ": " << touching.front();
    }
}

} // namespace TAILPOINT_FILE
} // namespace tailpoint::testing
