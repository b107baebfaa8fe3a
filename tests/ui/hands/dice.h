// SPDX-License-Identifier: MIT
// Whole numbers from a seed, the same on every machine: no distribution of the standard library has a say.
#pragma once

#include <cstdint>
#include <iterator>
#include <random>

namespace tailpoint::test {

class Dice {
public:
    /// Each step has dice of its own: what one of them draws moves no other.
    Dice(std::uint32_t seed, int step)
        : m_engine(seed * 0x9E3779B1U ^ static_cast<std::uint32_t>(step) * 0x85EBCA6BU) {}
    /// 0 … count - 1.
    int below(int count) { return static_cast<int>(m_engine() % static_cast<std::uint32_t>(count)); }
    int between(int least, int most) { return least + below(most - least + 1); }
    bool oneIn(int count) { return below(count) == 0; }
    template <class Many>
    const auto& oneOf(const Many& many) {
        return many[static_cast<decltype(std::size(many))>(below(static_cast<int>(std::size(many))))];
    }

private:
    std::mt19937 m_engine;
};

} // namespace tailpoint::test
