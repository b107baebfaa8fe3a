// SPDX-License-Identifier: MIT
// Quantities in the order in which they came, found again by a hash in one block of memory: a chain has a
// hundred of them and looks each up a dozen times.
#pragma once

#include "core/formula/ids.h"

#include <cstdint>
#include <vector>

namespace tailpoint {

class QuantityIndex {
public:
    static constexpr std::size_t kNone = ~std::size_t{0};

    /// Its place in the order; kNone where it isn't there.
    std::size_t find(const QuantityId& quantity) const;
    bool contains(const QuantityId& quantity) const { return find(quantity) != kNone; }
    /// Its place: the end of the order where it is new.
    std::size_t add(const QuantityId& quantity);

    std::size_t size() const { return m_keys.size(); }
    void reserve(std::size_t quantities);

private:
    std::size_t slotOf(std::uint64_t key) const;
    void spread(std::size_t slots);

    std::vector<std::uint64_t> m_keys; ///< of the quantities in their order
    std::vector<std::uint32_t> m_slots; ///< a place plus one; a power of two of them, half of them free
};

} // namespace tailpoint
