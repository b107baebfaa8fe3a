// SPDX-License-Identifier: MIT
// Whatever is pressed in the window is large enough for a pointer, and where there is a touch screen for a
// finger.
#include "ui/style/targets.h"
#include "window_fixture.h"

#include <QAbstractButton>
#include <QTableView>

namespace tailpoint::test {
namespace TAILPOINT_FILE {

class Targets : public OpenWindow {
protected:
    /// Buttons that can be seen and pressed; in a menu bar's own extension the style has its say.
    void expectAtLeast(int side) {
        int seen = 0;
        for (const auto* button : window->findChildren<QAbstractButton*>()) {
            if (!button->isVisible() || button->objectName() == QStringLiteral("qt_menubar_ext_button"))
                continue;
            ++seen;
            const std::string which =
                std::string(button->metaObject()->className()) + ' ' + button->objectName().toStdString() +
                ' ' + button->text().toStdString() + ' ' + button->parentWidget()->objectName().toStdString();
            EXPECT_GE(button->height(), side) << which;
            EXPECT_GE(button->width(), side) << which;
        }
        EXPECT_GT(seen, 10);
        const auto* table = child<QTableView>(*window, "givenTable");
        EXPECT_GE(table->rowHeight(0), side);
    }
};

TEST_F(Targets, AreTwentyFourPixelsOrMore) {
    if (targetSide() > 24)
        GTEST_SKIP() << "this machine has a touch screen";
    expectAtLeast(24);
    window->resize(800, 600);
    QCoreApplication::processEvents();
    expectAtLeast(24);
}

TEST_F(Targets, AreFortyFourPixelsOrMoreWhereThereIsATouchScreen) {
    static QPointingDevice* const screen = QTest::createTouchDevice();
    ASSERT_TRUE(screen);
    ASSERT_EQ(targetSide(), 44);
    open();
    QCoreApplication::processEvents();
    expectAtLeast(44);
}

} // namespace TAILPOINT_FILE
} // namespace tailpoint::test
