// The handout's texts and formulas set in type, in the order of the page. Internal to handout/.
#pragma once

#include "ui/handout/handout_pages.h"

namespace tailpoint {

/// Qt 6.4 rounds fonts to whole pixels: everything is set this much larger, and the painter is scaled back.
inline constexpr double kLayoutScale = 8;

int handoutResolution();
double unitsInPoint(); ///< layout units: 1 / (kLayoutScale * resolution) inch
QFont handoutFont(double points, int weight = QFont::Normal);

/// `width` of the column, layout units.
std::vector<HandoutPages::Kept> handoutGroups(const Handout& handout, const DisplayList& figure,
                                              double width);

/// The number of a step in its ring, on the title's baseline.
void paintStepNumber(QPainter& painter, int number, QPointF baseline);

} // namespace tailpoint
