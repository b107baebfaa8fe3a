// SPDX-License-Identifier: MIT
#include "core/figure/content.h"

#include "core/figure/drawing.h"
#include "core/figure/tolerated.h"

#include <algorithm>
#include <cmath>

namespace tailpoint {
namespace {

void takeVectors(Content& content, const Vectors& vectors) {
    const Eigen::Vector2d origin(0, 0);
    for (const PlainVector& force : vectors.forces)
        if (force.complete())
            content.stroke(origin, force.vector);
    if (vectors.sum.complete())
        content.stroke(origin, vectors.sum.vector);
}

void takeConstruction(Content& content, const Construction& construction, ConstructionKind kind) {
    if (kind == ConstructionKind::none)
        return;
    if (kind == ConstructionKind::parallelogram && construction.parallelogram) {
        const auto& c = construction.parallelogram->corners;
        content.stroke(c[1], c[2]);
        content.stroke(c[3], c[2]);
        return;
    }
    const auto& corners = construction.polygon.corners;
    for (std::size_t i = 0; i + 1 < corners.size(); ++i)
        content.stroke(corners[i], corners[i + 1]);
    for (const auto* t : {&construction.triangle, &construction.otherTriangle})
        if (kind == ConstructionKind::triangle && *t)
            for (std::size_t i = 0; i < 3; ++i)
                content.stroke((*t)->corners[i], (*t)->corners[(i + 1) % 3]);
}

/// As far as they don't dwarf the figure.
void takeRegions(Content& content, const Tolerated& tolerated) {
    constexpr double kMost = 1.6; // of the farthest that there is without them
    double farthest = 0;
    for (const Eigen::Vector2d& point : content.points)
        farthest = std::max(farthest, point.norm());
    for (const tolerance::TipRegion& region : tolerated.regions)
        for (const tolerance::Outline& outline : region.outlines)
            for (const Eigen::Vector2d& point : outline)
                if (!region.open && point.norm() <= kMost * farthest)
                    content.points.push_back(point);
}

/// As long as the longest that is given a sought one may well be: so much paper is left to draw it, whatever
/// it comes to.
double roomForSought(const Vectors& given) {
    double longest = given.sum.complete() ? given.sum.magnitude : 0;
    for (const PlainVector& force : given.forces)
        longest = std::max(longest, force.complete() ? force.magnitude : 0);
    return longest;
}

/// `room`: along a line of action.
void takeLoci(Content& content, const std::vector<Locus>& loci, double room) {
    for (const Locus& locus : loci) {
        if (const auto* ray = std::get_if<LineLocus>(&locus)) {
            content.points.push_back(ray->through);
            content.points.push_back(ray->through + room * ray->unit);
            if (!ray->ray)
                content.points.push_back(ray->through - room * ray->unit);
            continue;
        }
        const auto& circle = std::get<CircleLocus>(locus);
        const Eigen::Vector2d& centre = circle.centre;
        for (const Eigen::Vector2d& way : {Eigen::Vector2d(1, 0), Eigen::Vector2d(0, 1)}) {
            content.points.push_back(centre + circle.radius * way);
            content.points.push_back(centre - circle.radius * way);
        }
    }
}

} // namespace

const ForceTriangle* aloneIn(const Solved& solved, const Construction& construction,
                             const FigureOptions& options) {
    const bool both = solved.solutions.size() > 1 && options.otherStage == Stage::all;
    if (!options.alone || both || drawnKind(options.construction, construction) != ConstructionKind::triangle)
        return nullptr;
    return options.otherOrder ? &*construction.otherTriangle : &*construction.triangle;
}

Content contentOf(const Sketch& sketch, const Solved& solved, const Construction& construction,
                  const FigureOptions& options) {
    Content content;
    if (const ForceTriangle* t = aloneIn(solved, construction, options)) {
        for (std::size_t i = 0; i < 3; ++i)
            content.stroke(t->corners[i], t->corners[(i + 1) % 3]);
        return content;
    }
    for (std::size_t s = 0; s < std::max<std::size_t>(1, solved.solutions.size()); ++s)
        takeVectors(content, vectorsOf(sketch, solved, s));
    if (tellsAnswer(options))
        for (const CaseArrow& arrow : options.cases)
            content.stroke({0, 0}, arrow.vector);
    takeConstruction(content, construction, options.construction);
    const double room = tellsAnswer(options) ? 0 : roomForSought(vectorsOf(sketch, solved, options.solution));
    if (tellsAnswer(options) && options.regions && options.tolerated)
        takeRegions(content, *options.tolerated);
    takeLoci(content, drawnLoci(solved, construction, options).loci, room);
    return content;
}

Bounds boundsOf(const Content& content) {
    Bounds b; // the common point belongs to it
    for (const Eigen::Vector2d& p : content.points) {
        b.left = std::min(b.left, p.x());
        b.right = std::max(b.right, p.x());
        b.down = std::min(b.down, p.y());
        b.up = std::max(b.up, p.y());
    }
    return b;
}

double niceScale(double most, double width, double height) {
    const double division = divisionOf({width, height, {0, 0}, most});
    const double points = std::floor(division * most / kScaleStep * (1 + 1e-9)) * kScaleStep;
    return points > 0 && std::isfinite(points / division) ? points / division : most;
}

std::vector<Box> bandOf(const Sketch& sketch, const Solved& solved, const Construction& construction,
                        const FigureOptions& options, const View& view, const TextMeasure* measure) {
    const Foot foot = footOf(sketch, solved, construction, view, options, measure);
    std::vector<Box> band;
    if (foot.block)
        band.push_back(*foot.block);
    const double f = options.style.factor;
    const Note& note = foot.note;
    const double height = note.leading * static_cast<double>(note.lines.size());
    if (!note.lines.empty())
        band.push_back({0, note.bottom - height, note.width + 14 * f, height + 3 * f});
    return band;
}

bool crosses(const Content& content, const View& view, const Box& box) {
    return std::any_of(content.strokes.begin(), content.strokes.end(), [&](const auto& stroke) {
        return meets(box, view.toSheet(stroke.first), view.toSheet(stroke.second));
    });
}

} // namespace tailpoint
