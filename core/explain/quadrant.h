// SPDX-License-Identifier: MIT
// Where a vector lies, from the signs of its components: whole sentences for each place. Internal to
// explain/.
#pragma once

#include "core/explain/board.h"

namespace tailpoint::explaining {

/// "R lies in the fourth quadrant."
Prose liesThere(const Board& board, const Vector& vector);
/// "R_x > 0 and R_y < 0: R lies in the fourth quadrant."
Prose liesBySigns(const Board& board, const Vector& vector);

} // namespace tailpoint::explaining
