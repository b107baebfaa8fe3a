// SPDX-License-Identifier: MIT
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
/// Whether its vectors keep to their limits, a line each, HTML; empty where the sketch states none.
QString limitsText(const Result& result);
/// What is to be said of the ranges of the answer that is drawn, a line each, HTML; empty without any.
QString rangeRemarksText(const Result& result);

/// "Answer 1 of 2, drawn"; empty where there is but one.
QString answerName(const Result& result, std::size_t answer);
/// The answer that is not drawn, in one line: "P = 513 N, Q at -89.7\u00b0". Empty where there is but one.
QString otherAnswerText(const Result& result);

} // namespace tailpoint
