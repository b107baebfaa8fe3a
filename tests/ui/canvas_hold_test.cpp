// SPDX-License-Identifier: MIT
// The sheet holds still under a hand that draws, gives way at its edge, and shows what was drawn.
#include "tests/ui/canvas_fixture.h"
#include "ui/canvas/force_gesture.h"

namespace tailpoint {

class CanvasHold : public CanvasTest {
protected:
    double away(QPointF a, QPointF b) const { return QLineF(a, b).length(); }
    QPointF resultantTip() const { return pixel(document.result().solved.solutions.at(0).sum.vector); }
    bool isSeen(QPointF place) const { return QRectF(canvas.rect()).contains(place); }
    QPointF rightEdge(double y) const { return {canvas.width() - 1.0, y}; }
};

TEST_F(CanvasHold, ThreeForcesAreDrawnInARowFromTheSameSpot) {
    open(emptySketch());
    const QPointF ring = common();
    const QPointF ends[]{ring + QPointF(150, -70), ring + QPointF(110, 90), ring + QPointF(-60, -120)};
    for (const QPointF& end : ends) {
        drag(ring, end);
        EXPECT_LT(away(common(), ring), 1e-9);
    }
    EXPECT_EQ(document.sketch().forces.size(), 3u);
    EXPECT_EQ(steps(), 3);
}

TEST_F(CanvasHold, ADragThatStaysOnTheSheetMovesNothingElse) {
    open(emptySketch());
    drag(common(), common() + QPointF(40, -20)); // small on the sheet, and left so
    const View view = canvas.view();
    drag(tipOf(0), common() + QPointF(60, 30));
    EXPECT_EQ(canvas.view(), view);
}

TEST_F(CanvasHold, AResultantThatLeavesTheSheetIsBroughtInAroundTheCommonPoint) {
    const QPointF ring = common();
    const double scale = canvas.view().scale;
    // P's tip comes to 30 pixels from the right edge. The resultant lies 275 cos 40 = 210.7 N further right:
    // out.
    drag(tipOf(0), {canvas.width() - 30.0, tipOf(0).y()}, Qt::AltModifier);
    EXPECT_LT(away(common(), ring), 1e-9);
    EXPECT_TRUE(isSeen(resultantTip()));
    EXPECT_LT(canvas.view().scale, scale);
    // As far as is needed: the resultant now stands between 34 points and one step of the scale from the
    // edge.
    const double free = (canvas.width() - resultantTip().x()) / canvas.pixelsPerPoint();
    EXPECT_GE(free, 34 - 1e-6);
    EXPECT_LE(free, 34 + canvas.view().width / 8);
}

TEST_F(CanvasHold, ACloseViewOfATipIsLeftAsItIs) {
    wheel(tipOf(0), 480);
    wheel(tipOf(0), 480);
    const View close = canvas.view();
    ASSERT_FALSE(isSeen(common()));
    drag(tipOf(0), tipOf(0) + QPointF(-60, 40));
    EXPECT_EQ(canvas.view(), close);
}

TEST_F(CanvasHold, ATipLetGoBeyondTheEdgeIsBroughtIn) {
    const QPointF ring = common();
    drag(tipOf(0), {2000, tipOf(0).y()});
    EXPECT_TRUE(isSeen(tipOf(0)));
    EXPECT_TRUE(isSeen(resultantTip()));
    EXPECT_LT(away(common(), ring), 1e-9);
    drag(tipOf(0), {-700, common().y()}); // there is hardly any sheet to the left of the ring
    EXPECT_TRUE(isSeen(tipOf(0)));
    EXPECT_TRUE(isSeen(common()));
}

TEST_F(CanvasHold, WhatCannotBeBroughtInAroundTheCommonPointIsSaidAndLeft) {
    Sketch sketch = raft();
    sketch.forces = {forceOf("P", 340, 0), forceOf("Q", 50, 90)};
    open(sketch);
    const QPointF ring = common(); // 58 points from the left edge, some 77 pixels
    QSignalSpy hints(&canvas, &Canvas::hint);
    drag(tipOf(1), ring + QPointF(-52, -12));
    const View view = canvas.view();
    drag(tipOf(0), ring + QPointF(-52, 20)); // together 104 to the left: beyond the edge
    ASSERT_LT(resultantTip().x(), 0);
    EXPECT_EQ(canvas.view(), view);
    EXPECT_TRUE(hints.last().at(0).toString().contains(QStringLiteral("0 fits"))) << "the last word";
    key(Qt::Key_0);
    EXPECT_TRUE(isSeen(resultantTip()));
}

TEST_F(CanvasHold, ATypedValueTakesTheScaleDownAroundTheCommonPoint) {
    const QPointF ring = common();
    Sketch larger = raft();
    larger.forces[0].magnitude.value = 600;
    document.edit(larger, QStringLiteral("Change P"));
    EXPECT_LT(away(common(), ring), 1e-9);
    EXPECT_TRUE(isSeen(resultantTip()));
}

TEST_F(CanvasHold, AValueTypedAfterDrawingMovesNothingThatFits) {
    open(emptySketch());
    const QPointF ring = common();
    drag(ring, ring + QPointF(30, -20)); // small: a sheet that nobody drew on would be fitted anew
    const View view = canvas.view();
    key(Qt::Key_Up);
    key(Qt::Key_Left);
    EXPECT_EQ(canvas.view(), view);
    key(Qt::Key_0);
    EXPECT_GT(canvas.view().scale, 2 * view.scale) << "fitting is a command";
}

TEST_F(CanvasHold, AnotherConstructionLeavesTheCommonPointWhereItIs) {
    const QPointF ring = common();
    canvas.setConstruction(ConstructionKind::triangle);
    EXPECT_LT(away(common(), ring), 1e-9);
    canvas.setConstruction(ConstructionKind::parallelogram);
    EXPECT_LT(away(common(), ring), 1e-9);
}

TEST_F(CanvasHold, AtTheEdgeTheSheetGivesWayAndTheTipStaysUnderThePointer) {
    open(emptySketch());
    const QPointF ring = common();
    press(ring);
    move(ring + QPointF(100, -40));
    const QPointF edge = rightEdge(ring.y() - 40);
    move(edge);
    const double there = magnitude(0);
    ASSERT_TRUE(QTest::qWaitFor([&] { return common().x() < ring.x() - 60; })) << "it scrolls";
    EXPECT_LT(away(tipOf(0), edge), 8) << "within a step of snapping";
    EXPECT_GT(magnitude(0), there);
    EXPECT_LT(std::abs(common().y() - ring.y()), 1e-9) << "sideways only";
    EXPECT_EQ(steps(), 1);
    move(ring + QPointF(100, -40)); // away from the edge
    const QPointF now = common();
    settle();
    EXPECT_EQ(common(), now);
    release(ring + QPointF(100, -40));
    EXPECT_EQ(steps(), 1);
    EXPECT_DOUBLE_EQ(magnitude(0), roundedToFigures(magnitude(0), 3));
}

TEST_F(CanvasHold, HeldAtTheEdgeTheScaleStepsOutAndTheCommonPointIsNotLost) {
    const double scale = canvas.view().scale;
    press(tipOf(0));
    const QPointF edge = rightEdge(tipOf(0).y());
    move(edge, Qt::AltModifier);
    ASSERT_TRUE(QTest::qWaitFor([&] { return canvas.view().scale < 0.7 * scale; })) << "two steps";
    EXPECT_TRUE(isSeen(common()));
    EXPECT_LT(away(tipOf(0), edge), 3) << "the last shown digit is less than that";
    release(edge, Qt::AltModifier);
    EXPECT_TRUE(isSeen(tipOf(0)));
    EXPECT_TRUE(isSeen(resultantTip()));
    EXPECT_EQ(steps(), 1);
}

TEST_F(CanvasHold, EscapeTakesTheViewBackWithTheDrag) {
    const View before = canvas.view();
    press(tipOf(0));
    move(rightEdge(tipOf(0).y()));
    ASSERT_TRUE(QTest::qWaitFor([&] { return canvas.view().scale < before.scale; }));
    key(Qt::Key_Escape);
    EXPECT_EQ(canvas.view(), before);
    EXPECT_EQ(document.sketch(), raft());
    EXPECT_EQ(steps(), 0);
}

TEST_F(CanvasHold, AfterScrollingADragStillComesBackToItsStart) {
    const QPointF start = tipOf(0);
    press(start);
    move(rightEdge(start.y()));
    ASSERT_TRUE(QTest::qWaitFor([&] { return common().x() < pixel(0, 0).x() + 1 && magnitude(0) > 400; }));
    const QPointF home = polar(340, 25); // where the tip was, on the sheet as it lies now
    move(home);
    EXPECT_EQ(document.sketch(), raft());
    release(home);
    EXPECT_EQ(steps(), 0);
}

TEST_F(CanvasHold, OnlyADragThatDrawsToThePointerAsksForMoreSheet) {
    Scene scene(document);
    scene.resize(QSizeF(960, 660), 1);
    const GestureContext context{scene, true, [](const Sentence&) {}};
    const std::vector<DrawnVector> drawn = drawnVectors(scene);
    const DrawnVector& p = drawn.at(0);
    const QPointF tip = scene.sheet().toPixels(p.tip), away(60, -60);
    BodyGesture body(context, p, tip / 2);
    body.move({tip / 2 + away, {}});
    EXPECT_FALSE(body.reaches({}));
    body.cancel();
    TipGesture held(context, p, tip);
    EXPECT_FALSE(held.reaches({})) << "a press is no drag yet";
    held.move({tip + away, {}});
    EXPECT_TRUE(held.reaches({}));
    EXPECT_TRUE(held.reaches(Qt::ShiftModifier));
    EXPECT_FALSE(held.reaches(Qt::ControlModifier)) << "its magnitude is held";
    held.cancel();
}

TEST_F(CanvasHold, SSwitchesSnappingInTheMiddleOfADrag) {
    press(tipOf(0));
    move(polar(287.3, 47.77));
    const double snapped = magnitude(0);
    EXPECT_DOUBLE_EQ(angle(0), 48);
    key(Qt::Key_S);
    EXPECT_FALSE(canvas.snapping());
    EXPECT_NEAR(magnitude(0), 287.3, 0.6);
    EXPECT_NEAR(angle(0), 47.77, 0.06);
    key(Qt::Key_S, Qt::ShiftModifier); // with what is held meanwhile
    EXPECT_TRUE(canvas.snapping());
    move(polar(287.3, 47.77));
    EXPECT_DOUBLE_EQ(magnitude(0), snapped);
    release(polar(287.3, 47.77));
    EXPECT_EQ(steps(), 1);
}

TEST_F(CanvasHold, SSwitchesSnappingWithoutADragAndSaysSo) {
    QSignalSpy told(&canvas, &Canvas::snappingChanged), hints(&canvas, &Canvas::hint);
    key(Qt::Key_S);
    EXPECT_FALSE(canvas.snapping());
    EXPECT_TRUE(hints.last().at(0).toString().contains(QStringLiteral("off")));
    key(Qt::Key_S, Qt::ControlModifier); // that is for the window
    EXPECT_FALSE(canvas.snapping());
    key(Qt::Key_S);
    EXPECT_TRUE(canvas.snapping());
    EXPECT_EQ(told.count(), 2);
}

} // namespace tailpoint
