// SPDX-License-Identifier: MIT
// Where the tips of found vectors can lie within the tolerances, and the sectors of permitted directions.
#include "core/figure/drawing.h"
#include "core/figure/tolerated.h"

#include <array>

namespace tailpoint {
namespace {

using Outline = std::vector<Point>;

constexpr double kThinned = 0.1;     ///< points: nearer ones of an outline are one
constexpr double kOffSheet = 40;     ///< so far beyond the sheet an outline is followed, points
constexpr double kThinOutline = 1.2; ///< a region thinner than this gets a band, points
constexpr double kBand = 4;          ///< width of that band, points
constexpr double kOutline = 0.7;     ///< points by the figure's factor
constexpr double kLeastSector = 46, kMostSector = 150, kSectorAlone = 90; ///< points by the factor
constexpr double kOfShaft = 0.8;                                          ///< a sector's radius by its arrow
constexpr double kSectorInset = 5; ///< its lines begin beside the ring of the common point

/// Cut off at a line: what is behind it is left out. Sutherland and Hodgman, 'Reentrant polygon clipping'
/// (1974); winding numbers before the line stay what they are.
template <class Ahead>
Outline cutAt(const Outline& outline, Ahead ahead) {
    Outline cut;
    for (std::size_t i = 0; i < outline.size(); ++i) {
        const Point a = outline[i], b = outline[(i + 1) % outline.size()];
        const double one = ahead(a), two = ahead(b);
        if (one >= 0)
            cut.push_back(a);
        if ((one >= 0) != (two >= 0))
            cut.push_back(a + one / (one - two) * (b - a));
    }
    return cut;
}

Outline cutTo(const Box& box, Outline outline) {
    outline = cutAt(outline, [&](Point p) { return p.x - box.left; });
    outline = cutAt(outline, [&](Point p) { return box.right() - p.x; });
    outline = cutAt(outline, [&](Point p) { return p.y - box.top; });
    return cutAt(outline, [&](Point p) { return box.bottom() - p.y; });
}

Outline onSheet(const Drawing& d, const tolerance::Outline& outline, Point tail) {
    Outline points;
    for (const Eigen::Vector2d& tip : outline) {
        const Point p = tail + Point{d.view.scale * tip.x(), -d.view.scale * tip.y()};
        if (points.empty() || length(p - points.back()) >= kThinned)
            points.push_back(p);
    }
    return points;
}

/// Area by circumference, where the outline encloses one: half of a narrow region's width.
double halfWidth(const Outline& outline) {
    double area = 0, around = 0;
    for (std::size_t i = 0; i < outline.size(); ++i) {
        const Point a = outline[i], b = outline[(i + 1) % outline.size()];
        area += (a.x * b.y - a.y * b.x) / 2;
        around += length(b - a);
    }
    return around > 0 ? std::abs(area) / around : 0;
}

/// All outlines as one, so that their windings add up: ways between them are gone there and back.
Path groundOf(const std::vector<Outline>& outlines) {
    Path ground;
    ground.role = Role::region;
    ground.closed = ground.filled = true;
    ground.width = 0;
    for (const Outline& outline : outlines) {
        ground.points.insert(ground.points.end(), outline.begin(), outline.end());
        ground.points.push_back(outline.front());
    }
    for (std::size_t i = outlines.size() - 1; i-- > 1;)
        ground.points.push_back(outlines[i].front());
    return ground;
}

Path outlineOf(const Drawing& d, const Outline& outline, Role role) {
    Path path;
    path.role = role;
    path.points = outline;
    path.closed = true;
    path.width = d.weight(kOutline);
    return path;
}

void drawRegion(Drawing& d, const tolerance::TipRegion& region) {
    const PlainVector& vector = d.vectors.at(region.index);
    const bool isSide = !d.options.alone || !d.triangle() || d.sideOf(region.index) < 3;
    if (!vector.complete() || !vector.found() || !isSide)
        return;
    const Point tail = d.endsOf(region.index).tail;
    const Role ink = region.index == kSumIndex ? Role::sum : Role::given;
    std::vector<Outline> outlines;
    for (const tolerance::Outline& outline : region.outlines)
        if (Outline cut = cutTo(grown(d.sheet, kOffSheet), onSheet(d, outline, tail)); cut.size() > 1)
            outlines.push_back(std::move(cut));
    if (outlines.empty())
        return;
    Group& g = d.add(Role::region, idOf("region", vector.name),
                     {"Where the tip of " + vector.name + " can lie within the tolerances", {}});
    for (const Outline& outline : outlines)
        if (halfWidth(outline) < kThinOutline / 2) {
            g.items.emplace_back(outlineOf(d, outline, Role::region));
            std::get<Path>(g.items.back()).width = kBand * d.factor;
        }
    g.items.emplace_back(groundOf(outlines));
    for (const Outline& outline : outlines)
        g.items.emplace_back(outlineOf(d, outline, ink));
}

/// As drawn, degrees.
struct SectorDrawn {
    double axis = 0, within = 0, radius = 0;
};

SectorDrawn sectorOf(const Drawing& d, int index, const Permitted& permitted) {
    const double degrees = 360 / turnIn(d.sketch.angleUnit);
    const double sense = d.sketch.reference.sense == Sense::cw ? -1 : 1;
    const double radius =
        d.hasRay(index) && !d.isMoved(index)
            ? std::clamp(kOfShaft * d.lengthOf(index), kLeastSector * d.factor, kMostSector * d.factor)
            : kSectorAlone * d.factor;
    return {d.axisDegrees() + sense * degrees * permitted.axis, degrees * permitted.within, radius};
}

void drawSector(Drawing& d, int index, const Permitted& permitted, bool isOnly) {
    const SectorDrawn sector = sectorOf(d, index, permitted);
    if (sector.within >= 180)
        return; // every direction is permitted
    const Force& force = d.forceAt(index);
    const double width = d.weight(d.style.arcWidth);
    Group& g = d.add(Role::arc, idOf("permitted", force.name),
                     {"Permitted directions of " + force.name,
                      shownAngle(permitted.within, d.sketch, Origin::typed) + " either side of " +
                          shownAngle(permitted.axis, d.sketch, Origin::typed)});
    const double from = sector.axis - sector.within, sweep = 2 * sector.within;
    for (const double edge : {from, from + sweep}) {
        const Point unit = onCircle({0, 0}, 1, edge);
        g.items.emplace_back(line(Role::arc, d.common() + kSectorInset * d.factor * unit,
                                  d.common() + sector.radius * unit, width, Dash::dashed));
    }
    Arc rim;
    rim.centre = d.common();
    rim.radius = sector.radius;
    rim.startDegrees = from;
    rim.sweepDegrees = sweep;
    rim.width = width;
    rim.dash = Dash::dashed;
    g.items.emplace_back(rim);
    if (d.vectors.forces.size() > kMostLabelled)
        return;
    Sector at{d.common(), sector.radius, from, sweep};
    at.splits = d.raysInside(from, sweep, sector.radius);
    at.angle = false;
    Runs words = isOnly ? Runs() : d.nameRuns(force.name);
    words.push_back(Run{isOnly ? "permitted" : " permitted"});
    d.ask(std::move(at), Role::label, 0.9 * d.style.angleSize, std::move(words));
}

} // namespace

void drawRegions(Drawing& d) {
    if (d.options.regions && d.tolerated != nullptr && d.answered() && d.shows(Stage::found))
        for (const tolerance::TipRegion& region : d.tolerated->regions)
            drawRegion(d, region);
}

void drawPermitted(Drawing& d) {
    if (d.options.alone && d.triangle())
        return;
    std::vector<int> stated;
    d.forEachVector([&](int index) {
        if (d.forceAt(index).permitted && !(index == kSumIndex && isEquilibrium(d.sketch)))
            stated.push_back(index);
    });
    for (const int index : stated)
        drawSector(d, index, *d.forceAt(index).permitted, stated.size() == 1);
}

} // namespace tailpoint
