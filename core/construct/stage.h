// SPDX-License-Identifier: MIT
// How much of a figure is on the sheet: the worked solution says it of each step, the figure draws by it.
#pragma once

namespace tailpoint {

/// Stages of a figure, each with all that comes before it. Nothing of a later stage is on the sheet. The
/// command line and the export dialog know them by their numbers.
enum class Stage {
    given = 0,    ///< given forces, axis, common point, title block
    directions,   ///< angles of the given forces from the axis
    between,      ///< the angle between the tails of two forces
    construction, ///< parallelogram, triangle or polygon as far as given; loci, meeting points
    interior,     ///< interior angles that follow from given directions
    found,        ///< the found vectors as arrows, named
    magnitudes,   ///< found magnitudes
    triangle,     ///< the other angles of the force triangle
    all           ///< directions of the found vectors
};

} // namespace tailpoint
