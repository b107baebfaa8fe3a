// SPDX-License-Identifier: MIT
#include "core/figure/words.h"
#include "tests/support/sketches.h"
#include "ui/handout/figure_job.h"

#include <QImage>

#include <gtest/gtest.h>

namespace tailpoint {
namespace TAILPOINT_FILE {

Result raft() {
    Sketch sketch = emptySketch();
    sketch.title = "Survey raft on two lines";
    sketch.forces = {{"P", {340, {}}, {AngleForm{25}, {}}, false, {}},
                     {"Q", {275, {}}, {AngleForm{-40}, {}}, false, {}}};
    return resultOf(sketch);
}

std::vector<DisplayList> drawn(const FigureJob& job, const Result& result = raft()) {
    const auto lists = figuresOf(result, job);
    EXPECT_TRUE(std::holds_alternative<std::vector<DisplayList>>(lists));
    return std::get<std::vector<DisplayList>>(lists);
}

const Group* groupOf(const DisplayList& list, const std::string& id) {
    for (const Group& group : list.groups)
        if (group.id == id)
            return &group;
    return nullptr;
}

std::string textsOf(const DisplayList& list) {
    std::string all;
    for (const Group& group : list.groups)
        for (const Item& item : group.items)
            if (const auto* text = std::get_if<Text>(&item)) {
                for (const Run& run : text->runs)
                    all += run.text;
                all += "; ";
            }
    return all;
}

TEST(FigureJobs, NothingStandsBehindATransparentFigure) {
    FigureJob job;
    job.form = FigureForm::png;
    job.transparent = true;
    const auto files = std::get<std::vector<FigureFile>>(figureFiles(raft(), job));
    const QImage image = QImage::fromData(files.at(0).bytes);
    ASSERT_FALSE(image.isNull());
    EXPECT_EQ(qAlpha(image.pixel(1, 1)), 0);
    job.transparent = false;
    const auto opaque = std::get<std::vector<FigureFile>>(figureFiles(raft(), job));
    EXPECT_EQ(qAlpha(QImage::fromData(opaque.at(0).bytes).pixel(1, 1)), 255);
}

TEST(FigureJobs, AtTrueScaleAnArrowIsAsLongAsItsForceSays) {
    FigureJob job;
    job.paper = FigurePaper::a4Landscape;
    for (const double unitsPerCm : {25.0, 40.0, 100.0}) {
        job.unitsPerCm = unitsPerCm;
        const auto lists = drawn(job);
        const Group* force = groupOf(lists.at(0), "force-P");
        ASSERT_TRUE(force && force->ends);
        const auto [tail, tip] = *force->ends;
        EXPECT_NEAR(std::hypot(tip.x - tail.x, tip.y - tail.y), 340 / unitsPerCm * 72 / 2.54, 1e-9);
        ASSERT_TRUE(groupOf(lists.at(0), "scale-bar"));
    }
}

TEST(FigureJobs, EveryThingStaysBetweenTheMarginsOnEveryPaper) {
    for (int paper = 0; paper < 5; ++paper) {
        FigureJob job;
        job.paper = static_cast<FigurePaper>(paper);
        const PageRoom room = roomOf(job);
        const auto lists = drawn(job);
        EXPECT_NEAR(lists.at(0).width, room.width, 1e-9);
        EXPECT_LE(room.left + room.width, room.pageWidth);
        EXPECT_LE(room.top + lists.at(0).height, room.pageHeight);
    }
}

/// Who is who is no name: the tips are tied together in an exercise as in any other figure.
TEST(FigureJobs, WithoutNamesTheResultantFollowsTheTipsOfItsForcesToo) {
    FigureJob job;
    job.form = FigureForm::tex;
    job.names = false;
    const auto lists = drawn(job);
    const std::string tex =
        std::get<std::vector<FigureFile>>(figureFiles(raft(), job)).at(0).bytes.toStdString();
    std::string sum, forces;
    for (const Group& group : lists.at(0).groups)
        if (vectorOf(group) == kSumVector)
            sum = "\\coordinate (" + group.id + "-tip) at ($(" + group.id + "-tail)";
        else if (isArrow(group)) // the longer one is painted first: P before Q
            forces += " + (" + group.id + "-tip) - (" + group.id + "-tail)";
    EXPECT_NE(tex.find(sum + forces + "$);"), std::string::npos) << sum + forces;
}

TEST(FigureJobs, WithoutNamesTheValuesStandWhereTheyStood) {
    FigureJob job;
    const DisplayList named = drawn(job).at(0);
    job.names = false;
    const DisplayList bare = drawn(job).at(0);
    ASSERT_EQ(named.groups.size(), bare.groups.size());
    int kept = 0;
    for (std::size_t i = 0; i < named.groups.size(); ++i)
        for (const Item& item : bare.groups[i].items)
            if (const auto* text = std::get_if<Text>(&item); text && text->face == Face::serif) {
                const bool stood = std::any_of(
                    named.groups[i].items.begin(), named.groups[i].items.end(), [&](const Item& was) {
                        const auto* old = std::get_if<Text>(&was);
                        return old && old->baseline == text->baseline && old->anchor == text->anchor;
                    });
                EXPECT_TRUE(stood) << named.groups[i].id;
                ++kept;
            }
    EXPECT_GE(kept, 8); // three magnitudes, three directions, the interior angles
}

/// A name may hold whatever else parts a label or a title.
TEST(FigureJobs, WhatIsHiddenIsToldByItsMeaningAndNotByItsText) {
    Sketch sketch = raft().sketch;
    sketch.forces[0].name = "a, b = 1";
    sketch.forces[1].name = "= 7, d";
    const Result result = resultOf(sketch);
    FigureJob job;
    job.options.values = false;
    const DisplayList unvalued = drawn(job, result).at(0);
    const Group* force = groupOf(unvalued, idOf("force", "a, b = 1"));
    ASSERT_TRUE(force);
    EXPECT_EQ(force->title.whole(), "Force a, b = 1");
    job.options.values = true;
    job.names = false;
    const std::string all = textsOf(drawn(job, result).at(0));
    EXPECT_EQ(all.find("b"), std::string::npos) << all;
    EXPECT_EQ(all.find("7, d"), std::string::npos) << all;
    EXPECT_NE(all.find("340 N; "), std::string::npos) << all;
}

/// As the worked solution calls them by then: φ between the tails, γ at the tips.
TEST(FigureJobs, AnglesOfAStageCarryTheSymbolsOfTheSolution) {
    FigureJob job;
    const auto at = [&](Stage stage) {
        job.options.stage = stage;
        return textsOf(drawn(job).at(0));
    };
    EXPECT_EQ(at(Stage::directions).find("φ"), std::string::npos);
    EXPECT_NE(at(Stage::between).find("φ = 65.0°"), std::string::npos) << at(Stage::between);
    EXPECT_EQ(at(Stage::between).find("γ"), std::string::npos);
    EXPECT_NE(at(Stage::interior).find("γ = 115.0°"), std::string::npos) << at(Stage::interior);
    for (const char* named : {"φ = 65.0°", "γ = 115.0°"})
        EXPECT_NE(at(Stage::all).find(named), std::string::npos) << at(Stage::all);
    job.names = false;
    EXPECT_EQ(at(Stage::interior).find("γ"), std::string::npos) << "nor one that hides its names";
}

/// α, β and γ of the triangle at the corners of the parallelogram where they lie: the same letter, the same
/// value as in the solution.
TEST(FigureJobs, AnAnswerHasTheLettersOfItsSolution) {
    for (const std::size_t chosen : {0U, 1U}) {
        Sketch sketch = emptySketch();
        sketch.forces = {testing::force("P", 250, testing::kToFind),
                         testing::force("Q", 300, testing::kToFind)};
        sketch.sum = testing::force("R", 420, 5);
        const Result result = resultOf(sketch, chosen);
        FigureJob job;
        job.options.solution = chosen;
        for (const ConstructionKind kind : {ConstructionKind::parallelogram, ConstructionKind::triangle}) {
            job.options.construction = kind;
            const std::string all = textsOf(drawn(job, result).at(0));
            // By the law of cosines: 35.989, 44.843 and 99.168 degrees opposite to 250, 300 and 420.
            for (const char* named : {"α = 36.0°", "β = 44.8°", "γ = 99.2°"})
                EXPECT_NE(all.find(named), std::string::npos) << named << " in " << all;
        }
    }
}

TEST(FigureJobs, AllStagesGrowAndEndWithTheWholeFigure) {
    FigureJob job;
    job.allStages = true;
    const auto lists = drawn(job);
    ASSERT_EQ(lists.size(), std::size_t(kFigureStages));
    for (std::size_t i = 1; i < lists.size(); ++i) {
        EXPECT_GE(lists[i].groups.size(), lists[i - 1].groups.size()) << i;
        EXPECT_NEAR(groupOf(lists[i], "force-P")->ends->at(1).x, groupOf(lists[0], "force-P")->ends->at(1).x,
                    1e-9)
            << "one scale for all";
    }
    job.allStages = false;
    const DisplayList whole = drawn(job).at(0);
    EXPECT_EQ(textsOf(lists.back()), textsOf(whole));
    EXPECT_EQ(lists.back().description, whole.description);
    ASSERT_EQ(lists.back().groups.size(), whole.groups.size());
    for (std::size_t i = 0; i < whole.groups.size(); ++i)
        EXPECT_EQ(lists.back().groups[i].title, whole.groups[i].title);
}

} // namespace TAILPOINT_FILE
} // namespace tailpoint
