// SPDX-License-Identifier: MIT
// The vectors that a learner has drawn for his own answer.
#include "ui/marking/own_answer.h"

#include "core/construct/reduction.h"
#include "core/sketch/shown.h"
#include "ui/document/given_edits.h"
#include "ui/document/sketch_document.h"
#include "ui/style/symbols.h"

#include <algorithm>
#include <cmath>

namespace tailpoint {

namespace {

bool isOfVector(const Answerable& one) {
    return one.id.what == What::magnitude || one.id.what == What::direction;
}

bool isForceOrSum(VectorId vector) {
    return vector.kind == VectorId::Kind::force || vector == kSumVector;
}

std::optional<Eigen::Vector2d> unitOf(const Direction& direction, const Sketch& sketch) {
    const auto unit = unitVector(direction, sketch);
    return unit ? std::optional(Eigen::Vector2d(double(unit->cos), double(unit->sin))) : std::nullopt;
}

} // namespace

std::vector<VectorId> OwnAnswer::drawable() const {
    std::vector<VectorId> sought;
    if (m_marker)
        for (const Answerable& one : m_marker->quantities())
            if (one.asked && isOfVector(one) && isForceOrSum(one.id.of) &&
                std::find(sought.begin(), sought.end(), one.id.of) == sought.end())
                sought.push_back(one.id.of);
    return sought;
}

std::optional<Eigen::Vector2d> OwnAnswer::drawn(VectorId vector) const {
    const auto found = m_drawn.find(vector);
    return found == m_drawn.end() ? std::nullopt : std::optional(found->second);
}

Eigen::Vector2d OwnAnswer::held(VectorId vector, const Eigen::Vector2d& tip) const {
    const Sketch& sketch = m_document.sketch();
    const int index = tailpoint::indexOf(vector);
    if (!hasVector(sketch, index))
        return tip;
    const Force& force = vectorOf(sketch, index);
    if (const auto unit = unitOf(force.direction, sketch)) {
        const double along = tip.dot(*unit);
        return (force.lineOfActionOnly ? along : std::max(0.0, along)) * *unit;
    }
    const double length = std::hypot(tip.x(), tip.y());
    if (force.magnitude.value && length > 0)
        return *force.magnitude.value / length * tip;
    return tip;
}

void OwnAnswer::draw(VectorId vector, const std::optional<Eigen::Vector2d>& tip) {
    if (tip)
        m_drawn[vector] = held(vector, *tip);
    else
        m_drawn.erase(vector);
    endPointing();
    renewPointed();
    clearMarks();
    emit drawnChanged();
}

void OwnAnswer::forgetDrawn() {
    m_drawn.clear();
    endPointing();
    renewPointed();
    clearMarks();
    emit drawnChanged();
}

QString OwnAnswer::drawnText(const Answerable& of) const {
    const auto tip = isOfVector(of) ? drawn(of.id.of) : std::nullopt;
    if (!tip)
        return {};
    const Sketch& sketch = m_document.sketch();
    for (const GivenValue& value : m_marker->drawn(of.id.of, tip->x(), tip->y()))
        if (value.id == of.id && of.id.what == What::magnitude)
            return onScreen(shownForceWithUnit(value.numbers.front().readings.front().value, sketch));
    const auto direction = referredDirection(tip->x(), tip->y(), sketch);
    if (const std::string bearing = bearingWords(direction, sketch); !bearing.empty())
        return onScreen(bearing);
    return direction ? onScreen(shownAngle(*direction, sketch)) : QString();
}

void OwnAnswer::addDrawn(Attempt& attempt) const {
    for (const auto& [vector, tip] : m_drawn)
        for (GivenValue& value : m_marker->drawn(vector, tip.x(), tip.y())) {
            const auto same = [&](const GivenValue& other) { return other.id == value.id; };
            if (std::none_of(attempt.values.begin(), attempt.values.end(), same))
                attempt.values.push_back(std::move(value));
        }
}

} // namespace tailpoint
