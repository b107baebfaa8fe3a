// SPDX-License-Identifier: MIT
// Steps of a solution without what is said beside their lines. Internal to practice/.
#pragma once

#include "core/practice/faded.h"

namespace tailpoint::practising {

/// Takes out what a step says beside its workings.
void silence(Step& step);
/// One of the workings is of that step.
bool isAmong(const std::vector<WorkingPlace>& places, std::size_t step);

} // namespace tailpoint::practising
