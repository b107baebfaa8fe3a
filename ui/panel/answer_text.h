// What the panel says of an answer, as rich text; pure functions of the result.
#pragma once

#include "core/explain/question.h"
#include "ui/document/sketch_document.h"

#include <QString>

namespace tailpoint {

/// The solution that is shown; null where there is none, or no force to speak of.
const Solution* shownSolution(const Result& result);

/// "520 N", with a true minus.
QString quantity(double force, const Sketch& sketch);

/// The quantities that were found: "R = 520 N".
struct AnswerText {
    QString large;  ///< one line a found vector
    QString detail; ///< direction in words, components
};
AnswerText answerText(const Result& result);

/// Everything that the panel shows, as plain text.
QString valuesAsText(const Result& result);

} // namespace tailpoint
