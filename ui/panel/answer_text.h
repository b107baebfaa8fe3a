// What the panel says of an answer, as rich text; pure functions of the result.
#pragma once

#include "core/explain/question.h"
#include "ui/document/sketch_document.h"

#include <QList>
#include <QString>

namespace tailpoint {

/// There is something to say: at least one force, and a solution.
bool hasAnswer(const Result& result);

QString htmlOf(const Sentence& sentence);

/// The quantities that were found, greatest first in size: "R = 520 N".
struct AnswerText {
    QString large;  ///< one line a found vector
    QString detail; ///< direction in words, components
};
AnswerText answerText(const Result& result);

/// Sum by components, how many digits agree, residual. Empty without an answer.
QString checkText(const Result& result);

/// Decimal digits to which the sum of the forces' components agrees with the sum's own, 0..15.
int agreeingDigits(const Solution& solution);

/// Everything that the panel shows, as plain text.
QString valuesAsText(const Result& result);

/// A row of the tables under Solution.
struct FigureRow {
    Sentence label;
    QList<QString> values;
    bool heading = false;
};
/// Every vector's magnitude, direction and components: the heading, then one row a vector, the sum last.
FigureRow vectorHeading();
FigureRow vectorRow(const Result& result, int vector);
/// Parallelogram and force triangle: a heading and rows each, where there is one.
QList<FigureRow> angleRows(const Result& result);

} // namespace tailpoint
