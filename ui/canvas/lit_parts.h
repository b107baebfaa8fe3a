// SPDX-License-Identifier: MIT
// What a step of the solution speaks of, lit on the sheet; and the way back, from a place on the sheet to the
// part that stands there.
#pragma once

#include "core/construct/figure_part.h"
#include "ui/canvas/overlay.h"
#include "ui/canvas/scene.h"

namespace tailpoint {

/// Under the figure, logical pixels. A part that isn't drawn lights nothing.
void paintLit(QPainter& painter, const Scene& scene, const std::vector<FigurePart>& parts,
              const Highlight& marking);

/// The arrow, angle, side or locus under the pointer; empty: none. Arrows before angles before lines.
std::optional<FigurePart> partAt(const Scene& scene, QPointF at);

} // namespace tailpoint
