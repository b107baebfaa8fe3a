// SPDX-License-Identifier: MIT
#pragma once

namespace tailpoint::bench {

/// Calls of operator new in this program so far.
long allocations();

} // namespace tailpoint::bench
