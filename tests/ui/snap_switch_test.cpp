// SPDX-License-Identifier: MIT
// The switch at the window's foot and the bar's Snap are one.
#include "tests/ui/window_fixture.h"
#include "ui/canvas/canvas.h"
#include "ui/window/bar.h"
#include "ui/window/snap_switch.h"

#include <QAccessible>
#include <QLabel>

namespace tailpoint::test {
namespace TAILPOINT_FILE {

class SnapSwitchTest : public OpenWindow {
protected:
    SnapSwitch& control() { return *child<SnapSwitch>(*window, "snapSwitch"); }
    bool isOn() { return window->canvas().snapping(); }
};

TEST_F(SnapSwitchTest, SwitchBarAndSheetAreAlwaysOfOneMind) {
    auto* bar = child<BarButton>(*window, "snapButton");
    EXPECT_TRUE(control().isChecked() && bar->isChecked() && isOn());
    QTest::mouseClick(&control(), Qt::LeftButton);
    EXPECT_FALSE(control().isChecked() || bar->isChecked() || isOn());
    QTest::mouseClick(bar, Qt::LeftButton);
    EXPECT_TRUE(control().isChecked() && bar->isChecked() && isOn());
    window->canvas().setFocus();
    QTest::keyClick(&window->canvas(), Qt::Key_S);
    EXPECT_FALSE(control().isChecked() || bar->isChecked() || isOn());
    open(); // the next start has it as it was left
    EXPECT_FALSE(control().isChecked() || isOn());
}

TEST_F(SnapSwitchTest, TheKeyboardReachesItAndItSaysWhatItIs) {
    control().setFocus(Qt::TabFocusReason);
    QTest::keyClick(&control(), Qt::Key_Space);
    EXPECT_FALSE(isOn());
    EXPECT_TRUE(control().focusPolicy() & Qt::TabFocus);
    QAccessibleInterface* seen = QAccessible::queryAccessibleInterface(&control());
    ASSERT_TRUE(seen);
    EXPECT_EQ(seen->text(QAccessible::Name), QStringLiteral("Snap"));
    EXPECT_TRUE(seen->state().checkable);
    EXPECT_FALSE(seen->state().checked);
    control().click();
    EXPECT_TRUE(seen->state().checked);
}

TEST_F(SnapSwitchTest, ItStandsAtTheEndOfTheHintLineAndNothingMovesWhenItSwitches) {
    auto* hint = child<QLabel>(*window, "hint");
    const QRect was = control().geometry();
    EXPECT_GE(was.height(), 24);
    EXPECT_GT(was.left(), hint->geometry().right());
    EXPECT_LE(was.right(), control().parentWidget()->width());
    control().click();
    QCoreApplication::processEvents();
    EXPECT_EQ(control().geometry(), was);
}

} // namespace TAILPOINT_FILE
} // namespace tailpoint::test
