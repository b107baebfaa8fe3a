// SPDX-License-Identifier: MIT
// What of the figure lies at a place of its sheet. Units as on the display list: points, y down.
#pragma once

#include "core/figure/compose.h"

#include <optional>
#include <vector>

namespace tailpoint {

/// An arrow where the construction puts it.
struct SheetArrow {
    VectorId vector;
    Point tail, tip;
    bool otherAnswer = false;
};

/// Every arrow that compose() draws with these options, without composing: forces in the sketch's order, the
/// sum, then the other answer's. What has no length is no arrow.
std::vector<SheetArrow> arrowsOn(const Sketch& sketch, const Solved& solved, const Construction& construction,
                                 const View& view, const FigureOptions& options, const TextMeasure& measure);

/// The angle, side or locus within `reach`: an angle's arc or a label of it before any line, of these the
/// nearest. Neither arrows, but for K, nor the axis.
std::optional<FigurePart> partAt(const DisplayList& list, Point at, double reach);

/// A text that stands for something, and its box.
struct SheetLabel {
    VectorId vector;          ///< of an arrow or its direction
    bool ofDirection = false; ///< of the arc from the axis
    bool otherAnswer = false;
    Box box;
    const Text* text = nullptr; ///< in the list
};
/// The labels of arrows and of their directions, in painting order.
std::vector<SheetLabel> labelsOn(const DisplayList& list);

} // namespace tailpoint
