// A vector that may lie anywhere in a sector of a ring, and sums of such sectors seen through their support
// functions. Used inside solve/tolerance only. Plain doubles: magnitudes are scaled to about 1 beforehand.
#pragma once

#include <cmath>
#include <limits>
#include <vector>

namespace tailpoint::tolerance {

inline constexpr double kNever = std::numeric_limits<double>::infinity();

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

/// Where a support function is looked for along the line of directions `base + t * step`.
struct Line2 {
    Pt base, step;
    double low = -kNever, high = kNever; ///< of t: where the support is finite
    bool isEmpty() const { return low > high; }
};
/// The line, kept to directions in which an endless sector has no endless part.
Line2 within(Line2 line, const Sector& endless);

} // namespace tailpoint::tolerance
