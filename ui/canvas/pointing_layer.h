// SPDX-License-Identifier: MIT
// The angles that can be pointed at, while a learner looks for one: an arc each, side by side at a corner.
#pragma once

#include "ui/canvas/scene.h"
#include "ui/style/theme.h"

#include <QPointF>
#include <optional>

class QPainter;

namespace tailpoint {

/// Nothing while no angle is looked for.
void paintPointable(QPainter& painter, const Scene& scene, const Theme& theme);
/// The one whose arc is nearest to there, within reach; an index of OwnAnswer::pointable().
std::optional<std::size_t> pointableAt(const Scene& scene, QPointF at);

} // namespace tailpoint
