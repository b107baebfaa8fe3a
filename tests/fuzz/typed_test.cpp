// SPDX-License-Identifier: MIT
// What people type, by the thousand: a finite value in range, or one line that says why not.
#include "core/quantity/decimals.h"
#include "core/quantity/typed.h"
#include "tests/fuzz/mutations.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>

using namespace tailpoint;
using fuzz::Dice;

namespace TAILPOINT_FILE {

constexpr std::uint64_t kSeed = 31'700;
constexpr int kCases = 200'000;

void expectOneLine(const TypedError& error) {
    EXPECT_FALSE(error.message.empty());
    EXPECT_LE(error.message.size(), 400u);
    EXPECT_EQ(error.message.find_first_of("\n\r\t"), std::string::npos) << error.message;
}

void expectSound(double value) {
    EXPECT_TRUE(std::isfinite(value)) << value;
}

void expectSound(const TypedMagnitude& magnitude) {
    EXPECT_TRUE(std::isfinite(magnitude.value) && magnitude.value >= 0) << magnitude.value;
    if (magnitude.tolerance) {
        const auto [plus, minus, percent] = *magnitude.tolerance;
        EXPECT_TRUE(std::isfinite(plus) && plus >= 0) << plus;
        EXPECT_TRUE(std::isfinite(minus) && minus >= 0) << minus;
        EXPECT_TRUE(plus + minus > 0 && (!percent || plus == minus));
    }
}

void expectSound(const TypedDirection& direction) {
    switch (direction.form) {
    case TypedDirection::Form::angle:
        EXPECT_TRUE(std::isfinite(direction.angle)) << direction.angle;
        break;
    case TypedDirection::Form::slope:
        EXPECT_TRUE(std::isfinite(direction.run) && std::isfinite(direction.rise));
        EXPECT_TRUE(direction.run != 0 || direction.rise != 0);
        break;
    case TypedDirection::Form::bearing:
        EXPECT_TRUE(direction.degrees >= 0 && direction.degrees <= 90) << direction.degrees;
        EXPECT_TRUE(direction.from == 'N' || direction.from == 'S') << direction.from;
        EXPECT_TRUE(direction.toward == 'E' || direction.toward == 'W') << direction.toward;
        break;
    }
}

/// 1 when taken, 0 when refused.
template <class T>
int expectTakenOrRefused(const Typed<T>& typed) {
    if (const auto* error = std::get_if<TypedError>(&typed)) {
        expectOneLine(*error);
        return 0;
    }
    expectSound(std::get<T>(typed));
    return 1;
}

template <class Parse>
void sweep(Parse parse) {
    fuzz::announceSeedOnCrash();
    int taken = 0;
    for (int i = 0; i < kCases && !::testing::Test::HasFailure(); ++i) {
        const std::uint64_t seed = kSeed + static_cast<std::uint64_t>(i);
        fuzz::setCurrentSeed(seed);
        const std::string text = fuzz::typedText(seed);
        SCOPED_TRACE("seed " + std::to_string(seed) + ": '" + fuzz::escaped(text) + "'");
        taken += expectTakenOrRefused(parse(text));
    }
    if (!::testing::Test::HasFailure()) {
        EXPECT_GT(taken, kCases / 100) << "the sweep hardly ever makes a text that is taken";
    }
}

/// Any finite double, all exponents alike.
double anyDouble(Dice& dice) {
    const double mantissa = dice.between(1, 2) * (dice.oneIn(2) ? 1 : -1);
    return std::ldexp(mantissa, static_cast<int>(dice.below(2000)) - 1000);
}

std::string withComma(std::string text) {
    std::replace(text.begin(), text.end(), '.', ',');
    return text;
}

TEST(FuzzTyped, NumbersAreFiniteOrRefusedInOneLine) {
    sweep([](const std::string& text) { return parseNumber(text); });
}

TEST(FuzzTyped, MagnitudesAreNotNegativeOrRefusedInOneLine) {
    sweep([](const std::string& text) { return parseMagnitude(text, ForceUnit::kN); });
}

TEST(FuzzTyped, DirectionsAreSoundOrRefusedInOneLine) {
    sweep([](const std::string& text) { return parseDirection(text, AngleUnit::deg); });
}

/// A comma in it may part thousands: one to three digits before it, no zero first, and three after it.
bool mayPartThousands(std::string_view text) {
    text.remove_prefix(text.starts_with('-') ? 1 : 0);
    const std::size_t comma = text.find(',');
    if (comma == std::string_view::npos || comma < 1 || comma > 3 || text[0] == '0')
        return false;
    const std::string_view part = text.substr(comma + 1);
    return std::min(part.find_first_not_of("0123456789"), part.size()) == 3;
}

TEST(FuzzTyped, ACommaBeforeThreeDigitsIsRefusedWithBothReadingsAndEachOfThemReads) {
    int asked = 0;
    for (int i = 0; i < kCases / 10 && !HasFailure(); ++i) {
        Dice dice(kSeed + static_cast<std::uint64_t>(i));
        const std::string whole = std::to_string(dice.below(1200)), part = std::to_string(dice.below(12'000));
        const std::string text = whole + "," + part;
        const auto read = parseNumber(text);
        const auto* error = std::get_if<TypedError>(&read);
        ASSERT_EQ(error != nullptr, mayPartThousands(text)) << text;
        if (!error)
            continue;
        ++asked;
        EXPECT_NE(error->message.find(whole + "." + part), std::string::npos) << error->message;
        EXPECT_NE(error->message.find(whole + part + ":"), std::string::npos) << error->message;
        ASSERT_EQ(error->readings, (std::vector<std::string>{whole + "." + part, whole + part}));
        EXPECT_EQ(std::get<double>(parseNumber(error->readings[1])), std::stod(whole + part));
    }
    EXPECT_GT(asked, 100);
}

TEST(FuzzTyped, TheShortestDecimalOfANumberReadsBackAsThatNumberWithPointOrComma) {
    for (int i = 0; i < kCases / 10 && !HasFailure(); ++i) {
        Dice dice(kSeed + static_cast<std::uint64_t>(i));
        const double value = anyDouble(dice);
        const std::string text = shortest(value);
        for (const std::string& typed : {text, withComma(text)}) {
            if (mayPartThousands(typed))
                continue;
            const auto read = parseNumber(typed);
            ASSERT_TRUE(std::holds_alternative<double>(read))
                << typed << ": " << std::get<TypedError>(read).message;
            EXPECT_EQ(std::get<double>(read), value) << typed;
        }
    }
}

TEST(FuzzTyped, AVeryLongTextIsRefusedInOneBearableLine) {
    for (const char* piece : {"9", "x", "1 ", ".", "\xE2\x88\x92", "\xFF"}) {
        std::string text;
        for (int i = 0; i < 100'000; ++i)
            text += piece;
        expectTakenOrRefused(parseNumber(text));
        expectTakenOrRefused(parseMagnitude(text, ForceUnit::N));
        expectTakenOrRefused(parseDirection(text, AngleUnit::deg));
    }
}

} // namespace TAILPOINT_FILE
