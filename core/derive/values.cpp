// SPDX-License-Identifier: MIT
#include "core/derive/values.h"

namespace tailpoint {

void Values::reserve(std::size_t quantities) {
    m_index.reserve(quantities);
    m_values.reserve(quantities);
}

std::optional<long double> Values::at(const QuantityId& quantity) const {
    const std::size_t place = m_index.find(quantity);
    return place == QuantityIndex::kNone ? std::nullopt : std::optional(m_values[place]);
}

void Values::set(const QuantityId& quantity, long double value) {
    const std::size_t place = m_index.add(quantity);
    if (place == m_values.size())
        m_values.push_back(value);
    else
        m_values[place] = value;
}

} // namespace tailpoint
