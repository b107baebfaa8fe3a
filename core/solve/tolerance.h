// SPDX-License-Identifier: MIT
// solve/tolerance: what the answers can be when the given values may lie anywhere within their tolerances.
//
// The exact worst case: for every magnitude, direction and component of every answer the least and the
// greatest over the whole box of inputs, not at its corners alone.
//
// How: with the sum turned round all vectors close to zero, and each fills a sector of a ring. Whether
// sectors can close is answered by their support functions, summed: a direction in which the sum of the
// farthest points is negative proves that they can't. Only the directions of the found vectors are searched,
// by halving, and a given direction where its sector's hollow inner side matters. Source: support function of
// a Minkowski sum, R. Schneider, 'Convex Bodies: The Brunn-Minkowski Theory' (1993), 1.7 (from memory); the
// rest by hand in DEVELOPERS.md.
#pragma once

#include "core/solve/tolerance_box.h"

#include <Eigen/Core>
#include <optional>
#include <vector>

namespace tailpoint::tolerance {

/// How much is searched: a count of boxes for each extreme, never time, so that the same sketch gives the
/// same bits everywhere.
struct Effort {
    int boxes = 240;
};
inline constexpr Effort kExact{240}, kWhileDragging{16};

/// The value of one given magnitude or direction at an extreme.
struct InputAt {
    enum class End { least, between, greatest };
    int index = kSumIndex; ///< of its vector
    bool isDirection = false;
    double value = 0;       ///< sheet's unit; a direction as the sheet says it, in (-half turn, half turn]
    End end = End::between; ///< of its interval; a direction's in the sheet's own sense
};
/// Where an extreme lies: every input that has a tolerance, in the order of the vectors, magnitude before
/// direction. Empty where it was not found (see `marked`).
using Place = std::vector<InputAt>;

/// A magnitude's or a component's range, sheet's force unit, rounded outward. An empty end is unbounded.
struct Range {
    std::optional<double> least, greatest;
    /// The search was ended by its budget: the true range lies within, and is narrower by more than 0.1 % of
    /// its width, or may be. Never set where the ends are true to that.
    bool marked = false;
    Place atLeast, atGreatest;
};

/// A direction's range as the sheet says directions: from its axis, in its sense, growing from `from` to
/// `to`; from in (-half turn, half turn], from <= to <= from + full turn. Rounded outward.
struct DirectionRange {
    bool any = false; ///< every direction; from and to mean nothing
    double from = 0, to = 0;
    bool marked = false; ///< as in Range
    Place atFrom, atTo;
};

/// One vector of one answer. What is given has its own interval here, a fully given vector too: where a part
/// of the box has no answer, as much of it as has one.
struct VectorRange {
    int index = kSumIndex;
    bool magnitudeFound = false, directionFound = false;
    Range magnitude, x, y; ///< x and y along the sheet's
    DirectionRange direction;
    /// A found magnitude that comes down to zero: a line is slack at one end of the range, or would have to
    /// push beyond it. Not said of an outer bound of zero that nothing was found at.
    bool slack = false;
    bool isMarked() const { return magnitude.marked || x.marked || y.marked || direction.marked; }
};

/// The range of one answer. Where there are two, each root stays itself throughout the box; where they meet
/// (a tangent within the box) each goes as far as that.
struct AnswerRange {
    std::vector<VectorRange> vectors; ///< forces in the sketch's order, the sum last
    /// Every point of the box has this answer. False: a part has none, and the range is of the part that has.
    bool everywhere = true;
    const VectorRange* find(int index) const;
};

/// In the order of Solved::solutions; empty where there is no answer, or nothing is found. One unknown for
/// two equations: the range of what leaves least over, wherever in the box.
using Ranges = std::vector<AnswerRange>;

/// Precondition: firstFault(sketch) is empty, solved is solve(sketch). Every family. Never throws but for
/// memory, never yields a NaN or an infinity; without any tolerance every range is the answer itself.
///
/// Error: outward by at most 0.1 % of the width where not marked, and by rounding: 2^-46 of the sum of all
/// given magnitudes, relative to what the loci's angle of crossing makes of it. Never inward beyond rounding.
Ranges rangesOf(const Sketch& sketch, const Solved& solved, const Effort& effort = kExact);

/// Where a found vector's tip can lie: the outline of the region, for a figure, in the sheet's unit along its
/// x and y, closed (the last point is joined to the first), counter-clockwise where it has an area. A line or
/// an arc where the region is one: there and back. Several outlines where it falls apart; a hollow middle has
/// an outline of its own, clockwise: fill by the rule of non-zero winding.
using Outline = std::vector<Eigen::Vector2d>;
struct TipRegion {
    int index = kSumIndex; ///< the vector
    std::vector<Outline> outlines;
    bool open = false; ///< unbounded: cut off far beyond all given magnitudes
};

/// The tip regions of the vectors with something to find, of the answer with this number, true to within
/// 0.5 % of their size. Preconditions as above; answer < solved.solutions.size().
std::vector<TipRegion> tipRegions(const Sketch& sketch, const Solved& solved, std::size_t answer,
                                  const Effort& effort = kExact);

} // namespace tailpoint::tolerance
