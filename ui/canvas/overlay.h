// What the canvas paints besides the figure: it belongs to the hand, not to the sheet, and goes into no
// export.
#pragma once

#include "ui/canvas/gesture.h"
#include "ui/style/theme.h"

#include <QPainter>

namespace tailpoint {

/// Below the figure: a band under a vector.
void paintBand(QPainter& painter, const SheetView& sheet, const DrawnVector& drawn, const QColor& colour);
/// Above it: the ring on a tip that can be dragged.
void paintHandle(QPainter& painter, const SheetView& sheet, const DrawnVector& drawn, const Theme& theme,
                 double factor = 1);
/// The quiet mark of what a drag has snapped to: the ray, the circle.
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
