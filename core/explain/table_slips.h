// SPDX-License-Identifier: MIT
// The usual slips with components, each with the number that it would give here. Internal to explain/.
#pragma once

#include "core/explain/table.h"

namespace tailpoint::explaining {

/// Sine and cosine exchanged, a negative component taken without its sign: what `target` would come out as.
/// `entries`: the vectors whose components lead to it.
void noteComponentSlips(const Board& board, Step& step, const Entries& entries, const QuantityId& target);
/// "… with the two of P exchanged R would come out as 437 N."
Prose swappedTold(const Board& board, const Formula& vector, const Formula& target, const Formula& value);
/// Of a vector that makes up a difference: the known ones added in place of taken away.
void noteAddedInstead(const Board& board, Step& step, const Vector& sought, const Formula& known);

} // namespace tailpoint::explaining
