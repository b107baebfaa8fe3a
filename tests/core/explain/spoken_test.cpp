// SPDX-License-Identifier: MIT
// Formulas in words. The sentences are what a reader would say aloud, written by hand.
#include "core/explain/spoken.h"
#include "core/solve/solve.h"
#include "tests/core/explain/questions.h"
#include "tests/support/sketches.h"

#include <gtest/gtest.h>

namespace tailpoint {
namespace TAILPOINT_FILE {

using namespace testing;

const Formula p = symbol("P"), q = symbol("Q"), r = symbol("R");

TEST(Spoken, ARootSaysWhereItEnds) {
    const Formula cosines =
        equal(r, root(sum(power(p, 2), power(q, 2),
                          negative(product(number(2, "2"), p, q, apply("cos", symbol("γ")))))));
    EXPECT_EQ(spoken(cosines),
              "R equals square root of P squared plus Q squared minus 2 P Q cosine of gamma, end of root");
    EXPECT_EQ(spoken(root(p)), "square root of P");
}

TEST(Spoken, NumbersHaveTheirUnitsByName) {
    EXPECT_EQ(spoken(number(340, "340", "N")), "340 newtons");
    EXPECT_EQ(spoken(number(1, "1", "kN")), "1 kilonewton");
    EXPECT_EQ(spoken(number(-3.6, "-3.6", "°")), "minus 3.6 degrees");
    EXPECT_EQ(spoken(number(1.23e8, "1.23e8", "N")), "1.23 times 10 to the power 8 newtons");
    EXPECT_EQ(spoken(number(75, "75", "lbf")), "75 pounds-force");
    EXPECT_EQ(spoken(number(33.4, "33.4", "gon")), "33.4 gon");
}

TEST(Spoken, ASubstitutionSaysTimesBetweenNumbersAndNothingBetweenLetters) {
    const Formula substituted = product(number(2, "2"), number(340, "340", "N"), number(275, "275", "N"),
                                        apply("cos", number(115, "115.0", "°")));
    EXPECT_EQ(spoken(substituted), "2 times 340 newtons times 275 newtons times cosine of 115.0 degrees");
    EXPECT_EQ(spoken(power(number(340, "340", "N"), 2)), "340 newtons squared");
    EXPECT_EQ(spoken(product(number(2, "2"), p, q)), "2 P Q");
}

TEST(Spoken, FractionsAndFunctionsSayWhatTheyTakeIn) {
    EXPECT_EQ(spoken(over(p, q)), "P over Q");
    EXPECT_EQ(spoken(apply("arcsin", over(product(q, apply("sin", symbol("γ"))), r))),
              "inverse sine of fraction Q sine of gamma, over R, end of fraction");
    EXPECT_EQ(spoken(product(p, sum(q, r))), "P times open parenthesis Q plus R close parenthesis");
    EXPECT_EQ(spoken(product(apply("sin", symbol("γ")), p)), "sine of gamma, times P");
    EXPECT_EQ(spoken(power(sum(p, q), 2)), "open parenthesis P plus Q close parenthesis squared");
}

TEST(Spoken, SymbolsHaveTheirSubscriptsVectorsAndGreekLettersByName) {
    EXPECT_EQ(spoken(symbol("θ", "R")), "theta sub R");
    EXPECT_EQ(spoken(componentSymbol("R", 'x')), "R sub x");
    EXPECT_EQ(spoken(symbolOfName("F1").sub.empty() ? p : magnitudeSymbol("F1")), "F sub 1");
    EXPECT_EQ(spoken(vectorOf("P")), "vector P");
    EXPECT_EQ(spoken(symbol("γ′")), "gamma prime");
}

TEST(Spoken, ARowOfATableNamesItsColumnsAndLeavesOutWhatIsEmpty) {
    const Table table{{inWords(""), inWords("magnitude"), symbol("x")},
                      {{vectorOf("P"), number(340, "340", "N"), number(308, "308", "N")},
                       {vectorOf("R"), inWords(""), number(519, "519", "N")}}};
    EXPECT_EQ(spoken(table), "vector P, magnitude 340 newtons, x 308 newtons. vector R, x 519 newtons");
}

TEST(Spoken, PartsOfAFullTurnInRadians) {
    EXPECT_EQ(spoken(number(1.5707963267948966, "π/2", "rad")), "pi over 2 radians");
    EXPECT_EQ(spoken(number(6.283185307179586, "2π", "rad")), "2 pi radians");
}

TEST(Spoken, RelationsAreVerbs) {
    EXPECT_EQ(spoken(related(p, Relation::greater, q)), "P is greater than Q");
    EXPECT_EQ(spoken(related(p, Relation::approximately, q)), "P is about Q");
}

/// No sign of a formula is left to the screen reader, which would spell it or leave it out.
TEST(Spoken, WorkedSolutionsOfEveryFamilyAreWordsThroughout) {
    Dice dice(20261130);
    int lines = 0;
    for (int kind = 0; kind < kQuestionKinds; ++kind)
        for (int i = 0; i < 8; ++i) {
            const Sketch sketch = someQuestion(dice, kind);
            const Solved solved = solve(sketch);
            const Worked worked = explain(sketch, solved, construct(sketch, solved));
            for (const Step& step : worked.steps) {
                for (const Working& working : step.workings) {
                    const std::string line = spoken(working);
                    for (const char* sign : {"√", "²", "=", "·", "(", "|", "θ", "γ", " / ", "⇒", "≈"})
                        EXPECT_EQ(line.find(sign), std::string::npos) << line;
                    ++lines;
                }
                const std::vector<std::string> all = spokenLines(step);
                EXPECT_GE(all.size(), step.workings.size()) << step.title;
            }
        }
    EXPECT_GT(lines, 300);
}

} // namespace TAILPOINT_FILE
} // namespace tailpoint
