// SPDX-License-Identifier: MIT
// The compiled chain against the tree that it was compiled from: the same bits, whole and changed.
#include "core/derive/program.h"
#include "tests/core/explain/questions.h"

#include <gtest/gtest.h>

namespace tailpoint {
namespace TAILPOINT_FILE {

using namespace testing;

constexpr int kQuestions = 12'000;
constexpr std::uint64_t kSeed = 20261129;

std::string at(int number, const Chain& chain, const Things& things, std::size_t line) {
    return "seed " + std::to_string(kSeed) + ", case " + std::to_string(number) + ", " +
           things.at(chain.lines[line].subject).plain;
}

template <class Check>
void forEachChain(Check check) {
    Dice dice(kSeed);
    for (int i = 0; i < kQuestions && !::testing::Test::HasFailure(); ++i) {
        const Sketch sketch = someQuestion(dice, i % kQuestionKinds);
        const Solved solved = solve(sketch);
        const Things things(sketch);
        for (const Route& route : routesOf(sketch, solved))
            check(i, sketch, things, chainOf(sketch, solved, things, route), dice);
    }
}

void expectSame(const Values& tree, const Program& program, const Program::State& flat, const Chain& chain,
                const Things& things, int number) {
    ASSERT_EQ(tree.taken, flat.taken) << number;
    for (std::size_t i = 0; i < chain.lines.size(); ++i)
        ASSERT_EQ(tree.at(chain.lines[i].subject), flat.at(program.slotOfLine(i)))
            << at(number, chain, things, i);
}

/// With a sine for a cosine, a plus for a minus: what it computes is no matter here.
Formula spoilt(Formula formula) {
    if (formula.kind == FormulaKind::function)
        formula.text = formula.text == "cos" ? "sin" : formula.text == "sin" ? "cos" : formula.text;
    if (formula.kind == FormulaKind::negative)
        return formula.parts[0];
    for (Formula& part : formula.parts)
        part = spoilt(std::move(part));
    return formula;
}

TEST(Program, GivesTheBitsOfTheTreeForEveryLineOfEveryFamily) {
    std::size_t lines = 0;
    forEachChain([&](int number, const Sketch& sketch, const Things& things, const Chain& chain, Dice&) {
        const Values given = givenValues(chain, sketch);
        const Program program(chain);
        Program::State state = program.start(given);
        program.run(state);
        expectSame(evaluate(chain, given), program, state, chain, things, number);
        lines += chain.lines.size();
    });
    EXPECT_GT(lines, 100'000U);
}

TEST(Program, AChangedLineRunsOnlyWhatItMovesAndGivesTheBitsOfTheWholeChain) {
    forEachChain([&](int number, const Sketch& sketch, const Things& things, const Chain& chain, Dice& dice) {
        const Values given = givenValues(chain, sketch);
        const Program program(chain);
        Program::State right = program.start(given);
        program.run(right);
        const std::size_t line = dice.whole(chain.lines.size());
        Chain changed = chain;
        for (Case& one : changed.lines[line].cases)
            one.formula = spoilt(std::move(one.formula));
        const std::vector<Program::Patch> patches{program.patch(line, changed.lines[line])};
        expectSame(evaluate(changed, given), program, program.changed(right, patches), chain, things, number);
    });
}

TEST(Program, TwoChangesTogetherGiveTheBitsOfTheWholeChainWithBoth) {
    forEachChain([&](int number, const Sketch& sketch, const Things& things, const Chain& chain, Dice& dice) {
        const Values given = givenValues(chain, sketch);
        const Program program(chain);
        Program::State right = program.start(given);
        program.run(right);
        const std::size_t one = dice.whole(chain.lines.size()), other = dice.whole(chain.lines.size());
        if (one == other)
            return;
        Chain changed = chain;
        std::vector<Program::Patch> first, second;
        for (const std::size_t line : {one, other}) {
            for (Case& c : changed.lines[line].cases)
                c.formula = spoilt(std::move(c.formula));
            (line == one ? first : second).push_back(program.patch(line, changed.lines[line]));
        }
        const Program::State a = program.changed(right, first), b = program.changed(right, second);
        Program::State both;
        program.together({a, first}, {b, second}, {}, both);
        expectSame(evaluate(changed, given), program, both, chain, things, number);
    });
}

TEST(Program, AChangeIsCarriedOverToOtherGivenValuesAndOtherLines) {
    forEachChain([&](int number, const Sketch& sketch, const Things& things, const Chain& chain, Dice& dice) {
        Sketch other = sketch;
        for (Force& force : other.forces)
            if (force.magnitude.value)
                force.magnitude.value = *force.magnitude.value * dice.between(0.5, 2);
        const Program program(chain);
        Program::State right = program.start(givenValues(chain, sketch));
        program.run(right);
        const std::size_t one = dice.whole(chain.lines.size()), line = dice.whole(chain.lines.size());
        if (one == line)
            return;
        Chain unlike = chain;
        for (Case& c : unlike.lines[one].cases)
            c.formula = spoilt(std::move(c.formula));
        const Program unlikeProgram(unlike);
        Program::State read = unlikeProgram.start(givenValues(chain, other));
        unlikeProgram.run(read);
        Chain changed = unlike;
        for (Case& c : changed.lines[line].cases)
            c.formula = spoilt(std::move(c.formula));
        const std::vector<Program::Patch> patches{program.patch(line, changed.lines[line])};
        const Program::State slipped = program.changed(right, patches);
        std::vector<bool> sameLines(chain.lines.size(), true);
        sameLines[one] = false;
        Program::State both;
        unlikeProgram.together({read}, {slipped, patches}, sameLines, both);
        expectSame(evaluate(changed, givenValues(chain, other)), program, both, chain, things, number);
    });
}

TEST(Program, AValuePutInIsCarriedOnAsByTheWholeChain) {
    forEachChain([&](int number, const Sketch& sketch, const Things& things, const Chain& chain, Dice& dice) {
        const Values given = givenValues(chain, sketch);
        const Program program(chain);
        Program::State right = program.start(given);
        program.run(right);
        const std::size_t line = dice.whole(chain.lines.size());
        const QuantityId subject = chain.lines[line].subject;
        const long double value = right.at(program.slotOfLine(line)).value_or(1) * dice.between(-2, 2);
        const std::vector<Program::Put> puts{{program.slotOf(subject), value}};
        expectSame(evaluate(chain, given, {{subject, value}}), program, program.changed(right, {}, puts),
                   chain, things, number);
    });
}

TEST(Program, APatchThatTakesAQuantityOfNobodyHasNoValue) {
    const Sketch sketch = testing::sketch({force("P", 345, 30), force("Q", 220, -45)});
    const Solved solved = solve(sketch);
    const Things things(sketch);
    const Chain chain = chainOf(sketch, solved, things, routesOf(sketch, solved).front());
    const Program program(chain);
    Program::State right = program.start(givenValues(chain, sketch));
    program.run(right);
    const Line nobody{magnitudeId(kSumVector), LineKind::root, {{{}, things.formula({What::distance})}}};
    const std::size_t line = program.lineOf(magnitudeId(kSumVector));
    const std::vector<Program::Patch> patches{program.patch(line, nobody)};
    const Program::State wrong = program.changed(right, patches);
    EXPECT_FALSE(wrong.at(program.slotOfLine(line)));
    EXPECT_FALSE(wrong.at(program.slotOf(directionId(kSumVector)))); // it takes R
    EXPECT_TRUE(wrong.at(program.slotOf({What::between, forceVector(0), forceVector(1)})));
}

} // namespace TAILPOINT_FILE
} // namespace tailpoint
