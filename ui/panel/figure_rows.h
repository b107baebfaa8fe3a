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

/// Magnitude, direction and components of one vector; `vector` as in solve.h. Empty without an answer.
FigureRow vectorHeading(const Sketch& sketch);
FigureRow vectorRow(const Result& result, int vector);

/// Parallelogram and force triangle: a heading and rows each, where there is one.
QList<FigureRow> angleRows(const Result& result);

} // namespace tailpoint
