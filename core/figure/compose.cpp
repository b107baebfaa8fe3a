#include "core/figure/compose.h"

#include "core/figure/drawing.h"

namespace tailpoint {
namespace {

void settleLabels(Drawing& d, const Placement& previous) {
    const double inset = 3 * d.factor;
    Obstacles obstacles(grown({0, 0, d.view.width, d.view.height}, -inset));
    for (const Group& group : d.figure.list.groups) {
        if (group.role == Role::sheet || group.role == Role::grid || group.role == Role::highlight)
            continue;
        for (const Item& item : group.items)
            obstacles.add(item);
    }
    const auto placed = placeLabels(d.labels, obstacles, d.measure, previous, d.factor);
    for (std::size_t i = 0; i < placed.size(); ++i) {
        if (!placed[i])
            continue;
        Group& group = d.figure.list.groups[d.labels[i].group];
        if (placed[i]->leader)
            group.items.emplace_back(*placed[i]->leader);
        group.items.emplace_back(placed[i]->text);
        d.figure.placement[d.labels[i].id] = placed[i]->candidate;
    }
}

} // namespace

Figure compose(const Sketch& sketch, const Solved& solved, const Construction& construction, const View& view,
               const FigureOptions& options, const TextMeasure& measure, const Placement& previous) {
    Drawing drawing(sketch, solved, construction, view, options, measure);
    drawSheet(drawing);
    drawAxis(drawing);
    drawHighlight(drawing);
    drawLoci(drawing);
    drawConstruction(drawing);
    drawOtherAnswer(drawing);
    drawVectors(drawing);
    drawAngles(drawing);
    drawPoint(drawing);
    drawNote(drawing);
    drawTitleBlock(drawing);
    settleLabels(drawing, previous);
    return std::move(drawing.figure);
}

} // namespace tailpoint
