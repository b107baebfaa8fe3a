// SPDX-License-Identifier: MIT
// A real mouse on the real sheet, judged by the saved file and the screen.
#include "tests/whole/window/raft_fixture.h"

using namespace whole;

namespace TAILPOINT_FILE {

TEST_F(OnTheRaft, ADraggedTipIsInTheTitleTheFileAndOnTheScreen) {
    const double degrees = 50, newtons = 230;
    const QPointF target = onSheet(degrees, newtons);
    ASSERT_TRUE(drag(m_raft.p.tip, target, QStringLiteral("alt")));
    EXPECT_TRUE(becomesModified(true)) << m_program->title().toStdString();

    const QJsonObject sketch = saved();
    const QJsonObject p = force(sketch, 0), q = force(sketch, 1);
    EXPECT_NEAR(number(p, "magnitude"), newtons, 8);
    EXPECT_NEAR(number(p, "direction"), degrees, 1);
    EXPECT_EQ(number(q, "magnitude"), 275);
    EXPECT_EQ(number(q, "direction"), -40);
    EXPECT_EQ(sketch[QStringLiteral("title")].toString(), QStringLiteral("Survey raft on two lines"));

    ASSERT_TRUE(moveTo(emptyPlace())); // a handle is drawn round a tip under the pointer
    const QImage seen = settledScreen();
    // The view may have been fitted anew: Q, which was not touched, tells the scale.
    const auto drawn = findRaft(seen, m_program->sheet(), number(p, "direction"), number(q, "direction"));
    ASSERT_TRUE(drawn) << keep(seen);
    EXPECT_NEAR(drawn->p.length() / drawn->q.length(), number(p, "magnitude") / number(q, "magnitude"), 0.02)
        << keep(seen);
}

TEST_F(OnTheRaft, ThePanelFollowsTheDragBeforeTheButtonIsReleased) {
    const QImage before = settledScreen();
    ASSERT_TRUE(dragAndHold(m_raft.p.tip, onSheet(60, 180)));
    const QImage during =
        screenWhere([&](const QImage& now) { return changedPixels(before, now, panel()) > 100; });
    EXPECT_FALSE(during.isNull()) << "the panel stands still while the tip moves" << keep(screen());
    EXPECT_TRUE(release());
}

TEST_F(OnTheRaft, ADragIsTakenBackByOneUndoAndComesAgainByRedo) {
    ASSERT_TRUE(drag(m_raft.p.tip, onSheet(60, 200)));
    ASSERT_TRUE(becomesModified(true));
    ASSERT_TRUE(key(QStringLiteral("ctrl+z")));
    EXPECT_TRUE(becomesModified(false)) << "one undo step for the whole drag";
    const QImage seen = settledScreen();
    const auto raft = findRaft(seen, m_program->sheet());
    ASSERT_TRUE(raft) << keep(seen);
    EXPECT_NEAR(raft->p.length(), m_raft.p.length(), 3);
    ASSERT_TRUE(key(QStringLiteral("ctrl+shift+z")));
    EXPECT_TRUE(becomesModified(true));
}

TEST_F(OnTheRaft, SavingWhileTheButtonIsDownKeepsWhatIsSeenAndUndoTakesItBack) {
    ASSERT_TRUE(dragAndHold(m_raft.p.tip, onSheet(60, 180)));
    ASSERT_TRUE(becomesModified(true));
    const QJsonObject during = force(saved(), 0); // Ctrl+S: Ctrl holds the magnitude, as it does in any drag
    EXPECT_NEAR(number(during, "direction"), 60, 1);
    EXPECT_EQ(number(during, "magnitude"), 340);
    ASSERT_TRUE(moveTo(onSheet(80, 150)));
    ASSERT_TRUE(release());
    EXPECT_FALSE(isModified()) << "the drag ended with the save";
    ASSERT_TRUE(key(QStringLiteral("ctrl+z")));
    ASSERT_TRUE(becomesModified(true));
    const QJsonObject after = force(saved(), 0);
    EXPECT_EQ(number(after, "direction"), 25);
    EXPECT_EQ(number(after, "magnitude"), 340);
}

TEST_F(OnTheRaft, UndoWhileTheButtonIsDownTakesTheDragBack) {
    ASSERT_TRUE(dragAndHold(m_raft.p.tip, onSheet(60, 180)));
    ASSERT_TRUE(becomesModified(true));
    ASSERT_TRUE(key(QStringLiteral("ctrl+z")));
    ASSERT_TRUE(becomesModified(false));
    ASSERT_TRUE(moveTo(onSheet(80, 150)));
    ASSERT_TRUE(release());
    EXPECT_FALSE(isModified());
    EXPECT_TRUE(findRaft(settledScreen(), m_program->sheet()));
}

TEST_F(OnTheRaft, EscapeTakesBackTheDragInProgress) {
    ASSERT_TRUE(dragAndHold(m_raft.p.tip, onSheet(70, 180)));
    ASSERT_TRUE(eventually([&] { return !findRaft(screen(), m_program->sheet()); }))
        << "the arrow follows the mouse";
    ASSERT_TRUE(key(QStringLiteral("Escape")));
    const QImage seen = settledScreen();
    EXPECT_TRUE(findRaft(seen, m_program->sheet())) << keep(seen);
    ASSERT_TRUE(release());
    EXPECT_TRUE(findRaft(settledScreen(), m_program->sheet()));
    EXPECT_FALSE(isModified());
}

TEST_F(OnTheRaft, ADragFromTheCommonPointDrawsANewForce) {
    ASSERT_TRUE(drag(commonPoint(), onSheet(110, 150), QStringLiteral("alt")));
    ASSERT_TRUE(becomesModified(true));
    const QJsonObject sketch = saved();
    ASSERT_EQ(sketch[QStringLiteral("forces")].toArray().size(), 3);
    const QJsonObject added = force(sketch, 2);
    EXPECT_EQ(added[QStringLiteral("name")].toString(), QStringLiteral("S"));
    EXPECT_NEAR(number(added, "magnitude"), 150, 6);
    EXPECT_NEAR(number(added, "direction"), 110, 1.5);
}

TEST_F(OnTheRaft, ShiftHoldsTheDirectionOfADraggedTip) {
    ASSERT_TRUE(drag(m_raft.q.tip, onSheet(-60, 200), QStringLiteral("shift")));
    ASSERT_TRUE(becomesModified(true));
    const QJsonObject q = force(saved(), 1);
    EXPECT_EQ(number(q, "direction"), -40);
    EXPECT_NE(number(q, "magnitude"), 275);
}

TEST_F(OnTheRaft, CtrlHoldsTheMagnitudeOfADraggedTip) {
    ASSERT_TRUE(drag(m_raft.q.tip, onSheet(-60, 200), QStringLiteral("ctrl")));
    ASSERT_TRUE(becomesModified(true));
    const QJsonObject q = force(saved(), 1);
    EXPECT_EQ(number(q, "magnitude"), 275);
    EXPECT_NEAR(number(q, "direction"), -60, 3);
}

} // namespace TAILPOINT_FILE
