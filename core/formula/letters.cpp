#include "core/formula/letters.h"

#include <algorithm>
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

int lengthOf(unsigned char lead) {
    if (lead < 0x80)
        return 1;
    if ((lead & 0xE0U) == 0xC0)
        return 2;
    if ((lead & 0xF0U) == 0xE0)
        return 3;
    return (lead & 0xF8U) == 0xF0 ? 4 : 1;
}

} // namespace

void appendUtf8(std::string& out, char32_t c) {
    const auto put = [&out](char32_t byte) { out += static_cast<char>(static_cast<unsigned char>(byte)); };
    if (c < 0x80) {
        put(c);
    } else if (c < 0x800) {
        put(0xC0 | (c >> 6)), put(0x80 | (c & 0x3F));
    } else if (c < 0x10000) {
        put(0xE0 | (c >> 12)), put(0x80 | ((c >> 6) & 0x3F)), put(0x80 | (c & 0x3F));
    } else {
        put(0xF0 | (c >> 18)), put(0x80 | ((c >> 12) & 0x3F)), put(0x80 | ((c >> 6) & 0x3F)),
            put(0x80 | (c & 0x3F));
    }
}

std::vector<char32_t> codePoints(std::string_view utf8) {
    static constexpr std::array<unsigned char, 5> masks{0, 0xFF, 0x1F, 0x0F, 0x07};
    std::vector<char32_t> points;
    points.reserve(utf8.size());
    for (std::size_t i = 0; i < utf8.size();) {
        const auto lead = static_cast<unsigned char>(utf8[i]);
        const auto length = std::min(static_cast<std::size_t>(lengthOf(lead)), utf8.size() - i);
        char32_t c = lead & masks[length];
        for (std::size_t k = 1; k < length; ++k)
            c = (c << 6) | (static_cast<unsigned char>(utf8[i + k]) & 0x3FU);
        points.push_back(c);
        i += length;
    }
    return points;
}

void appendMathLetters(std::string& out, std::string_view text, MathLetters style) {
    for (char32_t c : codePoints(text)) {
        const char32_t letter = mathLetter(c, style);
        appendUtf8(out, letter != 0 ? letter : c);
        if (letter == 0 && style == MathLetters::boldItalic && c != U' ')
            out += "\u20D7";
    }
}

bool appendSubscriptDigits(std::string& out, std::string_view sub) {
    for (char c : sub)
        if (c < '0' || c > '9')
            return false;
    for (char c : sub)
        appendUtf8(out, 0x2080 + static_cast<char32_t>(c - '0'));
    return true;
}

bool isAngleLetter(std::string_view base) {
    const std::vector<char32_t> letters = codePoints(base);
    return !letters.empty() && letters[0] >= U'α' && letters[0] <= U'ω' &&
           std::all_of(letters.begin() + 1, letters.end(), [](char32_t c) { return c == U'′' || c == U'″'; });
}

std::vector<SubscriptPiece> subscriptOfAngle(std::string_view sub) {
    constexpr std::u32string_view kUpright = U"0123456789 _,;:.()[]+-*/′″";
    std::vector<SubscriptPiece> pieces;
    for (const char32_t c : codePoints(sub)) {
        const bool italic = kUpright.find(c) == std::u32string_view::npos;
        if (pieces.empty() || pieces.back().italic != italic)
            pieces.push_back({{}, italic});
        appendUtf8(pieces.back().text, c);
    }
    return pieces;
}

std::string_view signOf(Relation relation) {
    static constexpr std::array<std::string_view, 7> signs{"=", "≈", "<", "≤", ">", "≥", "⇒"};
    return signs[static_cast<std::size_t>(relation)];
}

} // namespace tailpoint
