// SPDX-License-Identifier: MIT
#include "ui/files/vectors.h"

#include <algorithm>

namespace tailpoint {

bool hasVector(const Sketch& sketch, int vector) {
    return vector == kSumIndex || (vector >= 0 && static_cast<std::size_t>(vector) < sketch.forces.size());
}

int vectorNamed(const Sketch& sketch, const std::string& name) {
    if (sketch.sum.name == name) {
        return kSumIndex;
    }
    const auto at = std::find_if(sketch.forces.begin(), sketch.forces.end(),
                                 [&](const Force& force) { return force.name == name; });
    return at == sketch.forces.end() ? kNoVector : static_cast<int>(at - sketch.forces.begin());
}

const Force& vectorOf(const Sketch& sketch, int vector) {
    return vector == kSumIndex ? sketch.sum : sketch.forces.at(static_cast<std::size_t>(vector));
}

Force& vectorOf(Sketch& sketch, int vector) {
    return vector == kSumIndex ? sketch.sum : sketch.forces.at(static_cast<std::size_t>(vector));
}

} // namespace tailpoint
