// SPDX-License-Identifier: MIT
// Labels are steady while something is dragged. A label may leave its place for one cause alone: the place
// that it had is taken, by a stroke, another label, the title block or the sheet's edge, within the air that
// a label wants and what a frame moves; or it was shortened or led away and there is room again.
#include "tests/core/figure/figure_support.h"

#include <gtest/gtest.h>

namespace tailpoint::testing {
namespace TAILPOINT_FILE {

/// How much room the label would still have had where it was, in the new frame: its box from everything, its
/// leader from other texts.
double roomFor(const Group& before, const DisplayList& list) {
    const Box& box = labelOf(before)->box;
    const Path* leader = leaderOf(before);
    constexpr double rim = 2; // of the sheet
    double least = std::min({box.left, box.top, list.width - box.right(), list.height - box.bottom()}) - rim;
    for (const Group& group : list.groups)
        for (const Item& item : group.items) {
            const auto* path = std::get_if<Path>(&item);
            const auto* text = std::get_if<Text>(&item);
            const bool own = group.id == before.id && (text || (path && path->role == Role::leader));
            if (own || isGround(group, item))
                continue;
            least = std::min(least, clearance(box, item));
            if (leader && text)
                least = std::min(least, distanceTo(text->box, leader->points[0], leader->points[1]));
        }
    return least;
}

struct Jumps {
    int all = 0, withoutCause = 0;
    std::string where;
};

constexpr double kAir = 2;    ///< what a label wants to every side
constexpr double kMotion = 3; ///< no stroke moves further in a frame of these drags
constexpr double kSeen = 10;  ///< a label that moves so far in one frame is seen to jump

Point middleOf(const Text& text) {
    return {text.box.left + text.box.width / 2, text.box.top + text.box.height / 2};
}

double apart(Point a, Point b) {
    return std::hypot(a.x - b.x, a.y - b.y);
}

/// How far a label moved: on the sheet, or beside its thing where that itself moved further (an arc that
/// gives way to another takes its value along).
double movedBy(const Figure& before, const Figure& now, const Group& was, const Group& is) {
    const Point from = middleOf(*labelOf(was)), to = middleOf(*labelOf(is));
    const Point home = before.homes.at(was.id), here = now.homes.at(is.id);
    return std::min(apart(from, to),
                    apart({from.x - home.x, from.y - home.y}, {to.x - here.x, to.y - here.y}));
}

bool hasCause(const Group& before, const Group& now, const DisplayList& list) {
    const bool mended = textOf(*labelOf(now)).size() > textOf(*labelOf(before)).size() ||
                        (leaderOf(before) && !leaderOf(now));
    return mended || roomFor(before, list) <= kAir + kMotion;
}

std::string inWords(const LabelPlace& at) {
    return "kind " + std::to_string(static_cast<int>(at.place.kind)) + " rail " +
           std::to_string(static_cast<int>(at.place.rail)) + " ring " + std::to_string(at.place.ring) +
           " position " + std::to_string(at.place.position) + " text " +
           std::to_string(static_cast<int>(at.text));
}

/// Drags through the frames, each placed with the one before it in mind.
template <class Frame>
Jumps dragged(int frames, Frame sketchOf) {
    const View view{900, 700, {420, 360}, 0.5}; // frozen during a drag; all of it stays on the sheet
    Jumps jumps;
    Figure before;
    for (int i = 0; i < frames; ++i) {
        const Sketch given = sketchOf(i);
        const Solved solved = solve(given);
        const Construction built = construct(given, solved);
        const Figure now = compose(given, solved, built, view, {}, FixedMeasure(), before.placement);
        for (const Group& group : now.list.groups) {
            const Group* was = groupOf(before, group.id);
            if (!was || !labelOf(*was) || !labelOf(group) || !now.placement.labels.contains(group.id) ||
                !before.placement.labels.contains(group.id))
                continue;
            const LabelPlace from = before.placement.labels.at(group.id),
                             to = now.placement.labels.at(group.id);
            if (movedBy(before, now, *was, group) < kSeen)
                continue;
            ++jumps.all;
            if (!hasCause(*was, group, now.list)) {
                ++jumps.withoutCause;
                jumps.where += "\n  " + group.id + " at frame " + std::to_string(i) + ": place " +
                               inWords(from) + " to " + inWords(to);
            }
        }
        before = now;
    }
    return jumps;
}

TEST(Drag, OfAMagnitudeMovesNoLabelWithoutACause) {
    const Jumps jumps = dragged(1'000, [](int i) {
        return sketch({force("P", std::round(80 + 0.4 * i), 35), force("Q", 275, -40), force("S", 150, 120)});
    });
    EXPECT_EQ(jumps.withoutCause, 0) << jumps.where;
    EXPECT_LT(jumps.all, 20);
}

/// From Q's near side until all but opposite to Q: every angle opens or closes.
TEST(Drag, OfADirectionMovesNoLabelWithoutACause) {
    const Jumps jumps = dragged(1'000, [](int i) {
        return sketch({force("P", 340, 0.5 + 0.139 * i), force("Q", 275, -40)});
    });
    EXPECT_EQ(jumps.withoutCause, 0) << jumps.where;
    EXPECT_LT(jumps.all, 30);
}

TEST(Drag, OfOneForceAmongFourMovesNoLabelWithoutACause) {
    const Jumps jumps = dragged(1'000, [](int i) {
        return sketch({force("P", 340, -170 + 0.34 * i), force("Q", 275, -40), force("S", 150, 120),
                       force("T", 90, 20)});
    });
    EXPECT_EQ(jumps.withoutCause, 0) << jumps.where;
    EXPECT_LT(jumps.all, 75);
}

TEST(Drag, OfAnUnknownsPartnerMovesNoLabelWithoutACause) {
    const Jumps jumps = dragged(1'000, [](int i) {
        return sketch({force("P", kToFind, 60), force("Q", 260, kToFind)},
                      force("R", std::round(200 + 0.2 * i), 10));
    });
    EXPECT_EQ(jumps.withoutCause, 0) << jumps.where;
    EXPECT_LT(jumps.all, 30);
}

TEST(Drag, StandingStillMovesNothing) {
    const Drawn d = drawn(sketch({force("P", 340, 25), force("Q", 275, -40), force("S", 150, 120)}));
    const Figure again =
        compose(d.sketch, d.solved, d.construction, d.view, {}, FixedMeasure(), d.figure.placement);
    EXPECT_EQ(again.list, d.figure.list);
}

} // namespace TAILPOINT_FILE
} // namespace tailpoint::testing
