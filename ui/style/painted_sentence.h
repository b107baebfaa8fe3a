// SPDX-License-Identifier: MIT
// A sentence with symbols in it, painted where there is no label to set it: cells, links, the readout of a
// drag. As htmlOf() sets it: letters in serif italic, subscripts upright and lowered.
#pragma once

#include "core/explain/question.h"
#include "core/figure/display_list.h"

#include <QFont>
#include <QFontMetricsF>
#include <QPointF>
#include <limits>

class QPainter;

namespace tailpoint {

/// `font` at `factor` times the size of `from`.
QFont scaled(QFont font, const QFont& from, double factor);

/// The fonts are looked up once, not once a sentence.
class PaintedSentence {
public:
    /// A symbol's letters are `factor` times as large as the words around it.
    PaintedSentence(const QFont& around, double factor);

    double width(const Sentence& sentence) const;
    /// From `at` on the baseline; returns the width taken. A symbol that does not fit `room` is cut in the
    /// middle of its letters, its subscript stays whole.
    double draw(QPainter& painter, QPointF at, const Sentence& sentence,
                double room = std::numeric_limits<double>::infinity()) const;

private:
    struct Face {
        QFont font;
        QFontMetricsF metrics;
    };
    static Face faceWith(const QFont& font);
    const Face& faceOf(const Run& run) const;
    double widthOf(const Symbol& symbol) const;
    Symbol fitting(const Symbol& symbol, double room) const;
    void drawSymbol(QPainter& painter, QPointF at, const Symbol& symbol) const;

    Face m_words, m_letters, m_subscript, m_italicSubscript;
};

} // namespace tailpoint
