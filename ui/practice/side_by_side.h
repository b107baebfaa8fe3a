// SPDX-License-Identifier: MIT
// Work that is the same for many, spread over the machine's cores.
#pragma once

#include <cstddef>
#include <functional>

namespace tailpoint {

/// Calls `each` for every index below `count`, from several threads at a time, until `isCancelled` (asked
/// between two calls; empty: never). False: cancelled, and some were left out. `each` doesn't throw and keeps
/// to what belongs to its index.
bool sideBySide(std::size_t count, const std::function<void(std::size_t)>& each,
                const std::function<bool()>& isCancelled = {});

} // namespace tailpoint
