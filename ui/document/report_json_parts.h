// Parts of a report as JSON. Used by the reports of ui/document alone.
#pragma once

#include "core/solve/solve.h"
#include "core/solve/tolerance.h"
#include "ui/document/json_text.h"

namespace tailpoint {

/// `ranges`: null where there are none. `index`: of the vector.
JsonValue vectorJson(const SolvedForce& solved, const Force& given, const Sketch& sketch,
                     const tolerance::AnswerRange* ranges, int index);

/// "cases" and "envelope" of a sketch that has cases; else nothing.
void addCases(JsonValue& report, const Sketch& sketch);

} // namespace tailpoint
