// SPDX-License-Identifier: MIT
// A vector that may lie anywhere in a sector of a ring, and sums of such sectors seen through their support
// functions. Used inside solve/tolerance only. Plain doubles: magnitudes are scaled to about 1 beforehand.
#pragma once

#include <algorithm>
#include <cmath>
#include <limits>
#include <numbers>
#include <vector>

namespace tailpoint::tolerance {

inline constexpr double kNever = std::numeric_limits<double>::infinity();

/// Of a direction's component along the edge of an endless sector: below it they are square to one another.
/// The direction may be moved by as much; the sums' slack holds that.
inline constexpr double kSquare = 1e-15;

struct Pt {
    double x = 0, y = 0;
};
inline Pt operator+(Pt a, Pt b) {
    return {a.x + b.x, a.y + b.y};
}
inline Pt operator-(Pt a) {
    return {-a.x, -a.y};
}
inline Pt operator*(double s, Pt p) {
    return {s * p.x, s * p.y};
}
inline double dot(Pt a, Pt b) {
    return a.x * b.x + a.y * b.y;
}
inline double cross(Pt a, Pt b) {
    return a.x * b.y - a.y * b.x;
}
/// Of a vector that is neither tiny nor huge: no care is taken of overflow.
inline double lengthOf(Pt p) {
    return std::sqrt(p.x * p.x + p.y * p.y);
}
inline Pt leftOf(Pt p) {
    return {-p.y, p.x};
}
inline Pt unitAt(double radians) {
    return {std::cos(radians), std::sin(radians)};
}

/// All vectors with a magnitude from `least` to `greatest` (kNever: endless) and a direction from `from` to
/// `to`, radians, at most a whole turn.
struct Sector {
    double least = 0, greatest = 0;
    double from = 0, to = 0;
    Pt atFrom{1, 0}, atTo{1, 0};

    double width() const { return to - from; }
    double middle() const { return from + (to - from) / 2; }
    bool isEndless() const { return greatest == kNever; }
    /// Whether `direction` (any length) lies within the sector's angle.
    bool faces(Pt direction) const;
    /// Greatest dot product of the sector's vectors with `along`; `point` is one that has it.
    double support(Pt along, Pt& point) const { return support(along, lengthOf(along), point); }
    double support(Pt along, double length, Pt& point) const;
    /// Half of it, by direction.
    Sector half(bool upper) const;
};
Sector sectorOf(double least, double greatest, double from, double to);

/// Sectors whose vectors are added: each may lie anywhere in its own.
struct Total {
    Pt fixed;                                   ///< vectors that are exact, added up
    const std::vector<Sector>* known = nullptr; ///< those with a tolerance
    const Sector* second = nullptr;             ///< an unknown vector, or none
    double slack = 0;                           ///< what rounding can make of a sum

    /// Of the whole sum, rounded outward by `slack` times the length of `along`.
    double support(Pt along, Pt& point) const;
};

// Innermost of every search: in sight of whoever calls them.

inline bool Sector::faces(Pt direction) const {
    if (from == to) {
        return false; // its one direction is at both ends
    }
    const bool pastFrom = cross(atFrom, direction) >= 0;
    const bool beforeTo = cross(direction, atTo) >= 0;
    return width() <= std::numbers::pi ? pastFrom && beforeTo
                                       : width() >= 2 * std::numbers::pi || pastFrom || beforeTo;
}

inline double Sector::support(Pt along, double length, Pt& point) const {
    if (length == 0) {
        point = least * atFrom;
        return 0;
    }
    if (faces(along)) {
        point = isEndless() ? atFrom : (greatest / length) * along;
        return greatest * length;
    }
    const double alongFrom = dot(atFrom, along);
    const double alongTo = dot(atTo, along);
    const double most = std::max(alongFrom, alongTo);
    const Pt& edge = alongFrom >= alongTo ? atFrom : atTo;
    if (isEndless()) {
        point = least * edge;
        return most > kSquare * length ? kNever : least * most;
    }
    const double magnitude = most > 0 ? greatest : least;
    point = magnitude * edge;
    return magnitude * most;
}

inline double Total::support(Pt along, Pt& point) const {
    point = fixed;
    const double length = lengthOf(along);
    double sum = dot(fixed, along) + slack * length;
    Pt each;
    for (const Sector& sector : *known) {
        sum += sector.support(along, length, each);
        point = point + each;
    }
    if (second != nullptr) {
        sum += second->support(along, length, each);
        point = point + each;
    }
    return sum;
}

/// Where a support function is looked for along the line of directions `base + t * step`.
struct Line2 {
    Pt base, step;
    double low = -kNever, high = kNever; ///< of t: where the support is finite
    bool isEmpty() const { return low > high; }
};
/// The line, kept to directions in which an endless sector has no endless part.
Line2 within(Line2 line, const Sector& endless);

} // namespace tailpoint::tolerance
