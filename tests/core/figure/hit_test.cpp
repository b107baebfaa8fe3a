// SPDX-License-Identifier: MIT
// What lies at a place of the sheet, by the parts that the display list carries.
#include "core/construct/reduction.h"
#include "core/figure/geometry.h"
#include "core/figure/hit.h"
#include "tests/core/figure/figure_support.h"

#include <gtest/gtest.h>

namespace tailpoint::testing {
namespace TAILPOINT_FILE {

constexpr double kNear = 4; ///< points

using Kind = FigureShape::Kind;

const VectorId kP = forceVector(0), kQ = forceVector(1);

Sketch raft() {
    return sketch({force("P", 340, 25), force("Q", 275, -40)});
}

Point middleOf(const Box& box) {
    return {box.left + box.width / 2, box.top + box.height / 2};
}

std::optional<FigurePart> at(const Drawn& d, Point p) {
    return partAt(d.figure.list, p, kNear);
}

std::vector<SheetArrow> arrowsOf(const Drawn& d, const FigureOptions& options = {}) {
    return arrowsOn(d.sketch, d.solved, d.construction, d.view, options, FixedMeasure());
}

TEST(PartAt, ALabelOfAnAngleIsTheAngle) {
    const Drawn d = drawn(raft());
    const std::pair<const char*, FigurePart> table[] = {{"angle-tails", betweenId(kP, kQ)},
                                                        {"angle-1", oppositeId(kSumVector)},
                                                        {"direction-sum", directionId(kSumVector)},
                                                        {"direction-force-Q", directionId(kQ)}};
    for (const auto& [id, part] : table) {
        const Group* group = groupOf(d.figure, id);
        ASSERT_TRUE(group && labelOf(*group)) << id;
        EXPECT_EQ(at(d, middleOf(labelOf(*group)->box)), part) << id;
    }
}

TEST(PartAt, AnArcIsHitOnItAndNotWhereItIsNotDrawn) {
    const Drawn d = drawn(raft());
    for (const Item& item : groupOf(d.figure, "direction-force-P")->items)
        if (const auto* arc = std::get_if<Arc>(&item)) {
            const auto on = [&](double degrees, double radius) {
                return at(d, arc->centre + radius * onCircle({0, 0}, 1, degrees));
            };
            EXPECT_EQ(on(20, arc->radius + 0.9 * kNear), FigurePart(directionId(kP)));
            EXPECT_NE(on(20, arc->radius + 1.1 * kNear), FigurePart(directionId(kP)));
            EXPECT_NE(on(200, arc->radius), FigurePart(directionId(kP))) << "P is at 25 degrees";
        }
}

TEST(PartAt, ASideOfTheParallelogramIsIt) {
    const Drawn d = drawn(raft());
    const auto& corners = d.construction.parallelogram->corners;
    const Point on = d.view.toSheet(0.4 * corners[1] + 0.6 * corners[2]);
    EXPECT_EQ(at(d, on), FigurePart(FigureShape{Kind::parallelogram, kNobody}));
    EXPECT_EQ(at(d, on + Point{0, 60}), std::nullopt);
}

TEST(PartAt, ArrowsAndTheAxisAreNoAnswer) {
    FigureOptions options;
    options.angles = false;
    const Drawn d = drawn(raft(), options);
    EXPECT_EQ(at(d, d.view.toSheet(0.5 * d.solved.solutions[0].sum.vector)), std::nullopt);
    EXPECT_EQ(at(d, d.view.origin + Point{100, 0}), std::nullopt);
}

/// A side of a polygon knows its force: the third one's side is not the second's.
TEST(PartAt, OfAPolygonTheSideThatIsMeant) {
    FigureOptions options;
    options.construction = ConstructionKind::polygon;
    const Drawn d = drawn(sketch({force("P", 30, 0), force("Q", 40, 90), force("S", 20, 200)}), options);
    const auto& c = d.construction.polygon.corners;
    const auto middle = [&](std::size_t i) { return d.view.toSheet(0.5 * (c[i] + c[i + 1])); };
    EXPECT_EQ(at(d, middle(1)), FigurePart(FigureShape{Kind::polygon, kQ}));
    EXPECT_EQ(at(d, middle(2)), FigurePart(FigureShape{Kind::polygon, forceVector(2)}));
}

TEST(ArrowsOn, AreTheArrowsOfTheDisplayList) {
    // 200 from the line at 150 degrees through the tip of 300 along +x: two answers
    const Sketch two = sketch({force("P", 300, 0), force("Q", kToFind, 150)}, force("R", 200, kToFind));
    for (const ConstructionKind kind : {ConstructionKind::parallelogram, ConstructionKind::triangle}) {
        FigureOptions options;
        options.construction = kind;
        const Drawn d = drawn(two, options);
        const auto arrows = arrowsOf(d, options);
        std::size_t drawnOnes = 0;
        for (const Group& group : d.figure.list.groups) {
            if (!group.ends)
                continue;
            ++drawnOnes;
            const auto same = std::find_if(arrows.begin(), arrows.end(), [&](const SheetArrow& arrow) {
                return arrow.vector == vectorOf(group) && arrow.otherAnswer == group.otherAnswer;
            });
            ASSERT_NE(same, arrows.end()) << group.id;
            EXPECT_EQ(same->tail, group.ends->at(0)) << group.id;
            EXPECT_EQ(same->tip, group.ends->at(1)) << group.id;
        }
        EXPECT_EQ(arrows.size(), 5u) << "P, and Q and R twice";
        EXPECT_EQ(drawnOnes, arrows.size());
    }
}

TEST(ArrowsOn, WhatIsNotDrawnYetIsNone) {
    FigureOptions options;
    options.stage = Stage::construction;
    EXPECT_EQ(arrowsOf(drawn(raft(), options), options).size(), 2u) << "R waits";
}

TEST(LabelsOn, SayWhoseTheyAre) {
    const Drawn d = drawn(raft());
    int magnitudes = 0, directions = 0;
    for (const SheetLabel& label : labelsOn(d.figure.list)) {
        const std::string id = label.vector == kSumVector ? "sum"
                               : label.vector == kP       ? "force-P"
                                                          : "force-Q";
        const Group* group = groupOf(d.figure, label.ofDirection ? "direction-" + id : id);
        ASSERT_TRUE(group && labelOf(*group)) << id;
        EXPECT_EQ(label.box, labelOf(*group)->box) << id;
        ++(label.ofDirection ? directions : magnitudes);
    }
    EXPECT_EQ(magnitudes, 3);
    EXPECT_EQ(directions, 3);
}

} // namespace TAILPOINT_FILE
} // namespace tailpoint::testing
