// SPDX-License-Identifier: MIT
#include "core/practice/families.h"

#include <algorithm>
#include <array>

namespace tailpoint {

namespace {

constexpr std::string_view kLetters = "0123456789ABCDEFGHJKMNPQRSTVWXYZ";
constexpr std::size_t kLetterCount = 5; ///< before the check
constexpr std::uint32_t kMostFamilies = 32;

/// Product in the field of 32 elements, modulo x^5 + x^2 + 1.
std::uint32_t times(std::uint32_t a, std::uint32_t b) {
    std::uint32_t product = 0;
    for (int bit = 4; bit >= 0; --bit) {
        product <<= 1U;
        if ((product & 32U) != 0)
            product ^= 37U;
        if ((b >> static_cast<unsigned>(bit) & 1U) != 0)
            product ^= a;
    }
    return product;
}

/// Weights that are all different and none of them 0 or 1, so that one wrong letter, or two exchanged, never
/// leaves the check as it was.
std::uint32_t checkOf(const std::array<std::uint32_t, kLetterCount>& letters) {
    std::uint32_t check = 0, weight = 2;
    for (const std::uint32_t letter : letters) {
        check ^= times(letter, weight);
        weight = times(weight, 2);
    }
    return check;
}

std::optional<std::uint32_t> letterOf(char c) {
    if (c >= 'a' && c <= 'z')
        c = static_cast<char>(c - 'a' + 'A');
    c = c == 'O' ? '0' : c == 'I' || c == 'L' ? '1' : c;
    const auto at = kLetters.find(c);
    return at == kLetters.npos ? std::nullopt : std::optional(static_cast<std::uint32_t>(at));
}

} // namespace

std::string problemCode(const ProblemId& id) {
    const auto& all = problemFamilies();
    const auto family =
        std::find_if(all.begin(), all.end(), [&](const FamilyEntry& one) { return one.id == id.family; });
    const auto index = static_cast<std::uint32_t>(family - all.begin());
    const std::uint32_t packed =
        (index << 20U) | (static_cast<std::uint32_t>(id.level) << 18U) | (id.number & (kProblemNumbers - 1));
    std::array<std::uint32_t, kLetterCount> letters{};
    std::string code;
    for (std::size_t i = 0; i < kLetterCount; ++i) {
        letters[i] = packed >> (5 * (kLetterCount - 1 - i)) & 31U;
        code += kLetters[letters[i]];
    }
    return code + kLetters[checkOf(letters)];
}

std::optional<ProblemId> problemIdOf(std::string_view code) {
    if (code.size() != kLetterCount + 1)
        return std::nullopt;
    std::array<std::uint32_t, kLetterCount> letters{};
    std::uint32_t packed = 0;
    for (std::size_t i = 0; i < kLetterCount; ++i) {
        const auto letter = letterOf(code[i]);
        if (!letter)
            return std::nullopt;
        letters[i] = *letter;
        packed = packed << 5U | *letter;
    }
    const std::uint32_t family = packed >> 20U & (kMostFamilies - 1), level = packed >> 18U & 3U;
    if (letterOf(code.back()) != checkOf(letters) || family >= problemFamilies().size() || level == 0)
        return std::nullopt;
    return ProblemId{std::string(problemFamilies()[family].id), static_cast<int>(level),
                     packed & (kProblemNumbers - 1)};
}

} // namespace tailpoint
