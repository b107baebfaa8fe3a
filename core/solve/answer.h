// SPDX-License-Identifier: MIT
// From numeric roots back to named vectors in the sheet's units. Used inside solve/ only.
#pragma once

#include "core/solve/question.h"

namespace tailpoint {

/// The given vectors of every answer, the unknown ones still blank.
Solution givenPart(const Sketch& sketch, const Question& question);

/// `given` with the unknown vectors found. A magnitude below zero on a line of action is turned round.
/// `second` is left alone where only one vector was unknown.
Solution answered(const Solution& given, const Sketch& sketch, const Question& question,
                  const kernel::Root& root);

/// A direction of the sheet turned by half a turn, still in (-half turn, half turn].
double halfTurned(double referred, AngleUnit unit);

} // namespace tailpoint
