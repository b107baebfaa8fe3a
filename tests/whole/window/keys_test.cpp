// SPDX-License-Identifier: MIT
// Everything that a drag does, without one.
#include "tests/whole/window/raft_fixture.h"

using namespace whole;

namespace TAILPOINT_FILE {

TEST_F(OnTheRaft, TabTakesTheFirstForceAndArrowKeysTurnAndLengthenIt) {
    ASSERT_TRUE(key(QStringLiteral("Tab")) && key(QStringLiteral("shift+Left")) &&
                key(QStringLiteral("shift+Up")));
    ASSERT_TRUE(becomesModified(true));
    const QJsonObject sketch = saved();
    const QJsonObject p = force(sketch, 0);
    EXPECT_NEAR(number(p, "direction"), 25.1, 1e-9) << "one last digit counter-clockwise";
    EXPECT_NEAR(number(p, "magnitude"), 341, 1e-9) << "one last digit longer";
    EXPECT_EQ(number(force(sketch, 1), "magnitude"), 275);
}

TEST_F(OnTheRaft, AKeyHeldDownIsOneStepThatOneUndoTakesBack) {
    ASSERT_TRUE(key(QStringLiteral("Tab")));
    ASSERT_TRUE(holdKey(QStringLiteral("Up"), std::chrono::milliseconds(1500)));
    ASSERT_TRUE(becomesModified(true));
    EXPECT_GT(number(force(saved(), 0), "magnitude"), 350) << "the keyboard repeats";
    ASSERT_TRUE(key(QStringLiteral("ctrl+z")));
    ASSERT_TRUE(becomesModified(true));
    EXPECT_EQ(number(force(saved(), 0), "magnitude"), 340);
}

TEST_F(OnTheRaft, AValueTypedOnTheSheetIsTakenWithItsUnit) {
    ASSERT_TRUE(key(QStringLiteral("Tab")) && key(QStringLiteral("Return")));
    settledScreen();
    ASSERT_TRUE(type(QStringLiteral("0.5 kN")) && key(QStringLiteral("Return")));
    ASSERT_TRUE(becomesModified(true));
    const QJsonObject typed = force(saved(), 0)[QLatin1String("magnitude")].toObject();
    EXPECT_EQ(typed[QLatin1String("value")], 0.5);
    EXPECT_EQ(typed[QLatin1String("unit")], QStringLiteral("kN")) << "as it was typed";
}

TEST_F(OnTheRaft, DeleteRemovesTheSelectedForce) {
    ASSERT_TRUE(key(QStringLiteral("Tab")) && key(QStringLiteral("Delete")));
    ASSERT_TRUE(becomesModified(true));
    const QJsonObject sketch = saved();
    ASSERT_EQ(sketch[QStringLiteral("forces")].toArray().size(), 1);
    EXPECT_EQ(force(sketch, 0)[QStringLiteral("name")].toString(), QStringLiteral("Q"));
}

TEST_F(OnTheRaft, QuittingWithUnsavedChangesAsksAndEscapeStays) {
    ASSERT_TRUE(key(QStringLiteral("Tab")) && key(QStringLiteral("Up")));
    ASSERT_TRUE(becomesModified(true));
    ASSERT_TRUE(key(QStringLiteral("ctrl+q")));
    ASSERT_TRUE(eventually([&] { return m_program->asks(QStringLiteral("Unsaved changes")); }));
    ASSERT_TRUE(key(QStringLiteral("Escape")));
    EXPECT_TRUE(eventually([&] { return !m_program->shows(QStringLiteral("Unsaved changes")); }));
    EXPECT_TRUE(m_program->isRunning());
    EXPECT_TRUE(isModified());
}

TEST_F(OnTheRaft, QuittingAfterSavingEndsTheProgramWithStatusZero) {
    ASSERT_TRUE(key(QStringLiteral("Tab")) && key(QStringLiteral("Up")));
    ASSERT_TRUE(becomesModified(true));
    saved();
    ASSERT_TRUE(key(QStringLiteral("ctrl+q")));
    EXPECT_EQ(m_program->waitForEnd(), 0);
}

} // namespace TAILPOINT_FILE
