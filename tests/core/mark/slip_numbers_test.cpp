// SPDX-License-Identifier: MIT
#include "core/mark/slip_numbers.h"
#include "core/practice/problem.h"
#include "tests/support/sketches.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <array>
#include <cmath>
#include <cstdio>

namespace tailpoint::testing {
namespace TAILPOINT_FILE {

/// One of every kind that marking knows, none of them drawn by the generator.
std::vector<Sketch> fixedQuestions() {
    std::vector<Sketch> all{
        sketch({force("P", 340, 25), force("Q", 275, -40)}),
        sketch({force("P", 18, 10), force("Q", 12.5, 128)}),
        sketch({force("P", 100, 120), force("Q", 80, 75), force("S", 60, 160)}),
        sketch({slope("P", 65, 5, 12), slope("Q", 50, -4, 3), slope("S", 40, 0, -1)}),
        sketch({bearing("P", 140, 'N', 35, 'E'), bearing("Q", 95, 'S', 62, 'E')}),
        sketch({force("P", 68, 30), force("Q", kToFind, kToFind)}, force("R", 120, 75)),
        sketch({force("P", kToFind, 50), force("Q", kToFind, -25)}, force("R", 300, 10)),
        balanced({force("W", 237, -90), force("A", kToFind, 30), force("B", kToFind, 125)}),
        balanced({force("W", 400, -90), either(force("A", kToFind, -20)), either(force("B", kToFind, 50))}),
        balanced({force("P", 98, -115.5), force("Q", 168, -144.5), force("H", kToFind, kToFind)}),
        smallest(sketch({force("P", 122, 25), force("Q", kToFind, kToFind)}, force("R", kToFind, 60)), "Q"),
        sketch({force("P", kToFind, 37), force("Q", 269, kToFind)}, force("R", 335, 78))};
    all[1].forceUnit = ForceUnit::kN;
    all[5].reference = {90, Sense::cw};
    return all;
}

/// As many digits as every machine has alike.
std::string rounded(double value, int digits) {
    if (std::abs(value) < 1e-9)
        return "0";
    std::array<char, 40> text{};
    std::snprintf(text.data(), text.size(), "%.*g", digits, value);
    return text.data();
}

std::string told(const SlipTable& table, std::string_view id, const AskedNumbers& numbers) {
    std::string line(id);
    for (std::size_t cell = 0; cell < table.cells(); ++cell)
        line += numbers.values[cell]
                    ? ' ' + rounded(*numbers.values[cell], 9) + '~' + rounded(numbers.reach[cell], 4)
                    : " -";
    return line + '\n';
}

/// FNV-1a, 64 bits. Source: draft-eastlake-fnv.
std::uint64_t digestOf(const std::string& text) {
    std::uint64_t hash = 14695981039346656037ULL;
    for (const char c : text)
        hash = (hash ^ static_cast<unsigned char>(c)) * 1099511628211ULL;
    return hash;
}

/// Which problems are drawn hangs on these numbers: whoever moves one raises kSlipVersion, and puts the new
/// digest here. (The digest is what the program gives; what is right about it the other tests say.)
TEST(SlipNumbers, AreThoseOfTheirVersion) {
    std::string all;
    std::size_t slips = 0;
    for (const Sketch& question : fixedQuestions()) {
        const auto table = slipTable(question, solve(question));
        ASSERT_TRUE(table);
        all += told(*table, "right", table->right);
        for (const SlipNumbers& slip : table->slips)
            all += told(*table, slip.id, slip.numbers);
        slips += table->slips.size();
    }
    EXPECT_GT(slips, 500U);
    EXPECT_EQ(kSlipVersion, 0);
    EXPECT_EQ(digestOf(all), 3412342337765382982ULL);
}

/// Whoever marks a question has its table beside it: the same one, however it is marked.
TEST(SlipNumbers, OfAMarkerAreThoseOfItsQuestion) {
    MarkOptions options;
    options.signedSenses = options.bothAnswers = true;
    options.onlySlips = {"sign-of-direction", "component-sign", "magnitudes-added"};
    const std::vector<std::string_view> ids(options.onlySlips.begin(), options.onlySlips.end());
    std::size_t slips = 0;
    for (const Sketch& question : fixedQuestions()) {
        const Solved solved = solve(question);
        const auto own = slipTable(question, solved, ids), of = slipTable(Marker(question, solved, options));
        ASSERT_TRUE(own && of);
        EXPECT_EQ(told(*of, "right", of->right), told(*own, "right", own->right));
        ASSERT_EQ(of->slips.size(), own->slips.size());
        for (std::size_t i = 0; i < own->slips.size(); ++i) {
            EXPECT_EQ(told(*of, of->slips[i].id, of->slips[i].numbers),
                      told(*own, own->slips[i].id, own->slips[i].numbers));
            EXPECT_EQ(of->slips[i].at, own->slips[i].at);
            EXPECT_EQ(of->slips[i].against, own->slips[i].against);
        }
        slips += own->slips.size();
    }
    EXPECT_GT(slips, 20U);
    const Sketch none = sketch({force("P", 340, 25), force("Q", 100, kToFind)}, force("R", kToFind, 0));
    EXPECT_FALSE(slipTable(Marker(none, solve(none)))); // 340 sin 25 = 143.7 > 100: no triangle
}

const SlipNumbers* firstOf(const SlipTable& table, std::string_view id, const QuantityId& at) {
    const auto found = std::find_if(table.slips.begin(), table.slips.end(), [&](const SlipNumbers& one) {
        return one.id == id && one.at && one.at->what == at.what && one.at->of == at.of;
    });
    return found == table.slips.end() ? nullptr : &*found;
}

TEST(SlipNumbers, SayWhereTheSlipIsMade) {
    const Sketch three = sketch({force("P", 100, 120), force("Q", 80, 75), force("S", 60, 160)});
    const auto table = slipTable(three, solve(three));
    ASSERT_TRUE(table);
    for (std::size_t i = 0; i < 3; ++i) {
        EXPECT_TRUE(firstOf(*table, "force-left-out", {What::magnitude, forceVector(i)})) << i;
        EXPECT_TRUE(firstOf(*table, "component-sign", {What::x, forceVector(i)})) << i;
        EXPECT_TRUE(firstOf(*table, "sign-of-direction", {What::direction, forceVector(i)})) << i;
    }
    // without Q: (100 cos 120° + 60 cos 160°, 100 sin 120° + 60 sin 160°), 150.972 N at 134.801° (Python)
    const SlipNumbers* left = firstOf(*table, "force-left-out", {What::magnitude, forceVector(1)});
    EXPECT_NEAR(left->numbers.values[0].value_or(0), 150.972, 0.001);
    EXPECT_NEAR(left->numbers.values[1].value_or(0), 134.801, 0.001);
}

} // namespace TAILPOINT_FILE
} // namespace tailpoint::testing
