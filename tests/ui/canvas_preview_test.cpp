// SPDX-License-Identifier: MIT
// A drag that something else ends: an undo, a save, another edit. The hand then holds nothing any more.
#include "tests/ui/canvas_fixture.h"

#include <QTemporaryDir>

namespace tailpoint {

TEST_F(CanvasTest, ADragIsShownWithoutAStepUntilItsRelease) {
    press(tipOf(0));
    move(polar(300, 60));
    EXPECT_TRUE(document.isPreviewing());
    EXPECT_EQ(document.history().count(), 0);
    EXPECT_DOUBLE_EQ(angle(0), 60);
    release(polar(300, 60));
    EXPECT_FALSE(document.isPreviewing());
    EXPECT_EQ(document.history().count(), 1);
}

TEST_F(CanvasTest, UndoInTheMiddleOfADragTakesItBackAndLetsGo) {
    press(tipOf(0));
    move(polar(300, 60));
    document.undo();
    EXPECT_EQ(document.sketch(), raft());
    EXPECT_FALSE(canvas.isDragging());
    move(polar(200, 80));
    release(polar(200, 80));
    EXPECT_EQ(document.sketch(), raft()) << "the hand holds nothing any more";
    document.redo();
    EXPECT_DOUBLE_EQ(angle(0), 60);
    EXPECT_EQ(document.history().count(), 1);
}

TEST_F(CanvasTest, SavingInTheMiddleOfADragKeepsWhatIsSeen) {
    const QTemporaryDir folder;
    press(tipOf(0));
    move(polar(300, 60));
    ASSERT_FALSE(document.save(folder.filePath(QStringLiteral("a.json"))));
    EXPECT_FALSE(canvas.isDragging());
    release(polar(300, 60));
    SketchDocument other;
    ASSERT_FALSE(other.open(folder.filePath(QStringLiteral("a.json"))));
    EXPECT_EQ(other.sketch(), document.sketch());
    EXPECT_FALSE(document.isModified());
    document.undo();
    EXPECT_EQ(document.sketch(), raft());
}

TEST_F(CanvasTest, EscapeAfterAnUndoneStepLeavesWhatCouldBeRedone) {
    drag(tipOf(0), polar(300, 60));
    document.undo();
    press(tipOf(0));
    move(polar(250, 90));
    key(Qt::Key_Escape);
    release(polar(250, 90));
    EXPECT_EQ(document.sketch(), raft());
    document.redo();
    EXPECT_DOUBLE_EQ(angle(0), 60);
}

TEST_F(CanvasTest, AnotherAnswerTakenFromOutsideLeavesADragInTheHand) {
    Sketch two = emptySketch();
    two.forces = {forceOf("P", 250, 0), forceOf("Q", 300, 0)};
    two.forces[0].direction = two.forces[1].direction = {};
    two.sum = forceOf("R", 420, 5);
    open(two);
    press(tipOf(0));
    document.choose(1);
    EXPECT_TRUE(canvas.isDragging());
    release(tipOf(0));
}

} // namespace tailpoint
