// SPDX-License-Identifier: MIT
#include "ui/canvas/glide.h"

#include <algorithm>
#include <cmath>

namespace tailpoint {

namespace {

constexpr double kLeast = 0.5; // points; nearer labels just stand

const Group* groupOf(const DisplayList& list, const std::string& id) {
    const auto at =
        std::find_if(list.groups.begin(), list.groups.end(), [&](const Group& g) { return g.id == id; });
    return at == list.groups.end() ? nullptr : &*at;
}

const Text* sameText(const Group& group, const Text& text) {
    for (const Item& item : group.items) {
        const Text* other = std::get_if<Text>(&item);
        if (other != nullptr && other->runs == text.runs && other->anchor == text.anchor) {
            return other;
        }
    }
    return nullptr;
}

double eased(double part) {
    return part * (2 - part);
}

} // namespace

bool Glide::start(const DisplayList& from, const DisplayList& to) {
    m_moves.clear();
    for (std::size_t g = 0; g < to.groups.size(); ++g) {
        const Group* before = groupOf(from, to.groups[g].id);
        for (std::size_t i = 0; before != nullptr && i < to.groups[g].items.size(); ++i) {
            const Text* text = std::get_if<Text>(&to.groups[g].items[i]);
            const Text* old = text != nullptr ? sameText(*before, *text) : nullptr;
            if (old == nullptr) {
                continue;
            }
            const Move move{g, i, old->baseline.x - text->baseline.x, old->baseline.y - text->baseline.y};
            if (std::hypot(move.dx, move.dy) > kLeast) {
                m_moves.push_back(move);
            }
        }
    }
    if (running()) {
        m_to = to;
    }
    return running();
}

DisplayList Glide::at(double part) const {
    DisplayList list = m_to;
    const double left = 1 - eased(part);
    for (const Move& move : m_moves) {
        Text& text = std::get<Text>(list.groups[move.group].items[move.item]);
        text.baseline.x += move.dx * left;
        text.baseline.y += move.dy * left;
        text.box.left += move.dx * left;
        text.box.top += move.dy * left;
    }
    return list;
}

} // namespace tailpoint
