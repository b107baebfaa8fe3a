// SPDX-License-Identifier: MIT
// The pointer: which gesture a press begins, what ends it, the wheel.
#include "ui/canvas/canvas_p.h"
#include "ui/canvas/label_gesture.h"
#include "ui/canvas/lit_parts.h"
#include "ui/canvas/own_layer.h"
#include "ui/canvas/words.h"
#include "ui/style/symbols.h"

#include <QContextMenuEvent>
#include <QMenu>
#include <QMouseEvent>
#include <QScopedValueRollback>
#include <QWheelEvent>
#include <cmath>

namespace tailpoint {

namespace {

double wheelFactor(const QWheelEvent& event) {
    constexpr double kPerNotch = 0.18, kPerPixel = 0.004; // in powers of e
    const int angle = event.angleDelta().y(); // pixels, where they come too, differ from system to system
    const double by = angle != 0 ? angle / 120.0 * kPerNotch : event.pixelDelta().y() * kPerPixel;
    return std::exp(std::clamp(by, -1.0, 1.0));
}

/// A finger covers what it means.
const Reach& reachOf(const QPointerEvent& event) {
    const QPointingDevice* device = event.pointingDevice();
    return device != nullptr && device->type() == QInputDevice::DeviceType::TouchScreen ? kFingerReach
                                                                                        : kPointerReach;
}

} // namespace

void Canvas::setGivensStill(bool on) {
    d->isStill = on;
    d->showCursor();
}

bool Canvas::Private::canMove(int vector) const {
    return !isStill && tipCanMove(scene.sketch(), vector);
}

bool Canvas::Private::canTurn(int vector) const {
    return !isStill && bodyCanTurn(scene.sketch(), vector);
}

Sentence Canvas::Private::whyNot(int vector) const {
    return isStill ? sentence(tr("The question's values stand still in practice."))
                   : whyNotDragged(scene.result(), vector);
}

std::unique_ptr<Gesture> Canvas::Private::gestureFor(const Hit& hit, QPointF at) {
    switch (hit.kind) {
    case Hit::Kind::commonPoint:
        if (isStill) {
            return std::make_unique<ExplainGesture>(context(), kNoVector, at, whyNot(kNoVector));
        }
        return std::make_unique<NewGesture>(context(), at);
    case Hit::Kind::tip:
        if (canMove(hit.vector)) {
            return std::make_unique<TipGesture>(context(), hit.drawn, at);
        }
        return std::make_unique<ExplainGesture>(context(), hit.vector, at, whyNot(hit.vector));
    case Hit::Kind::body:
        if (canTurn(hit.vector)) {
            return std::make_unique<BodyGesture>(context(), hit.drawn, at);
        }
        return std::make_unique<ExplainGesture>(context(), hit.vector, at, whyNot(hit.vector));
    case Hit::Kind::ownTip:
        return std::make_unique<OwnTipGesture>(context(), *scene.ownAnswer(), hit.drawn, at);
    case Hit::Kind::otherAnswer:
        return std::make_unique<ChooseGesture>(context(), at);
    case Hit::Kind::label:
        if (labelCanMove(hit)) {
            return std::make_unique<LabelGesture>(context(), hit, at);
        }
        break;
    case Hit::Kind::cell:
    case Hit::Kind::unit:
    case Hit::Kind::nothing:
        break;
    }
    return nullptr;
}

/// What is given may be dragged; any other press waits for its release, which makes it a click.
void Canvas::Private::pressOnStage(QMouseEvent* event) {
    if (event->button() != Qt::LeftButton) {
        return event->ignore();
    }
    button = event->button();
    const Hit hit = hitTest(scene, pointer, reachOf(*event));
    const bool tip = hit.kind == Hit::Kind::tip && tipCanMove(scene.sketch(), hit.vector);
    const bool body = hit.kind == Hit::Kind::body && bodyCanTurn(scene.sketch(), hit.vector);
    begin(tip || body ? gestureFor(hit, pointer) : nullptr);
}

void Canvas::Private::releaseOnStage() {
    const bool dragged = gesture && gesture->feedback() != nullptr;
    if (gesture) {
        end(true);
    }
    if (!dragged) {
        emit q.clicked();
    }
}

void Canvas::Private::begin(std::unique_ptr<Gesture> next) {
    pendingMove.reset();
    glide.stop();
    reveal.stop();
    gesture = std::move(next);
    beginAtEdge();
    scene.setSteady(gesture != nullptr);
    showCursor();
}

void Canvas::Private::end(bool keep) {
    const std::unique_ptr<Gesture> ended = std::move(gesture);
    edgeClock.stop();
    ending = true;
    if (keep) {
        ended->finish();
    } else {
        ended->cancel();
        scene.restore(lookBefore);
    }
    ending = false;
    if (const auto* drawn = dynamic_cast<const NewGesture*>(ended.get()); keep && drawn != nullptr) {
        q.select(drawn->made());
    }
    const DisplayList before = scene.figure().list;
    const View view = scene.sheet().view();
    scene.setSteady(false);
    const bool seen = !keep || settle(*ended);
    refresh();
    if (animated && keep && scene.sheet().view() == view && glide.start(before, scene.figure().list)) {
        clock.setDuration(Glide::kMilliseconds);
        clock.start();
    }
    hoverAt(pointer, keys);
    if (!seen) {
        say(tr("Part of the figure lies beyond the sheet; 0 fits it."));
    }
}

void Canvas::Private::readPointer(QPointF at) {
    const Polar polar = polarOf(scene.sheet().toSketch(at), scene.sketch());
    emit q.pointerReadout(words::place(polar.magnitude, polar.referred, scene.sketch()));
}

void Canvas::mousePressEvent(QMouseEvent* event) {
    d->takeMove();
    d->pointer = event->position();
    d->nudges.end();
    d->focusShown = false;
    if (event->button() == Qt::LeftButton && !d->spaceHeld && d->pointWith(d->pointer, true)) {
        return;
    }
    if (d->gesture) {
        return; // a second button during a drag means nothing
    }
    if (d->staged) {
        return d->pressOnStage(event);
    }
    d->button = event->button();
    const bool pans =
        event->button() == Qt::MiddleButton || (event->button() == Qt::LeftButton && d->spaceHeld);
    if (pans) {
        return d->begin(std::make_unique<PanGesture>(d->context(), d->pointer));
    }
    if (event->button() == Qt::LeftButton) {
        const Hit hit = hitTest(d->scene, d->pointer, reachOf(*event));
        d->unitPressed = hit.unit;
        d->pressedAt = d->pointer;
        if (hit.kind != Hit::Kind::otherAnswer) {
            select(hit.vector);
        }
        if (hit.kind == Hit::Kind::nothing && !d->isStill) {
            const QScopedValueRollback<bool> quiet(d->isByPointer, true);
            d->say(tr("Drag from the common point, the small ring, to draw a new force."));
        }
        d->begin(d->gestureFor(hit, d->pointer));
    }
}

void Canvas::mouseMoveEvent(QMouseEvent* event) {
    if (d->gesture && !event->buttons().testFlag(d->button)) {
        d->takeMove();
        d->end(true); // the release went elsewhere, to a menu or another window
    }
    d->pointer = event->position();
    d->pointerInside = true;
    d->readPointer(d->pointer);
    if (d->gesture) {
        d->pendingMove = event->modifiers();
        update(); // the frame takes it: of many moves in one the last alone is worked out
    } else if (!d->pointWith(d->pointer, false)) {
        d->hoverAt(d->pointer, event->modifiers());
    }
}

void Canvas::catchUp() {
    d->takeMove();
}

/// What a drag did since the last frame, before anything else happens or is painted.
void Canvas::Private::takeMove() {
    if (const auto moved = std::exchange(pendingMove, {}); moved && gesture) {
        moveGesture(*moved);
        showCursor();
    }
}

void Canvas::mouseReleaseEvent(QMouseEvent* event) {
    d->takeMove();
    d->pointer = event->position();
    const std::optional<UnitOf> unit = std::exchange(d->unitPressed, {});
    const bool still =
        (!d->gesture || !d->gesture->previews()) && QLineF(d->pressedAt, d->pointer).length() < kDragStart;
    if (d->staged && event->button() == Qt::LeftButton) {
        d->releaseOnStage();
    } else if (d->gesture && event->button() == d->button) {
        d->end(true);
    }
    if (unit && still && event->button() == Qt::LeftButton) {
        emit unitAsked(*unit, event->globalPosition().toPoint());
    }
}

void Canvas::mouseDoubleClickEvent(QMouseEvent* event) {
    if (d->staged) {
        return mousePressEvent(event);
    }
    d->takeMove();
    const Hit hit = hitLabel(d->scene, event->position(), reachOf(*event));
    const bool typed = hit.kind == Hit::Kind::label || hit.kind == Hit::Kind::cell;
    if (event->button() == Qt::LeftButton && typed) {
        d->openEditor(hit.cell, hit.vector);
    } else {
        mousePressEvent(event);
    }
}

void Canvas::wheelEvent(QWheelEvent* event) {
    event->accept();
    if (!d->gesture && !d->staged) { // the scale is frozen during a drag
        d->scene.zoomAbout(event->position(), wheelFactor(*event));
        d->refresh();
        d->hoverAt(event->position(), event->modifiers());
    }
}

void Canvas::leaveEvent(QEvent*) {
    d->takeMove();
    d->pointerInside = false;
    if (!d->gesture) {
        const bool spoke = d->hover.kind != Hit::Kind::nothing;
        d->hover = {};
        d->tellPart({});
        if (spoke && !d->staged) {
            d->sayHover(); // what was said of a thing goes with it
        }
        update();
    }
    emit pointerReadout({});
}

void Canvas::contextMenuEvent(QContextMenuEvent* event) {
    if (d->gesture || d->staged) {
        return;
    }
    const bool byKey = event->reason() == QContextMenuEvent::Keyboard;
    const int vector = byKey ? d->selected : hitTest(d->scene, event->pos()).vector;
    select(vector);
    const QPoint at =
        byKey && vector != kNoVector ? mapToGlobal(vectorRect(vector).center()) : event->globalPos();
    QMenu* menu = (vector == kNoVector ? d->sheetMenu() : d->menuFor(vector)).release();
    menu->setParent(this, menu->windowFlags());
    menu->setAttribute(Qt::WA_DeleteOnClose);
    menu->popup(at);
}

} // namespace tailpoint
