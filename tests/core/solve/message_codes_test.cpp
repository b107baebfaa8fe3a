// SPDX-License-Identifier: MIT
// What a message says, by its code: one question for each, with the reason beside it.
#include "core/solve/solve.h"

#include "tests/support/sketches.h"

#include <gtest/gtest.h>

#include <set>

namespace tailpoint::testing {
namespace TAILPOINT_FILE {

using Code = MessageCode;

/// A question and what is said of it: first, and after that.
struct Row {
    Sketch sketch;
    Code code;
    std::vector<Code> remarks{};
};

std::vector<Row> tooManyOrTooFew() {
    const std::vector<Force> raft{force("P", 340, 25), force("Q", 275, -40)};
    return {
        {sketch({force("P", kToFind, kToFind)}), Code::tooManyUnknowns},
        {balanced({force("W", 4, -90), force("A", kToFind, 40), force("B", kToFind, 90),
                   force("C", kToFind, 140)}),
         Code::tooManyUnknowns,
         {Code::indeterminate}},
        {sketch({force("P", kToFind, 25), force("Q", 4, 4)}, force("R", 5, 20)),
         Code::oneUnknown,
         {Code::noMagnitudeHolds}},
        {balanced({force("P", kToFind, 25), force("Q", 4, 205)}), Code::holdsByChance},
        {balanced({force("P", 4, kToFind), force("Q", 4, 90)}), Code::holdsByChance},
        // 0.002 of P is left across the line, where the directions alone may leave 8 sin 0.05 degrees =
        // 0.007.
        {balanced({force("P", kToFind, 25), force("Q", 4, 205.03)}), Code::holdsWithinRounding},
        {balanced({force("P", 3, kToFind), force("Q", 4, 90)}), Code::oneUnknown, {Code::noDirectionHolds}},
        {balanced({force("P", 340, 25), force("Q", 340, 205)}), Code::equationHolds, {Code::freeTwo}},
        // 340 at 25 and 275 at -40 degrees add up to 519.5 at -3.6: 0.5 short of 520.
        {sketch(raft, force("R", 520, -3.6)), Code::equationHoldsShown, {Code::freeTwo}},
        {sketch(raft, force("R", 500, 0)), Code::equationFails, {Code::freeTwo}}};
}

std::vector<Row> zeroVectors() {
    return {{emptySketch(), Code::noForces},
            {sketch({force("P", 100, 25), force("Q", 100, 205)}), Code::forcesBalance},
            {balanced({force("P", 100, 25), force("Q", 100, 205), force("S", kToFind, kToFind)}),
             Code::othersClose},
            {balanced({force("P", kToFind, 25), force("Q", kToFind, 115)}), Code::bothZero}};
}

std::vector<Row> noAnswer() {
    return {
        {sketch({force("P", kToFind, 25), force("Q", kToFind, 205)}, force("R", 520, 0)),
         Code::parallelLines},
        {balanced({force("P", 600, kToFind), force("Q", 601, kToFind)}), Code::unequalMagnitudes},
        // 100 + 600 < 800
        {sketch({force("P", 100, kToFind), force("Q", 600, kToFind)}, force("R", 800, 10)), Code::noTriangle},
        // The line lies 8 sin 30 degrees = 4 away from the tip of K.
        {sketch({force("K", 8, 0), force("Q", 3, kToFind)}, force("R", kToFind, 30)), Code::circleMissesLine},
        {sketch({force("P", kToFind, 25), force("Q", kToFind, 25)}, force("R", 520, 205)),
         Code::bothPointAway}};
}

std::vector<Row> endlessAndTwo() {
    return {
        {sketch({force("P", kToFind, 25), force("Q", kToFind, 205)}, force("R", 520, 25)),
         Code::endlessMagnitudes},
        {balanced({force("P", 600, kToFind), force("Q", 600, kToFind)}), Code::endlessDirections},
        {sketch({force("K", 8, 0), force("Q", 4, kToFind)}, force("R", kToFind, 30)),
         Code::circleTouchesLine},
        {sketch({force("P", 200, kToFind), force("Q", 600, kToFind)}, force("R", 800, 10)),
         Code::circlesTouch},
        // 8 sin 35 degrees = 4.6 < 6 < 8
        {sketch({force("K", 8, 0), force("Q", 6, kToFind)}, force("R", kToFind, 35)), Code::circleCutsLine},
        {sketch({force("P", 3, kToFind), force("Q", 4, kToFind)}, force("R", 5, 0)), Code::circlesCross}};
}

std::vector<Row> senses() {
    return {{balanced({force("W", 100, 90), force("P", kToFind, 30), force("Q", kToFind, 150)}),
             Code::noAnswerInSense},
            // The tip of the sum lies 300 from the common point, within the circle of 320: P is found once
            // along its sense and once against it.
            {sketch({force("P", kToFind, 115), force("Q", 320, kToFind)}, force("R", 300, 10)),
             Code::secondAnswerReversed},
            // Along 25 degrees P is what the raft's P is, so along 205 it acts the other way.
            {sketch({either(force("P", kToFind, 205)), force("Q", kToFind, -40)}, force("R", 520, -3.6)),
             Code::otherSense}};
}

std::vector<Row> farMoving() {
    return {{sketch({force("P", kToFind, 25), force("Q", kToFind, 24)}, force("R", 520, 24.5)),
             Code::nearlyParallel},
            {sketch({force("K", 8, 0), force("Q", 4.0005, kToFind)}, force("R", kToFind, 30)),
             Code::circleCutsLine,
             {Code::nearlyTangent}}};
}

std::vector<Row> smallestOnes() {
    const Force anyQ = force("Q", kToFind, kToFind);
    return {
        {smallest(sketch({force("P", 5, 0), force("Q", 3, 60)}, force("R", kToFind, 0)), "Q"),
         Code::smallestNeedsOthers},
        {smallest(sketch({force("P", 5, 0), anyQ}, force("R", kToFind, 0)), "Q"), Code::smallestNotNeeded},
        // The foot on the line of R lies behind the common point.
        {smallest(sketch({force("P", 5, 0), anyQ}, force("R", kToFind, 120)), "Q"), Code::smallestTurnsSum},
        {smallest(sketch({force("K", 5, 0), force("P", kToFind, 180)}), "R"), Code::smallestSumZero},
        {smallest(sketch({force("K", 5, 0), force("P", kToFind, 30)}), "R"), Code::smallestSumResisted},
        // Q's least is on the far side of P's line: P would have to push.
        {smallest(balanced({force("W", 5, -90), force("P", kToFind, -30), anyQ}), "Q"),
         Code::smallestForceResisted}};
}

std::vector<Row> allRows() {
    std::vector<Row> all{{sketch({force("P", 340, 25), force("Q", 275, -40)}), Code::none}}; // a plain answer
    for (const auto& rows : {tooManyOrTooFew(), zeroVectors(), noAnswer(), endlessAndTwo(), senses(),
                             farMoving(), smallestOnes()})
        all.insert(all.end(), rows.begin(), rows.end());
    return all;
}

TEST(MessageCodes, SayWhatTheMessageSays) {
    for (const Row& row : allRows()) {
        const Solved solved = solve(row.sketch);
        EXPECT_EQ(nameOf(solved.messageCode()), nameOf(row.code)) << solved.message().text();
        EXPECT_EQ(solved.remarkCodes(), row.remarks) << solved.message().text();
        EXPECT_EQ(solved.message().empty(), row.code == Code::none) << solved.message().text();
    }
}

TEST(MessageCodes, AreAllMetByAQuestion) {
    std::set<Code> met;
    for (const Row& row : allRows()) {
        met.insert(row.code);
        met.insert(row.remarks.begin(), row.remarks.end());
    }
    EXPECT_EQ(met.size(), kMessageCodes);
}

TEST(MessageCodes, HaveNamesOfTheirOwn) {
    std::set<std::string_view> names;
    for (std::size_t i = 0; i < kMessageCodes; ++i)
        names.insert(nameOf(static_cast<Code>(i)));
    EXPECT_EQ(names.size(), kMessageCodes);
    EXPECT_FALSE(names.contains(""));
    EXPECT_EQ(nameOf(Code::circleCutsLine), "circleCutsLine");
    EXPECT_EQ(nameOf(Code::smallestSumResisted), "smallestSumResisted");
}

} // namespace TAILPOINT_FILE
} // namespace tailpoint::testing
