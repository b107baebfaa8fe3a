// SPDX-License-Identifier: MIT
// What hovering shows: what a drag from here would do, in the cursor, a mark and the hint line.
#include "ui/canvas/canvas_p.h"
#include "ui/canvas/lit_parts.h"
#include "ui/style/symbols.h"

#include <QScopedValueRollback>
#include <cmath>

namespace tailpoint {

namespace {

/// Along an arrow, as near as the platform's cursors come to it.
Qt::CursorShape cursorAlong(QPointF tail, QPointF tip) {
    const double degrees = std::atan2(tail.y() - tip.y(), tip.x() - tail.x()) * 180 / std::acos(-1.0);
    switch ((static_cast<int>(std::lround(degrees / 45)) + 8) % 4) {
    case 0:
        return Qt::SizeHorCursor;
    case 1:
        return Qt::SizeBDiagCursor;
    case 2:
        return Qt::SizeVerCursor;
    default:
        return Qt::SizeFDiagCursor;
    }
}

} // namespace

void Canvas::Private::hoverAt(QPointF at, Qt::KeyboardModifiers held) {
    const Hit now = hitTest(scene, at);
    const bool changed = !(now == hover) || held != hoverKeys;
    hover = now;
    hoverKeys = held;
    if (changed) {
        sayHover();
        q.update();
    }
    if (!staged) {
        tellPart(partAt(scene, at));
    }
    showCursor();
}

void Canvas::Private::hoverWith(Qt::KeyboardModifiers held) {
    if (pointerInside && hover.kind == Hit::Kind::tip) {
        hoverAt(pointer, held);
    }
}

void Canvas::Private::tellPart(const std::optional<FigurePart>& part) {
    if (part != pointed) {
        pointed = part;
        emit q.partPointed(part);
    }
}

/// As the gesture that a press begins would have it.
DragEffect Canvas::Private::effectOf(const Hit& hit) const {
    switch (hit.kind) {
    case Hit::Kind::commonPoint:
        return isStill ? DragEffect::nothing : DragEffect::draws;
    case Hit::Kind::ownTip:
        return DragEffect::changes;
    case Hit::Kind::body:
        return canTurn(hit.vector) ? DragEffect::turns : DragEffect::nothing;
    case Hit::Kind::tip: {
        const Force* force = forceAt(scene.sketch(), hit.vector);
        if (force == nullptr || !canMove(hit.vector)) {
            return DragEffect::nothing;
        }
        const bool holdsDirection = hoverKeys.testFlag(Qt::ShiftModifier) || !isGiven(force->direction);
        const bool holdsMagnitude = hoverKeys.testFlag(Qt::ControlModifier) || !isGiven(force->magnitude);
        return holdsDirection && holdsMagnitude ? DragEffect::nothing
               : holdsDirection                 ? DragEffect::resizes
               : holdsMagnitude                 ? DragEffect::turns
                                                : DragEffect::changes;
    }
    default:
        return DragEffect::nothing;
    }
}

Qt::CursorShape Canvas::Private::cursorOverTip() const {
    switch (effectOf(hover)) {
    case DragEffect::changes:
        return Qt::SizeAllCursor;
    case DragEffect::resizes:
        return cursorAlong(scene.sheet().toPixels(hover.drawn.tail), scene.sheet().toPixels(hover.drawn.tip));
    case DragEffect::turns:
        return Qt::OpenHandCursor;
    default:
        return Qt::ArrowCursor;
    }
}

void Canvas::Private::showCursor() {
    if (gesture) {
        q.setCursor(gesture->cursor());
        return;
    }
    if (spaceHeld) {
        q.setCursor(Qt::OpenHandCursor);
        return;
    }
    const bool dragged = hover.kind == Hit::Kind::tip || hover.kind == Hit::Kind::body;
    if (staged && !dragged) {
        return q.unsetCursor();
    }
    if (hover.unit && !staged) {
        return q.setCursor(Qt::PointingHandCursor);
    }
    switch (hover.kind) {
    case Hit::Kind::commonPoint:
        return q.setCursor(isStill ? Qt::ArrowCursor : Qt::CrossCursor);
    case Hit::Kind::tip:
        return q.setCursor(cursorOverTip());
    case Hit::Kind::ownTip:
        return q.setCursor(Qt::SizeAllCursor);
    case Hit::Kind::body:
        return q.setCursor(canTurn(hover.vector) ? Qt::OpenHandCursor : Qt::ArrowCursor);
    case Hit::Kind::otherAnswer:
    case Hit::Kind::unit:
        return q.setCursor(Qt::PointingHandCursor);
    case Hit::Kind::label:
    case Hit::Kind::cell:
        return q.setCursor(Qt::IBeamCursor);
    case Hit::Kind::nothing:
        return q.unsetCursor();
    }
}

/// Of a tip that can be dragged.
Sentence Canvas::Private::tipWords() const {
    const Force& force = *forceAt(scene.sketch(), hover.vector);
    const Words symbol = symbolAt(hover.vector);
    switch (effectOf(hover)) {
    case DragEffect::resizes:
        return sentence(isGiven(force.direction)
                            ? tr("Drag the tip to change the magnitude of %1; Shift holds its direction.")
                            : tr("Drag the tip to change the magnitude of %1; its direction is to find."),
                        symbol);
    case DragEffect::turns:
        return sentence(isGiven(force.magnitude) ? tr("Drag the tip to turn %1; Ctrl holds its magnitude.")
                                                 : tr("Drag the tip to turn %1; its magnitude is to find."),
                        symbol);
    case DragEffect::nothing:
        return sentence(tr("What is held or to find leaves a drag nothing of %1 to change."), symbol);
    default:
        return sentence(tr("Drag the tip to change %1. Shift holds its direction, Ctrl its magnitude, S "
                           "switches snapping."),
                        symbol);
    }
}

void Canvas::Private::sayHover() {
    const QScopedValueRollback<bool> quiet(isByPointer, true);
    if (hover.unit && !staged) {
        return say(*hover.unit == UnitOf::force ? tr("Click to choose the sheet's unit of force.")
                                                : tr("Click to choose the sheet's unit of angles."));
    }
    const Force* force = forceAt(scene.sketch(), hover.vector);
    const bool fixed = force == nullptr || !canMove(hover.vector);
    switch (hover.kind) {
    case Hit::Kind::commonPoint:
        return isStill ? say(whyNot(kNoVector)) : say(tr("Drag from the common point to draw a new force."));
    case Hit::Kind::tip:
        return say(fixed ? whyNot(hover.vector) : tipWords());
    case Hit::Kind::body:
        return say(canTurn(hover.vector)
                       ? sentence(tr("Drag to turn %1; its magnitude stays."), symbolAt(hover.vector))
                       : whyNot(hover.vector));
    case Hit::Kind::ownTip:
        return say(sentence(tr("Drag the tip to draw your %1; a value that is typed counts before it."),
                            symbolAt(hover.vector)));
    case Hit::Kind::otherAnswer:
        return say(tr("Click to take the other answer (N)."));
    case Hit::Kind::label:
        return say(tr("Double-click to type an exact value, drag to put the label elsewhere."));
    case Hit::Kind::cell:
        return say(hover.cell == Cell::scale
                       ? tr("Turn the wheel to zoom, or double-click to type the scale.")
                       : tr("Double-click to change this cell."));
    case Hit::Kind::unit:
    case Hit::Kind::nothing:
        return say(isStill ? QString()
                   : scene.sketch().forces.empty()
                       ? tr("Drag from the common point to draw a force.")
                       : tr("Drag a tip to change a force. Shift holds its direction, Ctrl its magnitude."));
    }
}

} // namespace tailpoint
