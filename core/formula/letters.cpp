// SPDX-License-Identifier: MIT
#include "core/formula/letters.h"

#include <array>

namespace tailpoint {

namespace {

/// The mathematical letter, or 0 where that alphabet has none.
char32_t mathLetter(char32_t c, MathLetters style) {
    const bool bold = style == MathLetters::boldItalic;
    if (c >= U'A' && c <= U'Z')
        return (bold ? 0x1D468 : 0x1D434) + (c - U'A');
    if (c == U'h' && !bold)
        return 0x210E; // the italic h had its place before the alphabet was added
    if (c >= U'a' && c <= U'z')
        return (bold ? 0x1D482 : 0x1D44E) + (c - U'a');
    if (c >= U'Α' && c <= U'Ω' && c != 0x3A2)
        return (bold ? 0x1D71C : 0x1D6E2) + (c - U'Α');
    if (c >= U'α' && c <= U'ω')
        return (bold ? 0x1D736 : 0x1D6FC) + (c - U'α');
    if (c >= U'0' && c <= U'9' && bold)
        return 0x1D7CE + (c - U'0');
    return 0;
}

} // namespace

void appendMathLetters(std::string& out, std::string_view text, MathLetters style) {
    for (char32_t c : codePoints(text)) {
        const char32_t letter = mathLetter(c, style);
        appendUtf8(out, letter != 0 ? letter : c);
        if (letter == 0 && style == MathLetters::boldItalic && c != U' ')
            out += "\u20D7";
    }
}

void appendSubscript(std::string& out, std::string_view sub) {
    const std::size_t last = sub.find_last_not_of("0123456789");
    const std::size_t digits = last == std::string_view::npos ? 0 : last + 1;
    const bool isAscii = std::all_of(sub.begin(), sub.begin() + static_cast<std::ptrdiff_t>(digits),
                                     [](char c) { return (c >= 'A' && c <= 'Z') || (c >= 'a' && c <= 'z'); });
    const std::size_t lowered = isAscii ? digits : sub.size();
    if (lowered > 0)
        out.append("_").append(sub.substr(0, lowered));
    for (char c : sub.substr(lowered))
        appendUtf8(out, 0x2080 + static_cast<char32_t>(c - '0'));
}

bool isAngleLetter(std::string_view base) {
    const std::u32string letters = codePoints(base);
    return !letters.empty() && letters[0] >= U'α' && letters[0] <= U'ω' &&
           std::all_of(letters.begin() + 1, letters.end(), [](char32_t c) { return c == U'′' || c == U'″'; });
}

std::string_view signOf(Relation relation) {
    static constexpr std::array<std::string_view, 7> signs{"=", "≈", "<", "≤", ">", "≥", "⇒"};
    return signs[static_cast<std::size_t>(relation)];
}

} // namespace tailpoint
