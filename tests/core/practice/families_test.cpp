#include "core/explain/caution.h"
#include "core/mark/mark.h"
#include "core/practice/families.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <map>
#include <set>

namespace tailpoint {
namespace {

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
        for (std::uint32_t number = 0; number < 60; ++number) {
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

} // namespace
} // namespace tailpoint
