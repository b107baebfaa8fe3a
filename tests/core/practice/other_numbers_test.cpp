// SPDX-License-Identifier: MIT
#include "core/practice/other_numbers.h"
#include "core/practice/problem.h"
#include "core/solve/solve.h"
#include "tests/core/explain/questions.h"

#include <gtest/gtest.h>

namespace tailpoint::testing {
namespace TAILPOINT_FILE {

void expectSameStructure(const Force& before, const Force& after, double quarter) {
    EXPECT_EQ(after.name, before.name);
    EXPECT_EQ(after.magnitude.value.has_value(), before.magnitude.value.has_value());
    EXPECT_EQ(after.direction.form.index(), before.direction.form.index());
    EXPECT_EQ(after.lineOfActionOnly, before.lineOfActionOnly);
    if (before.magnitude.value && *before.magnitude.value > 0) {
        const double share = *after.magnitude.value / *before.magnitude.value;
        EXPECT_GE(share, 0.66);
        EXPECT_LE(share, 1.51);
    }
    if (const auto* slope = std::get_if<SlopeForm>(&before.direction.form)) {
        const auto& now = std::get<SlopeForm>(after.direction.form);
        EXPECT_EQ(std::signbit(now.run), std::signbit(slope->run));
        EXPECT_EQ(std::signbit(now.rise), std::signbit(slope->rise));
    }
    if (const auto* angle = std::get_if<AngleForm>(&before.direction.form)) {
        EXPECT_EQ(std::floor(std::get<AngleForm>(after.direction.form).value / quarter),
                  std::floor(angle->value / quarter))
            << std::get<AngleForm>(after.direction.form).value << " for " << angle->value;
    }
    if (const auto* bearing = std::get_if<BearingForm>(&before.direction.form)) {
        const auto& now = std::get<BearingForm>(after.direction.form);
        EXPECT_EQ(now.from, bearing->from);
        EXPECT_EQ(now.toward, bearing->toward);
    }
}

void expectSameStructure(const Sketch& before, const Sketch& after) {
    ASSERT_EQ(after.forces.size(), before.forces.size());
    for (std::size_t i = 0; i < before.forces.size(); ++i)
        expectSameStructure(before.forces[i], after.forces[i], turnIn(before.angleUnit) / 4);
    expectSameStructure(before.sum, after.sum, turnIn(before.angleUnit) / 4);
    EXPECT_EQ(after.title, before.title);
    EXPECT_EQ(after.reference, before.reference);
    EXPECT_EQ(after.forceUnit, before.forceUnit);
    EXPECT_EQ(after.smallest, before.smallest);
    EXPECT_EQ(after.caution, before.caution);
    EXPECT_FALSE(firstFault(after));
    EXPECT_EQ(solve(after).status, solve(before).status);
    EXPECT_FALSE(isSameQuestion(before, after));
}

TEST(OtherNumbers, OfAProblemOfEveryFamilyKeepItsStructure) {
    for (const char* family :
         {"two-forces", "several-forces", "missing-force", "oblique-lines", "two-ropes",
          "three-in-equilibrium", "smallest-force", "two-answers", "slopes", "bearings", "push-or-pull"})
        for (std::uint32_t number = 0; number < 12; ++number) {
            SCOPED_TRACE(family);
            const auto made = problem({family, 1 + static_cast<int>(number % 3), number});
            const auto other = otherNumbers(made->sketch, number);
            ASSERT_TRUE(other) << made->statement;
            expectSameStructure(made->sketch, *other);
        }
}

TEST(OtherNumbers, OfAnyQuestionKeepItsStructure) {
    Dice dice(20261129);
    int found = 0, tried = 0;
    for (int number = 0; number < 120; ++number) {
        const Sketch before = someQuestion(dice, number % kQuestionKinds);
        if (solve(before).solutions.empty() || solve(before).family == Family::check)
            continue;
        ++tried;
        const auto other = otherNumbers(before, 3);
        if (!other)
            continue;
        ++found;
        SCOPED_TRACE(number);
        expectSameStructure(before, *other);
    }
    EXPECT_GT(tried, 60);
    EXPECT_GT(10 * found, 7 * tried) << found << " of " << tried; // some of these are needles, and stay so
}

TEST(OtherNumbers, AreAsRoundAsTheOldOnes) {
    const Sketch before = sketch({force("P", 340, 25), force("Q", 2.5, -40)}, force("R", kToFind, kToFind));
    Sketch wide = before;
    wide.forces[1].magnitude.value = 250;
    for (std::uint32_t seed = 0; seed < 20; ++seed) {
        const auto other = otherNumbers(wide, seed);
        ASSERT_TRUE(other);
        for (const Force& one : other->forces) {
            EXPECT_EQ(std::fmod(*one.magnitude.value, 10), 0);
            EXPECT_EQ(std::fmod(std::get<AngleForm>(one.direction.form).value, 5), 0);
        }
    }
}

TEST(OtherNumbers, WhatStandsAlongAnAxisStaysAndEqualValuesStayEqual) {
    const Sketch before = balanced(
        {force("A", kToFind, 40), force("B", kToFind, 140), force("W", 300, -90), force("V", 300, -90)});
    const auto other = otherNumbers(before, 1);
    ASSERT_TRUE(other);
    EXPECT_EQ(std::get<AngleForm>(other->forces[2].direction.form).value, -90);
    EXPECT_EQ(other->forces[2].magnitude.value, other->forces[3].magnitude.value);
    EXPECT_NE(other->forces[2].magnitude.value, 300);
}

TEST(OtherNumbers, OfTheSameSeedAreTheSame) {
    const Sketch before = sketch({force("P", 340, 25), force("Q", 275, -40)});
    EXPECT_EQ(otherNumbers(before, 4), otherNumbers(before, 4));
    EXPECT_NE(otherNumbers(before, 4), otherNumbers(before, 5));
}

TEST(OtherNumbers, AreNotMadeWhereNothingIsAskedOrAnswered) {
    EXPECT_FALSE(otherNumbers(sketch({force("P", 340, 25)}, force("R", 340, 25)), 1));
    EXPECT_FALSE(otherNumbers(sketch({force("P", kToFind, 25)}, force("R", 340, kToFind)), 1));
}

} // namespace TAILPOINT_FILE
} // namespace tailpoint::testing
