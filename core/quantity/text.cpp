// SPDX-License-Identifier: MIT
#include "core/quantity/text.h"

#include "core/quantity/units.h"
#include "core/quantity/utf8.h"

#include <algorithm>

namespace tailpoint {
namespace {

bool isControl(char32_t c) {
    return c < 0x20 || (c >= 0x7F && c < 0xA0) || c == 0xAD;
}
// Zero-width and direction marks, line and paragraph separators, fillers: they would hide or reorder text.
bool isInvisible(char32_t c) {
    return (c >= 0x200B && c <= 0x200F) || (c >= 0x2028 && c <= 0x202E) || (c >= 0x2060 && c <= 0x206F) ||
           c == 0xFEFF || (c >= 0xFFF9 && c <= 0xFFFB) || (c >= 0xE0000 && c <= 0xE0FFF);
}
bool isUnassignedForUse(char32_t c) {
    return (c >= 0xE000 && c <= 0xF8FF) || (c >= 0xF0000) || (c >= 0xFDD0 && c <= 0xFDEF) ||
           (c & 0xFFFE) == 0xFFFE;
}

bool isPrintable(char32_t c) {
    return !isControl(c) && !isInvisible(c) && !isUnassignedForUse(c);
}

} // namespace

std::optional<std::size_t> printableLength(std::string_view text) {
    std::size_t length = 0;
    while (!text.empty()) {
        const std::optional<char32_t> c = nextCodePoint(text);
        if (!c || !isPrintable(*c)) {
            return std::nullopt;
        }
        ++length;
    }
    return length;
}

std::string oneLine(std::string_view text, std::size_t most) {
    std::string line;
    for (std::size_t taken = 0; !text.empty(); ++taken) {
        if (taken == most)
            return line + "...";
        const char32_t c = takeCodePoint(text);
        appendUtf8(line, isPrintable(c) ? c : kReplacementCharacter);
    }
    return line;
}

namespace {

/// From `begin` to the next space.
std::string_view wordAt(std::string_view text, std::size_t begin) {
    return text.substr(begin, std::min(text.find(' ', begin), text.size()) - begin);
}

std::string_view withoutStops(std::string_view word) {
    while (!word.empty() && std::string_view(".,;:)").find(word.back()) != std::string_view::npos)
        word.remove_suffix(1);
    return word;
}

bool clings(std::string_view before, std::string_view after) {
    const auto isSign = [](std::string_view word) { return word == "=" || word == ":" || word == "±"; };
    const bool endsInDigit = !before.empty() && before.back() >= '0' && before.back() <= '9';
    const std::string_view unit = withoutStops(after);
    return isSign(before) || isSign(after) || (endsInDigit && (unit == "%" || beginsUnit(unit)));
}

} // namespace

std::string keptTogether(std::string_view text) {
    constexpr std::string_view noBreak = "\u00A0";
    std::string out;
    std::string_view before;
    for (std::size_t at = 0; at < text.size();) {
        const std::string_view word = wordAt(text, at);
        if (at > 0)
            out += clings(before, word) ? noBreak : std::string_view(" ");
        out += word;
        before = word;
        at += word.size() + 1;
    }
    return text.ends_with(' ') ? out + ' ' : out;
}

} // namespace tailpoint
