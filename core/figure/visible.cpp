// SPDX-License-Identifier: MIT
// What is left of a long stroke on the sheet beside title block and note.
#include "core/figure/obstacles.h"

#include <algorithm>

namespace tailpoint {
namespace {

/// Directions (degrees) in which a circle crosses the rim of a box.
void addCrossings(std::vector<double>& cuts, Point centre, double radius, const Box& box) {
    const auto take = [&](double offset, bool vertical) {
        const double square = radius * radius - offset * offset;
        if (square <= 0)
            return;
        for (const double along : {std::sqrt(square), -std::sqrt(square)})
            cuts.push_back(turned(degreesOf(vertical ? Point{offset, along} : Point{along, offset})));
    };
    take(box.left - centre.x, true);
    take(box.right() - centre.x, true);
    take(box.top - centre.y, false);
    take(box.bottom() - centre.y, false);
}

bool isOutside(std::span<const Box> out, Point p) {
    return std::none_of(out.begin(), out.end(), [&](const Box& box) { return contains(box, p); });
}

} // namespace

std::vector<std::array<double, 2>> visibleParts(Point a, Point b, const Box& room, std::span<const Box> out) {
    std::vector<double> cuts;
    const auto cutAt = [&](const Box& box) {
        Point from = a, to = b;
        if (!clip(box, from, to))
            return false;
        const Point along = b - a;
        const double square = std::max(dot(along, along), 1e-300);
        cuts.push_back(dot(from - a, along) / square);
        cuts.push_back(dot(to - a, along) / square);
        return true;
    };
    std::vector<std::array<double, 2>> parts;
    if (!cutAt(room))
        return parts;
    for (const Box& box : out)
        cutAt(box);
    const double first = cuts[0], last = cuts[1];
    std::sort(cuts.begin(), cuts.end());
    for (std::size_t i = 0; i + 1 < cuts.size(); ++i) {
        const double middle = (cuts[i] + cuts[i + 1]) / 2;
        if (cuts[i + 1] > cuts[i] && middle > first && middle < last && isOutside(out, a + middle * (b - a)))
            parts.push_back({cuts[i], cuts[i + 1]});
    }
    return parts;
}

std::vector<std::array<double, 2>> visibleArcs(Point centre, double radius, const Box& room,
                                               std::span<const Box> out) {
    std::vector<double> cuts;
    addCrossings(cuts, centre, radius, room);
    for (const Box& box : out)
        addCrossings(cuts, centre, radius, box);
    const auto isSeen = [&](double degrees) {
        const Point p = onCircle(centre, radius, degrees);
        return contains(room, p) && isOutside(out, p);
    };
    std::vector<std::array<double, 2>> arcs;
    if (cuts.empty()) {
        if (isSeen(0))
            arcs.push_back({0, 360});
        return arcs;
    }
    std::sort(cuts.begin(), cuts.end());
    for (std::size_t i = 0; i < cuts.size(); ++i) {
        const double next = i + 1 < cuts.size() ? cuts[i + 1] : cuts[0] + 360;
        if (next - cuts[i] < 1e-9 || !isSeen((cuts[i] + next) / 2))
            continue;
        // Neighbouring pieces are one arc: a corner of a box beside the circle cuts nothing.
        if (!arcs.empty() && std::abs(arcs.back()[0] + arcs.back()[1] - cuts[i]) < 1e-9)
            arcs.back()[1] += next - cuts[i];
        else
            arcs.push_back({cuts[i], next - cuts[i]});
    }
    const bool whole = arcs.size() == 1 && arcs[0][1] > 360 - 1e-6;
    return whole ? std::vector<std::array<double, 2>>{{0, 360}} : arcs;
}

} // namespace tailpoint
