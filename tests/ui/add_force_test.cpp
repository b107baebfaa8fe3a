// SPDX-License-Identifier: MIT
// One more force is the same force wherever it is asked for.
#include "tests/ui/window_fixture.h"
#include "ui/canvas/canvas.h"

#include <QPushButton>

namespace tailpoint::test {
namespace TAILPOINT_FILE {

class AddForceTest : public OpenWindow {
protected:
    template <class Ask>
    std::vector<Force> afterThree(Ask ask) {
        window->document().replace(emptySketch(), {});
        window->canvas().fit();
        for (int i = 0; i < 3; ++i) {
            ask();
            QCoreApplication::processEvents();
        }
        return window->document().sketch().forces;
    }
};

TEST_F(AddForceTest, BarKeyAndTableAddTheSame) {
    const std::vector<Force> byBar = afterThree([&] { trigger("addForce"); });
    const std::vector<Force> byKey = afterThree([&] { QTest::keyClick(&window->canvas(), Qt::Key_Insert); });
    const std::vector<Force> byTable =
        afterThree([&] { QTest::mouseClick(child<QPushButton>(*window, "addRow"), Qt::LeftButton); });
    ASSERT_EQ(byBar.size(), 3u);
    EXPECT_EQ(byBar, byKey);
    EXPECT_EQ(byBar, byTable);
}

} // namespace TAILPOINT_FILE
} // namespace tailpoint::test
