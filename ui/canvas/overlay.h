// SPDX-License-Identifier: MIT
// What the canvas paints besides the figure: it belongs to the hand, not to the sheet, and goes into no
// export.
#pragma once

#include "ui/canvas/gesture.h"
#include "ui/style/theme.h"

#include <QPainter>

namespace tailpoint {

/// How a part of the figure is marked: a quiet ground, and an edge that is seen.
struct Highlight {
    QColor ground, edge;
    double width = 1.6; ///< of the edge, logical pixels
};
Highlight selectedHighlight(const Theme& theme); ///< and what is lit from the panel
Highlight hoverHighlight(const Theme& theme);

/// Below the figure: a band under a vector. The edges first, then the grounds, where several join.
void paintBandEdge(QPainter& painter, const SheetView& sheet, const DrawnVector& drawn,
                   const Highlight& marking);
void paintBandGround(QPainter& painter, const SheetView& sheet, const DrawnVector& drawn,
                     const Highlight& marking);
/// Above it: the ring on a tip that can be dragged.
void paintHandle(QPainter& painter, const SheetView& sheet, const DrawnVector& drawn, const Theme& theme,
                 double factor = 1);
/// The quiet mark of what a drag has snapped to, or where one from here would lead: the ray, the circle.
void paintSnapMark(QPainter& painter, const SheetView& sheet, const Feedback& feedback, const Theme& theme);
/// The readout beside the pointer.
void paintReadout(QPainter& painter, const QRectF& place, const Feedback& feedback, const Theme& theme,
                  const QFont& font);

QSizeF readoutSize(const Feedback& feedback, const QFont& font);
/// Beside the pointer: inside `bounds` whatever the pointer does, off the tip, away from the shaft if there
/// is room, and off the force's own label.
QRectF readoutPlace(QSizeF size, QPointF pointer, QPointF tail, QPointF tip, const QRectF& bounds,
                    const QRectF& label = {});

} // namespace tailpoint
