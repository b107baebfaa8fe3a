// SPDX-License-Identifier: MIT
// Hands that do anything: whatever is dragged, pressed and undone, the sketch stays one that can be saved.
#include "tests/ui/canvas_fixture.h"

#include <random>

namespace tailpoint {

namespace TAILPOINT_FILE {

constexpr unsigned kSeed = 20240611;
constexpr int kGestures = 400;

class CanvasWild : public CanvasTest {
protected:
    QPointF anywhere() { return {any(-40, 1000), any(-40, 700)}; }
    double any(double from, double to) { return std::uniform_real_distribution<double>(from, to)(random); }
    int oneOf(int count) { return std::uniform_int_distribution<int>(0, count - 1)(random); }
    Qt::KeyboardModifiers someKeys() {
        constexpr Qt::KeyboardModifiers all[]{Qt::NoModifier, Qt::ShiftModifier, Qt::ControlModifier,
                                              Qt::AltModifier, Qt::ShiftModifier | Qt::ControlModifier};
        return all[oneOf(5)];
    }
    /// Mostly on something: the common point, a tip, a body.
    QPointF somewhere() {
        const auto& solutions = document.result().solved.solutions;
        const auto count = static_cast<int>(document.sketch().forces.size());
        if (oneOf(4) == 0 || solutions.empty() || count == 0) {
            return oneOf(3) == 0 ? anywhere() : common();
        }
        const double along = oneOf(2) == 0 ? 1 : any(0.1, 0.9);
        return pixel(solutions[0].forces[static_cast<std::size_t>(oneOf(count))].vector * along);
    }
    void gesture() {
        press(somewhere(), someKeys());
        for (int moves = oneOf(5); moves > 0; --moves) {
            move(oneOf(8) == 0 ? common() : anywhere(), someKeys());
        }
        if (oneOf(6) == 0) {
            key(Qt::Key_Escape);
        }
        release(anywhere(), someKeys());
    }
    void keyPress() {
        constexpr Qt::Key keys[]{Qt::Key_Tab,    Qt::Key_Left,   Qt::Key_Up,    Qt::Key_Down,
                                 Qt::Key_Delete, Qt::Key_Insert, Qt::Key_N,     Qt::Key_Plus,
                                 Qt::Key_Minus,  Qt::Key_0,      Qt::Key_Escape};
        key(keys[oneOf(11)], oneOf(3) == 0 ? Qt::ShiftModifier : Qt::NoModifier);
    }

    std::mt19937 random{kSeed};
};

TEST_F(CanvasWild, EveryGestureIsAtMostOneStepAndUndoGoesAllTheWayBack) {
    for (int i = 0; i < kGestures; ++i) {
        SCOPED_TRACE("seed " + std::to_string(kSeed) + ", gesture " + std::to_string(i));
        const auto made = [&] { return document.history().index() + (document.isPreviewing() ? 1 : 0); };
        const int before = made();
        oneOf(4) == 0 ? keyPress() : gesture();
        ASSERT_LE(made(), before + 1);
        const auto fault = firstFault(document.sketch());
        ASSERT_FALSE(fault) << fault->message;
        if (oneOf(10) == 0) {
            document.undo();
        }
        if (document.sketch().forces.size() > 12) {
            canvas.select(0);
            canvas.removeSelected();
        }
        if (i % 25 == 0) {
            settle();
        }
    }
    while (document.canUndo()) {
        document.undo();
    }
    EXPECT_EQ(document.sketch(), raft());
}

TEST_F(CanvasWild, VeryLargeAndVerySmallForcesAreDraggedLikeAnyOther) {
    for (const double size : {1e-140, 1e-6, 1e9, 1e140}) {
        SCOPED_TRACE(size);
        Sketch sketch = raft();
        sketch.forces = {forceOf("P", 3 * size, 25), forceOf("Q", 2 * size, -40)};
        open(sketch);
        drag(tipOf(0), polar(2 * size, 90));
        EXPECT_NEAR(magnitude(0) / size, 2, 1e-9);
        EXPECT_DOUBLE_EQ(angle(0), 90);
        drag(polar(1 * size, -40), polar(1 * size, -80));
        EXPECT_DOUBLE_EQ(angle(1), -80);
        drag(common(), polar(1 * size, 180));
        ASSERT_EQ(document.sketch().forces.size(), 3u);
        EXPECT_NEAR(magnitude(2) / size, 1, 0.05);
        canvas.select(0);
        key(Qt::Key_Up);
        EXPECT_GT(magnitude(0) / size, 2);
        EXPECT_LT(magnitude(0) / size, 2.2);
    }
}

} // namespace TAILPOINT_FILE
} // namespace tailpoint
