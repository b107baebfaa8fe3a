// SPDX-License-Identifier: MIT
// What a formula is worth: exact where the hand is exact, and nothing where arithmetic has no answer.
#include "core/formula/formula.h"

#include <cmath>
#include <gtest/gtest.h>
#include <numbers>

namespace tailpoint {
namespace TAILPOINT_FILE {

constexpr AngleUnit deg = AngleUnit::deg, gon = AngleUnit::gon, rad = AngleUnit::rad;

Formula newtons(double value) {
    return number(value, "", "N");
}
Formula degrees(double value) {
    return number(value, "", "°");
}
Formula plain(double value) {
    return number(value, "");
}

struct Row {
    const char* name;
    Formula formula;
    AngleUnit unit;
    long double value;
};

TEST(FormulaValue, IsExactWhereTheAngleHasExactSines) {
    const long double thirdRoot = std::sqrt(3.0L);
    const Row rows[] = {
        {"345 sin 30", product(newtons(345), apply("sin", degrees(30))), deg, 172.5L},
        {"345 sin 150", product(newtons(345), apply("sin", degrees(150))), deg, 172.5L},
        {"345 cos(-60)", product(newtons(345), apply("cos", degrees(-60))), deg, 172.5L},
        {"cos 90", apply("cos", degrees(90)), deg, 0},
        {"sin 180", apply("sin", degrees(180)), deg, 0},
        {"cos 100 gon", apply("cos", plain(100)), gon, 0},
        {"tan 45", apply("tan", degrees(45)), deg, 1},
        {"tan 50 gon", apply("tan", plain(50)), gon, 1},
        {"sin(750), beyond two turns", apply("sin", degrees(750)), deg, 0.5L},
        {"cos 150", apply("cos", degrees(150)), deg, -thirdRoot / 2},
        {"arcsin 1/2", apply("arcsin", plain(0.5)), deg, 30},
        {"arcsin(-1)", apply("arcsin", plain(-1)), deg, -90},
        {"arccos(-1/2)", apply("arccos", plain(-0.5)), deg, 120},
        {"arccos 0", apply("arccos", plain(0)), gon, 100},
        {"arccos(-1)", apply("arccos", plain(-1)), deg, 180},
        {"arctan(-1)", apply("arctan", plain(-1)), deg, -45},
        {"a difference of directions", sum(degrees(25), negative(degrees(-40))), deg, 65},
        {"a square and its root", root(sum(power(newtons(30), 2), power(newtons(40), 2))), deg, 50},
        {"an absolute value", absolute(newtons(-2.5)), deg, 2.5L},
        {"a quotient in extended precision", over(newtons(1), newtons(3)), deg, 1.0L / 3},
    };
    for (const Row& row : rows) {
        const auto value = evaluate(row.formula, row.unit);
        ASSERT_TRUE(value) << row.name;
        EXPECT_EQ(*value, row.value) << row.name;
    }
}

/// By hand: 340 N and 275 N at 65°, sin and cos from a table of ten figures.
TEST(FormulaValue, FollowsATableOfSines) {
    const Formula cosines =
        root(sum(power(newtons(340), 2), power(newtons(275), 2),
                 negative(product(count(2), newtons(340), newtons(275),
                                  apply("cos", degrees(115)))))); // cos 115 = -0.4226182617
    EXPECT_NEAR(static_cast<double>(*evaluate(cosines, deg)), 519.8602, 1e-4);
    EXPECT_NEAR(static_cast<double>(*evaluate(apply("sin", degrees(65)), deg)), 0.9063077870, 5e-11);
    EXPECT_NEAR(static_cast<double>(*evaluate(apply("arctan", plain(0.75)), deg)), 36.86989765, 5e-9);
    EXPECT_NEAR(static_cast<double>(*evaluate(apply("arctan", plain(0.75)), rad)), 0.6435011088, 5e-11);
    EXPECT_NEAR(static_cast<double>(*evaluate(apply("arcsin", plain(0.6)), gon)), 40.96655294, 5e-9);
    EXPECT_NEAR(static_cast<double>(*evaluate(apply("sin", plain(0.5)), rad)), 0.4794255386, 5e-11);
}

TEST(FormulaValue, IsNoneWhereArithmeticHasNone) {
    const Formula none[] = {
        over(count(1), count(0)),
        over(count(0), count(0)),
        apply("arcsin", plain(1.5)),
        apply("arccos", plain(-1.0000001)),
        root(plain(-1)),
        apply("tan", degrees(90)),
        sum(count(1), root(plain(-1))),
        product(count(0), over(count(1), count(0))),
        apply("arcosh", plain(2)),
        magnitudeSymbol("P"),
        inWords("or"),
        equal(count(1), count(1)),
    };
    for (const Formula& formula : none)
        EXPECT_FALSE(evaluate(formula, deg)) << toText(formula);
}

TEST(FormulaValue, TakesSymbolsByTheirIdFromALookup) {
    const VectorId p = forceVector(0), q = forceVector(1);
    const auto sized = [](const char* name, VectorId of) {
        Formula made = magnitudeSymbol(name);
        made.id = magnitudeId(of);
        return made;
    };
    const auto lookUp = [&](const Formula& symbol) -> std::optional<long double> {
        return symbol.id == magnitudeId(p)   ? std::optional(3.0L)
               : symbol.id == magnitudeId(q) ? std::optional(4.0L)
                                             : std::nullopt;
    };
    EXPECT_EQ(evaluate(root(sum(power(sized("P", p), 2), power(sized("P", q), 2))), deg, lookUp), 5.0L)
        << "two symbols of one letter, told apart by their ids";
    EXPECT_FALSE(evaluate(magnitudeSymbol("P"), deg, lookUp)) << "a symbol that stands for nothing";
    EXPECT_NE(magnitudeSymbol("P"), sized("P", p));
}

TEST(FormulaValue, TakesAPartThatStandsForAQuantityAsThatQuantity) {
    Formula square = power(magnitudeSymbol("R"), 2);
    square.id = {What::square, kSumVector};
    const auto known = [&](const Formula& part) -> std::optional<long double> {
        return part.id == square.id ? std::optional(2500.0L) : std::nullopt;
    };
    EXPECT_EQ(evaluate(root(square), deg, known), 50.0L);
    EXPECT_FALSE(evaluate(root(square), deg)) << "R itself isn't known yet";
    EXPECT_EQ(evaluate(root(power(newtons(50), 2)), deg, known), 50.0L);
}

TEST(FormulaValue, SaysWhetherARelationHolds) {
    EXPECT_EQ(holds(related(count(1), Relation::less, count(2), Relation::lessOrEqual, count(2)), deg), true);
    EXPECT_EQ(holds(related(count(1), Relation::less, count(2), Relation::less, count(2)), deg), false);
    EXPECT_EQ(holds(related(apply("sin", degrees(30)), Relation::equal, plain(0.5)), deg), true);
    EXPECT_EQ(holds(related(degrees(190), Relation::greater, degrees(180)), deg), true);
    EXPECT_EQ(holds(related(degrees(180), Relation::greaterOrEqual, degrees(180)), deg), true);
    EXPECT_FALSE(holds(count(1), deg)) << "no relation";
    EXPECT_FALSE(holds(related(count(1), Relation::approximately, count(1)), deg)) << "nobody's to decide";
    EXPECT_FALSE(holds(related(root(plain(-1)), Relation::less, count(1)), deg)) << "a side has no value";
}

} // namespace TAILPOINT_FILE
} // namespace tailpoint
