// SPDX-License-Identifier: MIT
// The worked solution read by keys, line by line.
#include "panel_fixture.h"

#include "ui/panel/solution_body.h"
#include "ui/panel/solution_step.h"
#include "ui/panel/solution_view.h"

#include <QAccessible>
#include <QScrollBar>

namespace tailpoint::test {

namespace TAILPOINT_FILE {

class SolutionReading : public PanelTest {
protected:
    void SetUp() override {
        PanelTest::SetUp();
        panel.activateWindow();
        solution = child<SolutionView>(panel, "solution");
        steps = solution->findChildren<SolutionStep*>();
        ASSERT_GE(steps.size(), 5);
        QApplication::setActiveWindow(&panel);
        int high = 0;
        do { // what comes to the panel later would move what is read
            high = panel.widget()->height();
            QTest::qWait(150);
        } while (panel.widget()->height() != high);
    }
    void press(Qt::Key key) { QTest::keyClick(QApplication::focusWidget(), key); }
    SolutionBody* bodyNow() { return qobject_cast<SolutionBody*>(QApplication::focusWidget()); }

    SolutionView* solution = nullptr;
    QList<SolutionStep*> steps;
};

TEST_F(SolutionReading, DownGoesThroughAllLinesInTheirOrderAndStaysInSight) {
    steps[0]->focusHead();
    QStringList read{QApplication::focusWidget()->accessibleName()};
    for (int i = 0; i < 200; ++i) {
        press(Qt::Key_Down);
        SolutionBody* body = bodyNow();
        const QString now =
            body ? body->lineText(body->currentLine()) : QApplication::focusWidget()->accessibleName();
        if (now == read.last())
            break; // behind the last line there is none
        read << now;
        const QRect line = body ? body->lineRect(body->currentLine()) : QApplication::focusWidget()->rect();
        EXPECT_TRUE(waitFor([&] { // the panel may be laid out anew after the key
            const QPoint at = QApplication::focusWidget()->mapTo(panel.viewport(), line.topLeft());
            return at.y() >= 0 && at.y() + std::min(line.height(), 400) <= panel.viewport()->height();
        })) << now.toStdString();
    }
    QStringList wanted;
    for (const SolutionStep* step : std::as_const(steps))
        if (!step->isHidden())
            wanted += step->spokenText().split(u'\n');
    EXPECT_EQ(read, wanted);
}

TEST_F(SolutionReading, FoldedStepsAreGoneOverAndLeftLeadsBackToTheHead) {
    steps[1]->setUnfolded(false);
    steps[0]->focusHead();
    press(Qt::Key_Up); // before the first there is nothing
    EXPECT_EQ(QApplication::focusWidget()->parentWidget(), steps[0]);
    press(Qt::Key_PageDown);
    press(Qt::Key_Down);
    EXPECT_EQ(QApplication::focusWidget()->parentWidget(), steps[2]) << "nothing is read of a folded step";
    press(Qt::Key_Down);
    ASSERT_NE(bodyNow(), nullptr);
    press(Qt::Key_Left);
    EXPECT_EQ(bodyNow(), nullptr);
    EXPECT_EQ(QApplication::focusWidget()->parentWidget(), steps[2]);
    press(Qt::Key_Left);
    EXPECT_FALSE(steps[2]->isUnfolded());
}

TEST_F(SolutionReading, EachStepIsAGroupWithItsTextAndANodeForEveryLine) {
    QAccessibleInterface* step = QAccessible::queryAccessibleInterface(steps[0]);
    ASSERT_NE(step, nullptr);
    EXPECT_EQ(step->role(), QAccessible::Grouping);
    ASSERT_NE(step->textInterface(), nullptr);
    EXPECT_EQ(step->textInterface()->text(0, -1), steps[0]->spokenText());
    QAccessibleInterface* body = QAccessible::queryAccessibleInterface(&steps[0]->body());
    ASSERT_EQ(body->childCount(), steps[0]->body().lineCount());
    for (int i = 0; i < body->childCount(); ++i) {
        QAccessibleInterface* line = body->child(i);
        EXPECT_EQ(line->role(), QAccessible::Paragraph);
        EXPECT_EQ(line->text(QAccessible::Name), steps[0]->body().lineText(i));
        EXPECT_EQ(line->parent(), body);
        EXPECT_EQ(body->indexOfChild(line), i);
        EXPECT_FALSE(line->text(QAccessible::Name).isEmpty());
        EXPECT_FALSE(line->rect().isEmpty());
    }
    steps[0]->setUnfolded(false);
    EXPECT_EQ(body->childCount(), 0);
}

/// Five forces that are added up make no triangle.
TEST_F(SolutionReading, AnEmptyTableIsNoTabStop) {
    auto* angles = child<QTableView>(panel, "angleTable");
    EXPECT_NE(angles->focusPolicy(), Qt::NoFocus);
    Sketch several = raft();
    for (const char* name : {"S", "T", "U"}) {
        Force force = several.forces.front();
        force.name = name;
        force.direction.form = AngleForm{90.0 + 20 * (name[0] - 'R')};
        several.forces.push_back(force);
    }
    ASSERT_FALSE(document.edit(several, QStringLiteral("several")));
    ASSERT_TRUE(waitFor([&] { return angles->model()->rowCount() == 0; }));
    EXPECT_EQ(angles->focusPolicy(), Qt::NoFocus);
}

} // namespace TAILPOINT_FILE

} // namespace tailpoint::test
