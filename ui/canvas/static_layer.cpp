#include "ui/canvas/static_layer.h"

#include "ui/render/render.h"

#include <algorithm>

namespace tailpoint {

namespace {

bool isStatic(const Group& group) {
    return group.role == Role::sheet || group.role == Role::grid || group.role == Role::axis ||
           group.role == Role::titleblock;
}

} // namespace

bool StaticLayer::holds(const std::vector<Group>& groups, ThemeName theme, QSize device, double scale) const {
    if (m_pixmap.size() != device || m_theme != theme || m_scale != scale) {
        return false;
    }
    auto mine = m_groups.begin();
    for (const Group& group : groups) {
        if (isStatic(group) && (mine == m_groups.end() || !(*mine++ == group))) {
            return false;
        }
    }
    return mine == m_groups.end();
}

void StaticLayer::paint(QPainter& painter, const DisplayList& list, const Theme& theme, QSize pixels,
                        double pixelsPerPoint, double devicePixelRatio) {
    const QSize device = (QSizeF(pixels) * devicePixelRatio).toSize();
    if (!holds(list.groups, theme.name, device, pixelsPerPoint)) {
        m_pixmap = QPixmap(device);
        m_pixmap.setDevicePixelRatio(devicePixelRatio);
        m_pixmap.fill(theme.sheet);
        QPainter onto(&m_pixmap);
        onto.setRenderHint(QPainter::Antialiasing);
        onto.scale(pixelsPerPoint, pixelsPerPoint);
        tailpoint::paint(onto, list, theme, Layer::background);
        m_groups.clear();
        std::copy_if(list.groups.begin(), list.groups.end(), std::back_inserter(m_groups), isStatic);
        m_theme = theme.name;
        m_scale = pixelsPerPoint;
        ++m_renewals;
    }
    painter.drawPixmap(0, 0, m_pixmap);
}

} // namespace tailpoint
