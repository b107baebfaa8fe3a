// SPDX-License-Identifier: MIT
// What is not in sight of the worked solution is set after the first paint: nobody may notice.
#include "panel_support.h"

#include "ui/panel/panel.h"
#include "ui/panel/solution_step.h"
#include "ui/panel/solution_view.h"

#include <QAccessible>
#include <QTest>

namespace tailpoint::test {

namespace TAILPOINT_FILE {

class SolutionLater : public ::testing::Test {
protected:
    void SetUp() override { document.replace(raft(), {}); }

    /// As it is shown for the first time, and as it is when all has been set.
    std::pair<QImage, QImage> firstAndLast(int height) {
        Panel panel(document);
        panel.resize(400, height);
        panel.show();
        QCoreApplication::processEvents(); // exposed and focused, as a paint finds it
        const QImage first = panel.viewport()->grab().toImage();
        auto* view = child<SolutionView>(panel, "solution");
        const int guessed = view->height();
        view->layOutAll();
        QCoreApplication::processEvents();
        m_waited = m_waited || view->height() != guessed;
        return {first, panel.viewport()->grab().toImage()};
    }

    SketchDocument document;
    bool m_waited = false; ///< something was set later
};

TEST_F(SolutionLater, WhoAsksForALineGetsItBeforeAnythingIsShown) {
    SolutionView view(document);
    view.resize(360, 400);
    const QList<SolutionStep*> steps = view.findChildren<SolutionStep*>();
    ASSERT_EQ(static_cast<std::size_t>(steps.size()), view.worked().steps.size());
    EXPECT_GT(view.sizeHint().height(), 100) << "about as high as it will be";
    EXPECT_GT(steps.back()->body().lineCount(), 0);
    EXPECT_FALSE(steps.front()->body().lineText(0).isEmpty());
    int bottom = 0;
    for (int i = 0; i < steps.size(); ++i) {
        EXPECT_EQ(view.stepRect(i).top(), bottom) << "step " << i;
        bottom += view.stepRect(i).height();
    }
    EXPECT_EQ(view.sizeHint().height(), bottom);
}

TEST_F(SolutionLater, AssistiveTechnologyReadsALastStepThatNobodyHasSeen) {
    Panel panel(document);
    panel.resize(400, 300);
    panel.show();
    const QList<SolutionStep*> steps = panel.findChildren<SolutionStep*>();
    QAccessibleInterface* body = QAccessible::queryAccessibleInterface(&steps.back()->body());
    ASSERT_NE(body, nullptr);
    ASSERT_GT(body->childCount(), 0);
    EXPECT_FALSE(body->child(0)->text(QAccessible::Name).isEmpty());
    EXPECT_FALSE(body->child(0)->rect().isEmpty());
}

TEST_F(SolutionLater, ItsHeightIsAboutRightBeforeItIsSet) {
    SolutionView view(document);
    view.resize(360, 400);
    const int before = view.sizeHint().height();
    view.layOutAll();
    EXPECT_GT(before, view.sizeHint().height() * 0.6);
    EXPECT_LT(before, view.sizeHint().height() * 1.6);
}

TEST_F(SolutionLater, TheFirstPaintShowsWhatTheLastOneDoes) {
    for (const int height : {500, 760, 1200, 2400}) {
        const auto [first, last] = firstAndLast(height);
        EXPECT_TRUE(first == last) << height << " pixels high";
    }
    EXPECT_TRUE(m_waited);
}

TEST_F(SolutionLater, AllIsSetSoonAfterItIsShown) {
    Panel panel(document);
    panel.resize(400, 300);
    panel.show();
    auto* view = child<SolutionView>(panel, "solution");
    const int before = view->height();
    ASSERT_TRUE(waitFor([&] { return view->height() != before; }));
    const int after = view->height();
    view->layOutAll();
    QCoreApplication::processEvents();
    EXPECT_EQ(view->height(), after);
}

} // namespace TAILPOINT_FILE

} // namespace tailpoint::test
