// The figure for the clipboard. Placed anew without the memory of a drag: the same sketch and view give the
// same figure.
#pragma once

#include "ui/handout/figure_job.h"

class QMimeData;

namespace tailpoint {

class Canvas;

/// The figure as it stands on the sheet.
FigureJob figureAsSeen(const Canvas& canvas);

/// SVG, PNG and the values as text, at once: who pastes takes what suits. No text where the job hides
/// something.
QMimeData* figureForClipboard(const Result& result, FigureJob job);

} // namespace tailpoint
