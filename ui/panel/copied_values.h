// SPDX-License-Identifier: MIT
// The values of the open sketch for the clipboard: for a spreadsheet, for a text, and as a note.
#pragma once

#include "ui/document/sketch_document.h"
#include "ui/files/provenance.h"

#include <QByteArray>
#include <QList>
#include <QString>
#include <QStringList>
#include <optional>

class QMimeData;

namespace tailpoint {

struct ExplainOptions; // core/explain/explain.h

/// A table of bare numbers: heads with units ("magnitude (N)"), cells with a point and an ASCII minus, to the
/// digits that the sheet shows; empty where there is no value. Where anything has a tolerance each value of a
/// vector is followed by its low and its high end, rounded outward (a direction's from and to), and a remark
/// says what an empty end means.
struct BareTable {
    QStringList heads;
    QList<QStringList> rows;
};
/// Vectors, then the angles of parallelogram and triangle, then legs; none without an answer.
QList<BareTable> bareTables(const Result& result);

/// The number of a shown value, "-3.6" of "\u22123.6°"; empty where it has none.
QString bareNumber(QString shown);
QString withUnit(const QString& head, std::string_view unit); ///< "magnitude (N)"

/// Everything that the panel shows, as plain text: the question, the answers, the tables with tabs between
/// their cells (of a sketch with cases what each comes to, and the envelope), the check, the caution and,
/// where it is told whence it comes, the record. `options`: of the worked solution, whose check is told.
QString valuesAsText(const Result& result, const ExplainOptions& options,
                     const std::optional<Provenance>& from = {});

/// Text, HTML (tables) and tab-separated values at once: who pastes takes what suits.
QMimeData* valuesForClipboard(const Result& result, const ExplainOptions& options, const Provenance& from);

/// A paragraph, the tables of vectors and cases and the figure (a PNG): HTML, and text without the figure.
QMimeData* noteForClipboard(const Result& result, const QByteArray& figurePng, const Provenance& from);

} // namespace tailpoint
