// SPDX-License-Identifier: MIT
// A lecture under hands that press and drag what they like when they like.
#include "tests/ui/lecture/lecture_fixture.h"

#include <QRegularExpression>

namespace tailpoint {
namespace TAILPOINT_FILE {

class LectureTried : public LectureTest {
protected:
    void move(QPoint to) {
        QMouseEvent event(QEvent::MouseMove, to, view.canvas().mapToGlobal(to), Qt::NoButton, Qt::LeftButton,
                          {});
        QCoreApplication::sendEvent(&view.canvas(), &event);
    }
    void release(QPoint at) { QTest::mouseRelease(&view.canvas(), Qt::LeftButton, {}, at); }
    /// Whatever widget lies there gets the press, as from a real hand.
    QPoint onView(QPoint at) { return view.canvas().mapTo(&view, at); }
    QPoint inChild(QPoint at) { return view.childAt(onView(at))->mapFrom(&view, onView(at)); }
    Sketch plan() { return sampleNamed("survey-raft.json").sketch; }
};

TEST_F(LectureTried, ABlankSheetIsNotDraggedUnderItsCover) {
    open("survey-raft.json");
    goTo("tails");
    key(Qt::Key_B);
    const QPoint tip = tipOf(0);
    QWidget* top = view.childAt(onView(tip));
    EXPECT_NE(top, &view.canvas());
    QTest::mousePress(top, Qt::LeftButton, {}, inChild(tip));
    EXPECT_FALSE(view.isChanged());
    QTest::mouseRelease(top, Qt::LeftButton, {}, inChild(tip));
    EXPECT_FALSE(view.isBlank()) << "a click uncovers";
    EXPECT_EQ(keyNow(), "tails") << "and does nothing else";
    EXPECT_EQ(view.document().sketch(), plan());
}

/// A remote in the other hand, a key hit by accident: the drag goes on at its step, and one key undoes it
/// after.
TEST_F(LectureTried, NoKeyCountsDuringADragAndOneUndoesItAfterwards) {
    open("survey-raft.json");
    goTo("tails");
    const std::size_t beat = view.beat();
    for (const Qt::Key which : {Qt::Key_Space, Qt::Key_PageUp, Qt::Key_End, Qt::Key_Home, Qt::Key_N,
                                Qt::Key_T, Qt::Key_B, Qt::Key_M, Qt::Key_C, Qt::Key_Down, Qt::Key_U}) {
        const QPoint tip = tipOf(0);
        QTest::mousePress(&view.canvas(), Qt::LeftButton, {}, tip);
        move(tip + QPoint(-60, -20));
        key(which);
        EXPECT_TRUE(view.canvas().isDragging()) << which;
        EXPECT_TRUE(view.isChanged()) << which;
        EXPECT_EQ(keyNow(), "tails") << which;
        EXPECT_EQ(view.beat(), beat);
        EXPECT_FALSE(view.isBlank() || view.hidesNumbers() || view.showsNextTitle());
        move(tip + QPoint(-90, -40));
        release(tip + QPoint(-90, -40));
        EXPECT_TRUE(view.isChanged()) << which;
        EXPECT_FALSE(view.canvas().isDragging());
        key(Qt::Key_U);
        EXPECT_EQ(view.document().sketch(), plan());
    }
}

TEST_F(LectureTried, NumbersStayHiddenWhileATipIsDragged) {
    open("survey-raft.json");
    goTo("end");
    key(Qt::Key_N);
    const QPoint tip = tipOf(0);
    QTest::mousePress(&view.canvas(), Qt::LeftButton, {}, tip);
    for (int i = 1; i < 6; ++i) {
        move(tip + QPoint(-20 * i, -10 * i));
        EXPECT_TRUE(numbersOn(list()).empty()) << listed(numbersOn(list()));
    }
    release(tip + QPoint(-100, -50));
    EXPECT_FALSE(view.column().plainText().contains(QRegularExpression(QStringLiteral("\\d N"))))
        << view.column().plainText().toStdString();
    EXPECT_TRUE(view.hidesNumbers());
}

/// Two forces in one line have a shorter solution: a hand that passes through comes back to where it was, and
/// the answer is not given away on the way.
TEST_F(LectureTried, AHandThatPassesThroughAnotherKindOfQuestionComesBackToItsStep) {
    open("survey-raft.json");
    goTo("cosines", false);
    const std::size_t stop = view.stop();
    Sketch line = plan();
    line.forces[1].direction = line.forces[0].direction;
    ASSERT_FALSE(view.document().edit(line, QStringLiteral("try")));
    EXPECT_NE(keyNow(), "cosines");
    EXPECT_LT(view.stop() + 1, view.stops().size()) << "not the answer";
    EXPECT_NE(keyNow(), "end");
    ASSERT_FALSE(view.document().edit(plan(), QStringLiteral("and back")));
    EXPECT_EQ(view.stop(), stop);
    EXPECT_EQ(view.beat(), 0U);
}

TEST_F(LectureTried, EveryStepOfAnySampleSurvivesAnyOtherSampleInItsPlace) {
    const auto samples = allSamples();
    for (const Sample& first : samples) {
        open(first.result, {1366, 768});
        for (std::size_t s = 0; s < view.stops().size(); s += 3)
            for (const Sample& other : samples) {
                view.goTo(s, s % 2 == 0);
                const std::string step = keyNow();
                const std::size_t beat = view.beat();
                view.document().replace(other.result.sketch, QString());
                ASSERT_LT(view.stop(), view.stops().size());
                ASSERT_LT(view.beat(), now().beats.size());
                view.backToPlan();
                if (view.document().sketch() == first.result.sketch) {
                    EXPECT_EQ(keyNow(), step) << first.name << " by " << other.name;
                    EXPECT_EQ(view.beat(), beat);
                }
            }
    }
}

TEST_F(LectureTried, AKeyHeldDownGoesOnButSwitchesNothingToAndFro) {
    open("survey-raft.json");
    const auto hold = [&](Qt::Key which, int times) {
        for (int i = 0; i < times; ++i) {
            QKeyEvent down(QEvent::KeyPress, which, Qt::NoModifier, QString(), i > 0);
            QCoreApplication::sendEvent(&view.canvas(), &down);
        }
    };
    hold(Qt::Key_B, 8);
    EXPECT_TRUE(view.isBlank());
    hold(Qt::Key_Escape, 5);
    EXPECT_FALSE(view.isBlank());
    EXPECT_TRUE(view.isVisible()) << "one press, one cover";
    hold(Qt::Key_N, 4);
    EXPECT_TRUE(view.hidesNumbers());
    hold(Qt::Key_Space, 200);
    EXPECT_EQ(view.stop() + 1, view.stops().size());
    hold(Qt::Key_PageUp, 400);
    EXPECT_EQ(view.stop(), 0U);
    EXPECT_EQ(view.beat(), 0U);
}

TEST_F(LectureTried, AnotherSizeKeepsTheStepAndThePlaceOnTheSheet) {
    open("two-answers.json");
    goTo("second", false);
    view.next();
    const std::size_t stop = view.stop(), beat = view.beat();
    for (const QSize room : kRooms) {
        resize(room);
        EXPECT_EQ(view.stop(), stop);
        EXPECT_EQ(view.beat(), beat);
        for (const int vector : {0, 1, kSumIndex})
            EXPECT_TRUE(view.canvas().rect().contains(tipOf(vector))) << room.width();
    }
}

TEST_F(LectureTried, TheTriangleOfOneOfTwoAnswersComesCloserAndWhatFollowsGoesBack) {
    open("two-answers.json");
    const double far = view.canvas().view().scale;
    goTo("first");
    EXPECT_GT(view.canvas().view().scale, 1.2 * far);
    for (const int vector : {0, 1, kSumIndex})
        EXPECT_TRUE(view.canvas().rect().contains(tipOf(vector)));
    EXPECT_FALSE(view.canvas().isRevealing());
    view.setMoves(true);
    goTo("second");
    EXPECT_TRUE(view.canvas().isRevealing());
    view.setMoves(false);
    for (const int vector : {0, 1, kSumIndex})
        EXPECT_TRUE(view.canvas().rect().contains(tipOf(vector)));
    goTo("answer");
    EXPECT_EQ(view.canvas().view().scale, far);
}

TEST_F(LectureTried, TheTitleOfTheNextStepIsNotAskedForAfterTheLast) {
    open("survey-raft.json");
    key(Qt::Key_End);
    key(Qt::Key_T);
    EXPECT_FALSE(view.showsNextTitle());
    key(Qt::Key_Home);
    EXPECT_EQ(view.stop(), 0U);
}

} // namespace TAILPOINT_FILE
} // namespace tailpoint
