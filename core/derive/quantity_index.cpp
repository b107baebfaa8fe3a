// SPDX-License-Identifier: MIT
#include "core/derive/quantity_index.h"

#include <bit>

namespace tailpoint {

namespace {

/// Every field in bits of its own.
std::uint64_t keyOf(const QuantityId& id) {
    const auto vector = [](VectorId v) {
        return static_cast<std::uint64_t>(v.index) << 3U | static_cast<std::uint64_t>(v.kind);
    };
    return ((vector(id.of) << 19U | vector(id.with)) << 8U | static_cast<std::uint64_t>(id.what)) << 10U |
           static_cast<std::uint64_t>(id.answer & 3U) << 8U | id.part;
}
static_assert(static_cast<int>(VectorId::Kind::partial) < 8);

/// A table takes low bits; a product mixes upwards.
std::uint64_t mixed(std::uint64_t key) {
    const std::uint64_t product = key * 0x9E3779B97F4A7C15ULL;
    return product ^ product >> 32U;
}

} // namespace

std::size_t QuantityIndex::slotOf(std::uint64_t key) const {
    const std::size_t mask = m_slots.size() - 1;
    std::size_t slot = mixed(key) & mask;
    while (m_slots[slot] != 0 && m_keys[m_slots[slot] - 1] != key)
        slot = (slot + 1) & mask;
    return slot;
}

void QuantityIndex::spread(std::size_t slots) {
    m_slots.assign(slots, 0);
    for (std::size_t i = 0; i < m_keys.size(); ++i)
        m_slots[slotOf(m_keys[i])] = static_cast<std::uint32_t>(i + 1);
}

void QuantityIndex::reserve(std::size_t quantities) {
    m_keys.reserve(quantities);
    if (2 * quantities > m_slots.size())
        spread(std::bit_ceil(2 * quantities + 1));
}

std::size_t QuantityIndex::find(const QuantityId& quantity) const {
    const std::uint32_t place = m_slots.empty() ? 0 : m_slots[slotOf(keyOf(quantity))];
    return place == 0 ? kNone : place - 1;
}

std::size_t QuantityIndex::add(const QuantityId& quantity) {
    if (2 * (m_keys.size() + 1) > m_slots.size())
        spread(std::bit_ceil(4 * (m_keys.size() + 4)));
    const std::uint64_t key = keyOf(quantity);
    std::uint32_t& slot = m_slots[slotOf(key)];
    if (slot == 0) {
        m_keys.push_back(key);
        slot = static_cast<std::uint32_t>(m_keys.size());
    }
    return slot - 1;
}

} // namespace tailpoint
