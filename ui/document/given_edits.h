// SPDX-License-Identifier: MIT
// What typing into the table of given values does to a sketch. Pure: a sketch in, a sketch or a reason out.
#pragma once

#include "core/solve/solve.h"
#include "ui/files/vectors.h"

#include <QString>
#include <QStringList>
#include <variant>

namespace tailpoint {

class Result;
class SketchDocument;

struct TypedError;

/// `vector` below is an index into the sketch's forces, or kSumIndex.
enum class Entry { name, magnitude, direction };

/// The sketch after an edit. `understood` says what was read where the text was converted ("75 lbf = 334 N").
struct Accepted {
    Sketch sketch;
    QString understood;
};
/// One line: what is wrong, and the mend. Where a number reads two ways, the whole text in the one and the
/// other way.
struct Refused {
    QString message;
    QStringList readings{};
};
using Outcome = std::variant<Accepted, Refused>;

Refused refusedFor(const TypedError& error);

/// A typed text put into a cell. "?" and an empty text make a magnitude or a direction one to find.
Outcome typedInto(const Sketch& sketch, int vector, Entry cell, const QString& text);

/// What stands in the field when a cell is opened: the value in full, as it was stated where that is in a
/// unit of its own ("850 kg ± 5 %"), else in the sheet's unit without it ("" for one to find).
QString editedText(const Sketch& sketch, int vector, Entry cell);
/// The value in full in the sheet's unit, with it: "8335.6525 N", "25 ± 0.5°".
QString keptText(const Sketch& sketch, int vector, Entry cell);

/// As the sheet shows it, behind what was stated where that is in a unit of its own: "850 kgf = 8.34 kN",
/// "weight of 850 kg = 8.34 kN (g = 9.80665 m/s²)". Precondition: given.
QString asStated(const Magnitude& given, const Sketch& sketch);
QString asStated(const Direction& given, const Sketch& sketch);

bool isToFind(const Sketch& sketch, int vector, Entry cell);

/// given -> to find, to find -> given. A value that becomes given is the one found, to the shown digits;
/// where nothing was found the one that would close the polygon of the others, else a plain start (the
/// greatest given magnitude; along the axis).
Sketch toggled(const Result& result, int vector, Entry cell);
/// The same done to a sketch on its way from the one that was solved.
Sketch toggled(Sketch sketch, const Result& result, int vector, Entry cell);
/// As the first; where nothing was found, what stood there before it was made one to find comes back.
Sketch toggled(const SketchDocument& document, int vector, Entry cell);

/// One more force, both values to find.
Sketch withForceToFind(const Sketch& sketch);
Sketch withForcesRemoved(const Sketch& sketch, const std::vector<int>& forces);

/// Lines of "name magnitude direction", fields apart by tabs or spaces. All lines or none: a reason names the
/// line.
Outcome withLinesAdded(const Sketch& sketch, const QString& lines);
/// The same way out: one line a vector, tabs between, values in full in the sheet's units or as they were
/// stated in their own, "?" for one to find.
QString asLines(const Sketch& sketch, const std::vector<int>& vectors);

/// Drops a question for the smallest force that the sketch no longer asks, and what cases have no place for.
Sketch settled(Sketch sketch);

} // namespace tailpoint
