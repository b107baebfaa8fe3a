// SPDX-License-Identifier: MIT
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

/// The text with no-break spaces (U+00A0) where a line should not end: on both sides of "=" and of a slope's
/// ":" and of "±", and between a number and its unit. For pages and screens; a file keeps the text as it is.
std::string keptTogether(std::string_view text);

} // namespace tailpoint
