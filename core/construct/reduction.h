// SPDX-License-Identifier: MIT
// A question brought down to one triangle: its sides, which of them are sought, and what the known side adds
// up. Decided once, on the sketch and its unknowns alone; figures, chains of calculation and words all read
// it.
#pragma once

#include "core/sketch/sides.h"
#include "core/solve/solve.h"

#include <optional>
#include <utility>
#include <vector>

namespace tailpoint {

struct Reduction : Sides {
    /// What the side kKnownVector adds up, each vector with its sign; empty where no side is that.
    std::vector<std::pair<VectorId, int>> known;
    std::vector<std::uint8_t> sought; ///< sides with unknowns, in the order of Solved::unknownVectors

    /// The angle between the tails of two sides is the triangle's own, not its supplement.
    bool isOwnAngle(std::size_t a, std::size_t b) const { return !loop && (a == 2 || b == 2); }
    /// The sides times these signs add up to nothing.
    int sign(std::size_t i) const { return !loop && i == 2 ? -1 : 1; }
    /// The two sides that are not `i`.
    static constexpr std::array<std::size_t, 2> others(std::size_t i) {
        return {i == 0 ? 1U : 0U, i == 2 ? 1U : 2U};
    }
    bool addsUp() const { return indexOf(kKnownVector) < 3; } ///< several known vectors become one side
    std::size_t knownSide() const;                            ///< the first that isn't sought
};

/// Empty where no triangle joins the vectors: see sidesOf().
std::optional<Reduction> reductionOf(const Sketch& sketch, const Solved& solved);

/// The other way round than vectorId(): kSumIndex, or an index into the forces; kNoVector for what is made.
int indexOf(VectorId vector);
/// The same for a side of the triangle (ForceTriangle::vectors), where kNoVector is K.
VectorId sideId(int index);

} // namespace tailpoint
