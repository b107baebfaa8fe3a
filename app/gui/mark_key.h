// SPDX-License-Identifier: MIT
// The verb `mark` on a class whose students had questions of their own.
#pragma once

#include "app/arguments.h"

namespace tailpoint {

/// Marks the table of --answers by the sheet's folder of --key; the exit status, with what is wrong already
/// said.
int markByKey(const Arguments& arguments);

/// What is wrong with the other options beside --key; empty: nothing.
QString clashWithKey(const Arguments& arguments);

} // namespace tailpoint
