// SPDX-License-Identifier: MIT
// The curves of a sweep as a display list.
#include "core/figure/sweep_plot.h"

#include "core/explain/swept.h"
#include "core/figure/geometry.h"
#include "tests/support/sketches.h"

#include <gtest/gtest.h>

namespace tailpoint::testing {
namespace TAILPOINT_FILE {

/// Letters of one width: what is measured is the same everywhere.
class PlainMeasure : public TextMeasure {
public:
    TextExtent measure(const std::vector<Run>& runs, Face, double size) const override {
        double width = 0;
        for (const Run& run : runs) {
            width += 0.55 * size * static_cast<double>(run.text.size());
        }
        return {width, 0.75 * size, 0.22 * size};
    }
};

Sketch legs() {
    return sketch({force("W", 12, -90), force("A", kToFind, 30), force("B", kToFind, 115)},
                  force("R", 0, kToFind));
}
Sketch circle() {
    return sketch({force("P", 340, 25), force("Q", 275, kToFind)}, force("R", kToFind, 0));
}

std::vector<Text> textsOf(const DisplayList& list) {
    std::vector<Text> texts;
    for (const Group& group : list.groups) {
        for (const Item& item : group.items) {
            if (const auto* text = std::get_if<Text>(&item)) {
                texts.push_back(*text);
            }
        }
    }
    return texts;
}

std::string words(const Text& text) {
    std::string all;
    for (const Run& run : text.runs) {
        all += run.text;
    }
    return all;
}

TEST(SweepWords, TellLeastAndGreatestWithTheirPlaces) {
    Sketch sketch = legs();
    sketch.forceUnit = ForceUnit::kN;
    const Sweep swept = sweep(sketch, {{1, true}, 0, 90, 90});
    // 12 sin 25 and 6 / sin 65 by hand calculator: 5.0714, 6.6203
    const auto lines = sweepLines(swept, sketch);
    ASSERT_EQ(lines.size(), 7u);
    EXPECT_EQ(lines[0], "What is found as the direction of A goes from 0.0° to 90.0°");
    EXPECT_EQ(lines[1], "A least 5.0714 kN at 25.0°");
    EXPECT_EQ(lines[2], "A greatest 12.000 kN at 90.0°");
    EXPECT_EQ(lines[5], "larger of A and B least 6.6203 kN at 65.0°");
}

TEST(SweepWords, TellGapsAndWhatGrowsWithoutBound) {
    const Sweep swept = sweep(legs(), {{1, true}, 0, 360, 90});
    const auto lines = sweepLines(swept, legs());
    EXPECT_EQ(lines.back(), "No answer from 90.0° to 295.0°.");
    EXPECT_EQ(lines[2], "A grows without bound toward 295.0°");
}

/// A goes from 5.0714 to 12 kN, as above; beyond 90 degrees it grows without bound.
TEST(SweepWords, TellWhereALimitIsPassed) {
    Sketch sketch = legs();
    sketch.forceUnit = ForceUnit::kN;
    const auto told = [&](double limit, double to) {
        sketch.forces[1].limit = TypedForce{limit, ForceUnit::kN, {}};
        const auto all = sweptLimits(sweep(sketch, {{1, true}, 0, to, 90}), sketch);
        return all.size() == 1 ? wordsOf(all[0], sketch) : std::string("not one");
    };
    EXPECT_EQ(told(13, 90), "A is within its limit throughout: 92.4 % of 13 kN at most."); // 92.308
    EXPECT_EQ(told(10, 90), "! A is over its limit in a part of the range: up to 120.0 % of 10 kN.");
    EXPECT_EQ(told(5, 90), "! A is over its limit throughout: up to 240.0 % of 5 kN.");
    EXPECT_EQ(told(13, 360), "! A is over its limit of 13 kN in the range: no upper bound.");
    sketch.forces[1].limit.reset();
    EXPECT_TRUE(sweptLimits(sweep(sketch, {{1, true}, 0, 90, 90}), sketch).empty());
}

TEST(SweepWords, SayOnceWhatDoesNotChange) {
    // The magnitude of R is P's, whatever its direction.
    const Sketch sketch = testing::sketch({force("P", 340, 25)});
    const Sweep swept = sweep(sketch, {{0, true}, 0, 90, 90});
    const ExtremeWords told = extremeWords(swept.curves.front(), swept, sketch);
    EXPECT_EQ(told.least, "R 340.00 N throughout");
    EXPECT_EQ(told.greatest, "");
}

TEST(ASweepPlot, LeavesNoTextOnAnotherNorOffTheSheet) {
    const PlainMeasure measure;
    for (const Sketch& sketch : {legs(), circle()}) {
        for (const Scalar& varied : variable(sketch)) {
            const Sweep swept = sweep(
                sketch, {varied, varied.isDirection ? -180.0 : 0.0, varied.isDirection ? 180.0 : 400.0, 90});
            for (const auto& [width, height] : {std::pair{720.0, 540.0}, std::pair{420.0, 420.0}}) {
                SweepPlotOptions options;
                options.width = width;
                options.height = height;
                const DisplayList list = sweepPlot(swept, sketch, options, measure).list;
                const auto texts = textsOf(list);
                for (std::size_t i = 0; i < texts.size(); ++i) {
                    EXPECT_TRUE(inside(texts[i].box, {0, 0, width, height})) << words(texts[i]);
                    for (std::size_t j = 0; j < i; ++j) {
                        EXPECT_FALSE(overlap(texts[i].box, texts[j].box))
                            << words(texts[i]) << " on " << words(texts[j]);
                    }
                }
            }
        }
    }
}

/// Dashes tell curves of one panel apart without their colours.
TEST(ASweepPlot, PartsItsCurvesByTheirDashes) {
    const PlainMeasure measure;
    const Sweep swept = sweep(circle(), {{0, true}, -180, 180, 90});
    const DisplayList list = sweepPlot(swept, circle(), {}, measure).list;
    std::vector<Dash> dashes;
    for (const Group& group : list.groups) {
        if (group.id == "curve-1" || group.id == "curve-2") {
            dashes.push_back(std::get<Path>(group.items.front()).dash);
        }
    }
    ASSERT_EQ(dashes.size(), 2u);
    EXPECT_NE(dashes[0], dashes[1]);
}

TEST(ASweepPlot, KeepsItsCurvesWithinTheirPanels) {
    const PlainMeasure measure;
    const Sweep swept = sweep(legs(), {{1, true}, -180, 180, 90}); // A and B grow without bound
    const SweepPlot plot = sweepPlot(swept, legs(), {}, measure);
    ASSERT_EQ(plot.panels.size(), 1u);
    const Box panel = grown(plot.panels.front().box, 0.1);
    int count = 0;
    for (const Group& group : plot.list.groups) {
        if (group.id.rfind("curve-", 0) != 0) {
            continue;
        }
        for (const Item& item : group.items) {
            if (const auto* path = std::get_if<Path>(&item)) {
                for (const Point point : path->points) {
                    EXPECT_TRUE(contains(panel, point)) << point.x << " " << point.y;
                    ++count;
                }
            }
        }
    }
    EXPECT_GT(count, 100);
    EXPECT_LT(plot.panels.front().high, 1000) << "what is near is to be seen";
}

TEST(ASweepMarker, StandsAtThePresentValueAndNowhereOutsideTheRange) {
    const PlainMeasure measure;
    const Sweep swept = sweep(legs(), {{1, true}, 0, 90, 90});
    const SweepPlot plot = sweepPlot(swept, legs(), {}, measure);
    EXPECT_TRUE(sweepMarker(plot, swept, legs(), 91, 10, measure).groups.empty());
    const DisplayList marker = sweepMarker(plot, swept, legs(), 30, 10, measure);
    ASSERT_EQ(marker.groups.size(), 1u);
    const auto& box = plot.panels.front().box;
    EXPECT_NEAR(std::get<Path>(marker.groups[0].items[0]).points[0].x, box.left + box.width / 3, 1e-9);
}

TEST(NiceMarks, StandAtRoundNumbers) {
    EXPECT_EQ(niceMarks(0, 90, 9, true), (std::vector<double>{0, 10, 20, 30, 40, 50, 60, 70, 80, 90}));
    EXPECT_EQ(niceMarks(-180, 180, 8, true),
              (std::vector<double>{-180, -135, -90, -45, 0, 45, 90, 135, 180}));
    EXPECT_EQ(niceMarks(0, 13.2, 5, false), (std::vector<double>{0, 5, 10}));
    EXPECT_TRUE(niceMarks(1, 1, 5, false).empty());
}

} // namespace TAILPOINT_FILE
} // namespace tailpoint::testing
