// The numbers of a chain, by quantity.
#pragma once

#include "core/formula/ids.h"

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
    std::size_t size() const { return m_entries.size(); }
    void reserve(std::size_t quantities);

    std::vector<std::uint8_t> taken; ///< by evaluate(): for each line its case, kNoCase where none holds

private:
    std::size_t slotOf(const QuantityId& quantity) const;
    void spread(std::size_t slots);

    std::vector<std::pair<QuantityId, long double>> m_entries;
    std::vector<std::uint32_t> m_slots; ///< index of an entry plus one; a power of two of them
};

} // namespace tailpoint
