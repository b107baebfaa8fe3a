// SPDX-License-Identifier: MIT
// A view that holds still: the common point stays where it is on the sheet, and the scale changes only as far
// as the figure needs. The view that starts afresh is fittedView() (compose.h).
#pragma once

#include "core/figure/compose.h"

namespace tailpoint {

/// What is looked at.
struct Seen {
    const Sketch& sketch;
    const Solved& solved;
    const Construction& construction;
    FigureOptions options;
    const TextMeasure* measure = nullptr; ///< without one title block and note are estimated
};

/// Does the whole figure lie on the sheet, its tips kLeastEdge from the edge?
bool isOnSheet(const Seen& seen, const View& view);
/// The same, and off title block and note.
bool isWhole(const Seen& seen, const View& view);
inline constexpr double kLeastEdge = 6; ///< points

/// The greatest scale, with a division of a length that can be said, at which the figure is whole around a
/// common point that stays; a little more room than kLeastEdge is left for labels. Nothing where the figure
/// reaches to a side on which the common point leaves no room, or where there is nothing to show.
std::optional<double> heldScale(const Seen& seen, const View& view);

/// The scale one step out from this one, about a fifth less: a division of a length that can be said.
double scaleStepOut(const View& view);

/// Moved by as little as brings these points (sketch coordinates) onto the sheet, `edge` points from its
/// edge; a smaller scale only where there is no room for all of them.
View broughtIn(const View& view, const std::vector<Eigen::Vector2d>& points, double edge);

} // namespace tailpoint
