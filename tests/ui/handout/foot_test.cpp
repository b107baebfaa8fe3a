// SPDX-License-Identifier: MIT
// What stands at a figure's foot beside a caution: all samples, as if each were a lifting scene, on every
// shape of sheet that is exported, printed or seen.
#include "core/explain/caution.h"
#include "core/figure/geometry.h"
#include "core/figure/words.h"
#include "tests/ui/lecture/lecture_support.h"
#include "ui/handout/figure_job.h"

#include <algorithm>
#include <gtest/gtest.h>

namespace tailpoint {
namespace TAILPOINT_FILE {

constexpr double kLeastRead = 8; ///< points

struct Sheet {
    std::string name;
    FigureJob job;
};

/// Exports on all papers, and the sheet of a window of 1366 and of 1920 pixels with its panel.
std::vector<Sheet> allSheets() {
    std::vector<Sheet> sheets;
    for (const FigurePaper paper : {FigurePaper::free, FigurePaper::a4, FigurePaper::a4Landscape,
                                    FigurePaper::letter, FigurePaper::letterLandscape}) {
        Sheet& sheet = sheets.emplace_back();
        sheet.name = "paper " + std::to_string(static_cast<int>(paper));
        sheet.job.paper = paper;
    }
    for (const auto& [width, height] : {std::pair{966, 676}, {1420, 988}}) {
        Sheet& sheet = sheets.emplace_back();
        sheet.name = "window " + std::to_string(width);
        sheet.job.width = width * 0.75;
        sheet.job.height = height * 0.75;
        sheet.job.options.note = false; // the panel tells the answer
    }
    return sheets;
}

Result withCaution(const Result& result) {
    Sketch sketch = result.sketch;
    sketch.caution = true;
    return resultOf(sketch);
}

const Group* groupOf(const DisplayList& list, const std::string& id) {
    const auto found =
        std::find_if(list.groups.begin(), list.groups.end(), [&](const Group& g) { return g.id == id; });
    return found == list.groups.end() ? nullptr : &*found;
}

std::vector<Text> textsOf(const DisplayList& list, const std::string& id) {
    std::vector<Text> texts;
    if (const Group* group = groupOf(list, id))
        for (const Item& item : group->items)
            if (const auto* text = std::get_if<Text>(&item))
                texts.push_back(*text);
    return texts;
}

Box boxOf(const Path& path) {
    Box box{path.points[0].x, path.points[0].y, 0, 0};
    box.width = path.points[2].x - box.left;
    box.height = path.points[2].y - box.top;
    return box;
}

/// Title block and lines of the note.
std::vector<Box> footOf(const DisplayList& list) {
    std::vector<Box> boxes;
    if (const Group* block = groupOf(list, "titleblock"))
        boxes.push_back(boxOf(std::get<Path>(block->items.front())));
    for (const Text& line : textsOf(list, "note"))
        boxes.push_back(line.box);
    return boxes;
}

/// Calls `look(list, what)` with every sample on every sheet.
template <class Look>
void everywhere(Look look) {
    for (const Sample& sample : allSamples())
        for (const Sheet& sheet : allSheets()) {
            SCOPED_TRACE(sample.name + ", " + sheet.name);
            const auto lists = figuresOf(withCaution(sample.result), sheet.job);
            look(std::get<std::vector<DisplayList>>(lists).at(0));
        }
}

TEST(AFigureWithACaution, GivesATenthOfItsHeightToItAndToTheTitleBlock) {
    int looked = 0;
    everywhere([&](const DisplayList& list) {
        const auto boxes = footOf(list);
        ASSERT_GE(boxes.size(), 2u);
        for (const Box& box : boxes)
            EXPECT_GE(box.top, 0.9 * list.height) << list.width << " " << list.height;
        ++looked;
    });
    EXPECT_GT(looked, 190);
}

TEST(AFigureWithACaution, HasItWholeAndLegibleBesideAllElse) {
    everywhere([&](const DisplayList& list) {
        std::string words;
        for (const Text& line : textsOf(list, "note")) {
            EXPECT_GE(line.size, kLeastRead);
            words += plainText(line.runs) + ' ';
        }
        EXPECT_NE(words.find(std::string(cautionLine()) + ' '), std::string::npos) << words;
        for (const Text& text : textsOf(list, "titleblock"))
            EXPECT_GE(text.size, kLeastRead);
        const auto boxes = footOf(list);
        for (std::size_t i = 0; i < boxes.size(); ++i) {
            EXPECT_TRUE(boxes[i].left >= 0 && boxes[i].right() <= list.width &&
                        boxes[i].bottom() <= list.height);
            for (std::size_t j = 0; j < i; ++j)
                EXPECT_LE(overlap(boxes[i], boxes[j]), 0) << i << " on " << j;
        }
    });
}

/// Strokes of the drawing, and its labels; the grid lies under everything.
TEST(AFigureWithACaution, HasNothingOfTheDrawingUnderItsFoot) {
    everywhere([&](const DisplayList& list) {
        const auto boxes = footOf(list);
        const auto isFree = [&](Point a, Point b) {
            return std::none_of(boxes.begin(), boxes.end(), [&](const Box& box) { return meets(box, a, b); });
        };
        for (const Group& group : list.groups) {
            if (group.id == "note" || group.id == "titleblock" || group.role == Role::grid ||
                group.role == Role::sheet)
                continue;
            for (const Item& item : group.items) {
                if (const auto* path = std::get_if<Path>(&item)) {
                    for (std::size_t i = 1; i < path->points.size(); ++i)
                        EXPECT_TRUE(isFree(path->points[i - 1], path->points[i])) << group.id;
                } else if (const auto* text = std::get_if<Text>(&item)) {
                    for (const Box& box : boxes)
                        EXPECT_LE(overlap(box, text->box), 0) << group.id;
                }
            }
        }
    });
}

} // namespace TAILPOINT_FILE
} // namespace tailpoint
