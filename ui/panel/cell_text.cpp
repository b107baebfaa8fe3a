// SPDX-License-Identifier: MIT
#include "ui/panel/cell_text.h"

#include "ui/style/symbols.h"

#include <QPainter>
#include <algorithm>
#include <cmath>
#include <numeric>

namespace tailpoint {

CellText::CellText(const QFont& around)
    : m_around(around), m_heading(scaled(around, around, kHeadingInTable)), m_metrics(m_around),
      m_sentence(around, kSymbolInTable) {
    double narrowest = m_metrics.horizontalAdvance(u'0');
    for (char16_t digit = u'0'; digit <= u'9'; ++digit) {
        const double advance = m_metrics.horizontalAdvance(QChar(digit));
        m_digit = std::max(m_digit, advance);
        narrowest = std::min(narrowest, advance);
    }
    m_tabular = m_digit - narrowest < 0.01;
}

double CellText::room(const QString& shown) const {
    const auto advance = [&](double sum, QChar c) {
        return sum + (c.isDigit() ? m_digit : m_metrics.horizontalAdvance(c));
    };
    return std::max(width(shown), std::accumulate(shown.begin(), shown.end(), 0.0, advance));
}

void CellText::drawSentence(QPainter& painter, const QRectF& rect, const Sentence& sentence) const {
    const double baseline = std::round(rect.center().y() + (m_metrics.ascent() - m_metrics.descent()) / 2);
    m_sentence.draw(painter, {rect.left(), baseline}, sentence, rect.width());
}

void CellText::drawApart(QPainter& painter, const QRectF& rect, Qt::Alignment alignment,
                         const QString& shown) const {
    const auto advanceOf = [&](QChar c) { return c.isDigit() ? m_digit : m_metrics.horizontalAdvance(c); };
    const double whole = std::accumulate(shown.begin(), shown.end(), 0.0,
                                         [&](double sum, QChar c) { return sum + advanceOf(c); });
    double x = alignment & Qt::AlignRight ? rect.right() - whole : rect.left();
    for (const QChar c : shown) {
        painter.drawText(QRectF(x, rect.top(), advanceOf(c), rect.height()), Qt::AlignCenter, QString(c));
        x += advanceOf(c);
    }
}

double CellText::drawFigures(QPainter& painter, const QRectF& rect, Qt::Alignment alignment,
                             const QString& shown) const {
    const double wanted = width(shown);
    if (wanted > rect.width()) {
        const QFont font =
            scaled(painter.font(), painter.font(), std::max(0.6, 0.97 * rect.width() / wanted));
        painter.setFont(font);
        const QFontMetricsF metrics(font);
        const QString fitting = metrics.elidedText(shown, Qt::ElideRight, rect.width());
        painter.drawText(rect, static_cast<int>(alignment), fitting);
        return metrics.horizontalAdvance(fitting);
    }
    if (m_tabular) {
        painter.drawText(rect, static_cast<int>(alignment), shown);
    } else {
        drawApart(painter, rect, alignment, shown);
    }
    return wanted;
}

} // namespace tailpoint
