// What has been said by a line of the lecture, and what has not: no value stands on the sheet before it is
// read out, whatever the stage of the figure.
#pragma once

#include "ui/lecture/plan.h"

namespace tailpoint {

/// For each line of each stop the results that come later and were not given.
void markUnsaid(std::vector<Stop>& stops);

} // namespace tailpoint
