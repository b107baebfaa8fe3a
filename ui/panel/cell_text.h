// SPDX-License-Identifier: MIT
// How a cell's words, symbols and figures are set; the fonts are looked up once, not once a cell.
#pragma once

#include "ui/style/painted_sentence.h"

#include <QFont>
#include <QFontMetricsF>
#include <QRectF>

class QPainter;

namespace tailpoint {

inline constexpr double kSymbolInTable = 1.3;  ///< its letters beside the cell's own
inline constexpr double kHeadingInTable = 0.9; ///< a heading's

class CellText {
public:
    explicit CellText(const QFont& around);

    const QFont& around() const { return m_around; }
    const QFont& heading() const { return m_heading; }
    double width(const QString& shown) const { return m_metrics.horizontalAdvance(shown); }
    /// The room in which figures, or a sentence, are neither cut nor set smaller.
    double room(const QString& shown) const;
    double room(const Sentence& sentence) const { return m_sentence.width(sentence); }
    double ascent() const { return m_metrics.ascent(); }

    /// Words and symbols from the left, on the row's baseline.
    void drawSentence(QPainter& painter, const QRectF& rect, const Sentence& sentence) const;
    /// Figures of one width each, whatever the font's own are: columns of numbers stand under one another.
    /// Set smaller, down to three fifths, rather than cut; returns the width taken.
    double drawFigures(QPainter& painter, const QRectF& rect, Qt::Alignment alignment,
                       const QString& shown) const;

private:
    void drawApart(QPainter& painter, const QRectF& rect, Qt::Alignment alignment,
                   const QString& shown) const;

    QFont m_around, m_heading;
    QFontMetricsF m_metrics;
    PaintedSentence m_sentence;
    double m_digit = 0;     ///< the widest digit's advance
    bool m_tabular = false; ///< the font's digits are of one width
};

} // namespace tailpoint
