// SPDX-License-Identifier: MIT
// The component table, and sums of its columns. Internal to explain/.
#pragma once

#include "core/explain/board.h"

namespace tailpoint::explaining {

/// A vector in a column, with its sign.
using Entry = std::pair<VectorId, int>;
using Entries = std::vector<Entry>;

/// What the total row is called, and under which quantities its columns stand.
struct Total {
    Formula name;
    QuantityId x, y;
};
Total totalOf(const Vector& vector);

/// A step in which each component is worked by itself, where they are few enough to be told.
void writeComponents(Board& board, const Carried& lines, const Entries& entries);
/// Words and rows; the numbers come from `lines`. Without a total where there is nothing to add up.
void writeComponentTable(const Board& board, Step& step, const Carried& lines, const Entries& entries,
                         const std::optional<Total>& total);
/// R_x = P_x + Q_x + … and R_y, written out where the terms are few enough.
void writeColumns(const Board& board, Step& step, const Entries& entries, const Total& total);

/// How the components along a slope are had, and how long the slopes are whose length ends.
void tellSlopes(const Board& board, Step& step, const std::vector<const Vector*>& slopes);

} // namespace tailpoint::explaining
