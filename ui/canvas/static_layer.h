// SPDX-License-Identifier: MIT
// Parts of the figure that hardly ever change, as pixmaps at the device pixel ratio, painted again only when
// they do: sheet and grid below the vectors, the title block above them. The sheet is as large as the window:
// it gets its pixmap when it is painted a second time, not for a size or a view that goes by.
#pragma once

#include "core/figure/display_list.h"
#include "ui/style/theme.h"

#include <QPainter>
#include <QPixmap>

namespace tailpoint {

class StaticLayer {
public:
    enum class Part { below, above };
    explicit StaticLayer(Part part) : m_part(part) {}

    /// In logical pixels, onto a sheet as large as `list` says.
    void paint(QPainter& painter, const DisplayList& list, const Theme& theme, double pixelsPerPoint,
               double devicePixelRatio);
    /// How often a pixmap was painted, for tests.
    int renewals() const { return m_renewals; }

private:
    bool takes(const Group& group) const;
    bool holds(const DisplayList& list, ThemeName theme, double scale, double ratio) const;
    void note(const DisplayList& list, const Theme& theme, double scale, double ratio);
    void render(const Theme& theme);
    void paintSheet(QPainter& painter, const Theme& theme) const;

    Part m_part;
    QPixmap m_pixmap;
    DisplayList m_list; ///< what the pixmap shows
    QPointF m_corner;   ///< where it lies, logical pixels
    ThemeName m_theme = ThemeName::paper;
    double m_scale = 0, m_ratio = 0;
    int m_renewals = 0;
};

} // namespace tailpoint
