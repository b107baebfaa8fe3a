#include "core/quantity/text.h"

namespace tailpoint {
namespace {

struct Lead {
    int following = -1; ///< bytes after the first; -1: not a first byte
    char32_t bits = 0;
    char32_t least = 0; ///< smaller values would be an overlong form
};

Lead leadOf(unsigned char byte) {
    if (byte < 0x80) {
        return {0, byte, 0};
    }
    if (byte >= 0xC2 && byte < 0xE0) {
        return {1, static_cast<char32_t>(byte & 0x1F), 0x80};
    }
    if (byte >= 0xE0 && byte < 0xF0) {
        return {2, static_cast<char32_t>(byte & 0x0F), 0x800};
    }
    if (byte >= 0xF0 && byte < 0xF5) {
        return {3, static_cast<char32_t>(byte & 0x07), 0x10000};
    }
    return {};
}

bool isScalar(char32_t c) {
    return c <= 0x10FFFF && (c < 0xD800 || c > 0xDFFF);
}

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

std::optional<char32_t> nextCodePoint(std::string_view& text) {
    if (text.empty()) {
        return std::nullopt;
    }
    const Lead lead = leadOf(static_cast<unsigned char>(text.front()));
    if (lead.following < 0 || text.size() < static_cast<std::size_t>(lead.following) + 1) {
        return std::nullopt;
    }
    char32_t c = lead.bits;
    for (int i = 1; i <= lead.following; ++i) {
        const auto byte = static_cast<unsigned char>(text[static_cast<std::size_t>(i)]);
        if ((byte & 0xC0) != 0x80) {
            return std::nullopt;
        }
        c = (c << 6) | (byte & 0x3Fu);
    }
    if (c < lead.least || !isScalar(c)) {
        return std::nullopt;
    }
    text.remove_prefix(static_cast<std::size_t>(lead.following) + 1);
    return c;
}

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
    constexpr std::string_view kReplacement = "\xEF\xBF\xBD";
    std::string line;
    for (std::size_t taken = 0; !text.empty(); ++taken) {
        if (taken == most)
            return line + "...";
        const std::string_view before = text;
        const std::optional<char32_t> c = nextCodePoint(text);
        if (!c)
            text.remove_prefix(1);
        line += c && isPrintable(*c) ? before.substr(0, before.size() - text.size()) : kReplacement;
    }
    return line;
}

} // namespace tailpoint
