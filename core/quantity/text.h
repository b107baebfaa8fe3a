// UTF-8 as far as names and typed numbers need it.
#pragma once

#include <cstddef>
#include <optional>
#include <string_view>

namespace tailpoint {

/// One code point read from the front of `text`, which is shortened by it. Empty at the end of the text and
/// where the bytes are no UTF-8 (overlong forms, surrogates, beyond U+10FFFF); `text` is then left alone.
std::optional<char32_t> nextCodePoint(std::string_view& text);

/// Number of code points, or empty where the text is no UTF-8 or holds a control, format-control or
/// line-breaking character, a noncharacter or a private-use one.
std::optional<std::size_t> printableLength(std::string_view text);

} // namespace tailpoint
