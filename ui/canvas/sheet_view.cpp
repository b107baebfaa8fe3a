// SPDX-License-Identifier: MIT
#include "ui/canvas/sheet_view.h"

#include <algorithm>

namespace tailpoint {

void SheetView::resize(QSizeF pixels, double pixelsPerPoint) {
    const double width = pixels.width() / pixelsPerPoint, height = pixels.height() / pixelsPerPoint;
    m_view.origin.x += (width - m_view.width) / 2;
    m_view.origin.y += (height - m_view.height) / 2;
    m_view.width = width;
    m_view.height = height;
    m_pixelsPerPoint = pixelsPerPoint;
}

void SheetView::set(const View& view) {
    m_view.origin = view.origin;
    m_view.scale = std::clamp(view.scale, kLeastScale, kMostScale);
}

QRectF SheetView::toPixels(const Box& box) const {
    return {toPixels(Point{box.left, box.top}), QSizeF(box.width, box.height) * m_pixelsPerPoint};
}

void SheetView::zoomAbout(QPointF pixel, double factor) {
    const Point fixed = toPoints(pixel);
    const double scale = std::clamp(m_view.scale * factor, kLeastScale, kMostScale);
    const double ratio = scale / m_view.scale;
    m_view.origin = {fixed.x + (m_view.origin.x - fixed.x) * ratio,
                     fixed.y + (m_view.origin.y - fixed.y) * ratio};
    m_view.scale = scale;
}

void SheetView::panBy(QPointF pixels) {
    const Point by = toPoints(pixels);
    m_view.origin = {m_view.origin.x + by.x, m_view.origin.y + by.y};
}

} // namespace tailpoint
