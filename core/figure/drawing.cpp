#include "core/figure/drawing.h"

namespace tailpoint {

Drawing::Drawing(const Sketch& sketch_, const Solved& solved_, const Construction& construction_,
                 const View& view_, const FigureOptions& options_, const TextMeasure& measure_)
    : sketch(sketch_), solved(solved_), construction(construction_), view(view_), options(options_),
      measure(measure_), vectors(vectorsOf(sketch_, solved_, options_.solution)),
      stage(options_.stage < 0 ? stages::all : options_.stage), factor(options_.style.factor) {
    figure.list.width = view.width;
    figure.list.height = view.height;
    figure.list.title = figureTitle(sketch);
    figure.list.description = figureDescription(sketch, solved, options.solution);
}

Group& Drawing::add(Role role, std::string id, std::string title, int vector) {
    Group& group = figure.list.groups.emplace_back();
    group.role = role;
    group.id = std::move(id);
    group.title = std::move(title);
    group.vector = vector;
    return group;
}

void Drawing::ask(Anchoring anchor, Role ink, double size, std::vector<Run> full, std::vector<Run> brief,
                  bool optional) {
    LabelRequest request;
    request.group = figure.list.groups.size() - 1;
    request.id = figure.list.groups.back().id;
    request.anchor = anchor;
    request.ink = ink;
    request.size = size * factor;
    request.full = std::move(full);
    request.brief = std::move(brief);
    request.optional = optional;
    labels.push_back(std::move(request));
}

bool Drawing::isDrawn(const PlainVector& vector) const {
    return vector.complete() && vector.magnitude > 0 && (!vector.found() || shows(stages::found));
}

std::optional<double> Drawing::referred(int index) const {
    if (answered()) {
        const Solution& s = solved.solutions[options.solution];
        return index == kSumIndex ? s.sum.direction : s.forces[static_cast<std::size_t>(index)].direction;
    }
    const Force& force = index == kSumIndex ? sketch.sum : sketch.forces[static_cast<std::size_t>(index)];
    return referredDirection(force.direction, sketch);
}

std::string Drawing::idOfVector(int index) const {
    return index == kSumIndex ? "sum" : idOf("force", vectors.at(index).name);
}

ConstructionKind Drawing::kind() const {
    switch (options.construction) {
    case ConstructionKind::none:
        return ConstructionKind::none;
    case ConstructionKind::parallelogram:
        return construction.parallelogram ? ConstructionKind::parallelogram : ConstructionKind::polygon;
    case ConstructionKind::triangle:
        return construction.triangle ? ConstructionKind::triangle : ConstructionKind::polygon;
    case ConstructionKind::polygon:
        break;
    }
    return ConstructionKind::polygon;
}

} // namespace tailpoint
