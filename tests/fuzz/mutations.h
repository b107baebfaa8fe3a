// SPDX-License-Identifier: MIT
// fuzz/: bad input by the thousand. Mutations are seeded: the same seed gives the same text on every machine.
// Not a coverage-guided fuzzer: a bounded, repeatable sweep that runs in seconds with every test run.
#pragma once

#include <cstdint>
#include <string>
#include <string_view>
#include <vector>

namespace tailpoint::fuzz {

/// SplitMix64: small, seeded, the same everywhere (the standard library's distributions are not).
/// Source: S. Vigna's public-domain splitmix64 (from memory).
class Dice {
public:
    explicit Dice(std::uint64_t seed) : m_state(seed) {}
    std::uint64_t next();
    /// 0 .. count - 1; count > 0.
    std::size_t below(std::size_t count) { return static_cast<std::size_t>(next() % count); }
    bool oneIn(std::size_t count) { return below(count) == 0; }
    /// In [low, high).
    double between(double low, double high);

    template <class Range>
    const auto& oneOf(const Range& range) {
        return range[below(std::size(range))];
    }

private:
    std::uint64_t m_state;
};

/// A text made from `corpus` by one to three mutations: bytes flipped, ranges cut, doubled or swapped between
/// texts, numbers and values replaced by awkward ones, brackets nested, the end cut off.
std::string mutated(const std::vector<std::string>& corpus, std::uint64_t seed);

/// A short text of the characters and words that numbers, units, slopes and bearings are made of.
std::string typedText(std::uint64_t seed);

/// `text` with everything but printable ASCII escaped, for a failure's message.
std::string escaped(std::string_view text);

/// Says the seed on standard error when the process dies of a signal, so that a crash can be repeated.
void announceSeedOnCrash();
void setCurrentSeed(std::uint64_t seed);

} // namespace tailpoint::fuzz
