// SPDX-License-Identifier: MIT
// A long title is fitted with few measures, for each takes as long as the text; what is cut ends in an
// ellipsis, on a whole character.
#include "tests/core/figure/figure_support.h"

#include <gtest/gtest.h>

namespace tailpoint::testing {
namespace TAILPOINT_FILE {

/// Counts how often a text that begins like the title is measured.
class CountingMeasure : public FixedMeasure {
public:
    explicit CountingMeasure(std::string begin) : m_begin(std::move(begin)) {}
    TextExtent measure(const std::vector<Run>& runs, Face face, double size) const override {
        if (!runs.empty() && runs.front().bold && runs.front().text.starts_with(m_begin))
            ++count;
        return FixedMeasure::measure(runs, face, size);
    }
    mutable int count = 0;

private:
    std::string m_begin;
};

Sketch titled(const std::string& title) {
    Sketch raft = sketch({force("P", 340, 25), force("Q", 275, -40)});
    raft.title = title;
    return raft;
}

std::string many(const std::string& character, std::size_t count) {
    std::string out;
    for (std::size_t i = 0; i < count; ++i)
        out += character;
    return out;
}

int measuresOf(const std::string& title) {
    const CountingMeasure measure(title.substr(0, 1));
    const Sketch raft = titled(title);
    const Solved solved = solve(raft);
    const Construction construction = construct(raft, solved);
    const View view = fittedView(raft, solved, construction, {}, 720, 480, &measure);
    compose(raft, solved, construction, view, {}, measure);
    return measure.count;
}

std::string titleOn(const Drawn& d) {
    const Group* block = groupOf(d.figure, "titleblock");
    for (const Item& item : block->items)
        if (const auto* text = std::get_if<Text>(&item))
            return textOf(*text);
    return {};
}

double blockWidth(const Drawn& d) {
    const auto& frame = std::get<Path>(groupOf(d.figure, "titleblock")->items.front()).points;
    return frame[1].x - frame[0].x;
}

TEST(Title, OfTwiceTheLengthTakesOneMoreMeasureEachTimeItIsFitted) {
    // Neither of these fits 720 points: 0.52 of 9.5 points a letter leaves room for 145.
    const int once = measuresOf(many("W", 200)), twice = measuresOf(many("W", 400)),
              huge = measuresOf(many("W", 200 * 64));
    EXPECT_LE(twice, once + once / 4);
    EXPECT_LE(huge, 2 * once) << "6 more of some 10 each time";
}

TEST(Title, ThatIsTooLongKeepsAsMuchAsFitsAndEndsInAnEllipsis) {
    for (const char* character : {"W", "\u6CE2", "\U0001F309"}) {
        const Drawn d = drawn(titled(many(character, 500)));
        const std::string shown = titleOn(d);
        const std::string ellipsis = "\u2026";
        ASSERT_TRUE(shown.ends_with(ellipsis)) << shown;
        const std::size_t kept = (shown.size() - ellipsis.size()) / std::string(character).size();
        EXPECT_EQ(shown, many(character, kept) + ellipsis) << "whole characters";
        const double width = blockWidth(d);
        const double letter = 0.52 * 9.5; // FixedMeasure, and the block's size; 7 points beside the text
        EXPECT_LE(letter * static_cast<double>(kept + 1), width - 14);
        EXPECT_GT(letter * static_cast<double>(kept + 2), width - 14) << "one more would not fit";
    }
}

TEST(Title, OfManyWordsStandsWholeInSeveralLines) {
    const std::string title =
        "Five lines that hold the survey raft at the outer mole while wind and tide turn, "
        "and one of them slack until the others give";
    for (const double width : {480.0, 720.0}) {
        const Drawn d = drawn(titled(title), {}, width, 480);
        std::string all;
        for (const std::string& line : textsOf(groupOf(d.figure, "titleblock")))
            all += line + " ";
        EXPECT_TRUE(all.starts_with(title + " 1 division")) << all;
        EXPECT_EQ(collisions(d.figure.list), std::vector<std::string>());
    }
}

TEST(Title, InARoomTakesALimitedNumberOfLinesAndLeavesTheBlockItsRows) {
    FigureOptions options;
    options.style.leastSans = 18;
    for (const std::string& title : {many("word ", 99) + "words", many("W", 500)}) {
        const Drawn d = drawn(titled(title), options, 1280, 720);
        const Group* block = groupOf(d.figure, "titleblock");
        ASSERT_TRUE(block) << "scale, axis and figures are not lost with it";
        const double left = std::get<Path>(block->items.front()).points[0].x;
        for (const Item& item : block->items)
            if (const auto* text = std::get_if<Text>(&item)) {
                EXPECT_GE(text->box.left, left);
                EXPECT_LE(text->box.right(), 1280);
            }
    }
}

} // namespace TAILPOINT_FILE
} // namespace tailpoint::testing
