// SPDX-License-Identifier: MIT
// The whole sheet from the keyboard.
#include "tests/ui/canvas_fixture.h"
#include "ui/canvas/nudge.h"

#include <QLineEdit>
#include <QVBoxLayout>

namespace tailpoint {

TEST_F(CanvasTest, DeleteRemovesTheSelectedForceAndUndoBringsItBack) {
    const DisplayList before = canvas.figure().list;
    canvas.select(0);
    key(Qt::Key_Delete);
    ASSERT_EQ(document.sketch().forces.size(), 1u);
    EXPECT_EQ(force(0).name, "Q");
    EXPECT_EQ(canvas.selected(), kNoVector);
    EXPECT_FALSE(canvas.figure().list == before);
    EXPECT_EQ(steps(), 1);
    document.undo();
    EXPECT_EQ(document.sketch(), raft());
}

TEST_F(CanvasTest, TheSumIsNotDeleted) {
    QSignalSpy hints(&canvas, &Canvas::hint);
    canvas.select(kSumIndex);
    key(Qt::Key_Delete);
    EXPECT_EQ(document.sketch(), raft());
    EXPECT_EQ(hints.count(), 1);
}

TEST_F(CanvasTest, ArrowsTurnAndStretchTheSelectedForceInOneStepEach) {
    canvas.select(0);
    key(Qt::Key_Left);
    key(Qt::Key_Left);
    key(Qt::Key_Left);
    EXPECT_DOUBLE_EQ(angle(0), 28);
    EXPECT_EQ(steps(), 1);
    key(Qt::Key_Right);
    EXPECT_DOUBLE_EQ(angle(0), 27);
    EXPECT_EQ(steps(), 1);
    key(Qt::Key_Up);
    EXPECT_GT(magnitude(0), 340);
    EXPECT_EQ(steps(), 2);
    key(Qt::Key_Down);
    EXPECT_DOUBLE_EQ(magnitude(0), 340);
}

TEST_F(CanvasTest, ArrowsMoveTheSheetButNeverTheWholeFigureOffIt) {
    const QRectF sheet(canvas.rect());
    for (const Qt::Key way : {Qt::Key_Left, Qt::Key_Right, Qt::Key_Up, Qt::Key_Down}) {
        canvas.fit();
        canvas.select(kNoVector);
        const QPointF before = common();
        key(way);
        EXPECT_NE(common(), before);
        QSignalSpy hints(&canvas, &Canvas::hint);
        for (int i = 0; i < 100; ++i) {
            key(way);
        }
        const Eigen::Vector2d sum = document.result().solved.solutions[0].sum.vector;
        EXPECT_TRUE(sheet.contains(common()) || sheet.contains(tipOf(0)) || sheet.contains(tipOf(1)) ||
                    sheet.contains(pixel(sum)))
            << "key " << way;
        EXPECT_FALSE(hints.isEmpty()) << "a key that does nothing says why";
    }
}

TEST_F(CanvasTest, ShiftTakesOneShownDigit) {
    canvas.select(1);
    key(Qt::Key_Left, Qt::ShiftModifier);
    EXPECT_DOUBLE_EQ(angle(1), -39.9);
    key(Qt::Key_Down, Qt::ShiftModifier);
    EXPECT_DOUBLE_EQ(magnitude(1), 274);
}

TEST_F(CanvasTest, LeftIsCounterClockwiseAsSeenOnEverySheet) {
    Sketch sketch = raft();
    sketch.reference.sense = Sense::cw;
    open(sketch);
    const double before = document.result().solved.solutions[0].forces[0].vector.y();
    canvas.select(0);
    key(Qt::Key_Left);
    EXPECT_DOUBLE_EQ(angle(0), 24);
    EXPECT_GT(document.result().solved.solutions[0].forces[0].vector.y(), before);
}

TEST_F(CanvasTest, PressesInARowAreCommittedAsOneStepAfterAPause) {
    canvas.select(0);
    for (int i = 0; i < 3; ++i)
        key(Qt::Key_Left);
    EXPECT_EQ(document.history().count(), 0);
    EXPECT_EQ(document.undoText(), QStringLiteral("Turn P"));
    ASSERT_TRUE(QTest::qWaitFor([&] { return !document.isPreviewing(); }));
    EXPECT_EQ(document.history().count(), 1);
    key(Qt::Key_Left);
    EXPECT_EQ(steps(), 2);
    document.undo();
    EXPECT_DOUBLE_EQ(angle(0), 28);
    document.undo();
    EXPECT_EQ(document.sketch(), raft());
}

TEST_F(CanvasTest, AHeldKeyIsOneStepThatItsReleaseCommits) {
    canvas.select(0);
    const auto send = [&](QEvent::Type type, bool again) {
        QKeyEvent event(type, Qt::Key_Up, Qt::NoModifier, QString(), again);
        QCoreApplication::sendEvent(&canvas, &event);
    };
    send(QEvent::KeyPress, false);
    for (int i = 0; i < 5; ++i) {
        send(QEvent::KeyRelease, true); // as X11 repeats a key
        send(QEvent::KeyPress, true);
    }
    EXPECT_TRUE(document.isPreviewing());
    EXPECT_GT(magnitude(0), 340);
    send(QEvent::KeyRelease, false);
    EXPECT_TRUE(QTest::qWaitFor([&] { return !document.isPreviewing(); }));
    EXPECT_EQ(document.history().count(), 1);
    document.undo();
    EXPECT_EQ(document.sketch(), raft());
}

/// Keyboards wait some 660 ms before they repeat a key (X's own default), longer than a pause.
TEST_F(CanvasTest, NothingIsCommittedWhileAKeyIsDownHoweverLate) {
    canvas.select(0);
    QTest::keyPress(&canvas, Qt::Key_Up);
    EXPECT_FALSE(QTest::qWaitFor([&] { return !document.isPreviewing(); }, Nudges::kPause + 200));
    EXPECT_EQ(document.history().count(), 0);
    QTest::keyRelease(&canvas, Qt::Key_Up);
    EXPECT_TRUE(QTest::qWaitFor([&] { return !document.isPreviewing(); }));
    EXPECT_EQ(document.history().count(), 1);
}

TEST_F(CanvasTest, LosingTheKeysEndsTheStepOfTheKeys) {
    canvas.select(0);
    QTest::keyPress(&canvas, Qt::Key_Up);
    canvas.clearFocus();
    EXPECT_FALSE(document.isPreviewing());
    EXPECT_EQ(document.history().count(), 1);
}

TEST_F(CanvasTest, AnotherForceOrAPressOfTheMouseEndsTheStepOfTheKeys) {
    canvas.select(0);
    key(Qt::Key_Left);
    canvas.select(1);
    EXPECT_FALSE(document.isPreviewing());
    key(Qt::Key_Left);
    press(QPointF(5, 5));
    release(QPointF(5, 5));
    EXPECT_FALSE(document.isPreviewing());
    EXPECT_EQ(document.history().count(), 2);
}

TEST(CanvasNudge, AStepGoesToTheNextMultiple) {
    EXPECT_DOUBLE_EQ(nextMultiple(25.3, 1, 1), 26);
    EXPECT_DOUBLE_EQ(nextMultiple(25.3, 1, -1), 25);
    EXPECT_DOUBLE_EQ(nextMultiple(25, 1, 1), 26);
    EXPECT_DOUBLE_EQ(nextMultiple(25, 1, -1), 24);
    EXPECT_NEAR(nextMultiple(0.3, 0.1, 1), 0.4, 1e-15);
    EXPECT_NEAR(nextMultiple(-0.1, 0.1, 1), 0, 1e-15);
}

TEST_F(CanvasTest, AMagnitudeIsNotNudgedToZero) {
    Sketch sketch = raft();
    sketch.forces[0].magnitude.value = 5;
    open(sketch);
    canvas.select(0);
    for (int i = 0; i < 20; ++i) {
        key(Qt::Key_Down, Qt::ShiftModifier);
    }
    EXPECT_GT(magnitude(0), 0);
}

TEST_F(CanvasTest, TabGoesThroughForcesAndSumAndThenLeavesTheSheet) {
    QWidget window;
    QVBoxLayout layout(&window);
    Canvas sheet(document);
    QLineEdit next;
    layout.addWidget(&sheet);
    layout.addWidget(&next);
    window.show();
    window.activateWindow();
    sheet.setFocus();
    ASSERT_TRUE(QTest::qWaitFor([&] { return sheet.hasFocus(); }));
    for (const int vector : {0, 1, kSumIndex}) {
        QTest::keyClick(&sheet, Qt::Key_Tab);
        EXPECT_EQ(sheet.selected(), vector);
    }
    QTest::keyClick(&sheet, Qt::Key_Backtab, Qt::ShiftModifier);
    EXPECT_EQ(sheet.selected(), 1);
    QTest::keyClick(&sheet, Qt::Key_Tab);
    QTest::keyClick(&sheet, Qt::Key_Tab);
    EXPECT_TRUE(next.hasFocus());
    EXPECT_EQ(sheet.selected(), kNoVector);
    layout.removeWidget(&next);
    next.setParent(nullptr);
    layout.removeWidget(&sheet);
    sheet.setParent(nullptr);
}

TEST_F(CanvasTest, EscapeDropsTheSelection) {
    canvas.select(1);
    key(Qt::Key_Escape);
    EXPECT_EQ(canvas.selected(), kNoVector);
}

TEST_F(CanvasTest, InsertAddsAForceThatCoversNoOther) {
    key(Qt::Key_Insert);
    ASSERT_EQ(document.sketch().forces.size(), 3u);
    EXPECT_EQ(canvas.selected(), 2);
    EXPECT_GT(magnitude(2), 0);
    EXPECT_GT(std::abs(angle(2) - 25), 20);
    EXPECT_GT(std::abs(angle(2) + 40), 20);
    EXPECT_EQ(steps(), 1);
}

TEST_F(CanvasTest, AnEmptySheetTakesForcesFromTheKeyboard) {
    open(emptySketch());
    canvas.addForce();
    canvas.addForce();
    ASSERT_EQ(document.sketch().forces.size(), 2u);
    EXPECT_NE(angle(0), angle(1));
    EXPECT_EQ(document.result().solved.status, Status::unique);
}

TEST_F(CanvasTest, SelectionIsToldOnce) {
    QSignalSpy selections(&canvas, &Canvas::selectionChanged);
    canvas.select(0);
    canvas.select(0);
    canvas.select(99);
    ASSERT_EQ(selections.count(), 2);
    EXPECT_EQ(selections.at(0).at(0).toInt(), 0);
    EXPECT_EQ(selections.at(1).at(0).toInt(), kNoVector);
}

} // namespace tailpoint
