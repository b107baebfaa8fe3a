#include "core/explain/tolerance.h"

namespace tailpoint {

namespace {

int tolerancesOf(const Force& vector) {
    return (vector.magnitude.plusMinus ? 1 : 0) + (vector.direction.plusMinus ? 1 : 0);
}

} // namespace

std::optional<Wording> toleranceNote(const Sketch& sketch) {
    int given = tolerancesOf(sketch.sum);
    for (const Force& force : sketch.forces)
        given += tolerancesOf(force);
    if (given == 0)
        return std::nullopt;
    return given == 1 ? SENTENCE("solution", "The given tolerance is not yet in the answer.")
                      : SENTENCE("solution", "The given tolerances are not yet in the answer.");
}

} // namespace tailpoint
