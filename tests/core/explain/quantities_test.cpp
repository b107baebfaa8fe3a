// SPDX-License-Identifier: MIT
// The quantities that a worked solution passes through, by their names.
#include "core/explain/explain.h"
#include "tests/core/explain/questions.h"
#include "tests/support/sketches.h"

#include <gtest/gtest.h>

#include <cmath>
#include <set>

namespace tailpoint {
namespace TAILPOINT_FILE {

using namespace testing;

std::vector<WorkedQuantity> listed(const Sketch& sketch, const ExplainOptions& options = {}) {
    const Solved solved = solve(sketch);
    return quantitiesOf(sketch, solved, construct(sketch, solved), options);
}

const WorkedQuantity* find(const std::vector<WorkedQuantity>& all, const std::string& name, int answer = 0) {
    for (const WorkedQuantity& one : all)
        if (one.name == name && one.thing.id.answer == answer)
            return &one;
    return nullptr;
}

/// P = 340 N at 25°, Q = 275 N at −40°. R, its direction and the angles computed outside the program, by
/// components: R = hypot(340 cos 25° + 275 cos 40°, 340 sin 25° − 275 sin 40°).
TEST(Quantities, AreTheSolutionsOwnWithTheirParts) {
    const auto all = listed(sketch({force("P", 340, 25), force("Q", 275, -40)}));
    const double x = 340 * std::cos(25 * M_PI / 180) + 275 * std::cos(40 * M_PI / 180);
    const double y = 340 * std::sin(25 * M_PI / 180) - 275 * std::sin(40 * M_PI / 180);
    struct Row {
        const char* name;
        Thing::Role role;
        double value;
        const char* text;
    };
    const Row rows[] = {{"P", Thing::Role::given, 340, "340 N"},
                        {"theta_Q", Thing::Role::given, -40, "-40.0°"},
                        {"phi", Thing::Role::onTheWay, 65, "65.0°"},
                        {"gamma", Thing::Role::onTheWay, 115, "115.0°"},
                        {"R", Thing::Role::asked, std::hypot(x, y), "520 N"},
                        {"theta_R", Thing::Role::asked, std::atan2(y, x) * 180 / M_PI, "-3.6°"}};
    for (const Row& row : rows) {
        const WorkedQuantity* found = find(all, row.name);
        ASSERT_NE(found, nullptr) << row.name;
        EXPECT_EQ(found->thing.role, row.role) << row.name;
        EXPECT_NEAR(found->value, row.value, 1e-9) << row.name;
        EXPECT_EQ(toText(found->number, Minus::ascii), row.text);
    }
}

/// Q = 260 N on a line at 40° towards R = 400 N at 10°: the angle opposite to Q is 30°, sin γ = 400 sin
/// 30°/260.
TEST(Quantities, OfTwoAnswersBearTheirNumber) {
    const auto all = listed(sketch({force("P", kToFind, 40), force("Q", 260, kToFind)}, force("R", 400, 10)));
    const double acute = std::asin(400 * 0.5 / 260) * 180 / M_PI;
    for (const int answer : {1, 2}) {
        const double third = answer == 1 ? acute - 30 : 180 - 30 - acute;
        const WorkedQuantity* found = find(all, "P", answer);
        ASSERT_NE(found, nullptr);
        EXPECT_NEAR(found->value, 260 * std::sin(third * M_PI / 180) / 0.5, 1e-9);
    }
    EXPECT_EQ(find(all, "P"), nullptr);
    EXPECT_NE(find(all, "R"), nullptr) << "what is common stands once";
}

/// P on a line at 115° towards R = 300 N at 10° with Q = 320 N: R_u = 300 cos 105°, d = 300 sin 105°,
/// d₁ = √(320² − d²), P_u = R_u − d₁; γ is the inverse sine itself.
TEST(Quantities, OfAPointLostToASenseAreThoseOfItsStep) {
    const auto all =
        listed(sketch({force("P", kToFind, 115), force("Q", 320, kToFind)}, force("R", 300, 10)));
    const double foot = 300 * std::cos(105 * M_PI / 180), across = 300 * std::sin(105 * M_PI / 180),
                 chord = std::sqrt(320.0 * 320 - across * across);
    for (const auto& [name, value] :
         {std::pair("R_u", foot), std::pair("d_1", chord), std::pair("P_u", foot - chord)}) {
        const WorkedQuantity* found = find(all, name);
        ASSERT_NE(found, nullptr) << name;
        EXPECT_NEAR(found->value, value, 1e-9) << name;
    }
    EXPECT_EQ(find(all, "gamma_0"), nullptr);
}

TEST(Quantities, StandOnceEachAndAreForcesOrAngles) {
    Dice dice(20261129);
    constexpr int cases = 1200;
    std::size_t seen = 0;
    for (int i = 0; i < cases; ++i) {
        ExplainOptions options;
        options.parallelograms = i % 2 == 0;
        std::set<std::pair<std::string, int>> names;
        for (const WorkedQuantity& one : listed(someQuestion(dice, i % kQuestionKinds), options)) {
            EXPECT_TRUE(names.emplace(one.name, one.thing.id.answer).second)
                << "case " << i << ": " << one.thing.plain;
            EXPECT_TRUE(one.thing.dimension == Dimension::force || one.thing.dimension == Dimension::angle);
            EXPECT_TRUE(std::isfinite(one.value)) << "case " << i << ": " << one.thing.plain;
            ++seen;
        }
    }
    EXPECT_GT(seen, 10U * cases);
}

} // namespace TAILPOINT_FILE
} // namespace tailpoint
