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
    return m_part == Part::above ? group.role == Role::titleblock
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

void StaticLayer::note(const DisplayList& list, const Theme& theme, double scale, double ratio) {
    m_list = {list.width, list.height, {}, {}, {}};
    std::copy_if(list.groups.begin(), list.groups.end(), std::back_inserter(m_list.groups),
                 [this](const Group& group) { return takes(group); });
    m_theme = theme.name;
    m_scale = scale;
    m_ratio = ratio;
    m_pixmap = {};
}

void StaticLayer::render(const Theme& theme) {
    const QRectF sheet(0, 0, m_list.width, m_list.height);
    const QRectF extent = m_part == Part::below ? sheet : extentOf(m_list.groups) & sheet;
    const QRectF box = onDevicePixels({extent.topLeft() * m_scale, extent.size() * m_scale}, m_ratio);
    m_corner = box.topLeft();
    m_pixmap = QPixmap((box.size() * m_ratio).toSize());
    m_pixmap.setDevicePixelRatio(m_ratio);
    m_pixmap.fill(m_part == Part::below ? theme.sheet : QColor(Qt::transparent));
    if (!m_pixmap.isNull()) {
        QPainter onto(&m_pixmap);
        onto.translate(-m_corner);
        onto.scale(m_scale, m_scale);
        tailpoint::paint(onto, m_list, theme);
    }
    ++m_renewals;
}

/// At once, as it would be painted into the pixmap: it has no words, which can look otherwise there.
void StaticLayer::paintSheet(QPainter& painter, const Theme& theme) const {
    painter.save();
    const QSizeF size(m_list.width * m_scale, m_list.height * m_scale);
    painter.fillRect(onDevicePixels({QPointF(), size}, m_ratio), theme.sheet);
    painter.scale(m_scale, m_scale);
    tailpoint::paint(painter, m_list, theme);
    painter.restore();
}

void StaticLayer::paint(QPainter& painter, const DisplayList& list, const Theme& theme, double pixelsPerPoint,
                        double devicePixelRatio) {
    const bool isSame = holds(list, theme.name, pixelsPerPoint, devicePixelRatio);
    if (!isSame) {
        note(list, theme, pixelsPerPoint, devicePixelRatio);
    }
    if (!isSame && m_part == Part::below) {
        return paintSheet(painter, theme);
    }
    if (m_pixmap.isNull()) {
        render(theme);
    }
    painter.drawPixmap(m_corner, m_pixmap);
}

} // namespace tailpoint
