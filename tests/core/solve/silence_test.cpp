// SPDX-License-Identifier: MIT
// What is solved in silence is what is solved: 4,000 seeded sketches of all families, some with more or less
// to find than has an answer.
#include "core/solve/question.h"
#include "tests/support/tolerances.h"

#include <gtest/gtest.h>

namespace tailpoint::testing {
namespace TAILPOINT_FILE {

void expectSame(const SolvedForce& a, const SolvedForce& b) {
    EXPECT_EQ(a.name, b.name);
    EXPECT_EQ(a.vector, b.vector);
    EXPECT_EQ(a.magnitude, b.magnitude);
    EXPECT_EQ(a.direction, b.direction);
    EXPECT_EQ(a.turned, b.turned);
    EXPECT_EQ(a.magnitudeFound, b.magnitudeFound);
    EXPECT_EQ(a.directionFound, b.directionFound);
}

void expectSame(const std::vector<Solution>& a, const std::vector<Solution>& b) {
    ASSERT_EQ(a.size(), b.size());
    for (std::size_t i = 0; i < a.size(); ++i) {
        ASSERT_EQ(a[i].forces.size(), b[i].forces.size());
        for (std::size_t force = 0; force < a[i].forces.size(); ++force)
            expectSame(a[i].forces[force], b[i].forces[force]);
        expectSame(a[i].sum, b[i].sum);
        EXPECT_EQ(a[i].residual, b[i].residual);
    }
}

/// One more to find, or one less.
Sketch spoiled(Sketch sketch, Dice& dice) {
    Force& force = sketch.forces[dice.whole(sketch.forces.size())];
    switch (dice.whole(4)) {
    case 0:
        force.magnitude = {};
        break;
    case 1:
        force.direction = {};
        break;
    case 2:
        force.magnitude.value = 120;
        break;
    default:
        break;
    }
    return sketch;
}

/// One of what an answer has found is given, too: one unknown, and both equations hold.
std::optional<Sketch> withOneToFind(Sketch sketch, const Solved& solved) {
    if (solved.solutions.empty() || sketch.smallest)
        return std::nullopt;
    const Solution& answer = solved.solutions.front();
    for (std::size_t i = 0; i < sketch.forces.size(); ++i)
        if (answer.forces[i].magnitudeFound) {
            sketch.forces[i].magnitude.value = answer.forces[i].magnitude;
            return sketch;
        }
    return std::nullopt;
}

Solved expectSilent(const Sketch& sketch) {
    const Solved told = solve(sketch), silent = solveInSilence(sketch);
    EXPECT_EQ(silent.status, told.status);
    EXPECT_EQ(silent.family, told.family);
    EXPECT_EQ(silent.tangent, told.tangent);
    EXPECT_EQ(silent.unknownVectors, told.unknownVectors);
    EXPECT_EQ(silent.knownSum, told.knownSum);
    expectSame(silent.solutions, told.solutions);
    expectSame(silent.reversed, told.reversed);
    EXPECT_TRUE(silent.remarks.empty() && silent.unknowns.empty());
    return told;
}

/// Of many once more with one of what was found given.
TEST(SolvedInSilence, IsAllButTheWords) {
    std::size_t answered = 0, unanswered = 0, lost = 0, held = 0;
    for (std::uint64_t number = 0; number < 4000 && !HasFailure(); ++number) {
        SCOPED_TRACE(number);
        Dice dice(7'000'003 * number + 11);
        const Sketch sketch = spoiled(tolerantCase(dice, static_cast<Asked>(number % kAsked), 5, 5), dice);
        if (firstFault(sketch))
            continue;
        const Solved told = expectSilent(sketch);
        ++(told.solutions.empty() ? unanswered : answered);
        lost += told.reversed.size();
        if (const auto one = withOneToFind(sketch, told); one && !firstFault(*one)) {
            const Solved more = expectSilent(*one);
            held += more.family == Family::oneUnknown && more.status == Status::unique ? 1U : 0U;
        }
    }
    EXPECT_GT(answered, 1500U);
    EXPECT_GT(unanswered, 500U);
    EXPECT_GT(lost, 50U);
    EXPECT_GT(held, 100U);
}

} // namespace TAILPOINT_FILE
} // namespace tailpoint::testing
