// SPDX-License-Identifier: MIT
// Several forces added two at a time: what stands on the sheet, and that it touches nothing. Marks on
// parallel sides.
#include "core/construct/pairs.h"
#include "tests/core/figure/figure_support.h"
#include "tests/support/cases.h"

#include <gtest/gtest.h>

namespace tailpoint::testing {
namespace TAILPOINT_FILE {

Sketch three() {
    return sketch({force("P", 30, 0), force("Q", 40, 90), force("S", 20, 200)});
}

Figure withPairs(const Sketch& given, int pair, Stage stage = Stage::all,
                 ConstructionKind kind = ConstructionKind::parallelogram) {
    FigureOptions options;
    options.construction = kind;
    options.pair = pair;
    options.stage = stage;
    return drawn(given, options).figure;
}

int marksOf(const Group* group) {
    int count = 0;
    for (const Item& item : group ? group->items : std::vector<Item>())
        if (const auto* path = std::get_if<Path>(&item))
            count += path->points.size() == 3 && !path->closed ? 1 : 0;
    return count;
}

TEST(PairsFigure, AllOfThemStandInPlaceOfThePolygon) {
    const Figure figure = withPairs(three(), kAllPairs);
    ASSERT_NE(groupOf(figure, "pair-1"), nullptr);
    EXPECT_EQ(groupOf(figure, "pair-1")->title.name, "Parallelogram on P and Q");
    ASSERT_NE(groupOf(figure, "pair-2"), nullptr);
    EXPECT_EQ(groupOf(figure, "pair-2")->title.name, "Parallelogram on K1 and S");
    EXPECT_EQ(textsOf(groupOf(figure, "partial-K1")), std::vector<std::string>{"K1 = 50.0 N"});
    EXPECT_EQ(groupOf(figure, "polygon-Q"), nullptr);
    EXPECT_EQ(groupOf(figure, "pair-tails"), nullptr);
}

TEST(PairsFigure, OneAloneHasItsAnglesAndBothItsSums) {
    const Figure first = withPairs(three(), 1);
    EXPECT_NE(groupOf(first, "pair-1"), nullptr);
    EXPECT_EQ(groupOf(first, "pair-2"), nullptr);
    EXPECT_EQ(textsOf(groupOf(first, "partial-K1")), std::vector<std::string>{"K1 = 50.0 N"});
    const Figure second = withPairs(three(), 2);
    EXPECT_EQ(groupOf(second, "pair-1"), nullptr);
    EXPECT_NE(groupOf(second, "pair-2"), nullptr);
    EXPECT_NE(groupOf(second, "partial-K1"), nullptr);
    // 200 degrees less atan(4/3) is 146.87, its supplement 33.13
    EXPECT_EQ(textsOf(groupOf(second, "pair-tails")), std::vector<std::string>{"146.9°"});
    EXPECT_EQ(textsOf(groupOf(second, "pair-inner")), std::vector<std::string>{"33.1°"});
}

TEST(PairsFigure, WaitForTheirStageAndForTheKindThatWasAsked) {
    EXPECT_EQ(groupOf(withPairs(three(), kAllPairs, Stage::between), "pair-1"), nullptr);
    EXPECT_NE(groupOf(withPairs(three(), kAllPairs, Stage::construction), "pair-1"), nullptr);
    const Figure polygon = withPairs(three(), kAllPairs, Stage::all, ConstructionKind::polygon);
    EXPECT_EQ(groupOf(polygon, "pair-1"), nullptr);
    EXPECT_NE(groupOf(polygon, "polygon-Q"), nullptr);
    // no pairs (two in line): the polygon, as without the wish
    const Figure inLine =
        withPairs(sketch({force("P", 3, 0), force("Q", 4, 0), force("S", 5, 90)}), kAllPairs);
    EXPECT_NE(groupOf(inLine, "polygon-Q"), nullptr);
}

TEST(PairsFigure, AHiddenValueIsNotOnTheSheet) {
    FigureOptions options;
    options.pair = 1;
    options.hidden = {magnitudeId(partialVector(1))};
    EXPECT_EQ(textsOf(groupOf(drawn(three(), options).figure, "partial-K1")), std::vector<std::string>{"K1"});
}

TEST(PairsFigure, TouchesNothingInAThousandSketches) {
    constexpr std::uint64_t seed = 90210, count = 1000;
    Dice dice(seed);
    int withAny = 0;
    for (std::uint64_t i = 0; i < count; ++i) {
        std::vector<Force> forces;
        const int n = 3 + static_cast<int>(i % 4);
        for (int k = 0; k < n; ++k)
            forces.push_back(force(std::string(1, static_cast<char>('A' + k)),
                                   std::round(dice.between(20, 400)), std::round(dice.between(-180, 180))));
        const Sketch given = sketch(std::move(forces));
        FigureOptions options;
        options.pair = static_cast<int>(i % static_cast<std::uint64_t>(n));
        options.parallelMarks = i % 2 == 0;
        const Drawn d = drawn(given, options, i % 3 == 0 ? 420 : 720, i % 3 == 0 ? 300 : 480);
        withAny += pairsOf(given, d.solved).empty() ? 0 : 1;
        for (const std::string& touching : collisions(d.figure.list))
            ADD_FAILURE() << "seed " << seed << " case " << i << ": " << touching;
    }
    EXPECT_GT(withAny, 900);
}

TEST(ParallelMarks, AreOneOnTheFirstSidesAndTwoOnTheOthersAndOnlyIfAsked) {
    const Sketch given = sketch({force("P", 340, 25), force("Q", 275, -40)});
    FigureOptions options;
    EXPECT_EQ(marksOf(groupOf(drawn(given, options).figure, "parallelogram")), 0);
    options.parallelMarks = true;
    const Figure figure = drawn(given, options).figure;
    EXPECT_EQ(marksOf(groupOf(figure, "parallelogram")), 6);
    EXPECT_EQ(collisions(figure.list), std::vector<std::string>{});
}

TEST(ParallelMarks, StandOnOneOfSeveralParallelogramsButNotOnAllAtOnce) {
    FigureOptions options;
    options.parallelMarks = true;
    options.pair = 2;
    EXPECT_EQ(marksOf(groupOf(drawn(three(), options).figure, "pair-2")), 6);
    options.pair = kAllPairs;
    EXPECT_EQ(marksOf(groupOf(drawn(three(), options).figure, "pair-2")), 0);
}

TEST(ParallelMarks, PointAlongTheirSides) {
    FigureOptions options;
    options.parallelMarks = true;
    const Drawn d = drawn(sketch({force("P", 340, 25), force("Q", 275, -40)}), options);
    const Point common = d.view.origin, tip = d.view.toSheet(d.construction.parallelogram->corners[1]);
    const Point middle{(common.x + tip.x) / 2, (common.y + tip.y) / 2};
    const double length = std::hypot(tip.x - common.x, tip.y - common.y);
    int onP = 0;
    for (const Item& item : groupOf(d.figure, "parallelogram")->items)
        if (const auto* path = std::get_if<Path>(&item); path && path->points.size() == 3) {
            const Point apex = path->points[1];
            const double along =
                ((apex.x - middle.x) * (tip.x - common.x) + (apex.y - middle.y) * (tip.y - common.y)) /
                length;
            const double across =
                ((apex.x - middle.x) * (tip.y - common.y) - (apex.y - middle.y) * (tip.x - common.x)) /
                length;
            if (std::abs(across) < 1e-9 && std::abs(along) < 12)
                ++onP;
        }
    EXPECT_EQ(onP, 1);
}

} // namespace TAILPOINT_FILE
} // namespace tailpoint::testing
