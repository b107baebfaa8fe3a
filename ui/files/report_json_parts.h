// SPDX-License-Identifier: MIT
// Parts of a report as JSON. Used by the reports of ui/document alone.
#pragma once

#include "core/solve/solve.h"
#include "core/solve/tolerance.h"
#include "core/solve/tolerance_uncertainty.h"
#include "ui/files/json_text.h"

namespace tailpoint {

/// What is known of an answer beside its values; null where there is nothing.
struct Spreads {
    const tolerance::AnswerRange* ranges = nullptr;
    const std::vector<tolerance::VectorUncertainty>* uncertainty = nullptr;
};

/// `index`: of the vector.
JsonValue vectorJson(const SolvedForce& solved, const Force& given, const Sketch& sketch,
                     const Spreads& spreads, int index);

/// "cases" and "envelope" of a sketch that has cases; else nothing.
void addCases(JsonValue& report, const Sketch& sketch);

} // namespace tailpoint
