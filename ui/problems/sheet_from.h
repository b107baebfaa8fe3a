// SPDX-License-Identifier: MIT
// A sheet of the user's own sketches.
#pragma once

#include "ui/practice/problem_sheet.h"

#include <QStringList>
#include <variant>

namespace tailpoint {

/// In this order. A file that is a problem of a family keeps its code and its statement, edited or not; of
/// another one the statement is what it has under "statement", or what is given and asked in words, and its
/// code five letters and digits from its content. Refused in one line: a file that can't be read, a question
/// that has no answer to be marked, a statement that was made for other numbers.
/// `task`: of it the task and its blank lines count.
std::variant<ProblemSheet, QString> sheetFrom(const QStringList& files, const SheetRequest& task = {});

/// Five letters and digits of the alphabet of problemCode(), which has six, so that neither is taken for the
/// other. The same sketch has the same code.
std::string sketchCode(const Sketch& sketch);

} // namespace tailpoint
