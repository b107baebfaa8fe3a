// SPDX-License-Identifier: MIT
#include "core/practice/faded.h"

#include "core/practice/families.h"
#include "tests/support/sketches.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <set>

namespace tailpoint::testing {
namespace TAILPOINT_FILE {

Sketch raft() {
    return sketch({force("P", 340, 25), force("Q", 275, -40)});
}

Worked workedOf(const Sketch& sketch) {
    const Solved solved = solve(sketch);
    return explain(sketch, solved, construct(sketch, solved));
}

std::vector<std::string> subjectsOf(const Worked& worked) {
    std::vector<std::string> subjects;
    for (const WorkingPlace& place : calculatedLines(worked))
        subjects.push_back(toText(*worked.steps[place.step].workings[place.working].subject));
    return subjects;
}

TEST(FadedSolutions, TheLinesThatCalculateAreThoseOfTheSolution) {
    // angle between the tails, its supplement, law of cosines, law of sines, direction
    EXPECT_EQ(subjectsOf(workedOf(raft())), (std::vector<std::string>{"φ", "γ", "R", "β", "θ_R"}));
}

TEST(FadedSolutions, WithoutBlankLinesItIsTheSolution) {
    const Worked worked = workedOf(raft());
    const FadedSolution whole = faded(worked, 0);
    EXPECT_EQ(whole.worked, worked);
    EXPECT_TRUE(whole.blank.empty());
}

TEST(FadedSolutions, TheLastLinesAreBlankAndNothingTellsThem) {
    const Worked worked = workedOf(raft());
    for (std::size_t count = 1; count < 5; ++count) {
        const FadedSolution part = faded(worked, count);
        ASSERT_EQ(part.blank.size(), count);
        for (const FadedLine& line : part.blank) {
            const Working& blank = part.worked.steps[line.place.step].workings[line.place.working];
            EXPECT_TRUE(blank.subject);
            EXPECT_FALSE(blank.general || blank.substituted || blank.value || blank.told);
            EXPECT_TRUE(line.prompt.ends_with('?'));
        }
        const std::string text = toText(part.worked);
        EXPECT_EQ(text.find("3.6"), text.npos) << text; // of the last line
        EXPECT_EQ(text.find("520 N") == text.npos, count >= 3) << text;
        EXPECT_EQ(text.find("28.6") == text.npos, count >= 2) << text;
        EXPECT_EQ(text.find("115.0") == text.npos, count >= 4) << text;
        EXPECT_NE(text.find("65.0°"), text.npos) << text;
    }
}

/// sin β / Q = sin γ / R stands before β in its step, and says which law it is.
TEST(FadedSolutions, TheLawInLettersIsNotToldBesideABlankLine) {
    const Worked worked = workedOf(raft());
    const std::string whole = toText(worked), part = toText(faded(worked, 2).worked);
    EXPECT_NE(whole.find("sin β / Q"), whole.npos) << whole;
    EXPECT_EQ(part.find("sin β"), part.npos) << part;
    EXPECT_NE(toText(faded(worked, 1).worked).find("sin β / Q"), part.npos) << "β stands";
}

/// Lami's form is a check after the answer: no line of it is asked for.
TEST(FadedSolutions, WhatLooksBackHasNoLines) {
    const Worked worked =
        workedOf(balanced({force("P", 18, 45), force("Q", 34, 115), force("H", kToFind, kToFind)}));
    bool hasLami = false;
    for (const Step& step : worked.steps)
        hasLami = hasLami || step.key == StepKey::lami;
    ASSERT_TRUE(hasLami);
    const auto places = calculatedLines(worked);
    EXPECT_EQ(worked.steps[places.back().step].key, StepKey::direction);
}

TEST(FadedSolutions, AtTheEndOnlyTheLawIsAskedFor) {
    const FadedSolution law = faded(workedOf(raft()), 5);
    EXPECT_TRUE(law.onlyLaw);
    EXPECT_EQ(law.prompt, "Which law starts, and why?");
    const std::string text = toText(law.worked);
    EXPECT_NE(text.find("340 N"), text.npos);
    for (const char* told : {"cosine", "sine", "triangle", "520", "parallelogram"})
        EXPECT_EQ(text.find(told), text.npos) << text;
}

TEST(FadedSolutions, ARelationThatOnlyBlankLinesFollowIsBlankToo) {
    const std::string law = "sin β"; // of the law of sines, from which β is found: by hand
    EXPECT_NE(toText(faded(workedOf(raft()), 1).worked).find(law), std::string::npos);
    EXPECT_EQ(toText(faded(workedOf(raft()), 2).worked).find(law), std::string::npos);
}

TEST(FadedSolutions, OverASheetMoreAndMoreLinesAreBlank) {
    // of five lines: from one to five in even steps, by hand
    const auto over = [](std::size_t count, std::size_t lines) {
        std::vector<std::size_t> all;
        for (std::size_t place = 1; place <= count; ++place)
            all.push_back(risingBlanks(place, count, lines));
        return all;
    };
    EXPECT_EQ(over(5, 5), (std::vector<std::size_t>{1, 2, 3, 4, 5}));
    EXPECT_EQ(over(3, 5), (std::vector<std::size_t>{1, 3, 5}));
    EXPECT_EQ(over(1, 5), (std::vector<std::size_t>{1}));
    EXPECT_EQ(over(4, 1), (std::vector<std::size_t>{1, 1, 1, 1}));
}

TEST(FadedSolutions, EveryFamilyCanBeFaded) {
    for (const FamilyEntry& family : problemFamilies())
        for (int level = 1; level <= kLevels; ++level) {
            const auto made = problem({std::string(family.id), level, 21});
            const Worked worked = workedOf(made->sketch);
            const std::size_t lines = calculatedLines(worked).size();
            ASSERT_GT(lines, 1U) << family.id;
            for (std::size_t blank = 1; blank < lines; ++blank)
                EXPECT_EQ(faded(worked, blank).blank.size(), blank) << family.id;
            EXPECT_TRUE(faded(worked, lines).onlyLaw);
        }
}

/// That slip can be made in several lines.
std::optional<FlawedSolution> flawedIn(StepKey key, std::string_view slip) {
    for (std::uint32_t seed = 0; seed < 8; ++seed)
        if (auto made = flawed(raft(), slip, seed); made && made->worked.steps[made->flaw.step].key == key)
            return made;
    return std::nullopt;
}

TEST(FlawedSolutions, ASlipRewritesItsLineAndIsCarriedOn) {
    const auto made = flawedIn(StepKey::cosines, "supplement-in-cosines");
    ASSERT_TRUE(made);
    const Working& line = made->worked.steps[made->flaw.step].workings[made->flaw.working];
    EXPECT_NE(line, made->right);
    EXPECT_EQ(toText(*line.value), "334.96 N"); // 334.956 and 519.860 by Python
    EXPECT_EQ(toText(*made->right.value), "519.86 N");
    const std::string text = toText(made->worked);
    EXPECT_EQ(text.find("519.86"), text.npos) << text;
    EXPECT_NE(text.find("340 N"), text.npos) << text;
    // arcsin(275 sin 115° / 334.96) = 48.08°, so that the direction comes out as 25° − 48.08°, by Python
    EXPECT_NE(text.find("48.08"), text.npos) << text;
    EXPECT_NE(text.find("-23.1"), text.npos) << text;
    EXPECT_FALSE(toText(made->mend).empty());
}

/// Two lines may give the same wrong number: the one that the key names is the only one that is wrong. 240
/// problems and their seeds.
TEST(FlawedSolutions, EveryOtherLineComputesAsItIsPrinted) {
    int found = 0, lines = 0;
    for (const char* family : {"two-forces", "three-in-equilibrium", "bearings"})
        for (const int level : {1, 3})
            for (std::uint32_t seed = 1; seed <= 40; ++seed) {
                const auto made = problem({family, level, seed});
                const auto one = flawed(made->sketch, "supplement-in-cosines", seed);
                if (!one)
                    continue;
                ++found;
                for (const WorkingPlace& place : calculatedLines(one->worked)) {
                    const Working& line = one->worked.steps[place.step].workings[place.working];
                    if (place == one->flaw || !line.substituted || !line.value)
                        continue;
                    const auto printed = evaluate(*line.substituted, AngleUnit::deg),
                               result = evaluate(*line.value, AngleUnit::deg);
                    if (!printed || !result)
                        continue;
                    ++lines;
                    EXPECT_NEAR(static_cast<double>(*printed), static_cast<double>(*result),
                                0.01 * std::fabs(static_cast<double>(*result)) + 0.2)
                        << made->code << '\n'
                        << toText(one->worked);
                }
            }
    EXPECT_GT(found, 100);
    EXPECT_GT(lines, 300);
}

TEST(FlawedSolutions, NothingButTheLinesIsTold) {
    const auto made = flawed(raft(), "supplement-in-cosines", 0);
    ASSERT_TRUE(made);
    for (const Step& step : made->worked.steps) {
        EXPECT_TRUE(step.notes.empty());
        EXPECT_TRUE(step.key == StepKey::given || step.reasoning.empty());
        EXPECT_NE(step.key, StepKey::check);
    }
}

TEST(FlawedSolutions, EveryFamilyHasASlipInALineAndNotAlwaysTheSame) {
    for (const FamilyEntry& family : problemFamilies())
        for (int level = 1; level <= kLevels; ++level) {
            const auto made = problem({std::string(family.id), level, 5});
            const auto& likely = family.levels[static_cast<std::size_t>(level - 1)].slips;
            std::set<std::string> slips;
            for (std::uint32_t seed = 0; seed < 8; ++seed) {
                const auto flaw = flawedBySome(made->sketch, likely, seed);
                ASSERT_TRUE(flaw) << family.id << ' ' << level;
                slips.insert(flaw->slip);
            }
            // of push or pull, few of the slips that are frequent change a line
            EXPECT_GE(slips.size(), family.id == "push-or-pull" ? 1U : 2U) << family.id << ' ' << level;
        }
}

TEST(FlawedSolutions, SlipsThatChangeNoLineHaveNone) {
    EXPECT_FALSE(flawed(raft(), "wrong-turn", 0));
    EXPECT_FALSE(flawed(raft(), "slope-exchanged", 0));
    EXPECT_FALSE(
        flawed(sketch({force("P", 340, 25), force("Q", kToFind, kToFind)}), "supplement-in-cosines", 0));
}

} // namespace TAILPOINT_FILE
} // namespace tailpoint::testing
