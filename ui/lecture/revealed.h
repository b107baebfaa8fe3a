// SPDX-License-Identifier: MIT
// What a line of the lecture has revealed, and what is still hidden: no value stands on the sheet before it
// is read out, whatever the stage of the figure. By ids: two quantities may well have the same value.
#pragma once

#include "ui/lecture/plan.h"

namespace tailpoint {

/// For each line of each stop the results that come later and were not given.
void markHidden(std::vector<Stop>& stops, const Sketch& sketch);

} // namespace tailpoint
