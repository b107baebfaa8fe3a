// SPDX-License-Identifier: MIT
// What a label belongs to, as far as it is seen. A view that is zoomed in leaves parts of the drawing off the
// sheet or under title block and note; the rule is: a label stands at the part of its thing that is seen, and
// a thing of which next to nothing is seen has no label.
#include "core/figure/labels.h"

#include <algorithm>

namespace tailpoint {
namespace {

constexpr double kLeastSeen = 14; ///< points of a stroke; a shorter one counts if all of it is seen

bool isSeen(Point p, const Box& sheet, std::span<const Box> covers) {
    return contains(sheet, p) &&
           std::none_of(covers.begin(), covers.end(), [&](const Box& box) { return contains(box, p); });
}

bool keepSeen(Shaft& shaft, const Box& sheet, std::span<const Box> covers, double factor) {
    const auto parts = visibleParts(shaft.tail, shaft.tip, sheet, covers);
    const auto longer = [](const auto& a, const auto& b) { return a[1] - a[0] < b[1] - b[0]; };
    const auto longest = std::max_element(parts.begin(), parts.end(), longer);
    if (longest == parts.end())
        return false;
    const auto [from, to] = *longest;
    const Point along = shaft.tip - shaft.tail;
    if (to - from < 1 - 1e-9 && (to - from) * length(along) < kLeastSeen * factor)
        return false;
    shaft = {shaft.tail + from * along, shaft.tail + to * along, shaft.side};
    return true;
}

bool keepSeen(const Sector& sector, const Box& sheet, std::span<const Box> covers) {
    constexpr int steps = 12;
    for (int i = 0; i <= steps; ++i)
        if (isSeen(
                onCircle(sector.centre, sector.radius, sector.startDegrees + sector.sweepDegrees * i / steps),
                sheet, covers))
            return true;
    return false;
}

} // namespace

Point homeOf(const Feature& anchor) {
    if (const auto* shaft = std::get_if<Shaft>(&anchor))
        return 0.5 * (shaft->tail + shaft->tip);
    if (const auto* sector = std::get_if<Sector>(&anchor))
        return onCircle(sector->centre, sector->radius, sector->startDegrees + sector->sweepDegrees / 2);
    if (const auto* spot = std::get_if<Spot>(&anchor))
        return spot->at;
    return std::get<LineEnd>(anchor).to;
}

bool keepSeen(Feature& anchor, const Box& sheet, std::span<const Box> covers, double factor) {
    if (auto* shaft = std::get_if<Shaft>(&anchor))
        return keepSeen(*shaft, sheet, covers, factor);
    if (const auto* sector = std::get_if<Sector>(&anchor))
        return keepSeen(*sector, sheet, covers);
    if (const auto* spot = std::get_if<Spot>(&anchor))
        return isSeen(spot->at, sheet, covers);
    return isSeen(std::get<LineEnd>(anchor).to, sheet, covers);
}

} // namespace tailpoint
