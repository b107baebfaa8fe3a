// SPDX-License-Identifier: MIT
// What of a subscript is italic.
#include "core/formula/letters.h"

namespace tailpoint {

namespace {

constexpr std::size_t kSlanting = 64; ///< characters for which a Slant has a bit

bool isLetter(char32_t c) {
    constexpr std::u32string_view kOthers = U"0123456789 _,;:.()[]+-*/\u2032\u2033\u2080\u2081\u2082\u2083"
                                            U"\u2084\u2085\u2086\u2087\u2088\u2089";
    return kOthers.find(c) == std::u32string_view::npos;
}

Slant lettersOf(std::string_view text) {
    Slant slant = 0;
    const std::u32string characters = codePoints(text);
    for (std::size_t i = 0; i < std::min(characters.size(), kSlanting); ++i)
        slant |= isLetter(characters[i]) ? Slant{1} << i : 0;
    return slant;
}

bool isRunning(std::string_view sub) {
    constexpr std::string_view kAxesAndNumbers = "xyzuijkmn";
    return sub.size() == 1 && kAxesAndNumbers.find(sub.front()) != std::string_view::npos;
}

} // namespace

Slant slantOf(std::string_view base, std::string_view sub) {
    return isAngleLetter(base) ? lettersOf(sub) : isRunning(sub) ? 1 : 0;
}

std::vector<SubscriptPiece> subscriptPieces(std::string_view sub, Slant slant) {
    std::vector<SubscriptPiece> pieces;
    std::size_t i = 0;
    for (const char32_t c : codePoints(sub)) {
        const bool italic = i < kSlanting && (slant >> i & 1U) != 0;
        if (pieces.empty() || pieces.back().italic != italic)
            pieces.push_back({{}, italic});
        appendUtf8(pieces.back().text, c);
        ++i;
    }
    return pieces;
}

Subscript& Subscript::append(std::string_view upright) {
    text += upright;
    return *this;
}

Subscript& Subscript::append(const Subscript& more) {
    const std::size_t behind = characterCount(text);
    slant |= behind < kSlanting ? more.slant << behind : 0;
    text += more.text;
    return *this;
}

Subscript asSubscript(const Symbol& symbol) {
    return Subscript{symbol.base, lettersOf(symbol.base)}.append(Subscript{symbol.sub, symbol.slant});
}

Subscript italicSubscript(char letter) {
    return {std::string(1, letter), 1};
}

} // namespace tailpoint
