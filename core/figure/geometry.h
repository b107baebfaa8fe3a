// SPDX-License-Identifier: MIT
// Plane geometry of the sheet (points, y down): lengths, directions, and whether a stroke meets a box.
#pragma once

#include "core/figure/display_list.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace tailpoint {

inline constexpr double kDegree = std::numbers::pi / 180; ///< in radians

inline Point operator+(Point a, Point b) {
    return {a.x + b.x, a.y + b.y};
}
inline Point operator-(Point a, Point b) {
    return {a.x - b.x, a.y - b.y};
}
inline Point operator*(double k, Point p) {
    return {k * p.x, k * p.y};
}
inline double dot(Point a, Point b) {
    return a.x * b.x + a.y * b.y;
}
inline double cross(Point a, Point b) {
    return a.x * b.y - a.y * b.x;
}
inline double length(Point p) {
    return std::sqrt(dot(p, p)); // points of a sheet: far from overflow
}
inline Point leftOf(Point unit) {
    return {unit.y, -unit.x};
} ///< a quarter turn counter-clockwise as seen

/// Unit vector from a to b; to the right where they coincide.
Point unitFrom(Point a, Point b);
/// Point on a circle; degrees counter-clockwise as seen.
Point onCircle(Point centre, double radius, double degrees);
/// Degrees counter-clockwise as seen, in (-180, 180].
double degreesOf(Point vector);
/// Brought into [0, 360).
double turned(double degrees);

/// How far a box of this size reaches from its middle in direction `unit`.
inline double reach(double width, double height, Point unit) {
    return std::abs(unit.x) * width / 2 + std::abs(unit.y) * height / 2;
}
inline Box boxAround(Point middle, double width, double height) {
    return {middle.x - width / 2, middle.y - height / 2, width, height};
}
inline Box grown(const Box& box, double by) {
    return {box.left - by, box.top - by, box.width + 2 * by, box.height + 2 * by};
}
inline bool contains(const Box& box, Point p) {
    return p.x >= box.left && p.x <= box.right() && p.y >= box.top && p.y <= box.bottom();
}
inline bool overlap(const Box& a, const Box& b) {
    return a.left < b.right() && b.left < a.right() && a.top < b.bottom() && b.top < a.bottom();
}
inline bool inside(const Box& inner, const Box& outer) {
    return inner.left >= outer.left && inner.top >= outer.top && inner.right() <= outer.right() &&
           inner.bottom() <= outer.bottom();
}

/// Does the segment touch the box?
inline bool meets(const Box& box, Point a, Point b) {
    if (std::max(a.x, b.x) < box.left || std::min(a.x, b.x) > box.right() || std::max(a.y, b.y) < box.top ||
        std::min(a.y, b.y) > box.bottom())
        return false;
    const Point d = b - a, toMiddle{box.left + box.width / 2 - a.x, box.top + box.height / 2 - a.y};
    return 2 * std::abs(d.x * toMiddle.y - d.y * toMiddle.x) <=
           std::abs(d.y) * box.width + std::abs(d.x) * box.height;
}

/// Least distance between the box and the segment; 0 where they touch.
double distanceBetween(const Box& box, Point a, Point b);

/// An arc in a form that is quick to test: its ends as directions instead of angles.
class ArcShape {
public:
    /// Degrees counter-clockwise as seen; a sweep of 360 or more is the circle.
    ArcShape(Point centre, double radius, double startDegrees, double sweepDegrees);
    bool meets(const Box& box) const;
    Point centre() const { return m_centre; }
    double radius() const { return m_radius; }

private:
    bool sweeps(Point offset) const;
    bool crossesEdge(double offset, double low, double high, bool vertical) const;
    Point m_centre, m_from, m_to; ///< ends as seen from the centre, counter-clockwise from m_from to m_to
    double m_radius;
    bool m_full, m_wide; ///< wide: more than a half turn
};

/// The part of a segment inside a box; false where there is none.
bool clip(const Box& box, Point& a, Point& b);

} // namespace tailpoint
