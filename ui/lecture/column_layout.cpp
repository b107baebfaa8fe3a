// SPDX-License-Identifier: MIT
// What stands where in the column: as large as the whole step allows, never under the least size.
#include "ui/lecture/column.h"

#include <QFontMetricsF>
#include <QTextLayout>
#include <algorithm>
#include <array>
#include <cmath>
#include <span>

namespace tailpoint {

namespace {

/// Of the least size: the largest that fits. What is more is read page by page. Even the least of them leaves
/// a subscript, which is no smaller than the least size, smaller than its letter.
constexpr std::array kScales{1.35, 1.25, 1.16, 1.08, 1.03};
constexpr std::array kFewWords{1.9, 1.7, 1.5, 1.35, 1.25, 1.16, 1.08, 1.03}; ///< the question, the answer
constexpr double kTitle = 1.22;                                              ///< of the least size
/// Formulas by the words; and at the least by the least size: what stands over and under a fraction bar is
/// 0.94 of it.
constexpr double kFormula = 1.03, kLeastFormula = 1.07;
constexpr double kLineHeight = 1.28;
constexpr int kTitleLines = 2; ///< rather smaller than more

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

/// Lines of a paragraph. Where next to nothing would be left for the last one, the others are set narrower.
std::vector<Setting> balanced(const Prose& text, const QFont& words, TypeSize size, double room) {
    constexpr double kCrumb = 0.2;
    const auto lines = setProseLines(text, words, size, room, kLineHeight);
    for (const double part : {1.0, 0.94, 0.88, 0.82}) {
        auto narrower = setProseLines(text, words, size, part * room, kLineHeight);
        if (narrower.size() == lines.size() && (lines.size() < 2 || narrower.back().width >= kCrumb * room))
            return narrower;
    }
    return lines;
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

void LectureColumn::add(std::vector<Block>& out, Setting setting, double& y, double x, Ink ink, bool newest,
                        bool begins) const {
    if (setting.isEmpty())
        return;
    const double top = y;
    y += setting.height();
    out.push_back({std::move(setting), x, top, ink, newest, begins});
}

namespace {

/// The sum's magnitude or one of its angles.
bool isOfSum(const Working& working) {
    if (!working.subject || working.subject->id.of != kSumVector)
        return false;
    switch (working.subject->id.what) {
    case What::magnitude:
    case What::direction:
    case What::fromX:
    case What::acute:
        return true;
    default:
        return false;
    }
}

} // namespace

void LectureColumn::layWorking(std::vector<Block>& out, const BeatLine& line, double& y, double scale,
                               int seen, bool& broken) const {
    const Working& working = m_stop.step.workings[line.index];
    const double em = std::max(scale * kFormula, kLeastFormula) * m_measures.serif;
    const TypeSize size{em, logicalDpiY(), m_measures.serif};
    bool isBroken = false;
    const auto rows = setWorkingByLine(working, size, m_measures.textWidth(), &isBroken);
    broken = broken || isBroken;
    for (int i = 0; i < line.parts && i < static_cast<int>(rows.size()); ++i) {
        const bool last = i + 1 == static_cast<int>(rows.size());
        const Ink ink = last && working.value && isOfSum(working) ? Ink::sum : Ink::plain;
        y += (i == 0 ? 0.55 : 0.4) * size.pixels;
        const Setting& row = rows[static_cast<std::size_t>(i)];
        bool begins = i == 0;
        for (Setting& one : row.height() > bodyRoom() ? rowsOf(row) : std::vector<Setting>{row}) {
            add(out, std::move(one), y, m_measures.margin, ink, i >= seen, begins);
            begins = false;
        }
    }
}

bool LectureColumn::layBody(double scale, std::size_t beat, std::vector<Block>& out) const {
    const Step& step = m_stop.step;
    const double em = scale * m_measures.serif, room = m_measures.textWidth();
    const TypeSize size{em, logicalDpiY(), m_measures.serif};
    QFont words = serifFont();
    words.setHintingPreference(QFont::PreferNoHinting);
    words.setPointSizeF(points(em, logicalDpiY()));
    double y = kAir * em;
    bool broken = false;
    std::vector<int> parts(step.workings.size(), 0);
    std::vector<int> seen(step.workings.size(), 0); ///< of the parts, before this press
    const auto prose = [&](const Prose& text, Ink ink, bool isNew, double before) {
        y += before * em;
        const double indent = ink == Ink::note ? 0.6 * em : 0;
        bool begins = true;
        for (Setting& line : balanced(text, words, size, room - indent)) {
            add(out, std::move(line), y, m_measures.margin + indent, ink, isNew, begins);
            begins = false;
        }
    };
    const auto flushWorkings = [&] {
        for (std::size_t i = 0; i < parts.size(); ++i)
            if (parts[i] > 0)
                layWorking(out, {BeatLine::Kind::working, i, parts[i]}, y, scale, seen[i], broken);
        parts.assign(parts.size(), 0);
    };
    for (std::size_t b = 0; b <= beat && b < m_stop.beats.size(); ++b)
        for (const BeatLine& line : m_stop.beats[b])
            if (line.kind == BeatLine::Kind::working) {
                seen[line.index] = b == beat ? parts[line.index] : line.parts;
                parts[line.index] = line.parts;
            }
    for (std::size_t b = 0; b <= beat && b < m_stop.beats.size(); ++b)
        for (const BeatLine& line : m_stop.beats[b]) {
            const bool isNew = b == beat;
            if (line.kind == BeatLine::Kind::reasoning) {
                prose(step.reasoning[line.index], Ink::plain, isNew, line.index == 0 ? 0 : 0.3);
            } else if (line.kind == BeatLine::Kind::table) {
                y += (0.6 - kTableLeading) * em;
                for (Setting& row :
                     setTableRows(narrowed(*step.table, words, size, room), words, size, room)) {
                    y += kTableLeading * em;
                    add(out, std::move(row), y, m_measures.margin, Ink::plain, isNew);
                }
            } else if (line.kind == BeatLine::Kind::conclusion && line.index < step.conclusion.size()) {
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

/// A paragraph's last line has next to nothing in it.
bool LectureColumn::endsInACrumb(const std::vector<Block>& blocks) const {
    constexpr double kCrumb = 0.25;
    for (std::size_t i = 1; i < blocks.size(); ++i) {
        const bool continues = blocks[i].top <= blocks[i - 1].top + blocks[i - 1].setting.height() + 0.5;
        const bool last =
            i + 1 == blocks.size() || blocks[i + 1].top > blocks[i].top + blocks[i].setting.height() + 0.5;
        if (continues && last && blocks[i].setting.width < kCrumb * m_measures.textWidth())
            return true;
    }
    return false;
}

void LectureColumn::relayout() {
    if (m_measures.height <= 0)
        return;
    layTitle();
    m_blocks.clear();
    if (m_titleOnly || m_stop.beats.empty())
        return;
    const StepKey key = m_stop.step.key;
    const bool few = key == StepKey::question || key == StepKey::answer || key == StepKey::end;
    const std::span<const double> scales = few ? std::span<const double>(kFewWords) : kScales;
    // The size is that of the whole step, so that nothing changes its place while lines come.
    for (const double scale : scales) {
        std::vector<Block> whole;
        const bool unbroken = layBody(scale, m_stop.lastBeat(), whole);
        double wide = 0;
        for (const Block& block : whole)
            wide = std::max(wide, block.x + block.setting.width);
        const bool fits = unbroken && heightOf(whole) <= bodyRoom() &&
                          wide <= m_measures.margin + m_measures.textWidth() && !(few && endsInACrumb(whole));
        if (!fits && scale != scales.back())
            continue;
        layBody(scale, m_beat, m_blocks);
        break;
    }
}

} // namespace tailpoint
