// SPDX-License-Identifier: MIT
#include "ui/handout/page_painter.h"

#include <algorithm>

namespace tailpoint {

namespace {

/// The path of this ink or pen among those that wait.
template <class Kind>
QPainterPath& pathOf(std::vector<std::pair<Kind, QPainterPath>>& waiting, const Kind& kind) {
    const auto same =
        std::find_if(waiting.begin(), waiting.end(), [&](const auto& one) { return one.first == kind; });
    if (same != waiting.end())
        return same->second;
    waiting.emplace_back(kind, QPainterPath());
    waiting.back().second.setFillRule(Qt::WindingFill);
    return waiting.back().second;
}

} // namespace

PagePainter::PagePainter(QPainter& painter)
    : m_painter(painter), m_words(painter, WordPainter::Places::whole) {}

PagePainter::~PagePainter() {
    m_words.flush();
    m_painter.setBrush(Qt::NoBrush);
    for (const auto& [pen, path] : m_strokes) {
        m_painter.setPen(pen);
        m_painter.drawPath(path);
    }
    m_painter.setPen(Qt::NoPen);
    for (const auto& [colour, path] : m_grounds) {
        m_painter.setBrush(colour);
        m_painter.drawPath(path);
    }
}

void PagePainter::setInk(const QColor& ink) {
    if (m_ink == ink)
        return;
    m_words.flush();
    m_painter.setPen(ink);
    m_ink = ink;
}

void PagePainter::words(QPointF baseline, const QString& text, const QFont& font, const QColor& ink) {
    setInk(ink);
    m_words.add(baseline, text, font);
}

void PagePainter::setting(const Setting& setting, QPointF baseline, const QColor& ink) {
    setInk(ink);
    for (const Setting::Text& text : setting.texts)
        m_words.add(baseline + text.at, text.text, *text.font);
    for (const Setting::Shape& shape : setting.shapes) {
        const QPainterPath path = shape.path.translated(baseline);
        if (shape.width > 0)
            stroke(path, QPen(ink, shape.width, Qt::SolidLine, Qt::FlatCap, Qt::MiterJoin));
        else
            fill(path, ink);
    }
}

void PagePainter::fill(const QRectF& rectangle, const QColor& colour) {
    pathOf(m_grounds, colour).addRect(rectangle);
}

void PagePainter::fill(const QPainterPath& path, const QColor& colour) {
    pathOf(m_grounds, colour).addPath(path);
}

void PagePainter::stroke(const QPainterPath& path, const QPen& pen) {
    pathOf(m_strokes, pen).addPath(path);
}

} // namespace tailpoint
