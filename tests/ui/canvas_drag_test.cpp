// SPDX-License-Identifier: MIT
// Dragging on the sheet: what a hand draws is what the document holds, one undo step a drag.
#include "tests/ui/canvas_fixture.h"

namespace tailpoint {

TEST_F(CanvasTest, ADragFromTheCommonPointDrawsANewForceNamedByTheSketch) {
    const DisplayList before = canvas.figure().list;
    drag(common(), polar(200, 90));
    ASSERT_EQ(document.sketch().forces.size(), 3u);
    EXPECT_EQ(force(2).name, "S");
    EXPECT_DOUBLE_EQ(magnitude(2), 200);
    EXPECT_DOUBLE_EQ(angle(2), 90);
    EXPECT_EQ(steps(), 1);
    EXPECT_EQ(canvas.selected(), 2);
    EXPECT_FALSE(canvas.figure().list == before);
}

TEST_F(CanvasTest, ANewForceWithoutLengthIsNothing) {
    drag(common(), common() + QPointF(4, 3));
    EXPECT_EQ(document.sketch(), raft());
    EXPECT_EQ(steps(), 0);
}

TEST_F(CanvasTest, ANewForceThatIsDraggedBackToTheCommonPointIsNothing) {
    press(common());
    move(polar(200, 90));
    ASSERT_EQ(document.sketch().forces.size(), 3u);
    move(common() + QPointF(2, 2));
    release(common() + QPointF(2, 2));
    EXPECT_EQ(document.sketch(), raft());
    EXPECT_EQ(steps(), 0);
}

TEST_F(CanvasTest, DraggingATipChangesMagnitudeAndDirection) {
    const DisplayList before = canvas.figure().list;
    const double sumBefore = solvedSum();
    drag(tipOf(0), polar(300, 50));
    EXPECT_DOUBLE_EQ(magnitude(0), 300);
    EXPECT_DOUBLE_EQ(angle(0), 50);
    EXPECT_EQ(steps(), 1);
    EXPECT_NE(solvedSum(), sumBefore);
    EXPECT_FALSE(canvas.figure().list == before);
}

TEST_F(CanvasTest, ATipIsHeldBesideItsPointWithoutAJump) {
    const QPointF grip(5, -4);
    drag(tipOf(0) + grip, polar(300, 50) + grip);
    EXPECT_DOUBLE_EQ(magnitude(0), 300);
    EXPECT_DOUBLE_EQ(angle(0), 50);
}

TEST_F(CanvasTest, TheNearestOfTwoTipsIsTaken) {
    Sketch sketch = raft();
    sketch.forces = {forceOf("P", 300, 20), forceOf("Q", 300, 22)};
    open(sketch);
    const QPointF between = (tipOf(0) + tipOf(1)) / 2;
    const QPointF nearer = between + (tipOf(1) - tipOf(0)) * 0.1;
    ASSERT_LT(QLineF(nearer, tipOf(0)).length(), 12);
    drag(nearer, nearer + QPointF(60, -60));
    EXPECT_DOUBLE_EQ(magnitude(0), 300);
    EXPECT_NE(magnitude(1), 300);
}

TEST_F(CanvasTest, APressFurtherThanTwelvePixelsFromATipTakesNoTip) {
    const QPointF out = tipOf(0) + (tipOf(0) - common()) / QLineF(tipOf(0), common()).length() * 13.5;
    drag(out, out + QPointF(0, -80));
    EXPECT_EQ(document.sketch(), raft());
}

TEST_F(CanvasTest, DraggingABodyChangesTheDirectionAlone) {
    drag(polar(200, 25), polar(180, 60));
    EXPECT_DOUBLE_EQ(magnitude(0), 340);
    EXPECT_DOUBLE_EQ(angle(0), 60);
    EXPECT_EQ(steps(), 1);
}

TEST_F(CanvasTest, ShiftHoldsTheDirection) {
    drag(tipOf(0), polar(250, 40), Qt::ShiftModifier);
    EXPECT_DOUBLE_EQ(angle(0), 25);
    EXPECT_NEAR(magnitude(0), 250 * std::cos(15 * std::acos(-1.0) / 180), 3);
    EXPECT_NE(magnitude(0), 340);
}

TEST_F(CanvasTest, CtrlHoldsTheMagnitude) {
    drag(tipOf(0), polar(250, 40), Qt::ControlModifier);
    EXPECT_DOUBLE_EQ(magnitude(0), 340);
    EXPECT_DOUBLE_EQ(angle(0), 40);
}

TEST_F(CanvasTest, AKeyThatIsHeldOrLetGoDuringADragCountsAtOnce) {
    press(tipOf(0));
    move(polar(250, 40));
    EXPECT_DOUBLE_EQ(magnitude(0), 250);
    QTest::keyPress(&canvas, Qt::Key_Control);
    EXPECT_DOUBLE_EQ(magnitude(0), 340);
    EXPECT_DOUBLE_EQ(angle(0), 40);
    QTest::keyRelease(&canvas, Qt::Key_Control);
    EXPECT_DOUBLE_EQ(magnitude(0), 250);
    release(polar(250, 40));
    EXPECT_EQ(steps(), 1);
}

TEST_F(CanvasTest, ADragSetsTheShownDigitsWithoutSnappingToo) {
    drag(tipOf(0), polar(287.3, 47.77), Qt::AltModifier);
    EXPECT_DOUBLE_EQ(magnitude(0), roundedToFigures(magnitude(0), 3));
    EXPECT_DOUBLE_EQ(angle(0), roundedToDecimals(angle(0), 1));
    EXPECT_NEAR(magnitude(0), 287.3, 1);
    EXPECT_NEAR(angle(0), 47.77, 0.2);
}

TEST_F(CanvasTest, ADragBackToItsStartLeavesNoStep) {
    const QPointF start = tipOf(0);
    press(start);
    move(polar(200, 70));
    ASSERT_NE(document.sketch(), raft());
    move(start + QPointF(1, 1));
    release(start + QPointF(1, 1));
    EXPECT_EQ(document.sketch(), raft());
    EXPECT_EQ(steps(), 0);
    EXPECT_FALSE(document.isModified());
}

TEST_F(CanvasTest, UndoTakesBackTheWholeDragAndRedoBringsItAgain) {
    drag(tipOf(0), polar(300, 50));
    const Sketch after = document.sketch();
    key(Qt::Key_Z, Qt::ControlModifier);
    EXPECT_EQ(document.sketch(), raft());
    document.redo();
    EXPECT_EQ(document.sketch(), after);
}

TEST_F(CanvasTest, EveryDragIsOneStep) {
    drag(tipOf(0), polar(300, 50));
    drag(tipOf(1), polar(200, -70));
    drag(common(), polar(150, 180));
    EXPECT_EQ(steps(), 3);
}

TEST_F(CanvasTest, EscapeTakesBackTheDragInProgress) {
    press(tipOf(0));
    move(polar(200, 70));
    ASSERT_NE(document.sketch(), raft());
    key(Qt::Key_Escape);
    EXPECT_EQ(document.sketch(), raft());
    EXPECT_EQ(steps(), 0);
    move(polar(100, 10));
    release(polar(100, 10));
    EXPECT_EQ(document.sketch(), raft()) << "the rest of the drag goes on";
}

TEST_F(CanvasTest, NothingStaysLitWhereAForceHasGone) {
    drag(common(), polar(150, 130));
    move(tipOf(2));
    EXPECT_EQ(canvas.cursor().shape(), Qt::SizeAllCursor);
    document.undo(); // the pointer rests
    settle();
    EXPECT_EQ(document.sketch(), raft());
    EXPECT_EQ(canvas.cursor().shape(), Qt::ArrowCursor);
}

TEST_F(CanvasTest, EscapeTakesBackANewForce) {
    press(common());
    move(polar(200, 130));
    ASSERT_EQ(document.sketch().forces.size(), 3u);
    key(Qt::Key_Escape);
    EXPECT_EQ(document.sketch(), raft());
    EXPECT_EQ(steps(), 0);
}

TEST_F(CanvasTest, TheScaleIsFrozenDuringADragAndTheSheetFitsAgainOnRelease) {
    const View before = canvas.view();
    press(tipOf(0));
    move(QPointF(1800, -500));
    EXPECT_EQ(canvas.view(), before);
    wheel(QPointF(100, 100), 240);
    EXPECT_EQ(canvas.view(), before);
    release(QPointF(1800, -500));
    EXPECT_LT(canvas.view().scale, before.scale);
    EXPECT_TRUE(canvas.rect().contains(tipOf(0).toPoint()));
}

TEST_F(CanvasTest, ABearingStaysABearingAndASlopeBecomesAnAngle) {
    Sketch sketch = raft();
    sketch.forces[0].direction.form = BearingForm{'N', 65, 'E'};
    sketch.forces[1].direction.form = SlopeForm{4, -3};
    open(sketch);
    drag(tipOf(0), polar(300, 150));
    drag(tipOf(1), polar(250, -60));
    const BearingForm* bearing = std::get_if<BearingForm>(&force(0).direction.form);
    ASSERT_NE(bearing, nullptr);
    EXPECT_EQ(*bearing, (BearingForm{'N', 60, 'W'}));
    EXPECT_DOUBLE_EQ(angle(1), -60);
}

TEST_F(CanvasTest, TheTipFollowsTheHandOnASheetThatMeasuresClockwiseFromAnotherAxis) {
    Sketch sketch = raft();
    sketch.reference = {90, Sense::cw};
    sketch.angleUnit = AngleUnit::gon;
    sketch.forces = {forceOf("P", 300, 50)};
    open(sketch);
    drag(tipOf(0), polar(200, 135)); // 45 degrees counter-clockwise from +y
    EXPECT_DOUBLE_EQ(magnitude(0), 200);
    EXPECT_DOUBLE_EQ(angle(0), -50);
}

TEST_F(CanvasTest, InTheTriangleTheSecondForceIsDraggedWhereItIsDrawn) {
    canvas.setConstruction(ConstructionKind::triangle);
    settle();
    const auto& solution = document.result().solved.solutions.at(0);
    const Eigen::Vector2d moved = solution.forces[0].vector; // the tail of Q
    const QPointF target = pixel(moved + Eigen::Vector2d(0, -200));
    drag(pixel(solution.sum.vector), target);
    EXPECT_DOUBLE_EQ(magnitude(1), 200);
    EXPECT_DOUBLE_EQ(angle(1), -90);
    EXPECT_DOUBLE_EQ(magnitude(0), 340);
}

TEST_F(CanvasTest, AnotherSketchDuringADragEndsTheDrag) {
    press(tipOf(0));
    move(polar(200, 70));
    Sketch other = raft();
    other.forces.pop_back();
    document.replace(other, QString());
    move(polar(150, 20));
    release(polar(150, 20));
    EXPECT_EQ(document.sketch(), other);
}

} // namespace tailpoint
