// SPDX-License-Identifier: MIT
// render/: paints a display list, and computes nothing.
#pragma once

#include "core/figure/display_list.h"
#include "ui/style/theme.h"

#include <QByteArray>
#include <QImage>
#include <QPainter>

namespace tailpoint {

/// Measures with the fonts that paint: advance widths, and the height of the very letters. Needs a
/// QGuiApplication.
class QtTextMeasure : public TextMeasure {
public:
    TextExtent measure(const std::vector<Run>& runs, Face face, double size) const override;
};

/// Sheet, grid and title block hardly ever change: the canvas caches them.
enum class Layer { everything, background, foreground };

/// Paints in the painter's own coordinates, one unit a point.
void paint(QPainter& painter, const DisplayList& list, const Theme& theme, Layer layer = Layer::everything);

/// SVG 1.1, UTF-8. `sketchJson` goes into <metadata>.
QByteArray toSvg(const DisplayList& list, const Theme& theme, const QByteArray& sketchJson);

/// `scale`: pixels a point. `transparent`: nothing behind the figure.
QImage toImage(const DisplayList& list, const Theme& theme, double scale, bool transparent = false);
/// One page that fits the figure, vectors, fonts embedded.
QByteArray toPdf(const DisplayList& list, const Theme& theme);
/// A page a figure, each of this size in points, the figure's top left corner at `at`.
QByteArray toPdf(const std::vector<DisplayList>& lists, const Theme& theme, double pageWidth,
                 double pageHeight, Point at);

} // namespace tailpoint
