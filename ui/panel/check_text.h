// SPDX-License-Identifier: MIT
// Check: what the solution's check compares, and what it says of it.
#pragma once

#include "ui/document/sketch_document.h"

#include <QString>

namespace tailpoint {

struct ExplainOptions; // core/explain/explain.h

/// Rich text: the printed numbers that the last check of the worked solution compares, with their units, and
/// its judgement in the solution's own words. Empty without an answer, and where nothing is checked.
QString checkText(const Result& result, const ExplainOptions& options);

} // namespace tailpoint
