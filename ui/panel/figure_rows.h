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
};

/// What a row of the table of vectors is of; `vector` as in solve.h.
struct VectorPlace {
    enum class Kind { columns, answer, vector };
    Kind kind = Kind::vector; ///< the columns' names; the name of an answer; a vector
    int vector = kNoVector;
    std::size_t answer = 0; ///< of a vector that both answers have alike: the one that is drawn
    bool operator==(const VectorPlace&) const = default;
};

/// Every vector once. Of two answers what they have in common first, then under each answer's name what is
/// its own, drawn or not, always in the same order. Empty without an answer.
QList<VectorPlace> vectorPlaces(const Result& result);
/// Magnitude, direction and components of a vector, or a heading.
FigureRow rowAt(const Result& result, const VectorPlace& place);

/// Parallelogram and force triangle: a heading and rows each, where there is one.
QList<FigureRow> angleRows(const Result& result);
/// Legs under a load: a heading and rows, where there are any.
QList<FigureRow> legRows(const Result& result);

} // namespace tailpoint
