// SPDX-License-Identifier: MIT
// A tolerance as a file and a report say it.
#pragma once

#include "core/quantity/tolerance.h"
#include "ui/files/json_text.h"

#include <vector>

namespace tailpoint {

/// "plusMinus", "plusMinusPercent", or "plus" and "minus"; none where there is no tolerance.
std::vector<JsonMember> toleranceMembers(const std::optional<Tolerance>& tolerance);

} // namespace tailpoint
