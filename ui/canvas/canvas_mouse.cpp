// The pointer: which gesture a press begins, what hovering shows, the wheel.
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
    const Hit hit = hitTest(scene, pointer);
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
    hoverAt(pointer);
    if (!seen) {
        say(tr("Part of the figure lies beyond the sheet; 0 fits it."));
    }
}

void Canvas::Private::hoverAt(QPointF at) {
    const Hit now = hitTest(scene, at);
    const bool changed = !(now == hover);
    hover = now;
    if (changed) {
        sayHover();
        q.update();
    }
    if (!staged) {
        tellPart(partAt(scene, at));
    }
    showCursor();
}

void Canvas::Private::tellPart(const std::optional<FigurePart>& part) {
    if (part != pointed) {
        pointed = part;
        emit q.partPointed(part);
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
    switch (hover.kind) {
    case Hit::Kind::commonPoint:
        return q.setCursor(isStill ? Qt::ArrowCursor : Qt::CrossCursor);
    case Hit::Kind::tip:
        return q.setCursor(canMove(hover.vector) ? Qt::SizeAllCursor : Qt::ArrowCursor);
    case Hit::Kind::ownTip:
        return q.setCursor(Qt::SizeAllCursor);
    case Hit::Kind::body:
        return q.setCursor(canTurn(hover.vector) ? Qt::OpenHandCursor : Qt::ArrowCursor);
    case Hit::Kind::otherAnswer:
        return q.setCursor(Qt::PointingHandCursor);
    case Hit::Kind::label:
    case Hit::Kind::cell:
        return q.setCursor(Qt::IBeamCursor);
    case Hit::Kind::nothing:
        return q.unsetCursor();
    }
}

void Canvas::Private::sayHover() {
    const QScopedValueRollback<bool> quiet(isByPointer, true);
    const Force* force = forceAt(scene.sketch(), hover.vector);
    const bool fixed = force != nullptr && !canMove(hover.vector);
    switch (hover.kind) {
    case Hit::Kind::commonPoint:
        return isStill ? say(whyNot(kNoVector)) : say(tr("Drag from the common point to draw a new force."));
    case Hit::Kind::tip:
        return say(fixed ? whyNot(hover.vector)
                         : sentence(tr("Drag the tip to change %1. Shift holds its direction, Ctrl its "
                                       "magnitude, S switches snapping."),
                                    symbolAt(hover.vector)));
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
    case Hit::Kind::nothing:
        return say(isStill ? QString()
                   : scene.sketch().forces.empty()
                       ? tr("Drag from the common point to draw a force.")
                       : tr("Drag a tip to change a force. Shift holds its direction, Ctrl its magnitude."));
    }
}

void Canvas::Private::readPointer(QPointF at) {
    const Polar polar = polarOf(scene.sheet().toSketch(at), scene.sketch());
    emit q.pointerReadout(words::place(polar.magnitude, polar.referred, scene.sketch()));
}

void Canvas::mousePressEvent(QMouseEvent* event) {
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
        const Hit hit = hitTest(d->scene, d->pointer);
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
    d->pointer = event->position();
    d->pointerInside = true;
    d->readPointer(d->pointer);
    if (d->gesture && !event->buttons().testFlag(d->button)) {
        d->end(true); // the release went elsewhere, to a menu or another window
    }
    if (d->gesture) {
        d->moveGesture(event->modifiers());
        d->showCursor();
    } else if (!d->pointWith(d->pointer, false)) {
        d->hoverAt(d->pointer);
    }
}

void Canvas::mouseReleaseEvent(QMouseEvent* event) {
    d->pointer = event->position();
    if (d->staged && event->button() == Qt::LeftButton) {
        d->releaseOnStage();
    } else if (d->gesture && event->button() == d->button) {
        d->end(true);
    }
}

void Canvas::mouseDoubleClickEvent(QMouseEvent* event) {
    if (d->staged) {
        return mousePressEvent(event);
    }
    const Hit hit = hitLabel(d->scene, event->position());
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
        d->hoverAt(event->position());
    }
}

void Canvas::leaveEvent(QEvent*) {
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
