// SPDX-License-Identifier: MIT
// What is given stands on the figure as it was given: beyond a half turn, in a unit of its own, and each
// vector of one direction with what that may be.
#include "core/figure/geometry.h"
#include "core/figure/tolerated.h"
#include "core/figure/words.h"
#include "tests/core/figure/figure_support.h"
#include "tests/support/loose.h"

#include <gtest/gtest.h>

namespace tailpoint::testing {
namespace TAILPOINT_FILE {

std::string said(const Figure& figure, std::string_view id) {
    const Group* group = groupOf(figure, id);
    const Text* text = group ? labelOf(*group) : nullptr;
    return text ? plainText(text->runs) : std::string();
}

double sweepOf(const Figure& figure, std::string_view id) {
    for (const Item& item : groupOf(figure, id)->items)
        if (const auto* arc = std::get_if<Arc>(&item))
            return arc->sweepDegrees;
    return 0;
}

/// 223 degrees are told and turned as such, not as 137 the other way; 400 are 40 and a whole turn.
TEST(AsStated, ADirectionBeyondAHalfTurnKeepsItsAngleAndItsSense) {
    for (const Stage stage : {Stage::directions, Stage::all}) {
        FigureOptions options;
        options.stage = stage;
        const Figure figure = drawn(sketch({force("P", 340, 25), force("Q", 300, 223)}), options).figure;
        EXPECT_EQ(said(figure, "direction-force-Q"), "223.0°");
        EXPECT_GT(sweepOf(figure, "direction-force-Q"), 210) << "less its head";
        EXPECT_EQ(groupOf(figure, "direction-force-Q")->title.detail, "223.0° counter-clockwise from +x");
        EXPECT_NE(figure.list.description.find("300 N at 223.0° counter-clockwise from +x"),
                  std::string::npos);
    }
    EXPECT_EQ(said(drawn(sketch({force("P", 340, 400)})).figure, "direction-force-P"), "40.0°");
    const Figure clockwise = drawn(sketch({force("P", 340, 25), force("Q", 300, -250)})).figure;
    EXPECT_EQ(said(clockwise, "direction-force-Q"), "250.0°");
    EXPECT_LT(sweepOf(clockwise, "direction-force-Q"), -235);
}

TEST(AsStated, ALooseDirectionBeyondAHalfTurnGrowsByItsPlus) {
    Sketch given = sketch({force("P", 340, 25), force("Q", 300, 223)});
    given.forces[1].direction.tolerance = Tolerance{3, 1, false};
    EXPECT_EQ(said(drawn(given).figure, "direction-force-Q"), "223.0° +3°/−1°");
}

/// A found direction, and the given one of a line on which the force acts the other way, are within a half
/// turn.
TEST(AsStated, WhatIsFoundIsWithinAHalfTurn) {
    const Figure figure =
        drawn(balanced({force("W", 100, 90), either(force("A", kToFind, 210)), force("B", kToFind, 330)}))
            .figure;
    EXPECT_EQ(said(figure, "direction-force-B"), "330.0°");
    EXPECT_EQ(said(figure, "direction-force-A"), "210.0°") << "as it was given: it acts in that sense";
    const Figure other = drawn(balanced({force("W", 100, -90), either(force("A", kToFind, 210)),
                                         either(force("B", kToFind, 330))}))
                             .figure;
    EXPECT_EQ(said(other, "direction-force-A"), "30.0°") << "turned: it acts the other way";
}

/// NIST SP 811 (2008), B.8: 850 kgf = 8335.6525 N, of 850 kg the weight with g = 9.80665 m/s2; 50 gon are 45
/// degrees.
TEST(AsStated, AUnitOfItsOwnStandsUnderTheSheets) {
    Sketch given = sketch({force("P", 6000, 25), force("W", 1, -40)});
    given.forces[1].magnitude =
        magnitudeOf({850, ForceUnit::kgf, plusMinus(10)}, given.forceUnit, given.gravity);
    given.forces[1].direction = directionOf({-50, AngleUnit::gon, {}}, given.angleUnit);
    const Figure figure = drawn(given).figure;
    EXPECT_EQ(said(figure, "force-W"), "W = 8340 ± 98.1 N; stated 850 ± 10 kgf");
    EXPECT_EQ(said(figure, "direction-force-W"), "45.0°; stated −50 gon");
    EXPECT_EQ(said(figure, "force-P"), "P = 6000 N");
    given.forces[1].magnitude = magnitudeOf({850, MassUnit::kg, {}}, given.forceUnit, given.gravity);
    FigureOptions exercise;
    exercise.stage = Stage::directions;
    EXPECT_EQ(said(drawn(given, exercise).figure, "force-W"),
              "W = 8340 N; weight of 850 kg, g = 9.80665 m/s²");
    exercise.values = false;
    EXPECT_EQ(said(drawn(given, exercise).figure, "force-W"), "W");
}

FigureOptions knowing(const Sketch& given) {
    const Solved solved = solve(given);
    FigureOptions options;
    options.tolerated = std::make_shared<const Tolerated>(
        Tolerated{tolerance::rangesOf(given, solved), tolerance::tipRegions(given, solved, 0)});
    return options;
}

/// R's direction from 23.645 to 26.355 by a grid over the inputs (Python): P 100 ± 5 at 25 ± 2, Q 50 at 25.
TEST(AsStated, AnArcThatIsSharedSaysOfEachWhatItMayBe) {
    const Sketch given = sketch({loose(force("P", 100, 25), 5, 2), force("Q", 50, 25)});
    EXPECT_EQ(said(drawn(given, knowing(given)).figure, "direction-force-P"),
              "P 25.0° ± 2°; Q 25.0°; R 23.6° to 26.4°");
    const Sketch alike = sketch({loose(force("P", 100, 25), 5, 0), force("Q", 50, 25)});
    EXPECT_EQ(said(drawn(alike, knowing(alike)).figure, "direction-force-P"), "25.0°")
        << "no tolerance moves one of them";
}

/// How much of a label's box lies on the region, by points of a fine grid.
bool covers(const Box& box, const std::vector<Point>& outline) {
    const auto isInside = [&](Point p) {
        bool inside = false;
        for (std::size_t i = 0, j = outline.size() - 1; i < outline.size(); j = i++)
            if ((outline[i].y > p.y) != (outline[j].y > p.y) &&
                p.x < (outline[j].x - outline[i].x) * (p.y - outline[i].y) / (outline[j].y - outline[i].y) +
                          outline[i].x)
                inside = !inside;
        return inside;
    };
    for (int i = 0; i <= 20; ++i)
        for (int j = 0; j <= 20; ++j)
            if (isInside({box.left + box.width * i / 20, box.top + box.height * j / 20}))
                return true;
    return false;
}

/// The labels that cover a part of the outline; empty: none does.
std::string wordsOver(const std::vector<Point>& outline, const DisplayList& list) {
    std::string out;
    for (const Group& group : list.groups)
        for (const Item& one : group.items)
            if (const auto* text = std::get_if<Text>(&one);
                text && text->role != Role::titleblock && group.id != "note" && covers(text->box, outline))
                out += textOf(*text) + "; ";
    return out;
}

/// With two forces there is room beside every region: no label stands on one, whatever the tolerances.
TEST(TipsRegion, NoLabelStandsOnItWhereThereIsRoom) {
    int regions = 0;
    for (int i = 0; i < 60; ++i) {
        const Sketch given = sketch({loose(force("P", 340, 10 + 5 * (i % 9)), 4 + i % 20, 1 + i % 6),
                                     force("Q", 275, -20 - 7 * (i % 7))});
        const Drawn d = drawn(given, knowing(given));
        for (const Group& region : d.figure.list.groups) {
            if (region.role != Role::region)
                continue;
            ++regions;
            for (const Item& item : region.items)
                if (const auto* path = std::get_if<Path>(&item); path && path->closed && !path->filled) {
                    EXPECT_EQ(wordsOver(path->points, d.figure.list), "") << i;
                }
        }
    }
    EXPECT_EQ(regions, 60);
}

} // namespace TAILPOINT_FILE
} // namespace tailpoint::testing
