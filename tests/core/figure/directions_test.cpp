// SPDX-License-Identifier: MIT
// Arcs from the axis lie so far apart that a value has room between an arc and the next one, and begin on the
// sheet.
#include "core/figure/geometry.h"
#include "tests/core/figure/any_figure.h"

#include <gtest/gtest.h>

namespace tailpoint::testing {
namespace TAILPOINT_FILE {

int ledDirections(const Figure& figure) {
    int led = 0;
    for (const Group& group : figure.list.groups)
        led += group.id.starts_with("direction-") && leaderOf(group) ? 1 : 0;
    return led;
}

TEST(DirectionArcs, NearlyEqualOnesHaveTheirValuesAtTheirOwnArcs) {
    EXPECT_EQ(ledDirections(drawn(sketch({force("P", 500, 30), force("Q", 10, -40)})).figure), 0);
    EXPECT_EQ(ledDirections(drawn(sketch({force("A", 500, 10), force("B", 10, 60), force("C", 180, 125),
                                          force("D", 12, 200), force("E", 150, 300)}))
                                .figure),
              0);
}

TEST(DirectionArcs, OfANarrowAngleIsBroughtOutToWhereItsValueFits) {
    const Drawn d = drawn(sketch({force("P", 340, 25), force("Q", 275, -43)}));
    EXPECT_EQ(textsOf(groupOf(d.figure, "direction-sum")), std::vector<std::string>{"4.9°"});
    EXPECT_EQ(ledDirections(d.figure), 0);
}

/// A tenth of a degree a frame; nothing of the narrow angle moves further than 5 points for it.
TEST(DirectionArcs, OfANarrowAngleGoesOutAndBackSteadily) {
    const View view{1000, 700, {120, 360}, 1.35};
    double before = 0, most = 0, furthest = 0;
    for (int i = 0; i < 120; ++i) {
        const Sketch given = sketch({force("P", 340, 14 - 0.1 * i)}, force("R", 340, kToFind));
        const Solved solved = solve(given);
        const Construction built = construct(given, solved);
        const Figure now = compose(given, solved, built, view, {}, FixedMeasure());
        double radius = 0;
        for (const Item& item : groupOf(now, "direction-force-P")->items)
            if (const auto* arc = std::get_if<Arc>(&item))
                radius = arc->radius;
        most = std::max(most, before > 0 ? std::abs(radius - before) : 0);
        furthest = std::max(furthest, radius);
        before = radius;
    }
    EXPECT_LT(most, 5);
    EXPECT_GT(furthest, 180);
}

/// So that it is not taken for the value of one of the arcs within.
TEST(DirectionArcs, HaveTheNamedAnglesValueBeyondItsArcWhereThatRunsOutsideThem) {
    FigureOptions options;
    options.stage = Stage::directions;
    options.names = {{betweenId(forceVector(0), forceVector(1)), "φ"}};
    const Drawn d = drawn(sketch({force("P", 340, 25), force("Q", 275, -40)}), options);
    const Group* tails = groupOf(d.figure, "angle-tails");
    ASSERT_TRUE(tails && labelOf(*tails));
    for (const Item& item : tails->items)
        if (const auto* arc = std::get_if<Arc>(&item)) {
            EXPECT_GT(arc->radius, 100);
            EXPECT_GT(distanceTo(labelOf(*tails)->box, arc->centre), arc->radius);
        }
}

/// N30°W lies 30 degrees counter-clockwise of north, S65°E 65 degrees counter-clockwise of south.
TEST(DirectionArcs, OfABearingCountFromNorthOrSouth) {
    FigureOptions options;
    options.bearings = true;
    const Drawn d =
        drawn(sketch({bearing("P", 340, 'N', 30, 'W'), bearing("Q", 300, 'S', 65, 'E')}), options);
    for (const auto& [id, text, from, sweep] : {std::tuple{"direction-force-P", "N30°W", 90.0, 30.0},
                                                std::tuple{"direction-force-Q", "S65°E", 270.0, 65.0}}) {
        const Group* group = groupOf(d.figure, id);
        ASSERT_TRUE(group);
        EXPECT_EQ(textsOf(group), std::vector<std::string>{text});
        EXPECT_EQ(group->title.detail, text);
        for (const Item& item : group->items)
            if (const auto* arc = std::get_if<Arc>(&item)) {
                EXPECT_NEAR(arc->startDegrees, from, 1e-9);
                EXPECT_GT(arc->sweepDegrees, 0.7 * sweep) << "less its head";
                EXPECT_LE(arc->sweepDegrees, sweep);
            }
    }
}

TEST(DirectionArcs, AreLedNoMoreOftenThanOneInEight) {
    int values = 0, led = 0;
    for (std::uint64_t i = 0; i < 2'000; ++i) {
        const AnyFigure any = anyFigure(4711, i);
        const Drawn d = drawn(any.sketch, any.options, any.width, any.height);
        led += ledDirections(d.figure);
        for (const Group& group : d.figure.list.groups)
            values += group.id.starts_with("direction-") && labelOf(group) ? 1 : 0;
    }
    EXPECT_GT(values, 4'000);
    EXPECT_LT(8 * led, values);
}

/// A sheet too narrow for the arcs' least distances loses the outermost; one in forty was lost when they knew
/// nothing of the sheet.
TEST(DirectionArcs, BeginOnTheSheetButForOneInSixty) {
    int arcs = 0, off = 0;
    for (std::uint64_t i = 0; i < 10'000; i += 4) {
        const AnyFigure any = anyFigure(4711, i);
        const Drawn d = drawn(any.sketch, any.options, any.width, any.height);
        for (const Group& group : d.figure.list.groups)
            for (const Item& item : group.items)
                if (const auto* arc = std::get_if<Arc>(&item); arc && group.id.starts_with("direction-")) {
                    const Point from = onCircle(arc->centre, arc->radius, d.sketch.reference.axisDegrees);
                    ++arcs;
                    off += contains({0, 0, d.view.width, d.view.height}, from) ? 0 : 1;
                }
    }
    EXPECT_GT(arcs, 4'000);
    EXPECT_LT(60 * off, arcs);
}

} // namespace TAILPOINT_FILE
} // namespace tailpoint::testing
