// SPDX-License-Identifier: MIT
// What is said of a marking beside and under the fields; pure functions of it.
#pragma once

#include "core/mark/mark.h"
#include "ui/panel/marked_text.h"

#include <QString>

namespace tailpoint {

/// "right, to fewer figures"; names of what it follows from are in it.
QString verdictWords(const MarkedQuantity& quantity);
/// One line for the whole.
QString summaryWords(const Marking& marking);
/// "1 of 2 points", "0.5 of 1 point".
QString pointsWords(double points, double of);
/// Findings with their changed lines, remarks and the question that tells the readings apart. Nothing right
/// is told before `withAnswer`: neither the right line nor a line of the answer's own form.
std::vector<MarkedText::Block> findingBlocks(const Marking& marking, bool withAnswer);

} // namespace tailpoint
