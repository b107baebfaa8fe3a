// SPDX-License-Identifier: MIT
#include "tests/core/figure/figure_support.h"
#include "tests/support/cases.h"

#include <gtest/gtest.h>

namespace tailpoint::testing {
namespace TAILPOINT_FILE {

TEST(Fit, ShowsEveryTipAndCornerInsideTheSheet) {
    constexpr std::uint64_t seed = 21;
    Dice dice(seed);
    for (int i = 0; i < 600; ++i) {
        std::vector<Force> forces;
        const auto count = 1 + dice.whole(12);
        for (std::uint64_t f = 0; f < count; ++f)
            forces.push_back(
                force("F" + std::to_string(f), anyMagnitude(dice, kindOf(dice.whole(7))), anyDegrees(dice)));
        FigureOptions options;
        options.construction = static_cast<ConstructionKind>(dice.whole(4));
        const Drawn d =
            drawn(sketch(std::move(forces)), options, dice.between(300, 1400), dice.between(240, 1000));
        const Box sheet{0, 0, d.view.width, d.view.height};
        const auto isOnSheet = [&](const Eigen::Vector2d& v) {
            return distanceTo(sheet, d.view.toSheet(v)) == 0;
        };
        EXPECT_TRUE(isOnSheet({0, 0})) << "seed " << seed << " case " << i;
        for (const SolvedForce& f : d.solved.solutions.at(0).forces)
            EXPECT_TRUE(isOnSheet(f.vector)) << "seed " << seed << " case " << i;
        EXPECT_TRUE(isOnSheet(d.solved.solutions.at(0).sum.vector)) << "seed " << seed << " case " << i;
        const bool chain = options.construction == ConstructionKind::polygon ||
                           (options.construction == ConstructionKind::parallelogram && count != 2);
        for (const Eigen::Vector2d& corner : d.construction.polygon.corners)
            EXPECT_TRUE(!chain || isOnSheet(corner)) << "seed " << seed << " case " << i;
    }
}

TEST(Fit, MakesADivisionAMultipleOfOneAndAQuarterMillimetres) {
    for (const double size : {1.0, 7.3, 99.0, 1234.0, 3e-7, 4e12}) {
        const Drawn d = drawn(sketch({force("P", size, 25), force("Q", 0.8 * size, -40)}));
        const double steps = divisionOf(d.view) * d.view.scale / (72 / 25.4 * 1.25);
        EXPECT_NEAR(steps, std::round(steps), 1e-6) << size;
    }
}

TEST(Fit, UsesTheSheetWell) {
    const Drawn d = drawn(sketch({force("P", 340, 25), force("Q", 275, -40)}));
    EXPECT_GT(d.solved.solutions.at(0).sum.magnitude * d.view.scale, 0.6 * 720);
}

TEST(Fit, OfNothingHasAScaleAllTheSame) {
    for (const Sketch& empty : {sketch({}), sketch({force("P", 0, 30)}), sketch({force("P", kToFind, 30)})}) {
        const Drawn d = drawn(empty);
        EXPECT_EQ(divisionOf(d.view), 50);
        EXPECT_EQ(d.view.toSheet({0, 0}), d.view.origin);
    }
}

TEST(Fit, KeepsTheTitleBlockFree) {
    // The sum points into the corner where the title block stands.
    const Drawn d = drawn(sketch({force("P", 340, -10), force("Q", 275, -60)}));
    const Group* block = groupOf(d.figure, "titleblock");
    ASSERT_TRUE(block);
    const auto& frame = std::get<Path>(block->items.at(1)).points;
    const Box box{frame[0].x, frame[0].y, frame[2].x - frame[0].x, frame[2].y - frame[0].y};
    for (const char* id : {"force-P", "force-Q", "sum", "parallelogram"})
        for (const Item& item : groupOf(d.figure, id)->items)
            EXPECT_GT(clearance(box, item), 0) << id;
}

} // namespace TAILPOINT_FILE
} // namespace tailpoint::testing
