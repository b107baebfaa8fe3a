// SPDX-License-Identifier: MIT
#pragma once

#include "core/figure/display_list.h"
#include "ui/style/theme.h"

#include <QPainterPath>
#include <QPen>
#include <QPixmap>
#include <QWidget>
#include <functional>
#include <vector>

namespace tailpoint::bench {

/// One picture as raw QPainter material, in pixels: nothing is left to compute but the painting.
struct Strokes {
    struct Shape {
        QPen pen;
        QBrush brush;
        QPainterPath path;
        std::vector<QPointF> points; ///< straight pieces; empty: `path`
        bool closed = false;
    };
    struct Words {
        QPointF at;
        QFont font;
        QColor colour;
        QString text;
        QRectF halo; ///< empty: none
        QColor haloColour;
    };
    std::vector<std::variant<Shape, Words>> items;
};

/// The strokes of `list` at this many pixels a point: those of the background (sheet, grid, axis, title
/// block) or the others.
Strokes strokesOf(const DisplayList& list, const Theme& theme, double pixelsPerPoint, bool background);

/// The floor of a frame: a plain widget that paints ready strokes and texts, and nothing else. `cached` keeps
/// the background in a pixmap; else it is painted anew like the rest.
class PlainSheet : public QWidget {
public:
    explicit PlainSheet(bool cached);
    void take(const Strokes& background, const Strokes& foreground, const QColor& sheet);

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    bool m_cached;
    Strokes m_background, m_foreground;
    QColor m_sheet;
    QPixmap m_layer;
};

} // namespace tailpoint::bench
