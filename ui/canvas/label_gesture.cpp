// SPDX-License-Identifier: MIT
#include "ui/canvas/label_gesture.h"

#include "core/construct/reduction.h"
#include "ui/canvas/force_edits.h"
#include "ui/canvas/words.h"
#include "ui/style/symbols.h"

#include <QLineF>
#include <algorithm>
#include <cmath>

namespace tailpoint {

namespace {

/// The group of the arrow, or of its direction's arc.
const Group* groupOf(const DisplayList& list, int vector, bool ofDirection) {
    const VectorId who = vectorId(vector);
    const auto isIt = [&](const Group& group) {
        return ofDirection ? group.part == FigurePart(directionId(who))
                           : isArrow(group) && vectorOf(group) == who;
    };
    const auto at = std::find_if(list.groups.begin(), list.groups.end(), isIt);
    return at == list.groups.end() ? nullptr : &*at;
}

double rounded(double points) {
    constexpr double step = 0.5;
    return std::clamp(std::round(points / step) * step, -kFurthestPin, kFurthestPin);
}

} // namespace

std::optional<LabelPin> pinAsItStands(const Scene& scene, int vector, bool ofDirection) {
    const Figure& figure = scene.figure();
    const Group* group = groupOf(figure.list, vector, ofDirection);
    const auto home = group ? figure.homes.find(group->id) : figure.homes.end();
    if (home == figure.homes.end())
        return std::nullopt;
    const double factor = scene.options().style.factor;
    for (const Item& item : group->items)
        if (const auto* text = std::get_if<Text>(&item)) {
            const Box& box = text->box;
            return LabelPin{(box.left + box.width / 2 - home->second.x) / factor,
                            (home->second.y - box.top - box.height / 2) / factor};
        }
    return std::nullopt;
}

Sketch withPin(const Sketch& sketch, int vector, bool ofDirection, LabelPin pin) {
    Sketch after = sketch;
    if (Force* force = forceAt(after, vector))
        (ofDirection ? force->directionLabel : force->label) = LabelPin{rounded(pin.right), rounded(pin.up)};
    return after;
}

LabelGesture::LabelGesture(GestureContext context, const Hit& label, QPointF press)
    : m_context(std::move(context)), m_vector(label.vector), m_ofDirection(label.cell == Cell::direction),
      m_press(press), m_before(m_context.scene.sketch()),
      m_start(pinAsItStands(m_context.scene, m_vector, m_ofDirection)) {}

void LabelGesture::move(const Pointer& pointer) {
    if (!m_start || (!m_moved && QLineF(m_press, pointer.at).length() < kDragStart))
        return;
    m_moved = true;
    const double points = m_context.scene.sheet().pixelsPerPoint() * m_context.scene.options().style.factor;
    const QPointF by = (pointer.at - m_press) / points;
    const Sketch after =
        withPin(m_before, m_vector, m_ofDirection, {m_start->right + by.x(), m_start->up - by.y()});
    const QString step =
        words::tr("Put the label of %1 elsewhere").arg(words::name(*forceAt(m_before, m_vector)));
    if (const auto fault = m_context.scene.document().preview(after, step))
        m_context.say({{fault->message}});
    else
        m_context.say(
            sentence(words::tr("The label stays where you put it; the arrow's menu frees it again.")));
}

void LabelGesture::finish() {
    m_context.scene.document().commit();
}

void LabelGesture::cancel() {
    m_context.scene.document().cancel();
}

Qt::CursorShape LabelGesture::cursor() const {
    return m_moved ? Qt::ClosedHandCursor : Qt::IBeamCursor;
}

bool labelCanMove(const Hit& label) {
    return label.kind == Hit::Kind::label && (label.cell == Cell::magnitude || label.cell == Cell::direction);
}

bool hasPins(const Sketch& sketch, int vector) {
    const Force* force = forceAt(sketch, vector);
    return force != nullptr && (force->label || force->directionLabel);
}

Sketch withoutPins(const Sketch& sketch, int vector) {
    Sketch after = sketch;
    if (Force* force = forceAt(after, vector)) {
        force->label.reset();
        force->directionLabel.reset();
    }
    return after;
}

} // namespace tailpoint
