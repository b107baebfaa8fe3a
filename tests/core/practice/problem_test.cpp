// SPDX-License-Identifier: MIT
// One test a family, so that they run side by side; ten thousand numbers of each: tests/practiced.
#include "core/practice/in_turn.h"
#include "core/practice/scheme.h"
#include "tests/practiced/practised.h"

#include <atomic>
#include <gtest/gtest.h>
#include <thread>

namespace tailpoint::testing {
namespace TAILPOINT_FILE {

constexpr std::uint32_t kNumbers = 100, kByAllSlips = 10; ///< every tenth is marked by the whole table

class PracticeFamily : public ::testing::TestWithParam<std::size_t> {};

TEST_P(PracticeFamily, StatementAnswerAndSlipsOfEveryProblemHold) {
    const FamilyEntry& family = problemFamilies()[GetParam()];
    for (int level = 1; level <= kLevels; ++level) {
        PracticeCounts counts;
        for (std::uint32_t i = 0; i < kNumbers; ++i)
            checkProblem({std::string(family.id), level, problemNumber(20261129, i)}, counts,
                         i % kByAllSlips == 0);
        EXPECT_EQ(counts.answers, kNumbers);
        EXPECT_GE(counts.slips, 2 * kNumbers) << family.id << ' ' << level;
        for (const auto& [what, times] : counts.faults)
            ADD_FAILURE() << family.id << ' ' << level << ": " << times << " times " << what;
        for (const std::string& example : counts.examples)
            ADD_FAILURE() << example;
        // what the level states was measured on 1,000; of 100 a few more may be missed
        EXPECT_GE(100 * counts.separable + 4 * kNumbers,
                  static_cast<unsigned>(family.levels[static_cast<std::size_t>(level - 1)].separable) *
                      kNumbers)
            << family.id << ' ' << level;
    }
}

std::string nameOfFamily(const ::testing::TestParamInfo<std::size_t>& info) {
    std::string name(problemFamilies()[info.param].id);
    std::erase(name, '-');
    return name;
}

INSTANTIATE_TEST_SUITE_P(Practice, PracticeFamily, ::testing::Range<std::size_t>(0, 11), nameOfFamily);

TEST(PracticeProblem, ThereAreElevenFamiliesToTest) {
    EXPECT_EQ(problemFamilies().size(), 11U);
}

TEST(PracticeProblem, TheSameIdIsTheSameProblem) {
    const ProblemId id{"slopes", 3, 4711};
    const auto first = problem(id), second = problem(id);
    ASSERT_TRUE(first && second);
    EXPECT_EQ(first->sketch, second->sketch);
    EXPECT_EQ(first->statement, second->statement);
    EXPECT_EQ(problemIdOf(first->code), id);
}

TEST(PracticeProblem, WhatDoesNotExistIsNotMade) {
    EXPECT_FALSE(problem({"one-force", 1, 0}));
    EXPECT_FALSE(problem({"two-forces", 0, 0}));
    EXPECT_FALSE(problem({"two-forces", 4, 0}));
    EXPECT_FALSE(problem({"two-forces", 1, kProblemNumbers}));
}

/// FNV-1a, 64 bits. Source: draft-eastlake-fnv.
std::uint64_t digestOf(const std::string& text) {
    std::uint64_t hash = 14695981039346656037ULL;
    for (const char c : text)
        hash = (hash ^ static_cast<unsigned char>(c)) * 1099511628211ULL;
    return hash;
}

TEST(PracticeProblem, EveryMachineMakesTheSameTexts) {
    std::string all;
    for (const FamilyEntry& family : problemFamilies())
        for (int level = 1; level <= kLevels; ++level)
            for (const std::uint32_t number : {1U, 77'777U, kProblemNumbers - 1})
                all += problem({std::string(family.id), level, number})->statement + '\n';
    // as version 2 of the generator made them; whoever changes what is drawn or its words raises a version
    EXPECT_EQ(kPracticeVersion, 2);
    EXPECT_EQ(digestOf(all), 9725612933121845662ULL);
}

/// No values in common but by chance.
TEST(PracticeProblem, NoTwoVariantsOfASheetAreAlike) {
    for (const FamilyEntry& family : problemFamilies()) {
        const std::vector<std::string> ids{std::string(family.id)};
        const auto sheet = problemSet(ids, 1, 25, 5);
        EXPECT_EQ(sheet.size(), 25U);
        std::set<std::string> seen;
        for (const Problem& one : sheet) {
            std::string values;
            for (const auto& [name, said] : valuesOf(one.sketch))
                values += name + plainNumber(said.size.value_or(-1)) + said.unit + said.way + ';';
            EXPECT_TRUE(seen.insert(values).second) << one.statement;
        }
    }
}

TEST(PracticeProblem, DrawnSideBySideTheyAreTheSameWithTheSameSchemes) {
    const std::vector<std::string> ids{"two-forces", "two-ropes", "slopes"};
    constexpr std::size_t kCount = 60, kThreads = 4;
    const auto one = problemSet(ids, 1, kCount, 5, 6);
    ASSERT_EQ(one.size(), kCount);
    ProblemsInTurn problems(ids, 1, 5, 6);
    std::vector<std::optional<DrawnProblem>> made(kCount);
    std::atomic<std::size_t> next = 0;
    std::vector<std::thread> threads;
    for (std::size_t i = 0; i < kThreads; ++i)
        threads.emplace_back([&] {
            for (std::size_t index = next++; index < kCount; index = next++)
                made[index] = problems.at(index);
        });
    for (std::thread& thread : threads)
        thread.join();
    for (std::size_t i = 0; i < kCount; ++i) {
        ASSERT_TRUE(made[i]) << i;
        EXPECT_EQ(made[i]->problem.id, one[i].id);
        EXPECT_EQ(made[i]->problem.statement, one[i].statement);
        const Scheme scheme = schemeOf(*made[i]), alone = schemeOf(one[i]);
        EXPECT_EQ(rightAnswers(scheme), rightAnswers(alone));
        ASSERT_EQ(scheme.numbers.size(), alone.numbers.size()) << one[i].statement;
        for (std::size_t n = 0; n < alone.numbers.size(); ++n) {
            EXPECT_EQ(scheme.numbers[n].text, alone.numbers[n].text);
            EXPECT_EQ(scheme.numbers[n].slips, alone.numbers[n].slips);
            EXPECT_EQ(scheme.numbers[n].points, alone.numbers[n].points);
        }
    }
}

/// Nobody waits for what never comes.
TEST(PracticeProblem, BehindOneThatCannotBeHadThereIsNone) {
    ProblemsInTurn none({"one-force"}, 1, 5);
    std::optional<DrawnProblem> second;
    std::thread other([&] { second = none.at(1); });
    EXPECT_FALSE(none.at(0));
    other.join();
    EXPECT_FALSE(second);
}

TEST(PracticeProblem, ASheetTakesItsFamiliesInTurnAndGrowsFromItsBeginning) {
    const std::vector<std::string> ids{"two-forces", "slopes"};
    const auto few = problemSet(ids, 2, 4, 9), more = problemSet(ids, 2, 8, 9),
               other = problemSet(ids, 2, 4, 10);
    ASSERT_EQ(few.size(), 4U);
    ASSERT_EQ(more.size(), 8U);
    for (std::size_t i = 0; i < few.size(); ++i) {
        EXPECT_EQ(few[i].id.family, ids[i % 2]);
        EXPECT_EQ(few[i].id, more[i].id);
        EXPECT_NE(few[i].id, other[i].id);
    }
    EXPECT_TRUE(problemSet(std::vector<std::string>{"one-force"}, 1, 3, 1).empty());
    EXPECT_TRUE(problemSet(std::vector<std::string>{}, 1, 3, 1).empty());
}

} // namespace TAILPOINT_FILE
} // namespace tailpoint::testing
