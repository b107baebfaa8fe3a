// SPDX-License-Identifier: MIT
// A question put to the class: what the keys do, what is seen when, and that it fits the screen.
#include "tests/ui/lecture/lecture_fixture.h"
#include "ui/lecture/key_sheet.h"
#include "ui/lecture/vote_board.h"
#include "ui/lecture/vote_question.h"

namespace tailpoint {
namespace TAILPOINT_FILE {

class LectureVote : public LectureTest {
protected:
    VoteBoard& board() { return view.voteBoard(); }
    void type(const char* digits) {
        for (const char* digit = digits; *digit != '\0'; ++digit)
            key(static_cast<Qt::Key>(Qt::Key_0 + (*digit - '0')));
    }
    void vote(Qt::Key choice, const char* count) {
        key(choice);
        type(count);
    }
};

TEST_F(LectureVote, IsTakenTwiceAndToldAfterTheSecond) {
    open("survey-raft.json");
    goTo("check");
    const std::size_t stop = view.stop();
    key(Qt::Key_V);
    ASSERT_TRUE(view.isVoting());
    EXPECT_FALSE(view.column().isVisible());
    EXPECT_TRUE(tipOf(kSumIndex).isNull()) << "the sheet would answer";
    ASSERT_EQ(board().poll().choices.size(), 4U);
    EXPECT_EQ(board().poll().choices[2].text, "520 N");
    vote(Qt::Key_A, "12");
    vote(Qt::Key_B, "7");
    vote(Qt::Key_C, "21");
    EXPECT_EQ(board().ballot().total(false), 40);
    EXPECT_FALSE(board().plainText().contains(u'%'));
    EXPECT_FALSE(board().plainText().contains(QStringLiteral("right")));
    key(Qt::Key_Space); // talk
    vote(Qt::Key_A, "99");
    EXPECT_EQ(board().ballot().total(false), 40);
    key(Qt::Key_PageDown); // the second vote, by a presenter's remote
    vote(Qt::Key_A, "4");
    vote(Qt::Key_C, "36");
    EXPECT_FALSE(board().plainText().contains(u'%'));
    key(Qt::Key_Space);
    EXPECT_EQ(board().ballot().phase(), Ballot::Phase::closed);
    EXPECT_TRUE(board().plainText().contains(QStringLiteral("A: 335 N, 10 %, 30 % before")))
        << board().plainText().toStdString();
    EXPECT_TRUE(board().plainText().contains(QStringLiteral("C: 520 N, 90 %, 53 % before, right")));
    key(Qt::Key_Space); // the wrong one with the most votes
    ASSERT_EQ(board().reason(), 0U);
    EXPECT_TRUE(board().plainText().startsWith(QStringLiteral("R = 335 N")))
        << board().plainText().toStdString();
    EXPECT_TRUE(board().plainText().contains(QStringLiteral("cos")));
    key(Qt::Key_V);
    EXPECT_FALSE(view.isVoting());
    EXPECT_EQ(view.stop(), stop);
    EXPECT_FALSE(tipOf(kSumIndex).isNull());
}

TEST_F(LectureVote, TakesNoneOfTheseAnotherQuantityAndACorrection) {
    open("survey-raft.json");
    key(Qt::Key_V);
    key(Qt::Key_E);
    EXPECT_EQ(board().chosen(), 0U) << "there is no fifth";
    key(Qt::Key_X);
    EXPECT_EQ(board().chosen(), 4U) << "its count comes next";
    type("3");
    EXPECT_EQ(board().ballot().votes(false, 4), 3);
    key(Qt::Key_Delete);
    EXPECT_EQ(board().ballot().votes(false, 4), 0);
    type("45");
    EXPECT_EQ(board().ballot().votes(false, 4), 45);
    key(Qt::Key_X);
    EXPECT_EQ(board().ballot().total(false), 0) << "its votes went with it";
    key(Qt::Key_Q);
    EXPECT_EQ(board().poll().name, "theta_R");
}

TEST_F(LectureVote, ShowsTheCountThatIsTypedAndTakesBackADigit) {
    open("survey-raft.json");
    key(Qt::Key_V);
    vote(Qt::Key_A, "120");
    EXPECT_EQ(board().countText(0), QStringLiteral("120"));
    key(Qt::Key_Backspace);
    EXPECT_EQ(board().countText(0), QStringLiteral("12"));
    EXPECT_EQ(board().ballot().votes(false, 0), 12);
    type("5");
    EXPECT_EQ(board().countText(0), QStringLiteral("125"));
    key(Qt::Key_B);
    EXPECT_EQ(board().countText(0), QStringLiteral("\u2022")) << "the class sees that there is one, no more";
    EXPECT_TRUE(board().countText(1).isEmpty());
    key(Qt::Key_A);
    EXPECT_EQ(board().countText(0), QStringLiteral("125"));
    type("7"); // a new count
    EXPECT_EQ(board().countText(0), QStringLiteral("7"));
    key(Qt::Key_Backspace);
    key(Qt::Key_Backspace);
    EXPECT_EQ(board().ballot().total(false), 0);
}

TEST_F(LectureVote, IsClosedWithoutVotesOnlyAtTheSecondAsking) {
    open("survey-raft.json");
    key(Qt::Key_V);
    for (const Ballot::Phase open : {Ballot::Phase::first, Ballot::Phase::second}) {
        key(Qt::Key_Space);
        EXPECT_EQ(board().ballot().phase(), open);
        EXPECT_TRUE(board().plainText().contains(QStringLiteral("No votes are counted yet")));
        vote(Qt::Key_A, "1");
        EXPECT_FALSE(board().plainText().contains(QStringLiteral("No votes are counted yet")));
        key(Qt::Key_Backspace);
        key(Qt::Key_Space);
        EXPECT_EQ(board().ballot().phase(), open) << "asked again";
        key(Qt::Key_Space);
        EXPECT_NE(board().ballot().phase(), open);
        if (open == Ballot::Phase::first)
            key(Qt::Key_Space); // talk
    }
    EXPECT_TRUE(board().plainText().contains(QStringLiteral("No votes were counted.")));
}

/// What is given and can be read during a vote: on the sheet, and in words over it.
TEST_F(LectureVote, LeavesTheClassAllThatIsGivenAndTheQuestion) {
    auto* words = view.findChild<VoteQuestion*>();
    const auto onSheet = [&] {
        QStringList texts;
        for (const Group& group : list().groups)
            for (const Item& item : group.items)
                if (const auto* text = std::get_if<Text>(&item))
                    texts << QString::fromStdString(textOf(*text));
        return texts.join(u';');
    };
    const auto expectGiven = [&](const char* sample, std::initializer_list<const char*> sheet,
                                 std::initializer_list<const char*> told) {
        SCOPED_TRACE(sample);
        open(sample);
        for (const char* step : {"question", "end"}) {
            goTo(step);
            key(Qt::Key_V);
            EXPECT_TRUE(words->isVisible());
            EXPECT_LE(words->geometry().bottom(), view.canvas().geometry().top());
            const QString seen = onSheet();
            for (const char* text : sheet)
                EXPECT_TRUE(seen.contains(QString::fromUtf8(text))) << text << " in " << seen.toStdString();
            for (const char* text : told)
                EXPECT_TRUE(words->text().contains(QString::fromUtf8(text)))
                    << text << " in " << words->text().toStdString();
            key(Qt::Key_V);
            EXPECT_FALSE(words->isVisible());
        }
    };
    expectGiven("survey-raft.json", {"P = 340 N", "25.0°", "Q = 275 N", "40.0°", "+x"},
                {"P = 340 N at 25.0°", "Q = 275 N at −40.0°", "measured from +x, counter-clockwise",
                 "Find the resultant R of P and Q."});
    expectGiven("two-directions.json", {"R = 420 N", "5.0°"},
                {"P = 250 N", "Q = 300 N", "directions of P and Q", "R = 420 N at 5.0°"});
    expectGiven("two-answers.json", {"R = 400 N", "10.0°", "40.0°"},
                {"Q = 260 N", "at 40.0°", "magnitude of P", "R = 400 N at 10.0°"});
    expectGiven("either-sense.json", {"R = 300 N", "115.0°"}, {"Q = 320 N", "in either sense"});
    expectGiven("smallest-force.json", {"P = 340 N", "25.0°"}, {"P = 340 N at 25.0°", "smallest force Q"});
}

/// A twin's numbers are over the sheet as well; nothing of any answer is there or on the sheet.
TEST_F(LectureVote, TellsOfATwinWhatIsGivenAndNothingOfTheAnswer) {
    int looked = 0;
    for (const Sample& sample : allSamples()) {
        SCOPED_TRACE(sample.name);
        open(sample.result);
        key(Qt::Key_End);
        key(Qt::Key_V);
        if (board().isEmpty())
            continue;
        for (int twin = 0; twin < 2; ++twin) {
            const auto* words = view.findChild<VoteQuestion*>();
            EXPECT_EQ(words->text().toStdString(), toText(voteQuestion(view.document().sketch())));
            for (const Group& group : list().groups) {
                const auto* quantity = group.part ? std::get_if<QuantityId>(&*group.part) : nullptr;
                const What what = quantity ? quantity->what : What::none;
                EXPECT_NE(what, What::opposite) << group.id << ": a step of the solution";
            }
            const Sketch& sketch = view.document().sketch();
            const auto isSought = [](const Force& vector) {
                return !isGiven(vector.magnitude) || !isGiven(vector.direction);
            };
            for (std::size_t i = 0; i < sketch.forces.size(); ++i)
                EXPECT_EQ(tipOf(static_cast<int>(i)).isNull(), isSought(sketch.forces[i]))
                    << sketch.forces[i].name;
            EXPECT_TRUE(!isSought(sketch.sum) || tipOf(kSumIndex).isNull());
            ++looked;
            key(Qt::Key_W);
        }
    }
    EXPECT_GT(looked, 30);
}

/// Six figures and two answers make the longest choices.
TEST_F(LectureVote, SetsLongChoicesAndHeadingsWithinTheColumn) {
    Sketch exact = sampleNamed("two-answers.json").sketch;
    exact.figures = 8;
    exact.angleDecimals = 5;
    for (const QSize room : {QSize(1024, 768), QSize(1366, 768), QSize(960, 540)}) {
        open(resultOf(exact), room);
        key(Qt::Key_V);
        for (int quantity = 0; quantity < 2; ++quantity) {
            for (int i = 0; i < 4; ++i) {
                board().grab();
                EXPECT_LE(board().widest(), view.measures().margin + view.measures().textWidth() + 0.5);
                EXPECT_LE(board().lowest(), board().keysTop());
                key(Qt::Key_Space);
                key(Qt::Key_Space); // nobody votes
            }
            key(Qt::Key_Q);
        }
    }
}

/// A percentage stands on the line of its own choice, its bars between that and the next.
TEST_F(LectureVote, SetsEachShareBesideItsChoice) {
    for (const QSize room : {QSize(1366, 768), QSize(1920, 1080)}) {
        open(sampleNamed("survey-raft.json"), room);
        key(Qt::Key_V);
        vote(Qt::Key_A, "5");
        vote(Qt::Key_C, "15");
        key(Qt::Key_Space);
        key(Qt::Key_Space);
        vote(Qt::Key_A, "2");
        vote(Qt::Key_C, "18");
        key(Qt::Key_Space);
        board().grab();
        const auto& rows = board().rowsSeen();
        ASSERT_EQ(rows.size(), 4U);
        for (std::size_t i = 0; i < rows.size(); ++i) {
            EXPECT_NEAR(rows[i].share.center().y(), rows[i].words.center().y(), 2);
            EXPECT_GE(rows[i].bars.top(), rows[i].words.bottom() - 1);
            EXPECT_GT(rows[i].words.top() - (i > 0 ? rows[i - 1].bars.bottom() : 0), 5);
        }
    }
}

TEST_F(LectureVote, NamesAnotherQuantityByItsSymbolAndHasItsKeysOnTheSheetOfKeys) {
    open("survey-raft.json");
    auto* keys = view.findChild<KeySheet*>();
    key(Qt::Key_F1);
    EXPECT_TRUE(keys->text().contains(QStringLiteral("V: put it to the class")));
    EXPECT_FALSE(keys->text().contains(QStringLiteral("lesson")));
    key(Qt::Key_F1);
    key(Qt::Key_V);
    EXPECT_TRUE(board().keysText().contains(QStringLiteral("ask\u00A0for")));
    EXPECT_FALSE(board().keysText().contains(QStringLiteral("theta")));
    key(Qt::Key_F1);
    ASSERT_TRUE(keys->isVisible());
    for (const char* row : {"X: ", "Q: ", "W: ", "Backspace, Delete: ", "V, Escape: "})
        EXPECT_TRUE(keys->text().contains(QLatin1String(row))) << row;
    EXPECT_TRUE(keys->fits());
    key(Qt::Key_Escape);
    EXPECT_TRUE(view.isVoting()) << "the sheet of keys goes first";
}

TEST_F(LectureVote, GoesOnWhereItWasLeftForTheSteps) {
    open("survey-raft.json");
    key(Qt::Key_V);
    vote(Qt::Key_A, "12");
    key(Qt::Key_V);
    key(Qt::Key_V);
    EXPECT_EQ(board().ballot().total(false), 12);
    key(Qt::Key_Escape);
    key(Qt::Key_Escape);
    open("survey-raft.json");
    key(Qt::Key_V);
    EXPECT_EQ(board().ballot().total(false), 0) << "another lecture, another class";
}

TEST_F(LectureVote, HasATwinWithOtherNumbersAndTheWayBack) {
    open("survey-raft.json");
    key(Qt::Key_V);
    const std::string before = board().poll().choices[0].text;
    vote(Qt::Key_A, "5");
    key(Qt::Key_W);
    EXPECT_TRUE(view.isVoting());
    EXPECT_TRUE(view.isChanged());
    EXPECT_EQ(board().ballot().total(false), 0);
    EXPECT_NE(board().poll().choices[0].text, before);
    key(Qt::Key_U);
    EXPECT_FALSE(view.isChanged());
    EXPECT_EQ(board().poll().choices[0].text, before);
}

TEST_F(LectureVote, SaysWhereThereIsNothingToVoteOn) {
    open("no-answer.json");
    key(Qt::Key_V);
    EXPECT_TRUE(board().plainText().contains(QStringLiteral("Nothing here can be put to a vote")));
    key(Qt::Key_Space);
    key(Qt::Key_A);
    key(Qt::Key_Q);
    key(Qt::Key_Escape);
    EXPECT_FALSE(view.isVoting());
    EXPECT_TRUE(view.isVisible()) << "Escape leaves the vote first";
}

/// Every sample, its first quantity: the shares and each reason, in the two smallest rooms.
TEST_F(LectureVote, FitsEveryRoom) {
    int looked = 0;
    for (const Sample& sample : allSamples())
        for (const QSize room : {QSize(1024, 768), QSize(960, 540)}) {
            open(sample.result, room);
            key(Qt::Key_V);
            if (board().isEmpty()) {
                key(Qt::Key_V);
                continue;
            }
            key(Qt::Key_X);
            board().grab();
            EXPECT_LE(board().lowest(), board().keysTop()) << sample.name << ", first vote";
            for (int i = 0; i < 5; ++i) // votes without votes are closed at the second asking
                key(Qt::Key_Space);
            ASSERT_EQ(board().ballot().phase(), Ballot::Phase::closed);
            for (std::size_t i = 0; i < board().poll().choices.size(); ++i) {
                board().grab();
                ++looked;
                EXPECT_LE(board().lowest(), board().keysTop())
                    << sample.name << " " << room.width() << "x" << room.height() << " "
                    << board().plainText().toStdString();
                key(Qt::Key_Space);
            }
            key(Qt::Key_V);
        }
    EXPECT_GT(looked, 100);
}

} // namespace TAILPOINT_FILE
} // namespace tailpoint
