// SPDX-License-Identifier: MIT
// The resultant of two forces: the pair, and the steps of the triangle that is kept. Internal to explain/.
#pragma once

#include "core/explain/families.h"

namespace tailpoint::explaining {

/// The two forces by size, and the angles opposite them.
struct Pair {
    explicit Pair(const Board& board)
        : p(board.forces()[0]), q(board.forces()[1]), great(p.magnitude >= q.magnitude ? p : q),
          small(p.magnitude >= q.magnitude ? q : p), sum(board.sum()) {}

    const Vector &p, &q, &great, &small, &sum;
    QuantityId phi{What::between, forceVector(0), forceVector(1)}, gamma{What::opposite, kSumVector};
    QuantityId oppositeGreat() const { return {What::opposite, great.id}; }
    QuantityId oppositeSmall() const { return {What::opposite, small.id}; }
    bool equal() const { return p.magnitude == q.magnitude; }
};

void writeCosines(Board& board, const Pair& pair);
void writeHalving(Board& board, const Pair& pair); ///< equal forces
void writeSines(Board& board, const Pair& pair);
void writeDirection(Board& board, const Pair& pair); ///< referred to the axis

} // namespace tailpoint::explaining
