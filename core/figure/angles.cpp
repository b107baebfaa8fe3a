// The angle between the tails, interior angles, and the square of the smallest force.
#include "core/figure/drawing.h"

#include <algorithm>
#include <array>
#include <numbers>

namespace tailpoint {
namespace {

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

struct Corner {
    std::string id, title;
    Point at;
    double start, sweep, radians; ///< sweep in degrees as drawn, -180..180
    double shorter;               ///< length of the shorter leg, points
    bool atTails = false, doubled = false;
};

void addInterior(Drawing& d, const Corner& corner, std::vector<double> splits) {
    const Runs value = plainRuns(shownAngleFromRadians(corner.radians, d.sketch));
    const Extent extent = extentOf(d, value);
    Sector sector{corner.at, 0, corner.start, corner.sweep, std::move(splits), true};
    const double roomy =
        askedByWidest(sector, [&](const Part& part) { return roomyRadius(d, part, extent); });
    double radius = widened(roomy, corner.sweep, d.factor);
    radius = std::min(radius, 0.42 * corner.shorter);
    if (radius < 6 * d.factor || d.runsUnder(ArcShape(corner.at, radius, corner.start, corner.sweep)))
        return;
    sector.radius = radius;
    if (corner.at == d.common())
        d.innerReach = askedByWidest(sector, [&](const Part& part) {
            return std::min(reachBeyond(d, radius, part, extent), 120 * d.factor);
        });
    Group& g = d.add(Role::arc, corner.id, corner.title);
    const double width = d.weight(d.style.arcWidth);
    if (std::abs(corner.radians - std::numbers::pi / 2) < kRightAngle) {
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
    if (d.isSaid(plainText(value)))
        d.ask(std::move(sector), Role::label, d.style.angleSize, value);
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

/// The sum ends at this corner.
std::vector<double> splitBy(const Corner& corner, double degrees) {
    const double sense = corner.sweep < 0 ? -1 : 1, turn = turned(sense * (degrees - corner.start));
    if (turn > 0.2 && turn < std::abs(corner.sweep) - 0.2)
        return {corner.start + sense * turn};
    return {};
}

int stageOfCorner(const Drawing& d, std::size_t corner) {
    const auto& f = d.vectors.forces;
    const int from = corner == 0 ? stages::between : stages::interior;
    const bool directionsGiven = !f[0].foundDirection && !f[1].foundDirection;
    const bool given = !f[0].found() && !f[1].found();
    if (given)
        return from;
    if (directionsGiven && corner == 0)
        return stages::found; // nothing to draw the arc at before
    return directionsGiven ? stages::found : stages::triangle;
}

void drawParallelogramAngles(Drawing& d) {
    const Parallelogram& p = *d.construction.parallelogram;
    if (p.shape != Shape::proper)
        return;
    const bool whole = d.kind() == ConstructionKind::parallelogram && d.shows(stages::construction);
    for (std::size_t i = 0; i < 4; ++i) {
        if (!p.interior[i] || !d.shows(stageOfCorner(d, i)) || (i > 0 && !whole))
            continue;
        Corner corner =
            cornerBetween(d, p.corners[i], p.corners[(i + 3) % 4], p.corners[(i + 1) % 4], *p.interior[i]);
        corner.id = i == 0 ? "angle-tails" : "angle-" + std::to_string(i);
        corner.title = (i == 0 ? "Angle between the tails, " : "Interior angle, ") +
                       shownAngleFromRadians(*p.interior[i], d.sketch);
        corner.doubled = i % 2 == 1;
        std::vector<double> splits;
        if (i == 0)
            splits = d.raysInside(corner.start, corner.sweep, 30 * d.factor);
        else if (i == 2 && d.isDrawn(kSumIndex))
            splits = splitBy(corner, degreesOf(d.vectors.sum.unit) + 180);
        addInterior(d, corner, std::move(splits));
    }
}

/// Of one parallelogram among several: where the tails meet, and its supplement at the first tip.
void drawPairAngles(Drawing& d) {
    const auto [first, last] = d.drawnPairs();
    if (last != first + 1 || !d.shows(stages::construction))
        return; // of several at once the angles would hide the figure
    const Parallelogram& p = d.pairs[first];
    for (const std::size_t i : {0U, 1U}) {
        if (!p.interior[i])
            continue;
        Corner corner =
            cornerBetween(d, p.corners[i], p.corners[(i + 3) % 4], p.corners[(i + 1) % 4], *p.interior[i]);
        corner.id = i == 0 ? "pair-tails" : "pair-inner";
        corner.title = (i == 0 ? "Angle between the tails of " + p.first + " and " + p.second + ", "
                               : "Interior angle, ") +
                       shownAngleFromRadians(*p.interior[i], d.sketch);
        addInterior(d, corner,
                    i == 0 ? d.raysInside(corner.start, corner.sweep, 30 * d.factor) : std::vector<double>());
    }
}

bool hasGivenDirection(const Drawing& d, int vector) {
    return vector == kNoVector || !d.vectors.at(vector).foundDirection;
}

bool isFound(const Drawing& d, int vector) {
    return vector != kNoVector && d.vectors.at(vector).found();
}

void drawTriangleAngles(Drawing& d) {
    const ForceTriangle& t = *d.triangle();
    for (std::size_t side = 0; side < 3; ++side) {
        const std::size_t at = ForceTriangle::cornerOpposite(side);
        const int one = t.vectors[(side + 1) % 3], two = t.vectors[(side + 2) % 3];
        int from = stages::triangle;
        if (hasGivenDirection(d, one) && hasGivenDirection(d, two))
            from = isFound(d, one) || isFound(d, two) ? stages::found : stages::interior;
        if (!t.opposite[side] || !d.shows(from) || *t.opposite[side] == 0 ||
            std::numbers::pi - *t.opposite[side] < 1e-9)
            continue;
        Corner corner = cornerBetween(d, t.corners[at], t.corners[(at + 1) % 3], t.corners[(at + 2) % 3],
                                      *t.opposite[side]);
        corner.id = idOf("opposite", t.names[side]);
        corner.title =
            "Angle opposite to " + t.names[side] + ", " + shownAngleFromRadians(*t.opposite[side], d.sketch);
        addInterior(d, corner,
                    at == 0 ? d.raysInside(corner.start, corner.sweep, 30 * d.factor)
                            : std::vector<double>());
    }
}

/// The smallest force or sum stands at right angles to the line that it reaches.
void drawFoot(Drawing& d) {
    const bool smallest = d.solved.family == Family::smallestForce || d.solved.family == Family::smallestSum;
    if (!smallest || !d.answered() || !d.shows(stages::found) || d.triangle())
        return;
    const int force =
        d.solved.unknownVectors[0] == kSumIndex ? d.solved.unknownVectors[1] : d.solved.unknownVectors[0];
    if (force == kNoVector || !d.isDrawn(force) || !d.isDrawn(kSumIndex))
        return;
    const Eigen::Vector2d u = -d.vectors.sum.unit, v = -d.vectors.at(force).unit;
    const double legs = d.view.scale * std::min(d.vectors.sum.magnitude, d.vectors.at(force).magnitude);
    addSquare(d.add(Role::arc, "right-angle", "Right angle").items, Role::arc,
              d.view.toSheet(d.vectors.sum.vector), {u.x(), -u.y()}, {v.x(), -v.y()},
              std::min(9 * d.factor, 0.4 * legs), d.weight(d.style.arcWidth));
}

} // namespace

void drawAngles(Drawing& d) {
    if (!d.options.angles)
        return;
    if (!d.options.interior)
        return drawFoot(d);
    if (d.triangle())
        drawTriangleAngles(d);
    else if (!d.pairs.empty())
        drawPairAngles(d);
    else if (d.construction.parallelogram && d.shows(stages::between))
        drawParallelogramAngles(d);
    drawFoot(d);
}

} // namespace tailpoint
