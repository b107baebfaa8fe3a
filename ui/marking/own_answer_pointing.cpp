// SPDX-License-Identifier: MIT
// An own answer's angles that are pointed at on the sheet.
#include "ui/marking/own_answer.h"

#include "ui/document/sketch_document.h"

#include <algorithm>

namespace tailpoint {

bool OwnAnswer::canPoint(const Answerable& of) const {
    return !of.asked && (of.id.what == What::between || of.id.what == What::opposite) &&
           !pointableAngles(m_document.sketch(), m_drawn).empty();
}

void OwnAnswer::beginPointing(const std::string& name) {
    const Answerable* of = m_marker ? m_marker->named(name) : nullptr;
    if (of == nullptr || !canPoint(*of))
        return;
    clearMarks();
    m_pointing = name;
    m_pointable = pointableAngles(m_document.sketch(), m_drawn);
    m_pointsAt.reset();
    emit pointingChanged();
}

void OwnAnswer::endPointing() {
    if (m_pointing.empty())
        return;
    m_pointing.clear();
    m_pointable.clear();
    m_pointsAt.reset();
    emit pointingChanged();
}

void OwnAnswer::pointAt(std::optional<std::size_t> index) {
    if (m_pointing.empty() || index == m_pointsAt || (index && *index >= m_pointable.size()))
        return;
    m_pointsAt = index;
    emit pointingChanged();
}

void OwnAnswer::takePointed() {
    if (m_pointing.empty() || !m_pointsAt)
        return;
    m_pointed.insert_or_assign(m_pointing, m_pointable[*m_pointsAt]);
    m_typed.erase(m_pointing);
    clearMarks();
    endPointing();
    emit drawnChanged();
}

const PointableAngle* OwnAnswer::pointed(const std::string& name) const {
    const auto found = m_pointed.find(name);
    return found == m_pointed.end() ? nullptr : &found->second;
}

void OwnAnswer::forgetPointed(const std::string& name) {
    if (m_pointed.erase(name) > 0) {
        clearMarks();
        emit drawnChanged();
    }
}

/// The same angle as the sheet now is; without its legs it is none any more.
void OwnAnswer::renewPointed() {
    const auto now = pointableAngles(m_document.sketch(), m_drawn);
    for (auto one = m_pointed.begin(); one != m_pointed.end();) {
        const auto same = std::find_if(now.begin(), now.end(), [&](const PointableAngle& other) {
            return other.angle == one->second.angle && other.tip == one->second.tip;
        });
        if (same == now.end()) {
            one = m_pointed.erase(one);
        } else {
            one->second = *same;
            ++one;
        }
    }
}

void OwnAnswer::addPointed(Attempt& attempt) const {
    for (const auto& [name, angle] : m_pointed) {
        const Answerable* of = m_marker->named(name);
        const auto isIts = [&](const GivenValue& value) { return value.name == name; };
        if (of != nullptr && std::none_of(attempt.values.begin(), attempt.values.end(), isIts))
            attempt.values.push_back(m_marker->pointed(of->id, angle.value));
    }
}

} // namespace tailpoint
