// SPDX-License-Identifier: MIT
// How the board looks: as large as its room allows, never under the least size.
#include "ui/lecture/vote_board.h"
#include "ui/lecture/vote_letters.h"
#include "ui/style/symbols.h"

#include <QFontMetricsF>
#include <QPainter>
#include <algorithm>
#include <cmath>
#include <utility>

namespace tailpoint {

namespace {

constexpr double kBoardTitle = 1.22, kBoardRow = 1.05, kKeys = 1.0; ///< by the least size
constexpr double kWords = 1.03, kBoardFormula = 1.1, kBoardLineHeight = 1.28;
constexpr double kHeadings[]{1.7, 1.5, 1.35, 1.22}; ///< the largest whose line is not broken

// Ems of the least size.
constexpr double kLetter = 1.5, kCount = 3.6; ///< left and right of a choice's words
constexpr double kRowAir = 0.8, kClosedAir = 0.5, kBars = 0.7;

double heightOfWords(const QString& text, const QFont& font, double wide) {
    return QFontMetricsF(font).boundingRect(QRectF(0, 0, wide, 1e6), Qt::TextWordWrap, text).height();
}

/// What is no line of the calculation has no left side: its letters are one, so that it reads as an equation.
Working asEquation(Working working) {
    if (!working.subject && working.general)
        working.subject = std::exchange(working.general, std::nullopt);
    return working;
}

} // namespace

QFont VoteBoard::font(double factor, bool bold) const {
    QFont font = sansFont();
    font.setHintingPreference(QFont::PreferNoHinting);
    font.setPointSizeF(factor * m_measures.sans * 72 / logicalDpiY());
    font.setWeight(bold ? QFont::DemiBold : QFont::Normal);
    return font;
}

/// "P = 180 N or 513 N"
Setting VoteBoard::setHeading(const QString& value) const {
    Prose prose{{symbol(poll().symbol, {})}};
    appendText(prose, (QStringLiteral("\u00A0=\u00A0") + value).toStdString());
    Setting set;
    for (const double factor : kHeadings) {
        QFont words = serifFont();
        words.setHintingPreference(QFont::PreferNoHinting);
        words.setPointSizeF(factor * m_measures.serif * 72 / logicalDpiY());
        const TypeSize size{factor * m_measures.serif, logicalDpiY(), m_measures.serif};
        set = setProse(prose, words, size, m_measures.textWidth());
        if (set.width <= m_measures.textWidth() && set.height() < 1.9 * size.pixels)
            break;
    }
    return set;
}

double VoteBoard::paintHeading(QPainter& painter, const QString& value, double y) const {
    const Setting set = setHeading(value);
    painter.setPen(m_theme->ink);
    set.paint(painter, {m_measures.margin, y + set.ascent});
    return y + set.height() + 0.3 * m_measures.sans;
}

double VoteBoard::paintWords(QPainter& painter, const QString& text, const QFont& font, const QColor& colour,
                             double y) const {
    const double wide = m_measures.textWidth();
    painter.setFont(font);
    painter.setPen(colour);
    painter.drawText(QRectF(m_measures.margin, y, wide, height()), Qt::TextWordWrap, text);
    return y + heightOfWords(text, font, wide);
}

Setting VoteBoard::setAsked() const {
    return setProse(poll().asked, font(1), {kWords * m_measures.serif, logicalDpiY(), m_measures.serif},
                    m_measures.textWidth(), 1.2);
}

/// A choice; of the right one, once it may be told, that it is right.
QString VoteBoard::rowTold(std::size_t row) const {
    return isClosed() && isRight(row) ? tr("%1, right").arg(rowText(row)) : rowText(row);
}

double VoteBoard::wordsHeight(std::size_t row) const {
    return heightOfWords(rowTold(row), font(kBoardRow, isClosed() && isRight(row)),
                         m_measures.textWidth() - (kLetter + kCount) * m_measures.sans);
}

double VoteBoard::rowHeight(std::size_t row, const Room& room) const {
    return wordsHeight(row) +
           (isClosed() ? kBars + kClosedAir * room.air : kRowAir * room.air) * m_measures.sans;
}

double VoteBoard::heightOf(const Room& room) const {
    const double em = m_measures.sans;
    double height = m_measures.margin + setHeading(QStringLiteral("?")).height() + 0.3 * em +
                    heightOfWords(phaseText(), font(1), m_measures.textWidth()) + 0.6 * em;
    height += room.asked ? setAsked().height() + 0.25 * em : 0;
    for (std::size_t row = 0; row < rows(); ++row)
        height += rowHeight(row, room);
    return height;
}

/// What is asked stands over the sheet too, so that it goes first.
VoteBoard::Room VoteBoard::roomFor(double height) const {
    for (const Room& room : {Room{true, 1}, Room{true, 0.6}, Room{false, 1}, Room{false, 0.6}})
        if (heightOf(room) <= height)
            return room;
    return {false, 0.35};
}

/// The count that is being typed, in its field; of the others that they have one.
void VoteBoard::paintEntry(QPainter& painter, std::size_t row, const QRectF& box) const {
    const double em = m_measures.sans;
    const QRectF field(box.right() - (kCount - 0.4) * em, box.top(), (kCount - 0.4) * em, box.height());
    painter.setFont(font(kBoardRow, row == m_chosen));
    painter.setPen(row == m_chosen ? m_theme->ink : m_theme->quietInk);
    const QRectF text = field.adjusted(0, 0, -0.35 * em, 0);
    painter.drawText(text, Qt::AlignRight | Qt::AlignVCenter, countText(row));
    if (row == m_chosen) // where the next digit goes
        painter.fillRect(QRectF(text.right() + 0.12 * em, field.center().y() - 0.55 * em,
                                std::max(1.0, m_measures.height / 360), 1.1 * em),
                         m_theme->ink);
}

/// One bar for each vote right under its choice: the first quiet, the second in ink; the right one's in the
/// sum's colour. The figure stands beside the choice itself.
void VoteBoard::paintShares(QPainter& painter, std::size_t row, double y, RowSeen& seen) const {
    const double em = m_measures.sans, left = m_measures.margin + kLetter * em;
    const double wide = m_measures.margin + m_measures.textWidth() - left;
    const auto bar = [&](bool second, double top, double thick, const QColor& colour) {
        if (const auto share = ballot().share(second, row))
            painter.fillRect(QRectF(left, top, wide * *share, thick), colour);
    };
    bar(false, y + 0.12 * em, 0.14 * em, m_theme->quietInk);
    bar(true, y + 0.33 * em, 0.3 * em, isRight(row) ? m_theme->sum : m_theme->ink);
    seen.bars = QRectF(left, y, wide, kBars * em);
    auto share = ballot().share(true, row);
    const bool isSecondsShare = share.has_value();
    share = isSecondsShare ? share : ballot().share(false, row);
    if (!share)
        return;
    painter.setFont(font(kBoardRow, isRight(row)));
    painter.setPen(!isSecondsShare ? m_theme->quietInk : isRight(row) ? m_theme->sum : m_theme->ink);
    seen.share = QRectF(seen.words.left(), seen.words.top(),
                        m_measures.margin + m_measures.textWidth() - seen.words.left(), seen.words.height());
    painter.drawText(seen.share, Qt::AlignRight | Qt::AlignTop, percent(*share), &seen.share);
}

void VoteBoard::paintRow(QPainter& painter, std::size_t row, const Room& room, double y) {
    const double em = m_measures.sans, left = m_measures.margin, wide = m_measures.textWidth();
    const bool told = isClosed() && isRight(row);
    const double words = wordsHeight(row), air = isClosed() ? 0 : kRowAir * room.air * em;
    const QRectF box(left, y, wide, words + 0.8 * air);
    if (row == m_chosen && ballot().takesVotes()) {
        painter.setPen(QPen(m_theme->quietInk, std::max(1.0, m_measures.height / 360)));
        painter.setBrush(Qt::NoBrush);
        painter.drawRect(box.adjusted(-0.3 * em, 0, 0.3 * em, 0));
    }
    RowSeen seen;
    seen.words = box.adjusted(kLetter * em, 0.4 * air, -kCount * em, -0.4 * air);
    painter.setPen(m_theme->quietInk);
    painter.setFont(font(kBoardRow, true));
    painter.drawText(seen.words.adjusted(-kLetter * em, 0, 0, 0), Qt::AlignLeft | Qt::AlignTop,
                     letterOf(row));
    painter.setPen(told ? m_theme->sum : m_theme->ink);
    painter.setFont(font(kBoardRow, told));
    painter.drawText(seen.words, Qt::TextWordWrap, rowTold(row), &seen.words);
    m_widest = std::max(m_widest, seen.words.right() + kCount * em);
    if (ballot().takesVotes())
        paintEntry(painter, row, box);
    if (isClosed())
        paintShares(painter, row, y + words, seen);
    m_rowsSeen.push_back(seen);
}

void VoteBoard::paintBoard(QPainter& painter, double bottom) {
    const double em = m_measures.sans;
    const Room room = roomFor(bottom);
    double y = paintHeading(painter, QStringLiteral("?"), m_measures.margin);
    if (room.asked) {
        const Setting asked = setAsked();
        painter.setPen(m_theme->ink);
        asked.paint(painter, {m_measures.margin, y + asked.ascent});
        y += asked.height() + 0.25 * em;
    }
    const QColor colour = m_asksOnce || m_twinFailed ? m_theme->warning : m_theme->quietInk;
    y = paintWords(painter, phaseText(), font(1), colour, y) + 0.6 * em;
    for (std::size_t row = 0; row < rows(); ++row) {
        paintRow(painter, row, room, y);
        y += rowHeight(row, room);
    }
    m_lowest = y;
}

/// What of a slip's lines is set, from all of it to the least: the line where it happens, the right one in
/// symbols, the sentence alone.
std::vector<std::vector<VoteBoard::Line>> VoteBoard::layoutsOf(const PollChoice& choice) {
    std::vector<std::vector<Line>> layouts(1);
    for (const ChangedLine& line : choice.lines) {
        layouts[0].push_back({asEquation(line.changed), false});
        if (line.right)
            layouts[0].push_back({*line.right, true});
    }
    if (choice.lines.empty())
        return layouts;
    const ChangedLine& first = choice.lines.front();
    const auto add = [&](const Working& changed, std::optional<Working> right) {
        layouts.push_back({{changed, false}});
        if (right)
            layouts.back().push_back({std::move(*right), true});
    };
    const auto inSymbols = [](const Working& all) {
        Working working = all;
        if (working.general) {
            working.substituted.reset();
            working.value.reset();
        }
        return working;
    };
    const auto right = first.right ? std::optional(inSymbols(*first.right)) : std::nullopt;
    const Working changed = asEquation(first.changed);
    add(changed, first.right);
    add(changed, right);
    const Working symbols = inSymbols(changed);
    add(symbols, right);
    add(symbols, std::nullopt);
    layouts.emplace_back();
    return layouts;
}

/// Where a wrong number comes from: as much and as large as there is room for.
double VoteBoard::paintReason(QPainter& painter, double y, double bottom) const {
    const PollChoice& choice = poll().choices[*m_reason];
    const double em = m_measures.sans, left = m_measures.margin, wide = m_measures.textWidth();
    const auto layouts = layoutsOf(choice);
    for (const std::vector<Line>& layout : layouts)
        for (const double factor : {1.25, 1.16, 1.08, 1.0}) {
            const TypeSize size{factor * kWords * m_measures.serif, logicalDpiY()};
            std::vector<std::pair<Setting, QColor>> set;
            set.emplace_back(setProse(choice.sentence, font(factor), size, wide, kBoardLineHeight),
                             m_theme->ink);
            for (const Line& line : layout) {
                if (line.isRight)
                    set.emplace_back(setProse({{inWords(tr("Right:").toStdString())}}, font(factor), size,
                                              wide, kBoardLineHeight),
                                     m_theme->quietInk);
                for (Setting& row : setWorkingByLine(
                         line.working, {factor * kBoardFormula * m_measures.serif, logicalDpiY()}, wide))
                    set.emplace_back(std::move(row), line.isRight ? m_theme->sum : m_theme->warning);
            }
            double height = 0;
            for (const auto& [setting, colour] : set)
                height += setting.height() + 0.35 * em;
            const bool isLeast = &layout == &layouts.back() && factor == 1.0;
            if (y + height > bottom && !isLeast)
                continue;
            for (const auto& [setting, colour] : set) {
                painter.setPen(colour);
                setting.paint(painter, {left, y + setting.ascent});
                y += setting.height() + 0.35 * em;
            }
            return y;
        }
    return y;
}

Setting VoteBoard::setKeys() const {
    return setProse(keysProse(), font(kKeys), {kWords * m_measures.serif, logicalDpiY(), m_measures.serif},
                    m_measures.textWidth(), 1.2);
}

double VoteBoard::keysTop() const {
    return height() - setKeys().height() - 0.4 * m_measures.sans;
}

double VoteBoard::paintKeys(QPainter& painter) const {
    const Setting keys = setKeys();
    const double top = keysTop();
    painter.setPen(m_theme->quietInk);
    keys.paint(painter, {m_measures.margin, top + keys.ascent});
    return top;
}

void VoteBoard::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    painter.fillRect(rect(), m_theme->panel);
    m_rowsSeen.clear();
    m_widest = 0;
    const double top = m_measures.margin, bottom = paintKeys(painter) - 0.4 * m_measures.sans;
    if (isEmpty()) {
        m_lowest = paintWords(painter, plainText(), font(kBoardTitle), m_theme->ink, top);
    } else if (m_reason) {
        const QString value = rowText(*m_reason);
        m_widest = m_measures.margin + setHeading(value).width;
        m_lowest = paintReason(painter, paintHeading(painter, value, top) + 0.2 * m_measures.sans, bottom);
    } else {
        paintBoard(painter, bottom);
    }
}

} // namespace tailpoint
