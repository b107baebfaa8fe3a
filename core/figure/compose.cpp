// SPDX-License-Identifier: MIT
#include "core/figure/compose.h"

#include "core/figure/drawing.h"

namespace tailpoint {
namespace {

bool isGround(Role role) {
    return role == Role::sheet || role == Role::grid || role == Role::highlight || role == Role::region;
}

Obstacles obstaclesOf(const Drawing& d) {
    Obstacles obstacles(d.sheet, grown(d.sheet, -2 * d.factor));
    for (std::size_t i = 0; i < d.figure.list.groups.size(); ++i) {
        const Role role = d.figure.list.groups[i].role;
        const int weight = role == Role::given || role == Role::sum ? kArrowWeight : 1;
        if (role == Role::region)
            for (const Item& item : d.figure.list.groups[i].items)
                obstacles.addOutline(item);
        if (const auto& ends = d.figure.list.groups[i].ends; ends && weight == kArrowWeight)
            obstacles.addArrow(ends->front(), ends->back());
        if (!isGround(role))
            for (const Item& item : d.figure.list.groups[i].items)
                obstacles.add(item, static_cast<int>(i), weight);
    }
    obstacles.settle();
    return obstacles;
}

/// A row for each label that lost its value, or all but a letter, or everything.
std::vector<Runs> keyRows(const std::vector<LabelRequest>& requests,
                          const std::vector<std::optional<Placed>>& placed) {
    std::vector<Runs> rows;
    for (std::size_t i = 0; i < requests.size(); ++i) {
        if (requests[i].optional || (placed[i] && !placed[i]->isAbbreviated()))
            continue;
        Runs& row = rows.emplace_back();
        if (placed[i] && placed[i]->letter) {
            row = plainRuns(*placed[i]->letter + std::string("  "));
            row.front().bold = true;
        }
        const Runs full = oneLine(requests[i].full);
        row.insert(row.end(), full.begin(), full.end());
    }
    return rows;
}

void settleLabels(Drawing& d, const Placement& previous) {
    Obstacles obstacles = obstaclesOf(d);
    std::erase_if(d.labels, [&](LabelRequest& request) {
        return !keepSeen(request.anchor, d.sheet, d.reserved, d.factor);
    });
    auto placed = placeLabels(d.labels, obstacles, d.measure, previous, d.factor);
    for (std::size_t i = 0; i < placed.size(); ++i) {
        if (!placed[i])
            continue;
        Group& group = d.figure.list.groups[d.labels[i].group];
        if (placed[i]->leader) {
            placed[i]->leader->width = d.weight(0.6); // a room's least stroke; labels keep more air than that
            group.items.emplace_back(std::move(*placed[i]->leader));
        }
        placed[i]->text.part = placed[i]->isAbbreviated() ? group.part : d.labels[i].part;
        group.items.emplace_back(std::move(placed[i]->text));
        d.figure.placement.labels[d.labels[i].id] = placed[i]->place;
        d.figure.homes[d.labels[i].id] = d.labels[i].home;
    }
    drawKey(d, keyRows(d.labels, placed), obstacles);
}

} // namespace

Figure compose(const Sketch& sketch, const Solved& solved, const Construction& construction, const View& view,
               const FigureOptions& options, const TextMeasure& measure, const Placement& previous) {
    Drawing drawing(sketch, solved, construction, view, options, measure, previous);
    drawing.figure.list.title = figureTitle(drawing.sketch);
    drawing.figure.list.description = figureDescription(drawing.sketch, drawing.solved, options);
    reserveRoom(drawing);
    drawSheet(drawing);
    drawRegions(drawing);
    drawAxis(drawing);
    drawHighlight(drawing);
    drawLoci(drawing);
    drawConstruction(drawing);
    drawOtherAnswer(drawing);
    drawPermitted(drawing);
    drawCases(drawing);
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
