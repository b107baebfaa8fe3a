// SPDX-License-Identifier: MIT
// The figure for the clipboard. Placed anew without the memory of a drag: the same sketch and view give the
// same figure.
#pragma once

#include "ui/files/provenance.h"
#include "ui/handout/figure_job.h"

class QMimeData;

namespace tailpoint {

class Canvas;
struct ExplainOptions; // core/explain/explain.h

/// The figure as it stands on the sheet.
FigureJob figureAsSeen(const Canvas& canvas);

/// SVG, PNG and the values as text, at once: who pastes takes what suits. No text where the job hides
/// something. `explained`: how the worked solution is told, whose check is among the values.
QMimeData* figureForClipboard(const Result& result, FigureJob job, const ExplainOptions& explained,
                              const Provenance& from);
/// The figure as a PNG; empty where it could not be made.
QByteArray figurePng(const Result& result, FigureJob job);

} // namespace tailpoint
