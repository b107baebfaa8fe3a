#include "ui/render/fonts.h"

#include "ui/style/theme.h"

#include <QFontMetricsF>
#include <QGlyphRun>
#include <QHash>
#include <QPaintEngine>
#include <QTextLayout>
#include <cmath>

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

const QFont& FontShelf::font(const Run& run, Face face, double pointSize) {
    constexpr std::size_t most = 1'000; // a window resized for hours
    const std::pair key{styleOf(run, face), pointSize};
    if (const auto found = m_sized.find(key); found != m_sized.end())
        return found->second;
    if (m_sized.size() > most)
        m_sized.clear();
    QFont font = this->font(run, face);
    font.setPointSizeF(pointSize);
    return m_sized.emplace(key, font).first->second;
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

double advanceOf(const QFont& font, const QString& text) {
    constexpr qsizetype most = 20'000;
    thread_local QHash<QFont, QHash<QString, double>> known;
    thread_local qsizetype count = 0;
    QHash<QString, double>& ofFont = known[font];
    if (const auto found = ofFont.constFind(text); found != ofFont.constEnd())
        return *found;
    const double advance = QFontMetricsF(font).horizontalAdvance(text);
    if (++count > most) {
        known.clear();
        count = 0;
        return advance;
    }
    return *ofFont.insert(text, advance);
}

namespace {

/// Glyphs of a line whose baseline's left end is the origin; of several fonts, where one has not all letters.
using Glyphs = QList<QGlyphRun>;

Glyphs shaped(const QFont& font, const QString& text) {
    QTextLayout layout(text, font);
    layout.beginLayout();
    QTextLine line = layout.createLine();
    if (line.isValid()) {
        line.setNumColumns(static_cast<int>(text.size())); // a blank at the end too; never broken
        line.setPosition({0, -line.ascent()});
    }
    layout.endLayout();
    return layout.glyphRuns();
}

const Glyphs& glyphsOf(const QFont& font, const QString& text) {
    constexpr qsizetype most = 20'000;
    thread_local QHash<QFont, QHash<QString, Glyphs>> known;
    thread_local qsizetype count = 0;
    if (count > most) {
        known.clear();
        count = 0;
    }
    QHash<QString, Glyphs>& ofFont = known[font];
    if (const auto found = ofFont.constFind(text); found != ofFont.constEnd())
        return *found;
    ++count;
    return *ofFont.insert(text, shaped(fontOfThread(font), text));
}

} // namespace

void drawWords(QPainter& painter, QPointF baseline, const QString& text, const QFont& font) {
    if (painter.paintEngine()->type() != QPaintEngine::Pdf) {
        painter.setFont(fontOfThread(font));
        painter.drawText(baseline, text);
        return;
    }
    for (const QGlyphRun& run : glyphsOf(font, text))
        painter.drawGlyphRun(baseline, run);
}

FontShelf& FontShelf::ofThread() {
    thread_local FontShelf shelf;
    return shelf;
}

} // namespace tailpoint
