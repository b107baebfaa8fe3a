// The figure as it is seen, for files and the clipboard. Placed anew without the memory of a drag: the same
// sketch and view give the same figure.
#pragma once

#include <QByteArray>
#include <optional>

class QMimeData;
class QString;

namespace tailpoint {

class Canvas;
class SketchDocument;

/// `kind` is "svg", "pdf" or "png"; empty for any other.
std::optional<QByteArray> figureBytes(const SketchDocument& document, const Canvas& canvas,
                                      const QString& kind);

/// SVG, PNG and the values as text, at once: who pastes takes what suits.
QMimeData* figureForClipboard(const SketchDocument& document, const Canvas& canvas);

} // namespace tailpoint
