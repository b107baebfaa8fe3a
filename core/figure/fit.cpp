// SPDX-License-Identifier: MIT
// A view that shows the whole construction, with room for labels, title block and note.
#include "core/figure/content.h"

#include <algorithm>

namespace tailpoint {
namespace {

/// Room for labels around the drawing, points.
constexpr double kSideMargin = 58, kUpMargin = 40;
constexpr double kLineRoom = 130; ///< along a line of action that stands for its vector, points
constexpr double kEmptyDivision = 15 * kScaleStep / 50; ///< points per unit on a sheet with nothing to fit

/// Points that the arcs at the common point need to the right, up, left and down of it.
using ArcRoom = std::array<double, 4>;

ArcRoom arcRoomOf(const Sketch& sketch, const Vectors& vectors, const FigureOptions& options) {
    ArcRoom room{};
    const std::size_t arcs = vectors.forces.size() + 1;
    if (!options.angles || vectors.forces.size() > kMostAxisArcs)
        return room;
    const double reach = (62 + 13 * static_cast<double>(arcs)) * options.style.factor;
    const auto consider = [&](const PlainVector& v) {
        if (!v.hasDirection || (v.hasMagnitude && v.magnitude == 0) ||
            (!v.hasMagnitude && tellsAnswer(options)))
            return;
        const double turn = turned(degreesOf(v.unit) - sketch.reference.axisDegrees);
        const double sense = turn > 180 ? -1 : 1, sweep = turn > 180 ? 360 - turn : turn;
        const std::array<double, 4> along{v.unit.x(), v.unit.y(), -v.unit.x(), -v.unit.y()};
        for (std::size_t way = 0; way < 4; ++way)
            if (turned(sense * (90.0 * static_cast<double>(way) - sketch.reference.axisDegrees)) < sweep)
                room[way] = reach;
            else if (!v.hasMagnitude) // a line of action, with its name
                room[way] = std::max(room[way], along[way] * kLineRoom * options.style.factor);
    };
    for (const PlainVector& force : vectors.forces)
        consider(force);
    consider(vectors.sum);
    return room;
}

/// Greatest scale at which max(low * scale, lowRoom) + max(high * scale, highRoom) fits `room`.
double scaleFor(double low, double high, double lowRoom, double highRoom, double room) {
    const double both = room / (low + high);
    if (low * both >= lowRoom && high * both >= highRoom)
        return both;
    const double lowFixed = (room - lowRoom) / high, highFixed = (room - highRoom) / low;
    if (low * both < lowRoom && low * lowFixed <= lowRoom)
        return std::max(lowFixed, both / 3);
    return std::max(highFixed, both / 3);
}

/// Fits the bounds and the arcs into a part of the sheet.
View viewInto(const Box& room, const Bounds& b, const ArcRoom& arcs, double width, double height) {
    double scale = kEmptyDivision;
    if (b.right - b.left > 0 || b.up - b.down > 0) {
        const double x =
            b.right - b.left > 0 ? scaleFor(-b.left, b.right, arcs[2], arcs[0], room.width) : 1e300;
        const double y = b.up - b.down > 0 ? scaleFor(b.up, -b.down, arcs[1], arcs[3], room.height) : 1e300;
        scale = niceScale(std::min(x, y), width, height);
    }
    const auto middle = [](double from, double size, double low, double high) {
        return from + (size - low - high) / 2 + low;
    };
    View view{width, height, {}, scale};
    view.origin.x =
        middle(room.left, room.width, std::max(-b.left * scale, arcs[2]), std::max(b.right * scale, arcs[0]));
    view.origin.y =
        middle(room.top, room.height, std::max(b.up * scale, arcs[1]), std::max(-b.down * scale, arcs[3]));
    return view;
}

/// Does the drawing keep clear of the title block, arcs and their values included?
bool isClear(const View& view, const Content& content, const ArcRoom& arcs, const Box& box) {
    const double right = arcs[0] > 0 ? arcs[0] : 0, down = arcs[3] > 0 ? arcs[3] : 0;
    if (std::max(right, down) > 0 && view.origin.x + std::max(right, down) > box.left &&
        view.origin.y + down > box.top)
        return false;
    return !crosses(content, view, box);
}

Box roomOf(double width, double height, double f) {
    const double x = std::min(kSideMargin * f, 0.16 * width), y = std::min(kUpMargin * f, 0.14 * height);
    return {x, y, width - 2 * x, height - 2 * y};
}

/// The largest drawing above all of these boxes, or to the left of them.
template <class Clear>
View viewBeside(const std::vector<Box>& boxes, const Box& all, const Bounds& bounds, const ArcRoom& arcs,
                const View& sheet, const Clear& clear) {
    double top = sheet.height, left = sheet.width;
    for (const Box& box : boxes) {
        top = std::min(top, box.top);
        left = std::min(left, box.left);
    }
    Box above = all, beside = all;
    above.height = std::max(top - all.top, 0.2 * sheet.height);
    beside.width = left - all.left;
    View best = viewInto(above, bounds, arcs, sheet.width, sheet.height);
    if (!clear(best)) // the arcs do without their room
        best = viewInto(above, bounds, {}, sheet.width, sheet.height);
    if (beside.width > 0.2 * sheet.width)
        if (const View other = viewInto(beside, bounds, arcs, sheet.width, sheet.height);
            other.scale > best.scale && clear(other))
            best = other;
    return best;
}

} // namespace

View fittedView(const Sketch& sketch, const Solved& solved, const Construction& construction,
                const FigureOptions& options, double width, double height, const TextMeasure* measure) {
    width = std::max(width, 1.0);
    height = std::max(height, 1.0);
    const Content content = contentOf(sketch, solved, construction, options);
    const Bounds bounds = boundsOf(content);

    const double f = options.style.factor;
    // Values stand out to the margin as labels do: of the arcs' room the margin is already there.
    const ArcRoom wanted = aloneIn(solved, construction, options)
                               ? ArcRoom{}
                               : arcRoomOf(sketch, vectorsOf(sketch, solved, options.solution), options);
    ArcRoom arcs = wanted;
    for (std::size_t way = 0; way < 4; ++way)
        arcs[way] = std::clamp(arcs[way] - (way % 2 == 0 ? kSideMargin : kUpMargin) * f, 0.0,
                               0.3 * std::min(width, height));
    const Box all = roomOf(width, height, f);
    View best = viewInto(all, bounds, arcs, width, height);
    // Title block and note must not be drawn over. They depend on the scale, so the drawing that keeps clear
    // of those that it has is looked for in a few turns.
    std::vector<Box> below;
    constexpr int turns = 3;
    for (int turn = 0; turn < turns; ++turn) {
        for (const Box& box : bandOf(sketch, solved, construction, options, best, measure))
            below.push_back(grown(box, 12 * f));
        const auto clear = [&](const View& view) {
            return std::all_of(below.begin(), below.end(),
                               [&](const Box& box) { return isClear(view, content, wanted, box); });
        };
        if (clear(best))
            break;
        best = viewBeside(below, all, bounds, arcs, best, clear);
    }
    return best;
}

} // namespace tailpoint
