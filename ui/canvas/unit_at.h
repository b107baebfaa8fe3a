// SPDX-License-Identifier: MIT
// Where the unit behind a value stands on the sheet: it is clicked to be changed.
#pragma once

#include "ui/canvas/scene.h"
#include "ui/document/sheet_edits.h"

#include <QRectF>

namespace tailpoint {

/// The sheet's unit behind a value of the figure, in logical pixels.
struct UnitOnSheet {
    UnitOf of = UnitOf::force;
    QRectF box; ///< of the very letters
    /// What can be pressed: no lower and no narrower than `side`, and none of the number is taken for it.
    QRectF target(double side) const;
};

/// Of a label or a cell of the title block, on its first line; empty where no value of the sheet's units
/// stands there.
std::optional<UnitOnSheet> unitOf(const Scene& scene, const Text& text);

} // namespace tailpoint
