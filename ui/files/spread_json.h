// SPDX-License-Identifier: MIT
// What an answer can be within the tolerances, as JSON of a vector in a report.
#pragma once

#include "core/solve/tolerance.h"
#include "core/solve/tolerance_uncertainty.h"
#include "ui/files/json_text.h"

namespace tailpoint {

/// Adds "range" to a vector, and to its "text" the words. Precondition: it has a "text".
void addRange(JsonValue& vector, const tolerance::VectorRange& range, bool everywhere, const Sketch& sketch);
/// Says in its "text" that its range is not known.
void addUnknownRange(JsonValue& vector);
/// Adds "uncertainty".
void addUncertainty(JsonValue& vector, const tolerance::VectorUncertainty& of, const Sketch& sketch);

} // namespace tailpoint
