// SPDX-License-Identifier: MIT
// The question of one answer as sectors that close to zero, scaled to about 1. Used inside solve/tolerance.
//
//   known vectors + first + second = 0        each turned to the forces' side: the sum reversed
#pragma once

#include "core/solve/kernel.h"
#include "core/solve/tolerance_box.h"
#include "core/solve/tolerance_sector.h"

#include <array>
#include <cstddef>
#include <optional>
#include <vector>

namespace tailpoint::tolerance {

/// A given value that has a tolerance. Magnitudes are scaled; directions in radians from +x, as in Arc.
struct Input {
    std::size_t vector = 0; ///< in Box::vectors
    bool isDirection = false;
    long double least = 0, nominal = 0, greatest = 0;
};
/// A value for each input.
using Point = std::vector<long double>;

/// How the unknown vectors follow from the known ones.
enum class Rule {
    alone,  ///< one vector, wholly unknown
    lines,  ///< two magnitudes
    circle, ///< one magnitude, the other's direction
    circles,
    foot, ///< one magnitude, the other vector square to it
    still ///< the first is zero, since it would have to push: the second is what is left
};

/// A vector to be found, on the forces' side of the equation.
struct Unknown {
    std::size_t vector = 0; ///< in Box::vectors
    bool isLine = false;    ///< direction given, magnitude found
    bool flipped = false;   ///< against the given sense of its line of action
    Sector sector;
};

/// What the second's direction may be, counted from the first's, radians; of foot: one value.
struct Relation {
    bool any = true;
    double low = 0, high = 0;
};

/// One combination of senses and one root: within it the answer moves without a jump.
struct Piece {
    Rule rule = Rule::alone;
    std::array<Unknown, 2> unknown;
    bool hasSecond = false;
    Relation relation;
    int root = 0; ///< of the kernel's two
};

/// Magnitude >= 0 along a unit vector, on the forces' side.
struct Tip {
    kernel::Vec unit{1, 0};
    long double magnitude = 0;
};
using Tips = std::array<Tip, 2>;

/// Whether a sector is that of the vector as it is given, or turned round.
enum class Turned { no, yes };

struct Problem {
    Box box; ///< magnitudes scaled by 2^-exponent
    int exponent = 0;
    std::vector<Input> inputs;
    std::vector<std::array<int, 2>> inputOf; ///< by vector: the inputs of magnitude and direction, or -1
    std::vector<std::size_t> loose;          ///< known vectors with a tolerance
    std::vector<Sector> sectors;             ///< of those, on the forces' side
    kernel::Vec fixed;                       ///< sum of the other known vectors
    long double scale = 0;                   ///< sum of all greatest magnitudes
    double slack = 0;                        ///< as in Total

    /// As it stands on the forces' side.
    Turned turnedOf(std::size_t vector, bool flipped = false) const {
        return (box.vectors[vector].index == kSumIndex) != flipped ? Turned::yes : Turned::no;
    }
    Point nominal() const;
    long double magnitudeAt(const Point& point, std::size_t vector) const;
    /// On the forces' side.
    kernel::Vec unitAt(const Point& point, std::size_t vector) const;
    /// What the unknown vectors must make up.
    kernel::Vec targetAt(const Point& point) const;
    /// A vector takes the place in `part` (of its own sector) that lies farthest along `along`; where
    /// `inner`, the middle of its hollow inner side if that faces the other way.
    void place(Point& point, std::size_t vector, const Sector& part, Pt along, Turned turned,
               bool inner = false) const;
};

Sector sectorOf(const BoxVector& vector, Turned turned);

/// One unknown magnitude for two equations: what is left over, square to its line, is a vector of its own,
/// behind all others, with the index kNoVector.
bool hasRest(const Solved& solved);
/// One unknown direction for two equations: it is that of what the others leave, whatever its length.
bool isDirectionOfRest(const Solved& solved);

/// Whether its answers have a range: not where nothing is found.
bool hasRange(const Solved& solved);

Problem problemOf(const Sketch& sketch, const Solved& solved);

/// The pieces that make up one answer; more than one where a line of action leaves its sense open, where the
/// answer is a tangent, and where the smallest is asked. Empty where there is no range to speak of.
std::vector<Piece> piecesOf(const Problem& problem, const Sketch& sketch, const Solved& solved,
                            std::size_t answer);
/// The same with every ray that must not be turned flipped: where these have answers, this one has none.
std::vector<Piece> lostPiecesOf(const Problem& problem, const Sketch& sketch, const Solved& solved,
                                std::size_t answer);

/// Narrows the unknown directions to where they can lie at all.
void aim(const Problem& problem, Piece& piece);

/// The answer at a point, exact as the kernel's; empty where the piece has none there.
std::optional<Tips> tipsAt(const Problem& problem, const Piece& piece, const Point& point);

} // namespace tailpoint::tolerance
