// SPDX-License-Identifier: MIT
// Two sides and an angle not between them, and what each answer adds to the decision. Internal to explain/.
#pragma once

#include "core/explain/families.h"

namespace tailpoint::explaining {

/// k: the known vector; u: on the line; v: on the circle. The angle opposite to v is known from directions.
struct Ambiguous : Triangle {
    explicit Ambiguous(const Board& theBoard) : Triangle(theBoard), k(r.knownSide()) {
        const bool firstOnLine = !sought(0).sizeGiven;
        u = r.sought[firstOnLine ? 0U : 1U];
        v = r.sought[firstOnLine ? 1U : 0U];
    }

    std::size_t k, u = 0, v = 0;
    /// What the inverse sine gives for the angle opposite to k, before it is decided whether that is obtuse.
    QuantityId acute() const { return {What::acute, r.side[k], {}, 0, kOfInverseSine}; }
    /// Two answers, one in each sense of the line of action.
    bool inBothSenses() const { return board.hasTwoAnswers() && side(v).magnitude >= side(k).magnitude; }
    /// The acute angle is the triangle's own, and needs no letter beside it.
    bool isDecided() const {
        return !board.hasTwoAnswers() && board.carried.formulaOf(angle(k)).id == acute();
    }
    QuantityId in(std::uint8_t answer, std::size_t i) const {
        return {What::opposite, r.side[i], {}, answer};
    }
};

/// Third angle, magnitude and direction of one answer.
void writeRest(Board& board, const Ambiguous& q, std::size_t index);
/// Where the line meets the circle once more, against the given sense; else nothing.
void writeOtherPoint(Board& board, const Ambiguous& q);
/// The lines of that step which lead to the component there, in their order.
std::vector<std::pair<QuantityId, Working>> linesToOtherPoint(const Board& board, const Ambiguous& q);
/// Whether one of two points is lost to a given sense.
bool isOneLost(const Board& board);

} // namespace tailpoint::explaining
