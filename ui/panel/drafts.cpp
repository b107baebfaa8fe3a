// SPDX-License-Identifier: MIT
#include "ui/panel/drafts.h"

#include <algorithm>

namespace tailpoint {

const Draft* Drafts::find(const std::string& vector, int column) const {
    if (m_drafts.empty()) {
        return nullptr;
    }
    const auto draft = m_drafts.find({vector, column});
    return draft == m_drafts.end() ? nullptr : &draft->second;
}

void Drafts::keep(const std::string& vector, int column, Draft draft) {
    m_drafts.insert_or_assign({vector, column}, std::move(draft));
}

bool Drafts::drop(const std::string& vector, int column) {
    return m_drafts.erase({vector, column}) > 0;
}

void Drafts::dropStray(const Sketch& sketch) {
    std::erase_if(m_drafts, [&](const auto& draft) {
        const auto isNamed = [&](const Force& force) { return force.name == draft.first.first; };
        return !isNamed(sketch.sum) && std::none_of(sketch.forces.begin(), sketch.forces.end(), isNamed);
    });
}

std::optional<Drafts::Waiting> Drafts::first() const {
    if (m_drafts.empty()) {
        return std::nullopt;
    }
    const auto& [cell, draft] = *m_drafts.begin();
    return Waiting{cell.first, draft.message};
}

} // namespace tailpoint
