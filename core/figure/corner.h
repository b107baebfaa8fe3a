// SPDX-License-Identifier: MIT
// An angle between two strokes that meet: its arc, its symbol and its value. Internal to figure/.
#pragma once

#include "core/figure/drawing.h"

namespace tailpoint {

struct Corner {
    QuantityId angle;
    std::string id;
    Title title;
    Point at;
    double start, sweep, radians; ///< sweep in degrees as drawn, -180..180
    double shorter;               ///< length of the shorter leg, points
    bool doubled = false;
    const AngleName* name = nullptr;
    bool isDue = true; ///< its value may stand by now
    bool beyondAxisArcs =
        false;               ///< where there is room: inside, the arcs from the axis would split its wedge
    bool isRepeated = false; ///< the opposite corner says its value too: left out rather than led by a leader
    bool isCopy = false;     ///< an equal angle beside it has the value: the symbol is enough
};

/// Strokes that end nearer to the corner than this split no wedge, points by the figure's factor.
inline constexpr double kRaysAt = 30;

bool isRight(double radians);

/// The corner at `at` between the strokes to `u` and to `v`.
Corner cornerBetween(const Drawing& d, const Eigen::Vector2d& at, const Eigen::Vector2d& u,
                     const Eigen::Vector2d& v, double radians);
/// `splits`: strokes inside it, in the order of its sweep.
void addCorner(Drawing& d, const Corner& corner, std::vector<double> splits);

/// Angles that have a symbol before both their sides are arrows: at a line of action, between directions.
void drawNamedAngles(Drawing& d);

} // namespace tailpoint
