// Labels touch nothing and don't jump: measured on exact boxes with a geometry of the tests' own.
#include "tests/core/figure/figure_support.h"
#include "tests/support/cases.h"

#include <gtest/gtest.h>
#include <map>

namespace tailpoint::testing {
namespace {

/// Forces as people draw them, and as they had better not.
Sketch anySketch(Dice& dice, std::uint64_t number) {
    const auto count = 2 + dice.whole(11);
    const double base = anyDegrees(dice), spread = number % 5 == 0 ? dice.between(2, 40) : 360;
    std::vector<Force> forces;
    for (std::uint64_t f = 0; f < count; ++f) {
        double size = std::round(dice.between(20, 500));
        if (number % 7 == 0)
            size = dice.toss() ? 500 : 10; // tiny and huge together
        double degrees = std::round(10 * (base + spread * dice.part())) / 10;
        if (number % 11 == 0)
            degrees = 90.0 * static_cast<double>(dice.whole(4)); // on the axes, some on one line
        std::string name =
            number % 2 == 0 ? std::string(1, static_cast<char>('A' + f)) : "F" + std::to_string(f + 1);
        forces.push_back(force(std::move(name), size, degrees));
    }
    Sketch made = sketch(std::move(forces));
    made.title = "Lines at the raft";
    made.reference.axisDegrees = 90.0 * static_cast<double>(dice.whole(4));
    made.reference.sense = dice.toss() ? Sense::ccw : Sense::cw;
    return made;
}

std::string said(const std::vector<std::string>& lines) {
    std::string out;
    for (const std::string& line : lines)
        out += "\n  " + line;
    return out;
}

TEST(Labels, TouchNothingWithLociAndTwoAnswers) {
    constexpr std::uint64_t seed = 815;
    Dice dice(seed);
    int answered = 0;
    for (std::uint64_t i = 0; i < 2'000; ++i) {
        std::vector<Force> forces{force("P", dice.between(50, 400), anyDegrees(dice)),
                                  force("Q", dice.between(50, 400), anyDegrees(dice))};
        Force sum = force("R", dice.between(50, 600), anyDegrees(dice));
        (dice.toss() ? forces[0] : sum).magnitude.value.reset();
        (dice.toss() ? forces[1] : forces[0]).direction.form = ToFind{};
        FigureOptions options;
        options.construction = dice.toss() ? ConstructionKind::triangle : ConstructionKind::parallelogram;
        options.otherOrder = dice.toss();
        const Drawn d = drawn(sketch(std::move(forces), std::move(sum)), options);
        answered += d.solved.solutions.empty() ? 0 : 1;
        const auto touching = collisions(d.figure.list);
        ASSERT_TRUE(touching.empty()) << "seed " << seed << " case " << i << said(touching);
    }
    EXPECT_GT(answered, 500);
}

TEST(Labels, TouchNothingOnSmallAndLargeSheets) {
    constexpr std::uint64_t seed = 99;
    Dice dice(seed);
    for (std::uint64_t i = 0; i < 400; ++i) {
        const Sketch given = anySketch(dice, i);
        FigureOptions options;
        const double f = options.style.factor = dice.between(0.7, 2.5);
        const Drawn d = drawn(given, options, f * dice.between(460, 900), f * dice.between(300, 700));
        const auto touching = collisions(d.figure.list);
        ASSERT_TRUE(touching.empty()) << "seed " << seed << " case " << i << said(touching);
    }
}

TEST(Labels, TouchNothingAtAnyZoom) {
    constexpr std::uint64_t seed = 100;
    Dice dice(seed);
    for (std::uint64_t i = 0; i < 400; ++i) {
        const Sketch given = anySketch(dice, i);
        Drawn d = drawn(given);
        d.view.scale *= dice.power(-1, 1.5);
        d.view.origin = {dice.between(-100, 800), dice.between(-100, 600)};
        d.figure = compose(d.sketch, d.solved, d.construction, d.view, {}, FixedMeasure());
        for (const std::string& touching : collisions(d.figure.list))
            // The title block covers what a zoom brings under it.
            EXPECT_NE(touching.find("of titleblock"), std::string::npos)
                << "seed " << seed << " case " << i << ": " << touching;
    }
}

TEST(Labels, OfTwoForcesStandBesideTheirShaftsWithoutLeaders) {
    for (int angle = 20; angle <= 150; angle += 5) {
        const Drawn d = drawn(sketch({force("P", 340, 0.5 * angle), force("Q", 275, -0.5 * angle)}));
        for (const char* id : {"force-P", "force-Q", "sum"})
            for (const Item& item : groupOf(d.figure, id)->items) {
                const auto* path = std::get_if<Path>(&item);
                EXPECT_FALSE(path && path->role == Role::leader) << id << " at " << angle;
            }
    }
}

TEST(Labels, KeepTheNameWhereTheValueHasNoRoom) {
    constexpr std::uint64_t seed = 6;
    Dice dice(seed);
    int shortened = 0;
    for (int i = 0; i < 60; ++i) {
        std::vector<Force> forces;
        for (int f = 0; f < 12; ++f)
            forces.push_back(force("F" + std::to_string(f + 1), 300 + 5 * f, 10 + dice.between(0, 8)));
        const Drawn d = drawn(sketch(std::move(forces)), {}, 480, 320);
        for (const Group& group : d.figure.list.groups)
            for (const std::string& text : textsOf(&group))
                if (group.id.starts_with("force-") && text.find('=') == std::string::npos) {
                    EXPECT_EQ("force-" + text, group.id);
                    ++shortened;
                }
    }
    EXPECT_GT(shortened, 0);
}

// ---- Steadiness
// ----------------------------------------------------------------------------------------------

const Text* labelOf(const Group& group) {
    for (const Item& item : group.items)
        if (const auto* text = std::get_if<Text>(&item))
            return text;
    return nullptr;
}

const Path* leaderOf(const Group& group) {
    for (const Item& item : group.items)
        if (const auto* path = std::get_if<Path>(&item); path && path->role == Role::leader)
            return path;
    return nullptr;
}

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
        for (const auto& [id, candidate] : now.placement) {
            const auto held = before.placement.find(id);
            if (held == before.placement.end() || held->second == candidate)
                continue;
            ++jumps.all;
            const Group* group = groupOf(before, id);
            // A frame moves a stroke by less than this; nearer than the wanted air there was a cause.
            constexpr double air = 2, motion = 3;
            if (group && labelOf(*group) && roomFor(*group, now.list) > air + motion) {
                ++jumps.withoutCause;
                jumps.where += "\n  " + id + " at frame " + std::to_string(i) + ": place " +
                               std::to_string(held->second) + " to " + std::to_string(candidate);
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
    EXPECT_LT(jumps.all, 40);
}

TEST(Drag, StandingStillMovesNothing) {
    const Drawn d = drawn(sketch({force("P", 340, 25), force("Q", 275, -40), force("S", 150, 120)}));
    const Figure again =
        compose(d.sketch, d.solved, d.construction, d.view, {}, FixedMeasure(), d.figure.placement);
    EXPECT_EQ(again.list, d.figure.list);
}

} // namespace
} // namespace tailpoint::testing
