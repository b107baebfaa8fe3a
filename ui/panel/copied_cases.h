// SPDX-License-Identifier: MIT
// The cases of the open sketch for the clipboard, as bare numbers and in words.
#pragma once

#include "core/explain/cases.h"
#include "ui/panel/copied_values.h"

namespace tailpoint {

/// Every state of a sketch with cases, with its ranges; empty where there are none, where one of them is what
/// is shown, and while the answer is withheld.
std::vector<CaseState> copiedStates(const Result& result);

/// What each case comes to, a row each state and answer, with tolerances each value's ends behind it; then
/// the envelope with what governs. Both empty for no states.
QList<BareTable> caseTables(const std::vector<CaseState>& states, const Sketch& sketch);
/// What is to be said of them: the limits, cases without an answer, how answers are matched.
QStringList caseLines(const std::vector<CaseState>& states, const Sketch& sketch);

} // namespace tailpoint
