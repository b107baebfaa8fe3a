// SPDX-License-Identifier: MIT
// What a usual slip would give here: a line of the chain with its formula changed, put in numbers. Internal
// to explain/.
#pragma once

#include "core/explain/board.h"

namespace tailpoint::explaining {

/// With `wrong` wherever the quantity `right` stands.
Formula exchanged(Formula formula, const QuantityId& right, const Formula& wrong);
/// With the function `wrong` ("cos") wherever `right` ("sin") stands.
Formula withFunction(Formula formula, std::string_view right, std::string_view wrong);
/// The line of a direction with its angle turned off the other way.
Formula turnedBack(Formula formula);

/// What that formula in place of the line's own gives from the numbers carried, as it is shown; a direction
/// within half a turn. Empty where it has no value, or shows what is right. Precondition: there is that line.
std::optional<Formula> slipped(const Board& board, const QuantityId& line, Formula formula);

/// A line of the chain and the formula put in the place of its own.
struct Change {
    QuantityId line;
    Formula formula;
};
/// The same where several lines are changed, of a quantity to which they lead.
std::optional<Formula> slipped(const Board& board, const std::vector<Change>& changes,
                               const QuantityId& target);

} // namespace tailpoint::explaining
