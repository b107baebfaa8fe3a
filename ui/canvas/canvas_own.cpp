// SPDX-License-Identifier: MIT
// The sheet while the learner's own answer is under way.
#include "ui/canvas/canvas_p.h"
#include "ui/canvas/pointing_layer.h"
#include "ui/marking/own_answer.h"
#include "ui/style/symbols.h"

#include <QKeyEvent>

namespace tailpoint {

void Canvas::setOwnAnswer(OwnAnswer& answer) {
    d->scene.setOwnAnswer(&answer);
    connect(&answer, &OwnAnswer::beginning, this, [this] { d->ownAnswerBegins(); });
    connect(&answer, &OwnAnswer::modeChanged, this, [this] { d->ownAnswerChanged(); });
    connect(&answer, &OwnAnswer::asideChanged, this, [this] { d->refresh(); });
    connect(&answer, &OwnAnswer::drawnChanged, this, [this] {
        update();
        d->announce();
    });
    connect(&answer, &OwnAnswer::pointingChanged, this, [this] { d->pointingChanged(); });
    connect(&answer, &OwnAnswer::marked, this, [this] { d->ownDrawingChanged(); });
}

void Canvas::Private::ownAnswerBegins() {
    beforeAnswer = {scene.look(), scene.sketch(), q.size()};
}

/// A construction that reaches beyond the sheet is brought onto it, and the view is as it was once that is
/// taken off again, unless a hand has moved it.
void Canvas::Private::ownDrawingChanged() {
    const OwnAnswer* answer = scene.ownAnswer();
    std::vector<AttemptStroke> strokes =
        answer != nullptr ? answer->slipDrawing() : std::vector<AttemptStroke>();
    if (answer != nullptr)
        for (AttemptStroke& stroke : answer->answerDrawing())
            strokes.push_back(std::move(stroke));
    if (gesture) { // nothing moves under a hand
        beforeDrawing.reset();
        return refresh();
    }
    if (beforeDrawing && beforeDrawing->shown == scene.sheet().view())
        scene.restore(beforeDrawing->look);
    beforeDrawing.reset();
    const Scene::Look look = scene.look();
    if (!strokes.empty() && scene.bringInDrawing(strokes))
        beforeDrawing = {look, scene.sheet().view()};
    refresh();
    const bool isShown = answer != nullptr && answer->isSlipShown();
    if (isShown)
        say(tr("Thin and dashed on the sheet: the construction that gives your number."));
    else if (saysSlip)
        say(QString());
    saysSlip = isShown;
}

/// The view comes back as it was; where the sketch has changed, as much of it as that allows.
void Canvas::Private::ownAnswerChanged() {
    hover = {};
    beforeDrawing.reset();
    if (scene.ownAnswer() == nullptr) {
        scene.restore(beforeAnswer.look);
        if (beforeAnswer.size != q.size() || !(beforeAnswer.sketch == scene.sketch())) {
            scene.keepInSheet();
        }
    }
    refresh();
}

bool Canvas::Private::isPointing() const {
    return scene.ownAnswer() != nullptr && !scene.ownAnswer()->pointing().empty();
}

/// The keyboard comes to the sheet while an angle is looked for.
void Canvas::Private::pointingChanged() {
    q.update();
    if (!isPointing()) {
        showCursor();
        return say(QString());
    }
    if (scene.ownAnswer()->pointsAt()) {
        return;
    }
    const Answerable* of = scene.ownAnswer()->named(scene.ownAnswer()->pointing());
    const Things& things = scene.result().things();
    q.setFocus(Qt::OtherFocusReason);
    say(sentence(
        tr("Click the arc of the angle %1, or go through the angles with the arrow keys and take one "
           "with Enter. Esc leaves."),
        Words{of->name, true, false, things.symbol(of->id)}));
}

/// Everything that moves or presses goes to the angles.
bool Canvas::Private::pointWith(QPointF at, bool isPress) {
    if (!isPointing())
        return false;
    OwnAnswer& answer = *scene.ownAnswer();
    const auto hit = pointableAt(scene, at);
    if (hit || !isPress)
        answer.pointAt(hit);
    q.setCursor(hit ? Qt::PointingHandCursor : Qt::ArrowCursor);
    if (isPress && hit)
        answer.takePointed();
    return true;
}

bool Canvas::Private::pointingKey(QKeyEvent* event) {
    if (!isPointing())
        return false;
    OwnAnswer& answer = *scene.ownAnswer();
    const std::size_t count = answer.pointable().size();
    const auto now = answer.pointsAt();
    switch (event->key()) {
    case Qt::Key_Escape:
        answer.endPointing();
        return true;
    case Qt::Key_Right:
    case Qt::Key_Down:
        answer.pointAt(now ? (*now + 1) % count : 0);
        return true;
    case Qt::Key_Left:
    case Qt::Key_Up:
        answer.pointAt(((now ? *now : 0) + count - 1) % count);
        return true;
    case Qt::Key_Return:
    case Qt::Key_Enter:
    case Qt::Key_Space:
        answer.takePointed();
        return true;
    default:
        return false;
    }
}

} // namespace tailpoint
