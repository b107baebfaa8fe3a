// What stands where in the column: as large as the whole step allows, never under the least size.
#include "ui/lecture/column.h"

#include <QFontMetricsF>
#include <QTextLayout>
#include <algorithm>
#include <array>

namespace tailpoint {

namespace {

constexpr std::array kScales{1.35, 1.25, 1.15, 1.08, 1.0}; ///< of the least size: the largest that fits
constexpr double kTitle = 1.22;                            ///< of the least size
constexpr double kFormula = 1.07; ///< of the words: what stands over and under a fraction bar is 0.94 of it
constexpr double kScript = 0.8;   ///< of the size of a line: what is smaller is a subscript or an exponent
constexpr double kAir = 0.35;     ///< ems between the title and the first line
constexpr double kLineHeight = 1.28;
constexpr int kTitleLines = 3;

/// Sizes of fonts are in points here: Qt 6.4 rounds pixels.
double points(double pixels, int dotsPerInch) {
    return pixels * 72 / dotsPerInch;
}

std::vector<QString> wrapped(const QString& text, const QFont& font, double width) {
    std::vector<QString> lines;
    QTextLayout layout(text, font);
    layout.beginLayout();
    for (QTextLine line = layout.createLine(); line.isValid(); line = layout.createLine()) {
        line.setLineWidth(width);
        lines.push_back(text.mid(line.textStart(), line.textLength()).trimmed());
    }
    layout.endLayout();
    return lines;
}

double widestOf(const std::vector<QString>& lines, const QFont& font) {
    double wide = 0;
    for (const QString& line : lines)
        wide = std::max(wide, QFontMetricsF(font).horizontalAdvance(line));
    return wide;
}

/// Magnitudes and directions stand on the figure: where the table is too wide they are left to it.
Table narrowed(const Table& table, const QFont& words, TypeSize size, double room) {
    constexpr double kBoundless = 1e6;
    if (table.head.size() < 5 || setTable(table, words, size, kBoundless).width <= room)
        return table;
    Table narrow = table;
    const auto drop = [](std::vector<Formula>& row) {
        if (row.size() >= 5)
            row.erase(row.begin() + 1, row.end() - 2);
    };
    drop(narrow.head);
    for (auto& row : narrow.rows)
        drop(row);
    return narrow;
}

} // namespace

void LectureColumn::layTitle() {
    const double room = m_measures.textWidth();
    std::vector<QString> lines;
    for (const double scale : {kTitle, 1.1, 1.0}) {
        m_titleFont = sansFont();
        m_titleFont.setHintingPreference(QFont::PreferNoHinting);
        m_titleFont.setWeight(QFont::DemiBold);
        m_titleFont.setPointSizeF(points(scale * m_measures.sans, logicalDpiY()));
        lines = wrapped(m_title, m_titleFont, room);
        if (static_cast<int>(lines.size()) <= kTitleLines && widestOf(lines, m_titleFont) <= room)
            break;
    }
    const QFontMetricsF metrics(m_titleFont);
    const double leading = 1.16 * (metrics.ascent() + metrics.descent());
    m_titleLines.clear();
    double y = m_measures.margin + metrics.capHeight();
    for (const QString& line : lines) {
        m_titleLines.emplace_back(line, QPointF(m_measures.margin, y));
        y += leading;
    }
    m_titleHeight = y - leading + metrics.descent() + 0.35 * m_measures.margin;
}

void LectureColumn::add(std::vector<Block>& out, Setting setting, double& y, double x, Ink ink,
                        bool newest) const {
    if (setting.isEmpty())
        return;
    const double top = y;
    y += setting.height();
    out.push_back({std::move(setting), x, top, ink, newest});
}

bool LectureColumn::isOfSum(const Working& working) const {
    if (!working.subject || m_sum.empty())
        return false;
    const Formula& subject = *working.subject;
    return subject.kind == FormulaKind::symbol &&
           (keyOf(subject) == keyOf(magnitudeSymbol(m_sum)) || subject.sub == m_sum);
}

void LectureColumn::layWorking(std::vector<Block>& out, const Line& line, double& y, double scale,
                               bool newest, bool& broken) const {
    const Working& working = m_stop.step.workings[line.index];
    const TypeSize size{scale * kFormula * m_measures.serif, logicalDpiY()};
    bool isBroken = false;
    const auto rows = setWorkingByLine(working, size, m_measures.textWidth(), &isBroken);
    broken = broken || isBroken;
    for (int i = 0; i < line.parts && i < static_cast<int>(rows.size()); ++i) {
        const bool last = i + 1 == static_cast<int>(rows.size());
        const Ink ink = last && working.value && isOfSum(working) ? Ink::sum : Ink::plain;
        y += (i == 0 ? 0.55 : 0.4) * size.pixels;
        add(out, rows[static_cast<std::size_t>(i)], y, m_measures.margin, ink,
            newest && (i + 1 == line.parts));
    }
}

bool LectureColumn::layBody(double scale, std::size_t beat, std::vector<Block>& out) const {
    const Step& step = m_stop.step;
    const double em = scale * m_measures.serif, room = m_measures.textWidth();
    const TypeSize size{em, logicalDpiY()};
    QFont words = serifFont();
    words.setHintingPreference(QFont::PreferNoHinting);
    words.setPointSizeF(points(em, logicalDpiY()));
    double y = kAir * em;
    bool broken = false;
    std::vector<int> parts(step.workings.size(), 0);
    std::vector<bool> newest(step.workings.size(), false);
    const auto prose = [&](const Prose& text, Ink ink, bool isNew, double before) {
        y += before * em;
        const double indent = ink == Ink::note ? 0.6 * em : 0;
        add(out, setProse(text, words, size, room - indent, kLineHeight), y, m_measures.margin + indent, ink,
            isNew);
    };
    const auto flushWorkings = [&] {
        for (std::size_t i = 0; i < parts.size(); ++i)
            if (parts[i] > 0)
                layWorking(out, {Line::Kind::working, i, parts[i]}, y, scale, newest[i], broken);
        parts.assign(parts.size(), 0);
    };
    for (std::size_t b = 0; b <= beat && b < m_stop.beats.size(); ++b)
        for (const Line& line : m_stop.beats[b])
            if (line.kind == Line::Kind::working) {
                parts[line.index] = line.parts;
                newest[line.index] = b == beat;
            }
    for (std::size_t b = 0; b <= beat && b < m_stop.beats.size(); ++b)
        for (const Line& line : m_stop.beats[b]) {
            const bool isNew = b == beat;
            if (line.kind == Line::Kind::reasoning) {
                prose(step.reasoning[line.index], Ink::plain, isNew, line.index == 0 ? 0 : 0.3);
            } else if (line.kind == Line::Kind::table) {
                y += 0.6 * em;
                add(out, setTable(narrowed(*step.table, words, size, room), words, size, room), y,
                    m_measures.margin, Ink::plain, isNew);
            } else if (line.kind == Line::Kind::conclusion && line.index < step.conclusion.size()) {
                flushWorkings();
                prose(step.conclusion[line.index], Ink::plain, isNew, line.index == 0 ? 0.6 : 0.3);
            }
        }
    flushWorkings();
    if (m_notes)
        for (const Prose& note : step.notes)
            prose(note, Ink::note, true, 0.6);
    return !broken;
}

double LectureColumn::heightOf(const std::vector<Block>& blocks) const {
    return blocks.empty() ? 0 : blocks.back().top + blocks.back().setting.height() + 0.4 * m_measures.serif;
}

void LectureColumn::relayout() {
    if (m_measures.height <= 0)
        return;
    layTitle();
    m_blocks.clear();
    if (m_titleOnly || m_stop.beats.empty())
        return;
    // The size is that of the whole step, so that nothing changes its place while lines come.
    for (const double scale : kScales) {
        std::vector<Block> whole;
        const bool unbroken = layBody(scale, m_stop.lastBeat(), whole);
        double wide = 0;
        for (const Block& block : whole)
            wide = std::max(wide, block.x + block.setting.width);
        const bool fits =
            unbroken && heightOf(whole) <= bodyRoom() && wide <= m_measures.margin + m_measures.textWidth();
        if (!fits && scale != kScales.back())
            continue;
        layBody(scale, m_beat, m_blocks);
        break;
    }
    m_scroll = std::clamp(m_scroll, 0.0, furthest());
}

double LectureColumn::wanted() const {
    const double over = heightOf(m_blocks) - bodyRoom();
    if (over <= 0)
        return 0;
    for (const Block& block : m_blocks) {
        const double above = block.top - kAir * m_measures.serif;
        if (block.isNewest || above >= over)
            return std::max(0.0, above);
    }
    return over;
}

double LectureColumn::furthest() const {
    const bool over = heightOf(m_blocks) > bodyRoom();
    return over ? std::max(wanted(), m_blocks.back().top - kAir * m_measures.serif) : 0;
}

double LectureColumn::leastCapital() const {
    double least = QFontMetricsF(m_titleFont).tightBoundingRect(QStringLiteral("E")).height();
    for (const Block& block : m_blocks) {
        double largest = 0;
        for (const Setting::Text& text : block.setting.texts)
            largest = std::max(largest, text.font.pointSizeF());
        for (const Setting::Text& text : block.setting.texts) {
            // subscripts and exponents are small by their nature: the letter that they belong to counts
            if (text.font.pointSizeF() >= kScript * largest)
                least = std::min(least, text.font.pointSizeF() * logicalDpiY() / 72 * capitalOf(text.font));
        }
    }
    return least;
}

double LectureColumn::widest() const {
    double wide = 0;
    for (const auto& [line, at] : m_titleLines)
        wide = std::max(wide, at.x() + QFontMetricsF(m_titleFont).horizontalAdvance(line));
    for (const Block& block : m_blocks)
        wide = std::max(wide, block.x + block.setting.width);
    return wide;
}

bool LectureColumn::newestIsSeen() const {
    const Block* first = nullptr;
    for (const Block& block : m_blocks)
        if (block.isNewest) {
            first = &block;
            break;
        }
    if (first == nullptr)
        return true;
    const Block& last = m_blocks.back();
    const bool whole = last.top + last.setting.height() - m_scroll <= bodyRoom() + 1;
    const bool fromItsBeginning = first->top - m_scroll <= 1.5 * kAir * m_measures.serif;
    return first->top >= m_scroll && (whole || fromItsBeginning);
}

} // namespace tailpoint
