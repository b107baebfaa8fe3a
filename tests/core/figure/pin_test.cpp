// SPDX-License-Identifier: MIT
// Labels put somewhere by hand.
#include "tests/core/figure/figure_support.h"

#include <gtest/gtest.h>

namespace tailpoint::testing {
namespace TAILPOINT_FILE {

Sketch pinned(double right, double up) {
    Sketch made = sketch({force("P", 340, 25), force("Q", 275, -40)});
    made.forces[0].label = LabelPin{right, up};
    return made;
}

const Text& labelOf(const Figure& figure, const char* id) {
    for (const Item& item : groupOf(figure, id)->items)
        if (const auto* text = std::get_if<Text>(&item))
            return *text;
    throw std::runtime_error(id);
}

bool hasLeader(const Figure& figure, const char* id) {
    const auto& items = groupOf(figure, id)->items;
    return std::any_of(items.begin(), items.end(), [](const Item& item) {
        const auto* path = std::get_if<Path>(&item);
        return path && path->role == Role::leader;
    });
}

Point middleOf(const Box& box) {
    return {box.left + box.width / 2, box.top + box.height / 2};
}

TEST(Pins, CountFromTheMiddleOfTheArrowToTheRightAndUp) {
    for (const double factor : {1.0, 1.8}) {
        FigureOptions options;
        options.style.factor = factor;
        const Drawn d = drawn(pinned(10, 30), options, 720 * factor, 480 * factor);
        const auto [tail, tip] = *groupOf(d.figure, "force-P")->ends;
        const Point middle = middleOf(labelOf(d.figure, "force-P").box);
        EXPECT_NEAR(middle.x, (tail.x + tip.x) / 2 + 10 * factor, 1e-9);
        EXPECT_NEAR(middle.y, (tail.y + tip.y) / 2 - 30 * factor, 1e-9);
        EXPECT_EQ(d.figure.homes.at("force-P"), (Point{(tail.x + tip.x) / 2, (tail.y + tip.y) / 2}));
    }
}

TEST(Pins, OthersKeepClearOfAPinnedLabel) {
    const Drawn free = drawn(pinned(10, 30));
    Sketch made = pinned(10, 30);
    const Point taken = middleOf(labelOf(free.figure, "sum").box), home = free.figure.homes.at("force-P");
    made.forces[0].label = LabelPin{taken.x - home.x, home.y - taken.y}; // where R's label would stand
    const Drawn d = drawn(made);
    EXPECT_NEAR(middleOf(labelOf(d.figure, "force-P").box).x, taken.x, 1e-9);
    EXPECT_GT(clearance(labelOf(d.figure, "sum").box, labelOf(d.figure, "force-P")), 0);
}

TEST(Pins, FarFromTheArrowAreLedToIt) {
    EXPECT_FALSE(hasLeader(drawn(pinned(-10, 20)).figure, "force-P"));
    EXPECT_TRUE(hasLeader(drawn(pinned(-60, 90)).figure, "force-P"));
}

TEST(Pins, OffTheSheetOrOnAnotherTextGiveWayToAPlaceOfItsOwn) {
    EXPECT_TRUE(collisions(drawn(pinned(5000, 0)).figure.list).empty());
    Sketch both = pinned(0, 60);
    const Drawn d = drawn(both);
    const Point home = d.figure.homes.at("force-Q"), taken = middleOf(labelOf(d.figure, "force-P").box);
    both.forces[1].label = LabelPin{taken.x - home.x, home.y - taken.y};
    const Drawn two = drawn(both);
    EXPECT_GT(clearance(labelOf(two.figure, "force-Q").box, labelOf(two.figure, "force-P")), 0);
}

TEST(Pins, OfADirectionCountFromTheMiddleOfItsArc) {
    Sketch made = sketch({force("P", 340, 25), force("Q", 275, -40)});
    made.sum.directionLabel = LabelPin{40, 30};
    const Drawn d = drawn(made);
    const Point home = d.figure.homes.at("direction-sum");
    EXPECT_NEAR(middleOf(labelOf(d.figure, "direction-sum").box).x, home.x + 40, 1e-9);
}

TEST(Pins, OfAnArrowThatIsSmallerStayAtItsMiddle) {
    Sketch made = pinned(10, 30);
    const Drawn large = drawn(made);
    made.forces[0].magnitude.value = 170;
    const Figure small =
        compose(made, solve(made), construct(made, solve(made)), large.view, {}, FixedMeasure());
    const auto [tail, tip] = *groupOf(small, "force-P")->ends;
    EXPECT_NEAR(middleOf(labelOf(small, "force-P").box).x, (tail.x + tip.x) / 2 + 10, 1e-9);
}

} // namespace TAILPOINT_FILE
} // namespace tailpoint::testing
