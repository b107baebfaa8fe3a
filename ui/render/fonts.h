// SPDX-License-Identifier: MIT
// The fonts of a figure and the extents of its words, found once: looking a font up by its family, or shaping
// a word, costs more than drawing it.
#pragma once

#include "core/figure/display_list.h"

#include <QFont>
#include <QList>
#include <QPainter>
#include <QRawFont>
#include <array>
#include <map>
#include <memory>
#include <optional>
#include <string>
#include <unordered_map>
#include <vector>

namespace tailpoint {

/// How far the baseline of a subscript or superscript moves, by the size of the text.
inline constexpr double kSubDrop = 0.18, kSuperRise = 0.36;

inline double sizeOf(const Run& run, double size) {
    return run.script == Script::normal && run.line == 0 ? size : run.part * size;
}
/// Downward, points. A larger subscript hangs lower, or it would pass for a letter of the line.
inline double shiftOf(const Run& run, double size) {
    const double lower = 0.4 * (run.part - kScriptPart), line = run.line * kLineStep;
    return run.script == Script::sub     ? (line + kSubDrop + lower) * size
           : run.script == Script::super ? (line - kSuperRise) * size
                                         : line * size;
}

/// Advance and heights, and how far the ink leans out before the first letter and after the last.
struct RunExtent : TextExtent {
    double before = 0, after = 0;
};

/// A QFont can't be moved, and a text is moved on every way up from a letter to a page.
using SharedFont = std::shared_ptr<const QFont>;

/// Qt 6.4 rounds every font to whole pixels. So each face is kept at one size, and the painter is scaled: the
/// drawn width is the measured one at every zoom.
class FontShelf {
public:
    static constexpr int kSize = 64; ///< pixels
    const QFont& font(const Run& run, Face face);
    /// In this size.
    const SharedFont& font(const Run& run, Face face, double pointSize);
    /// Of a run at size 1.
    const RunExtent& extent(const Run& run, Face face);
    /// One for each thread that paints or measures.
    static FontShelf& ofThread();

private:
    RunExtent measured(const Run& run, Face face);
    std::array<std::optional<QFont>, 8> m_fonts;
    std::map<std::pair<unsigned, double>, SharedFont> m_sized;
    std::unordered_map<std::string, RunExtent> m_extents;
    std::string m_key;
};

/// The same font for the thread that calls. A QFont keeps what it has found out about itself, and copies
/// share that: what is laid out on one thread and painted on another is painted with this.
const QFont& fontOfThread(const QFont& font);

/// How far a text goes on in a font; remembered, for words come again and again.
double advanceOf(const QFont& font, QStringView text);

/// Texts one after the other in the painter's pen, each one line from the left end of its baseline on, as
/// QPainter::drawText() sets it. In a PDF, where the same words come on page after page, each word by glyphs
/// that a thread finds once (to shape a text costs more than to paint it), and what follows one another in
/// one font is drawn at once, at the latest when this goes: pen and transform stay until then. The painter's
/// font may be another afterwards.
class WordPainter {
public:
    /// Where glyphs of a PDF stand: at whole units a page is a third shorter, and half a unit must be too
    /// little to be seen.
    enum class Places { exact, whole };
    explicit WordPainter(QPainter& painter, Places places = Places::exact);
    ~WordPainter() { flush(); }
    WordPainter(const WordPainter&) = delete;
    WordPainter& operator=(const WordPainter&) = delete;

    void add(QPointF baseline, const QString& text, const QFont& font);
    void flush();

private:
    void addGlyphs(const QRawFont& font, const QList<quint32>& indexes, const QList<QPointF>& positions,
                   QPointF at);

    QPainter& m_painter;
    bool m_isPdf, m_isWhole;
    QRawFont m_font; ///< of what is not drawn yet
    std::vector<quint32> m_indexes;
    std::vector<QPointF> m_positions;
};

/// One such text.
void drawWords(QPainter& painter, QPointF baseline, const QString& text, const QFont& font);

} // namespace tailpoint
