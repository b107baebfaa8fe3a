// SPDX-License-Identifier: MIT
// Sums too long for a line, broken before their signs. Internal to explain/.
#pragma once

#include "core/formula/formula.h"

namespace tailpoint::explaining {

/// Rows of at most so many characters of plain text, where the terms allow it; all but the first begin with a
/// sign. Whatever is no sum stays whole.
std::vector<Formula> rowsOf(const Formula& formula, std::size_t columns);

/// The same in plain text, where a fraction too long for a line is broken before its stroke.
std::vector<Formula> textRowsOf(const Formula& formula, std::size_t columns);

} // namespace tailpoint::explaining
