#include "core/practice/scheme.h"
#include "tests/support/sketches.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <array>

namespace tailpoint::testing {
namespace {

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
    EXPECT_EQ(numberOf(scheme, "R", "supplement-in-cosines")->label, "supplement in the law of cosines");
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
        EXPECT_NE(one.text, one.name == "R" ? "520 N" : "-3.6°") << one.label;
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

TEST(PracticeScheme, AQuestionWithoutAnAnswerHasNone) {
    EXPECT_TRUE(schemeOf(sketch({force("P", 340, 25), force("Q", kToFind, kToFind)}), {}).answers.empty());
}

} // namespace
} // namespace tailpoint::testing
