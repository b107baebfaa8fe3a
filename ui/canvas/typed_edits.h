// SPDX-License-Identifier: MIT
// What a text typed on the sheet makes of a sketch, or why it was not taken. The table of given values
// decides what a cell means; here it is only cut to the sheet's labels.
#pragma once

#include "ui/document/given_edits.h"
#include "ui/document/sheet_edits.h"

#include <QString>

namespace tailpoint {

/// A magnitude ("1.2 kN"), with a direction after "at" if wanted ("340 N at 25°").
Outcome withTypedMagnitude(const Sketch& sketch, int vector, const QString& text);
Outcome withTypedDirection(const Sketch& sketch, int vector, const QString& text);
Outcome withTypedName(const Sketch& sketch, int vector, const QString& text);
Outcome withTypedTitle(const Sketch& sketch, const QString& text);
/// "4", "4 figures".
Outcome withTypedFigures(const Sketch& sketch, const QString& text);
/// "+x", "-y cw", "35 ccw": the axis and, if wanted, the sense.
Outcome withTypedReference(const Sketch& sketch, const QString& text, Numbers numbers);

/// The texts that the fields begin with: what was given, in full.
QString typedMagnitude(const Sketch& sketch, int vector);
QString typedDirection(const Sketch& sketch, int vector);
QString typedReference(const Sketch& sketch);

} // namespace tailpoint
