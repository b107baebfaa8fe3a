// SPDX-License-Identifier: MIT
// The numbers of a chain, by quantity.
#pragma once

#include "core/derive/quantity_index.h"

#include <cstdint>
#include <optional>
#include <utility>
#include <vector>

namespace tailpoint {

/// A quantity's value put in place of what its line gives.
using Overrides = std::vector<std::pair<QuantityId, long double>>;

inline constexpr std::uint8_t kNoCase = 255;

class Values {
public:
    std::optional<long double> at(const QuantityId& quantity) const;
    void set(const QuantityId& quantity, long double value);
    std::size_t size() const { return m_values.size(); }
    void reserve(std::size_t quantities);

    std::vector<std::uint8_t> taken; ///< by evaluate(): for each line its case, kNoCase where none holds

private:
    QuantityIndex m_index;
    std::vector<long double> m_values;
};

} // namespace tailpoint
