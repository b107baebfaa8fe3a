// SPDX-License-Identifier: MIT
// The one triangle to which a question comes down, with its vectors and angles. Internal to explain/.
#pragma once

#include "core/explain/board.h"

namespace tailpoint::explaining {

/// A view of the board's reduction. Precondition: there is one.
struct Triangle {
    explicit Triangle(const Board& theBoard) : board(theBoard), r(*theBoard.reduction) {}

    const Board& board;
    const Reduction& r;

    const Vector& side(std::size_t i) const { return board.at(r.side[i]); }
    const Vector& known() const { return side(r.knownSide()); }
    const Vector& sought(std::size_t n) const { return side(r.sought[n]); }
    /// The angle opposite to side i, common to both answers.
    QuantityId angle(std::size_t i) const { return {What::opposite, r.side[i]}; }
    Formula symbol(std::size_t i) const { return board.symbolOf(angle(i)); }
    /// Its full value, radians in [0, pi].
    double opposite(std::size_t i) const;
};

/// Two sides sought along known lines beside each other and beside the known one: each the longer, the
/// greater the angle opposite to it.
struct Order {
    explicit Order(const Triangle& triangle);
    enum class Place {
        below, ///< both are shorter than the known side
        apart, ///< one is longer, one is shorter
        above, ///< both are longer
        level  ///< one is as long
    };
    std::size_t great = 0, small = 0; ///< sides
    bool alike = false;               ///< both make the same angle with the known side
    Place place = Place::apart;
};

/// "In the triangle α lies opposite to P, β ..."
Prose namedAngles(const Triangle& triangle);
/// The same for the figure.
void nameAngles(Step& step, const Triangle& triangle);
/// "φ is the angle between the tails of P and Q."
Prose tailsNamed(const Board& board, const QuantityId& between);
/// The three angles round the point, each named after the force it faces.
Prose facingNamed(const Triangle& triangle);
/// F / sin α, as the law of sines has it.
Formula overSine(const Vector& side, Formula angle);

} // namespace tailpoint::explaining
