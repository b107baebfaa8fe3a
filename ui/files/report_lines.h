// SPDX-License-Identifier: MIT
// How a report in plain text is set: headings, paragraphs and tables within its columns.
#pragma once

#include "core/sketch/sketch.h"

#include <string>
#include <vector>

namespace tailpoint::report {

inline constexpr std::size_t kColumns = 78; ///< characters of a line

/// Rows of cells in columns; the first to the left, numbers to the right.
using Rows = std::vector<std::vector<std::string>>;
std::string table(const Rows& rows);

/// Broken at spaces, each line behind two spaces; a unit stays with its number.
std::string paragraph(const std::string& text);
std::string heading(const std::string& text);

/// The title under a rule; "Untitled sketch" where there is none.
std::string titleText(const Sketch& sketch);
/// Every given value as it was stated, its tolerance, and what bounds it.
std::string givenText(const Sketch& sketch);

} // namespace tailpoint::report
