// SPDX-License-Identifier: MIT
#include "core/figure/hold.h"

#include "core/figure/content.h"

#include <algorithm>
#include <cmath>

namespace tailpoint {
namespace {

constexpr double kHeldSide = 34, kHeldUp = 26; // points left beyond a tip, for its label

Content contentIn(const Seen& seen) {
    return contentOf(seen.sketch, seen.solved, seen.construction, seen.options);
}

bool isInside(const Content& content, const View& view) {
    return std::all_of(content.points.begin(), content.points.end(), [&](const Eigen::Vector2d& v) {
        const Point p = view.toSheet(v);
        return p.x >= kLeastEdge && p.y >= kLeastEdge && p.x <= view.width - kLeastEdge &&
               p.y <= view.height - kLeastEdge;
    });
}

bool isClear(const Content& content, const Seen& seen, const View& view) {
    const std::vector<Box> band =
        bandOf(seen.sketch, seen.solved, seen.construction, seen.options, view, seen.measure);
    return std::none_of(band.begin(), band.end(),
                        [&](const Box& box) { return crosses(content, view, box); });
}

/// Greatest scale at which this reach fits into this room; none is needed where nothing reaches there.
double scaleInto(double room, double reach) {
    return reach > 0 ? std::max(room, 0.0) / reach : HUGE_VAL;
}

View atScale(View view, double scale) {
    view.scale = scale;
    return view;
}

/// Where the least shift puts what reaches from `low` to `high` into [edge, size - edge].
double shiftInto(double low, double high, double edge, double size) {
    if (low < edge)
        return edge - low;
    return high > size - edge ? size - edge - high : 0;
}

} // namespace

bool isOnSheet(const Seen& seen, const View& view) {
    return isInside(contentIn(seen), view);
}

bool isWhole(const Seen& seen, const View& view) {
    const Content content = contentIn(seen);
    return isInside(content, view) && isClear(content, seen, view);
}

std::optional<double> heldScale(const Seen& seen, const View& view) {
    const Content content = contentIn(seen);
    const Bounds b = boundsOf(content);
    const double x = std::min(kHeldSide, 0.1 * view.width), y = std::min(kHeldUp, 0.1 * view.height);
    const double most =
        std::min({scaleInto(view.origin.x - x, -b.left), scaleInto(view.width - x - view.origin.x, b.right),
                  scaleInto(view.origin.y - y, b.up), scaleInto(view.height - y - view.origin.y, -b.down)});
    if (!(most > 0) || !std::isfinite(most))
        return std::nullopt;
    const double scale = niceScale(most, view.width, view.height);
    constexpr int kTurns = 6; // off the title block, if that takes no more steps than these
    View clear = atScale(view, scale);
    for (int turn = 0; turn < kTurns; ++turn, clear.scale = scaleStepOut(clear))
        if (isClear(content, seen, clear))
            return clear.scale;
    return scale;
}

double scaleStepOut(const View& view) {
    constexpr double kStep = 0.8;
    return niceScale(kStep * view.scale, view.width, view.height);
}

View broughtIn(const View& view, const std::vector<Eigen::Vector2d>& points, double edge) {
    if (points.empty())
        return view;
    Eigen::Vector2d low = points.front(), high = low;
    for (const Eigen::Vector2d& p : points) {
        low = low.cwiseMin(p);
        high = high.cwiseMax(p);
    }
    const Eigen::Vector2d reach = high - low;
    const double most =
        std::min(scaleInto(view.width - 2 * edge, reach.x()), scaleInto(view.height - 2 * edge, reach.y()));
    View in = view;
    if (most < view.scale) {
        in.scale = niceScale(most, view.width, view.height);
    }
    const Point from = in.toSheet({low.x(), high.y()}), to = in.toSheet({high.x(), low.y()});
    in.origin.x += shiftInto(from.x, to.x, edge, view.width);
    in.origin.y += shiftInto(from.y, to.y, edge, view.height);
    return in;
}

} // namespace tailpoint
