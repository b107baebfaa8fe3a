// SPDX-License-Identifier: MIT
// An angle's value stands between the legs of its own angle; else a leader ties it to its arc. An arrow's
// label is not nearer to another arrow than to its own, or is led. Told from what is drawn alone, by a
// geometry of the tests' own.
#include "tests/core/figure/any_figure.h"
#include "tests/core/figure/wedges.h"

#include <gtest/gtest.h>

namespace tailpoint::testing {
namespace TAILPOINT_FILE {

constexpr std::uint64_t kSeed = 4711, kFigures = 10'000, kShares = 4;

class Angles : public ::testing::TestWithParam<std::uint64_t> {};

TEST_P(Angles, HaveTheirValuesBetweenTheirLegsOrLedToTheirArcs) {
    int inside = 0, led = 0;
    for (std::uint64_t i = GetParam(); i < kFigures; i += kShares) {
        const AnyFigure any = anyFigure(kSeed, i);
        const Drawn d = drawn(any.sketch, any.options, any.width, any.height);
        for (const Group& group : d.figure.list.groups) {
            const Text* value = labelOf(group);
            const auto wedge = wedgeOf(group);
            if (!isAngle(group) || !value || !wedge)
                continue;
            if (const Path* leader = leaderOf(group)) {
                ++led;
                EXPECT_TRUE(wedge->radius == 0 || isOnArc(*wedge, leader->points[0]))
                    << "seed " << kSeed << " case " << i << ": the leader of " << group.id
                    << " misses its arc";
            } else {
                ++inside;
                EXPECT_TRUE(standsIn(*wedge, value->box))
                    << "seed " << kSeed << " case " << i << ": " << textOf(*value) << " of " << group.id;
            }
        }
    }
    EXPECT_GT(inside, 2 * led);
}

TEST_P(Angles, HaveNoValueOfAnotherAngleInThem) {
    for (std::uint64_t i = GetParam(); i < kFigures; i += kShares) {
        const AnyFigure any = anyFigure(kSeed, i);
        const Drawn d = drawn(any.sketch, any.options, any.width, any.height);
        for (const std::string& stray : valuesInOtherAngles(d.figure.list, any.options.style.factor))
            ADD_FAILURE() << "seed " << kSeed << " case " << i << ": " << stray;
    }
}

std::vector<const Group*> arrowsOf(const DisplayList& list) {
    std::vector<const Group*> arrows;
    for (const Group& group : list.groups)
        if ((group.role == Role::given || group.role == Role::sum) && group.ends &&
            !group.id.starts_with("other-"))
            arrows.push_back(&group);
    return arrows;
}

double distanceTo(const Box& box, const Group& arrow) {
    return testing::distanceTo(box, arrow.ends->front(), arrow.ends->back());
}

TEST_P(Angles, AndArrowsHaveTheirLabelsNearestToThemselvesOrLedToThem) {
    int beside = 0;
    for (std::uint64_t i = GetParam(); i < kFigures; i += kShares) {
        const AnyFigure any = anyFigure(kSeed, i);
        const Drawn d = drawn(any.sketch, any.options, any.width, any.height);
        const auto arrows = arrowsOf(d.figure.list);
        for (const Group* own : arrows) {
            const Text* label = labelOf(*own);
            if (!label || leaderOf(*own))
                continue;
            ++beside;
            for (const Group* other : arrows)
                EXPECT_GT(distanceTo(label->box, *other),
                          distanceTo(label->box, *own) - 1.01 * any.options.style.factor)
                    << "seed " << kSeed << " case " << i << ": " << textOf(*label) << " is nearer to "
                    << other->id;
        }
    }
    EXPECT_GT(beside, 8'000);
}

INSTANTIATE_TEST_SUITE_P(ShareOfTenThousand, Angles, ::testing::Range<std::uint64_t>(0, kShares));

} // namespace TAILPOINT_FILE
} // namespace tailpoint::testing
