#include "core/figure/geometry.h"

#include <algorithm>
#include <numbers>

namespace tailpoint {
namespace {

constexpr double kDegree = std::numbers::pi / 180;

/// Is this direction swept by the arc?
bool sweeps(double startDegrees, double sweepDegrees, double degrees) {
    if (std::abs(sweepDegrees) >= 360)
        return true;
    const double from = sweepDegrees >= 0 ? startDegrees : startDegrees + sweepDegrees;
    return turned(degrees - from) <= std::abs(sweepDegrees);
}

/// Does the arc cross the vertical (or, with x and y exchanged, horizontal) edge at `offset` from the centre?
bool crossesEdge(double offset, double low, double high, double radius, bool vertical, double start,
                 double sweep) {
    const double square = radius * radius - offset * offset;
    if (square < 0)
        return false;
    const double other = std::sqrt(square);
    for (const double along : {other, -other}) {
        if (along < low || along > high)
            continue;
        const Point p = vertical ? Point{offset, along} : Point{along, offset};
        if (sweeps(start, sweep, degreesOf(p)))
            return true;
    }
    return false;
}

} // namespace

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

bool meets(const Box& box, Point a, Point b) {
    if (std::max(a.x, b.x) < box.left || std::min(a.x, b.x) > box.right() || std::max(a.y, b.y) < box.top ||
        std::min(a.y, b.y) > box.bottom())
        return false;
    return clip(box, a, b);
}

bool meets(const Box& box, Point centre, double radius, double startDegrees, double sweepDegrees) {
    const double left = box.left - centre.x, right = box.right() - centre.x;
    const double top = box.top - centre.y, bottom = box.bottom() - centre.y;
    const double nearX = std::max({left, -right, 0.0}), nearY = std::max({top, -bottom, 0.0});
    const double farX = std::max(-left, right), farY = std::max(-top, bottom);
    if (nearX * nearX + nearY * nearY > radius * radius || farX * farX + farY * farY < radius * radius)
        return false;
    if (contains(box, onCircle(centre, radius, startDegrees)))
        return true;
    return crossesEdge(left, top, bottom, radius, true, startDegrees, sweepDegrees) ||
           crossesEdge(right, top, bottom, radius, true, startDegrees, sweepDegrees) ||
           crossesEdge(top, left, right, radius, false, startDegrees, sweepDegrees) ||
           crossesEdge(bottom, left, right, radius, false, startDegrees, sweepDegrees);
}

} // namespace tailpoint
