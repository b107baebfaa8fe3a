#include "ui/style/painted_sentence.h"

#include "ui/style/symbols.h"
#include "ui/style/theme.h"

#include <QPainter>

namespace tailpoint {

namespace {

constexpr double kSubscript = 0.7; // of the letters' size
constexpr double kHair = 1;        // pixels before a subscript, and behind a symbol: letters lean over

QFont letters(const QFont& around, double factor) {
    QFont font = scaled(serifFont(), around, factor);
    font.setItalic(true);
    return font;
}

} // namespace

QFont scaled(QFont font, const QFont& from, double factor) {
    font.setPointSizeF(from.pointSizeF() > 0 ? from.pointSizeF() * factor : from.pixelSize() * 0.75 * factor);
    return font;
}

PaintedSentence::PaintedSentence(const QFont& around, double factor)
    : m_around(around), m_letters(letters(around, factor)),
      m_subscript(scaled(serifFont(), around, kSubscript * factor)), m_metrics(m_around),
      m_lettersMetrics(m_letters), m_subscriptMetrics(m_subscript) {}

double PaintedSentence::widthOf(const Symbol& symbol) const {
    const double base = m_lettersMetrics.horizontalAdvance(text(symbol.base)) + kHair;
    return symbol.sub.empty() ? base : base + m_subscriptMetrics.horizontalAdvance(text(symbol.sub)) + kHair;
}

double PaintedSentence::width(const Sentence& sentence) const {
    double sum = 0;
    for (const Words& words : sentence) {
        sum += words.symbol ? widthOf(words.printed) : m_metrics.horizontalAdvance(onScreen(words.text));
    }
    return sum;
}

Symbol PaintedSentence::fitting(const Symbol& symbol, double room) const {
    if (widthOf(symbol) <= room) {
        return symbol;
    }
    const double forLetters = room - widthOf({{}, symbol.sub});
    return {m_lettersMetrics.elidedText(text(symbol.base), Qt::ElideMiddle, forLetters).toStdString(),
            symbol.sub};
}

void PaintedSentence::drawSymbol(QPainter& painter, QPointF at, const Symbol& symbol) const {
    const QString base = text(symbol.base);
    painter.setFont(m_letters);
    painter.drawText(at, base);
    painter.setFont(m_subscript);
    painter.drawText(at + QPointF(m_lettersMetrics.horizontalAdvance(base) + kHair, m_metrics.descent()),
                     text(symbol.sub));
}

double PaintedSentence::draw(QPainter& painter, QPointF at, const Sentence& sentence, double room) const {
    double x = 0;
    for (const Words& words : sentence) {
        const QPointF here = at + QPointF(x, 0);
        if (words.symbol) {
            const Symbol symbol = fitting(words.printed, room - x);
            drawSymbol(painter, here, symbol);
            x += widthOf(symbol);
        } else {
            const QString shown = onScreen(words.text);
            painter.setFont(m_around);
            painter.drawText(here, shown);
            x += m_metrics.horizontalAdvance(shown);
        }
    }
    return x;
}

} // namespace tailpoint
