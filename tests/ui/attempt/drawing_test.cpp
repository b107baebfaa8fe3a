// SPDX-License-Identifier: MIT
// A learner's own vector on the sheet: where it may be taken, beyond the sheet's edge, and by the keyboard.
#include "core/practice/problem.h"
#include "tests/ui/attempt/own_answer_fixture.h"
#include "ui/canvas/own_layer.h"
#include "ui/practice/problem_file.h"

#include <cmath>

namespace tailpoint::test {
namespace TAILPOINT_FILE {

class OwnDrawing : public OwnAnswerTest {
protected:
    bool isOnSheet(const Eigen::Vector2d& tip) {
        const View& view = window->canvas().view();
        const Point at = view.toSheet(tip);
        return at.x > 0 && at.y > 0 && at.x < view.width && at.y < view.height;
    }
    Eigen::Vector2d tip() { return answer().drawn(kSumVector).value_or(Eigen::Vector2d(0, 0)); }
    void dragToTheEdge() {
        Canvas& canvas = window->canvas();
        answer().draw(kSumVector, Eigen::Vector2d(100, 200));
        QTest::mousePress(&canvas, Qt::LeftButton, {}, pixel(100, 200));
        QTest::mouseMove(&canvas, pixel(150, 150));
        QTest::mouseMove(&canvas, QPoint(canvas.width() - 3, canvas.height() / 2));
    }
};

/// All senses of pushes and pulls: the sketch turned into its opposite has the other senses.
TEST_F(OwnDrawing, TheHandleOfALineStandsInTheSenseThatIsGivenWhateverTheAnswerIs) {
    int turned = 0, handles = 0;
    for (std::uint32_t number = 1; number <= 12; ++number)
        for (const bool isOpposite : {false, true}) {
            const auto made = problem({"push-or-pull", 1 + static_cast<int>(number % 3), number});
            ASSERT_TRUE(made);
            Sketch sketch = withPracticeKeys(*made);
            const auto given = [](const Force& force) { return isGiven(force.magnitude); };
            for (Force& force : sketch.forces)
                if (auto* angle = std::get_if<AngleForm>(&force.direction.form);
                    isOpposite && given(force) && angle != nullptr)
                    *angle = AngleForm{angle->value + 180};
            const Solved solved = solve(sketch);
            for (const SolvedForce& force : solved.solutions.at(0).forces)
                turned += force.turned ? 1 : 0;
            window->document().replace(sketch, {});
            if (!answer().isOn())
                begin();
            Scene scene(window->document());
            scene.setOwnAnswer(&answer());
            scene.resize({900, 600}, 96.0 / 72);
            scene.fit();
            for (const OwnTip& own : ownTips(scene)) {
                const auto unit = unitVector(sketch.forces[own.vector.index].direction, sketch);
                ASSERT_TRUE(unit);
                EXPECT_GT(own.tip.x() * double(unit->cos) + own.tip.y() * double(unit->sin), 0)
                    << number << ' ' << sketch.forces[own.vector.index].name;
                ++handles;
            }
        }
    EXPECT_GE(handles, 48);
    EXPECT_GT(turned, 8) << "of both kinds";
}

TEST_F(OwnDrawing, ADragThatRestsAtTheSheetsEdgeGetsMoreSheetAndTheTipStaysOnIt) {
    begin();
    dragToTheEdge();
    const double first = tip().x();
    ASSERT_TRUE(waitFor([&] { return tip().x() > 1.3 * first; }, 20000))
        << "from " << first << " to " << tip().x();
    Canvas& canvas = window->canvas();
    QTest::mouseRelease(&canvas, Qt::LeftButton, {}, QPoint(canvas.width() - 3, canvas.height() / 2));
    EXPECT_TRUE(isOnSheet(tip()));
    EXPECT_TRUE(isOnSheet({0, 0}));
    const Eigen::Vector2d far = tip();
    QTest::mousePress(&canvas, Qt::LeftButton, {}, pixel(far.x(), far.y()));
    QTest::mouseMove(&canvas, pixel(far.x() * 0.8, far.y()));
    QTest::mouseMove(&canvas, pixel(far.x() * 0.5, far.y()));
    QTest::mouseRelease(&canvas, Qt::LeftButton, {}, pixel(far.x() * 0.5, far.y()));
    EXPECT_LT(tip().x(), 0.7 * far.x()) << "it can be taken again";
}

TEST_F(OwnDrawing, FitShowsWhatIsDrawn) {
    begin();
    answer().draw(kSumVector, Eigen::Vector2d(4000, 300));
    EXPECT_FALSE(isOnSheet(tip()));
    window->canvas().fit();
    EXPECT_TRUE(isOnSheet(tip()));
    EXPECT_TRUE(isOnSheet({0, 0}));
    answer().forgetDrawn();
    window->canvas().fit();
    EXPECT_FALSE(isOnSheet({4000, 300}));
}

TEST_F(OwnDrawing, ArrowKeysDrawWhatIsAskedAndItsValueIsSpoken) {
    begin();
    Canvas& canvas = window->canvas();
    canvas.setFocus(Qt::TabFocusReason);
    for (int i = 0; i < 3; ++i) // P, Q, R
        QTest::keyClick(&canvas, Qt::Key_Tab);
    ASSERT_EQ(canvas.selected(), kSumIndex);
    EXPECT_FALSE(answer().isDrawn());
    QTest::keyClick(&canvas, Qt::Key_Up);
    ASSERT_TRUE(answer().drawn(kSumVector));
    const double length = tip().norm(), way = std::atan2(tip().y(), tip().x());
    QTest::keyClick(&canvas, Qt::Key_Up);
    EXPECT_GT(tip().norm(), length);
    EXPECT_NEAR(std::atan2(tip().y(), tip().x()), way, 1e-9);
    QTest::keyClick(&canvas, Qt::Key_Right); // clockwise, by whole degrees
    const double after = std::atan2(tip().y(), tip().x()) * 180 / std::acos(-1.0);
    EXPECT_LT(after, way * 180 / std::acos(-1.0));
    EXPECT_NEAR(after, std::round(after), 1e-9);
    EXPECT_FALSE(window->document().canUndo()) << "the question is as it was";
    const QString own = canvas.ownDrawn(kSumIndex);
    EXPECT_TRUE(own.contains(QStringLiteral(" N at "))) << own.toStdString();
    QStringList words;
    readAll(QAccessible::queryAccessibleInterface(&canvas), words);
    EXPECT_TRUE(words.join(u'\n').contains(QStringLiteral("as you draw it ") + own))
        << words.join(u'\n').toStdString();
    QTest::keyClick(&canvas, Qt::Key_Delete);
    EXPECT_FALSE(answer().isDrawn());
    EXPECT_FALSE(window->document().canUndo());
}

/// From a pull through nothing to a push.
TEST_F(OwnDrawing, AlongALineTheKeysGoBeyondTheCommonPoint) {
    const auto made = problem({"push-or-pull", 1, 4});
    ASSERT_TRUE(made);
    window->document().replace(withPracticeKeys(*made), {});
    begin();
    const VectorId vector = answer().drawable().front();
    window->canvas().setFocus();
    window->canvas().select(vector.index);
    const auto unit =
        unitVector(window->document().sketch().forces[vector.index].direction, window->document().sketch());
    ASSERT_TRUE(unit);
    double along = 1;
    for (int i = 0; i < 400 && along > 0; ++i) {
        QTest::keyClick(&window->canvas(), Qt::Key_Down);
        const auto at = answer().drawn(vector);
        ASSERT_TRUE(at);
        along = at->x() * double(unit->cos) + at->y() * double(unit->sin);
    }
    EXPECT_LT(along, 0);
    EXPECT_TRUE(field(answer().fields().front().name.c_str())->placeholderText().startsWith(QChar(0x2212)))
        << "a push is negative";
}

} // namespace TAILPOINT_FILE
} // namespace tailpoint::test
