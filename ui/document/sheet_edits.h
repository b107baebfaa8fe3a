// SPDX-License-Identifier: MIT
// Edits of the whole sheet: units, axis, and the question that is asked. Pure: a sketch in, a sketch out.
#pragma once

#include "core/solve/solve.h"

#include <optional>

namespace tailpoint {

class Result;

/// What a change of unit does to the numbers: `convert` keeps the physical force, `keep` keeps the numbers.
enum class Numbers { convert, keep };

/// Which of the sheet's two units stands beside a value.
enum class UnitOf { force, angle };

Sketch withForceUnit(const Sketch& sketch, ForceUnit unit, Numbers numbers);
Sketch withAngleUnit(const Sketch& sketch, AngleUnit unit, Numbers numbers);
/// `convert` leaves the forces where they are and says their angles from the new axis.
Sketch withReference(const Sketch& sketch, Reference reference, Numbers numbers);

/// The same masses, with the weights that they have where g is `gravity` (m/s2).
Sketch withGravity(const Sketch& sketch, double gravity);

/// The double nearest to a decimal of 12 digits, where `value` is within a few u of it: takes the dust off a
/// number that was converted there and back.
double tidied(double value);

// Questions. What was to find and is no longer asked becomes given, as found and to the shown digits; where
// nothing was found it stays to find.
Sketch askingResultant(const Result& result);
/// The sum is zero and one more force, wholly to find, holds the others.
Sketch askingEquilibrant(const Result& result);
/// The resultant as it stands, resolved along the lines of the first two forces. Needs two forces and a sum
/// with a direction.
std::optional<Sketch> askingComponents(const Result& result);
/// Whose magnitude is to be found beside the smallest force `vector`: the sum's; in equilibrium that of the
/// first other force which has only its magnitude to find, kNoVector where none has.
int besideSmallest(const Sketch& sketch, int vector);
/// The smallest force `vector` (an index into forces) that puts the sum on its ray, or balances together with
/// that other force. Needs a direction of the sum, or such a force.
std::optional<Sketch> askingSmallest(const Result& result, int vector);

} // namespace tailpoint
