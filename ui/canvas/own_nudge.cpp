// SPDX-License-Identifier: MIT
// A vector of the learner's own answer drawn without a pointer.
#include "core/construct/reduction.h"
#include "ui/canvas/canvas_p.h"
#include "ui/canvas/own_layer.h"
#include "ui/canvas/words.h"
#include "ui/marking/own_answer.h"
#include "ui/style/symbols.h"

#include <algorithm>
#include <cmath>

namespace tailpoint {

namespace {

std::optional<Eigen::Vector2d> unitOf(const Direction& direction, const Sketch& sketch) {
    const auto unit = unitVector(direction, sketch);
    return unit ? std::optional(Eigen::Vector2d(double(unit->cos), double(unit->sin))) : std::nullopt;
}

double magnitudeStepOf(const Scene& scene, double size, bool fine) {
    const SheetView& sheet = scene.sheet();
    const double round = magnitudeStep({sheet.pixelsPerUnit(), divisionOf(sheet.view()), {}, true});
    if (!(size > 0))
        return round;
    const double digit = lastDigitOfMagnitude(size, scene.sketch());
    return fine ? digit : std::max(digit, round);
}

} // namespace

std::optional<Eigen::Vector2d> ownTipOf(const Scene& scene, int vector) {
    for (const OwnTip& own : ownTips(scene))
        if (indexOf(own.vector) == vector)
            return own.tip;
    return std::nullopt;
}

std::optional<Eigen::Vector2d> ownTipNudged(const Scene& scene, int vector, Nudged what, int way, bool fine) {
    const Sketch& sketch = scene.sketch();
    const Force* force = forceAt(sketch, vector);
    const auto tip = ownTipOf(scene, vector);
    if (force == nullptr || !tip)
        return std::nullopt;
    const double length = std::hypot(tip->x(), tip->y());
    if (what == Nudged::magnitude && !isGiven(force->magnitude)) {
        const auto line = unitOf(force->direction, sketch);
        const Eigen::Vector2d unit = line ? *line : length > 0 ? *tip / length : Eigen::Vector2d(1, 0);
        const double now = tip->dot(unit), step = magnitudeStepOf(scene, std::abs(now), fine);
        double to = nextMultiple(now, step, way);
        const bool mayTurn = line && force->lineOfActionOnly;
        if (mayTurn && std::abs(to) < step / 2) // nothing is no arrow: on to the other side
            to = way * step;
        return to > 0 || (mayTurn && to < 0) ? std::optional<Eigen::Vector2d>(to * unit) : std::nullopt;
    }
    const auto now = referredDirection(tip->x(), tip->y(), sketch);
    if (what != Nudged::direction || isGiven(force->direction) || !now)
        return std::nullopt;
    const double step = fine ? lastDigitOfAngle(sketch) : finestAngleStep(sketch.angleUnit);
    const double to = nextMultiple(*now, step, sketch.reference.sense == Sense::ccw ? way : -way);
    const auto unit = unitOf({AngleForm{to}, {}}, sketch);
    return unit ? std::optional<Eigen::Vector2d>(length * *unit) : std::nullopt;
}

/// What of a vector is asked is drawn; false where that is given, or nothing is asked of it.
bool Canvas::Private::nudgeOwn(int vector, Nudged what, int way, bool fine) {
    OwnAnswer* answer = scene.ownAnswer();
    const Force* force = forceAt(scene.sketch(), vector);
    if (answer == nullptr || force == nullptr || gesture || !ownTipOf(scene, vector))
        return false;
    if (what == Nudged::magnitude ? isGiven(force->magnitude) : isGiven(force->direction))
        return false;
    const auto tip = ownTipNudged(scene, vector, what, way, fine || !snapping);
    if (!tip)
        return true;
    answer->draw(vectorId(vector), *tip);
    const Point at = scene.sheet().view().toSheet(*tip);
    const View& view = scene.sheet().view();
    if (!QRectF(0, 0, view.width, view.height).contains(at.x, at.y)) {
        scene.bringIn({Eigen::Vector2d(0, 0), *tip});
        refresh();
    }
    say(sentence(tr("Your %1: %2").arg(QStringLiteral("%1"), q.ownDrawn(vector)), symbolAt(vector)));
    announce();
    return true;
}

/// Says how a vector that is asked is drawn by the keyboard.
void Canvas::Private::sayOwnKeys() {
    const Force* force = forceAt(scene.sketch(), selected);
    if (force == nullptr || !ownTipOf(scene, selected))
        return;
    const bool isSize = !isGiven(force->magnitude), isWay = !isGiven(force->direction);
    say(sentence(isSize && isWay ? tr("Draw your %1: Up and Down change its length, Left and Right turn it.")
                 : isSize        ? tr("Draw your %1: Up and Down move its tip along its line.")
                                 : tr("Draw your %1: Left and Right turn it."),
                 symbolAt(selected)));
}

/// Takes back what is drawn of the selected vector.
bool Canvas::Private::forgetOwn() {
    OwnAnswer* answer = scene.ownAnswer();
    if (answer == nullptr || forceAt(scene.sketch(), selected) == nullptr ||
        !answer->drawn(vectorId(selected)))
        return false;
    answer->draw(vectorId(selected), std::nullopt);
    return true;
}

QString Canvas::ownDrawn(int vector) const {
    const OwnAnswer* answer = d->scene.ownAnswer();
    if (answer == nullptr || forceAt(d->scene.sketch(), vector) == nullptr)
        return {};
    const auto tip = answer->drawn(vectorId(vector));
    if (!tip)
        return {};
    const Polar polar = polarOf(*tip, d->scene.sketch());
    return words::place(polar.magnitude, polar.referred, d->scene.sketch());
}

} // namespace tailpoint
