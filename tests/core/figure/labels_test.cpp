// SPDX-License-Identifier: MIT
// Labels touch nothing and don't jump: measured on exact boxes with a geometry of the tests' own.
#include "tests/core/figure/figure_support.h"
#include "tests/support/cases.h"

#include <gtest/gtest.h>
#include <map>

namespace tailpoint::testing {
namespace TAILPOINT_FILE {

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

bool isLetter(const std::string& text) {
    return text.size() == 1 && text[0] >= 'a' && text[0] <= 'z';
}

/// Twelve forces within eight degrees on a small sheet: no drawing could hold all values.
TEST(Labels, KeepTheNameOrALetterWhereTheValueHasNoRoomAndTheKeyTellsTheRest) {
    constexpr std::uint64_t seed = 6;
    Dice dice(seed);
    int named = 0, keys = 0;
    for (int i = 0; i < 60; ++i) {
        std::vector<Force> forces;
        for (int f = 0; f < 12; ++f)
            forces.push_back(force("F" + std::to_string(f + 1), 300 + 5 * f, 10 + dice.between(0, 8)));
        const Drawn d = drawn(sketch(std::move(forces)), {}, 480, 320);
        const auto key = textsOf(groupOf(d.figure, "key"));
        keys += key.empty() ? 0 : 1;
        for (const Group& group : d.figure.list.groups)
            for (const std::string& text : textsOf(&group)) {
                if (!group.id.starts_with("force-") || text.find('=') != std::string::npos)
                    continue;
                const std::string start = isLetter(text) ? text + "  F" : group.id.substr(6) + " = ";
                EXPECT_TRUE(isLetter(text) || "force-" + text == group.id) << text << " of " << group.id;
                named += isLetter(text) ? 0 : 1;
                EXPECT_TRUE(key.empty() ||
                            std::any_of(key.begin(), key.end(),
                                        [&](const std::string& row) { return row.starts_with(start); }))
                    << text << " in case " << i;
            }
    }
    EXPECT_GT(named, 0);
    EXPECT_GT(keys, 30);
}

} // namespace TAILPOINT_FILE
} // namespace tailpoint::testing
