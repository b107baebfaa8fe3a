// SPDX-License-Identifier: MIT
// What lies under the pointer.
#pragma once

#include "ui/canvas/drawn.h"
#include "ui/canvas/scene.h"
#include "ui/document/sheet_edits.h"

#include <QPointF>
#include <QRectF>

namespace tailpoint {

/// Parts of the sheet that can be typed into.
enum class Cell { none, magnitude, direction, name, title, scale, reference, figures, otherAnswer };

struct Hit {
    enum class Kind { nothing, commonPoint, tip, body, label, cell, otherAnswer, ownTip, unit };
    Kind kind = Kind::nothing;
    int vector = kNoVector;
    DrawnVector drawn;            ///< of a tip or a body, and of the tip of the learner's own answer
    Cell cell = Cell::none;       ///< of a label or a cell
    QRectF box;                   ///< of a label or a cell, logical pixels
    std::optional<UnitOf> unit{}; ///< of a label, a cell or a bare unit: the unit itself is meant
    QRectF unitBox{};             ///< its letters
    bool operator==(const Hit& other) const {
        return kind == other.kind && vector == other.vector && cell == other.cell && unit == other.unit;
    }
};

/// How near is near enough, logical pixels: a target is no smaller than 24 for a pointer (WCAG 2.2, 2.5.8)
/// and 44 for a finger (2.5.5).
struct Reach {
    double point = 12; ///< to a tip or a shaft; the nearest wins
    double side = 24;  ///< least width and height of a text's target
};
inline constexpr Reach kPointerReach{}, kFingerReach{22, 44};

/// For a press: tips before labels before bodies.
Hit hitTest(const Scene& scene, QPointF at, const Reach& reach = kPointerReach);
/// For a double click: labels and cells of the title block only.
Hit hitLabel(const Scene& scene, QPointF at, const Reach& reach = kPointerReach);
/// Where the label of this kind stands; empty where it isn't shown.
std::optional<QRectF> labelBox(const Scene& scene, Cell cell, int vector);

} // namespace tailpoint
