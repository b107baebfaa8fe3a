// Arcs: directions from the axis, the angle between the tails, interior angles.
#include "core/figure/drawing.h"

#include <algorithm>
#include <array>
#include <numbers>

namespace tailpoint {
namespace {

constexpr double kRightAngle = 1e-9; ///< radians; closer than this to 90 degrees it gets the square mark
constexpr double kLeastSpan = 9;     ///< an arc shorter than this is hardly seen, points

Extent extentOf(const Drawing& d, const Runs& runs) {
    const TextExtent e = d.measure.measure(runs, Face::serif, d.style.angleSize * d.factor);
    return {e.width, e.ascent + e.descent, e.ascent};
}

double radiansOf(double degrees) {
    return std::abs(degrees) * std::numbers::pi / 180;
}

/// A narrow angle gets a wider arc, so that there is an arc to see.
double widened(double radius, double sweepDegrees, double factor) {
    return std::max(radius, std::min(kLeastSpan / std::max(radiansOf(sweepDegrees), 1e-9), 80.0) * factor);
}

/// The widest part of a sector between neighbouring strokes: bisector and half of it, degrees.
std::array<double, 2> widestPart(const Sector& sector) {
    std::array<double, 2> best{sector.startDegrees, 0};
    double from = sector.startDegrees;
    const auto consider = [&](double to) {
        if (std::abs(to - from) / 2 > best[1])
            best = {(to + from) / 2, std::abs(to - from) / 2};
        from = to;
    };
    for (const double split : sector.splits)
        consider(split);
    consider(sector.startDegrees + sector.sweepDegrees);
    return best;
}

/// The radius at which the value finds room between corner and arc, within limits.
double roomyRadius(const Drawing& d, const Sector& sector, const Extent& e) {
    const auto [bisector, half] = widestPart(sector);
    const double near = wedgeDistance(bisector, half, e, 3.5 * d.factor);
    const Point unit = onCircle({0, 0}, 1, bisector);
    const Point furthest{near * std::abs(unit.x) + e.width / 2, near * std::abs(unit.y) + e.height / 2};
    const double needed = length(furthest) + 5 * d.factor;
    if (needed <= 40 * d.factor)
        return std::max(needed, 26 * d.factor);
    // It will stand beyond the arc: bring the arc out to where the strokes leave room for it.
    const double gap = 4.5 * d.factor, along = reach(e.width, e.height, unit);
    return std::clamp(wedgeDistance(bisector, half, e, gap) - along - gap, 28 * d.factor, 64 * d.factor);
}

/// How far out the value reaches if it stands beyond the arc, between two strokes.
double reachBeyond(const Drawing& d, const Sector& sector, const Extent& e) {
    const auto [bisector, half] = widestPart(sector);
    const double along = reach(e.width, e.height, onCircle({0, 0}, 1, bisector)), gap = 4.5 * d.factor;
    return std::max(sector.radius + along + gap, wedgeDistance(bisector, half, e, gap)) + along + gap;
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
    double radius = widened(roomyRadius(d, sector, extent), corner.sweep, d.factor);
    radius = std::min(radius, 0.42 * corner.shorter);
    if (radius < 6 * d.factor)
        return;
    sector.radius = radius;
    if (corner.at == d.common())
        d.innerReach = std::min(reachBeyond(d, sector, extent), 120 * d.factor);
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
    if (d.options.values)
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
            splits = d.raysInside(corner.start, corner.sweep);
        else if (i == 2 && d.isDrawn(kSumIndex))
            splits = splitBy(corner, degreesOf(d.vectors.sum.unit) + 180);
        addInterior(d, corner, std::move(splits));
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
        addInterior(d, corner, at == 0 ? d.raysInside(corner.start, corner.sweep) : std::vector<double>());
    }
}

struct AxisArc {
    int index;
    double sweep; ///< degrees as drawn, from the axis
};

std::vector<AxisArc> axisArcs(const Drawing& d) {
    std::vector<AxisArc> arcs;
    d.forEachVector([&](int index) {
        const PlainVector& v = d.vectors.at(index);
        if (!d.isDrawn(index) || (index != kSumIndex && d.vectors.forces.size() > kMostAxisArcs) ||
            (v.foundDirection && !d.shows(stages::all)) || d.isMoved(index))
            return;
        const double turn = turned(degreesOf(v.unit) - d.axisDegrees());
        const double sweep = turn > 180 + 1e-9 ? turn - 360 : turn;
        if (std::abs(sweep) > 1e-6)
            arcs.push_back({index, sweep});
    });
    // Forces in one direction share an arc.
    for (std::size_t i = 0; i < arcs.size(); ++i)
        arcs.erase(std::remove_if(arcs.begin() + static_cast<std::ptrdiff_t>(i) + 1, arcs.end(),
                                  [&](const AxisArc& a) { return std::abs(a.sweep - arcs[i].sweep) < 1e-7; }),
                   arcs.end());
    // The widest innermost: a narrow angle needs a far arc to be seen.
    std::stable_sort(arcs.begin(), arcs.end(), [](const AxisArc& a, const AxisArc& b) {
        return std::abs(a.sweep) > std::abs(b.sweep);
    });
    return arcs;
}

/// A short force is led out to the arc by a thin line.
void addExtension(Drawing& d, Group& group, int index, double degrees, double radius) {
    const double size = d.vectors.at(index).magnitude * d.view.scale;
    if (size >= radius)
        return;
    const double from = size + 2.5 * d.factor, to = radius + 4 * d.factor;
    if (to > from)
        group.items.emplace_back(line(Role::arc, onCircle(d.common(), from, degrees),
                                      onCircle(d.common(), to, degrees), d.weight(0.6 * d.style.arcWidth)));
}

void addAxisArc(Drawing& d, const AxisArc& arc, double radius) {
    const auto referred = d.referred(arc.index);
    if (!referred)
        return;
    const std::string name = d.vectors.at(arc.index).name;
    Group& g = d.add(Role::arc, "direction-" + d.idOfVector(arc.index),
                     "Direction of " + name + ", " + directionWords(referred, d.sketch), arc.index);
    addExtension(d, g, arc.index, d.axisDegrees() + arc.sweep, radius);
    addArc(g.items, Role::arc, d.common(), radius, d.axisDegrees(), arc.sweep, d.weight(d.style.arcWidth),
           true);
    if (!d.options.values)
        return;
    Sector sector{d.common(), radius, d.axisDegrees(), arc.sweep};
    sector.splits = d.raysInside(sector.startDegrees, sector.sweepDegrees);
    d.ask(std::move(sector), arc.index == kSumIndex ? Role::sum : Role::label, d.style.angleSize,
          plainRuns(shownAngle(std::abs(*referred), d.sketch)));
}

void drawAxisArcs(Drawing& d) {
    const auto arcs = axisArcs(d);
    double longest = 0;
    d.forEachVector([&](int index) {
        if (d.isDrawn(index))
            longest = std::max(longest, d.vectors.at(index).magnitude * d.view.scale);
    });
    // Arcs to either side of the axis never meet, but two ends at one radius would look like one arc.
    const double first = std::max(58 * d.factor, std::min(d.innerReach, 0.4 * longest));
    const double rows = std::max(1.0, 0.5 * static_cast<double>(arcs.size()));
    const double step = std::clamp((0.8 * longest - first) / rows, 14 * d.factor, 25 * d.factor);
    std::array<double, 2> next{first, first};
    for (const AxisArc& arc : arcs) {
        double& own = next[arc.sweep > 0 ? 0 : 1];
        double& other = next[arc.sweep > 0 ? 1 : 0];
        own = std::max(own, widened(0, arc.sweep, d.factor));
        addAxisArc(d, arc, own);
        other = std::max(other, own + step / 2);
        own += step;
    }
}

} // namespace

void drawAngles(Drawing& d) {
    if (!d.options.angles)
        return;
    if (d.triangle())
        drawTriangleAngles(d);
    else if (d.construction.parallelogram && d.shows(stages::between))
        drawParallelogramAngles(d);
    if (d.shows(stages::directions) && !(d.options.alone && d.triangle()))
        drawAxisArcs(d);
}

} // namespace tailpoint
