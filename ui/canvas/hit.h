// What lies under the pointer.
#pragma once

#include "ui/canvas/drawn.h"
#include "ui/canvas/scene.h"

#include <QPointF>
#include <QRectF>

namespace tailpoint {

/// Parts of the sheet that can be typed into.
enum class Cell { none, magnitude, direction, name, title, scale, reference, figures, otherAnswer };

struct Hit {
    enum class Kind { nothing, commonPoint, tip, body, label, cell, otherAnswer, ownTip };
    Kind kind = Kind::nothing;
    int vector = kNoVector;
    DrawnVector drawn;      ///< of a tip or a body, and of the tip of the learner's own answer
    Cell cell = Cell::none; ///< of a label or a cell
    QRectF box;             ///< of a label or a cell, logical pixels
    bool operator==(const Hit& other) const {
        return kind == other.kind && vector == other.vector && cell == other.cell;
    }
};

inline constexpr double kTipReach = 12; ///< logical pixels; the nearest tip wins
inline constexpr double kBodyReach = 7;

/// For a press: tips before labels before bodies.
Hit hitTest(const Scene& scene, QPointF at);
/// For a double click: labels and cells of the title block only.
Hit hitLabel(const Scene& scene, QPointF at);
/// Where the label of this kind stands; empty where it isn't shown.
std::optional<QRectF> labelBox(const Scene& scene, Cell cell, int vector);

} // namespace tailpoint
