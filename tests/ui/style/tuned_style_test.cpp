// SPDX-License-Identifier: MIT
#include "ui/style/palette.h"
#include "ui/style/theme.h"
#include "ui/style/tuned_style.h"

#include <QComboBox>
#include <QTest>
#include <QVBoxLayout>
#include <gtest/gtest.h>

using namespace tailpoint;

namespace TAILPOINT_FILE {

/// How many of the pixels along a list's upper edge are of the colour that marks the focus.
int marked(QComboBox& box, const QColor& colour) {
    const QImage image = box.grab().toImage();
    int count = 0;
    for (int x = 0; x < image.width(); ++x)
        count += image.pixelColor(x, 0) == colour ? 1 : 0;
    return count;
}

TEST(TunedStyleTest, ADropDownListShowsThatItHasTheFocus) {
    for (const ThemeName id : {ThemeName::paper, ThemeName::slate}) {
        const Theme& theme = themeOf(id);
        QWidget window;
        TunedStyle style;
        window.setPalette(paletteOf(theme));
        auto* const layout = new QVBoxLayout(&window);
        QComboBox first, second;
        for (QComboBox* box : {&first, &second}) {
            box->setStyle(&style);
            box->addItem(QStringLiteral("law of sines"));
            layout->addWidget(box);
        }
        window.show();
        window.activateWindow();
        ASSERT_TRUE(QTest::qWaitForWindowActive(&window));
        first.setFocus(Qt::TabFocusReason);
        EXPECT_GT(marked(first, theme.given), first.width() / 2);
        EXPECT_EQ(marked(second, theme.given), 0);
        QTest::keyClick(&window, Qt::Key_Tab);
        EXPECT_EQ(marked(first, theme.given), 0);
        EXPECT_GT(marked(second, theme.given), second.width() / 2);
        first.setParent(nullptr);
        second.setParent(nullptr);
    }
}

} // namespace TAILPOINT_FILE
