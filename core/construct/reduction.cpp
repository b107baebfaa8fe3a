// SPDX-License-Identifier: MIT
#include "core/construct/reduction.h"

#include <algorithm>

namespace tailpoint {

namespace {

/// The known forces; where two forces are sought that make up a sum, that sum less them.
std::vector<std::pair<VectorId, int>> partsOfKnown(const Sketch& sketch, const Reduction& reduction) {
    std::vector<std::pair<VectorId, int>> parts;
    const bool fromSum = !reduction.loop && reduction.side[2] == kKnownVector;
    if (fromSum)
        parts.emplace_back(kSumVector, 1);
    for (std::size_t i = 0; i < sketch.forces.size(); ++i)
        if (!isToFind(sketch.forces[i]))
            parts.emplace_back(forceVector(i), fromSum ? -1 : 1);
    return parts;
}

} // namespace

int indexOf(VectorId vector) {
    if (vector == kSumVector)
        return kSumIndex;
    return vector.kind == VectorId::Kind::force ? static_cast<int>(vector.index) : kNoVector;
}

VectorId sideId(int index) {
    return index == kNoVector ? kKnownVector : vectorId(index);
}

std::size_t Reduction::knownSide() const {
    std::size_t i = 0;
    while (i < 3 && std::find(sought.begin(), sought.end(), i) != sought.end())
        ++i;
    return i;
}

std::optional<Reduction> reductionOf(const Sketch& sketch, const Solved& solved) {
    const auto sides = sidesOf(sketch);
    if (!sides)
        return std::nullopt;
    Reduction reduction{*sides, {}, {}};
    if (reduction.addsUp())
        reduction.known = partsOfKnown(sketch, reduction);
    for (const int unknown : solved.unknownVectors)
        if (unknown != kNoVector)
            reduction.sought.push_back(static_cast<std::uint8_t>(reduction.indexOf(vectorId(unknown))));
    return reduction;
}

} // namespace tailpoint
