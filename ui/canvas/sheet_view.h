// SPDX-License-Identifier: MIT
// Where the sheet lies in the widget: the figure's view, and the way from its points to logical pixels.
#pragma once

#include "core/figure/view.h"

#include <QPointF>
#include <QRectF>
#include <QSizeF>

namespace tailpoint {

class SheetView {
public:
    const View& view() const { return m_view; }
    double pixelsPerPoint() const { return m_pixelsPerPoint; }

    /// The sheet takes this size; the common point stays where it is relative to the middle.
    void resize(QSizeF pixels, double pixelsPerPoint);
    /// Takes over origin and scale; the sheet keeps the widget's size.
    void set(const View& view);

    QPointF toPixels(Point p) const { return {p.x * m_pixelsPerPoint, p.y * m_pixelsPerPoint}; }
    QPointF toPixels(const Eigen::Vector2d& v) const { return toPixels(m_view.toSheet(v)); }
    QRectF toPixels(const Box& box) const;
    Point toPoints(QPointF p) const { return {p.x() / m_pixelsPerPoint, p.y() / m_pixelsPerPoint}; }
    Eigen::Vector2d toSketch(QPointF p) const { return m_view.toSketch(toPoints(p)); }
    /// Logical pixels in one force unit.
    double pixelsPerUnit() const { return m_view.scale * m_pixelsPerPoint; }

    /// What lies under `pixel` stays there. The scale stays within kLeastScale .. kMostScale.
    void zoomAbout(QPointF pixel, double factor);
    void panBy(QPointF pixels);

    static constexpr double kLeastScale = 1e-155, kMostScale = 1e155; ///< points per force unit

private:
    View m_view;
    double m_pixelsPerPoint = 1;
};

} // namespace tailpoint
