// SPDX-License-Identifier: MIT
// Which case of a line holds, whatever its conditions are made of: trees or code. Internal to derive/.
#pragma once

#include "core/derive/values.h"

namespace tailpoint {

/// Index of the first of `cases` all of whose conditions hold; kNoCase where none does or where one can't be
/// decided. `holds` says of a condition yes, no, or nothing.
template <class Cases, class Holds>
std::uint8_t firstCase(const Cases& cases, Holds holds) {
    for (std::size_t i = 0; i < cases.size(); ++i) {
        bool all = true;
        for (const auto& condition : cases[i].when) {
            const std::optional<bool> one = holds(condition);
            if (!one)
                return kNoCase;
            all = all && *one;
        }
        if (all)
            return static_cast<std::uint8_t>(i);
    }
    return kNoCase;
}

} // namespace tailpoint
