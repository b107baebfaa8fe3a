// SPDX-License-Identifier: MIT
// The rows of the tables under Solution; pure functions of the result.
#pragma once

#include "core/explain/question.h"
#include "ui/document/sketch_document.h"

#include <QList>
#include <QString>

namespace tailpoint {

struct FigureRow {
    Sentence label;
    QList<QString> values; ///< from the right
    bool heading = false;
    QList<QString> spoken{};   ///< the values with what they are, for who can't see the column; may be empty
    bool belongsAbove = false; ///< the range of the values in the row above, which is not copied without it
};

/// What a row of the table of vectors is of; `vector` as in solve.h.
struct VectorPlace {
    /// The columns' names; the name of an answer; a vector; under it the ends of its range, or that none is
    /// known; what a mark at an end means.
    enum class Kind { columns, answer, vector, from, to, unknown, outer };
    Kind kind = Kind::vector;
    int vector = kNoVector;
    std::size_t answer = 0; ///< of a vector that both answers have alike: the one that is drawn
    bool operator==(const VectorPlace&) const = default;
};

/// Every vector once. Of two answers what they have in common first, then under each answer's name what is
/// its own, drawn or not, always in the same order. Empty without an answer.
QList<VectorPlace> vectorPlaces(const Result& result);
/// Magnitude, direction and components of a vector, or an end of its range, or a heading.
FigureRow rowAt(const Result& result, const VectorPlace& place);

/// Parallelogram and force triangle: a heading and rows each, where there is one.
QList<FigureRow> shapeRows(const Result& result);
/// Legs under a load: a heading and rows, where there are any.
QList<FigureRow> legRows(const Result& result);
/// All of them, and with tolerances what their numbers are worked with.
QList<FigureRow> angleRows(const Result& result);
/// "these at the middle of the tolerances": an angle of a shape has no range of its own.
QString middleNote();

} // namespace tailpoint
