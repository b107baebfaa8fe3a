// Arcs: directions from the axis, the angle between the tails, interior angles.
#include "core/figure/drawing.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace tailpoint {
namespace {

constexpr double kDegree = std::numbers::pi / 180;

/// An arc about a corner between two drawn directions, with its value.
void addAngle(Drawing& d, const std::string& id, const std::string& title, Point corner, double start,
              double sweep, double radius, bool head, const std::string& value, Role ink) {
    Group& g = d.add(Role::arc, id, title);
    const double width = d.weight(d.options.style.arcWidth);
    if (!head && std::abs(std::abs(sweep) - 90) < 1e-7) {
        const Point u = onCircle({0, 0}, 1, start), v = onCircle({0, 0}, 1, start + sweep);
        addSquare(g.items, Role::arc, corner, u, v, 0.55 * radius, width);
    } else {
        addArc(g.items, Role::arc, corner, radius, start, sweep, width, head);
    }
    if (d.options.values && !value.empty())
        d.ask(Sector{corner, radius, start, sweep}, ink, d.options.style.angleSize, plainRuns(value));
}

struct AxisArc {
    int index;
    double sweep; ///< degrees ccw as seen from the axis
};

void drawAxisArcs(Drawing& d) {
    if (!d.options.angles || !d.shows(stages::directions))
        return;
    std::vector<AxisArc> arcs;
    const auto consider = [&](int index) {
        const PlainVector& v = d.vectors.at(index);
        if (!d.isDrawn(v) || (v.foundDirection && !d.shows(stages::all)))
            return;
        const double degrees = std::atan2(v.unit.y(), v.unit.x()) / kDegree - d.sketch.reference.axisDegrees;
        const double sweep = turned(degrees) > 180 ? turned(degrees) - 360 : turned(degrees);
        if (std::abs(sweep) > 1e-9)
            arcs.push_back({index, sweep});
    };
    for (std::size_t i = 0; i < d.vectors.forces.size() && d.vectors.forces.size() <= 6; ++i)
        consider(static_cast<int>(i));
    consider(kSumIndex);
    std::stable_sort(arcs.begin(), arcs.end(), [](const AxisArc& a, const AxisArc& b) {
        return std::abs(a.sweep) > std::abs(b.sweep);
    });
    double radius = 56 * d.factor;
    for (const AxisArc& arc : arcs) {
        const bool isSum = arc.index == kSumIndex;
        const auto referred = d.referred(arc.index);
        if (!referred)
            continue;
        const std::string value = shownAngle(std::abs(*referred), d.sketch);
        addAngle(d, "direction-" + d.idOfVector(arc.index),
                 "Direction of " + d.vectors.at(arc.index).name + ", " + directionWords(referred, d.sketch),
                 d.common(), d.sketch.reference.axisDegrees, arc.sweep, radius, true, value,
                 isSum ? Role::sum : Role::label);
        radius += 22 * d.factor;
    }
}

/// Interior angle at `corner` between the edges to `u` and to `v`.
void addInterior(Drawing& d, const std::string& id, const std::string& title, const Eigen::Vector2d& corner,
                 const Eigen::Vector2d& u, const Eigen::Vector2d& v, double radians) {
    const Point at = d.view.toSheet(corner);
    const Point toU = d.view.toSheet(u) - at, toV = d.view.toSheet(v) - at;
    const double shorter = std::min(length(toU), length(toV));
    const double radius = std::min(30 * d.factor, 0.4 * shorter);
    if (radius < 6 * d.factor || radians == 0)
        return;
    const double start = degreesOf(toU);
    double sweep = turned(degreesOf(toV) - start);
    if (sweep > 180)
        sweep -= 360;
    addAngle(d, id, title, at, start, sweep, radius, false, shownAngleFromRadians(radians, d.sketch),
             Role::label);
}

void drawParallelogramAngles(Drawing& d) {
    const Parallelogram& p = *d.construction.parallelogram;
    for (const PlainVector& force : d.vectors.forces)
        if (force.foundDirection && !d.shows(stages::found))
            return;
    for (std::size_t i = 0; i < 4; ++i) {
        const int from = i == 0 ? stages::between : stages::interior;
        if (!p.interior[i] || !d.shows(from) || (i > 0 && p.shape != Shape::proper))
            continue;
        if (i > 0 && d.kind() != ConstructionKind::parallelogram)
            continue;
        addInterior(d, i == 0 ? "angle-tails" : "angle-" + std::to_string(i),
                    i == 0 ? "Angle between the tails" : "Interior angle", p.corners[i],
                    p.corners[(i + 3) % 4], p.corners[(i + 1) % 4], *p.interior[i]);
    }
}

void drawTriangleAngles(Drawing& d) {
    const ForceTriangle& t = d.options.otherOrder ? *d.construction.otherTriangle : *d.construction.triangle;
    for (std::size_t side = 0; side < 3; ++side) {
        const std::size_t corner = ForceTriangle::cornerOpposite(side);
        if (!t.opposite[side] || !d.shows(corner == 1 ? stages::interior : stages::triangle))
            continue;
        addInterior(d, idOf("opposite", t.names[side]), "Angle opposite to " + t.names[side],
                    t.corners[corner], t.corners[(corner + 1) % 3], t.corners[(corner + 2) % 3],
                    *t.opposite[side]);
    }
}

} // namespace

void drawAngles(Drawing& d) {
    if (!d.options.angles)
        return;
    if (d.kind() == ConstructionKind::triangle && d.shows(stages::construction))
        drawTriangleAngles(d);
    else if (d.construction.parallelogram)
        drawParallelogramAngles(d);
    drawAxisArcs(d);
}

} // namespace tailpoint
