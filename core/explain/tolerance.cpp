// SPDX-License-Identifier: MIT
#include "core/explain/tolerance.h"

namespace tailpoint {

namespace {

int tolerancesOf(const Force& vector) {
    return (vector.magnitude.tolerance ? 1 : 0) + (vector.direction.tolerance ? 1 : 0);
}

} // namespace

std::optional<Wording> toleranceNote(const Sketch& sketch) {
    int given = tolerancesOf(sketch.sum);
    for (const Force& force : sketch.forces)
        given += tolerancesOf(force);
    if (given == 0)
        return std::nullopt;
    return given == 1
               ? SENTENCE("solution",
                          "The steps are worked with the middle value: the given tolerance is not in them.")
               : SENTENCE(
                     "solution",
                     "The steps are worked with the middle values: the given tolerances are not in them.");
}

} // namespace tailpoint
