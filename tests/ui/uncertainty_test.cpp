// SPDX-License-Identifier: MIT
// Standard uncertainty in the window: chosen in the Question menu, told in the solution and the handout,
// remembered.
#include "tests/ui/window_fixture.h"

#include "ui/handout/handout_document.h"
#include "ui/panel/panel.h"
#include "ui/panel/solution_view.h"

namespace tailpoint::test {
namespace TAILPOINT_FILE {

class UncertaintyWindow : public OpenWindow {
protected:
    void SetUp() override {
        OpenWindow::SetUp();
        loosen();
    }
    /// P 340 ± 5 at 25 ± 2, Q 275 at -40.
    void loosen() {
        Sketch sketch = window->document().sketch();
        sketch.forces.at(0).magnitude.tolerance = plusMinus(5);
        sketch.forces.at(0).direction.tolerance = plusMinus(2);
        ASSERT_FALSE(window->document().edit(sketch, QStringLiteral("loosen")));
    }
    std::string told() {
        auto* solution = window->findChild<SolutionView*>();
        solution->refreshNow();
        return solution->plainText().simplified().toStdString();
    }
};

// u(R) = 4.14846 N, of its variance 62.71 % by the direction of P: derivatives by central differences.
constexpr const char* kTold = "R has the standard uncertainty 4.1 N: the direction of 𝑷 makes 63 per cent";

TEST_F(UncertaintyWindow, IsToldInTheSolutionOnRequest) {
    ASSERT_EQ(told().find("standard uncertainty"), std::string::npos);
    trigger("uncertainty-rectangular");
    EXPECT_NE(told().find(kTold), std::string::npos) << told();
    trigger("uncertainty-normal3"); // 4.14846 sqrt 3 / 3
    EXPECT_NE(told().find("standard uncertainty 2.4 N"), std::string::npos) << told();
    trigger("uncertainty-none");
    EXPECT_EQ(told().find("standard uncertainty"), std::string::npos);
}

TEST_F(UncertaintyWindow, IsRememberedAndInTheHandout) {
    trigger("uncertainty-rectangular");
    open();
    loosen();
    EXPECT_TRUE(child<QAction>(*window, "uncertainty-rectangular")->isChecked());
    EXPECT_NE(told().find(kTold), std::string::npos);
    HandoutChoice choice;
    choice.uncertainty = window->panel().explainOptions().uncertainty;
    EXPECT_TRUE(handoutHtml(window->document().result(), choice).contains("makes 63 per cent"));
}

TEST_F(UncertaintyWindow, WaitsWhileAHandIsAtIt) {
    const tolerance::UncertaintyAsked asked;
    const Sketch sketch = window->document().sketch();
    EXPECT_TRUE(Result(sketch, 0, true).uncertainties(asked).empty());
    EXPECT_EQ(Result(sketch, 0, false).uncertainties(asked).size(), 1u);
}

} // namespace TAILPOINT_FILE
} // namespace tailpoint::test
