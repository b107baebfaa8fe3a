// SPDX-License-Identifier: MIT
// A resultant of three to six forces, parallelogram by parallelogram.
#include "core/construct/pairs.h"
#include "core/derive/writer.h"

#include <cmath>

namespace tailpoint::deriving {

namespace {

/// The `number`th parallelogram: `next` added to the sum so far.
void writePair(Writer& w, VectorId soFar, VectorId next, VectorId made, std::uint8_t number) {
    const QuantityId phi{What::between, soFar, next, 0, number}, gamma{What::opposite, made, {}, 0, number};
    w.tails(phi, soFar, next, false);
    w.supplement(gamma, phi);
    w.cosinesForSide(w.sizeId(made), soFar, next, gamma);
    const bool first = w.length(soFar) >= w.length(next);
    const VectorId great = first ? soFar : next, small = first ? next : soFar;
    const QuantityId beside{What::opposite, small, {}, 0, number};
    w.sinesForAngle(beside, small, made, gamma, great);
    w.turn(w.wayId(made), {great, w.of(beside), small, 1});
}

} // namespace

void writeByParallelograms(Writer& w) {
    if (pairsOf(w.sketch, w.solved).empty())
        return;
    const std::size_t forces = w.sketch.forces.size();
    VectorId soFar = forceVector(0);
    for (std::size_t i = 1; i < forces; ++i) {
        const VectorId made = i + 1 == forces ? kSumVector : partialVector(i);
        writePair(w, soFar, forceVector(i), made, static_cast<std::uint8_t>(i));
        soFar = made;
    }
    w.check();
}

} // namespace tailpoint::deriving
