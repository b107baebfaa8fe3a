// SPDX-License-Identifier: MIT
// A canvas on a sketch, and hands for it: presses, moves and releases sent as Qt would, with modifiers.
#pragma once

#include "core/quantity/decimals.h"
#include "ui/canvas/canvas.h"
#include "ui/canvas/force_edits.h"
#include "ui/document/sketch_document.h"

#include <QApplication>
#include <QMouseEvent>
#include <QSignalSpy>
#include <QTest>
#include <QWheelEvent>

#include <gtest/gtest.h>

namespace tailpoint {

inline Force forceOf(const char* name, double magnitude, double degrees) {
    Force force;
    force.name = name;
    force.magnitude.value = magnitude;
    force.direction.form = AngleForm{degrees};
    return force;
}

/// The survey raft on its two lines: 340 N at 25 degrees, 275 N at -40 degrees.
inline Sketch raft() {
    Sketch sketch = emptySketch();
    sketch.title = "Survey raft on two lines";
    sketch.forces = {forceOf("P", 340, 25), forceOf("Q", 275, -40)};
    return sketch;
}

class CanvasTest : public ::testing::Test {
protected:
    void SetUp() override { open(raft()); }

    void open(const Sketch& sketch) {
        document.replace(sketch, QString());
        canvas.setAnimated(false);
        canvas.resize(960, 660);
        canvas.show();
        canvas.setFocus();
        settle();
    }
    static void settle() { QCoreApplication::processEvents(); }

    QPointF pixel(double x, double y) const {
        const Point p = canvas.view().toSheet({x, y});
        return QPointF(p.x, p.y) * canvas.pixelsPerPoint();
    }
    QPointF pixel(const Eigen::Vector2d& v) const { return pixel(v.x(), v.y()); }
    /// A place by magnitude and degrees counter-clockwise from +x.
    QPointF polar(double magnitude, double degrees) const {
        const double radians = degrees * std::acos(-1.0) / 180;
        return pixel(magnitude * std::cos(radians), magnitude * std::sin(radians));
    }
    QPointF common() const { return pixel(0, 0); }
    QPointF tipOf(std::size_t force) const {
        return pixel(document.result().solved.solutions.at(0).forces.at(force).vector);
    }

    void mouse(QEvent::Type type, QPointF at, Qt::KeyboardModifiers keys = {},
               Qt::MouseButton button = Qt::LeftButton) {
        const bool moves = type == QEvent::MouseMove;
        const Qt::MouseButtons held =
            type == QEvent::MouseButtonRelease ? Qt::NoButton : Qt::MouseButtons(button);
        QMouseEvent event(type, at, canvas.mapToGlobal(at), moves ? Qt::NoButton : button, held, keys);
        QCoreApplication::sendEvent(&canvas, &event);
    }
    void press(QPointF at, Qt::KeyboardModifiers keys = {}) { mouse(QEvent::MouseButtonPress, at, keys); }
    /// With the frame that follows it.
    void move(QPointF to, Qt::KeyboardModifiers keys = {}) {
        mouse(QEvent::MouseMove, to, keys);
        canvas.catchUp();
    }
    void release(QPointF at, Qt::KeyboardModifiers keys = {}) { mouse(QEvent::MouseButtonRelease, at, keys); }
    void hover(QPointF at) { mouse(QEvent::MouseMove, at, {}, Qt::NoButton); }
    void click(QPointF at) {
        press(at);
        release(at);
    }
    void doubleClick(QPointF at) {
        click(at);
        mouse(QEvent::MouseButtonDblClick, at);
        release(at);
    }
    /// A drag in several moves, as a hand makes it.
    void drag(QPointF from, QPointF to, Qt::KeyboardModifiers keys = {}) {
        press(from, keys);
        for (int i = 1; i <= 8; ++i) {
            move(from + (to - from) * (i / 8.0), keys);
        }
        release(to, keys);
    }
    void key(Qt::Key which, Qt::KeyboardModifiers keys = {}) { QTest::keyClick(&canvas, which, keys); }
    void wheel(QPointF at, int eighths) {
        QWheelEvent event(at, canvas.mapToGlobal(at), {}, {0, eighths}, Qt::NoButton, {}, Qt::NoScrollPhase,
                          false);
        QCoreApplication::sendEvent(&canvas, &event);
    }

    const Force& force(std::size_t i) const { return document.sketch().forces.at(i); }
    double magnitude(std::size_t i) const { return force(i).magnitude.value.value(); }
    double angle(std::size_t i) const { return std::get<AngleForm>(force(i).direction.form).value; }
    /// Undo steps, with the one under way.
    int steps() const { return document.history().count() + (document.isPreviewing() ? 1 : 0); }
    double solvedSum() const {
        return document.result().solved.solutions.at(document.result().chosen).sum.magnitude;
    }

    SketchDocument document;
    Canvas canvas{document};
};

} // namespace tailpoint
