// SPDX-License-Identifier: MIT
// What is given with a tolerance, as a box: an interval for every given magnitude and direction. Used by
// core/solve/tolerance.h and what goes with it.
#pragma once

#include "core/solve/kernel.h"
#include "core/solve/solve.h"

#include <vector>

namespace tailpoint::tolerance {

/// A magnitude's interval, sheet's force unit, 0 <= least <= nominal <= greatest. What would be below zero is
/// cut off: a magnitude is never negative.
struct Span {
    long double least = 0, nominal = 0, greatest = 0;
    bool isPoint() const { return least == greatest; }
};

/// A direction's interval, counter-clockwise from +x, radians, from <= nominal <= to <= from + full turn. The
/// unit vectors at the ends and at the nominal value come from the typed number itself: exact where those of
/// cosSin() are.
struct Arc {
    long double from = 0, nominal = 0, to = 0;
    kernel::Vec atFrom{1, 0}, atNominal{1, 0}, atTo{1, 0};
    bool isPoint() const { return from == to; }
    bool isWholeTurn() const;
    /// Unit vector of a direction of the interval: one of the three where it is theirs.
    kernel::Vec unitAt(long double radians) const;
};

/// One vector of the equation: a force, or the sum.
struct BoxVector {
    int index = kSumIndex;       ///< in Sketch::forces, or kSumIndex
    bool magnitudeGiven = false; ///< else the span is 0 and means nothing
    bool directionGiven = false; ///< else the arc is the whole turn
    bool lineOfActionOnly = false;
    Span magnitude;
    Arc direction;
};

/// All vectors, forces in the sketch's order, the sum last.
struct Box {
    std::vector<BoxVector> vectors;
    bool hasTolerance = false; ///< of anything at all
};

/// Any direction.
Arc wholeTurn(long double nominal);

/// Half a turn in long double.
inline constexpr long double kHalfTurn = 3.141592653589793238462643383279502884L;

/// Precondition: firstFault(sketch) is empty. A direction's tolerance of half a turn or more leaves the whole
/// turn. A vector given as zero without a direction has the whole turn: with a tolerance it may point
/// anywhere.
Box boxOf(const Sketch& sketch);

} // namespace tailpoint::tolerance
