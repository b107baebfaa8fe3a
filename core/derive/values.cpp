#include "core/derive/values.h"

#include <bit>

namespace tailpoint {

std::size_t Values::slotOf(const QuantityId& quantity) const {
    std::size_t slot = QuantityHash()(quantity) & (m_slots.size() - 1);
    while (m_slots[slot] != 0 && m_entries[m_slots[slot] - 1].first != quantity)
        slot = (slot + 1) & (m_slots.size() - 1);
    return slot;
}

void Values::spread(std::size_t slots) {
    m_slots.assign(slots, 0);
    for (std::size_t i = 0; i < m_entries.size(); ++i)
        m_slots[slotOf(m_entries[i].first)] = static_cast<std::uint32_t>(i + 1);
}

void Values::reserve(std::size_t quantities) {
    m_entries.reserve(quantities);
    if (2 * quantities > m_slots.size())
        spread(std::bit_ceil(2 * quantities + 1));
}

std::optional<long double> Values::at(const QuantityId& quantity) const {
    if (m_slots.empty())
        return std::nullopt;
    const std::uint32_t found = m_slots[slotOf(quantity)];
    return found == 0 ? std::nullopt : std::optional(m_entries[found - 1].second);
}

void Values::set(const QuantityId& quantity, long double value) {
    if (2 * (m_entries.size() + 1) > m_slots.size())
        spread(std::bit_ceil(4 * (m_entries.size() + 4)));
    std::uint32_t& slot = m_slots[slotOf(quantity)];
    if (slot == 0) {
        m_entries.emplace_back(quantity, value);
        slot = static_cast<std::uint32_t>(m_entries.size());
    } else {
        m_entries[slot - 1].second = value;
    }
}

} // namespace tailpoint
