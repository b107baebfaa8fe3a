// SPDX-License-Identifier: MIT
// Everything on the sheet from the keyboard.
#include "ui/canvas/canvas_p.h"
#include "ui/canvas/words.h"

#include <QKeyEvent>

namespace tailpoint {

namespace {

constexpr double kLabelStep = 4, kFineLabelStep = 0.5; // points
constexpr double kPanStep = 40; // pixels an arrow key moves the sheet where nothing is selected

/// The vectors in the order in which Tab takes them: forces, then the sum.
std::vector<int> tabOrder(const Sketch& sketch) {
    std::vector<int> order(sketch.forces.size() + 1);
    for (std::size_t i = 0; i < sketch.forces.size(); ++i) {
        order[i] = static_cast<int>(i);
    }
    order.back() = kSumIndex;
    return order;
}

} // namespace

bool Canvas::Private::step(int by) {
    const std::vector<int> order = tabOrder(scene.sketch());
    const auto count = static_cast<int>(order.size());
    const auto at = std::find(order.begin(), order.end(), selected);
    const int now = at == order.end() ? (by > 0 ? -1 : count) : static_cast<int>(at - order.begin());
    const int next = now + by;
    if (next < 0 || next >= count) {
        return false;
    }
    q.select(order[static_cast<std::size_t>(next)]);
    sayOwnKeys();
    return true;
}

/// Tab goes through the vectors and then on to the next widget: nobody is trapped on the sheet.
bool Canvas::focusNextPrevChild(bool next) {
    if (d->staged) {
        return QWidget::focusNextPrevChild(next);
    }
    d->focusShown = true;
    if (d->gesture || (hasFocus() && d->step(next ? 1 : -1))) {
        return true;
    }
    select(kNoVector);
    return QWidget::focusNextPrevChild(next);
}

/// The figure can't be lost: what would take the last of it off the sheet is not done.
void Canvas::Private::panByKey(QPointF pan) {
    const Scene::Look before = scene.look();
    const QRectF sheet(q.rect()), inner = sheet.adjusted(kPanStep, kPanStep, -kPanStep, -kPanStep);
    const QRectF& kept = isSeen(scene, inner) ? inner : sheet;
    const bool seen = isSeen(scene, kept);
    scene.panBy(pan);
    if (seen && !isSeen(scene, kept)) {
        scene.restore(before);
        say(tr("No part of the figure would be left on the sheet; 0 fits it."));
    }
    refresh();
}

/// Left and Right turn the selected force counter-clockwise and clockwise, Up and Down change its magnitude;
/// with nothing selected they move the sheet.
bool Canvas::Private::arrowKey(QKeyEvent* event) {
    const bool fine = event->modifiers().testFlag(Qt::ShiftModifier);
    QPointF pan;
    int turn = 0, size = 0;
    switch (event->key()) {
    case Qt::Key_Left:
        turn = 1, pan = {kPanStep, 0};
        break;
    case Qt::Key_Right:
        turn = -1, pan = {-kPanStep, 0};
        break;
    case Qt::Key_Up:
        size = 1, pan = {0, kPanStep};
        break;
    case Qt::Key_Down:
        size = -1, pan = {0, -kPanStep};
        break;
    default:
        return false;
    }
    if (selected == kNoVector) {
        panByKey(pan);
    } else if (turn != 0) {
        q.nudgeDirection(selected, turn, fine);
    } else {
        q.nudgeMagnitude(selected, size, fine);
    }
    return true;
}

/// Ctrl and arrows put the selected force's label elsewhere, Alt and arrows that of its direction; Ctrl and
/// Backspace lets both find their own places.
bool Canvas::Private::labelKey(QKeyEvent* event) {
    const bool control = event->modifiers().testFlag(Qt::ControlModifier);
    const bool alt = event->modifiers().testFlag(Qt::AltModifier);
    if (selected == kNoVector || control == alt) {
        return false;
    }
    const double step = event->modifiers().testFlag(Qt::ShiftModifier) ? kFineLabelStep : kLabelStep;
    switch (event->key()) {
    case Qt::Key_Left:
        return q.nudgeLabel(selected, alt, {-step, 0}), true;
    case Qt::Key_Right:
        return q.nudgeLabel(selected, alt, {step, 0}), true;
    case Qt::Key_Up:
        return q.nudgeLabel(selected, alt, {0, step}), true;
    case Qt::Key_Down:
        return q.nudgeLabel(selected, alt, {0, -step}), true;
    case Qt::Key_Backspace:
        return control ? (q.freeLabels(selected), true) : false;
    default:
        return false;
    }
}

bool Canvas::Private::forceKey(QKeyEvent* event) {
    switch (event->key()) {
    case Qt::Key_Delete:
    case Qt::Key_Backspace:
        if (!forgetOwn()) {
            q.removeSelected();
        }
        return true;
    case Qt::Key_Insert:
        q.addForce();
        return true;
    case Qt::Key_N:
        q.takeOtherAnswer();
        return true;
    case Qt::Key_F2:
    case Qt::Key_Return:
    case Qt::Key_Enter:
        if (selected == kNoVector) {
            return false;
        }
        openEditor(event->key() == Qt::Key_F2                       ? Cell::name
                   : event->modifiers().testFlag(Qt::ShiftModifier) ? Cell::direction
                                                                    : Cell::magnitude,
                   selected);
        return true;
    default:
        return false;
    }
}

/// A digit begins a new magnitude of what is selected; 0 fits the sheet.
bool Canvas::Private::digitKey(QKeyEvent* event) {
    const QString digit = event->text();
    const bool isPlain = (event->modifiers() & ~Qt::KeypadModifier) == Qt::NoModifier;
    if (selected == kNoVector || gesture || !isPlain || digit.size() != 1 || digit[0] < u'1' ||
        digit[0] > u'9') {
        return false;
    }
    openEditor(Cell::magnitude, selected);
    if (editor.isOpen()) {
        editor.insert(digit); // in place of what is selected there: all of it
    }
    return true;
}

bool Canvas::Private::sheetKey(QKeyEvent* event) {
    switch (event->key()) {
    case Qt::Key_0:
    case Qt::Key_Home:
        q.fit();
        return true;
    case Qt::Key_Plus:
    case Qt::Key_Equal:
        q.zoomIn();
        return true;
    case Qt::Key_Minus:
        q.zoomOut();
        return true;
    case Qt::Key_Space:
        spaceHeld = true;
        showCursor();
        return true;
    default:
        break;
    }
    if (event->matches(QKeySequence::Undo)) {
        scene.document().undo();
        return true;
    }
    if (event->matches(QKeySequence::Redo)) {
        scene.document().redo();
        return true;
    }
    return false;
}

/// A modifier that comes or goes during a drag counts at once, not with the next move.
bool Canvas::Private::holdKey(QKeyEvent* event, bool pressed) {
    const Qt::KeyboardModifier which = event->key() == Qt::Key_Shift     ? Qt::ShiftModifier
                                       : event->key() == Qt::Key_Control ? Qt::ControlModifier
                                       : event->key() == Qt::Key_Alt     ? Qt::AltModifier
                                                                         : Qt::NoModifier;
    if (which == Qt::NoModifier) {
        return false;
    }
    Qt::KeyboardModifiers now = event->modifiers();
    now.setFlag(which, pressed);
    if (!gesture) {
        hoverWith(now);
        return false;
    }
    moveGesture(now);
    return true;
}

/// Snapping on or off for good, in the middle of a drag too, with Shift and Alt as well then: no window
/// manager takes a plain letter, as many take Alt and a drag. Ctrl+S saves.
bool Canvas::Private::snapKey(QKeyEvent* event) {
    const Qt::KeyboardModifiers others = event->modifiers() & ~(Qt::ShiftModifier | Qt::KeypadModifier);
    const bool meant = others == Qt::NoModifier || (others == Qt::AltModifier && gesture);
    if (event->key() != Qt::Key_S || !meant) {
        return false;
    }
    if (!event->isAutoRepeat()) {
        q.setSnapping(!snapping);
        say(snapping ? tr("Snapping is on: round magnitudes, round angles and other lines. S turns it off.")
                     : tr("Snapping is off: a drag goes by the last shown digit. S turns it on."));
    }
    return true;
}

void Canvas::keyPressEvent(QKeyEvent* event) {
    d->takeMove();
    if (d->holdKey(event, true)) {
        return;
    }
    if (!d->gesture && d->pointingKey(event)) {
        return;
    }
    d->nudges.keyPressed(event->isAutoRepeat());
    if (event->key() == Qt::Key_Escape) {
        if (d->gesture) {
            return d->end(false);
        }
        if (!d->staged && d->selected != kNoVector) {
            return select(kNoVector);
        }
        return QWidget::keyPressEvent(event);
    }
    if (d->staged) {
        return event->setAccepted(d->gesture != nullptr); // the rest is its owner's
    }
    if (d->snapKey(event)) {
        return;
    }
    const bool commands =
        event->modifiers().testFlag(Qt::ControlModifier) || event->modifiers().testFlag(Qt::AltModifier);
    const bool taken = d->gesture || d->sheetKey(event) || (commands && d->labelKey(event)) ||
                       (!commands && (d->arrowKey(event) || d->forceKey(event) || d->digitKey(event)));
    if (!taken) {
        QWidget::keyPressEvent(event);
    }
}

void Canvas::keyReleaseEvent(QKeyEvent* event) {
    d->takeMove();
    if (!event->isAutoRepeat()) {
        d->nudges.keyReleased();
    }
    if (event->key() == Qt::Key_Space && !event->isAutoRepeat() && !d->staged) {
        d->spaceHeld = false;
        d->showCursor();
    } else if (!d->holdKey(event, false)) {
        QWidget::keyReleaseEvent(event);
    }
}

} // namespace tailpoint
