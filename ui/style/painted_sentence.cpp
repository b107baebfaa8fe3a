// SPDX-License-Identifier: MIT
#include "ui/style/painted_sentence.h"

#include "core/figure/words.h"
#include "ui/style/symbols.h"
#include "ui/style/theme.h"

#include <QPainter>

namespace tailpoint {

namespace {

constexpr double kSubscript = 0.7; // of the letters' size
constexpr double kHair = 1;        // pixels before a subscript, and behind a symbol: letters lean over

QFont serif(const QFont& around, double factor, bool italic) {
    QFont font = scaled(serifFont(), around, factor);
    font.setItalic(italic);
    return font;
}

} // namespace

QFont scaled(QFont font, const QFont& from, double factor) {
    font.setPointSizeF(from.pointSizeF() > 0 ? from.pointSizeF() * factor : from.pixelSize() * 0.75 * factor);
    return font;
}

PaintedSentence::PaintedSentence(const QFont& around, double factor)
    : m_words(faceWith(around)), m_letters(faceWith(serif(around, factor, true))),
      m_subscript(faceWith(serif(around, kSubscript * factor, false))),
      m_italicSubscript(faceWith(serif(around, kSubscript * factor, true))) {}

PaintedSentence::Face PaintedSentence::faceWith(const QFont& font) {
    return {font, QFontMetricsF(font)};
}

const PaintedSentence::Face& PaintedSentence::faceOf(const Run& run) const {
    return run.script == Script::normal ? m_letters : run.italic ? m_italicSubscript : m_subscript;
}

double PaintedSentence::widthOf(const Symbol& symbol) const {
    double sum = 0;
    for (const Run& run : symbolRuns(symbol)) {
        sum += faceOf(run).metrics.horizontalAdvance(text(run.text)) + kHair;
    }
    return sum;
}

double PaintedSentence::width(const Sentence& sentence) const {
    double sum = 0;
    for (const Words& words : sentence) {
        sum +=
            words.symbol ? widthOf(words.printed) : m_words.metrics.horizontalAdvance(onScreen(words.text));
    }
    return sum;
}

Symbol PaintedSentence::fitting(const Symbol& symbol, double room) const {
    if (widthOf(symbol) <= room) {
        return symbol;
    }
    const double forLetters = room - widthOf({{}, symbol.sub, symbol.slant});
    return {m_letters.metrics.elidedText(text(symbol.base), Qt::ElideMiddle, forLetters).toStdString(),
            symbol.sub, symbol.slant};
}

void PaintedSentence::drawSymbol(QPainter& painter, QPointF at, const Symbol& symbol) const {
    for (const Run& run : symbolRuns(symbol)) {
        const Face& face = faceOf(run);
        const double drop = run.script == Script::sub ? m_words.metrics.descent() : 0;
        painter.setFont(face.font);
        painter.drawText(at + QPointF(0, drop), text(run.text));
        at.rx() += face.metrics.horizontalAdvance(text(run.text)) + kHair;
    }
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
            painter.setFont(m_words.font);
            painter.drawText(here, shown);
            x += m_words.metrics.horizontalAdvance(shown);
        }
    }
    return x;
}

} // namespace tailpoint
