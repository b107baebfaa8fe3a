// SPDX-License-Identifier: MIT
// Where on a sweep anything can turn, begin or end: what is proved for whole stretches of the varied value.
// Used by sweep() only.
#pragma once

#include "core/solve/interval.h"
#include "core/solve/sweep.h"

#include <utility>
#include <vector>

namespace tailpoint {

/// The question's equation in intervals: sum of the known vectors, and of the two that are sought, nothing.
/// Each sought one lies on a line or on a circle; their slopes follow from the equation by Cramer's rule.
class SweepBounds {
public:
    SweepBounds(const Sketch& sketch, const SweepRange& range);

    /// Places between which, with those of the grid, every curve of every answer only rises or only falls,
    /// and exists or doesn't: where one turns, begins or ends, or a line's magnitude passes through zero, two
    /// of them stand within 2^-40 of the range, or so close that no curve moves by more than rounding from
    /// one to the other. `at`: the grid, from its lower end up; its places are not among them. Of one unknown
    /// for two equations, whose answers hang on rounding: where what is left over is nothing, least or
    /// greatest.
    struct Turns {
        std::vector<double> places;
        /// More was in doubt than the budget clears (a curve that is all but level): there may be others.
        bool isAll = true;
    };
    Turns turns(const std::vector<double>& at) const;

private:
    enum class Kind { moves, still, turns }; ///< what a stretch is; still: by no more than rounding
    struct Vector {
        IntervalVec value, slope; ///< slope: by the varied value
    };
    struct Rest : Vector {      ///< what the sought vectors must make up
        Interval along, across; ///< the slope times the value: dot and cross product
    };
    struct Side { ///< a sought vector: the line's unit vector, or the circle's radius
        bool isLine = false;
        Vector unit;
        Interval radius, radiusSlope;
    };
    struct Place { ///< the equation on a stretch
        Side first, second;
        Rest rest;
    };
    Kind kindOf(double from, double to) const;
    Place placeAt(double from, double to) const;
    Vector vectorAt(int index, double from, double to) const;
    Vector unitAt(int index, double from, double to) const;
    Rest restAt(double from, double to) const;
    Side sideAt(int index, double from, double to) const;
    Kind alone(const Rest& rest, double width) const;
    Kind lines(const Place& whole, const Place& middle, double width) const;
    Kind circle(const Side& line, const Side& circle, const Rest& rest, double width) const;
    Kind circles(const Place& whole, double width) const;
    Kind foot(const Side& line, const Rest& rest, double width) const;
    Kind oneUnknown(const Place& whole, const Place& middle, double width) const;
    std::pair<double, double> closedIn(double from, double to) const;
    Kind slopeKind(Interval slope, double width, double scale) const;
    Kind marginKind(Interval margin) const;

    Sketch m_sketch;
    Solved m_asked;
    Scalar m_varied;
    double m_span = 0, m_scale = 0;
    IntervalVec m_fixed; ///< known vectors that don't vary, on the forces' side
};

} // namespace tailpoint
