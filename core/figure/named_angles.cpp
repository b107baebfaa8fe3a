// SPDX-License-Identifier: MIT
#include "core/construct/reduction.h"
#include "core/figure/corner.h"

#include <algorithm>
#include <numbers>

namespace tailpoint {
namespace {

constexpr double kRay = 96;         ///< length of a direction's stub, points by the figure's factor
constexpr double kSamePoint = 1e-9; ///< of the vector's magnitude
constexpr double kSameLine = 1e-9;  ///< sine

double angleOf(const Eigen::Vector2d& a, const Eigen::Vector2d& b) {
    return std::abs(std::atan2(a.x() * b.y() - a.y() * b.x(), a.dot(b)));
}

/// The end of a drawn vector from which a line of action runs; the other end.
std::optional<Eigen::Vector2d> farEnd(const Drawing& d, int vector, const Eigen::Vector2d& from) {
    const Eigen::Vector2d tip = d.vectors.at(vector).vector;
    const double slack = kSamePoint * tip.norm();
    if ((from - tip).norm() <= slack)
        return Eigen::Vector2d(0, 0);
    return from.norm() <= slack ? std::optional(tip) : std::nullopt;
}

/// Between a vector that is drawn and the line of action of one that is sought.
void drawAtLocus(Drawing& d, const LineLocus& line, const Sides& sides, std::size_t side) {
    const VectorId opposite = sides.side[side];
    const auto [a, b] = Reduction::others(side);
    const int one = indexOf(sides.side[a]), two = indexOf(sides.side[b]);
    const AngleName* name = d.nameOf(oppositeId(opposite));
    if (!name || (one != line.vector && two != line.vector))
        return;
    const int known = one == line.vector ? two : one;
    if (known == kNoVector || !d.isDrawn(known))
        return;
    const auto far = farEnd(d, known, line.through);
    if (!far)
        return;
    const Eigen::Vector2d side1 = *far - line.through, side2 = 2 * kRay * d.factor / d.view.scale * line.unit;
    Corner corner = cornerBetween(d, line.through, *far, line.through + side2, angleOf(side1, side2));
    corner.angle = oppositeId(opposite);
    const std::string facing = d.things.name(opposite);
    corner.id = idOf("opposite", facing);
    corner.title = {"Angle opposite to " + facing, shownAngleFromRadians(corner.radians, d.sketch)};
    corner.name = name;
    corner.isDue = d.shows(Stage::interior);
    const bool atCommon = corner.at == d.common();
    addCorner(d, corner,
              atCommon ? d.raysInside(corner.start, corner.sweep, kRaysAt * d.factor)
                       : std::vector<double>());
}

void drawAtLoci(Drawing& d) {
    const auto sides = sidesOf(d.sketch);
    if (!sides || d.triangle() || !d.shows(Stage::construction))
        return;
    for (const Locus& locus : d.loci.loci)
        if (const auto* line = std::get_if<LineLocus>(&locus); line && !d.isDrawn(line->vector))
            for (std::size_t side = 0; side < 3; ++side)
                drawAtLocus(d, *line, *sides, side);
}

bool lociShow(const Drawing& d, int vector) {
    const Eigen::Vector2d& unit = d.vectors.at(vector).unit;
    return std::any_of(d.loci.loci.begin(), d.loci.loci.end(), [&](const Locus& locus) {
        const auto* line = std::get_if<LineLocus>(&locus);
        return line && line->through.norm() == 0 && line->vector == vector && line->unit.dot(unit) > 0 &&
               std::abs(line->unit.x() * unit.y() - line->unit.y() * unit.x()) < kSameLine;
    });
}

/// A stub in the direction of a vector that is not drawn yet.
void drawRay(Drawing& d, int vector) {
    const std::string id = "ray-" + d.idOfVector(vector);
    const auto& groups = d.figure.list.groups;
    if (d.hasRay(vector) || lociShow(d, vector) ||
        std::any_of(groups.begin(), groups.end(), [&](const Group& g) { return g.id == id; }))
        return;
    const Eigen::Vector2d& unit = d.vectors.at(vector).unit;
    const Point tip = d.common() + kRay * d.factor * Point{unit.x(), -unit.y()};
    Group& g = d.add(Role::construction, id, {"Direction of " + d.vectors.at(vector).name, {}},
                     FigureShape{FigureShape::Kind::locus, vectorId(vector)});
    g.items.emplace_back(
        line(Role::construction, d.common(), tip, d.weight(d.style.constructionWidth), Dash::dashed));
    d.ask(LineEnd{d.common(), tip}, Role::label, d.style.angleSize, d.nameRuns(d.vectors.at(vector).name))
        .optional = true;
}

void drawBetween(Drawing& d, const AngleName& name) {
    const int one = indexOf(name.angle.of), two = indexOf(name.angle.with);
    const PlainVector &a = d.vectors.at(one), &b = d.vectors.at(two);
    if (!a.hasDirection || !b.hasDirection)
        return;
    for (const int vector : {one, two})
        drawRay(d, vector);
    const double reach = 2 * kRay * d.factor / d.view.scale;
    const double radians = angleOf(a.unit, b.unit);
    Corner corner = cornerBetween(d, {0, 0}, reach * a.unit, reach * b.unit, radians);
    corner.angle = name.angle;
    corner.id = "angle-" + d.idOfVector(one) + "-" + d.idOfVector(two);
    corner.title = {"Angle between the tails", shownAngleFromRadians(radians, d.sketch)};
    corner.name = &name;
    corner.isDue = d.shows(Stage::interior);
    addCorner(d, corner, d.raysInside(corner.start, corner.sweep, kRaysAt * d.factor));
}

} // namespace

void drawNamedAngles(Drawing& d) {
    if (d.options.names.empty())
        return;
    drawAtLoci(d);
    if (d.construction.parallelogram || d.triangle())
        return; // these have their own
    for (const AngleName& name : d.options.names)
        if (isBetweenRays(name.angle) && d.nameOf(name.angle) == &name)
            drawBetween(d, name);
}

} // namespace tailpoint
