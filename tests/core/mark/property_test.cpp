// SPDX-License-Identifier: MIT
// Marking on seeded questions of all families: the measures of marked_classes (tests/marked), on a sample,
// and what must hold for any answer.
#include "tests/marked/students.h"

#include <gtest/gtest.h>
#include <set>

namespace tailpoint::testing {
namespace TAILPOINT_FILE {

constexpr std::uint64_t kSeed = 20261130;

std::string examples(const Tally& tally) {
    std::string all = "seed " + std::to_string(kSeed);
    for (const std::string& one : tally.examples)
        all += "\n" + one;
    return all;
}

// The shares are the goals of marking; on 20,000 questions and more they are measured by hand.

TEST(MarkProperty, TheSlipThatWasMadeIsAmongThoseNamed) {
    const Tally tally = namedSlips(60, kSeed);
    EXPECT_GT(tally.tried, 3000U);
    EXPECT_LE(tally.share(), 0.005) << examples(tally);
}

TEST(MarkProperty, TheSlipThatWasMadeIsMostlyNamedFirst) {
    const Tally tally = firstNamed(1000, 20, kSeed);
    EXPECT_LE(tally.share(), 0.1) << examples(tally);
}

TEST(MarkProperty, AnHonestAnswerIsNeverCalledWrong) {
    const Tally tally = honestAnswers(3000, kSeed);
    EXPECT_EQ(tally.missed, 0U) << examples(tally);
}

TEST(MarkProperty, ARandomAnswerSeldomHasStrongEvidence) {
    const Tally tally = randomAnswers(2000, 20, kSeed);
    EXPECT_LT(tally.share(), 0.02) << examples(tally);
}

void expectSound(const Marking& marking, std::uint64_t number) {
    EXPECT_GE(marking.points, 0) << number;
    EXPECT_LE(marking.points, marking.of) << number;
    for (const Finding& finding : marking.slips) {
        EXPECT_FALSE(finding.explains.empty()) << number << " " << finding.id;
        EXPECT_GE(finding.covered, 0) << number;
        EXPECT_LE(finding.covered, 1) << number;
        for (const auto& [name, value] : finding.gives)
            EXPECT_TRUE(std::isfinite(value)) << number << " " << finding.id << " " << name;
        EXPECT_EQ(toText(finding.sentence).find('{'), std::string::npos) << toText(finding.sentence);
        EXPECT_EQ(toText(finding.mend).find('{'), std::string::npos) << toText(finding.mend);
    }
    if (marking.isRight()) {
        EXPECT_TRUE(std::none_of(
            marking.quantities.begin(), marking.quantities.end(),
            [](const MarkedQuantity& one) { return one.asked && one.given && one.verdict == Verdict::slip; }))
            << number;
    }
}

TEST(MarkProperty, AnyAnswerToAnyQuestionIsMarkedSoundly) {
    Dice dice(kSeed);
    std::size_t marked = 0;
    for (std::uint64_t number = 0; number < 160; ++number) {
        const Sketch sketch =
            number % 2 == 0 ? anyCase(dice, number) : someQuestion(dice, static_cast<int>(number) % 12);
        const Marker marker(sketch, solve(sketch));
        if (marker.refusal())
            continue;
        std::set<std::string> names;
        for (const Answerable& one : marker.quantities()) {
            EXPECT_TRUE(names.insert(one.name).second) << number << ": two are called " << one.name;
            EXPECT_EQ(marker.named(one.name), &one) << number;
        }
        for (int i = 0; i < 4; ++i) {
            std::vector<std::string> answers;
            for (const Answerable& one : marker.quantities())
                if ((one.asked && dice.whole(5) > 0) || dice.whole(8) == 0)
                    answers.push_back(one.name + " = " +
                                      shortest(roundedToFigures(dice.between(-400, 400), 3)));
            const auto read = marker.read(answers);
            ASSERT_TRUE(std::holds_alternative<Attempt>(read))
                << number << ": " << std::get<AttemptFault>(read).message;
            const Marking marking = marker.mark(std::get<Attempt>(read));
            expectSound(marking, number);
            EXPECT_FALSE(toText(marking).empty());
            ++marked;
        }
    }
    EXPECT_GT(marked, 400U);
}

TEST(MarkProperty, AQuestionOfVeryManyForcesIsMarkedByWhatCanBeToldApart) {
    std::vector<Force> forces;
    for (int i = 0; i < 400; ++i)
        forces.push_back(force("F" + std::to_string(i), 1, i * 0.5));
    const Sketch many = sketch(std::move(forces));
    const Solved solved = solve(many);
    const Marker marker(many, solved);
    const std::string size = shortest(roundedToFigures(solved.solutions.front().sum.magnitude, 3));
    const auto right = marker.mark(std::get<Attempt>(marker.read({"R = " + size})));
    EXPECT_EQ(right.quantities.front().verdict, Verdict::right);
    const auto added = marker.mark(std::get<Attempt>(marker.read({"R = 400"})));
    ASSERT_FALSE(added.slips.empty());
    EXPECT_EQ(added.slips.front().id, "magnitudes-added");
}

TEST(MarkProperty, TheSameAnswersMakeTheSameMarking) {
    Dice dice(kSeed);
    for (std::uint64_t number = 0; number < 12; ++number) {
        const Sketch sketch = someQuestion(dice, static_cast<int>(number) % 12);
        const Solved solved = solve(sketch);
        const Marker one(sketch, solved), other(sketch, solved);
        if (one.refusal())
            continue;
        std::vector<std::string> answers;
        for (const Answerable& asked : one.quantities())
            if (asked.asked)
                answers.push_back(asked.name + " = 123");
        const auto attempt = std::get<Attempt>(one.read(answers));
        const std::string first = toText(one.mark(attempt));
        EXPECT_EQ(toText(one.mark(attempt)), first); // what a marker keeps changes nothing
        EXPECT_EQ(toText(other.mark(attempt)), first);
    }
}

} // namespace TAILPOINT_FILE
} // namespace tailpoint::testing
