// SPDX-License-Identifier: MIT
// Zoomed in, with parts of the drawing off the sheet.
#include "tests/core/figure/any_figure.h"

#include <gtest/gtest.h>

namespace tailpoint::testing {
namespace TAILPOINT_FILE {

bool isOnSheet(const DisplayList& list, Point p) {
    return p.x >= 0 && p.y >= 0 && p.x <= list.width && p.y <= list.height;
}

/// Least distance between a label and a point of the strokes of its own group that lies on the sheet.
double distanceToSeen(const DisplayList& list, const Group& group, const Box& box) {
    double least = 1e300;
    const auto consider = [&](Point p) {
        if (isOnSheet(list, p))
            least = std::min(least, distanceTo(box, p));
    };
    for (const Item& item : group.items) {
        if (const auto* path = std::get_if<Path>(&item); path && path->role != Role::leader)
            for (std::size_t i = 0; i + 1 < path->points.size(); ++i) {
                const Point a = path->points[i], b = path->points[i + 1];
                const double size = std::hypot(b.x - a.x, b.y - a.y);
                const int steps = std::clamp(static_cast<int>(size), 1, 20'000);
                for (int s = 0; s <= steps; ++s)
                    consider({a.x + (b.x - a.x) * s / steps, a.y + (b.y - a.y) * s / steps});
            }
        if (const auto* arc = std::get_if<Arc>(&item))
            for (int s = 0; s <= 2000; ++s) {
                const double t = (arc->startDegrees + arc->sweepDegrees * s / 2000) * M_PI / 180;
                consider(
                    {arc->centre.x + arc->radius * std::cos(t), arc->centre.y - arc->radius * std::sin(t)});
            }
    }
    return least;
}

TEST(Zoom, LabelsStandAtWhatIsSeenOrAreLedToIt) {
    constexpr std::uint64_t seed = 77;
    int labels = 0;
    for (std::uint64_t i = 0; i < 1'000; ++i) {
        const AnyFigure any = anyFigure(seed, i);
        Drawn d = drawn(any.sketch, any.options);
        Dice dice(seed + i);
        d.view.scale *= dice.power(0.3, 1.5);
        d.view.origin = {dice.between(-400, 1100), dice.between(-300, 800)};
        d.figure = compose(d.sketch, d.solved, d.construction, d.view, any.options, FixedMeasure());
        const double f = any.options.style.factor;
        for (const Group& group : d.figure.list.groups) {
            if (!d.figure.placement.labels.contains(group.id))
                continue;
            ++labels;
            for (const Item& item : group.items)
                if (const auto* text = std::get_if<Text>(&item)) {
                    const Path* leader = leaderOf(group);
                    // A leader takes hold on the sheet; a label without one stands beside its stroke, or with
                    // an angle's value inside of its arc.
                    if (leader)
                        EXPECT_TRUE(isOnSheet(d.figure.list, leader->points[0])) << group.id << " case " << i;
                    else
                        EXPECT_LT(distanceToSeen(d.figure.list, group, text->box), 55 * f)
                            << group.id << " '" << textOf(*text) << "' of seed " << seed << " case " << i;
                }
        }
    }
    EXPECT_GT(labels, 2'000);
}

TEST(Zoom, AnArrowOffTheSheetHasNoLabel) {
    Drawn d = drawn(sketch({force("P", 340, 25), force("Q", 275, -40)}));
    d.view.origin = {-2000, 3000};
    d.figure = compose(d.sketch, d.solved, d.construction, d.view, {}, FixedMeasure());
    EXPECT_TRUE(groupOf(d.figure, "force-P"));
    EXPECT_TRUE(textsOf(groupOf(d.figure, "force-P")).empty());
    EXPECT_TRUE(textsOf(groupOf(d.figure, "direction-force-P")).empty());
}

TEST(Zoom, ALongArrowHasItsLabelAtThePartThatIsSeen) {
    Drawn d = drawn(sketch({force("P", 340, 0), force("Q", 275, 90)}));
    d.view.scale = 20;
    d.view.origin = {100, 400};
    d.figure = compose(d.sketch, d.solved, d.construction, d.view, {}, FixedMeasure());
    EXPECT_EQ(textsOf(groupOf(d.figure, "force-P")), std::vector<std::string>{"P = 340 N"});
    EXPECT_EQ(textsOf(groupOf(d.figure, "force-Q")), std::vector<std::string>{"Q = 275 N"});
}

} // namespace TAILPOINT_FILE
} // namespace tailpoint::testing
