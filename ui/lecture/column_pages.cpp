// SPDX-License-Identifier: MIT
// Which lines are seen: page by page where they are more than the column holds.
#include "ui/lecture/column.h"

#include <QFontMetricsF>
#include <QHash>
#include <algorithm>
#include <cmath>

namespace tailpoint {

/// How far down the newest lines ask the reader to go: to their end, but never past their beginning.
double LectureColumn::newestPlace() const {
    const double over = heightOf(m_blocks) - bodyRoom();
    if (over <= 0)
        return 0;
    for (const Block& block : m_blocks)
        if (block.isNewest || (block.begins && topOf(block) >= over))
            return topOf(block);
    return over;
}

double LectureColumn::lastPlace() const {
    const double over = heightOf(m_blocks) - bodyRoom();
    if (over <= 0)
        return 0;
    for (const Block& block : m_blocks)
        if (topOf(block) >= over)
            return topOf(block);
    return m_blocks.empty() ? 0 : topOf(m_blocks.back());
}

double LectureColumn::nearestPlace(double wanted) const {
    double best = 0;
    for (const Block& block : m_blocks)
        if (std::abs(topOf(block) - wanted) < std::abs(best - wanted))
            best = topOf(block);
    return std::clamp(best, 0.0, std::max(lastPlace(), 0.0));
}

double LectureColumn::topOf(const Block& block) const {
    return &block == &m_blocks.front() ? 0 : std::max(0.0, block.top - kAir * m_measures.serif);
}

bool LectureColumn::isWhole(const Block& block, double scroll) const {
    return block.top >= scroll - 0.5 && block.top + block.setting.height() <= scroll + bodyRoom() + 0.5;
}

bool LectureColumn::hasMore() const {
    return !m_blocks.empty() && place() < lastPlace() - 0.5;
}

bool LectureColumn::pageOn() {
    if (!hasMore())
        return false;
    const double from = place();
    for (const Block& block : m_blocks)
        if (topOf(block) > from + 0.5 && !isWhole(block, from)) {
            scrollTo(std::min(topOf(block), lastPlace()));
            return true;
        }
    return false;
}

bool LectureColumn::pageBack() {
    const double from = place();
    if (from <= m_first + 0.5)
        return false;
    double to = from;
    for (const Block& block : m_blocks)
        if (topOf(block) < from - 0.5 && topOf(block) >= from - bodyRoom()) {
            to = topOf(block);
            break;
        }
    scrollTo(std::max(to < from ? to : m_first, m_first));
    return true;
}

double LectureColumn::leastCapital() const {
    QHash<QFont, double> capitals; // few fonts, many texts
    double least = QFontMetricsF(m_titleFont).tightBoundingRect(QStringLiteral("E")).height();
    for (const Block& block : m_blocks)
        for (const Setting::Text& text : block.setting.texts) {
            auto capital = capitals.constFind(*text.font);
            if (capital == capitals.constEnd())
                capital = capitals.insert(*text.font, capitalOf(*text.font));
            least = std::min(least, text.font->pointSizeF() * logicalDpiY() / 72 * *capital);
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

std::set<std::size_t> LectureColumn::linesSeen() const {
    std::set<std::size_t> seen;
    for (std::size_t i = 0; i < m_blocks.size(); ++i)
        if (isWhole(m_blocks[i], place()))
            seen.insert(i);
    return seen;
}

std::set<std::size_t> LectureColumn::newestLines() const {
    std::set<std::size_t> newest;
    for (std::size_t i = 0; i < m_blocks.size(); ++i)
        if (m_blocks[i].isNewest)
            newest.insert(i);
    return newest;
}

} // namespace tailpoint
