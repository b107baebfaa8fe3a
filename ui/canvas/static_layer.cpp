// SPDX-License-Identifier: MIT
#include "ui/canvas/static_layer.h"

#include "ui/render/render.h"

#include <algorithm>
#include <cmath>

namespace tailpoint {

namespace {

/// The box that encloses every path of the groups, points.
QRectF extentOf(const std::vector<Group>& groups) {
    QRectF extent;
    for (const Group& group : groups) {
        for (const Item& item : group.items) {
            const Path* path = std::get_if<Path>(&item);
            for (std::size_t i = 0; path != nullptr && i < path->points.size(); ++i) {
                const Point p = path->points[i];
                extent |= QRectF(p.x - path->width, p.y - path->width, 2 * path->width, 2 * path->width);
            }
        }
    }
    return extent;
}

/// Grown to whole device pixels, so that the pixmap lies where it would have been painted.
QRectF onDevicePixels(const QRectF& box, double ratio) {
    const QPointF from(std::floor(box.left() * ratio) / ratio, std::floor(box.top() * ratio) / ratio);
    const QPointF to(std::ceil(box.right() * ratio) / ratio, std::ceil(box.bottom() * ratio) / ratio);
    return {from, to};
}

} // namespace

bool StaticLayer::takes(const Group& group) const {
    return m_part == Part::above
               ? group.role == Role::titleblock
               : group.role == Role::sheet || group.role == Role::grid;
}

bool StaticLayer::holds(const DisplayList& list, ThemeName theme, double scale, double ratio) const {
    if (m_theme != theme || m_scale != scale || m_ratio != ratio || m_list.width != list.width ||
        m_list.height != list.height) {
        return false;
    }
    auto mine = m_list.groups.begin();
    for (const Group& group : list.groups) {
        if (takes(group) && (mine == m_list.groups.end() || !(*mine++ == group))) {
            return false;
        }
    }
    return mine == m_list.groups.end();
}

void StaticLayer::renew(const DisplayList& list, const Theme& theme, double scale, double ratio) {
    m_list = {list.width, list.height, {}, {}, {}};
    std::copy_if(list.groups.begin(), list.groups.end(), std::back_inserter(m_list.groups),
                 [this](const Group& group) { return takes(group); });
    const QRectF sheet(0, 0, list.width, list.height);
    const QRectF extent = m_part == Part::below ? sheet : extentOf(m_list.groups) & sheet;
    const QRectF box = onDevicePixels({extent.topLeft() * scale, extent.size() * scale}, ratio);
    m_corner = box.topLeft();
    m_pixmap = QPixmap((box.size() * ratio).toSize());
    m_pixmap.setDevicePixelRatio(ratio);
    m_pixmap.fill(m_part == Part::below ? theme.sheet : QColor(Qt::transparent));
    if (!m_pixmap.isNull()) {
        QPainter onto(&m_pixmap);
        onto.translate(-m_corner);
        onto.scale(scale, scale);
        tailpoint::paint(onto, m_list, theme);
    }
    m_theme = theme.name;
    m_scale = scale;
    m_ratio = ratio;
    ++m_renewals;
}

void StaticLayer::paint(QPainter& painter, const DisplayList& list, const Theme& theme, double pixelsPerPoint,
                        double devicePixelRatio) {
    if (!holds(list, theme.name, pixelsPerPoint, devicePixelRatio)) {
        renew(list, theme, pixelsPerPoint, devicePixelRatio);
    }
    painter.drawPixmap(m_corner, m_pixmap);
}

} // namespace tailpoint
