// SPDX-License-Identifier: MIT
// The g of a sheet, chosen in its menu: it changes the weight of masses, in one step.
#include "tests/ui/panel_support.h"
#include "tests/ui/window_fixture.h"

#include "ui/document/given_edits.h"

#include <QInputDialog>

namespace tailpoint::test {
namespace TAILPOINT_FILE {

class SheetsGravity : public OpenWindow {
protected:
    void SetUp() override {
        OpenWindow::SetUp();
        window->document().replace(raft(), {});
    }
    void weigh(const char* typed) {
        const Outcome outcome =
            typedInto(window->document().sketch(), 0, Entry::magnitude, QString::fromUtf8(typed));
        ASSERT_TRUE(std::holds_alternative<Accepted>(outcome));
        ASSERT_FALSE(window->document().edit(std::get<Accepted>(outcome).sketch, QStringLiteral("weigh")));
    }
    double first() const { return *window->document().sketch().forces.at(0).magnitude.value; }
    QInputDialog& askOther(const char* typed) {
        auto& dialog = ask<QInputDialog>("gravity-other");
        dialog.setTextValue(QString::fromUtf8(typed));
        dialog.accept();
        return dialog;
    }
};

// 100 x 9.81 = 981, 100 x 9.80665 = 980.665, 100 x 1.62 = 162.
TEST_F(SheetsGravity, ChangesTheWeightOfAMassAndIsUndone) {
    weigh("100 kg");
    EXPECT_EQ(first(), 980.665);
    trigger("gravity-9.81");
    EXPECT_EQ(first(), 981);
    window->document().undo();
    EXPECT_EQ(first(), 980.665);
    EXPECT_EQ(window->document().sketch().gravity, kStandardGravity);
    askOther("1,62");
    EXPECT_EQ(first(), 162);
}

TEST_F(SheetsGravity, ThatIsNoneIsRefusedAndNothingChanges) {
    weigh("100 kg");
    for (const char* typed : {"0", "ten", "-9.81", "1000"}) {
        askOther(typed);
        EXPECT_EQ(first(), 980.665) << typed;
        QCoreApplication::sendPostedEvents(nullptr, QEvent::DeferredDelete);
    }
}

} // namespace TAILPOINT_FILE
} // namespace tailpoint::test
