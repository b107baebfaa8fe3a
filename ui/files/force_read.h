// SPDX-License-Identifier: MIT
// The forces of a file and their sum. Used by the reader of sketches alone.
#pragma once

#include "core/sketch/sketch.h"
#include "ui/files/json_at.h"

namespace tailpoint::reading {

/// Names of the units there are, for messages: "N, kN, ...".
std::string forceUnitNames(); ///< those of a sheet
std::string loadUnitNames();  ///< those that may stand beside a value
std::string angleUnitNames();

/// `sheet` has the units already; readSum wants its forces too, for the name of a sum that has none.
std::vector<Force> readForces(const At& at, const Sketch& sheet);
Force readSum(const std::optional<At>& at, const Sketch& sheet);

/// Null: to find. `sheet` has the units and g.
Magnitude readMagnitude(const At& at, const Sketch& sheet);
Direction readDirection(const At& at, AngleUnit sheet);

/// The sketch's cases; `sheet` has the units and g.
std::vector<LoadCase> readCases(const std::optional<At>& at, const Sketch& sheet);

} // namespace tailpoint::reading
