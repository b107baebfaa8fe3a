// SPDX-License-Identifier: MIT
// What stands on one page, on its way to a device. In a PDF each change of ink, pen or transform costs more
// than what is drawn with it: words of one ink go out together, and strokes and grounds, of which none lies
// over a word, once the page has all its words, those of one pen as one path.
#pragma once

#include "ui/render/fonts.h"
#include "ui/render/formula.h"

#include <optional>
#include <utility>
#include <vector>

namespace tailpoint {

class PagePainter {
public:
    /// The painter's unit must be so fine that half of it is too little to be seen: words stand at whole
    /// ones.
    explicit PagePainter(QPainter& painter);
    ~PagePainter();
    PagePainter(const PagePainter&) = delete;
    PagePainter& operator=(const PagePainter&) = delete;

    void words(QPointF baseline, const QString& text, const QFont& font, const QColor& ink);
    void setting(const Setting& setting, QPointF baseline, const QColor& ink);
    void fill(const QRectF& rectangle, const QColor& colour);
    void stroke(const QPainterPath& path, const QPen& pen);
    /// Whatever paints by itself; pen, brush and transform may be others afterwards than before.
    template <class Paint>
    void apart(Paint paint) {
        m_words.flush();
        m_painter.save();
        paint(m_painter);
        m_painter.restore();
    }

private:
    void setInk(const QColor& ink);
    void fill(const QPainterPath& path, const QColor& colour);

    QPainter& m_painter;
    WordPainter m_words;
    std::optional<QColor> m_ink; ///< the painter's pen, for words
    std::vector<std::pair<QColor, QPainterPath>> m_grounds;
    std::vector<std::pair<QPen, QPainterPath>> m_strokes;
};

} // namespace tailpoint
