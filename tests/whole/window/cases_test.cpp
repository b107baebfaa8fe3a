// SPDX-License-Identifier: MIT
// A case made, changed and left by keys alone.
#include "tests/whole/window/raft_fixture.h"

using namespace whole;

namespace TAILPOINT_FILE {

TEST_F(OnTheRaft, ACaseIsMadeByKeysAndHasItsOwnValue) {
    ASSERT_TRUE(key(QStringLiteral("alt+q")));
    settledScreen();
    ASSERT_TRUE(key(QStringLiteral("c")) && key(QStringLiteral("a")));
    settledScreen();
    ASSERT_TRUE(type(QStringLiteral("storm")) && key(QStringLiteral("Return")));
    ASSERT_TRUE(becomesModified(true)) << keep(screen());
    ASSERT_TRUE(m_program->turnTo()); // without a window manager the dialog's keys go to nobody
    settledScreen();
    ASSERT_TRUE(key(QStringLiteral("Tab")) && key(QStringLiteral("shift+Up")));
    settledScreen();
    QJsonObject sketch = saved();
    const QJsonObject storm = sketch[QLatin1String("cases")].toArray().at(0).toObject();
    EXPECT_EQ(storm[QLatin1String("name")].toString(), QStringLiteral("storm"));
    const QJsonObject changes = storm[QLatin1String("changes")].toObject();
    EXPECT_NEAR(number(changes[QLatin1String("P")].toObject(), "magnitude"), 341, 1e-9)
        << "one last digit longer";
    EXPECT_EQ(number(force(sketch, 0), "magnitude"), 340) << "as drawn it is as it was";

    ASSERT_TRUE(key(QStringLiteral("alt+Page_Down")) && key(QStringLiteral("shift+Down")));
    ASSERT_TRUE(becomesModified(true));
    sketch = saved();
    EXPECT_NEAR(number(force(sketch, 0), "magnitude"), 339, 1e-9)
        << "the sketch as drawn is on the sheet again";
}

} // namespace TAILPOINT_FILE
