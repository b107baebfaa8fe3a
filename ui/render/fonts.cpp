#include "ui/render/fonts.h"

#include "ui/style/theme.h"

#include <QFontMetricsF>
#include <QGlyphRun>
#include <QHash>
#include <QPaintEngine>
#include <QRawFont>
#include <QTextLayout>
#include <algorithm>
#include <cmath>
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

/// A word with the blank behind it, the left end of its baseline at the origin; its glyphs are of several
/// fonts where one has not all letters.
struct ShapedWord {
    QList<QGlyphRun> runs;
    double advance = 0;
};

ShapedWord shaped(const QFont& font, const QString& word) {
    QTextLayout layout(word, font);
    layout.beginLayout();
    QTextLine line = layout.createLine();
    if (line.isValid()) {
        line.setNumColumns(static_cast<int>(word.size())); // never broken
        line.setPosition({0, -line.ascent()});
    }
    layout.endLayout();
    QList<QGlyphRun> runs = layout.glyphRuns();    // Qt has them in the order of a hash of addresses
    const auto begins = [](const QGlyphRun& run) { // its bounding rectangle is the line's
        const QList<QPointF> positions = run.positions();
        return positions.isEmpty() ? 0 : positions.first().x();
    };
    std::stable_sort(runs.begin(), runs.end(),
                     [&](const QGlyphRun& a, const QGlyphRun& b) { return begins(a) < begins(b); });
    return {std::move(runs), advanceOf(font, word)};
}

/// Of one thread.
class ShapedWords {
public:
    const ShapedWord& word(const QFont& font, const QString& word) {
        constexpr qsizetype most = 20'000;
        if (m_count > most) {
            m_known.clear();
            m_words = nullptr;
            m_count = 0;
        }
        if (!m_words || !(font == m_font)) { // a font is dear to look up, and stays for a while
            m_font = font;
            m_words = wordsOf(font);
        }
        if (const auto found = m_words->constFind(word); found != m_words->constEnd())
            return *found;
        ++m_count;
        return *m_words->insert(word, shaped(fontOfThread(font), word));
    }

private:
    using Words = QHash<QString, ShapedWord>;
    std::shared_ptr<Words> wordsOf(const QFont& font) {
        std::shared_ptr<Words>& words = m_known[font];
        if (!words)
            words = std::make_shared<Words>();
        return words;
    }

    QHash<QFont, std::shared_ptr<Words>> m_known; ///< held apart: a hash moves what it holds
    QFont m_font;
    std::shared_ptr<Words> m_words;
    qsizetype m_count = 0;
};

/// Puts glyphs behind one another and draws those of one font at once.
class GlyphLine {
public:
    GlyphLine(QPainter& painter, QPointF baseline, qsizetype letters)
        : m_painter(painter), m_baseline(baseline) {
        m_indexes.reserve(letters);
        m_positions.reserve(letters);
    }

    void add(const QGlyphRun& run, double x) {
        if (!m_indexes.isEmpty() && !(run.rawFont() == m_font))
            draw();
        m_font = run.rawFont();
        m_indexes += run.glyphIndexes();
        const QList<QPointF> positions = run.positions();
        for (const QPointF& position : positions)
            m_positions.append({position.x() + x, position.y()});
    }
    void draw() {
        QGlyphRun run;
        run.setRawFont(m_font);
        run.setGlyphIndexes(std::exchange(m_indexes, {}));
        run.setPositions(std::exchange(m_positions, {}));
        m_painter.drawGlyphRun(m_baseline, run);
    }

private:
    QPainter& m_painter;
    QPointF m_baseline;
    QRawFont m_font;
    QList<quint32> m_indexes;
    QList<QPointF> m_positions;
};

} // namespace

void drawWords(QPainter& painter, QPointF baseline, const QString& text, const QFont& font) {
    if (painter.paintEngine()->type() != QPaintEngine::Pdf) {
        painter.setFont(fontOfThread(font));
        painter.drawText(baseline, text);
        return;
    }
    thread_local ShapedWords words;
    GlyphLine line(painter, baseline, text.size());
    double x = 0;
    for (qsizetype at = 0, end = 0; at < text.size(); at = end) {
        end = text.indexOf(QLatin1Char(' '), at) + 1;
        end = end > 0 ? end : text.size();
        const ShapedWord& word = words.word(font, text.mid(at, end - at));
        for (const QGlyphRun& run : word.runs)
            line.add(run, x);
        x += word.advance;
    }
    line.draw();
}

FontShelf& FontShelf::ofThread() {
    thread_local FontShelf shelf;
    return shelf;
}

} // namespace tailpoint
