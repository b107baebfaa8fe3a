// SPDX-License-Identifier: MIT
// Labels put elsewhere by hand.
#include "tests/ui/canvas_fixture.h"

#include <QContextMenuEvent>
#include <QMenu>

namespace tailpoint {

class CanvasLabel : public CanvasTest {
protected:
    /// Middle of a group's label, pixels.
    QPointF labelOf(const char* id) {
        for (const Group& group : canvas.figure().list.groups)
            for (const Item& item : group.items)
                if (const auto* text = std::get_if<Text>(&item); text && group.id == id)
                    return QPointF(text->box.left + text->box.width / 2,
                                   text->box.top + text->box.height / 2) *
                           canvas.pixelsPerPoint();
        ADD_FAILURE() << "no label of " << id;
        return {};
    }
    static double between(QPointF a, QPointF b) { return QLineF(a, b).length(); }
    static constexpr double kPixel = 1; // a pin is kept to half a point
};

TEST_F(CanvasLabel, IsDraggedAndStaysThere) {
    const QPointF from = labelOf("force-P"), to = from + QPointF(-30, -40);
    drag(from, to);
    EXPECT_LT(between(labelOf("force-P"), to), kPixel);
    ASSERT_TRUE(force(0).label);
    EXPECT_EQ(steps(), 1);
    EXPECT_EQ(magnitude(0), 340); // nothing else moved
    EXPECT_EQ(angle(0), 25);
}

TEST_F(CanvasLabel, GoesWithItsArrow) {
    const QPointF from = labelOf("force-P");
    drag(from, from + QPointF(-30, -40));
    const QPointF offset = labelOf("force-P") - (common() + tipOf(0)) / 2;
    drag(tipOf(0), polar(300, 60));
    EXPECT_LT(between(labelOf("force-P") - (common() + tipOf(0)) / 2, offset), kPixel);
}

TEST_F(CanvasLabel, IsTakenBackByUndoAndByEscape) {
    const QPointF from = labelOf("sum");
    drag(from, from + QPointF(20, 50));
    EXPECT_TRUE(document.sketch().sum.label);
    document.undo();
    EXPECT_EQ(document.sketch(), raft());
    EXPECT_LT(between(labelOf("sum"), from), kPixel);
    press(from);
    move(from + QPointF(20, 50));
    EXPECT_TRUE(document.sketch().sum.label);
    key(Qt::Key_Escape);
    release(from + QPointF(20, 50));
    EXPECT_EQ(document.sketch(), raft());
}

TEST_F(CanvasLabel, IsNotMovedByAClickOrByATremblingHand) {
    const QPointF from = labelOf("force-Q");
    click(from);
    press(from);
    move(from + QPointF(2, 1));
    release(from + QPointF(2, 1));
    EXPECT_EQ(document.sketch(), raft());
    EXPECT_EQ(steps(), 0);
}

TEST_F(CanvasLabel, OfADirectionIsDraggedToo) {
    const QPointF from = labelOf("direction-force-P"), to = from + QPointF(40, 12);
    drag(from, to);
    EXPECT_TRUE(force(0).directionLabel);
    EXPECT_FALSE(force(0).label);
    EXPECT_LT(between(labelOf("direction-force-P"), to), kPixel);
}

TEST_F(CanvasLabel, FindsItsOwnPlaceAgainByTheMenu) {
    const QPointF from = labelOf("force-P");
    drag(from, from + QPointF(-30, -40));
    const QPointF body = polar(250, 25);
    QContextMenuEvent event(QContextMenuEvent::Mouse, body.toPoint(), canvas.mapToGlobal(body.toPoint()));
    QCoreApplication::sendEvent(&canvas, &event);
    int found = 0;
    for (QMenu* menu : canvas.findChildren<QMenu*>())
        for (QAction* action : menu->actions())
            if (action->text().startsWith(QStringLiteral("Let the label find its own place"))) {
                ++found;
                action->trigger();
            }
    qDeleteAll(canvas.findChildren<QMenu*>());
    EXPECT_EQ(found, 1);
    EXPECT_EQ(document.sketch(), raft());
    EXPECT_LT(between(labelOf("force-P"), from), kPixel);
}

TEST_F(CanvasLabel, IsPutElsewhereByKeysInOneStep) {
    const QPointF from = labelOf("force-P");
    canvas.select(0);
    key(Qt::Key_Left, Qt::ControlModifier);
    key(Qt::Key_Left, Qt::ControlModifier);
    key(Qt::Key_Up, Qt::ControlModifier);
    const double points = canvas.pixelsPerPoint();
    EXPECT_LT(between(labelOf("force-P"), from + QPointF(-8, -4) * points), kPixel);
    EXPECT_EQ(steps(), 1);
    EXPECT_EQ(magnitude(0), 340); // the arrow stays
    EXPECT_EQ(angle(0), 25);
    key(Qt::Key_Down, Qt::ControlModifier | Qt::ShiftModifier);
    EXPECT_LT(between(labelOf("force-P"), from + QPointF(-8, -3.5) * points), kPixel);
    document.undo();
    EXPECT_EQ(document.sketch(), raft());
    EXPECT_LT(between(labelOf("force-P"), from), kPixel);
}

TEST_F(CanvasLabel, OfADirectionIsPutElsewhereByAltAndArrowsInAStepOfItsOwn) {
    const QPointF from = labelOf("direction-force-P");
    canvas.select(0);
    key(Qt::Key_Right, Qt::ControlModifier);
    key(Qt::Key_Right, Qt::AltModifier);
    EXPECT_TRUE(force(0).label);
    ASSERT_TRUE(force(0).directionLabel);
    EXPECT_LT(between(labelOf("direction-force-P"), from + QPointF(4, 0) * canvas.pixelsPerPoint()), kPixel);
    EXPECT_EQ(steps(), 2);
}

TEST_F(CanvasLabel, IsFreedByCtrlAndBackspaceInOneStep) {
    canvas.select(kSumIndex);
    key(Qt::Key_Up, Qt::ControlModifier);
    ASSERT_TRUE(document.sketch().sum.label);
    key(Qt::Key_Backspace, Qt::ControlModifier);
    EXPECT_EQ(document.sketch(), raft());
    EXPECT_EQ(document.sketch().forces.size(), 2U); // Backspace alone would delete
    EXPECT_EQ(steps(), 2);
    document.undo();
    EXPECT_TRUE(document.sketch().sum.label);
}

TEST_F(CanvasLabel, StaysWhereItIsWhenNothingIsSelectedOrNothingIsPinned) {
    QSignalSpy hints(&canvas, &Canvas::hint);
    key(Qt::Key_Left, Qt::ControlModifier);
    EXPECT_EQ(document.sketch(), raft());
    canvas.select(1);
    key(Qt::Key_Backspace, Qt::ControlModifier);
    EXPECT_EQ(document.sketch(), raft());
    EXPECT_EQ(steps(), 0);
    EXPECT_GE(hints.count(), 1);
}

} // namespace tailpoint
