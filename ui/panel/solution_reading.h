// SPDX-License-Identifier: MIT
// The worked solution for assistive technology: a step is a group with its title as its name and all of its
// words as its text; the paragraphs of its body are nodes of their own.
//
//   group "Step 3: Law of cosines"  -  button "Step 3: Law of cosines" (expanded)
//                                   -  body  -  paragraph "R equals square root of P squared plus ..."
#pragma once

namespace tailpoint {

class SolutionBody;

/// Once, before the first step is asked for its interface.
void installAccessibleSolution();
/// Tells that the keyboard is on the current line. Nothing where nobody listens.
void tellFocusedLine(SolutionBody& body);
/// Tells which lines read otherwise than when they were last asked for. Call once the numbers rest.
void tellNewLines(SolutionBody& body);

} // namespace tailpoint
