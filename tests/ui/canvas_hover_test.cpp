// SPDX-License-Identifier: MIT
// What the pointer shows before it is pressed: marks that are seen, what a drag would do, targets that are
// hit.
#include "core/figure/hit.h"
#include "tests/ui/canvas_fixture.h"
#include "tests/ui/render/contrast.h"
#include "ui/document/sheet_edits.h"
#include "ui/style/theme.h"

#include <QPointingDevice>

namespace tailpoint {

namespace TAILPOINT_FILE {

constexpr std::array kThemes{ThemeName::paper, ThemeName::slate, ThemeName::contrast};

/// The strongest contrast with the sheet along a line, pixel by pixel.
double strongest(const QImage& seen, QPointF from, QPointF to, const Theme& theme) {
    double most = 1;
    constexpr int kSteps = 40;
    for (int i = 0; i <= kSteps; ++i) {
        const QPointF at = from + (to - from) * (double(i) / kSteps);
        most = std::max(most, testing::contrast(QColor(seen.pixel(at.toPoint())), theme.sheet));
    }
    return most;
}

QPointF onCircle(QPointF centre, double degrees, double radius) {
    const double radians = degrees * std::acos(-1.0) / 180;
    return centre + radius * QPointF(std::cos(radians), -std::sin(radians));
}

class HoverTest : public CanvasTest {
protected:
    /// Beside the shaft of P at seven tenths of it, clear of the shaft itself, on one side.
    double besideShaft(double side) {
        const QPointF at = polar(0.7 * 340, 25);
        return strongest(canvas.grab().toImage(), onCircle(at, 25 + side * 90, 4),
                         onCircle(at, 25 + side * 90, 9), themeOf(canvas.theme()));
    }
    QString words(QPointF at, Qt::KeyboardModifiers keys = {}) {
        QString said;
        const auto seen =
            QObject::connect(&canvas, &Canvas::hint, &canvas, [&](const QString& text) { said = text; });
        hover(emptyPlace());
        mouse(QEvent::MouseMove, at, keys, Qt::NoButton);
        QObject::disconnect(seen);
        return said;
    }
    QPointF emptyPlace() const { return {8, 8}; }
    /// The box of the label of P's magnitude, or of its direction, in pixels.
    QRectF label(bool ofDirection) const {
        for (const SheetLabel& each : labelsOn(canvas.figure().list))
            if (each.vector == forceVector(0) && each.ofDirection == ofDirection) {
                const double p = canvas.pixelsPerPoint();
                return {each.box.left * p, each.box.top * p, each.box.width * p, each.box.height * p};
            }
        ADD_FAILURE() << "no label";
        return {};
    }
    /// On the last letter of a label: its unit.
    QPointF unitOn(const QRectF& label) const { return {label.right() - 4, label.center().y()}; }
};

TEST_F(HoverTest, TheSelectedForcesHaloReachesThreeToOneOnTheScreen) {
    for (const ThemeName name : kThemes) {
        canvas.setTheme(name);
        hover(emptyPlace());
        canvas.select(kNoVector);
        for (const double side : {1.0, -1.0})
            EXPECT_LT(besideShaft(side), 1.6) << "nothing but sheet and grid, " << nameOf(name).toStdString();
        canvas.select(0);
        for (const double side : {1.0, -1.0})
            EXPECT_GE(besideShaft(side), 3) << nameOf(name).toStdString() << ", side " << side;
    }
}

TEST_F(HoverTest, TheShaftUnderThePointerIsMarkedThreeToOne) {
    for (const ThemeName name : kThemes) {
        canvas.setTheme(name);
        hover(polar(0.3 * 340, 25));
        ASSERT_EQ(canvas.cursor().shape(), Qt::OpenHandCursor);
        for (const double side : {1.0, -1.0})
            EXPECT_GE(besideShaft(side), 3) << nameOf(name).toStdString() << ", side " << side;
    }
}

TEST_F(HoverTest, TheTipUnderThePointerIsRingedThreeToOne) {
    for (const ThemeName name : kThemes) {
        canvas.setTheme(name);
        const QPointF beyond = onCircle(tipOf(0), 0, 1);
        const auto ahead = [&] {
            return strongest(canvas.grab().toImage(), onCircle(beyond, 5, 5), onCircle(beyond, 5, 11),
                             themeOf(name));
        };
        hover(emptyPlace());
        const double before = ahead();
        hover(tipOf(0));
        EXPECT_GE(ahead(), 3) << nameOf(name).toStdString();
        EXPECT_LT(before, 3) << "the ring, not what was drawn there";
    }
}

TEST_F(HoverTest, TheSheetThatHasTheKeysIsFramedThreeToOne) {
    for (const ThemeName name : kThemes) {
        canvas.setTheme(name);
        canvas.clearFocus();
        canvas.setFocus(Qt::TabFocusReason);
        settle();
        ASSERT_TRUE(canvas.hasFocus());
        const QImage seen = canvas.grab().toImage();
        EXPECT_GE(strongest(seen, {0, 200}, {4, 200}, themeOf(name)), 3) << nameOf(name).toStdString();
        EXPECT_GE(strongest(seen, {300, 0}, {300, 4}, themeOf(name)), 3) << nameOf(name).toStdString();
    }
}

TEST_F(HoverTest, SaysWhatADragWouldDo) {
    EXPECT_TRUE(words(tipOf(0)).startsWith(QStringLiteral("Drag the tip to change P.")));
    EXPECT_EQ(canvas.cursor().shape(), Qt::SizeAllCursor);
    EXPECT_EQ(words(tipOf(0), Qt::ShiftModifier),
              QStringLiteral("Drag the tip to change the magnitude of P; Shift holds its direction."));
    EXPECT_EQ(canvas.cursor().shape(), Qt::SizeBDiagCursor) << "along the arrow, 25 degrees: nearest is 45";
    EXPECT_EQ(words(tipOf(0), Qt::ControlModifier),
              QStringLiteral("Drag the tip to turn P; Ctrl holds its magnitude."));
    EXPECT_EQ(canvas.cursor().shape(), Qt::OpenHandCursor);
    EXPECT_EQ(words(polar(100, 25)), QStringLiteral("Drag to turn P; its magnitude stays."));
    EXPECT_EQ(words(common()), QStringLiteral("Drag from the common point to draw a new force."));
}

/// And does it: what was said before is what the drag then does.
TEST_F(HoverTest, WhatIsSaidIsWhatTheDragDoes) {
    drag(tipOf(0), polar(300, 40), Qt::ShiftModifier);
    EXPECT_DOUBLE_EQ(angle(0), 25);
    EXPECT_NE(magnitude(0), 340);
    document.undo();
    drag(tipOf(0), polar(300, 40), Qt::ControlModifier);
    EXPECT_DOUBLE_EQ(magnitude(0), 340);
    EXPECT_NE(angle(0), 25);
}

TEST_F(HoverTest, OfAValueToFindSaysWhatIsLeftToDrag) {
    Sketch sketch = raft();
    sketch.forces[0].magnitude.value.reset();
    sketch.forces[1].magnitude.value.reset();
    sketch.sum.magnitude.value = 400;
    sketch.sum.direction.form = AngleForm{5};
    open(sketch);
    ASSERT_EQ(document.result().solved.solutions.size(), 1U);
    EXPECT_EQ(words(tipOf(0)), QStringLiteral("Drag the tip to turn P; its magnitude is to find."));
    EXPECT_EQ(words(tipOf(0), Qt::ShiftModifier),
              QStringLiteral("What is held or to find leaves a drag nothing of P to change."));
    EXPECT_EQ(canvas.cursor().shape(), Qt::ArrowCursor);
}

/// A key that comes while the pointer rests counts at once.
TEST_F(HoverTest, FollowsAHeldKeyUnderAPointerAtRest) {
    hover(tipOf(0));
    QTest::keyPress(&canvas, Qt::Key_Control, Qt::ControlModifier);
    EXPECT_EQ(canvas.cursor().shape(), Qt::OpenHandCursor);
    QTest::keyRelease(&canvas, Qt::Key_Control);
    EXPECT_EQ(canvas.cursor().shape(), Qt::SizeAllCursor);
}

TEST_F(HoverTest, ATargetIsTwentyFourPixelsAcross) {
    for (const double degrees : {0.0, 90.0, 205.0, 300.0}) {
        hover(onCircle(tipOf(0), degrees, 11.5));
        EXPECT_EQ(canvas.cursor().shape(), Qt::SizeAllCursor) << degrees;
        hover(onCircle(common(), degrees + 45, 11.5));
        EXPECT_EQ(canvas.cursor().shape(), Qt::CrossCursor) << degrees;
    }
    for (const double side : {90.0, -90.0}) {
        hover(onCircle(polar(240, 25), 25 + side, 11.5));
        EXPECT_EQ(canvas.cursor().shape(), Qt::OpenHandCursor) << side;
    }
    for (const bool ofDirection : {false, true}) {
        const QPointF middle = label(ofDirection).center() - QPointF(label(ofDirection).width() / 4, 0);
        for (const double by : {-11.5, 11.5}) {
            hover(middle + QPointF(0, by));
            EXPECT_EQ(canvas.cursor().shape(), Qt::IBeamCursor) << ofDirection << by;
        }
    }
    for (const double by : {-11.5, 11.5}) {
        hover(unitOn(label(false)) + QPointF(8, by));
        EXPECT_EQ(canvas.cursor().shape(), Qt::PointingHandCursor) << "its unit, " << by;
    }
}

/// Through the events that a touch screen sends, which Qt makes a mouse's of.
TEST_F(HoverTest, ATouchTargetIsFortyFourPixelsAcross) {
    static QPointingDevice* const screen = QTest::createTouchDevice();
    const QPoint beside = onCircle(tipOf(0), 60, 21).toPoint();
    const QPointF away = polar(300, 50) - tipOf(0);
    const auto touch = [&](QPoint at, auto how) {
        (QTest::touchEvent(&canvas, screen).*how)(0, at, &canvas).commit();
        settle();
    };
    using Touches = QTest::QTouchEventWidgetSequence;
    touch(beside, &Touches::press);
    touch((beside + away / 2).toPoint(), &Touches::move);
    touch((beside + away).toPoint(), &Touches::move);
    touch((beside + away).toPoint(), &Touches::release);
    EXPECT_NE(magnitude(0), 340) << "the tip was taken, from 21 pixels away";
    document.undo();
    EXPECT_EQ(document.sketch(), raft());
    press(beside);
    move(beside + away);
    release(beside + away);
    EXPECT_EQ(document.sketch(), raft()) << "a mouse is not that coarse";
}

TEST_F(HoverTest, OfAForceThatIsUndoneNothingIsSaidAnyMore) {
    drag(common(), polar(200, 80));
    ASSERT_EQ(document.sketch().forces.size(), 3U);
    EXPECT_TRUE(words(tipOf(2)).startsWith(QStringLiteral("Drag the tip to change")));
    QString said;
    QObject::connect(&canvas, &Canvas::hint, &canvas, [&](const QString& text) { said = text; });
    document.undo();
    EXPECT_EQ(said,
              QStringLiteral("Drag a tip to change a force. Shift holds its direction, Ctrl its magnitude."));
}

TEST_F(HoverTest, AClickOnAUnitAsksForAnother) {
    std::vector<UnitOf> asked;
    QObject::connect(&canvas, &Canvas::unitAsked, &canvas, [&](UnitOf of) { asked.push_back(of); });
    click(label(false).center());
    EXPECT_TRUE(asked.empty()) << "the number is typed over, not its unit";
    click(unitOn(label(false)));
    EXPECT_EQ(asked, (std::vector{UnitOf::force}));
    click(unitOn(label(true)));
    EXPECT_EQ(asked, (std::vector{UnitOf::force, UnitOf::angle}));
    drag(unitOn(label(false)), unitOn(label(false)) + QPointF(20, -30));
    EXPECT_EQ(asked.size(), 2U) << "a drag puts the label elsewhere";
    EXPECT_TRUE(force(0).label);
    EXPECT_EQ(words(unitOn(label(false))), QStringLiteral("Click to choose the sheet's unit of force."));
}

TEST_F(HoverTest, OnAStageAUnitIsNotClicked) {
    canvas.setStaged(true);
    int asked = 0, clicked = 0;
    QObject::connect(&canvas, &Canvas::unitAsked, &canvas, [&] { ++asked; });
    QObject::connect(&canvas, &Canvas::clicked, &canvas, [&] { ++clicked; });
    click(unitOn(label(false)));
    EXPECT_EQ(asked, 0);
    EXPECT_EQ(clicked, 1);
}

} // namespace TAILPOINT_FILE
} // namespace tailpoint
