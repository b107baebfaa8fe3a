// SPDX-License-Identifier: MIT
// A lecture on a window as large as a screen of a room.
#pragma once

#include "tests/support/steps.h"
#include "tests/ui/lecture/lecture_support.h"
#include "ui/canvas/canvas.h"
#include "ui/lecture/column.h"
#include "ui/lecture/lecture_view.h"

#include <QGuiApplication>
#include <QScreen>
#include <QTest>

namespace tailpoint {

/// The last is 1920x1080 at twice the scale.
inline constexpr QSize kRooms[]{{1024, 768},  {1280, 720},  {1366, 768}, {1920, 1080},
                                {2560, 1440}, {3840, 2160}, {960, 540}};

class LectureTest : public ::testing::Test {
protected:
    void open(const Result& result, QSize size = {1920, 1080}, const ExplainOptions& options = {}) {
        view.begin(result, ConstructionKind::parallelogram, options, QGuiApplication::primaryScreen());
        resize(size);
    }
    void open(const char* sample) { open(sampleNamed(sample)); }
    void resize(QSize size) {
        view.showNormal(); // the screen of the offscreen platform is small
        view.resize(size);
        QCoreApplication::processEvents();
    }
    void key(Qt::Key which, Qt::KeyboardModifiers modifiers = {}) {
        QTest::keyClick(&view.canvas(), which, modifiers);
    }
    const Stop& now() const { return view.stops()[view.stop()]; }
    std::string keyNow() const { return testing::keyOf(now().step); }
    void goTo(const std::string& wanted, bool whole = true) {
        for (std::size_t i = 0; i < view.stops().size(); ++i)
            if (testing::keyOf(view.stops()[i].step) == wanted)
                return view.goTo(i, whole);
        FAIL() << wanted;
    }
    const DisplayList& list() { return view.canvas().figure().list; }
    double pixel() { return view.canvas().pixelsPerPoint(); }
    QPoint tipOf(int vector) {
        for (const Group& group : list().groups)
            if (isArrow(group) && vectorOf(group) == vectorId(vector))
                return (QPointF((*group.ends)[1].x, (*group.ends)[1].y) * pixel()).toPoint();
        return {};
    }
    void drag(QPoint from, QPoint to) {
        QTest::mousePress(&view.canvas(), Qt::LeftButton, {}, from);
        for (int i = 1; i <= 6; ++i) {
            QMouseEvent move(QEvent::MouseMove, from + (to - from) * i / 6.0,
                             view.canvas().mapToGlobal(from + (to - from) * i / 6.0), Qt::NoButton,
                             Qt::LeftButton, {});
            QCoreApplication::sendEvent(&view.canvas(), &move);
        }
        QTest::mouseRelease(&view.canvas(), Qt::LeftButton, {}, to);
    }

    LectureView view{ThemeName::slate, false};
};

} // namespace tailpoint
