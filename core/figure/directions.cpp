// Directions of the vectors: arcs from the axis, and run and rise where a direction is given as a slope.
#include "core/figure/drawing.h"

#include <algorithm>
#include <array>
#include <numbers>

namespace tailpoint {
namespace {

struct AxisArc {
    int index;
    double sweep; ///< degrees as drawn, from the axis
};

/// In the sketch's order, the sum outermost: an order that no drag changes.
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

/// Drawn in as far as title block and note ask for it; 0 where there is no room at all.
double clearRadius(const Drawing& d, const AxisArc& arc, double wanted) {
    const auto isClear = [&](double radius) {
        const ArcShape shape(d.common(), radius, d.axisDegrees(), arc.sweep);
        return std::none_of(d.reserved.begin(), d.reserved.end(),
                            [&](const Box& box) { return shape.meets(box); });
    };
    for (double radius = wanted; radius > 12 * d.factor; radius -= 7 * d.factor)
        if (isClear(radius))
            return radius;
    return 0;
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
        const double radius = clearRadius(d, arc, own);
        if (radius == 0)
            continue;
        addAxisArc(d, arc, radius);
        other = std::max(other, own + step / 2);
        own += step;
    }
}

/// Run and rise on a small triangle at the shaft, as they are given.
void drawSlope(Drawing& d, int index) {
    const Force& force = index == kSumIndex ? d.sketch.sum : d.sketch.forces[static_cast<std::size_t>(index)];
    const auto* slope = std::get_if<SlopeForm>(&force.direction.form);
    if (!slope || slope->run == 0 || slope->rise == 0 || !d.isDrawn(index))
        return;
    const Ends ends = d.endsOf(index);
    const double size = length(ends.tip - ends.tail), side = std::min(46 * d.factor, 0.3 * size);
    if (side < 18 * d.factor)
        return;
    const Point unit = unitFrom(ends.tail, ends.tip);
    const Point from = ends.tail + 0.55 * size * unit, to = from + side * unit, corner{to.x, from.y};
    Path legs;
    legs.role = Role::arc;
    legs.points = {from, corner, to};
    legs.width = d.weight(d.style.arcWidth);
    Group& g =
        d.add(Role::arc, "slope-" + d.idOfVector(index),
              "Slope of " + d.vectors.at(index).name + ", " + shownAsGiven(force.direction, d.sketch), index);
    g.items.emplace_back(legs);
    if (!d.options.values)
        return;
    // Outside the triangle: away from the shaft.
    const double sense = (to.x - from.x) * (to.y - from.y) < 0 ? -1 : 1;
    const auto ask = [&](Point a, Point b, double value, const char* which) {
        d.ask(Shaft{a, b, sense}, Role::label, 0.9 * d.style.angleSize, plainRuns(shortest(std::abs(value))))
            .id += which;
    };
    ask(from, corner, slope->run, "-run");
    ask(corner, to, slope->rise, "-rise");
}

} // namespace

double widened(double radius, double sweepDegrees, double factor) {
    const double span = std::max(std::abs(sweepDegrees) * std::numbers::pi / 180, 1e-9);
    return std::max(radius, std::min(kLeastSpan / span, 80.0) * factor);
}

void drawDirections(Drawing& d) {
    if (!d.options.angles || !d.shows(stages::directions) || (d.options.alone && d.triangle()))
        return;
    drawAxisArcs(d);
    if (d.vectors.forces.size() <= kMostAxisArcs)
        d.forEachVector([&](int index) { drawSlope(d, index); });
}

} // namespace tailpoint
