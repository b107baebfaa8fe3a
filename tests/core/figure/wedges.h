// The angles of a figure told from what is drawn alone, by a geometry of the tests' own.
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

} // namespace tailpoint::testing
