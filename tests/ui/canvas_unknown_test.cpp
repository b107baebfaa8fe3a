// SPDX-License-Identifier: MIT
// What is to be found: it can't be dragged, it follows live, and of two answers either can be taken.
#include "tests/ui/canvas_fixture.h"

#include <QLineEdit>

namespace tailpoint {

/// R = 400 N at 10 degrees of P (magnitude to find, at 40 degrees) and Q (320 N, direction to find): two
/// answers.
Sketch twoAnswers() {
    Sketch sketch = emptySketch();
    Force p = forceOf("P", 0, 40), q = forceOf("Q", 320, 0);
    p.magnitude = {};
    q.direction = {};
    sketch.forces = {p, q};
    sketch.sum = forceOf("R", 400, 10);
    return sketch;
}

class CanvasUnknown : public CanvasTest {
protected:
    void SetUp() override {
        CanvasTest::SetUp();
        open(twoAnswers());
        ASSERT_EQ(document.result().solved.solutions.size(), 2u);
    }
    Eigen::Vector2d answer(std::size_t which, std::size_t force) {
        return document.result().solved.solutions.at(which).forces.at(force).vector;
    }
};

TEST_F(CanvasTest, TheResultantIsNotDraggedAndSaysWhy) {
    QSignalSpy hints(&canvas, &Canvas::hint);
    const QPointF tip = pixel(document.result().solved.solutions[0].sum.vector);
    drag(tip, tip + QPointF(30, -90));
    EXPECT_EQ(document.sketch(), raft());
    EXPECT_EQ(steps(), 0);
    ASSERT_FALSE(hints.isEmpty());
    bool said = false;
    for (const QList<QVariant>& hint : hints) {
        said = said || hint.at(0).toString().contains(QStringLiteral("to be found"));
    }
    EXPECT_TRUE(said);
}

TEST_F(CanvasUnknown, ADragOfTheKnownTipMovesLociAndBothAnswersLive) {
    const DisplayList before = canvas.figure().list;
    const Eigen::Vector2d first = answer(0, 0), second = answer(1, 0);
    const QPointF tip = pixel(document.result().solved.solutions[0].sum.vector);
    press(tip);
    move(polar(420, 5));
    EXPECT_DOUBLE_EQ(document.sketch().sum.magnitude.value.value(), 420);
    EXPECT_FALSE(answer(0, 0) == first);
    EXPECT_FALSE(answer(1, 0) == second);
    EXPECT_FALSE(canvas.figure().list == before);
    release(polar(420, 5));
    EXPECT_EQ(steps(), 1);
}

TEST_F(CanvasUnknown, ATipOfWhichThePartIsGivenChangesThatPartAlone) {
    drag(pixel(answer(0, 1)), pixel(answer(0, 1) * 0.75), {});
    EXPECT_FALSE(isGiven(force(1).direction));
    EXPECT_DOUBLE_EQ(magnitude(1), 240);
    EXPECT_FALSE(isGiven(force(0).magnitude));
    EXPECT_DOUBLE_EQ(angle(0), 40);
}

TEST_F(CanvasUnknown, ABodyWhoseDirectionIsToBeFoundIsNotTurned) {
    const QPointF middle = pixel(answer(0, 1) * 0.5);
    drag(middle, middle + QPointF(40, 40));
    EXPECT_EQ(document.sketch(), twoAnswers());
}

TEST_F(CanvasUnknown, AClickOnTheOtherAnswerTakesIt) {
    const DisplayList before = canvas.figure().list;
    const Eigen::Vector2d other = answer(1, 1);
    click(pixel(other * 0.6));
    EXPECT_EQ(document.result().chosen, 1u);
    EXPECT_EQ(steps(), 0);
    EXPECT_FALSE(canvas.figure().list == before);
    click(pixel(answer(0, 1) * 0.6));
    EXPECT_EQ(document.result().chosen, 0u);
}

TEST_F(CanvasUnknown, AClickOnTheOtherAnswersLabelTakesItToo) {
    for (const Group& group : canvas.figure().list.groups) {
        for (const Item& item : group.items) {
            const Text* text = std::get_if<Text>(&item);
            if (text != nullptr && group.id.starts_with("other-")) {
                const QPointF at(text->box.left + text->box.width / 2, text->box.top + text->box.height / 2);
                const std::size_t before = document.result().chosen;
                click(at * canvas.pixelsPerPoint());
                EXPECT_EQ(document.result().chosen, 1 - before);
                EXPECT_FALSE(canvas.findChild<QLineEdit*>(QStringLiteral("labelEditor"))->isVisible());
                return;
            }
        }
    }
    FAIL() << "the other answer has no label";
}

TEST_F(CanvasUnknown, ADragOnTheOtherAnswerTakesNothing) {
    const QPointF at = pixel(answer(1, 1) * 0.6);
    drag(at, at + QPointF(30, 30));
    EXPECT_EQ(document.result().chosen, 0u);
    EXPECT_EQ(document.sketch(), twoAnswers());
}

TEST_F(CanvasUnknown, AKeyTakesTheOtherAnswer) {
    key(Qt::Key_N);
    EXPECT_EQ(document.result().chosen, 1u);
    key(Qt::Key_N);
    EXPECT_EQ(document.result().chosen, 0u);
}

TEST_F(CanvasTest, WhereThereIsNoOtherAnswerTheKeySaysSo) {
    QSignalSpy hints(&canvas, &Canvas::hint);
    key(Qt::Key_N);
    EXPECT_EQ(hints.count(), 1);
}

TEST_F(CanvasUnknown, WhatIsToBeFoundIsNotNudgedAndSaysWhy) {
    QSignalSpy hints(&canvas, &Canvas::hint);
    canvas.select(1);
    key(Qt::Key_Left);
    EXPECT_EQ(document.sketch(), twoAnswers());
    ASSERT_EQ(hints.count(), 1);
    EXPECT_TRUE(hints.at(0).at(0).toString().contains(QStringLiteral("to be found")));
    key(Qt::Key_Up);
    EXPECT_GT(magnitude(1), 320);
}

TEST_F(CanvasUnknown, ASketchWithoutAnAnswerIsStillDrawnAndDragged) {
    Sketch sketch = twoAnswers();
    sketch.forces[1].magnitude.value = 20;
    open(sketch);
    ASSERT_EQ(document.result().solved.solutions.size(), 0u);
    drag(polar(400, 10), polar(30, 30));
    EXPECT_DOUBLE_EQ(document.sketch().sum.magnitude.value.value(), 30);
    EXPECT_FALSE(document.result().solved.solutions.empty());
}

} // namespace tailpoint
