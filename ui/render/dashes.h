// SPDX-License-Identifier: MIT
// Line types after ISO 128-2, as lengths of dash and gap in line widths. One table for painter and SVG.
#pragma once

#include "core/figure/display_list.h"

#include <span>

namespace tailpoint {

std::span<const double> patternOf(Dash dash); ///< empty: solid

} // namespace tailpoint
