// SPDX-License-Identifier: MIT
#include "core/sketch/sides.h"

namespace tailpoint {

namespace {

std::vector<VectorId> knownForces(const Sketch& sketch) {
    std::vector<VectorId> known;
    for (std::size_t i = 0; i < sketch.forces.size(); ++i)
        if (!isToFind(sketch.forces[i]))
            known.push_back(forceVector(i));
    return known;
}

/// By its own name where there is one only.
VectorId together(const std::vector<VectorId>& known) {
    return known.size() == 1 ? known.front() : kKnownVector;
}

std::optional<Sides> withoutUnknowns(const std::vector<VectorId>& known, bool rest) {
    if (known.size() == 3 && rest)
        return Sides{{known[0], known[1], known[2]}, true};
    if (known.size() == 2 && !rest)
        return Sides{{known[0], known[1], kSumVector}, false};
    return std::nullopt;
}

std::optional<Sides> withOne(VectorId sought, const std::vector<VectorId>& known, bool rest) {
    if (sought == kSumVector || rest) {
        if (known.size() != 2)
            return std::nullopt;
        return Sides{{known[0], known[1], sought}, rest};
    }
    if (known.empty())
        return std::nullopt;
    return Sides{{together(known), sought, kSumVector}, false};
}

Sides withTwo(VectorId first, VectorId second, const std::vector<VectorId>& known, bool rest) {
    if (second == kSumVector)
        return {{together(known), first, kSumVector}, false};
    if (rest)
        return {{first, second, together(known)}, true};
    return {{first, second, known.empty() ? kSumVector : kKnownVector}, false};
}

} // namespace

bool isToFind(const Force& vector) {
    return !isGiven(vector.magnitude) || (!isGiven(vector.direction) && *vector.magnitude.value != 0);
}

std::vector<VectorId> vectorsToFind(const Sketch& sketch) {
    std::vector<VectorId> sought;
    for (std::size_t i = 0; i < sketch.forces.size(); ++i)
        if (isToFind(sketch.forces[i]))
            sought.push_back(forceVector(i));
    if (isToFind(sketch.sum))
        sought.push_back(kSumVector);
    return sought;
}

std::size_t Sides::indexOf(VectorId vector) const {
    std::size_t i = 0;
    while (i < 3 && side[i] != vector)
        ++i;
    return i;
}

std::optional<Sides> sidesOf(const Sketch& sketch) {
    const std::vector<VectorId> sought = vectorsToFind(sketch), known = knownForces(sketch);
    const bool rest = isEquilibrium(sketch);
    if (sought.size() > 2)
        return std::nullopt;
    if (sought.empty())
        return withoutUnknowns(known, rest);
    return sought.size() == 1 ? withOne(sought[0], known, rest) : withTwo(sought[0], sought[1], known, rest);
}

} // namespace tailpoint
