// SPDX-License-Identifier: MIT
#include "core/practice/scheme.h"
#include "tests/support/sketches.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <array>
#include <set>

namespace tailpoint::testing {
namespace TAILPOINT_FILE {

Sketch raft() {
    return sketch({force("P", 340, 25), force("Q", 275, -40)});
}

const SlipNumber* numberOf(const Scheme& scheme, const std::string& name, std::string_view slip) {
    for (const SlipNumber& one : scheme.numbers)
        if (one.name == name && std::find(one.slips.begin(), one.slips.end(), slip) != one.slips.end())
            return &one;
    return nullptr;
}

TEST(PracticeScheme, HasTheRightAnswersAndTheirPoints) {
    const Scheme scheme = schemeOf(raft(), {});
    ASSERT_EQ(scheme.answers.size(), 2U);
    EXPECT_EQ(scheme.answers[0].name, "R");
    EXPECT_EQ(scheme.answers[0].texts, std::vector<std::string>{"520 N"}); // 519.86 by Python
    EXPECT_EQ(scheme.answers[1].name, "theta_R");
    EXPECT_EQ(scheme.answers[1].texts, std::vector<std::string>{"-3.6°"}); // -3.648
    EXPECT_EQ(scheme.of, 2);
    EXPECT_EQ(rightAnswers(scheme), (std::vector<std::string>{"R = 520 N", "theta_R = -3.6°"}));
}

TEST(PracticeScheme, TellsWhatTheCommonSlipsGive) {
    constexpr std::array<std::string_view, 4> slips{"supplement-in-cosines", "right-triangle-assumed",
                                                    "magnitudes-added", "wrong-turn"};
    const Scheme scheme = schemeOf(raft(), {}, slips);
    // sqrt(P² + Q² - 2PQ cos 65°) = 334.96, sqrt(P² + Q²) = 437.29, P + Q = 615, by Python
    ASSERT_TRUE(numberOf(scheme, "R", "supplement-in-cosines"));
    EXPECT_EQ(numberOf(scheme, "R", "supplement-in-cosines")->text, "335 N");
    EXPECT_EQ(toText(labelOf(*numberOf(scheme, "R", "supplement-in-cosines"))),
              "supplement in the law of cosines: angle opposite to R");
    ASSERT_TRUE(numberOf(scheme, "R", "right-triangle-assumed"));
    EXPECT_EQ(numberOf(scheme, "R", "right-triangle-assumed")->text, "437 N");
    ASSERT_TRUE(numberOf(scheme, "R", "magnitudes-added"));
    EXPECT_EQ(numberOf(scheme, "R", "magnitudes-added")->text, "615 N");
    ASSERT_TRUE(numberOf(scheme, "theta_R", "wrong-turn"));
    EXPECT_EQ(numberOf(scheme, "theta_R", "wrong-turn")->text, "3.6°");
    EXPECT_EQ(numberOf(scheme, "R", "wrong-turn"), nullptr);
    // one of two quantities is wrong, the other right
    EXPECT_EQ(numberOf(scheme, "theta_R", "wrong-turn")->points, 1);
}

TEST(PracticeScheme, ListsTheNumbersOfEachQuantityAscending) {
    const Scheme scheme = schemeOf(raft(), {});
    EXPECT_GT(scheme.numbers.size(), 10U);
    for (std::size_t i = 1; i < scheme.numbers.size(); ++i)
        if (scheme.numbers[i].name == scheme.numbers[i - 1].name) {
            EXPECT_LE(scheme.numbers[i - 1].value, scheme.numbers[i].value);
            EXPECT_FALSE(scheme.numbers[i - 1].text == scheme.numbers[i].text &&
                         scheme.numbers[i - 1].points == scheme.numbers[i].points)
                << scheme.numbers[i].text;
        }
    for (const SlipNumber& one : scheme.numbers)
        EXPECT_NE(one.text, one.name == "R" ? "520 N" : "-3.6°") << toText(labelOf(one));
}

TEST(PracticeScheme, OfTwoAnswersBothAreStated) {
    const auto made = problem({"two-answers", 1, 12});
    ASSERT_TRUE(made);
    const Scheme scheme = schemeOf(*made);
    ASSERT_EQ(scheme.answers.size(), 2U);
    EXPECT_EQ(scheme.answers[0].texts.size(), 2U);
    EXPECT_TRUE(markOptionsFor(*made).bothAnswers);
    const Marker marker(made->sketch, solve(made->sketch), markOptionsFor(*made));
    const auto read = marker.read(rightAnswers(scheme));
    ASSERT_TRUE(std::holds_alternative<Attempt>(read)) << std::get<AttemptFault>(read).message;
    const Marking marking = marker.mark(std::get<Attempt>(read));
    EXPECT_EQ(marking.verdict, Verdict::right);
    EXPECT_EQ(marking.points, scheme.of);
}

/// W = 400 N down, A along −20°, B along 50°, at rest: A = −273.616 N, B = 400 N. With one term's sign turned
/// A = ±514.23 N and B = ±751.75 N; sine and cosine exchanged A = 326.08 N, B = 145.59 N, or both negative
/// where the load's sign goes lost with it (Python, mpmath).
TEST(PracticeScheme, WhereSensesCountTheNumbersAreSigned) {
    const Sketch bracket =
        balanced({force("W", 400, -90), either(force("A", kToFind, -20)), either(force("B", kToFind, 50))});
    MarkOptions options;
    options.signedSenses = true;
    constexpr std::array<std::string_view, 3> slips{"halved-load", "sine-cosine-exchanged", "equation-sign"};
    const Scheme scheme = schemeOf(bracket, options, slips);
    ASSERT_TRUE(scheme.isSigned);
    EXPECT_EQ(rightAnswers(scheme), (std::vector<std::string>{"A = -274 N", "B = 400 N"}));
    const auto numbersOf = [&](const std::string& name, std::string_view slip) {
        std::set<std::string> texts;
        for (const SlipNumber& one : scheme.numbers)
            if (one.name == name && std::find(one.slips.begin(), one.slips.end(), slip) != one.slips.end())
                texts.insert(one.text);
        return texts;
    };
    EXPECT_EQ(numbersOf("A", "halved-load"), std::set<std::string>{"\u00B1200 N"});
    EXPECT_EQ(numbersOf("A", "sine-cosine-exchanged"), (std::set<std::string>{"-326 N", "326 N"}));
    EXPECT_EQ(numbersOf("B", "sine-cosine-exchanged"), (std::set<std::string>{"-146 N", "146 N"}));
    EXPECT_EQ(numbersOf("A", "equation-sign"), (std::set<std::string>{"-514 N", "514 N"}));
    EXPECT_EQ(numbersOf("B", "equation-sign"), (std::set<std::string>{"-752 N", "752 N"}));
    EXPECT_EQ(numbersOf("A", "sense-turned"), std::set<std::string>{"274 N"}); // whatever slips are likely
    EXPECT_EQ(numbersOf("B", "sense-turned"), std::set<std::string>{"-400 N"});
    const Marker marker(bracket, solve(bracket), options);
    for (const SlipNumber& one : scheme.numbers) { // each is wrong as it is listed, and its slip named
        if (one.isEitherSense)
            continue;
        const auto read = marker.read({one.name + " = " + one.text});
        const Marking marking = marker.mark(std::get<Attempt>(read));
        EXPECT_FALSE(marking.isRight()) << one.name << ' ' << one.text;
    }
}

TEST(PracticeScheme, ALabelSaysWhereTheSlipIsMade) {
    const Sketch three = sketch({force("P", 100, 120), force("Q", 80, 75), force("S", 60, 160)});
    constexpr std::array<std::string_view, 2> slips{"force-left-out", "component-sign"};
    std::set<std::string> labels;
    for (const SlipNumber& one : schemeOf(three, {}, slips).numbers)
        labels.insert(toText(labelOf(one)));
    for (const char* label : {"a force left out: P", "a force left out: Q", "a force left out: S",
                              "sign of a component: P_x", "sign of a component: S_y"})
        EXPECT_TRUE(labels.count(label)) << label;
}

TEST(PracticeScheme, AQuestionWithoutAnAnswerHasNone) {
    EXPECT_TRUE(schemeOf(sketch({force("P", 340, 25), force("Q", kToFind, kToFind)}), {}).answers.empty());
}

} // namespace TAILPOINT_FILE
} // namespace tailpoint::testing
