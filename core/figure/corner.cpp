// SPDX-License-Identifier: MIT
#include "core/figure/corner.h"

#include <algorithm>
#include <array>
#include <numbers>

namespace tailpoint {
namespace {

/// Radius that clears the arcs of two forces from the axis, points by the figure's factor.
constexpr double kBeyondAxisArcs = 105;
constexpr double kRightAngle = 1e-9; ///< radians; closer than this to 90 degrees it gets the square mark

Extent extentOf(const Drawing& d, const Runs& runs) {
    const TextExtent e = d.measure.measure(runs, Face::serif, d.sizeOf(Face::serif, d.style.angleSize));
    return {e.width, e.ascent + e.descent, e.ascent};
}

/// Between two neighbouring strokes of a sector, degrees.
struct Part {
    double bisector = 0, half = 0;
};

std::vector<Part> partsOf(const Sector& sector) {
    std::vector<Part> parts;
    double from = sector.startDegrees;
    const auto add = [&](double to) {
        parts.push_back({(to + from) / 2, std::abs(to - from) / 2});
        from = to;
    };
    for (const double split : sector.splits)
        add(split);
    add(sector.startDegrees + sector.sweepDegrees);
    return parts;
}

/// What the widest part asks for. While another becomes the widest it goes over without a jump.
template <class Wanted>
double askedByWidest(const Sector& sector, Wanted wanted) {
    const auto parts = partsOf(sector);
    double widest = 0, sum = 0, weights = 0;
    for (const Part& part : parts)
        widest = std::max(widest, part.half);
    for (const Part& part : parts)
        if (const double weight = std::pow(part.half / widest, 12); weight > 1e-4) {
            sum += weight * wanted(part);
            weights += weight;
        }
    return weights > 0 ? sum / weights : 0;
}

/// The radius at which the value finds room between corner and arc, within limits.
double roomyRadius(const Drawing& d, const Part& part, const Extent& e) {
    const double near = wedgeDistance(part.bisector, part.half, e, 3.5 * d.factor);
    const Point unit = onCircle({0, 0}, 1, part.bisector);
    const Point furthest{near * std::abs(unit.x) + e.width / 2, near * std::abs(unit.y) + e.height / 2};
    const double needed = length(furthest) + 5 * d.factor;
    if (needed <= 40 * d.factor)
        return std::max(needed, 26 * d.factor);
    // It will stand beyond the arc: bring the arc out to where the strokes leave room for it. Without a jump.
    const double gap = 4.5 * d.factor, along = reach(e.width, e.height, unit);
    const double out = std::clamp(wedgeDistance(part.bisector, part.half, e, gap) - along - gap,
                                  28 * d.factor, 64 * d.factor);
    return std::max(out, 80 * d.factor - needed);
}

/// How far out the value reaches if it stands beyond the arc, between two strokes.
double reachBeyond(const Drawing& d, double radius, const Part& part, const Extent& e) {
    const double along = reach(e.width, e.height, onCircle({0, 0}, 1, part.bisector)), gap = 4.5 * d.factor;
    return std::max(radius + along + gap, wedgeDistance(part.bisector, part.half, e, gap)) + along + gap;
}

/// "γ = 115.0°", "115.0°" where it has no symbol.
Runs fullRuns(const Drawing& d, const Corner& corner) {
    const std::string value = shownAngleFromRadians(corner.radians, d.sketch);
    if (!corner.name)
        return plainRuns(value);
    Runs runs = symbolRuns(corner.name->symbol);
    if (!corner.isCopy)
        runs.push_back(valueRun(value));
    return runs;
}

void askForValue(Drawing& d, const Corner& corner, Sector sector) {
    const bool isRevealed = corner.isDue && d.isRevealed(corner.angle);
    if (isRevealed)
        d.ask(std::move(sector), Role::label, d.style.angleSize, fullRuns(d, corner),
              corner.name ? symbolRuns(corner.name->symbol) : Runs())
            .optional = corner.isRepeated;
    else if (corner.name)
        d.ask(std::move(sector), Role::label, d.style.angleSize, symbolRuns(corner.name->symbol));
}

} // namespace

bool isRight(double radians) {
    return std::abs(radians - std::numbers::pi / 2) < kRightAngle;
}

void addCorner(Drawing& d, const Corner& corner, std::vector<double> splits) {
    if (d.options.onlyNamed && !corner.name)
        return;
    const Extent extent =
        extentOf(d, d.legible(fullRuns(d, corner), d.sizeOf(Face::serif, d.style.angleSize)));
    Sector sector{corner.at, 0, corner.start, corner.sweep, std::move(splits)};
    const double outer = std::min(1.12 * kBeyondAxisArcs * d.factor, 0.85 * corner.shorter);
    const bool outside = corner.beyondAxisArcs && outer >= kBeyondAxisArcs * d.factor;
    const double roomy =
        askedByWidest(sector, [&](const Part& part) { return roomyRadius(d, part, extent); });
    const double inner = widened(roomy, corner.sweep, d.factor);
    const double radius = outside ? outer : std::min(inner, 0.42 * corner.shorter);
    if (radius < 6 * d.factor || d.runsUnder(ArcShape(corner.at, radius, corner.start, corner.sweep)))
        return;
    sector.radius = radius;
    sector.within = !outside; // within it the other values stand
    if (corner.at == d.common() && !outside)
        d.innerReach = askedByWidest(sector, [&](const Part& part) {
            return std::min(reachBeyond(d, radius, part, extent), 120 * d.factor);
        });
    const bool isSaid = corner.isDue && d.isRevealed(corner.angle);
    Group& g =
        d.add(Role::arc, corner.id, isSaid ? corner.title : Title{corner.title.name, {}}, corner.angle);
    const double width = d.weight(d.style.arcWidth);
    if (isRight(corner.radians)) {
        const Point u = onCircle({0, 0}, 1, corner.start),
                    v = onCircle({0, 0}, 1, corner.start + corner.sweep);
        addSquare(g.items, Role::arc, corner.at, u, v, std::min(11 * d.factor, radius), width);
        sector.radius = std::min(16 * d.factor, radius);
    } else {
        addArc(g.items, Role::arc, corner.at, radius, corner.start, corner.sweep, width, false);
        // Without values, equal angles are told by equal marks.
        if (corner.doubled && !d.options.values)
            addArc(g.items, Role::arc, corner.at, radius + 3 * d.factor, corner.start, corner.sweep, width,
                   false);
    }
    askForValue(d, corner, std::move(sector));
}

Corner cornerBetween(const Drawing& d, const Eigen::Vector2d& at, const Eigen::Vector2d& u,
                     const Eigen::Vector2d& v, double radians) {
    Corner corner;
    corner.at = d.view.toSheet(at);
    const Point toU = d.view.toSheet(u) - corner.at, toV = d.view.toSheet(v) - corner.at;
    corner.shorter = std::min(length(toU), length(toV));
    corner.start = degreesOf(toU);
    corner.sweep = turned(degreesOf(toV) - corner.start);
    if (corner.sweep > 180)
        corner.sweep -= 360;
    corner.radians = radians;
    return corner;
}

} // namespace tailpoint
