// SPDX-License-Identifier: MIT
#include "core/practice/families.h"
#include "core/practice/poll.h"
#include "core/solve/solve.h"

#include "tests/support/sketches.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cctype>
#include <set>
#include <sstream>

namespace tailpoint::testing {
namespace TAILPOINT_FILE {

const Poll* named(const std::vector<Poll>& polls, std::string_view name) {
    const auto found =
        std::find_if(polls.begin(), polls.end(), [&](const Poll& poll) { return poll.name == name; });
    return found == polls.end() ? nullptr : &*found;
}

/// Two pulls of 340 N at 25 and 275 N at -40 degrees. By hand: 519.86 N; with the angle of 65 degrees in
/// place of its supplement 335.4 N; as if at right angles 437.3 N; added as plain numbers 615 N.
TEST(Poll, AsksForTheRightValueAmongThoseOfTheCommonestSlips) {
    const auto polls = pollsOf(sketch({force("P", 340, 25), force("Q", 275, -40)}));
    const Poll* size = named(polls, "R");
    ASSERT_NE(size, nullptr);
    std::vector<std::string> texts;
    for (const PollChoice& choice : size->choices) {
        texts.push_back(choice.text);
        EXPECT_EQ(choice.isRight(), choice.text == "520 N");
        EXPECT_EQ(toText(choice.sentence).empty(), choice.isRight());
    }
    EXPECT_EQ(texts, (std::vector<std::string>{"335 N", "437 N", "520 N", "615 N"}));
    ASSERT_NE(named(polls, "theta_R"), nullptr);
}

TEST(Poll, IsNotMadeOfAQuestionWithoutAnAnswer) {
    EXPECT_TRUE(
        pollsOf(sketch({force("P", kToFind, 25), force("Q", kToFind, 205)}, force("R", 520, 0))).empty());
}

/// Every family and level, two problems each.
TEST(Poll, OfEveryFamilyHasItsChoicesInOrderAndNoTwoAlike) {
    int asked = 0, made = 0, slips = 0;
    for (const FamilyEntry& family : problemFamilies())
        for (int level = 1; level <= kLevels; ++level)
            for (std::uint32_t number = 0; number < 2; ++number) {
                const auto made1 = problem({std::string(family.id), level, number * 977});
                ASSERT_TRUE(made1);
                SCOPED_TRACE(made1->code);
                ++asked;
                const auto polls = pollsOf(made1->sketch);
                made += polls.empty() ? 0 : 1;
                for (const Poll& poll : polls) {
                    EXPECT_GE(poll.choices.size(), 2U);
                    EXPECT_LE(poll.choices.size(), kPollSlips + 1);
                    EXPECT_TRUE(std::is_sorted(
                        poll.choices.begin(), poll.choices.end(),
                        [](const PollChoice& a, const PollChoice& b) { return a.value < b.value; }));
                    std::set<std::string> texts;
                    int right = 0;
                    for (const PollChoice& choice : poll.choices) {
                        texts.insert(choice.text);
                        EXPECT_TRUE(poll.name.starts_with("theta") || choice.value >= 0) << choice.text;
                        right += choice.isRight() ? 1 : 0;
                        slips += choice.isRight() ? 0 : 1;
                    }
                    EXPECT_EQ(texts.size(), poll.choices.size());
                    EXPECT_EQ(right, 1);
                }
            }
    EXPECT_EQ(asked, 11 * 3 * 2);
    EXPECT_EQ(made, asked);
    EXPECT_GT(slips, 3 * asked);
}

/// The magnitudes in "180 N or 513 N", ascending.
std::vector<double> magnitudesIn(const std::string& text) {
    std::vector<double> values;
    std::istringstream words(text);
    for (std::string word; words >> word;)
        if (std::isdigit(static_cast<unsigned char>(word.back())))
            values.push_back(std::stod(word));
    std::sort(values.begin(), values.end());
    return values;
}

/// P along 40 degrees and Q = 260 N make R = 400 N at 10 degrees: by the law of cosines P = 400 cos 30 -+
/// sqrt(260^2 - (400 sin 30)^2) = 346.410 -+ 166.132, so 180.3 N or 512.5 N. P along 115 degrees in either
/// sense and Q = 320 N make 300 N at 10 degrees: 300 cos 105 -+ sqrt(320^2 - (300 sin 105)^2) = -77.646 -+
/// 135.746, so 58.1 N one way or 213.4 N the other.
TEST(Poll, OfTwoAnswersHasEachSetOnceAscendingAndNoneThatIsAbsurd) {
    Force either = force("P", kToFind, 115);
    either.lineOfActionOnly = true;
    const std::pair<Sketch, std::string> questions[] = {
        {sketch({force("P", kToFind, 40), force("Q", 260, kToFind)}, force("R", 400, 10)), "180 N or 513 N"},
        {sketch({either, force("Q", 320, kToFind)}, force("R", 300, 10)), "58.1 N or 213 N"}};
    for (const auto& [asked, right] : questions) {
        const auto polls = pollsOf(asked);
        const Poll* size = named(polls, "P");
        ASSERT_NE(size, nullptr);
        EXPECT_GE(size->choices.size(), 3U);
        const auto found = std::find_if(size->choices.begin(), size->choices.end(),
                                        [](const PollChoice& choice) { return choice.isRight(); });
        EXPECT_EQ(found->text, right);
        const std::vector<double> stated = magnitudesIn(right);
        std::set<std::vector<double>> sets;
        for (const PollChoice& choice : size->choices) {
            const std::vector<double> values = magnitudesIn(choice.text);
            EXPECT_TRUE(sets.insert(values).second) << choice.text << " again";
            EXPECT_GE(values.front(), stated.front() / 10) << choice.text;
            EXPECT_LE(values.back(), stated.back() * 10) << choice.text;
            EXPECT_NEAR(std::stod(choice.text), values.front(), 1e-9) << choice.text << ", not ascending";
            EXPECT_NE(choice.slip, "root-forgotten");
        }
        const Poll* way = named(polls, "theta_Q");
        ASSERT_NE(way, nullptr);
        EXPECT_EQ(toText(way->asked), "Both directions of 𝑸 from +x, counter-clockwise positive");
    }
}

/// The least force across +x against 340 N at 25 degrees is 340 sin 25 = 143.7 N. In radians the sine is
/// negative, and no magnitude is.
TEST(Poll, HasNoNegativeMagnitude) {
    Sketch least = sketch({force("P", 340, 25), force("Q", kToFind, kToFind)}, force("R", kToFind, 0));
    least.smallest = "Q";
    const auto polls = pollsOf(least);
    const Poll* size = named(polls, "Q");
    ASSERT_NE(size, nullptr);
    EXPECT_EQ(toText(size->asked), "The magnitude of 𝑸");
    for (const PollChoice& choice : size->choices) {
        EXPECT_GE(choice.value, 14.37) << choice.text;
        EXPECT_LE(choice.value, 1437) << choice.text;
    }
}

TEST(Ballot, KeepsItsSharesUntilTheSecondVoteIsClosed) {
    Ballot ballot(3);
    ballot.setVotes(0, 6);
    ballot.setVotes(2, 2);
    EXPECT_EQ(ballot.total(false), 8);
    EXPECT_FALSE(ballot.share(false, 0));
    ballot.goOn();
    ballot.setVotes(0, 99); // nobody votes while they talk
    EXPECT_EQ(ballot.votes(false, 0), 6);
    EXPECT_FALSE(ballot.share(false, 0));
    ballot.goOn();
    ballot.setVotes(2, 4);
    ballot.setVotes(1, -1);
    ballot.setVotes(1, Ballot::kMostVotes + 1);
    ballot.setVotes(7, 1);
    EXPECT_FALSE(ballot.share(false, 0));
    ballot.goOn();
    EXPECT_EQ(ballot.phase(), Ballot::Phase::closed);
    EXPECT_DOUBLE_EQ(*ballot.share(false, 0), 0.75);
    EXPECT_DOUBLE_EQ(*ballot.share(true, 2), 1);
    ballot.goOn();
    EXPECT_EQ(ballot.phase(), Ballot::Phase::closed);
    ballot.goBack();
    EXPECT_FALSE(ballot.share(true, 2));
    EXPECT_EQ(ballot.total(true), 4);
}

TEST(Ballot, OfNobodyHasNoShares) {
    Ballot ballot(2);
    for (int i = 0; i < 3; ++i)
        ballot.goOn();
    EXPECT_FALSE(ballot.share(true, 0));
}

} // namespace TAILPOINT_FILE
} // namespace tailpoint::testing
