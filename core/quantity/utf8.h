// SPDX-License-Identifier: MIT
// UTF-8 (RFC 3629), read and written here and nowhere else.
#pragma once

#include <cstddef>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace tailpoint {

inline constexpr char32_t kReplacementCharacter = 0xFFFD;

/// One code point read from the front of `text`, which is shortened by it. Empty at the end of the text and
/// where the bytes are no UTF-8 (overlong forms, surrogates, beyond U+10FFFF); `text` is then left alone.
std::optional<char32_t> nextCodePoint(std::string_view& text);

/// The same without refusal: a byte that belongs to no code point is taken alone, as U+FFFD.
/// Precondition: `text` is not empty.
char32_t takeCodePoint(std::string_view& text);

/// All code points, and how many there are; a byte that belongs to none counts as U+FFFD.
std::u32string codePoints(std::string_view text);
std::size_t characterCount(std::string_view text);
/// The byte with which each of them begins.
std::vector<std::size_t> characterBegins(std::string_view text);
/// The first `most` of them, or all.
std::string_view firstCharacters(std::string_view text, std::size_t most);

/// First byte that belongs to no code point, or npos: the text is sound.
std::size_t firstNonUtf8(std::string_view text);

/// Bytes that `c` takes. Precondition here and below: `c` is a code point, no surrogate.
std::size_t utf8Length(char32_t c);
void appendUtf8(std::string& out, char32_t c);

} // namespace tailpoint
