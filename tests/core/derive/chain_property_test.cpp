// SPDX-License-Identifier: MIT
// Every line of every chain against the solver, over seeded questions of every family and every route.
#include "tests/core/derive/truth.h"
#include "tests/core/explain/questions.h"

#include <cstdlib>
#include <gtest/gtest.h>
#include <map>

namespace tailpoint {
namespace TAILPOINT_FILE {

using namespace testing;

constexpr int kCases = 100'000;
constexpr std::uint64_t kSeed = 20261128;
constexpr double kNeedle = 0.1 * std::numbers::pi / 180; ///< radians: the header's 0.1°

std::string nameOfRoute(const Route& route) {
    return route.way == Route::Way::triangle     ? "triangle"
           : route.way == Route::Way::components ? "components"
                                                 : "parallelograms";
}

struct Derived {
    int number;
    const Sketch& sketch;
    const Solved& solved;
    const Things& things;
    Chain chain;
    Values values;
    Truth truth;

    std::string name(const Line& line) const {
        return "seed " + std::to_string(kSeed) + ", case " + std::to_string(number) + ", " +
               nameOfRoute(chain.route) + ", " + things.at(line.subject).plain;
    }
    /// Of a quantity: what an error is a part of.
    double scaleOf(const QuantityId& id) const {
        switch (things.at(id).dimension) {
        case Dimension::force:
            return truth.scale();
        case Dimension::forceSquared:
            return truth.scale() * truth.scale();
        case Dimension::angle:
            return truth.turn() / 2;
        case Dimension::number:
            break;
        }
        const double value = truth.valueOf(id, chain);
        return 1 + value * value; // a tangent grows as its square
    }
    /// How far two values of it lie apart; directions round the turn.
    double apart(const QuantityId& id, double a, double b) const {
        const bool round = id.what == What::direction || id.what == What::fromX;
        return std::abs(round ? std::remainder(a - b, truth.turn()) : a - b);
    }
};

/// Calls `check` with every route of every question that has an answer.
template <class Check>
void forEachChain(int cases, Check check) {
    Dice dice(kSeed);
    for (int i = 0; i < cases && !::testing::Test::HasFailure(); ++i) {
        const Sketch sketch = someQuestion(dice, i % kQuestionKinds);
        const Solved solved = solve(sketch);
        const Things things(sketch);
        const bool swapped =
            solved.solutions.size() == 2 &&
            (solved.solutions[0].sum.turned ||
             std::any_of(solved.solutions[0].forces.begin(), solved.solutions[0].forces.end(),
                         [](const SolvedForce& force) { return force.turned; })) &&
            !solved.solutions[1].sum.turned &&
            std::none_of(solved.solutions[1].forces.begin(), solved.solutions[1].forces.end(),
                         [](const SolvedForce& force) { return force.turned; });
        for (const Route& route : routesOf(sketch, solved)) {
            Chain chain = chainOf(sketch, solved, things, route);
            Values values = evaluate(chain, givenValues(chain, sketch));
            check(Derived{i, sketch, solved, things, std::move(chain), std::move(values),
                          Truth(sketch, solved, swapped ? 1 : 0)});
        }
    }
}

/// How much the line's result moves when its inputs move by kLineError of their scales: its own condition.
double ownCondition(const Derived& d, const Line& line, const Values& exact, std::uint8_t taken) {
    std::vector<QuantityId> inputs;
    const SymbolLookup collect = [&](const Formula& part) -> std::optional<long double> {
        inputs.push_back(part.id);
        return exact.at(part.id);
    };
    const Formula& formula = line.cases[taken].formula;
    const auto plain = evaluate(formula, d.chain.unit, collect);
    double moved = 0;
    for (const QuantityId& input : inputs)
        for (const double sign : {-1.0, 1.0}) {
            const auto by = [&](const Formula& part) -> std::optional<long double> {
                const auto value = exact.at(part.id);
                return value && part.id == input ? *value + sign * kLineError * d.scaleOf(input) : value;
            };
            const auto other = evaluate(formula, d.chain.unit, by);
            if (!plain || !other)
                return std::numeric_limits<double>::infinity(); // within an error of having no value
            moved += static_cast<double>(std::fabs(*other - *plain));
        }
    return moved;
}

TEST(ChainProperty, EveryLineIsTheSolversValue) {
    std::map<std::string, int> routes, kinds;
    int lines = 0, steep = 0;
    forEachChain(kCases, [&](const Derived& d) {
        ++routes[nameOfRoute(d.chain.route)];
        ASSERT_FALSE(d.chain.lines.empty()) << d.number << " " << nameOfRoute(d.chain.route);
        if (d.truth.narrowest() < kNeedle)
            return;
        const bool isSteep = d.truth.steepest() < kNeedle;
        steep += isSteep ? 1 : 0;
        for (const Line& line : d.chain.lines) {
            const auto value = d.values.at(line.subject);
            ASSERT_TRUE(value) << d.name(line);
            const double truth = d.truth.valueOf(line.subject, d.chain);
            const double slack = (isSteep ? kSteepError : kLineError) * d.scaleOf(line.subject);
            ASSERT_LE(d.apart(line.subject, static_cast<double>(*value), truth), slack)
                << d.name(line) << ": " << static_cast<double>(*value) << " for " << truth;
            ++lines;
        }
    });
    EXPECT_GT(routes["triangle"], kCases / 2);
    EXPECT_GT(routes["components"], kCases / 2);
    EXPECT_GT(routes["parallelograms"], kCases / 100);
    EXPECT_GT(lines, 10 * kCases);
    EXPECT_LT(steep, kCases / 50);
}

TEST(ChainProperty, InNeedlesEveryLineIsGoodToItsOwnCondition) {
    int needles = 0;
    forEachChain(kCases, [&](const Derived& d) {
        if (d.truth.narrowest() >= kNeedle || !d.truth.isWhole())
            return;
        ++needles;
        Values exact = givenValues(d.chain, d.sketch);
        for (const Line& line : d.chain.lines)
            exact.set(line.subject, d.truth.valueOf(line.subject, d.chain));
        for (std::size_t i = 0; i < d.chain.lines.size(); ++i) {
            const Line& line = d.chain.lines[i];
            if (d.values.taken[i] == kNoCase)
                continue; // an earlier line has no value: its own sine was above 1
            const auto lookUp = [&](const Formula& part) { return exact.at(part.id); };
            const auto value = evaluate(line.cases[d.values.taken[i]].formula, d.chain.unit, lookUp);
            const double condition = ownCondition(d, line, exact, d.values.taken[i]);
            if (!value)
                continue;
            const double truth = d.truth.valueOf(line.subject, d.chain);
            ASSERT_LE(d.apart(line.subject, static_cast<double>(*value), truth),
                      kLineError * d.scaleOf(line.subject) + condition)
                << d.name(line) << ": " << static_cast<double>(*value) << " for " << truth;
        }
    });
    EXPECT_GT(needles, 20);
}

/// Symbols, and parts that stand for a quantity as a whole.
template <class Visit>
void forEachQuantity(const Formula& formula, Visit visit) {
    if (formula.id.what != What::none || formula.kind == FormulaKind::symbol)
        return visit(formula);
    for (const Formula& part : formula.parts)
        forEachQuantity(part, visit);
}

TEST(ChainProperty, EveryLineStandsOnEarlierOnesAlone) {
    forEachChain(3000, [&](const Derived& d) {
        std::vector<QuantityId> known = d.chain.given;
        const auto isKnown = [&](const QuantityId& id) {
            return std::find(known.begin(), known.end(), id) != known.end();
        };
        for (const QuantityId& given : d.chain.given)
            ASSERT_EQ(d.things.at(given).role, Thing::Role::given)
                << d.number << " " << d.things.at(given).plain;
        for (const Line& line : d.chain.lines) {
            ASSERT_FALSE(isKnown(line.subject)) << d.name(line) << " is written twice";
            for (const Case& one : line.cases) {
                for (const Formula& condition : one.when)
                    forEachQuantity(condition, [&](const Formula& part) {
                        ASSERT_TRUE(isKnown(part.id)) << d.name(line) << " is decided by " << toText(part);
                    });
                forEachQuantity(one.formula, [&](const Formula& part) {
                    ASSERT_TRUE(isKnown(part.id)) << d.name(line) << " stands on " << toText(part);
                });
            }
            known.push_back(line.subject);
        }
    });
}

TEST(ChainProperty, WhatIsAskedCanCarryTheSolversOwnDigits) {
    forEachChain(6000, [&](const Derived& d) {
        const Overrides solved = solvedValues(d.sketch, d.solved);
        const Values values = evaluate(d.chain, givenValues(d.chain, d.sketch), solved);
        int asked = 0;
        for (const auto& [id, value] : solved) {
            ASSERT_EQ(values.at(id), value) << d.number << " " << d.things.at(id).plain;
            ASSERT_EQ(d.things.at(id).role, Thing::Role::asked);
            ++asked;
        }
        ASSERT_GE(asked, d.solved.solutions.size() == 2 ? 4 : 1) << d.number;
    });
}

} // namespace TAILPOINT_FILE
} // namespace tailpoint
