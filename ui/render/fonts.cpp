// SPDX-License-Identifier: MIT
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

namespace {

struct TextHash {
    using is_transparent = void;
    std::size_t operator()(QStringView text) const { return qHash(text); }
};

/// What was found out of texts in fonts. Of one thread.
template <class Found>
class ByFontAndText {
public:
    /// Found by find(font, text) where it isn't known; until the next call.
    template <class Find>
    const Found& at(const QFont& font, QStringView text, Find find) {
        constexpr std::size_t most = 20'000;
        if (m_count > most) {
            m_known.clear();
            m_recent.clear();
            m_count = 0;
        }
        Texts& texts = textsOf(font);
        if (const auto known = texts.find(text); known != texts.end())
            return known->second;
        ++m_count;
        QString own = text.toString();
        Found found = find(font, own);
        return texts.emplace(std::move(own), std::move(found)).first->second;
    }

private:
    using Texts = std::unordered_map<QString, Found, TextHash, std::equal_to<>>;
    /// A font is dear to look up by its value; copies of one are told at a glance.
    Texts& textsOf(const QFont& font) {
        constexpr std::size_t most = 64;
        const auto recent = std::find_if(m_recent.begin(), m_recent.end(),
                                         [&](const auto& entry) { return entry.first.isCopyOf(font); });
        if (recent != m_recent.end())
            return *recent->second;
        std::shared_ptr<Texts>& texts = m_known[font];
        if (!texts)
            texts = std::make_shared<Texts>();
        if (m_recent.size() == most)
            m_recent.clear();
        m_recent.emplace_back(font, texts.get());
        return *texts;
    }

    QHash<QFont, std::shared_ptr<Texts>> m_known;   ///< held apart: a hash moves what it holds
    std::vector<std::pair<QFont, Texts*>> m_recent; ///< held as copies, so that none is mistaken for another
    std::size_t m_count = 0;
};

} // namespace

double advanceOf(const QFont& font, QStringView text) {
    thread_local ByFontAndText<double> known;
    return known.at(font, text, [](const QFont& in, const QString& of) {
        return QFontMetricsF(in).horizontalAdvance(of);
    });
}

namespace {

/// Of one font.
struct ShapedGlyphs {
    QRawFont font;
    QList<quint32> indexes;
    QList<QPointF> positions;
};

/// A word with the blank behind it, the left end of its baseline at the origin; its glyphs are of several
/// fonts where one has not all letters.
struct ShapedWord {
    std::vector<ShapedGlyphs> glyphs;
    double advance = 0;
};

/// What blanks of a text come to in a font.
QList<quint32> blankGlyphs(const QRawFont& font, const QString& text) {
    QString blanks;
    for (const QChar c : text)
        if (c.isSpace())
            blanks += c;
    return blanks.isEmpty() ? QList<quint32>() : font.glyphIndexesForString(blanks);
}

/// Without the blanks, which have no ink: readers of a PDF see the gaps, and one that a font has not would be
/// asked of another font, alone.
ShapedGlyphs inked(const QGlyphRun& run, const QString& text) {
    ShapedGlyphs out{run.rawFont(), {}, {}};
    const QList<quint32> blanks = blankGlyphs(out.font, text), indexes = run.glyphIndexes();
    const QList<QPointF> positions = run.positions();
    for (qsizetype i = 0; i < indexes.size(); ++i)
        if (!blanks.contains(indexes[i])) {
            out.indexes << indexes[i];
            out.positions << positions[i];
        }
    return out;
}

ShapedWord shaped(const QFont& font, const QString& word) {
    QTextLayout layout(word, font);
    layout.beginLayout();
    QTextLine line = layout.createLine();
    if (line.isValid()) {
        line.setNumColumns(static_cast<int>(word.size())); // never broken
        line.setPosition({0, -line.ascent()});
    }
    layout.endLayout();
    ShapedWord out;
    const QList<QGlyphRun> runs = layout.glyphRuns();
    for (const QGlyphRun& run : runs)
        if (ShapedGlyphs glyphs = inked(run, word); !glyphs.indexes.isEmpty())
            out.glyphs.push_back(std::move(glyphs));
    const auto begins = [](const ShapedGlyphs& glyphs) {
        return glyphs.positions.isEmpty() ? 0 : glyphs.positions.first().x();
    };
    std::stable_sort(out.glyphs.begin(), out.glyphs.end(), // Qt has them in the order of a hash of addresses
                     [&](const ShapedGlyphs& a, const ShapedGlyphs& b) { return begins(a) < begins(b); });
    out.advance = line.horizontalAdvance();
    return out;
}

const ShapedWord& shapedWord(const QFont& font, QStringView word) {
    thread_local ByFontAndText<ShapedWord> known;
    return known.at(font, word,
                    [](const QFont& in, const QString& of) { return shaped(fontOfThread(in), of); });
}

} // namespace

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
        const ShapedWord& word = shapedWord(font, all.mid(at, end - at));
        for (const ShapedGlyphs& glyphs : word.glyphs)
            addGlyphs(glyphs.font, glyphs.indexes, glyphs.positions, baseline);
        baseline.rx() += word.advance;
    }
}

void WordPainter::addGlyphs(const QRawFont& font, const QList<quint32>& indexes,
                            const QList<QPointF>& positions, QPointF at) {
    if (!(font == m_font)) {
        flush();
        m_font = font;
    }
    m_indexes += indexes;
    for (const QPointF& position : positions) {
        const QPointF exact = at + position;
        m_positions.append(m_isWhole ? QPointF(std::round(exact.x()), std::round(exact.y())) : exact);
    }
}

void WordPainter::flush() {
    if (m_indexes.isEmpty())
        return;
    QGlyphRun run;
    run.setRawFont(m_font);
    run.setRawData(m_indexes.constData(), m_positions.constData(), static_cast<int>(m_indexes.size()));
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
