// SPDX-License-Identifier: MIT
#include "ui/render/fonts.h"

#include "ui/render/shaped_words.h"
#include "ui/style/theme.h"

#include <QFontMetricsF>
#include <QGlyphRun>
#include <QHash>
#include <QPaintEngine>
#include <QRawFont>
#include <QTextLayout>
#include <algorithm>
#include <cmath>
#include <functional>
#include <memory>
#include <utility>

namespace tailpoint {
namespace {

/// Heights are rounded up to this part of the size, so that a changing digit doesn't move a label.
constexpr double kHeightStep = 1.0 / 16;

double roundedUp(double height) {
    return std::max(0.0, std::ceil(height / kHeightStep - 0.02) * kHeightStep);
}

unsigned styleOf(const Run& run, Face face) {
    return (face == Face::serif ? 1U : 0U) | (run.italic ? 2U : 0U) | (run.bold ? 4U : 0U);
}

} // namespace

const QFont& FontShelf::font(const Run& run, Face face) {
    std::optional<QFont>& place = m_fonts[styleOf(run, face)];
    if (!place) {
        QFont font = face == Face::serif ? serifFont() : sansFont();
        font.setItalic(run.italic);
        font.setBold(run.bold);
        font.setHintingPreference(QFont::PreferNoHinting);
        font.setPixelSize(kSize);
        place = font;
    }
    return *place;
}

const SharedFont& FontShelf::font(const Run& run, Face face, double pointSize) {
    constexpr std::size_t most = 1'000; // a window resized for hours
    const std::pair key{styleOf(run, face), pointSize};
    if (const auto found = m_sized.find(key); found != m_sized.end())
        return found->second;
    if (m_sized.size() > most)
        m_sized.clear();
    QFont font = this->font(run, face);
    font.setPointSizeF(pointSize);
    return m_sized.emplace(key, std::make_shared<const QFont>(font)).first->second;
}

const RunExtent& FontShelf::extent(const Run& run, Face face) {
    m_key.assign(1, static_cast<char>('0' + styleOf(run, face)));
    m_key += run.text;
    if (const auto it = m_extents.find(m_key); it != m_extents.end())
        return it->second;
    constexpr std::size_t most = 20'000; // hours of dragging
    if (m_extents.size() > most)
        m_extents.clear();
    return m_extents.emplace(m_key, measured(run, face)).first->second;
}

RunExtent FontShelf::measured(const Run& run, Face face) {
    const QFontMetricsF metrics(font(run, face));
    const QString text = QString::fromStdString(run.text);
    const QRectF tight = metrics.tightBoundingRect(text);
    const double advance = metrics.horizontalAdvance(text) / kSize;
    RunExtent out;
    out.width = advance;
    out.ascent = roundedUp(-tight.top() / kSize);
    out.descent = roundedUp(tight.bottom() / kSize);
    out.before = std::max(0.0, -tight.left() / kSize);
    out.after = std::max(0.0, tight.right() / kSize - advance);
    return out;
}

namespace {

/// A font that shares nothing with this one.
QFont parted(const QFont& font) {
    QFont own = font;
    own.setStretch(font.stretch() + 1); // a change gives it a state of its own
    own.setStretch(font.stretch());
    return own;
}

} // namespace

const QFont& fontOfThread(const QFont& font) {
    constexpr qsizetype most = 1'000;
    thread_local QHash<QFont, QFont> fonts;
    if (const auto found = fonts.constFind(font); found != fonts.constEnd())
        return *found;
    if (fonts.size() > most)
        fonts.clear();
    const QFont own = parted(font);
    QFontMetricsF(own).horizontalAdvance(QLatin1Char('x')); // else every copy looks for its glyphs anew
    return *fonts.insert(own, own);
}

WordPainter::WordPainter(QPainter& painter, Places places)
    : m_painter(painter), m_isPdf(painter.paintEngine()->type() == QPaintEngine::Pdf),
      m_isWhole(places == Places::whole) {}

void WordPainter::add(QPointF baseline, const QString& text, const QFont& font) {
    if (!m_isPdf) {
        m_painter.setFont(fontOfThread(font));
        m_painter.drawText(baseline, text);
        return;
    }
    const QStringView all(text);
    for (qsizetype at = 0, end = 0; at < all.size(); at = end) {
        end = all.indexOf(QLatin1Char(' '), at) + 1;
        end = end > 0 ? end : all.size();
        for (const ShapedWord* word : shapedWords(font, all.mid(at, end - at))) {
            const QPointF place = m_isWhole ? whole(baseline) : baseline;
            for (const ShapedGlyphs& glyphs : word->glyphs)
                addGlyphs(glyphs.font, glyphs.indexes, m_isWhole ? glyphs.wholes : glyphs.positions, place);
            baseline.rx() += word->advance;
        }
    }
}

void WordPainter::addGlyphs(const QRawFont& font, const QList<quint32>& indexes,
                            const QList<QPointF>& positions, QPointF at) {
    if (!(font == m_font)) {
        flush();
        m_font = font;
    }
    m_indexes.insert(m_indexes.end(), indexes.begin(), indexes.end());
    for (const QPointF& position : positions)
        m_positions.push_back(at + position);
}

void WordPainter::flush() {
    if (m_indexes.empty())
        return;
    QGlyphRun run;
    run.setRawFont(m_font);
    run.setRawData(m_indexes.data(), m_positions.data(), static_cast<int>(m_indexes.size()));
    m_painter.drawGlyphRun({0, 0}, run);
    m_indexes.clear();
    m_positions.clear();
}

void drawWords(QPainter& painter, QPointF baseline, const QString& text, const QFont& font) {
    WordPainter(painter).add(baseline, text, font);
}

FontShelf& FontShelf::ofThread() {
    thread_local FontShelf shelf;
    return shelf;
}

} // namespace tailpoint
