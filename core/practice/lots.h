// SPDX-License-Identifier: MIT
// Whole numbers drawn from a seed, the same on every machine. Internal to practice/.
#pragma once

#include <cstddef>
#include <cstdint>
#include <utility>
#include <vector>

namespace tailpoint::practising {

/// SplitMix64. Source: G. Steele, D. Lea, C. Flood, 'Fast Splittable Pseudorandom Number Generators',
/// OOPSLA 2014 (with the constants of D. Stafford's variant 13).
class Lots {
public:
    explicit Lots(std::uint64_t seed) : m_state(seed) {}
    /// From several numbers: each stirs what the others left.
    template <class... Rest>
    explicit Lots(std::uint64_t seed, std::uint64_t next, Rest... rest)
        : Lots(Lots(seed).next() ^ (next * 0x9E3779B97F4A7C15ULL), rest...) {}

    std::uint64_t next() {
        m_state += 0x9E3779B97F4A7C15ULL;
        std::uint64_t z = m_state;
        z = (z ^ (z >> 30U)) * 0xBF58476D1CE4E5B9ULL;
        z = (z ^ (z >> 27U)) * 0x94D049BB133111EBULL;
        return z ^ (z >> 31U);
    }
    /// 0 to bound - 1, each as often as the others. Source: D. Lemire, 'Fast Random Integer Generation in an
    /// Interval', ACM Trans. Model. Comput. Simul. 29, 3 (2019). Precondition: bound > 0.
    std::uint32_t below(std::uint32_t bound) {
        std::uint64_t wide = (next() >> 32U) * bound;
        if (static_cast<std::uint32_t>(wide) < bound) {
            const std::uint32_t least = (0U - bound) % bound;
            while (static_cast<std::uint32_t>(wide) < least)
                wide = (next() >> 32U) * bound;
        }
        return static_cast<std::uint32_t>(wide >> 32U);
    }
    /// `low` to `high`, both among them.
    int between(int low, int high) {
        return low + static_cast<int>(below(static_cast<std::uint32_t>(high - low + 1)));
    }
    bool toss() { return below(2) == 1; }
    template <class T>
    const T& oneOf(const std::vector<T>& all) {
        return all[below(static_cast<std::uint32_t>(all.size()))];
    }

private:
    std::uint64_t m_state;
};

} // namespace tailpoint::practising
