// What a text typed on the sheet makes of a sketch, or why it was not taken.
#pragma once

#include "core/sketch/sketch.h"

#include <QString>
#include <variant>

namespace tailpoint {

struct Refused {
    QString message; ///< one line, with the mend
};
using Edited = std::variant<Sketch, Refused>;

/// A magnitude ("1.2 kN"), with a direction after "at" if wanted ("340 N at 25°").
Edited withTypedMagnitude(const Sketch& sketch, int vector, const QString& text);
Edited withTypedDirection(const Sketch& sketch, int vector, const QString& text);
Edited withTypedName(const Sketch& sketch, int vector, const QString& text);
Edited withTypedTitle(const Sketch& sketch, const QString& text);
/// "4", "4 figures".
Edited withTypedFigures(const Sketch& sketch, const QString& text);
/// "+x", "-y cw", "35 ccw": the axis and, if wanted, the sense. Typed angles keep their numbers: the question
/// is read anew from the other axis.
Edited withTypedReference(const Sketch& sketch, const QString& text);

/// The texts that the fields begin with: what was given, in full.
QString typedMagnitude(const Sketch& sketch, int vector);
QString typedDirection(const Sketch& sketch, int vector);
QString typedReference(const Sketch& sketch);

} // namespace tailpoint
