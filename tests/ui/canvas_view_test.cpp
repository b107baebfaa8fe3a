// SPDX-License-Identifier: MIT
// Zoom, pan and fit; what is painted, and how often it is composed.
#include "tests/ui/canvas_fixture.h"
#include "ui/canvas/glide.h"
#include "ui/canvas/overlay.h"
#include "ui/canvas/static_layer.h"
#include "ui/render/render.h"

namespace tailpoint {

TEST_F(CanvasTest, TheWheelZoomsAboutThePointer) {
    const QPointF at(300, 200);
    const double ppp = canvas.pixelsPerPoint();
    const auto under = [&] { return canvas.view().toSketch({at.x() / ppp, at.y() / ppp}); };
    const Eigen::Vector2d before = under();
    const double scale = canvas.view().scale;
    wheel(at, 120);
    EXPECT_GT(canvas.view().scale, scale);
    EXPECT_NEAR((under() - before).norm(), 0, 1e-9 * before.norm());
    wheel(at, -240);
    EXPECT_LT(canvas.view().scale, scale);
    EXPECT_NEAR((under() - before).norm(), 0, 1e-9 * before.norm());
}

TEST_F(CanvasTest, TheZoomStaysWithinBounds) {
    const double fitted = canvas.view().scale;
    for (int i = 0; i < 300; ++i) {
        wheel({300, 200}, 120);
    }
    EXPECT_LE(canvas.view().scale, fitted * 401);
    settle();
    for (int i = 0; i < 600; ++i) {
        wheel({300, 200}, -120);
    }
    EXPECT_GE(canvas.view().scale, fitted / 51);
    settle();
}

TEST_F(CanvasTest, KeysZoomAndFit) {
    const View fitted = canvas.view();
    key(Qt::Key_Plus);
    EXPECT_GT(canvas.view().scale, fitted.scale);
    key(Qt::Key_Minus);
    key(Qt::Key_Minus);
    EXPECT_LT(canvas.view().scale, fitted.scale);
    key(Qt::Key_0);
    EXPECT_EQ(canvas.view(), fitted);
    key(Qt::Key_Plus);
    key(Qt::Key_Home);
    EXPECT_EQ(canvas.view(), fitted);
}

TEST_F(CanvasTest, TheMiddleButtonPans) {
    const QPointF before = common();
    mouse(QEvent::MouseButtonPress, {500, 300}, {}, Qt::MiddleButton);
    mouse(QEvent::MouseMove, {540, 330}, {}, Qt::MiddleButton);
    mouse(QEvent::MouseButtonRelease, {540, 330}, {}, Qt::MiddleButton);
    EXPECT_NEAR(QLineF(common(), before + QPointF(40, 30)).length(), 0, 1e-9);
    EXPECT_EQ(document.sketch(), raft());
}

TEST_F(CanvasTest, SpaceAndTheLeftButtonPanEvenOverATip) {
    const QPointF before = common(), tip = tipOf(0);
    QTest::keyPress(&canvas, Qt::Key_Space);
    drag(tip, tip + QPointF(-25, 15));
    QTest::keyRelease(&canvas, Qt::Key_Space);
    EXPECT_NEAR(QLineF(common(), before + QPointF(-25, 15)).length(), 0, 1e-9);
    EXPECT_EQ(document.sketch(), raft());
    drag(tipOf(0), polar(300, 50));
    EXPECT_DOUBLE_EQ(magnitude(0), 300);
}

TEST_F(CanvasTest, AViewThatSomebodyChoseIsKeptWhenValuesChange) {
    wheel({300, 200}, 360);
    const View chosen = canvas.view();
    Sketch larger = raft();
    larger.forces[0].magnitude.value = 3400;
    document.edit(larger, QStringLiteral("Change P"));
    EXPECT_EQ(canvas.view(), chosen);
}

TEST_F(CanvasTest, AFittedViewFollowsAFigureThatLeavesTheSheet) {
    const View before = canvas.view();
    Sketch larger = raft();
    larger.forces[0].magnitude.value = 3400;
    document.edit(larger, QStringLiteral("Change P"));
    EXPECT_LT(canvas.view().scale, before.scale);
    document.undo();
    EXPECT_GT(canvas.view().scale, before.scale / 2);
}

TEST_F(CanvasTest, TheSheetIsAsLargeAsTheWidget) {
    canvas.resize(700, 500);
    settle();
    EXPECT_DOUBLE_EQ(canvas.view().width * canvas.pixelsPerPoint(), 700);
    EXPECT_DOUBLE_EQ(canvas.view().height * canvas.pixelsPerPoint(), 500);
    EXPECT_TRUE(canvas.rect().contains(tipOf(0).toPoint()));
}

TEST_F(CanvasTest, TheConstructionIsToldAndDrawn) {
    QSignalSpy changed(&canvas, &Canvas::constructionChanged);
    const DisplayList before = canvas.figure().list;
    canvas.setConstruction(ConstructionKind::triangle);
    EXPECT_EQ(changed.count(), 1);
    const DisplayList triangle = canvas.figure().list;
    EXPECT_FALSE(triangle == before);
    canvas.setOtherOrder(true);
    EXPECT_EQ(changed.count(), 2);
    EXPECT_FALSE(canvas.figure().list == triangle);
}

/// The sheet's colour is the one most of the picture has, wherever grid lines happen to fall.
QColor commonestColour(const QImage& image) {
    std::map<QRgb, int> count;
    for (int y = 0; y < image.height(); ++y)
        for (int x = 0; x < image.width(); ++x)
            ++count[image.pixel(x, y)];
    return std::max_element(count.begin(), count.end(),
                            [](const auto& a, const auto& b) { return a.second < b.second; })
        ->first;
}

TEST_F(CanvasTest, AThemeChangesColoursAndNothingElse) {
    const DisplayList before = canvas.figure().list;
    const QImage paper = canvas.grab().toImage();
    canvas.setTheme(ThemeName::slate);
    const QImage slate = canvas.grab().toImage();
    EXPECT_EQ(commonestColour(paper), themeOf(ThemeName::paper).sheet);
    EXPECT_EQ(commonestColour(slate), themeOf(ThemeName::slate).sheet);
    EXPECT_TRUE(canvas.figure().list == before);
}

/// Some systems send pixels beside the wheel's angle, some do not, some send pixels alone.
TEST_F(CanvasTest, TheWheelZoomsWithAndWithoutPixels) {
    const auto turned = [&](QPoint pixels, QPoint angle) {
        canvas.fit();
        const double before = canvas.view().scale;
        const QPointF at = common();
        QWheelEvent event(at, canvas.mapToGlobal(at), pixels, angle, Qt::NoButton, {}, Qt::NoScrollPhase,
                          false);
        QCoreApplication::sendEvent(&canvas, &event);
        return canvas.view().scale / before;
    };
    const double notch = turned({}, {0, 120});
    EXPECT_GT(notch, 1.1);
    EXPECT_DOUBLE_EQ(turned({0, 15}, {0, 120}), notch) << "a notch is a notch";
    EXPECT_DOUBLE_EQ(turned({3, 0}, {0, 120}), notch) << "pixels to the side alone";
    EXPECT_GT(turned({0, 15}, {}), 1) << "pixels alone";
    EXPECT_NEAR(turned({0, -15}, {0, -120}) * notch, 1, 1e-12) << "back again";
}

TEST_F(CanvasTest, ThePointersPlaceIsReadAsAForce) {
    QSignalSpy readouts(&canvas, &Canvas::pointerReadout);
    hover(polar(212, 61.3));
    ASSERT_EQ(readouts.count(), 1);
    EXPECT_EQ(readouts.last().at(0).toString(), QStringLiteral("212 N at 61.3°"));
    hover(polar(212, -61.3));
    EXPECT_EQ(readouts.last().at(0).toString(), QStringLiteral("212 N at \u221261.3°"));
    QEvent leave(QEvent::Leave);
    QCoreApplication::sendEvent(&canvas, &leave);
    EXPECT_TRUE(readouts.last().at(0).toString().isEmpty());
}

TEST_F(CanvasTest, HoveringSaysWhatADragWouldDo) {
    QSignalSpy hints(&canvas, &Canvas::hint);
    hover(tipOf(0));
    EXPECT_EQ(canvas.cursor().shape(), Qt::SizeAllCursor);
    EXPECT_TRUE(hints.last().at(0).toString().contains(QStringLiteral("Shift")));
    hover(polar(200, 25));
    EXPECT_EQ(canvas.cursor().shape(), Qt::OpenHandCursor);
    hover(common());
    EXPECT_EQ(canvas.cursor().shape(), Qt::CrossCursor);
    const QString ofThePoint = hints.last().at(0).toString();
    QEvent leave(QEvent::Leave);
    QCoreApplication::sendEvent(&canvas, &leave);
    EXPECT_NE(hints.last().at(0).toString(), ofThePoint) << "gone from the sheet, gone from the hint line";
    EXPECT_TRUE(hints.last().at(0).toString().contains(QStringLiteral("Drag a tip")));
}

TEST(CanvasReadout, StaysInsideTheSheetAndOffTheTipWhereverThePointerIs) {
    const QRectF bounds(4, 4, 952, 652);
    const QSizeF size(170, 42);
    const QPointF tail(480, 330);
    for (int x = 0; x <= 960; x += 12) {
        for (int y = 0; y <= 660; y += 11) {
            const QPointF tip(x, y);
            const QRectF place = readoutPlace(size, tip, tail, tip, bounds);
            ASSERT_TRUE(bounds.contains(place)) << x << " " << y;
            ASSERT_FALSE(place.contains(tip)) << x << " " << y;
        }
    }
}

TEST_F(CanvasTest, WhatIsPaintedAfterADragIsWhatTheSheetAloneWouldShow) {
    canvas.setAnimated(true);
    drag(tipOf(0), polar(260, -12));
    canvas.select(kNoVector);
    hover({2, 2});
    ASSERT_TRUE(QTest::qWaitFor([&] { return !canvas.isGliding(); }));
    const QImage arrived = canvas.grab().toImage();
    Canvas fresh(document);
    fresh.resize(canvas.size());
    fresh.show();
    fresh.fit();
    canvas.fit();
    EXPECT_EQ(canvas.grab().toImage(), fresh.grab().toImage());
    EXPECT_EQ(canvas.figure().list, fresh.figure().list);
    EXPECT_FALSE(arrived.isNull());
}

TEST_F(CanvasTest, WhileDraggingALabelKeepsItsSideAndOnReleaseTheSheetDecides) {
    // Round a full turn and back: at every stop the placement of the frame before is held where it still
    // fits.
    press(tipOf(0));
    std::map<std::string, LabelPlace> last = canvas.figure().placement.labels;
    int kept = 0, changed = 0;
    for (int degrees = 26; degrees < 66; ++degrees) {
        move(polar(340, degrees));
        const auto now = canvas.figure().placement.labels;
        for (const auto& [id, place] : now) {
            const auto before = last.find(id);
            (before != last.end() && before->second == place ? kept : changed) += 1;
        }
        last = now;
    }
    EXPECT_GT(kept, 10 * changed);
    release(polar(340, 65));
    const Result& r = document.result();
    const QtTextMeasure measure;
    const Figure alone =
        compose(r.sketch, r.solved, r.construction, canvas.view(), canvas.figureOptions(), measure);
    EXPECT_EQ(canvas.figure().list, alone.list);
}

TEST_F(CanvasTest, TheStaticLayersArePaintedAgainOnlyWhenTheyChange) {
    StaticLayer below(StaticLayer::Part::below), above(StaticLayer::Part::above);
    QImage image(canvas.size(), QImage::Format_RGB32);
    QPainter painter(&image);
    const auto frame = [&](ThemeName theme) {
        const DisplayList& list = canvas.figure().list;
        below.paint(painter, list, themeOf(theme), canvas.pixelsPerPoint(), 1);
        above.paint(painter, list, themeOf(theme), canvas.pixelsPerPoint(), 1);
    };
    press(tipOf(0));
    for (int i = 1; i < 20; ++i) {
        move(polar(300, 20 + i));
        frame(ThemeName::paper);
    }
    release(polar(300, 40));
    EXPECT_EQ(below.renewals(), 1);
    EXPECT_EQ(above.renewals(), 1);
    Sketch titled = document.sketch();
    titled.title = "Raft at slack water";
    document.edit(titled, QStringLiteral("Title"));
    frame(ThemeName::paper);
    EXPECT_EQ(below.renewals(), 1);
    EXPECT_EQ(above.renewals(), 2);
    frame(ThemeName::slate);
    const QImage first = image.copy();
    EXPECT_EQ(below.renewals(), 1) << "the sheet gets a pixmap when it is painted a second time";
    frame(ThemeName::slate);
    EXPECT_EQ(below.renewals(), 2);
    EXPECT_EQ(image, first) << "and looks the same from the first";
    for (int i = 0; i < 3; ++i) {
        canvas.zoomIn();
        frame(ThemeName::slate);
        EXPECT_EQ(below.renewals(), 2) << "views that go by";
    }
    frame(ThemeName::slate);
    EXPECT_EQ(below.renewals(), 3);
}

TEST(CanvasGlide, LabelsMoveFromWhereTheyWereToWhereTheyBelong) {
    Text label;
    label.runs = {{"P", true, false, Script::normal}};
    label.baseline = {100, 50};
    label.box = {90, 40, 20, 12};
    Group group;
    group.id = "force-P";
    group.items = {label};
    DisplayList from, to;
    from.groups = {group};
    label.baseline = {140, 90};
    label.box = {130, 80, 20, 12};
    group.items = {label};
    to.groups = {group};
    Glide glide;
    ASSERT_TRUE(glide.start(from, to));
    EXPECT_TRUE(glide.at(0) == from);
    EXPECT_TRUE(glide.at(1) == to);
    const Text half = std::get<Text>(glide.at(0.5).groups[0].items[0]);
    EXPECT_GT(half.baseline.x, 100);
    EXPECT_LT(half.baseline.x, 140);
    EXPECT_FALSE(Glide().start(to, to));
}

} // namespace tailpoint
