// SPDX-License-Identifier: MIT
// From sketch coordinates (force unit, y up, common point at the origin) to the sheet (points, y down).
#pragma once

#include "core/figure/display_list.h"

#include <Eigen/Core>

#include <optional>

namespace tailpoint {

struct View {
    double width = 720, height = 480; ///< sheet, points
    Point origin{360, 240};           ///< where the common point lies
    double scale = 1;                 ///< points per force unit

    Point toSheet(const Eigen::Vector2d& v) const {
        return {origin.x + scale * v.x(), origin.y - scale * v.y()};
    }
    Eigen::Vector2d toSketch(Point p) const { return {(p.x - origin.x) / scale, (origin.y - p.y) / scale}; }
    bool operator==(const View&) const = default;
};

/// Force units in one grid division at this view: 1, 2 or 5 times a power of ten (written exactly).
double divisionOf(const View& view);
/// The scale at which one division is this many force units and one centimetre wide; nothing where no
/// division is (it is not 1, 2 or 5 times a power of ten).
std::optional<double> scaleOfDivision(double division);

} // namespace tailpoint
