#include "core/figure/compose.h"

#include "core/figure/drawing.h"

namespace tailpoint {
namespace {

bool isGround(Role role) {
    return role == Role::sheet || role == Role::grid || role == Role::highlight;
}

Obstacles obstaclesOf(const Drawing& d) {
    Obstacles obstacles(d.sheet, grown(d.sheet, -2 * d.factor));
    for (const Group& group : d.figure.list.groups)
        if (!isGround(group.role))
            for (const Item& item : group.items)
                obstacles.add(item);
    obstacles.settle();
    return obstacles;
}

void settleLabels(Drawing& d, const Placement& previous) {
    Obstacles obstacles = obstaclesOf(d);
    auto placed = placeLabels(d.labels, obstacles, d.measure, previous, d.factor);
    for (std::size_t i = 0; i < placed.size(); ++i) {
        if (!placed[i])
            continue;
        Group& group = d.figure.list.groups[d.labels[i].group];
        if (placed[i]->leader)
            group.items.emplace_back(std::move(*placed[i]->leader));
        group.items.emplace_back(std::move(placed[i]->text));
        d.figure.placement[d.labels[i].id] = placed[i]->candidate;
    }
}

} // namespace

Figure compose(const Sketch& sketch, const Solved& solved, const Construction& construction, const View& view,
               const FigureOptions& options, const TextMeasure& measure, const Placement& previous) {
    Drawing drawing(sketch, solved, construction, view, options, measure, previous);
    reserveRoom(drawing);
    drawSheet(drawing);
    drawAxis(drawing);
    drawHighlight(drawing);
    drawLoci(drawing);
    drawConstruction(drawing);
    drawOtherAnswer(drawing);
    drawAngles(drawing);
    drawDirections(drawing);
    drawVectors(drawing);
    drawPoints(drawing);
    drawNote(drawing);
    drawTitleBlock(drawing);
    settleLabels(drawing, previous);
    return std::move(drawing.figure);
}

} // namespace tailpoint
