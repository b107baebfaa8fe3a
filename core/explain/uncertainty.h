// SPDX-License-Identifier: MIT
// Standard uncertainty in words, on request: behind the ranges of a worked solution.
#pragma once

#include "core/explain/explain.h"
#include "core/explain/wording.h"
#include "core/solve/tolerance_uncertainty.h"

namespace tailpoint {

/// A sentence for each magnitude and direction that an answer has found: its standard uncertainty to two
/// digits, what it comes from, expanded with k = 2; or why it is not told. Then what the tolerances were
/// taken for. Where no value has a tolerance: that there is none. Nothing where there is no answer.
std::vector<Prose> uncertaintyTold(const Sketch& sketch, const Solved& solved, std::size_t solution,
                                   const tolerance::Uncertainties& all,
                                   const tolerance::UncertaintyAsked& asked, const Voice& voice = Voice());

/// Adds them to a worked solution, behind its answer.
void tellUncertainty(Worked& worked, const Sketch& sketch, const Solved& solved, std::size_t solution,
                     const tolerance::Uncertainties& all, const tolerance::UncertaintyAsked& asked,
                     const Sentences* sentences = nullptr);

/// "magnitude of P": the given value that a share is of, as a script reads it.
std::string plainInput(const tolerance::Share& share, const Sketch& sketch);
/// "noDerivative"; uncertaintyTold() has the words.
std::string_view nameOf(tolerance::Withheld withheld);
std::string_view nameOf(tolerance::Spread spread); ///< "rectangular", "normal"

} // namespace tailpoint
