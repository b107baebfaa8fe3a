// SPDX-License-Identifier: MIT
#include "ui/render/shaped_words.h"

#include "ui/render/fonts.h"

#include <QFontMetricsF>
#include <QGlyphRun>
#include <QHash>
#include <QTextLayout>
#include <algorithm>
#include <array>
#include <functional>
#include <memory>
#include <optional>
#include <unordered_map>
#include <utility>

namespace tailpoint {

namespace {

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
    ShapedGlyphs out{run.rawFont(), {}, {}, {}};
    const QList<quint32> blanks = blankGlyphs(out.font, text), indexes = run.glyphIndexes();
    const QList<QPointF> positions = run.positions();
    for (qsizetype i = 0; i < indexes.size(); ++i)
        if (!blanks.contains(indexes[i])) {
            out.indexes << indexes[i];
            out.positions << positions[i];
            out.wholes << whole(positions[i]);
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

bool isSame(const ShapedGlyphs& a, const ShapedGlyphs& b) {
    return a.font == b.font && a.indexes == b.indexes && a.positions == b.positions;
}

/// As one.
ShapedWord together(const ShapedWords& words) {
    ShapedWord all;
    for (const ShapedWord* word : words) {
        for (const ShapedGlyphs& glyphs : word->glyphs) {
            if (all.glyphs.empty() || !(all.glyphs.back().font == glyphs.font))
                all.glyphs.push_back({glyphs.font, {}, {}, {}});
            all.glyphs.back().indexes += glyphs.indexes;
            for (const QPointF& position : glyphs.positions)
                all.glyphs.back().positions << position + QPointF(all.advance, 0);
        }
        all.advance += word->advance;
    }
    return all;
}

constexpr QStringView kFigures = u"0123456789.";

/// A word round a number: what stands before its figures, and behind.
struct Numeral {
    QStringView head, figures, tail;
};

bool isDigit(QChar c) {
    return c >= u'0' && c <= u'9';
}

std::optional<Numeral> numeralIn(QStringView word) {
    constexpr qsizetype most = 8; // of what stands beside
    const auto* const begin = std::find_if(word.begin(), word.end(), isDigit);
    const auto* end = std::find_if_not(begin, word.end(), [](QChar c) { return isDigit(c) || c == u'.'; });
    while (end != begin && *(end - 1) == u'.') // of the sentence
        --end;
    const QStringView head(word.begin(), begin), tail(end, word.end());
    if (begin == end || head.size() > most || tail.size() > most || std::any_of(end, word.end(), isDigit))
        return std::nullopt;
    return Numeral{head, QStringView(begin, end), tail};
}

struct TextHash {
    using is_transparent = void;
    std::size_t operator()(QStringView text) const { return qHash(text); }
};
template <class Found>
using ByText = std::unordered_map<QString, Found, TextHash, std::equal_to<>>;

/// What was found out of texts in a font.
class WordsInFont {
public:
    explicit WordsInFont(const QFont& font) : m_font(font) {}

    void parts(QStringView word, ShapedWords& out) {
        const auto numeral = numeralIn(word);
        if (!numeral || !isApart(*numeral)) {
            out.push_back(&shapedWhole(word));
            return;
        }
        if (!numeral->head.isEmpty())
            out.push_back(&besideFigures(numeral->head, true).word);
        for (const QChar figure : numeral->figures)
            out.push_back(&partOf(figure).word);
        if (!numeral->tail.isEmpty())
            out.push_back(&besideFigures(numeral->tail, false).word);
    }

    double width(QStringView text) {
        const auto numeral = numeralIn(text);
        if (!numeral || !isApart(*numeral))
            return widthWhole(text);
        double all = numeral->head.isEmpty() ? 0 : besideFigures(numeral->head, true).width;
        for (const QChar figure : numeral->figures)
            all += partOf(figure).width;
        return numeral->tail.isEmpty() ? all : all + besideFigures(numeral->tail, false).width;
    }

    std::size_t count() const { return m_words.size() + m_widths.size(); }
    void forget() { *this = WordsInFont(QFont(m_font)); }

private:
    struct Part {
        ShapedWord word;
        double width = 0;
        bool isApart = false; ///< next to a figure it looks as it does alone, and so does the figure
    };

    Part made(QStringView text) const {
        const QString own = text.toString();
        return {shaped(fontOfThread(m_font), own), metric(own), false};
    }
    double metric(const QString& text) const { return QFontMetricsF(m_font).horizontalAdvance(text); }

    const Part& partOf(QChar figure) {
        std::optional<Part>& part =
            m_figures[static_cast<std::size_t>(figure == u'.' ? 10 : figure.unicode() - u'0')];
        if (!part)
            part = made(QStringView(&figure, 1));
        return *part;
    }

    /// Whether a text set as one is what its parts are beside one another.
    bool isTogether(const QString& text, const std::vector<const Part*>& parts) const {
        ShapedWords words;
        double width = 0;
        for (const Part* part : parts) {
            words.push_back(&part->word);
            width += part->width;
        }
        const ShapedWord one = shaped(fontOfThread(m_font), text), joined = together(words);
        return one.advance == joined.advance && metric(text) == width &&
               std::equal(one.glyphs.begin(), one.glyphs.end(), joined.glyphs.begin(), joined.glyphs.end(),
                          isSame);
    }

    /// Told by a text in which each figure follows each.
    bool areFiguresApart() {
        if (m_areFiguresApart)
            return *m_areFiguresApart;
        QString text;
        std::vector<const Part*> parts;
        for (const QChar first : kFigures)
            for (const QChar second : kFigures)
                for (const QChar figure : {first, second}) {
                    text += figure;
                    parts.push_back(&partOf(figure));
                }
        return m_areFiguresApart.emplace(isTogether(text, parts));
    }

    const Part& besideFigures(QStringView text, bool isBefore) {
        ByText<Part>& known = isBefore ? m_heads : m_tails;
        if (const auto found = known.find(text); found != known.end())
            return found->second;
        Part& part = known.emplace(text.toString(), made(text)).first->second;
        part.isApart = std::all_of(kFigures.begin(), kFigures.end() - 1, [&](QChar figure) {
            const Part& beside = partOf(figure);
            return isBefore ? isTogether(text.toString() + figure, {&part, &beside})
                            : isTogether(figure + text.toString(), {&beside, &part});
        });
        return part;
    }

    bool isApart(const Numeral& numeral) {
        return areFiguresApart() && (numeral.head.isEmpty() || besideFigures(numeral.head, true).isApart) &&
               (numeral.tail.isEmpty() || besideFigures(numeral.tail, false).isApart);
    }

    const ShapedWord& shapedWhole(QStringView word) {
        if (const auto known = m_words.find(word); known != m_words.end())
            return known->second;
        QString own = word.toString();
        ShapedWord found = shaped(fontOfThread(m_font), own);
        return m_words.emplace(std::move(own), std::move(found)).first->second;
    }

    double widthWhole(QStringView text) {
        if (const auto known = m_widths.find(text); known != m_widths.end())
            return known->second;
        QString own = text.toString();
        const double found = metric(own);
        return m_widths.emplace(std::move(own), found).first->second;
    }

    QFont m_font;
    ByText<ShapedWord> m_words;
    ByText<double> m_widths;
    ByText<Part> m_heads, m_tails;
    std::array<std::optional<Part>, 11> m_figures;
    std::optional<bool> m_areFiguresApart;
};

/// Of one thread.
class WordsInFonts {
public:
    static WordsInFonts& ofThread() {
        thread_local WordsInFonts words;
        return words;
    }

    /// A font is dear to look up by its value; copies of one are told at a glance, the last one first.
    WordsInFont& in(const QFont& font) {
        constexpr std::size_t most = 64;
        const auto recent = std::find_if(m_recent.begin(), m_recent.end(),
                                         [&](const auto& entry) { return entry.first.isCopyOf(font); });
        if (recent != m_recent.end()) {
            std::swap(*recent, m_recent.front());
            return kept(*m_recent.front().second);
        }
        std::shared_ptr<WordsInFont>& words = m_known[font];
        if (!words)
            words = std::make_shared<WordsInFont>(font);
        if (m_recent.size() == most)
            m_recent.clear();
        m_recent.emplace_back(font, words.get());
        return kept(*words);
    }

private:
    static WordsInFont& kept(WordsInFont& words) {
        constexpr std::size_t most = 20'000; // hours of changing values
        if (words.count() > most)
            words.forget();
        return words;
    }

    QHash<QFont, std::shared_ptr<WordsInFont>> m_known;
    std::vector<std::pair<QFont, WordsInFont*>>
        m_recent; ///< held as copies, so that none is mistaken for another
};

} // namespace

double advanceOf(const QFont& font, QStringView text) {
    return WordsInFonts::ofThread().in(font).width(text);
}

const ShapedWords& shapedWords(const QFont& font, QStringView word) {
    thread_local ShapedWords parts;
    parts.clear();
    WordsInFonts::ofThread().in(font).parts(word, parts);
    return parts;
}

} // namespace tailpoint
