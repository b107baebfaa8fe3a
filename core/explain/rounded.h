// SPDX-License-Identifier: MIT
// What is said of a number in its own line. Internal to explain/.
#pragma once

#include "core/explain/board.h"

namespace tailpoint::explaining {

/// "519.86 N, to three figures 520 N", "−3.648°, to one decimal −3.6°".
Prose roundedTo(const Board& board, const Formula& value, Formula shown);
/// Where printed numbers leave a line no value, or by hand another case than the full calculation's.
std::optional<Prose> offTheFull(const Board& board, const Carried& lines, const QuantityId& line,
                                const Formula& value);
/// Words and formulas as one formula.
Formula inRow(Prose prose);

} // namespace tailpoint::explaining
