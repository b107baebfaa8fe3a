// SPDX-License-Identifier: MIT
// The sheet as assistive technology meets it.
#include "tests/ui/canvas_fixture.h"
#include "ui/document/given_edits.h"

#include <QAccessible>

namespace tailpoint {

class CanvasAccessible : public CanvasTest {
protected:
    QAccessibleInterface* sheet() { return QAccessible::queryAccessibleInterface(&canvas); }
    QAccessibleInterface* vector(int index) { return sheet()->child(index); }
    QAccessibleInterface* magnitudeOf(int index) { return vector(index)->child(0); }
    QAccessibleInterface* directionOf(int index) { return vector(index)->child(1); }
};

TEST_F(CanvasAccessible, TheSheetHoldsEveryForceAndTheResultantByName) {
    ASSERT_NE(sheet(), nullptr);
    EXPECT_EQ(sheet()->role(), QAccessible::Canvas);
    ASSERT_GE(sheet()->childCount(), 3);
    EXPECT_EQ(vector(0)->text(QAccessible::Name), QStringLiteral("Force P, 340 N at 25.0°"));
    EXPECT_EQ(vector(1)->text(QAccessible::Name), QStringLiteral("Force Q, 275 N at \u221240.0°"));
    EXPECT_TRUE(vector(2)->text(QAccessible::Name).startsWith(QStringLiteral("Resultant R, 520 N at")))
        << vector(2)->text(QAccessible::Name).toStdString();
    for (int i = 0; i < 3; ++i) {
        EXPECT_EQ(vector(i)->role(), QAccessible::Grouping);
        EXPECT_EQ(vector(i)->parent(), sheet());
        EXPECT_EQ(sheet()->indexOfChild(vector(i)), i);
        EXPECT_FALSE(vector(i)->rect().isEmpty());
    }
}

TEST_F(CanvasAccessible, MagnitudeAndDirectionAreValuesThatCanBeSet) {
    QAccessibleValueInterface* magnitude = magnitudeOf(0)->valueInterface();
    ASSERT_NE(magnitude, nullptr);
    EXPECT_DOUBLE_EQ(magnitude->currentValue().toDouble(), 340);
    magnitude->setCurrentValue(410.0);
    EXPECT_DOUBLE_EQ(this->magnitude(0), 410);
    EXPECT_EQ(vector(0)->text(QAccessible::Name), QStringLiteral("Force P, 410 N at 25.0°"));
    QAccessibleValueInterface* direction = directionOf(0)->valueInterface();
    direction->setCurrentValue(-12.34);
    EXPECT_DOUBLE_EQ(angle(0), -12.3);
    EXPECT_DOUBLE_EQ(direction->currentValue().toDouble(), -12.3);
    magnitude->setCurrentValue(-5.0);
    magnitude->setCurrentValue(QStringLiteral("much"));
    EXPECT_DOUBLE_EQ(this->magnitude(0), 410);
    EXPECT_EQ(steps(), 2);
}

TEST_F(CanvasAccessible, ValuesGrowAndShrinkByAction) {
    QAccessibleActionInterface* direction = directionOf(0)->actionInterface();
    ASSERT_NE(direction, nullptr);
    EXPECT_TRUE(direction->actionNames().contains(QAccessibleActionInterface::increaseAction()));
    direction->doAction(QAccessibleActionInterface::increaseAction());
    EXPECT_DOUBLE_EQ(angle(0), 26);
    direction->doAction(QAccessibleActionInterface::decreaseAction());
    EXPECT_DOUBLE_EQ(angle(0), 25);
    magnitudeOf(1)->actionInterface()->doAction(QAccessibleActionInterface::increaseAction());
    EXPECT_GT(magnitude(1), 275);
}

TEST_F(CanvasAccessible, IncreaseMeansALargerNumberOnAClockwiseSheetToo) {
    Sketch sketch = raft();
    sketch.reference.sense = Sense::cw;
    open(sketch);
    directionOf(0)->actionInterface()->doAction(QAccessibleActionInterface::increaseAction());
    EXPECT_DOUBLE_EQ(angle(0), 26);
}

TEST_F(CanvasAccessible, WhatIsToBeFoundIsReadOnlyAndReadsItsAnswer) {
    QAccessibleInterface* magnitude = magnitudeOf(2);
    EXPECT_TRUE(magnitude->state().readOnly);
    EXPECT_TRUE(magnitude->actionInterface()->actionNames() == QStringList{QStringLiteral("Make it given")});
    EXPECT_NEAR(magnitude->valueInterface()->currentValue().toDouble(), 519.9, 0.1);
    magnitude->valueInterface()->setCurrentValue(1.0);
    EXPECT_EQ(document.sketch(), raft());
}

TEST_F(CanvasAccessible, AForceIsSelectedAndDeletedByAction) {
    QAccessibleActionInterface* actions = vector(1)->actionInterface();
    ASSERT_NE(actions, nullptr);
    actions->doAction(QAccessibleActionInterface::setFocusAction());
    EXPECT_EQ(canvas.selected(), 1);
    EXPECT_TRUE(vector(1)->state().selected);
    ASSERT_TRUE(actions->actionNames().contains(QStringLiteral("Delete")));
    actions->doAction(QStringLiteral("Delete"));
    ASSERT_EQ(document.sketch().forces.size(), 1u);
    EXPECT_EQ(force(0).name, "P");
    EXPECT_FALSE(vector(1)->actionInterface()->actionNames().contains(QStringLiteral("Delete")))
        << "that is R now";
}

TEST_F(CanvasAccessible, AChildOutlivesItsForceAsInvalid) {
    QAccessibleInterface* resultant = vector(2);
    QAccessibleInterface* value = resultant->child(0);
    document.edit(withForcesRemoved(document.sketch(), {0}), QStringLiteral("Delete P"));
    EXPECT_FALSE(resultant->isValid());
    EXPECT_FALSE(value->isValid());
    EXPECT_TRUE(resultant->text(QAccessible::Name).isEmpty());
    EXPECT_TRUE(value->state().invalid);
    document.undo();
    EXPECT_TRUE(resultant->isValid());
}

TEST_F(CanvasAccessible, WhatHasNoAnswerAndWhatHasNoDirectionIsNamedInWords) {
    Sketch sketch = raft();
    sketch.forces[1].direction = {};
    sketch.forces[1].magnitude = {};
    open(sketch);
    EXPECT_EQ(vector(1)->text(QAccessible::Name),
              QStringLiteral("Force Q, magnitude to find, direction to find"));
    sketch.forces[1] = forceOf("Q", 340, -155);
    open(sketch);
    EXPECT_EQ(vector(2)->text(QAccessible::Name), QStringLiteral("Resultant R, 0 N, no direction"));
    sketch.sum.magnitude.value = 0;
    open(sketch);
    EXPECT_EQ(vector(2)->text(QAccessible::Name), QStringLiteral("Sum of the forces: zero"));
}

} // namespace tailpoint
