// SPDX-License-Identifier: MIT
// Strokes and fills read back from an SVG of anybody's making: what a second program understood of a figure.
#pragma once

#include "core/figure/geometry.h"

#include <QByteArray>
#include <QColor>
#include <vector>

namespace tailpoint::testing {

struct Trace {
    std::vector<Point> points; ///< curves as short chords; points of 1/72 inch, y down
    QColor stroke, fill;       ///< invalid: none
    double width = 0;          ///< of the stroke
    std::vector<double> dash;  ///< lengths of dash and gap, points; empty: solid
};

/// Paths, lines, circles, rectangles and polygons outside <defs>, with all transforms applied.
std::vector<Trace> tracesOf(const QByteArray& svg);

} // namespace tailpoint::testing
