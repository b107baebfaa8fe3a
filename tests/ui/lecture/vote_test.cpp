// A question put to the class: what the keys do, what is seen when, and that it fits the screen.
#include "tests/ui/lecture/lecture_fixture.h"
#include "ui/lecture/vote_board.h"

namespace tailpoint {
namespace {

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
    vote(Qt::Key_E, "3");
    EXPECT_EQ(board().ballot().votes(false, 4), 3);
    key(Qt::Key_Backspace);
    EXPECT_EQ(board().ballot().votes(false, 4), 0);
    type("45");
    EXPECT_EQ(board().ballot().votes(false, 4), 45);
    key(Qt::Key_X);
    EXPECT_EQ(board().ballot().total(false), 0) << "its votes went with it";
    key(Qt::Key_Q);
    EXPECT_EQ(board().poll().name, "theta_R");
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
            for (int i = 0; i < 3; ++i)
                key(Qt::Key_Space);
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

} // namespace
} // namespace tailpoint
