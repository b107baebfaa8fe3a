// SPDX-License-Identifier: MIT
#include "core/practice/asked_lines.h"

#include "core/practice/families.h"
#include "tests/core/explain/questions.h"
#include "tests/support/sketches.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <set>

namespace tailpoint::testing {
namespace TAILPOINT_FILE {

Sketch raft() {
    return sketch({force("P", 340, 25), force("Q", 275, -40)});
}

Verdict verdictOf(const Readable<LineMark>& mark) {
    const auto* made = std::get_if<LineMark>(&mark);
    return made != nullptr ? made->verdict : Verdict::missing;
}

TEST(AskedLines, SayOnWhatEachRests) {
    const AskedLines asked(raft());
    std::vector<Principle> principles;
    for (const AskedLine& line : asked.lines())
        principles.push_back(line.principle);
    // φ = θ_P − θ_Q, γ = 180° − φ, R by the law of cosines, β by that of sines, θ_R from P: by hand
    EXPECT_EQ(principles, (std::vector<Principle>{Principle::between, Principle::angles, Principle::cosines,
                                                  Principle::sines, Principle::turned}));
    EXPECT_EQ(asked.principleAtStart(), Principle::cosines);
    std::string why;
    for (const Prose& prose : asked.whyAtStart())
        why += toText(prose);
    EXPECT_NE(why.find("law of cosines"), why.npos) << why;
}

TEST(AskedLines, OfComponentsSayOnWhatEachRests) {
    const AskedLines asked(sketch({force("P", 100, 120), force("Q", 80, 75), force("S", 60, 160)}));
    std::set<Principle> principles;
    for (const AskedLine& line : asked.lines())
        principles.insert(line.principle);
    // components, their sums, R² = R_x² + R_y², tan δ, the second quadrant: by hand
    EXPECT_EQ(principles, (std::set<Principle>{Principle::resolved, Principle::summed, Principle::pythagoras,
                                               Principle::rightTriangle, Principle::turned}));
    EXPECT_EQ(asked.principleAtStart(), Principle::resolved);
}

/// R = 519.860 N, θ_R = −3.635° (Python, mpmath); with the supplement's cosine 334.956 N.
TEST(AskedLines, ANumberIsReadAndMarkedAsAnAnswerIs) {
    const AskedLines asked(raft());
    EXPECT_EQ(verdictOf(asked.mark(2, "520 N")), Verdict::right);
    EXPECT_EQ(verdictOf(asked.mark(2, "519,9")), Verdict::right);
    EXPECT_EQ(verdictOf(asked.mark(2, "0.520 kN")), Verdict::right);
    EXPECT_EQ(verdictOf(asked.mark(4, "-3.6")), Verdict::right);
    EXPECT_EQ(verdictOf(asked.mark(4, "3.6 clockwise from +x")), Verdict::right);
    const auto slip = asked.mark(2, "335");
    ASSERT_EQ(verdictOf(slip), Verdict::slip);
    const auto& slips = std::get<LineMark>(slip).marking->slips;
    ASSERT_FALSE(slips.empty());
    EXPECT_EQ(slips.front().id, "supplement-in-cosines");
    EXPECT_EQ(verdictOf(asked.mark(2, "123")), Verdict::other);
    EXPECT_TRUE(std::holds_alternative<AttemptFault>(asked.mark(2, "many")));
    EXPECT_TRUE(std::holds_alternative<AttemptFault>(asked.mark(2, "20 deg")));
}

/// A hundred questions: of every family and level three numbers.
TEST(AskedLines, EveryLineIsRightByItsOwnNumber) {
    int looked = 0;
    for (const FamilyEntry& family : problemFamilies())
        for (int level = 1; level <= kLevels; ++level)
            for (const std::uint32_t number : {21U, 4711U, 99999U}) {
                const auto made = problem({std::string(family.id), level, number});
                const AskedLines asked(made->sketch);
                ASSERT_GT(asked.lines().size(), 1U) << made->code;
                for (std::size_t line = 0; line < asked.lines().size(); ++line) {
                    const Working& working = asked.working(line);
                    const auto mark = asked.mark(line, toText(*working.value));
                    ASSERT_TRUE(std::holds_alternative<LineMark>(mark)) << made->code;
                    EXPECT_TRUE(std::get<LineMark>(mark).isRight())
                        << made->code << ": " << toText(*working.subject) << " = " << toText(*working.value);
                    const Dimension dimension = dimensionOf(working.subject->id.what);
                    EXPECT_EQ(std::get<LineMark>(mark).marking.has_value(),
                              dimension == Dimension::force || dimension == Dimension::angle)
                        << made->code << ": a quantity that can be answered";
                    ++looked;
                }
            }
    EXPECT_GT(looked, 500);
}

/// Any question, not only problems: 300 of every kind, by seed 4.
TEST(AskedLines, OfAnyQuestionEveryLineIsRightByItsOwnNumber) {
    constexpr std::uint64_t seed = 4;
    Dice dice(seed);
    int looked = 0;
    for (int i = 0; i < 300; ++i) {
        const Sketch question = someQuestion(dice, i % kQuestionKinds);
        const AskedLines asked(question);
        for (std::size_t line = 0; line < asked.lines().size(); ++line) {
            const Working& working = asked.working(line);
            const auto mark = asked.mark(line, toText(*working.value));
            ASSERT_TRUE(std::holds_alternative<LineMark>(mark))
                << "seed " << seed << ", question " << i << ": " << toText(*working.subject) << " = "
                << toText(*working.value) << ": " << std::get<AttemptFault>(mark).message;
            EXPECT_TRUE(std::get<LineMark>(mark).isRight())
                << "seed " << seed << ", question " << i << ": " << toText(*working.subject) << " = "
                << toText(*working.value) << '\n'
                << toText(asked.worked());
            ++looked;
        }
    }
    EXPECT_GT(looked, 800);
}

/// Of two answers a line has its own number: the law of sines gives 67.8° or 112.2°.
TEST(AskedLines, OfTwoAnswersTheOthersNumberIsNotRight) {
    const auto made = problem({"two-answers", 1, 21});
    const AskedLines asked(made->sketch);
    int compared = 0;
    for (std::size_t a = 0; a < asked.lines().size(); ++a)
        for (std::size_t b = 0; b < asked.lines().size(); ++b) {
            const QuantityId &one = asked.working(a).subject->id, &other = asked.working(b).subject->id;
            if (one.answer != 1 || other.answer != 2 || one.what != other.what || one.of != other.of)
                continue;
            const std::string number = toText(*asked.working(b).value);
            EXPECT_NE(verdictOf(asked.mark(a, number)), Verdict::right) << number;
            EXPECT_EQ(verdictOf(asked.mark(b, number)), Verdict::right) << number;
            ++compared;
        }
    EXPECT_GE(compared, 3);
}

TEST(AskedLines, PrinciplesHaveNamesOfTheirOwn) {
    std::set<std::string> names;
    for (const Principle one : kPrinciples)
        names.insert(principleName(one));
    EXPECT_EQ(names.size(), kPrinciples.size());
}

TEST(AskedLines, AQuestionWithoutAnAnswerHasNone) {
    EXPECT_TRUE(AskedLines(sketch({force("P", 340, 25), force("Q", kToFind, kToFind)})).lines().empty());
}

} // namespace TAILPOINT_FILE
} // namespace tailpoint::testing
