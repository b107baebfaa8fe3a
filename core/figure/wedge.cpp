// SPDX-License-Identifier: MIT
// Whether and where a text stands between the legs of an angle, and how far it is from the arc.
#include "core/figure/label_candidates.h"

#include <algorithm>

namespace tailpoint {
namespace {

std::array<Point, 4> cornersOf(const Box& box) {
    return {Point{box.left, box.top}, Point{box.right(), box.top}, Point{box.left, box.bottom()},
            Point{box.right(), box.bottom()}};
}

} // namespace

double wedgeDistance(double bisectorDegrees, double half, const Extent& text, double air) {
    if (half >= 90)
        return 0;
    double least = 0;
    for (const double side : {1.0, -1.0}) {
        const Point normal = onCircle({0, 0}, 1, bisectorDegrees + side * half - side * 90);
        const double sine = std::sin(half * kDegree);
        least = std::max(least, (reach(text.width, text.height, normal) + air) / std::max(sine, 1e-9));
    }
    return least;
}

double insideDistance(Point unit, double radius, const Extent& text) {
    const double along = reach(text.width, text.height, unit); // to the corner furthest along the bisector
    const double square = (text.width * text.width + text.height * text.height) / 4;
    const double rest = along * along - square + radius * radius;
    return radius > 0 && rest > 0 ? std::sqrt(rest) - along : -1;
}

bool standsBetweenLegs(const Box& box, const Sector& sector) {
    const double sense = sector.sweepDegrees < 0 ? -1 : 1;
    const Point from = onCircle({0, 0}, 1, sector.startDegrees);
    const Point to = onCircle({0, 0}, 1, sector.startDegrees + sector.sweepDegrees);
    const bool wide = std::abs(sector.sweepDegrees) > 180;
    const auto between = [&](Point corner) { // y points down
        const Point p = corner - sector.centre;
        const bool past = sense * cross(from, p) <= 0, before = sense * cross(p, to) <= 0;
        return wide ? past || before : past && before;
    };
    const auto corners = cornersOf(box);
    return std::all_of(corners.begin(), corners.end(), between);
}

double gapToArc(const Box& box, const Sector& sector) {
    const Point middle{box.left + box.width / 2, box.top + box.height / 2};
    const Point offset = middle - sector.centre, unit = unitFrom(sector.centre, middle);
    const double turn =
        turned((sector.sweepDegrees < 0 ? -1 : 1) * (degreesOf(offset) - sector.startDegrees));
    if (turn <= std::abs(sector.sweepDegrees))
        return std::max(0.0, std::abs(length(offset) - sector.radius) - reach(box.width, box.height, unit));
    double least = 1e300;
    for (const double part : {0.0, 1.0}) {
        const Point end =
            onCircle(sector.centre, sector.radius, sector.startDegrees + part * sector.sweepDegrees);
        const Point away = end - middle;
        least = std::min(least, std::hypot(std::max(0.0, std::abs(away.x) - box.width / 2),
                                           std::max(0.0, std::abs(away.y) - box.height / 2)));
    }
    return least;
}

} // namespace tailpoint
