// SPDX-License-Identifier: MIT
// solve/: the vector equation  F1 + F2 + ... + Fn = S  with at most two unknown scalars, solved as a whole.
#pragma once

#include "core/formula/ids.h"
#include "core/sketch/phrase.h"
#include "core/sketch/sketch.h"
#include "core/solve/message.h"

#include <Eigen/Core>
#include <array>
#include <optional>
#include <string>
#include <vector>

namespace tailpoint {

enum class Status { unique, two, none, endless, underdetermined, overdetermined };
std::string_view nameOf(Status status);

/// The construction that answers the question.
enum class Family {
    closePolygon,          ///< magnitude and direction of one vector
    twoMagnitudes,         ///< line meets line
    magnitudeAndDirection, ///< line meets circle
    twoDirections,         ///< circle meets circle
    smallestForce,
    smallestSum,
    oneUnknown, ///< one scalar only, for two equations
    check,      ///< all given
    unclear     ///< too many unknowns
};

/// One vector of an answer, in the sheet's units.
struct SolvedForce {
    std::string name;
    double magnitude = 0;            ///< >= 0
    std::optional<double> direction; ///< as the sheet says it, (-half turn, half turn]; empty: no direction
    Eigen::Vector2d vector{0, 0};    ///< along the sheet's x and y
    Eigen::Vector2d unit{
        0, 0}; ///< unit vector of the direction, kept where the magnitude is zero but a direction is given
    bool magnitudeFound = false, directionFound = false; ///< which were unknown
    bool turned = false;                                 ///< found in the other sense of its line of action
};

struct Solution {
    std::vector<SolvedForce> forces; ///< in the sketch's order
    SolvedForce sum;
    double residual = 0; ///< |sum of forces - S|, substituted back in extended precision, sheet's unit
};

/// One sentence, with its code.
struct Remark {
    MessageCode code = MessageCode::none;
    Phrase words;
    Phrase advice{}; ///< what to fix, to free or to change: for who can
};

struct Solved {
    Status status = Status::underdetermined;
    Family family = Family::unclear;
    std::vector<Remark> remarks;     ///< for every status but a plain unique
    std::vector<Solution> solutions; ///< 0, 1 or 2, the design's order
    std::vector<Solution> reversed;  ///< roots lost to a sense
    bool tangent = false;
    std::vector<std::string> unknowns; ///< in words: "magnitude of P", "direction of R"
    std::array<int, 2> unknownVectors{
        -2, -2};                    ///< indices into forces, kSumIndex for the sum, kNoVector where fewer
    Eigen::Vector2d knownSum{0, 0}; ///< sum of all fully given forces

    Phrase message() const;                       ///< all remarks with their advice, joined by spaces
    MessageCode messageCode() const;              ///< what is said first
    std::vector<MessageCode> remarkCodes() const; ///< what is said after that, in its order
    Phrase finding() const; ///< the message without what could be asked next: for a sheet
};
inline constexpr int kSumIndex = -1;

/// A found vector by its index: a force, or the sum at kSumIndex.
inline const SolvedForce& vectorIn(const Solution& solution, int index) {
    return index == kSumIndex ? solution.sum : solution.forces[static_cast<std::size_t>(index)];
}
inline constexpr int kNoVector = -2;
/// Of a vector by its index; kNobody for kNoVector.
VectorId vectorId(int index);

/// Solves the sketch. Precondition: firstFault(sketch) is empty. Never throws but for memory, never yields a
/// NaN or an infinity.
///
/// Errors, with u = 2^-53 and kappa the condition (how far a relative change of the inputs moves the answer):
/// relative 8u + kappa * 2^-58 where kappa is finite; for the resultant kappa = sum|F| / |R|. Near tangency
/// and near parallelism the bound is backward: the answer is exact for inputs moved by kTangentBand of the
/// scale (core/solve/kernel.h). |R| <= 4 n u sum|F| is a zero resultant with no direction.
///
/// A vector given as zero has no direction to find. 'either' matters only where a magnitude is to be found.
/// Two answers: that one first whose first unknown vector lies farther counter-clockwise of the closing side;
/// where both lie alike (its direction is given), the second unknown vector decides. The closing side is the
/// sum minus the known forces, or, where the sum has something to find, the known forces' sum.
///
/// One unknown for two equations: a magnitude is the one that leaves least over, along the given direction; a
/// direction that of what the given vectors leave. It is an answer, `unique` with a message, where the
/// equation with it, everything given then, holds as such an equation does: exactly (within the band of a
/// zero sum) or within the rounding of given values as they are shown (core/solve/rounding_room.h); a
/// direction only where what is left over is less than that vector. Solution::residual has what is left over.
/// Elsewhere the status is `overdetermined`, and the message says by how much the best value misses.
///
/// `smallest` a force, the sum's magnitude to be found: that force is perpendicular to the sum's line; where
/// the foot lies behind the common point, the sum comes out turned and the message says so. With the sum
/// given or zero the magnitude of another force is to be found: perpendicular to that force's line; where
/// that would turn it round, it is zero and the other root stands in `reversed`. `smallest` the sum:
/// perpendicular to the force's line; where that would turn the force round, the force is zero and the other
/// root stands in `reversed`.
Solved solve(const Sketch& sketch);

/// What is asked, as far as the sketch says it, and nothing found: family, unknowns and the known sum as in
/// solve(); no solutions, no message, status `underdetermined`. For who must not know the answer.
Solved asked(const Sketch& sketch);

/// The force that would hold the given forces in equilibrium: -R.
SolvedForce equilibrant(const SolvedForce& sum, const Sketch& sketch);

} // namespace tailpoint
