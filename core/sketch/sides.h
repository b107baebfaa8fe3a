// SPDX-License-Identifier: MIT
// The one triangle to which a question comes down, if it does: which three vectors are its sides. Decided on
// what is given and what is to be found alone, so that its angles have their letters before anything is
// solved.
#pragma once

#include "core/formula/ids.h"
#include "core/sketch/sketch.h"

#include <array>
#include <optional>
#include <vector>

namespace tailpoint {

/// Has something to find. A magnitude given as zero leaves no direction to find.
bool isToFind(const Force& vector);
/// The vectors with something to find: forces in the sketch's order, the sum last.
std::vector<VectorId> vectorsToFind(const Sketch& sketch);

/// Tip to tail. Chain: side 0 + side 1 = side 2. Loop: side 0 + side 1 + side 2 = 0. kKnownVector stands for
/// the known forces added up, or, where two forces are sought that make up a sum, for the sum less the known
/// forces.
struct Sides {
    std::array<VectorId, 3> side;
    bool loop = false;
    /// Of a vector among the sides; 3 where it is none.
    std::size_t indexOf(VectorId vector) const;
};

/// Two forces and their sum, three forces in equilibrium, or one or two vectors with unknowns beside known
/// ones. Empty where no triangle joins them: the resultant of three forces and more, nothing known, one force
/// beside many in equilibrium. Where one vector is sought the known come first, else the sought.
std::optional<Sides> sidesOf(const Sketch& sketch);

} // namespace tailpoint
