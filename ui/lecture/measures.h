// SPDX-License-Identifier: MIT
// How large things are for the last row of a room, by the height of the screen.
#pragma once

#include "core/figure/compose.h"

#include <QFont>
#include <QSize>

namespace tailpoint {

/// Least height of a capital letter, and least widths of strokes, as parts of the screen's height.
/// From the plan of the house (common practice for lecture rooms, no source).
inline constexpr double kCapital = 1.0 / 40, kStroke = 1.0 / 360, kThinStroke = 1.0 / 540;

struct Measures {
    double width = 0, height = 0;  ///< of the screen, logical pixels
    double serif = 0, sans = 0;    ///< font sizes whose capitals are just kCapital high, pixels
    double column = 0, margin = 0; ///< width of the left part, and the air around its text
    Style figure(double pixelsPerPoint) const;

    double textWidth() const { return column - 1.6 * margin; }
};

/// Needs a QGuiApplication: the fonts decide.
Measures measuresOf(QSize screen);

/// Height of a capital by the font's size.
double capitalOf(QFont font);

} // namespace tailpoint
