// SPDX-License-Identifier: MIT
#include "core/figure/geometry.h"

#include <algorithm>

namespace tailpoint {

Point unitFrom(Point a, Point b) {
    const Point d = b - a;
    const double size = length(d);
    return size > 0 ? (1 / size) * d : Point{1, 0};
}

Point onCircle(Point centre, double radius, double degrees) {
    return {centre.x + radius * std::cos(degrees * kDegree), centre.y - radius * std::sin(degrees * kDegree)};
}

double degreesOf(Point vector) {
    const double degrees = std::atan2(-vector.y, vector.x) / kDegree;
    return degrees <= -180 ? degrees + 360 : degrees;
}

double turned(double degrees) {
    const double rest = std::fmod(degrees, 360);
    return rest < 0 ? rest + 360 : rest;
}

bool clip(const Box& box, Point& a, Point& b) {
    double from = 0, to = 1;
    const Point d = b - a;
    const auto cut = [&](double slope, double room) {
        if (slope == 0)
            return room >= 0;
        const double t = room / slope;
        if (slope < 0)
            from = std::max(from, t);
        else
            to = std::min(to, t);
        return from <= to;
    };
    if (!cut(-d.x, a.x - box.left) || !cut(d.x, box.right() - a.x) || !cut(-d.y, a.y - box.top) ||
        !cut(d.y, box.bottom() - a.y))
        return false;
    const Point start = a;
    a = start + from * d;
    b = start + to * d;
    return true;
}

double distanceBetween(const Box& box, Point a, Point b) {
    if (meets(box, a, b))
        return 0;
    // Squares: one root in the end instead of six.
    const auto square = [](Point p) { return dot(p, p); };
    const auto toBox = [&](Point p) {
        return square({std::max({box.left - p.x, p.x - box.right(), 0.0}),
                       std::max({box.top - p.y, p.y - box.bottom(), 0.0})});
    };
    const Point along = b - a;
    const double inverse = 1 / std::max(dot(along, along), 1e-300);
    const auto toSegment = [&](Point p) {
        return square(p - a - std::clamp(dot(p - a, along) * inverse, 0.0, 1.0) * along);
    };
    return std::sqrt(
        std::min({toBox(a), toBox(b), toSegment({box.left, box.top}), toSegment({box.right(), box.top}),
                  toSegment({box.left, box.bottom()}), toSegment({box.right(), box.bottom()})}));
}

ArcShape::ArcShape(Point centre, double radius, double startDegrees, double sweepDegrees)
    : m_centre(centre), m_radius(radius), m_full(std::abs(sweepDegrees) >= 360),
      m_wide(std::abs(sweepDegrees) > 180) {
    m_from = onCircle({0, 0}, radius, startDegrees);
    m_to = onCircle({0, 0}, radius, startDegrees + sweepDegrees);
    if (sweepDegrees < 0)
        std::swap(m_from, m_to);
}

/// y points down: a negative cross product is a counter-clockwise turn as seen.
bool ArcShape::sweeps(Point offset) const {
    const bool afterFrom = cross(m_from, offset) <= 0, beforeTo = cross(offset, m_to) <= 0;
    return m_full || (m_wide ? afterFrom || beforeTo : afterFrom && beforeTo);
}

/// At the edge `offset` from the centre, from `low` to `high` along it.
bool ArcShape::crossesEdge(double offset, double low, double high, bool vertical) const {
    const double square = m_radius * m_radius - offset * offset;
    if (square < 0)
        return false;
    const double root = std::sqrt(square);
    for (const double along : {root, -root})
        if (along >= low && along <= high && sweeps(vertical ? Point{offset, along} : Point{along, offset}))
            return true;
    return false;
}

bool ArcShape::meets(const Box& box) const {
    const double left = box.left - m_centre.x, right = box.right() - m_centre.x;
    const double top = box.top - m_centre.y, bottom = box.bottom() - m_centre.y;
    const double nearX = std::max({left, -right, 0.0}), nearY = std::max({top, -bottom, 0.0});
    const double farX = std::max(-left, right), farY = std::max(-top, bottom), square = m_radius * m_radius;
    if (nearX * nearX + nearY * nearY > square || farX * farX + farY * farY < square)
        return false;
    return contains(box, m_centre + m_from) || crossesEdge(left, top, bottom, true) ||
           crossesEdge(right, top, bottom, true) || crossesEdge(top, left, right, false) ||
           crossesEdge(bottom, left, right, false);
}

} // namespace tailpoint
