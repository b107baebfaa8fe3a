// SPDX-License-Identifier: MIT
// The figures of problems: at the scale that they state, whole on their sheet, and with nothing of the
// answer.
#include "core/practice/families.h"
#include "core/practice/scheme.h"
#include "ui/handout/handout_blocks.h"
#include "ui/problems/key_blocks.h"
#include "ui/problems/sheet_from.h"

#include <gtest/gtest.h>

namespace tailpoint {
namespace TAILPOINT_FILE {

constexpr double kWidth = 487; // points: about the column of a page

std::vector<Problem> someOfEach() {
    std::vector<Problem> all;
    for (const FamilyEntry& family : problemFamilies())
        for (int level = 1; level <= kLevels; ++level)
            for (std::uint32_t number : {5U, 1234U})
                all.push_back(*problem({std::string(family.id), level, number}));
    return all;
}

/// The length of a given vector's arrow, points; 0: it isn't drawn as one.
double arrowLength(const DisplayList& list, VectorId vector) {
    for (const Group& group : list.groups)
        if (isArrow(group) && vectorOf(group) == vector && group.ends)
            return std::hypot((*group.ends)[1].x - (*group.ends)[0].x,
                              (*group.ends)[1].y - (*group.ends)[0].y);
    return 0;
}

TEST(ExerciseFigure, ArrowsAreAsLongAsTheScaleSays) {
    int arrows = 0;
    for (const Problem& one : someOfEach()) {
        const ExerciseFigure figure = exerciseFigure(one.sketch, kWidth);
        for (std::size_t i = 0; i < one.sketch.forces.size(); ++i) {
            const Force& force = one.sketch.forces[i];
            if (!force.magnitude.value || !isGiven(force.direction))
                continue;
            // ISO 80000-3: 1 in = 25.4 mm, and a point is a 72nd of an inch.
            const double expected = *force.magnitude.value / figure.unitsPerCm * 72 / 2.54;
            EXPECT_NEAR(arrowLength(figure.list, forceVector(i)), expected, 0.02)
                << one.code << ' ' << force.name;
            ++arrows;
        }
    }
    EXPECT_GT(arrows, 100);
}

TEST(ExerciseFigure, StandsWholeOnItsSheetAndNotTooSmall) {
    for (const Problem& one : someOfEach()) {
        const ExerciseFigure figure = exerciseFigure(one.sketch, kWidth);
        EXPECT_LE(figure.list.height, kMostExerciseHeight + 40) << one.code;
        double longest = 0;
        for (const Group& group : figure.list.groups) {
            if (group.role == Role::sheet || group.role == Role::grid)
                continue;
            for (const Item& item : group.items)
                if (const auto* text = std::get_if<Text>(&item)) {
                    EXPECT_GE(text->box.left, -0.5) << one.code;
                    EXPECT_LE(text->box.right(), kWidth + 0.5) << one.code;
                    EXPECT_GE(text->box.top, -0.5) << one.code;
                    EXPECT_LE(text->box.bottom(), figure.list.height + 0.5) << one.code;
                }
            if (isArrow(group) && group.ends)
                longest = std::max(longest, std::hypot((*group.ends)[1].x - (*group.ends)[0].x,
                                                       (*group.ends)[1].y - (*group.ends)[0].y));
        }
        EXPECT_GT(longest, 2 * 72 / 2.54) << one.code; // 2 cm at the least for ruler and protractor
    }
}

/// All that a figure says, aloud or drawn.
std::vector<std::string> saidIn(const DisplayList& list) {
    std::vector<std::string> all{list.title, list.description};
    for (const Group& group : list.groups) {
        all.push_back(group.title.whole());
        for (const Item& item : group.items)
            if (const auto* text = std::get_if<Text>(&item)) {
                all.emplace_back();
                for (const auto& run : text->runs)
                    all.back() += run.text;
            }
    }
    return all;
}

TEST(ExerciseFigure, TellsNoNumberOfTheAnswer) {
    for (const Problem& one : someOfEach()) {
        std::vector<std::string> said = saidIn(exerciseFigure(one.sketch, kWidth).list);
        const auto free = saidIn(figureNotToScale(one.sketch, kWidth).list);
        said.insert(said.end(), free.begin(), free.end());
        for (const SchemeAnswer& answer : schemeOf(one).answers)
            for (const std::string& right : answer.texts)
                for (const std::string& text : said)
                    EXPECT_EQ(text.find(right), std::string::npos) << one.code << ' ' << text;
    }
}

TEST(ExerciseFigure, NotToScaleNothingCanBeMeasured) {
    int turned = 0, all = 0;
    for (const Problem& one : someOfEach()) {
        const ExerciseFigure figure = figureNotToScale(one.sketch, kWidth);
        EXPECT_EQ(figure.unitsPerCm, 0);
        const Things things(one.sketch);
        for (std::size_t i = 0; i < one.sketch.forces.size(); ++i)
            for (const Group& group : figure.list.groups) {
                if (!isArrow(group) || vectorOf(group) != forceVector(i) || !group.ends)
                    continue;
                const auto unit = unitVector(one.sketch.forces[i].direction, one.sketch);
                if (!unit)
                    continue;
                const double drawn = std::atan2((*group.ends)[0].y - (*group.ends)[1].y,
                                                (*group.ends)[1].x - (*group.ends)[0].x),
                             given = static_cast<double>(std::atan2(unit->sin, unit->cos));
                ++all;
                turned += std::abs(std::remainder(drawn - given, 2 * std::acos(-1.0))) > 0.02;
                // Its quadrant is the given one.
                EXPECT_GE(std::cos(drawn) * static_cast<double>(unit->cos), -1e-6) << one.code;
                EXPECT_GE(std::sin(drawn) * static_cast<double>(unit->sin), -1e-6) << one.code;
            }
    }
    EXPECT_GT(all, 60);
    EXPECT_GT(turned, all * 3 / 4); // what lies along an axis, or a weight, stays
}

TEST(ExerciseFigure, WhatIsAskedOnTheSheetIsWhatTheKeyAnswers) {
    for (const Problem& one : someOfEach()) {
        std::vector<std::string> asked, answered;
        for (const Formula& symbol : askedSymbols(one.sketch))
            asked.push_back(toText(symbol));
        for (const SchemeAnswer& answer : schemeOf(one).answers)
            answered.push_back(toText(symbol(answer.symbol, QuantityId{})));
        EXPECT_EQ(asked, answered) << one.code;
    }
}

TEST(MarginList, IsOneAscendingListWithEveryNumber) {
    for (const Problem& one : someOfEach()) {
        const Scheme scheme = schemeOf(one);
        const auto lines = marginOf(scheme);
        for (const SlipNumber& number : scheme.numbers) { // what two answers have alike is said once
            const auto answer =
                std::find_if(scheme.answers.begin(), scheme.answers.end(),
                             [&](const SchemeAnswer& each) { return each.name == number.name; });
            const Formula of = symbol(answer->symbol, QuantityId{});
            const auto says = [&](const MarginLine& line) {
                return line.number == number.text && line.symbol == of && line.slip == labelOf(number) &&
                       (line.answer == number.answer || line.answer == 0);
            };
            EXPECT_EQ(std::count_if(lines.begin(), lines.end(), says), 1)
                << one.code << ' ' << number.text << ' ' << toText(labelOf(number));
        }
        double last = -1e300;
        for (const MarginLine& line : lines) {
            if (line.number.starts_with('N') || line.number.starts_with('S'))
                break; // bearings stand last
            const double value =
                std::stod(line.number.starts_with("\u00B1") ? line.number.substr(2) : line.number);
            EXPECT_GE(value, last - 1) << one.code << ' ' << line.number; // as shown, to three figures
            last = std::max(last, value);
        }
    }
}

TEST(SketchCode, IsFiveCharactersAndNoProblemsCode) {
    const Problem one = *problem({"two-forces", 1, 1}), other = *problem({"two-forces", 1, 2});
    EXPECT_EQ(sketchCode(one.sketch).size(), 5);
    EXPECT_EQ(sketchCode(one.sketch), sketchCode(one.sketch));
    EXPECT_NE(sketchCode(one.sketch), sketchCode(other.sketch));
    EXPECT_FALSE(problemIdOf(sketchCode(one.sketch)).has_value());
}

/// A figure that would begin a page, and leave the first one half empty, is drawn lower.
TEST(KeyPages, AFigureStandsBelowItsAnswersWhereItCanBeRead) {
    const QSizeF paper = QPageSize(QPageSize::A4).size(QPageSize::Point);
    const double width = HandoutPages::columnWidth(paper);
    int lowered = 0, own = 0;
    for (const Problem& one : someOfEach()) {
        auto entry = keyGroups(one, {QStringLiteral("Sheet"), {}, 1, 1}, schemeOf(one), {}, width);
        addGroups(entry, keyCaution(one, width));
        const double room = HandoutPages::roomBelow(entry, paper) - kFigureGap - 1;
        const KeySolution solution = keySolution(one.sketch, room);
        if (room < 250) { // too little: then as high as ever, on a page of its own
            ++own;
            EXPECT_EQ(solution.figure.height, keySolution(one.sketch).figure.height) << one.code;
            continue;
        }
        lowered += solution.figure.height < keySolution(one.sketch).figure.height ? 1 : 0;
        EXPECT_LE(solution.figure.height, room) << one.code;
        auto groups = solutionGroups(one, solution, width);
        groups.resize(1); // the figure alone
        addGroups(entry, std::move(groups));
        EXPECT_EQ(HandoutPages(std::move(entry), solution.figure, paper, {}).count(), 1) << one.code;
    }
    EXPECT_GT(lowered, 5);
}

} // namespace TAILPOINT_FILE
} // namespace tailpoint
