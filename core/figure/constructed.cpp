// Dashed lines of the construction, and the loci.
#include "core/figure/drawing.h"

namespace tailpoint {
namespace {

void drawParallelogram(Drawing& d) {
    const Parallelogram& p = *d.construction.parallelogram;
    for (const PlainVector& force : d.vectors.forces)
        if (force.found() && !d.shows(stages::found))
            return;
    Group& g = d.add(Role::construction, "parallelogram", "Parallelogram on " + p.first + " and " + p.second);
    const double width = d.weight(d.options.style.constructionWidth);
    const Point far = d.view.toSheet(p.corners[2]);
    for (const std::size_t corner : {1U, 3U})
        g.items.emplace_back(
            line(Role::construction, d.view.toSheet(p.corners[corner]), far, width, Dash::dashed));
}

void drawPolygon(Drawing& d) {
    const ForcePolygon& polygon = d.construction.polygon;
    if (polygon.names.size() < 2)
        return;
    Group& g = d.add(Role::construction, "polygon", "Force polygon, tip to tail");
    for (std::size_t i = 1; i < polygon.names.size(); ++i)
        addArrow(g.items, Role::construction, d.view.toSheet(polygon.corners[i]),
                 d.view.toSheet(polygon.corners[i + 1]), d.weight(d.options.style.constructionWidth),
                 Head::small, Dash::dashed);
}

} // namespace

void drawConstruction(Drawing& d) {
    if (!d.shows(stages::construction))
        return;
    if (d.kind() == ConstructionKind::parallelogram)
        drawParallelogram(d);
    else if (d.kind() == ConstructionKind::polygon)
        drawPolygon(d);
}

void drawLoci(Drawing& d) {
    if (!d.shows(stages::construction) || d.construction.loci.empty())
        return;
    const double width = d.weight(d.options.style.locusWidth);
    for (const Locus& locus : d.construction.loci) {
        if (const auto* ray = std::get_if<LineLocus>(&locus)) {
            Point a = d.view.toSheet(ray->through);
            const Point unit{ray->unit.x(), -ray->unit.y()};
            const double far = d.view.width + d.view.height + length(a - d.common());
            Point b = a + far * unit;
            if (!ray->ray)
                a = a - far * unit;
            if (!clip({0, 0, d.view.width, d.view.height}, a, b))
                continue;
            d.add(Role::locus, "locus-" + d.idOfVector(ray->vector),
                  "Line of action of " + d.vectors.at(ray->vector).name)
                .items.emplace_back(line(Role::locus, a, b, width, Dash::chainTwoDots));
        } else {
            const auto& circle = std::get<CircleLocus>(locus);
            Group& g = d.add(Role::locus, "locus-" + d.idOfVector(circle.vector),
                             "Circle of possible tips of " + d.vectors.at(circle.vector).name);
            Arc arc;
            arc.role = Role::locus;
            arc.centre = d.view.toSheet(circle.centre);
            arc.radius = circle.radius * d.view.scale;
            arc.sweepDegrees = 360;
            arc.width = width;
            arc.dash = Dash::chainTwoDots;
            g.items.emplace_back(arc);
        }
    }
}

} // namespace tailpoint
