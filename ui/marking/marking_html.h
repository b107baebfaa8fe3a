// SPDX-License-Identifier: MIT
// Markings as pages: one for the class, one for a student. HTML 5, UTF-8, well-formed as XML too, MathML, no
// script, nothing from the network; they print on A4 and Letter.
#pragma once

#include "ui/marking/class_output.h"

namespace tailpoint {

/// The question, each value beside the right one, what leads to it with its changed line, and one question.
std::string studentHtml(const Sketch& sketch, const MarkedRow& row);

/// The question, how the class did, the tally of slips as a picture, each slip's changed line beside the
/// right one, and every row. Unless `names` is set, no name stands beside a slip. Kept until its end: the
/// tally comes first. `sketch` outlives it.
std::unique_ptr<ClassOutput> classHtml(const Sketch& sketch, const ClassMarking& marking, bool names);

} // namespace tailpoint
