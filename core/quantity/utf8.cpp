// SPDX-License-Identifier: MIT
#include "core/quantity/utf8.h"

#include <array>

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

char32_t takeCodePoint(std::string_view& text) {
    if (const auto c = nextCodePoint(text)) {
        return *c;
    }
    text.remove_prefix(1);
    return kReplacementCharacter;
}

std::u32string codePoints(std::string_view text) {
    std::u32string points;
    points.reserve(text.size());
    while (!text.empty()) {
        points += takeCodePoint(text);
    }
    return points;
}

std::size_t characterCount(std::string_view text) {
    std::size_t count = 0;
    for (; !text.empty(); ++count) {
        takeCodePoint(text);
    }
    return count;
}

std::vector<std::size_t> characterBegins(std::string_view text) {
    std::vector<std::size_t> begins;
    for (std::string_view rest = text; !rest.empty(); takeCodePoint(rest)) {
        begins.push_back(text.size() - rest.size());
    }
    return begins;
}

std::string_view firstCharacters(std::string_view text, std::size_t most) {
    std::string_view rest = text;
    for (std::size_t taken = 0; taken < most && !rest.empty(); ++taken) {
        takeCodePoint(rest);
    }
    return text.substr(0, text.size() - rest.size());
}

std::size_t firstNonUtf8(std::string_view text) {
    std::string_view rest = text;
    while (nextCodePoint(rest)) {
    }
    return rest.empty() ? std::string_view::npos : text.size() - rest.size();
}

std::size_t utf8Length(char32_t c) {
    return c < 0x80 ? 1 : c < 0x800 ? 2 : c < 0x10000 ? 3 : 4;
}

void appendUtf8(std::string& out, char32_t c) {
    static constexpr std::array<unsigned char, 5> kLeads{0, 0, 0xC0, 0xE0, 0xF0};
    const std::size_t length = utf8Length(c);
    const auto put = [&out](char32_t byte) { out += static_cast<char>(static_cast<unsigned char>(byte)); };
    put(kLeads[length] | (c >> (6 * (length - 1))));
    for (std::size_t after = length - 1; after > 0; --after) {
        put(0x80 | ((c >> (6 * (after - 1))) & 0x3F));
    }
}

} // namespace tailpoint
