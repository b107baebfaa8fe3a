// SPDX-License-Identifier: MIT
#include "core/explain/caution.h"
#include "core/mark/mark.h"
#include "core/practice/families.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <array>
#include <cmath>
#include <set>

namespace tailpoint {
namespace TAILPOINT_FILE {

TEST(PracticeFamilies, AreThoseThatACourseNeeds) {
    const std::vector<std::string_view> wanted{
        "two-forces", "several-forces",       "missing-force",  "oblique-lines", "two-ropes",   "slopes",
        "bearings",   "three-in-equilibrium", "smallest-force", "two-answers",   "push-or-pull"};
    for (const std::string_view id : wanted)
        EXPECT_NE(familyNamed(id), nullptr) << id;
    EXPECT_EQ(familyNamed("one-force"), nullptr);
}

TEST(PracticeFamilies, EachHasItsWordsAndFourScenesOrMore) {
    std::set<std::string_view> ids;
    for (const FamilyEntry& family : problemFamilies()) {
        EXPECT_TRUE(ids.insert(family.id).second) << family.id;
        EXPECT_FALSE(family.title.empty());
        EXPECT_TRUE(family.asks.ends_with('.')) << family.id;
        std::set<std::string_view> scenes, titles;
        for (const SceneEntry& scene : family.scenes) {
            EXPECT_TRUE(scenes.insert(scene.id).second) << family.id << " " << scene.id;
            EXPECT_TRUE(titles.insert(scene.title).second) << family.id << " " << scene.title;
        }
        EXPECT_GE(scenes.size(), 4U) << family.id;
        for (const LevelEntry& level : family.levels)
            EXPECT_FALSE(level.numbers.empty() || level.reference.empty() || level.traps.empty())
                << family.id;
    }
}

TEST(PracticeFamilies, LikelySlipsAreOfTheTableAndNoneStandsTwice) {
    std::set<std::string_view> known;
    for (const SlipEntry& slip : slipEntries())
        known.insert(slip.id);
    for (const FamilyEntry& family : problemFamilies())
        for (const LevelEntry& level : family.levels) {
            const std::set<std::string_view> likely(level.slips.begin(), level.slips.end());
            EXPECT_EQ(likely.size(), level.slips.size()) << family.id;
            EXPECT_GE(likely.size(), 3U) << family.id;
            for (const std::string_view slip : likely)
                EXPECT_TRUE(known.contains(slip)) << family.id << " " << slip;
        }
}

/// Multiples of a step, exactly: the values are typed decimals.
void expectStep(double value, double step, const std::string& where) {
    EXPECT_EQ(std::fmod(value, step), 0) << value << " of " << where;
}

void expectAsTheLevelSays(const Force& one, ForceUnit unit, int level, const std::string& where) {
    constexpr std::array tens{10.0, 5.0, 1.0}, kilo{1.0, 0.5, 0.5}, degrees{5.0, 1.0, 0.5};
    const auto at = static_cast<std::size_t>(level - 1);
    if (one.magnitude.value)
        expectStep(*one.magnitude.value, unit == ForceUnit::kN ? kilo[at] : tens[at], where);
    if (const auto* angle = std::get_if<AngleForm>(&one.direction.form))
        expectStep(angle->value, degrees[at], where);
    if (const auto* bearing = std::get_if<BearingForm>(&one.direction.form))
        expectStep(bearing->degrees, degrees[at], where);
}

TEST(PracticeFamilies, TheNumbersAreThoseThatTheLevelsSpeakOf) {
    for (const FamilyEntry& family : problemFamilies())
        for (int level = 1; level <= kLevels; ++level) {
            const std::string_view says = family.levels[static_cast<std::size_t>(level - 1)].numbers;
            constexpr std::array words{"in tens, or whole kilonewtons", "in fives, or half kilonewtons",
                                       "whole magnitudes, or half kilonewtons"};
            EXPECT_NE(says.find(words[static_cast<std::size_t>(level - 1)]), says.npos) << family.id;
            for (std::uint32_t number = 0; number < 8; ++number) {
                const auto made = problem({std::string(family.id), level, number});
                for (const Force& force : made->sketch.forces)
                    expectAsTheLevelSays(force, made->sketch.forceUnit, level, made->statement);
                expectAsTheLevelSays(made->sketch.sum, made->sketch.forceUnit, level, made->statement);
            }
        }
}

/// Words of a scene in which somebody may come to harm; the test's own list.
bool isOfLiftingOrHolding(const std::string& text) {
    for (const char* word : {"hang", "hoist", "lift", "anchor", "moor", "crane", " jib", "shackle", "rigging",
                             "winch", "suspend", "bracket", "awning", "balloon"})
        if (text.find(word) != text.npos)
            return true;
    return false;
}

TEST(PracticeFamilies, EverySceneIsMetAndNoneOfLiftingGoesWithoutItsCaution) {
    for (const FamilyEntry& family : problemFamilies()) {
        std::set<std::string> met;
        for (std::uint32_t number = 0; number < 48; ++number) {
            const auto made =
                problem({std::string(family.id), 1 + static_cast<int>(number % kLevels), number});
            ASSERT_TRUE(made);
            met.insert(made->scene);
            if (isOfLiftingOrHolding(made->statement) || isOfLiftingOrHolding(made->sketch.title)) {
                EXPECT_TRUE(needsCaution(made->sketch)) << made->statement;
            }
        }
        EXPECT_EQ(met.size(), family.scenes.size()) << family.id;
    }
}

} // namespace TAILPOINT_FILE
} // namespace tailpoint
