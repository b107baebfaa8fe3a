// The figure as it is seen, for the clipboard. Placed anew without the memory of a drag: the same
// sketch and view give the same figure.
#pragma once

class QMimeData;

namespace tailpoint {

class Canvas;
class SketchDocument;

/// SVG, PNG and the values as text, at once: who pastes takes what suits.
QMimeData* figureForClipboard(const SketchDocument& document, const Canvas& canvas);

} // namespace tailpoint
