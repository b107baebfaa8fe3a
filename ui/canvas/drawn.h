// SPDX-License-Identifier: MIT
// Where the vectors stand on the sheet: what can be hit, dragged and lit.
#pragma once

#include "core/solve/solve.h"

#include <Eigen/Core>
#include <QRectF>
#include <vector>

namespace tailpoint {

class Scene;

/// One arrow in sketch coordinates, where the construction puts it. Ghosts are the other answer.
struct DrawnVector {
    int vector = kNoVector;
    Eigen::Vector2d tail{0, 0}, tip{0, 0};
    bool ghost = false;
};

/// Every vector that is drawn, in the sketch's order, the sum last, then the ghosts.
std::vector<DrawnVector> drawnVectors(const Scene& scene);

/// The one with this index; null where it isn't drawn.
const DrawnVector* drawnOf(const std::vector<DrawnVector>& drawn, int vector);

/// Is the common point or a part of an arrow inside these pixels?
bool isSeen(const Scene& scene, const QRectF& pixels);

} // namespace tailpoint
