// SPDX-License-Identifier: MIT
#include "core/explain/step_key.h"

#include <array>

namespace tailpoint {

std::string_view nameOf(StepKey key) {
    static constexpr std::array<std::string_view, 40> names{
        "question",   "given",     "freeBody",    "count",         "directions", "senses",    "known",
        "estimate",   "why",       "tails",       "parallelogram", "triangle",   "choice",    "included",
        "angles",     "angle",     "reach",       "cosines",       "sines",      "halving",   "isosceles",
        "legs",       "rest",      "first",       "second",        "direction",  "pair",      "resolved",
        "components", "equations", "elimination", "quadratic",     "missing",    "magnitude", "line",
        "lami",       "answer",    "check",       "rounding",      "end"};
    static_assert(names.size() == static_cast<std::size_t>(StepKey::end) + 1);
    return names[static_cast<std::size_t>(key)];
}

} // namespace tailpoint
