// SPDX-License-Identifier: MIT
// The lecture from the window: built when it is first asked for, its own look remembered.
#include "ui/canvas/canvas.h"
#include "ui/document/sketch_document.h"
#include "ui/lecture/lecture_view.h"
#include "ui/window/main_window.h"

#include <QAction>
#include <QApplication>
#include <QProxyStyle>
#include <QSettings>
#include <QTemporaryDir>
#include <QTest>
#include <gtest/gtest.h>
#include <memory>

namespace tailpoint {
namespace TAILPOINT_FILE {

LectureView* lectureOfProgram() {
    for (QWidget* widget : QApplication::topLevelWidgets())
        if (auto* view = qobject_cast<LectureView*>(widget))
            return view;
    return nullptr;
}

class LectureOfWindow : public ::testing::Test {
protected:
    void SetUp() override {
        ASSERT_TRUE(folder.isValid());
        QSettings::setPath(QSettings::NativeFormat, QSettings::UserScope, folder.path());
        open();
    }
    void open() {
        window.reset();
        window = std::make_unique<MainWindow>();
        window->show();
        ASSERT_TRUE(window->openPath(QStringLiteral(TAILPOINT_SAMPLES "/survey-raft.json")));
    }
    LectureView* begin() {
        auto* action = window->findChild<QAction*>(QStringLiteral("lecture"));
        EXPECT_NE(action, nullptr);
        EXPECT_EQ(action->shortcut(), QKeySequence(Qt::Key_F5));
        action->trigger();
        return lectureOfProgram();
    }
    QTemporaryDir folder;
    std::unique_ptr<MainWindow> window;
};

TEST_F(LectureOfWindow, IsBuiltOnFirstUseAndGoesWithTheWindow) {
    EXPECT_EQ(lectureOfProgram(), nullptr);
    const LectureView* view = begin();
    ASSERT_NE(view, nullptr);
    EXPECT_TRUE(view->isVisible());
    EXPECT_EQ(begin(), view);
    window.reset();
    EXPECT_EQ(lectureOfProgram(), nullptr);
}

TEST_F(LectureOfWindow, ItsColoursAndItsMovementAreRememberedAndTheWindowKeepsItsOwn) {
    LectureView* view = begin();
    ASSERT_NE(view, nullptr);
    EXPECT_EQ(view->theme(), ThemeName::slate);
    EXPECT_TRUE(view->moves());
    const ThemeName before = window->canvas().theme();
    QTest::keyClick(&view->canvas(), Qt::Key_C);
    QTest::keyClick(&view->canvas(), Qt::Key_A);
    EXPECT_EQ(window->canvas().theme(), before);
    open();
    view = begin();
    ASSERT_NE(view, nullptr);
    EXPECT_EQ(view->theme(), ThemeName::paper);
    EXPECT_FALSE(view->moves());
}

/// As styles of a desktop do whose animations are off.
class StillStyle : public QProxyStyle {
public:
    int styleHint(StyleHint hint, const QStyleOption* option, const QWidget* widget,
                  QStyleHintReturn* more) const override {
        return hint == SH_Widget_Animation_Duration ? 0 : QProxyStyle::styleHint(hint, option, widget, more);
    }
};

TEST_F(LectureOfWindow, ItMovesAsTheDesktopDoesUnlessThePersonChose) {
    const QString before = QApplication::style()->name();
    QApplication::setStyle(new StillStyle);
    LectureView* view = begin();
    ASSERT_NE(view, nullptr);
    EXPECT_FALSE(view->moves());
    QTest::keyClick(&view->canvas(), Qt::Key_A);
    open();
    view = begin();
    ASSERT_NE(view, nullptr);
    EXPECT_TRUE(view->moves()) << "chosen";
    QApplication::setStyle(before);
}

TEST_F(LectureOfWindow, FollowsTheSketchThatIsOpenWhenItBegins) {
    LectureView* view = begin();
    ASSERT_NE(view, nullptr);
    QTest::keyClick(&view->canvas(), Qt::Key_Escape);
    EXPECT_FALSE(view->isVisible());
    Sketch sketch = window->document().sketch();
    sketch.forces.at(0).magnitude.value = 360;
    ASSERT_FALSE(window->document().edit(sketch, QStringLiteral("change")));
    begin();
    EXPECT_EQ(view->document().sketch().forces.at(0).magnitude.value, 360);
    window->document().replace(emptySketch(), QString()); // nothing to teach, and nothing breaks
    begin();
    for (const Qt::Key key : {Qt::Key_Space, Qt::Key_End, Qt::Key_Home, Qt::Key_N, Qt::Key_T, Qt::Key_O})
        QTest::keyClick(&view->canvas(), key);
    EXPECT_TRUE(view->isVisible());
}

} // namespace TAILPOINT_FILE
} // namespace tailpoint
