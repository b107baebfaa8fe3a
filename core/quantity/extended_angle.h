// SPDX-License-Identifier: MIT
// Sine and cosine of an angle that was itself computed in extended precision: lines of calculation.
#pragma once

#include "core/quantity/angle.h"

namespace tailpoint {

/// As cosSin() (core/quantity/angle.h), exact reduction and exact values included; each by itself, for a line
/// of calculation has one of them.
long double sinExtended(long double value, AngleUnit unit);
long double cosExtended(long double value, AngleUnit unit);

} // namespace tailpoint
