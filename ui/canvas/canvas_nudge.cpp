// Changing a vector without a pointer.
#include "ui/canvas/canvas_p.h"
#include "ui/canvas/words.h"

#include <cmath>

namespace tailpoint {

/// Edits one vector: `change(force, sketch)` on a copy.
template <class Change>
bool Canvas::Private::change(int vector, const QString& text, quint64 token, Change change) {
    Sketch after = scene.sketch();
    Force* force = forceAt(after, vector);
    if (force == nullptr || gesture) {
        return false;
    }
    change(*force, after);
    return edit(after, text.arg(words::name(*force)), token);
}

void Canvas::nudgeMagnitude(int vector, int way, bool fine) {
    const Sketch& sketch = d->scene.sketch();
    const Force* was = forceAt(sketch, vector);
    if (was == nullptr) {
        return;
    }
    if (!isGiven(was->magnitude)) {
        return d->say(whyNotDragged(sketch, vector));
    }
    const SheetView& sheet = d->scene.sheet();
    const double digit = lastDigitOfMagnitude(*was->magnitude.value, sketch);
    const double round = magnitudeStep({sheet.pixelsPerUnit(), divisionOf(sheet.view()), {}, true});
    const double step = fine || !d->snapping ? digit : std::max(digit, round);
    const double to = nextMultiple(*was->magnitude.value, step, way);
    if (to > 0) {
        d->change(vector, tr("Change %1"), d->nudges.next(vector, true),
                  [&](Force& force, const Sketch& now) { setShownMagnitude(force, to, now); });
    }
}

void Canvas::nudgeDirection(int vector, int way, bool fine) {
    const Sketch& sketch = d->scene.sketch();
    const Force* was = forceAt(sketch, vector);
    if (was == nullptr) {
        return;
    }
    const std::optional<double> now = referredDirection(was->direction, sketch);
    if (!now) {
        return d->say(whyNotDragged(sketch, vector));
    }
    const double step = fine || !d->snapping ? lastDigitOfAngle(sketch) : finestAngleStep(sketch.angleUnit);
    const double to = nextMultiple(*now, step, sketch.reference.sense == Sense::ccw ? way : -way);
    d->change(vector, tr("Turn %1"), d->nudges.next(vector, false),
              [&](Force& force, const Sketch& sheet) { setShownDirection(force, to, sheet); });
}

bool Canvas::setMagnitude(int vector, double magnitude) {
    const Force* was = forceAt(d->scene.sketch(), vector);
    const bool takes =
        was != nullptr && isGiven(was->magnitude) && magnitude >= 0 && std::isfinite(magnitude);
    return takes &&
           d->change(vector, tr("Change %1"), d->nudges.next(vector, true),
                     [&](Force& force, const Sketch& now) { setShownMagnitude(force, magnitude, now); });
}

bool Canvas::setDirection(int vector, double referred) {
    const Force* was = forceAt(d->scene.sketch(), vector);
    const bool takes = was != nullptr && isGiven(was->direction) && std::isfinite(referred);
    return takes &&
           d->change(vector, tr("Turn %1"), d->nudges.next(vector, false),
                     [&](Force& force, const Sketch& now) { setShownDirection(force, referred, now); });
}

} // namespace tailpoint
