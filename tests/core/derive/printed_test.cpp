// SPDX-License-Identifier: MIT
// Printed lines compute: who works out the printed numbers gets the printed result.
#include "core/derive/printed.h"
#include "core/quantity/decimals.h"
#include "tests/core/explain/questions.h"

#include <cstdlib>
#include <gtest/gtest.h>
#include <map>

namespace tailpoint {
namespace TAILPOINT_FILE {

using namespace testing;

constexpr int kCases = 20'000;
constexpr std::uint64_t kSeed = 20261129;

struct Sheet {
    Sketch sketch;
    Solved solved = solve(sketch);
    Things things{sketch};
    Chain chain;
    Values full;

    Sheet(Sketch made, const Route& route)
        : sketch(std::move(made)), chain(chainOf(sketch, solved, things, route)),
          full(evaluate(chain, givenValues(chain, sketch))) {}
    Printed print(Rounding rounding) const {
        Printing how;
        how.rounding = rounding;
        for (const Force& force : sketch.forces)
            how.scale += force.magnitude.value.value_or(0);
        how.scale += sketch.sum.magnitude.value.value_or(0);
        return printed(chain, full, sketch, how);
    }
    /// One unit in the last printed place.
    double lastPlace(const Decimal& number, int guard) const {
        const auto mark = std::min(number.text.find('e'), number.text.size());
        const std::string digits = number.text.substr(0, mark);
        const int exponent = mark < number.text.size() ? std::atoi(number.text.c_str() + mark + 1) : 0;
        const auto point = digits.find('.');
        if (point != std::string::npos)
            return std::pow(10.0, exponent - static_cast<int>(digits.size() - point - 1));
        const int whole = static_cast<int>(digits.size()) - (digits.front() == '-' ? 1 : 0);
        return std::pow(10.0, exponent + std::max(0, whole - sketch.figures - guard));
    }
    std::string of(const Printed& printed, const char* plain) const {
        for (std::size_t i = 0; i < chain.lines.size(); ++i)
            if (things.at(chain.lines[i].subject).plain == plain)
                return printed.number[i].text;
        return "no such line";
    }
};

/// By hand: 340 N at 25 degrees, 275 N at -40 degrees, worked with five figures and three decimals.
TEST(PrintedChain, CarriesTwoGuardFiguresFromLineToLine) {
    const Sheet sheet(sketch({force("P", 340, 25), force("Q", 275, -40)}),
                      {Route::Way::triangle, forceVector(0)});
    const Printed guarded = sheet.print(Rounding::guarded);
    EXPECT_TRUE(guarded.reached);
    EXPECT_EQ(guarded.guard, 2);
    EXPECT_EQ(sheet.of(guarded, "gamma"), "115.0"); // ends there
    EXPECT_EQ(sheet.of(guarded, "R^2"), "270255");  // 115600 + 75625 + 187000 * 0.42261826 = 270254.6
    EXPECT_EQ(sheet.of(guarded, "R"), "519.86");
    EXPECT_EQ(sheet.of(guarded, "sin beta"), "0.479426"); // 275 * 0.90630779 / 519.86
    EXPECT_EQ(sheet.of(guarded, "beta"), "28.648");
    EXPECT_EQ(sheet.of(guarded, "theta_R"), "-3.648");
}

TEST(PrintedChain, ByHandRoundsEveryValueAsItIsShown) {
    const Sheet sheet(sketch({force("P", 340, 25), force("Q", 275, -40)}),
                      {Route::Way::triangle, forceVector(0)});
    const Printed byHand = sheet.print(Rounding::hand);
    EXPECT_EQ(byHand.guard, 0);
    EXPECT_EQ(sheet.of(byHand, "R^2"), "270300");
    EXPECT_EQ(sheet.of(byHand, "R"), "520");
    EXPECT_EQ(sheet.of(byHand, "sin beta"), "0.4793"); // 275 * 0.90630779 / 520
    EXPECT_EQ(sheet.of(byHand, "beta"), "28.6");
    EXPECT_EQ(sheet.of(byHand, "theta_R"), "-3.6");
}

TEST(PrintedChain, PrintsATieAsTheTie) {
    // 345 sin 30 = 172.5 exactly: the component's three figures are a tie.
    const Sheet sheet(sketch({force("P", 345, 30), force("Q", 100, 0), force("S", 50, 90)}),
                      {Route::Way::components, kNobody});
    const Printed guarded = sheet.print(Rounding::guarded);
    for (std::size_t i = 0; i < sheet.chain.lines.size(); ++i)
        if (sheet.things.at(sheet.chain.lines[i].subject).plain == "P_y") {
            EXPECT_EQ(guarded.number[i].text, "172.5");
            EXPECT_TRUE(guarded.number[i].exactly);
        }
}

TEST(PrintedChain, ComputesLineByLineAndShortensToTheFullAnswer) {
    Dice dice(kSeed);
    int chains = 0, missed = 0;
    std::map<int, int> guards;
    for (int i = 0; i < kCases; ++i) {
        const Sketch sketch = someQuestion(dice, i % kQuestionKinds);
        const Solved solved = solve(sketch);
        for (const Route& route : routesOf(sketch, solved)) {
            const Sheet sheet(sketch, route);
            const Printed out = sheet.print(Rounding::guarded);
            ++chains;
            ASSERT_EQ(out.number.size(), sheet.chain.lines.size());
            if (!out.reached) {
                ++missed;
                continue;
            }
            ++guards[out.guard];
            const Paper paper(sketch, out.guard, 0);
            Values values;
            for (std::size_t g = 0; g < out.given.size(); ++g)
                values.set(sheet.chain.given[g], out.given[g].value);
            for (std::size_t l = 0; l < sheet.chain.lines.size(); ++l) {
                Line line = sheet.chain.lines[l];
                for (Case& one : line.cases)
                    paper.put(one.formula);
                const auto [taken, value] = evaluateLine(line, sheet.chain.unit, values);
                ASSERT_TRUE(value) << "seed " << kSeed << ", case " << i;
                ASSERT_EQ(taken, sheet.full.taken[l]);
                if (!out.number[l].exactly) { // ties are told within 1/1024 of a place
                    const auto gap = static_cast<double>(std::abs(*value - out.number[l].value));
                    ASSERT_LE(gap, (0.5 + 1.0 / 1000) * sheet.lastPlace(out.number[l], out.guard))
                        << "seed " << kSeed << ", case " << i << ", " << sheet.things.at(line.subject).plain;
                }
                values.set(line.subject, out.number[l].value);
            }
        }
    }
    for (const auto& [guard, count] : guards)
        RecordProperty("guard " + std::to_string(guard), count);
    EXPECT_GT(chains, kCases);
    EXPECT_GT(guards[2], chains / 2) << "two guard figures are what a reader mostly sees";
    EXPECT_LE(missed, chains / 2000);
}

} // namespace TAILPOINT_FILE
} // namespace tailpoint
