// SPDX-License-Identifier: MIT
// A table beside a solution, under a heading of its own.
#pragma once

#include "core/explain/explain.h"

namespace tailpoint {

struct TableTold {
    std::string heading; ///< plain text
    Table table;         ///< without a total
    std::vector<Prose> remarks;
};

} // namespace tailpoint
