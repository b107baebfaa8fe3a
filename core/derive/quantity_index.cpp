#include "core/derive/quantity_index.h"

#include <bit>

namespace tailpoint {

std::size_t QuantityIndex::slotOf(const QuantityId& quantity) const {
    std::size_t slot = QuantityHash()(quantity) & (m_slots.size() - 1);
    while (m_slots[slot] != 0 && m_quantities[m_slots[slot] - 1] != quantity)
        slot = (slot + 1) & (m_slots.size() - 1);
    return slot;
}

void QuantityIndex::spread(std::size_t slots) {
    m_slots.assign(slots, 0);
    for (std::size_t i = 0; i < m_quantities.size(); ++i)
        m_slots[slotOf(m_quantities[i])] = static_cast<std::uint32_t>(i + 1);
}

void QuantityIndex::reserve(std::size_t quantities) {
    m_quantities.reserve(quantities);
    if (2 * quantities > m_slots.size())
        spread(std::bit_ceil(2 * quantities + 1));
}

std::size_t QuantityIndex::find(const QuantityId& quantity) const {
    return m_slots.empty() ? kNone : std::size_t{m_slots[slotOf(quantity)]} - 1;
}

std::size_t QuantityIndex::add(const QuantityId& quantity) {
    if (2 * (m_quantities.size() + 1) > m_slots.size())
        spread(std::bit_ceil(4 * (m_quantities.size() + 4)));
    std::uint32_t& slot = m_slots[slotOf(quantity)];
    if (slot == 0) {
        m_quantities.push_back(quantity);
        slot = static_cast<std::uint32_t>(m_quantities.size());
    }
    return slot - 1;
}

} // namespace tailpoint
