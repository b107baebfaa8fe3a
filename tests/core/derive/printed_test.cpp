// Printed lines compute: who works out the printed numbers gets the printed result.
#include "core/derive/printed.h"
#include "core/quantity/decimals.h"
#include "tests/core/explain/questions.h"

#include <cstdlib>
#include <gtest/gtest.h>
#include <map>

namespace tailpoint {
namespace {

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
    /// One unit in the last printed place.
    double lastPlace(const QuantityId& id, double value, int guard) const {
        const Dimension dimension = things.at(id).dimension;
        if (dimension == Dimension::angle)
            return std::pow(10.0,
                            -(sketch.angleDecimals + (sketch.angleUnit == AngleUnit::rad ? 2 : 0) + guard));
        const int wanted = sketch.figures + guard + (dimension == Dimension::force ? 0 : 1);
        const int figures = std::min(wanted, kMostPrinted);
        const double lead = value == 0 ? -300 : std::floor(std::log10(std::abs(value)));
        return std::pow(10.0, std::max(lead - figures + 1, -12.0 + (value == 0 ? 4 : 0)));
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
    const Printed guarded = printed(sheet.chain, sheet.full, sheet.sketch, Rounding::guarded);
    EXPECT_TRUE(guarded.reached);
    EXPECT_EQ(guarded.guard, 2);
    EXPECT_EQ(sheet.of(guarded, "gamma"), "115.000");
    EXPECT_EQ(sheet.of(guarded, "R^2"), "270255"); // 115600 + 75625 + 187000 * 0.42261826 = 270254.6
    EXPECT_EQ(sheet.of(guarded, "R"), "519.86");
    EXPECT_EQ(sheet.of(guarded, "sin beta"), "0.479426"); // 275 * 0.90630779 / 519.86
    EXPECT_EQ(sheet.of(guarded, "beta"), "28.648");
    EXPECT_EQ(sheet.of(guarded, "theta_R"), "-3.648");
}

TEST(PrintedChain, ByHandRoundsEveryValueAsItIsShown) {
    const Sheet sheet(sketch({force("P", 340, 25), force("Q", 275, -40)}),
                      {Route::Way::triangle, forceVector(0)});
    const Printed byHand = printed(sheet.chain, sheet.full, sheet.sketch, Rounding::hand);
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
    const Printed guarded = printed(sheet.chain, sheet.full, sheet.sketch, Rounding::guarded);
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
            const Printed out = printed(sheet.chain, sheet.full, sketch, Rounding::guarded);
            ++chains;
            ASSERT_EQ(out.number.size(), sheet.chain.lines.size());
            if (!out.reached) {
                ++missed;
                continue;
            }
            ++guards[out.guard];
            Values values = givenValues(sheet.chain, sketch);
            for (std::size_t l = 0; l < sheet.chain.lines.size(); ++l) {
                const Line& line = sheet.chain.lines[l];
                const auto [taken, value] = evaluateLine(line, sheet.chain.unit, values);
                ASSERT_TRUE(value) << "seed " << kSeed << ", case " << i;
                ASSERT_EQ(taken, sheet.full.taken[l]);
                if (!out.number[l].exactly &&
                    line.kind != LineKind::check) { // ties are told within 1/1024 of a place
                    const double gap = std::abs(static_cast<double>(*value) - out.number[l].value);
                    ASSERT_LE(gap, (0.5 + 1.0 / 1000) *
                                       sheet.lastPlace(line.subject, out.number[l].value, out.guard))
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

} // namespace
} // namespace tailpoint
