// SPDX-License-Identifier: MIT
#include "ui/canvas/force_gesture.h"

#include "core/construct/reduction.h"
#include "ui/canvas/force_edits.h"
#include "ui/canvas/words.h"
#include "ui/style/symbols.h"

#include <QLineF>
#include <algorithm>
#include <cmath>

namespace tailpoint {

namespace {

constexpr double kHomeReach = 4; // pixels from where the drag began: back to exactly what was there

double crossOf(const Eigen::Vector2d& a, const Eigen::Vector2d& b) {
    return a.x() * b.y() - a.y() * b.x();
}

Eigen::Vector2d turnedBy(const Eigen::Vector2d& v, double radians) {
    const double c = std::cos(radians), s = std::sin(radians);
    return {c * v.x() - s * v.y(), s * v.x() + c * v.y()};
}

Polar startOf(const Sketch& sketch, const DrawnVector& drawn) {
    Polar start = polarOf(drawn.tip - drawn.tail, sketch);
    if (const auto given = referredDirection(forceAt(sketch, drawn.vector)->direction, sketch)) {
        start.referred = *given;
    }
    return start;
}

} // namespace

ForceGesture::ForceGesture(GestureContext context, int vector, QPointF press)
    : m_context(std::move(context)), m_vector(vector), m_press(press), m_before(m_context.scene.sketch()),
      m_snapping(m_context.snapping) {
    const SheetView& sheet = m_context.scene.sheet();
    m_pressed = sheet.toSketch(press);
    m_field = {sheet.pixelsPerUnit(), divisionOf(sheet.view()), snapLines(m_before, vector), m_snapping};
}

QPointF ForceGesture::press() const {
    return m_context.scene.sheet().toPixels(m_pressed);
}

bool ForceGesture::begins(const Pointer& pointer) {
    const SheetView& sheet = m_context.scene.sheet(); // at the sheet's edge the scale may have stepped out
    m_field.pixelsPerUnit = sheet.pixelsPerUnit();
    m_field.division = divisionOf(sheet.view());
    m_field.on = m_snapping && !pointer.keys.testFlag(Qt::AltModifier);
    if (!m_moved && QLineF(m_press, pointer.at).length() >= kDragStart) {
        m_moved = true;
        m_context.say(sentence(help()));
    }
    return m_moved;
}

QString ForceGesture::help() const {
    return words::tr(
        "Shift holds the direction, Ctrl the magnitude, S switches snapping, Esc takes the drag back.");
}

bool ForceGesture::isHome(const Pointer& pointer) const {
    return QLineF(press(), pointer.at).length() < (m_field.on ? kHomeReach : 0.5);
}

bool ForceGesture::isNothing(const Eigen::Vector2d& v) const {
    return std::hypot(v.x(), v.y()) * m_field.pixelsPerUnit < kOriginReach;
}

void ForceGesture::apply(const Sketch& after, const SnapMark& mark, const QString& text) {
    if (const auto fault = m_context.scene.document().preview(after, text)) {
        m_context.say({{fault->message}});
        return;
    }
    readBack(mark);
}

void ForceGesture::applyNothing(const QString& text) {
    m_context.scene.document().preview(m_before, QString());
    readBack({});
    m_feedback.readout = text;
}

void ForceGesture::readBack(const SnapMark& mark) {
    const Sketch& sketch = m_context.scene.sketch();
    m_feedback.mark = mark;
    m_feedback.name.clear();
    if (const Force* force = forceAt(sketch, m_vector)) {
        m_feedback.name = {symbolWords(m_context.scene.result().things(), vectorId(m_vector))};
        m_feedback.readout = words::given(*force, sketch);
    }
    if (const DrawnVector* mine = drawnOf(m_context.scene.drawn(), m_vector)) {
        m_feedback.tail = mine->tail;
        m_feedback.tip = mine->tip;
    }
}

void ForceGesture::finish() {
    m_context.scene.document().commit();
}

void ForceGesture::cancel() {
    m_context.scene.document().cancel();
}

TipGesture::TipGesture(GestureContext context, const DrawnVector& drawn, QPointF press)
    : ForceGesture(std::move(context), drawn.vector, press), m_drawn(drawn),
      m_grip(press - this->context().scene.sheet().toPixels(drawn.tip)), m_start(startOf(before(), drawn)) {}

void TipGesture::move(const Pointer& pointer) {
    if (!begins(pointer)) {
        return;
    }
    const Force& was = *forceAt(before(), vector());
    const Eigen::Vector2d v = context().scene.sheet().toSketch(pointer.at - m_grip) - m_drawn.tail;
    if (isHome(pointer)) {
        return applyNothing(words::tr("as it was"));
    }
    if (isNothing(v)) {
        return applyNothing(words::tr("no length: as it was"));
    }
    const bool holdDirection = pointer.keys.testFlag(Qt::ShiftModifier) || !isGiven(was.direction);
    const bool holdMagnitude = pointer.keys.testFlag(Qt::ControlModifier) || !isGiven(was.magnitude);
    const Polar polar = held(v, holdDirection, holdMagnitude);
    const Snapped to = snap(polar, field(), before(), !holdMagnitude, !holdDirection);
    Sketch after = before();
    Force& force = *forceAt(after, vector());
    if (!holdMagnitude && to.polar.magnitude > 0) {
        setShownMagnitude(force, to.polar.magnitude, after);
    }
    if (!holdDirection) {
        setShownDirection(force, to.polar.referred, after);
    }
    apply(after, to.mark, words::tr("Change %1").arg(words::name(was)));
}

/// Where the magnitude is held the tip goes round a circle, and more sheet doesn't help.
bool TipGesture::reaches(Qt::KeyboardModifiers keys) const {
    return moved() && !keys.testFlag(Qt::ControlModifier) && isGiven(forceAt(before(), vector())->magnitude);
}

Polar TipGesture::held(const Eigen::Vector2d& v, bool direction, bool magnitude) const {
    Polar to = polarOf(v, before());
    if (direction) {
        const Eigen::Vector2d along = m_drawn.tip - m_drawn.tail;
        const double length = std::hypot(along.x(), along.y());
        to.magnitude = length > 0 ? std::max(0.0, v.dot(along / length)) : 0;
        to.referred = m_start.referred;
    }
    if (magnitude) {
        to.magnitude = m_start.magnitude;
    }
    return to;
}

BodyGesture::BodyGesture(GestureContext context, const DrawnVector& drawn, QPointF press)
    : ForceGesture(std::move(context), drawn.vector, press), m_drawn(drawn),
      m_start(startOf(before(), drawn)) {}

QString BodyGesture::help() const {
    return words::tr("S switches snapping, Esc takes the drag back.");
}

void BodyGesture::move(const Pointer& pointer) {
    const SheetView& sheet = context().scene.sheet();
    const Eigen::Vector2d from = sheet.toSketch(press()) - m_drawn.tail;
    const Eigen::Vector2d to = sheet.toSketch(pointer.at) - m_drawn.tail;
    if (!begins(pointer) || isNothing(to)) {
        return; // so near to the tail the pointer has no direction worth following
    }
    const Force& was = *forceAt(before(), vector());
    if (isHome(pointer)) {
        return applyNothing(words::tr("as it was"));
    }
    const double turn = std::atan2(crossOf(from, to), from.dot(to));
    Polar polar = polarOf(turnedBy(m_drawn.tip - m_drawn.tail, turn), before());
    polar.magnitude = m_start.magnitude;
    const Snapped snapped = snap(polar, field(), before(), false, true);
    Sketch after = before();
    setShownDirection(*forceAt(after, vector()), snapped.polar.referred, after);
    apply(after, snapped.mark, words::tr("Turn %1").arg(words::name(was)));
}

NewGesture::NewGesture(GestureContext context, QPointF press)
    : ForceGesture(context, static_cast<int>(context.scene.sketch().forces.size()), press) {}

void NewGesture::move(const Pointer& pointer) {
    if (!begins(pointer)) {
        return;
    }
    const Eigen::Vector2d v = context().scene.sheet().toSketch(pointer.at);
    const Snapped to = snap(polarOf(v, before()), field(), before());
    if (isNothing(v) || !(to.polar.magnitude > 0)) {
        return applyNothing(words::tr("no length: nothing is drawn"));
    }
    const QString name = QString::fromStdString(nextForceName(before()));
    apply(withForce(before(), to.polar), to.mark, words::tr("Draw %1").arg(name));
}

int NewGesture::made() const {
    return moved() && context().scene.sketch().forces.size() > before().forces.size() ? vector() : kNoVector;
}

} // namespace tailpoint
