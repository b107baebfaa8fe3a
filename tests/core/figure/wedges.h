// SPDX-License-Identifier: MIT
// Angles as they are drawn: corner, legs and arc, read back from the display list by a geometry of the tests'
// own; and what stands in an angle that is not its own, or is led across a force.
#pragma once

#include "tests/core/figure/any_figure.h"

#include <cmath>
#include <optional>

namespace tailpoint::testing {

struct Wedge {
    Point corner;
    double start = 0, sweep = 0, radius = 0;
};

inline double degreesFrom(Point corner, Point p) {
    return std::atan2(corner.y - p.y, p.x - corner.x) * 180 / 3.14159265358979;
}

/// How far past `start`, in the sense of the sweep, 0 to 360.
inline double turnOf(const Wedge& wedge, Point p) {
    const double sense = wedge.sweep < 0 ? -1 : 1;
    return std::fmod(sense * (degreesFrom(wedge.corner, p) - wedge.start) + 1080, 360);
}

/// From the arc and its head, or from the square mark of a right angle.
inline std::optional<Wedge> wedgeOf(const Group& group) {
    std::optional<Wedge> wedge;
    for (const Item& item : group.items) {
        const auto* path = std::get_if<Path>(&item);
        if (const auto* arc = std::get_if<Arc>(&item); arc && !wedge)
            wedge = Wedge{arc->centre, arc->startDegrees, arc->sweepDegrees, arc->radius};
        else if (path && path->filled && wedge) // the head is where the arc ends
            wedge->sweep = (wedge->sweep < 0 ? -1 : 1) *
                           std::max(std::abs(wedge->sweep), turnOf(*wedge, path->points[0]));
        else if (path && path->points.size() == 3 && !wedge) {
            const auto& p = path->points;
            const Point corner{p[0].x + p[2].x - p[1].x, p[0].y + p[2].y - p[1].y};
            const double start = degreesFrom(corner, p[0]);
            const double turn = std::fmod(degreesFrom(corner, p[2]) - start + 1080, 360);
            wedge = Wedge{corner, start, turn > 180 ? turn - 360 : turn, 0};
        }
    }
    return wedge;
}

inline bool isAngle(const Group& group) {
    return group.id.starts_with("direction-") || group.id.starts_with("angle-") ||
           group.id.starts_with("opposite-");
}

inline constexpr double kSlack = 0.05; ///< degrees; a head's chord is a little shorter than its arc

inline bool standsIn(const Wedge& wedge, const Box& box) {
    for (const double x : {box.left, box.right()})
        for (const double y : {box.top, box.bottom()})
            if (const double turn = turnOf(wedge, {x, y});
                turn > std::abs(wedge.sweep) + kSlack && turn < 360 - kSlack)
                return false;
    return true;
}

inline bool isOnArc(const Wedge& wedge, Point p) {
    const double off = std::hypot(p.x - wedge.corner.x, p.y - wedge.corner.y) - wedge.radius;
    const double turn = turnOf(wedge, p);
    return std::abs(off) < 0.01 && (turn <= std::abs(wedge.sweep) + kSlack || turn >= 360 - kSlack);
}

struct DrawnAngle {
    const Group* group;
    Wedge wedge;
    const Text* value; ///< null where it has none
};

inline std::vector<DrawnAngle> anglesOf(const DisplayList& list) {
    std::vector<DrawnAngle> angles;
    for (const Group& group : list.groups)
        if (const auto wedge = isAngle(group) ? wedgeOf(group) : std::nullopt)
            angles.push_back({&group, *wedge, labelOf(group)});
    return angles;
}

/// Does the one angle lie within the other, at the same corner? Then whatever stands in it stands in both.
inline bool liesWithin(const Wedge& inner, const Wedge& outer) {
    if (std::hypot(inner.corner.x - outer.corner.x, inner.corner.y - outer.corner.y) > 0.5)
        return false;
    const double sweep = std::abs(outer.sweep) + 2 * kSlack;
    for (const double part : {0.0, 0.5, 1.0}) {
        const double radians = (inner.start + part * inner.sweep) * 3.14159265358979 / 180;
        const double turn =
            turnOf(outer, {inner.corner.x + std::cos(radians), inner.corner.y - std::sin(radians)});
        if (turn > sweep && turn < 360 - 2 * kSlack)
            return false;
    }
    return true;
}

inline Point middleOf(const Box& box) {
    return {box.left + box.width / 2, box.top + box.height / 2};
}

/// Between the legs and no further out than the letters of a value at its arc reach.
inline bool isInside(const Wedge& wedge, const Box& box) {
    const Point middle = middleOf(box);
    const double turn = turnOf(wedge, middle);
    const double out = std::hypot(middle.x - wedge.corner.x, middle.y - wedge.corner.y);
    return turn > kSlack && turn < std::abs(wedge.sweep) - kSlack && out < wedge.radius + box.height;
}

/// Least distance from a box to the arc, sampled; to the corner of a right angle's square mark.
inline double distanceToArc(const Box& box, const Wedge& wedge, double factor) {
    constexpr double kDiagonal = 12.7; // of a square of 9 points
    if (wedge.radius == 0)
        return std::max(0.0, distanceTo(box, wedge.corner) - kDiagonal * factor);
    return distanceTo(box, Arc{Role::arc, wedge.corner, wedge.radius, wedge.start, wedge.sweep, 0});
}

/// Of directions, whose arcs stand in rows from one axis: beside its own without a leader. Of two
/// other angles at one corner: the value stands beside its own arc, and eight points or more nearer to it
/// than to the other's.
inline bool isPlainlyAtOwn(const DrawnAngle& own, const DrawnAngle& other, double factor) {
    const bool sameCorner = std::hypot(own.wedge.corner.x - other.wedge.corner.x,
                                       own.wedge.corner.y - other.wedge.corner.y) < 0.5;
    const bool inRows = own.group->id.starts_with("direction-") && other.group->id.starts_with("direction-");
    if (inRows && sameCorner && !leaderOf(*own.group))
        return true;            // nested, each in its own row: they have stood so from the first
    constexpr double clear = 4; // points
    return sameCorner && !leaderOf(*own.group) &&
           distanceToArc(own.value->box, own.wedge, factor) + clear * factor <
               distanceToArc(own.value->box, other.wedge, factor);
}

/// Each entry names a value and the angle that it stands in without belonging there; one that has no value of
/// its own can't be taken for it. `factor`: of the figure's style.
inline std::vector<std::string> valuesInOtherAngles(const DisplayList& list, double factor = 1) {
    std::vector<std::string> out;
    const auto angles = anglesOf(list);
    for (const DrawnAngle& own : angles)
        for (const DrawnAngle& other : angles)
            if (own.value && other.value && own.group != other.group &&
                isInside(other.wedge, own.value->box) && !liesWithin(own.wedge, other.wedge) &&
                !isPlainlyAtOwn(own, other, factor))
                out.push_back(textOf(*own.value) + " of " + own.group->id + " stands in " + other.group->id);
    return out;
}

inline double crossOf(Point from, Point a, Point b) {
    return (a.x - from.x) * (b.y - from.y) - (a.y - from.y) * (b.x - from.x);
}

inline bool segmentsCross(Point a, Point b, Point c, Point d) {
    return (crossOf(a, b, c) > 0) != (crossOf(a, b, d) > 0) &&
           (crossOf(c, d, a) > 0) != (crossOf(c, d, b) > 0);
}

/// Is the arrow one of the two legs of the angle that this group draws?
inline bool isLegOf(const Group& angle, const Group& arrow) {
    const auto wedge = isAngle(angle) ? wedgeOf(angle) : std::nullopt;
    if (!wedge)
        return false;
    for (const std::size_t at : {0U, 1U}) {
        const Point near = (*arrow.ends)[at], far = (*arrow.ends)[1 - at];
        if (std::hypot(near.x - wedge->corner.x, near.y - wedge->corner.y) > 0.5)
            continue;
        const double turn = turnOf(*wedge, far), sweep = std::abs(wedge->sweep);
        if (std::min(turn, 360 - turn) < 1 || std::abs(turn - sweep) < 1)
            return true;
    }
    return false;
}

/// Forces and sums that the leader of this group's label crosses, but for its own: where it takes hold of its
/// arrow is no crossing, nor is its way out of an angle over one of that one's legs.
inline std::vector<std::string> crossedBy(const DisplayList& list, const Group& own, const Path& leader) {
    std::vector<std::string> out;
    const Point end = leader.points[1], grip = leader.points[0];
    const double clear = own.ends ? 0.08 : 0;
    const Point from{grip.x + clear * (end.x - grip.x), grip.y + clear * (end.y - grip.y)};
    for (const Group& group : list.groups)
        if (group.ends && (group.role == Role::given || group.role == Role::sum) &&
            segmentsCross(from, end, group.ends->front(), group.ends->back()) && !isLegOf(own, group))
            out.push_back(group.id);
    return out;
}

/// Each entry names a label and the force that its leader crosses.
inline std::vector<std::string> leadersAcrossForces(const DisplayList& list) {
    std::vector<std::string> out;
    for (const Group& group : list.groups)
        if (const Path* leader = leaderOf(group))
            for (const std::string& crossed : crossedBy(list, group, *leader))
                out.push_back(textOf(*labelOf(group)) + " of " + group.id + " is led across " + crossed);
    return out;
}

} // namespace tailpoint::testing
