// SPDX-License-Identifier: MIT
#include "core/figure/strokes.h"

#include <gtest/gtest.h>
#include <numbers>

namespace tailpoint {
namespace TAILPOINT_FILE {

constexpr double kMillimetre = 72 / 25.4;

const Path& pathAt(const std::vector<Item>& items, std::size_t i) {
    return std::get<Path>(items.at(i));
}

TEST(Head, IsAtLeastThreeAndAHalfMillimetresAndFiveLineWidths) {
    EXPECT_DOUBLE_EQ(headLength(300, 0.5), 3.5 * kMillimetre);
    EXPECT_DOUBLE_EQ(headLength(300, 3), 15);
}

TEST(Head, TakesAtMostTwoFifthsOfAShortArrow) {
    EXPECT_DOUBLE_EQ(headLength(10, 2), 4);
    EXPECT_DOUBLE_EQ(headLength(0.001, 2), 0.0004);
}

TEST(Arrow, EndsExactlyAtItsTip) {
    for (const Point tip : {Point{300, 200}, Point{100, 17.25}, Point{99, 100}, Point{100.5, 100.25}}) {
        std::vector<Item> items;
        addArrow(items, Role::given, {100, 100}, tip, 2, Head::filled);
        ASSERT_EQ(items.size(), 2U);
        EXPECT_EQ(pathAt(items, 0).points.front(), (Point{100, 100}));
        EXPECT_EQ(pathAt(items, 1).points.front(), tip);
        EXPECT_TRUE(pathAt(items, 1).filled);
        EXPECT_EQ(pathAt(items, 1).points.size(), 4U); // the notched back
    }
}

TEST(Arrow, ShaftStopsUnderTheFilledHead) {
    std::vector<Item> items;
    addArrow(items, Role::given, {0, 0}, {200, 0}, 2, Head::filled);
    const double head = headLength(200, 2), end = pathAt(items, 0).points.back().x;
    const double notch = pathAt(items, 1).points[2].x;
    EXPECT_GT(end, 200 - head);
    EXPECT_GT(end, notch); // no gap between shaft and head
    EXPECT_LT(end, 200 - head / 2);
}

TEST(Arrow, OpenHeadsMitreEndsAtTheTip) {
    std::vector<Item> items;
    addArrow(items, Role::sum, {0, 0}, {200, 0}, 2.8, Head::open);
    const Path& head = pathAt(items, 1);
    EXPECT_FALSE(head.filled);
    ASSERT_EQ(head.points.size(), 3U);
    // A mitre join reaches half a width over the sine of half the apex beyond the apex.
    const Point apex = head.points[0], back = head.points[1];
    const double half = std::atan2(std::abs(back.y - apex.y), apex.x - back.x);
    EXPECT_NEAR(apex.x + head.width / 2 / std::sin(half), 200, 0.05);
    // The shaft ends at the head's back and leaves its inside open.
    EXPECT_NEAR(pathAt(items, 0).points.back().x, back.x - head.width / 2, 1e-9);
}

TEST(Arrow, OfNoLengthIsNothing) {
    std::vector<Item> items;
    addArrow(items, Role::given, {5, 5}, {5, 5}, 2, Head::filled);
    EXPECT_TRUE(items.empty());
}

TEST(Arc, HasAHeadWhoseTipIsItsEnd) {
    std::vector<Item> items;
    addArc(items, Role::arc, {100, 100}, 60, 0, 25, 0.85, true);
    ASSERT_EQ(items.size(), 2U);
    const Point end = onCircle({100, 100}, 60, 25), tip = pathAt(items, 1).points.front();
    EXPECT_NEAR(tip.x, end.x, 1e-12);
    EXPECT_NEAR(tip.y, end.y, 1e-12);
    const auto& arc = std::get<Arc>(items.at(0));
    EXPECT_LT(arc.sweepDegrees, 25);
    EXPECT_GT(arc.sweepDegrees, 15);
}

TEST(Arc, TurnsTheHeadWithTheSense) {
    std::vector<Item> items;
    addArc(items, Role::arc, {100, 100}, 60, 0, -40, 0.85, true);
    const auto& head = pathAt(items, 1);
    EXPECT_GT(head.points[0].y, head.points[2].y); // clockwise from the right is downward
}

/// A dash is 6.5 points long: a head shorter than that is lost among them.
TEST(Arrow, DashedHasAHeadLongerThanItsDashes) {
    std::vector<Item> items;
    addArrow(items, Role::construction, {0, 0}, {100, 0}, 1, Head::small, Dash::dashed);
    const auto& head = pathAt(items, 1);
    EXPECT_TRUE(head.filled);
    EXPECT_EQ(head.points.front(), (Point{100, 0}));
    EXPECT_GT(100 - head.points[1].x, 6.5);
}

TEST(Arc, TooShortForAHeadHasNone) {
    std::vector<Item> items;
    addArc(items, Role::arc, {100, 100}, 60, 0, 1, 0.85, true);
    EXPECT_EQ(items.size(), 1U);
}

} // namespace TAILPOINT_FILE
} // namespace tailpoint
