// SPDX-License-Identifier: MIT
#include "core/explain/found_symbols.h"

namespace tailpoint {

namespace {

/// 0 where both answers have the quantity in common.
template <class Same>
std::uint8_t numberOf(const Solved& solved, std::size_t answer, int index, Same same) {
    const auto& all = solved.solutions;
    return all.size() < 2 || same(vectorIn(all[0], index), vectorIn(all[1], index))
               ? std::uint8_t{0}
               : static_cast<std::uint8_t>(answer + 1);
}

} // namespace

Formula FoundSymbols::size(int index, std::size_t answer) const {
    return m_things.formula(
        magnitudeId(vectorId(index), numberOf(m_solved, answer, index, [](const auto& a, const auto& b) {
                        return a.magnitude == b.magnitude;
                    })));
}

Formula FoundSymbols::way(int index, std::size_t answer) const {
    return m_things.formula(
        directionId(vectorId(index), numberOf(m_solved, answer, index, [](const auto& a, const auto& b) {
                        return a.direction == b.direction;
                    })));
}

} // namespace tailpoint
