// SPDX-License-Identifier: MIT
// Sweep: one given value of a question varied from here to there, and what becomes of everything that is
// found: curves, gaps where there is no answer, the least and the greatest, sought between the steps too.
#pragma once

#include "core/solve/solve.h"

#include <optional>
#include <string>
#include <variant>
#include <vector>

namespace tailpoint {

/// One scalar of the equation: of a force by its index, or of the sum at kSumIndex.
struct Scalar {
    int vector = kSumIndex;
    bool isDirection = false; ///< else the magnitude
    bool operator==(const Scalar&) const = default;
};

/// Everything that is given and so can be varied, in the sketch's order, the sum last. A sum of zero
/// (equilibrium) is none.
std::vector<Scalar> variable(const Sketch& sketch);
/// "direction of A".
std::string nameOf(const Scalar& scalar, const Sketch& sketch);
/// What stands there now: sheet's unit; a direction from its axis, in its sense, as it was typed where it is
/// an angle. Empty: it isn't given.
std::optional<double> presentValue(const Sketch& sketch, const Scalar& scalar);
/// The sketch with that value, without its tolerance. Slopes and bearings become angles.
Sketch withValue(const Sketch& sketch, const Scalar& scalar, double value);

inline constexpr std::size_t kMostSweepSteps = 100'000;

struct SweepRange {
    Scalar varied;
    double from = 0, to = 0; ///< sheet's units, either may be the larger; directions may be turns apart
    std::size_t steps = 90; ///< 1 to kMostSweepSteps: values are told at steps + 1 places, both ends included
};

/// What is wrong with a range, in one line with the mend.
std::optional<std::string> faultOf(const SweepRange& range, const Sketch& sketch);

/// What a curve is of.
struct Swept {
    enum class Kind { magnitude, direction, larger }; ///< larger: of the two found magnitudes
    Kind kind = Kind::magnitude;
    int vector = kSumIndex; ///< of `larger`: the first of the two
    /// 1 or 2 where the range has places with two answers; else 0. Answer 1 is the first as Solved orders
    /// them where there are first two; both are followed from there by continuity.
    int answer = 0;
    bool operator==(const Swept&) const = default;
};

struct CurvePoint {
    double at = 0, value = 0;
    bool operator==(const CurvePoint&) const = default;
};

/// Where a curve is least or greatest.
struct Extreme {
    enum class Where { inside, endOfRange, endOfGap };
    double at = 0, value = 0;
    Where where = Where::inside;
    bool isUnbounded = false; ///< it grows beyond every bound there; `value` means nothing
};

struct Curve {
    Swept of;
    /// At each step; empty where there is no such answer, or no direction. Directions are unwrapped: they run
    /// on beyond a half turn without a jump.
    std::vector<std::optional<double>> values;
    /// The same for drawing: unbroken runs, from the range's lower end up, with the ends of gaps.
    std::vector<std::vector<CurvePoint>> pieces;
    std::optional<Extreme> least, greatest; ///< empty: it has no point at all
    bool isConstant() const;
    /// Between its points, along the straight line from one to the next; empty in a gap.
    std::optional<double> between(double at) const;
};

/// No answer from `from` to `to`, from < to; both the same where it is a single place.
struct Gap {
    double from = 0, to = 0;
};

struct Sweep {
    SweepRange range;
    std::vector<double> at;    ///< the steps, in the range's order
    std::vector<Curve> curves; ///< found magnitudes, their larger, found directions; answer 1 before answer 2
    std::vector<Gap> gaps;     ///< from the lower end up
    /// That nothing was missed between the places of the grid. False where a curve is all but level, or its
    /// loci all but touch, over so much of the range that it could not be ruled out.
    bool isProven = true;
    bool hasAnswer() const;
};

/// Never a NaN or an infinity. Precondition: faultOf() is empty.
///
/// Least and greatest are sought on a grid of at least kSweepGrid parts, closed in upon by golden section
/// and, where the curve is smooth, by the zero of its slope: the value is right to a few u (u = 2^-53) of the
/// solver's own error, the place to about 1e-9 of the range. Ends of gaps are found by halves to neighbouring
/// doubles. Between the places of the grid nothing is missed, however narrow, down to 2^-40 of the range: by
/// intervals it is proved of a stretch that no curve turns, begins or ends in it, or it is halved; `isProven`
/// is false where so much is in doubt that 40,000 halvings don't clear it.
Sweep sweep(const Sketch& sketch, const SweepRange& range);
inline constexpr std::size_t kSweepGrid = 1000;

} // namespace tailpoint
