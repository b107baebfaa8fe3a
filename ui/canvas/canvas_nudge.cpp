// SPDX-License-Identifier: MIT
// Changing a vector without a pointer.
#include "ui/canvas/canvas_p.h"
#include "ui/canvas/label_gesture.h"
#include "ui/canvas/words.h"
#include "ui/style/symbols.h"

#include <cmath>

namespace tailpoint {

/// Edits one vector: `change(force, sketch)` on a copy.
template <class Change>
bool Canvas::Private::change(int vector, const QString& text, Nudged what, Change change) {
    Sketch after = scene.sketch();
    Force* force = forceAt(after, vector);
    if (force == nullptr || gesture) {
        return false;
    }
    change(*force, after);
    return nudge(vector, what, after, text.arg(words::name(*force)));
}

void Canvas::nudgeMagnitude(int vector, int way, bool fine) {
    const Sketch& sketch = d->scene.sketch();
    const Force* was = forceAt(sketch, vector);
    if (was == nullptr || d->nudgeOwn(vector, Nudged::magnitude, way, fine)) {
        return;
    }
    if (d->isStill || !isGiven(was->magnitude)) {
        return d->say(d->whyNot(vector));
    }
    const SheetView& sheet = d->scene.sheet();
    const double digit = lastDigitOfMagnitude(*was->magnitude.value, sketch);
    const double round = magnitudeStep({sheet.pixelsPerUnit(), divisionOf(sheet.view()), {}, true});
    const double step = fine || !d->snapping ? digit : std::max(digit, round);
    const double to = nextMultiple(*was->magnitude.value, step, way);
    if (to > 0) {
        d->change(vector, tr("Change %1"), Nudged::magnitude,
                  [&](Force& force, const Sketch& now) { setShownMagnitude(force, to, now); });
    }
}

void Canvas::nudgeDirection(int vector, int way, bool fine) {
    const Sketch& sketch = d->scene.sketch();
    const Force* was = forceAt(sketch, vector);
    if (was == nullptr || d->nudgeOwn(vector, Nudged::direction, way, fine)) {
        return;
    }
    const std::optional<double> now = referredDirection(was->direction, sketch);
    if (d->isStill || !now) {
        return d->say(d->whyNot(vector));
    }
    const double step = fine || !d->snapping ? lastDigitOfAngle(sketch) : finestAngleStep(sketch.angleUnit);
    const double to = nextMultiple(*now, step, sketch.reference.sense == Sense::ccw ? way : -way);
    d->change(vector, tr("Turn %1"), Nudged::direction,
              [&](Force& force, const Sketch& sheet) { setShownDirection(force, to, sheet); });
}

bool Canvas::setMagnitude(int vector, double magnitude) {
    const Force* was = forceAt(d->scene.sketch(), vector);
    if (was != nullptr && (d->isStill || !isGiven(was->magnitude))) {
        d->say(d->whyNot(vector));
        return false;
    }
    if (!(magnitude >= 0) || !std::isfinite(magnitude)) {
        d->say(tr("A magnitude is 0 or more; turn the direction round instead."));
        return false;
    }
    return was != nullptr &&
           d->change(vector, tr("Change %1"), Nudged::magnitude,
                     [&](Force& force, const Sketch& now) { setShownMagnitude(force, magnitude, now); });
}

bool Canvas::setDirection(int vector, double referred) {
    const Force* was = forceAt(d->scene.sketch(), vector);
    if (was != nullptr && (d->isStill || !isGiven(was->direction))) {
        d->say(d->whyNot(vector));
        return false;
    }
    return was != nullptr && std::isfinite(referred) &&
           d->change(vector, tr("Turn %1"), Nudged::direction,
                     [&](Force& force, const Sketch& now) { setShownDirection(force, referred, now); });
}

/// From where it was put, or from where it stands by itself.
bool Canvas::nudgeLabel(int vector, bool ofDirection, QPointF by) {
    const Sketch& sketch = d->scene.sketch();
    const Force* was = forceAt(sketch, vector);
    if (was == nullptr) {
        return false;
    }
    std::optional<LabelPin> pin = ofDirection ? was->directionLabel : was->label;
    if (!pin) {
        pin = pinAsItStands(d->scene, vector, ofDirection);
    }
    if (!pin) {
        d->say(sentence(ofDirection ? tr("The direction of %1 has no label on the sheet.")
                                    : tr("%1 has no label on the sheet."),
                        d->symbolAt(vector)));
        return false;
    }
    const Sketch after = withPin(sketch, vector, ofDirection, {pin->right + by.x(), pin->up + by.y()});
    const Nudged what = ofDirection ? Nudged::directionLabel : Nudged::label;
    const bool taken =
        d->nudge(vector, what, after, tr("Put the label of %1 elsewhere").arg(words::name(*was)));
    if (taken) {
        d->say(tr("The label stays where you put it; Ctrl+Backspace frees it again."));
    }
    return taken;
}

void Canvas::freeLabels(int vector) {
    if (hasPins(d->scene.sketch(), vector)) {
        d->edit(withoutPins(d->scene.sketch(), vector), tr("Let the label find its own place"));
    } else if (forceAt(d->scene.sketch(), vector) != nullptr) {
        d->say(sentence(tr("The label of %1 has found its own place already."), d->symbolAt(vector)));
    }
}

} // namespace tailpoint
