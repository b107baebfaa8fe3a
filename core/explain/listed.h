// SPDX-License-Identifier: MIT
// Lists and counts in running text. Internal to explain/.
#pragma once

#include "core/explain/wording.h"

namespace tailpoint::explaining {

/// "two" to "twelve" in words, beyond that in digits.
Prose counted(const Voice& voice, int value);
/// "P", "P and Q", "P, Q and S".
Prose listed(const Voice& voice, std::vector<Prose> items);

} // namespace tailpoint::explaining
