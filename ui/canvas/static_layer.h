// Sheet, grid, axis and title block as a pixmap at the device pixel ratio: painted again only when they
// change.
#pragma once

#include "core/figure/display_list.h"
#include "ui/style/theme.h"

#include <QPainter>
#include <QPixmap>

namespace tailpoint {

class StaticLayer {
public:
    void paint(QPainter& painter, const DisplayList& list, const Theme& theme, QSize pixels,
               double pixelsPerPoint, double devicePixelRatio);
    /// How often the layer was painted anew, for tests.
    int renewals() const { return m_renewals; }

private:
    bool holds(const std::vector<Group>& groups, ThemeName theme, QSize device, double scale) const;

    QPixmap m_pixmap;
    std::vector<Group> m_groups;
    ThemeName m_theme = ThemeName::paper;
    double m_scale = 0;
    int m_renewals = 0;
};

} // namespace tailpoint
