// Texts that are printed: names, titles, what a message quotes.
#pragma once

#include <cstddef>
#include <optional>
#include <string>
#include <string_view>

namespace tailpoint {

/// Number of code points, or empty where the text is no UTF-8 or holds a control, format-control or
/// line-breaking character, a noncharacter or a private-use one.
std::optional<std::size_t> printableLength(std::string_view text);

/// `text` fit to stand in a message of one line: controls, line breaks, invisible characters and bytes that
/// are no UTF-8 become U+FFFD; beyond `most` code points it ends in "...".
std::string oneLine(std::string_view text, std::size_t most = 60);

} // namespace tailpoint
