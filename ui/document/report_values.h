// Values of an answer as every report shows them.
#pragma once

#include "core/solve/solve.h"

#include <string>

namespace tailpoint {

/// "520 N": a typed value is rounded as the decimal that was typed, a computed one from the full value.
std::string shownMagnitude(const SolvedForce& solved, const Force& given, const Sketch& sketch);
/// "-3.6°", or "no direction".
std::string shownDirection(const SolvedForce& solved, const Force& given, const Sketch& sketch);

/// The same question with the roots that were lost to a sense as its answers.
Solved withReversedOnly(const Solved& solved);

} // namespace tailpoint
