// SPDX-License-Identifier: MIT
// What a sketch asks: which scalars are to be found, and the known vectors added up. Used inside solve/ only.
#pragma once

#include "core/solve/kernel.h"
#include "core/solve/solve.h"

#include <variant>
#include <vector>

namespace tailpoint {

/// A vector of the equation by its index: a force, or the sum at kSumIndex.
const Force& vectorAt(const Sketch& sketch, int index);

/// A vector with something to find. A magnitude given as zero leaves no direction to find.
struct UnknownVector {
    int index = kNoVector;
    bool magnitude = false, direction = false;
};

struct Question {
    std::vector<UnknownVector> unknowns; ///< forces in the sketch's order, the sum last
    std::size_t scalars = 0;             ///< how many are to be found
    std::vector<CosSin> units;           ///< of the forces, then of the sum; +x where none is given
    kernel::VectorSum forces;            ///< the fully given forces
    kernel::VectorSum gap;       ///< sum (where given) minus the given forces: what the unknowns must make up
    long double circles = 0;     ///< sum of the magnitudes given without a direction
    std::size_t givenForces = 0; ///< fully given forces that are not zero
    int onlyForce = kNoVector;   ///< the last of them
    bool inSilence = false;      ///< who asks reads no words: none are made

    const CosSin& unitOf(int index) const {
        return index == kSumIndex ? units.back() : units[static_cast<std::size_t>(index)];
    }
    const UnknownVector* find(int index) const;
    kernel::Target target() const { return {gap.settled(), gap.scale() + circles}; }
};

Question questionOf(const Sketch& sketch);

/// solve() without its words (`remarks` and `unknowns` are empty, all else is the same): for thousands in a
/// row, of which the words would be half the work.
Solved solveInSilence(const Sketch& sketch);

/// A vector with one unknown as its locus, on the forces' side of the equation.
using Side = std::variant<kernel::Line, kernel::Circle>;
Side sideOf(const Sketch& sketch, const Question& question, const UnknownVector& unknown);
kernel::Roots meet(const Side& first, const Side& second, const kernel::Target& target);

/// +1 for a force, -1 for the sum: the sum is brought to the forces' side.
inline long double signOf(int index) {
    return index == kSumIndex ? -1.0L : 1.0L;
}

} // namespace tailpoint
