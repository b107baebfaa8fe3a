// SPDX-License-Identifier: MIT
// What is known before anything is found, and all vectors of an answer put together again.
#include "core/construct/reduction.h"
#include "core/derive/chain.h"
#include "core/explain/carried.h"
#include "tests/core/explain/questions.h"
#include "tests/support/flat.h"

#include <gtest/gtest.h>

namespace tailpoint {
namespace TAILPOINT_FILE {

using namespace testing;

constexpr int kCases = 6000;
constexpr std::uint64_t kSeed = 20261129;

const SolvedForce& in(const Solution& answer, VectorId vector) {
    return vector == kSumVector ? answer.sum : answer.forces[vector.index];
}

/// The solver's own numbers under the ids of an answer.
Values answered(const Chain& chain, const Solution& answer) {
    Values values;
    for (const QuantityId& given : chain.given) {
        const SolvedForce& vector = in(answer, given.of);
        if (given.what == What::magnitude)
            values.set(given, vector.magnitude);
        else if (vector.direction)
            values.set(given, *vector.direction);
    }
    return values;
}

double scaleOf(const Solution& answer) {
    double scale = answer.sum.magnitude;
    for (const SolvedForce& force : answer.forces)
        scale += force.magnitude;
    return scale;
}

TEST(CheckChain, EveryAnswerAddsUpToTheSumThatTheSolverHas) {
    Dice dice(kSeed);
    int checked = 0, asked = 0;
    for (int i = 0; i < kCases && !::testing::Test::HasFailure(); ++i) {
        const Sketch sketch = someQuestion(dice, i % kQuestionKinds);
        const Solved solved = solve(sketch);
        const Things things(sketch);
        for (std::size_t a = 0; a < solved.solutions.size(); ++a) {
            const Solution& answer = solved.solutions[a];
            const Chain chain = checkOf(sketch, solved, things, a);
            if (chain.lines.empty())
                continue;
            for (const QuantityId& given : chain.given) {
                const Standing standing = standingOf(solved, given.of, a);
                ASSERT_TRUE(given == standing.size || given == standing.way)
                    << "seed " << kSeed << ", case " << i << ": " << things.at(given).plain;
            }
            const Values values = evaluate(chain, answered(chain, answer));
            const bool isAsked =
                values.at({What::x, kSumVector}).has_value() && !values.at({What::gap, kNobody}).has_value();
            for (std::uint8_t axis = 0; axis < 2; ++axis) {
                const QuantityId total = isAsked ? QuantityId{axis == 0 ? What::x : What::y, kSumVector}
                                                 : QuantityId{What::gap, kNobody, {}, 0, axis};
                const auto value = values.at(total);
                ASSERT_TRUE(value) << "seed " << kSeed << ", case " << i;
                EXPECT_NEAR(static_cast<double>(*value), answer.sum.vector[axis],
                            kLineError * scaleOf(answer))
                    << "seed " << kSeed << ", case " << i;
            }
            ++checked;
            asked += isAsked ? 1 : 0;
        }
    }
    EXPECT_GT(checked, kCases / 2);
    EXPECT_GT(asked, kCases / 20);
}

/// K of 3 N along +x and 4 N along +y is 5 N at 53.13° (3-4-5 triangle).
TEST(GroundChain, KnownForcesAreAddedUpBeforeAnythingIsFound) {
    const Sketch s =
        sketch({force("P", 3, 0), force("Q", 4, 90), force("U", kToFind, 200), force("V", kToFind, 260)},
               force("R", 0, kToFind));
    const Solved solved = solve(s);
    const Things things(s);
    const Chain chain = groundOf(s, solved, things);
    const Values values = evaluate(chain, givenValues(chain, s));
    EXPECT_NEAR(static_cast<double>(values.at(magnitudeId(kKnownVector)).value_or(0)), 5, 1e-12);
    EXPECT_NEAR(static_cast<double>(values.at(directionId(kKnownVector)).value_or(0)), 53.13010235415598,
                1e-9);
}

/// Where no triangle has any height the lines along it lead to what the solver has.
TEST(FlatChain, LeadsToTheSolversValues) {
    constexpr double kRoom = 1e-9; // of some 700 N and 180°
    int checked = 0;
    for (const Sketch& s : flatQuestions()) {
        const Solved solved = solve(s);
        const Things things(s);
        const Chain chain = chainOf(s, solved, things, {Route::Way::triangle, kNobody});
        ASSERT_FALSE(chain.lines.empty());
        const Values values = evaluate(chain, givenValues(chain, s));
        for (const auto& [quantity, expected] : solvedValues(s, solved)) {
            const auto value = values.at(quantity);
            ASSERT_TRUE(value) << things.at(quantity).plain;
            EXPECT_NEAR(static_cast<double>(*value), static_cast<double>(expected), kRoom)
                << things.at(quantity).plain;
            ++checked;
        }
    }
    EXPECT_GT(checked, 25);
}

/// A = 100 N at 0°, B = 50 N at −90°: K points arctan 0.5 = 26.565° below the axis, θ_K = −δ_K = −26.565° and
/// not once more.
TEST(CarriedLines, DoNotTellANumberTwice) {
    const Sketch s =
        sketch({force("A", 100, 0), force("B", 50, -90), force("U", kToFind, 150), force("V", kToFind, 60)},
               force("R", 0, kToFind));
    const Solved solved = solve(s);
    const Things things(s);
    explaining::Carried carried(s, things, Rounding::guarded);
    carried.take(groundOf(s, solved, things));
    carried.settle();
    const Working working = carried.working(directionId(kKnownVector));
    EXPECT_EQ(toText(*working.general, Minus::ascii), "-δ_K");
    EXPECT_FALSE(working.substituted);
    EXPECT_EQ(toText(*working.value, Minus::ascii), "-26.565°");
}

/// P = 340 N at 25°, Q = 275 N at −40°: 519.860 N at −3.648° (computed outside the program).
TEST(CarriedLines, StandOnPaperAsFormulaNumbersAndResult) {
    const Sketch s = sketch({force("P", 340, 25), force("Q", 275, -40)});
    const Solved solved = solve(s);
    const Things things(s);
    explaining::Carried carried(s, things, Rounding::guarded);
    carried.take(chainOf(s, solved, things, routesOf(s, solved).front()));
    carried.settle(solvedValues(s, solved));
    const Working working = carried.working(magnitudeId(kSumVector));
    EXPECT_EQ(toText(*working.general, Minus::ascii), "√(P² + Q² - 2PQ cos γ)");
    EXPECT_EQ(toText(*working.substituted, Minus::ascii),
              "√((340 N)² + (275 N)² - 2(340 N)(275 N) cos 115.0°)");
    EXPECT_EQ(toText(*working.value, Minus::ascii), "519.86 N");
    EXPECT_EQ(working.value->id, magnitudeId(kSumVector));
    EXPECT_EQ(working.value->value, 519.86);
    EXPECT_NEAR(static_cast<double>(*carried.full(magnitudeId(kSumVector))), 519.8601878827717, 1e-9);
}

/// sin β = 275 sin 115° / R: with 520 N by hand 0.479297..., with 519.86 N 0.479426... (computed outside).
TEST(CarriedLines, CarryWhatIsPrinted) {
    const Sketch s = sketch({force("P", 340, 25), force("Q", 275, -40)});
    const Solved solved = solve(s);
    const Things things(s);
    const QuantityId sine{What::ratio, forceVector(1)};
    for (const auto& [rounding, ratio] :
         {std::pair(Rounding::hand, 0.4792973873751515), std::pair(Rounding::guarded, 0.4794264637307712)}) {
        explaining::Carried carried(s, things, rounding);
        carried.take(chainOf(s, solved, things, routesOf(s, solved).front()));
        carried.settle(solvedValues(s, solved));
        ASSERT_TRUE(carried.value(sine));
        EXPECT_NEAR(static_cast<double>(*carried.value(sine)), ratio, 1e-12);
    }
}

/// The number that its digits say, in every part of a formula but the words.
void expectInFull(const Formula& formula, const std::string& where) {
    if (formula.kind == FormulaKind::number) {
        EXPECT_EQ(shownValue(formula), formula.value) << where << ": " << toText(formula);
    }
    for (const Formula& part : formula.parts)
        expectInFull(part, where);
}

TEST(ChainFormulas, HoldGivenNumbersWithAllTheirDigits) {
    Dice dice(kSeed);
    for (int i = 0; i < 1000 && !::testing::Test::HasFailure(); ++i) {
        Sketch sketch = someQuestion(dice, i % kQuestionKinds);
        sketch.reference = {i % 3 == 0 ? 12.3456 : sketch.reference.axisDegrees, sketch.reference.sense};
        const Solved solved = solve(sketch);
        const Things things(sketch);
        for (const Route& route : routesOf(sketch, solved))
            for (const Line& line : chainOf(sketch, solved, things, route).lines)
                for (const Case& one : line.cases)
                    expectInFull(one.formula, "seed " + std::to_string(kSeed) + ", case " +
                                                  std::to_string(i) + ", " + things.at(line.subject).plain);
    }
}

} // namespace TAILPOINT_FILE
} // namespace tailpoint
