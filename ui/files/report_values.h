// SPDX-License-Identifier: MIT
// Values of an answer as every report shows them.
#pragma once

#include "core/quantity/decimals.h"
#include "core/solve/solve.h"
#include "core/solve/tolerance.h"

#include <string>
#include <vector>

namespace tailpoint {

/// Whether the magnitude stands as it was typed.
Origin magnitudeOrigin(const SolvedForce& solved, const Force& given);
/// "520 N": a typed value is rounded as the decimal that was typed, a computed one from the full value.
std::string shownMagnitude(const SolvedForce& solved, const Force& given, const Sketch& sketch);
/// "-3.6°", or "no direction".
std::string shownDirection(const SolvedForce& solved, const Force& given, const Sketch& sketch);

/// An answer with the question that it answers.
struct Answer {
    Sketch sketch;
    Solved solved;
    std::size_t index = 0; ///< into solved.solutions
    const Solution& solution() const { return solved.solutions[index]; }
};
std::vector<Answer> answersOf(const Sketch& sketch, const Solved& solved);

/// The roots that were lost to a sense, each as an answer to the question in which that sense is left open.
std::vector<Answer> reversedAnswersOf(const Sketch& sketch, const Solved& solved);
/// What such an answer can be within the tolerances, in the order of its own question's answers; empty where
/// nothing has a tolerance.
tolerance::Ranges rangesOfReversed(const Answer& answer);

} // namespace tailpoint
