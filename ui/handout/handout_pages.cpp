// SPDX-License-Identifier: MIT
#include "ui/handout/handout_pages.h"

#include "core/sketch/cases.h"
#include "ui/handout/handout_blocks.h"
#include "ui/handout/page_painter.h"
#include "ui/render/fonts.h"
#include "ui/render/limit_bar.h"
#include "ui/render/pdf_record.h"
#include "ui/render/render.h"

#include <QBuffer>
#include <QFontMetricsF>
#include <QPagedPaintDevice>
#include <QPdfWriter>

namespace tailpoint {

namespace {

constexpr double kPageMargin = 54,
                 kFoot = 30; ///< points: round the text; the page's number from the lower edge

constexpr double kSlack = 0.01;    // layout units: what fills a page fits in spite of rounding
constexpr double kMostEmpty = 0.3; ///< of a page's height, to keep a step whole

/// Height of a step's title with its first two blocks: less than that is not begun at the foot of a page.
double headOf(const HandoutPages::Kept& group) {
    double height = 0;
    for (std::size_t i = 0; i < std::min<std::size_t>(3, group.size()); ++i)
        height += group[i].before + group[i].height;
    return height;
}

} // namespace

int HandoutPages::resolution() {
    return handoutResolution();
}

namespace {

/// From the left edge of a paper this wide to the column, points.
double leftOf(double paperWidth) {
    return std::max(kPageMargin, (paperWidth - kHandoutWidth) / 2);
}

} // namespace

double HandoutPages::columnWidth(QSizeF paper) {
    return (paper.width() - 2 * leftOf(paper.width())) * unitsInPoint();
}

double HandoutPages::roomBelow(const std::vector<Kept>& groups, QSizeF paper) {
    double taken = 0;
    for (const Kept& group : groups)
        for (const Block& block : group)
            taken += (taken > 0 ? block.before : 0) + block.height;
    return paper.height() - 2 * kPageMargin - taken / unitsInPoint();
}

HandoutPages::HandoutPages(const Handout& handout, DisplayList figure, QSizeF paper)
    : HandoutPages(handoutGroups(handout, figure, columnWidth(paper)), figure, paper,
                   {QString::fromStdString(titleOf(handout)), {}}) {
    QStringList whence;
    if (count() > 1) // a single page has its title at its head, and in full
        whence << m_foot.left;
    for (std::size_t i = 0; i + 1 < handout.record.size(); ++i)
        whence << QString::fromStdString(handout.record[i]);
    m_foot.left = whence.join(QStringLiteral(" \u00B7 "));
}

HandoutPages::HandoutPages(std::vector<Kept> groups, DisplayList figure, QSizeF paper, Foot foot)
    : m_figure(std::move(figure)), m_foot(std::move(foot)), m_width(paper.width() * unitsInPoint()),
      m_height(paper.height() * unitsInPoint()), m_left(leftOf(paper.width()) * unitsInPoint()),
      m_groups(std::move(groups)) {
    flow();
}

/// Groups one below the other; one that no longer fits begins a page. One that fits on no page, or would
/// leave much of this one empty, is broken between its blocks.
void HandoutPages::flow() {
    const double top = kPageMargin * unitsInPoint(), bottom = m_height - kPageMargin * unitsInPoint();
    double y = top;
    m_pages.emplace_back();
    for (const Kept& group : m_groups) {
        double height = 0;
        for (const Block& block : group)
            height += block.before + block.height;
        const bool fitsAlone = height - group.front().before <= bottom - top,
                   leavesMuch = bottom - y > kMostEmpty * (bottom - top) && y + headOf(group) <= bottom;
        if (y > top && y + height > bottom && fitsAlone && !leavesMuch) {
            m_pages.emplace_back();
            y = top;
        }
        double rest = height;
        for (const Block& block : group) {
            if (y > top && y + block.before + block.height > bottom + kSlack) {
                m_pages.emplace_back();
                y = top;
            }
            rest -= block.before + block.height; // what is kept with it stands below it
            y += y > top ? block.before : 0;
            const double filled = block.fills ? std::max(block.height, bottom - y - rest) : block.height;
            m_pages.back().push_back({&block, y, filled});
            y += filled;
        }
    }
}

void HandoutPages::paint(QPainter& painter, int index) const {
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    painter.scale(1 / kLayoutScale, 1 / kLayoutScale);
    {
        PagePainter page(painter);
        for (const Placed& placed : m_pages[static_cast<std::size_t>(index)])
            paintBlock(page, placed);
        paintFoot(page, index);
    }
    painter.restore();
}

namespace {

/// The number of a step in its ring, on the title's baseline.
void paintStepNumber(PagePainter& page, int number, QPointF baseline) {
    const double unit = unitsInPoint(), radius = 7 * unit;
    const QPointF centre(baseline.x() + radius, baseline.y() - 3.6 * unit);
    QPainterPath ring;
    ring.addEllipse(centre, radius, radius);
    page.stroke(ring, QPen(printTheme().quietInk, 0.6 * unit));
    const QFont font = handoutFont(number > 9 ? 7.4 : 8);
    const QString digits = QString::number(number);
    page.words({centre.x() - advanceOf(font, digits) / 2, centre.y() + QFontMetricsF(font).capHeight() / 2},
               digits, font, printTheme().ink);
}

} // namespace

void HandoutPages::paintBlock(PagePainter& page, const Placed& placed) const {
    const Theme& theme = printTheme();
    const Block& block = *placed.block;
    const double unit = unitsInPoint(), x = m_left + block.x;
    if (block.rule)
        page.fill(QRectF(m_left, placed.y - 0.6 * block.before, m_width - 2 * m_left, 0.5 * unit),
                  theme.hairline);
    if (block.ink == Ink::figure) {
        page.apart([&](QPainter& painter) {
            painter.translate(x, placed.y);
            painter.scale(unit, unit);
            tailpoint::paint(painter, m_figure, theme);
        });
        return;
    }
    if (block.grid > 0)
        paintGrid(page, placed);
    if (block.limit)
        page.apart([&](QPainter& painter) { paintLimit(painter, placed); });
    if (block.number > 0)
        paintStepNumber(page, block.number, {m_left, placed.y + block.setting.ascent});
    if (block.ink == Ink::note)
        page.fill(QRectF(x - 7 * unit, placed.y, 2 * unit, block.height), theme.warning);
    if (block.inset > 0) {
        QPainterPath box;
        box.addRect(QRectF(m_left, placed.y, m_width - 2 * m_left, block.height));
        page.stroke(box, QPen(theme.warning, 0.75 * unit));
    }
    const bool warns = block.ink == Ink::note || block.ink == Ink::caution;
    page.setting(block.setting, {x, placed.y + block.inset + block.setting.ascent},
                 warns                     ? theme.warning
                 : block.ink == Ink::quiet ? theme.quietInk
                                           : theme.ink);
}

/// Bar and word on the sentence's first line.
void HandoutPages::paintLimit(QPainter& painter, const Placed& placed) const {
    const Theme& theme = printTheme();
    const LimitShown& limit = *placed.block->limit;
    constexpr double high = 8;
    const double unit = unitsInPoint(), baseline = placed.y + placed.block->setting.ascent;
    const bool isWithin = limit.verdict == Bound::within;
    const QColor ink = isWithin ? theme.quietInk : theme.warning;
    paintLimitBar(painter, QRectF(m_left, baseline - (high - 0.5) * unit, kLimitBar * unit, high * unit),
                  limit.bar, {ink, theme.quietInk, theme.sheet, theme.ink}, unit);
    painter.setPen(isWithin ? theme.ink : theme.warning);
    drawWords(painter, {m_left + kLimitWord * unit, baseline},
              QString::fromStdString(verdictWord(limit.verdict)),
              handoutFont(kHandoutText, isWithin ? QFont::Normal : QFont::DemiBold));
}

/// Squares from the upper left corner on, as many whole ones as there is room for.
void HandoutPages::paintGrid(PagePainter& page, const Placed& placed) const {
    const double unit = unitsInPoint(), gap = placed.block->grid * unit, left = m_left + placed.block->x,
                 room = m_width - m_left - left;
    constexpr double kWhole = 1e-6; // a grid that was made to fit fits
    const int across = 2 * static_cast<int>(room / (2 * gap) + kWhole),
              down = 2 * static_cast<int>(placed.height / (2 * gap) + kWhole);
    for (const bool isStrong : {false, true}) {
        QPainterPath lines;
        const auto line = [&](QPointF from, QPointF to) {
            lines.moveTo(from);
            lines.lineTo(to);
        };
        for (int i = isStrong ? 0 : 1; i <= across; i += 2)
            line({left + i * gap, placed.y}, {left + i * gap, placed.y + down * gap});
        for (int i = isStrong ? 0 : 1; i <= down; i += 2)
            line({left, placed.y + i * gap}, {left + across * gap, placed.y + i * gap});
        page.stroke(lines, QPen(isStrong ? printTheme().construction : printTheme().hairline,
                                (isStrong ? 0.25 : 0.4) * unit));
    }
}

void HandoutPages::paintFoot(PagePainter& page, int index) const {
    const double unit = unitsInPoint(), y = m_height - kFoot * unit;
    const QFont font = handoutFont(8), bold = handoutFont(8, QFont::DemiBold);
    QStringList codes;
    for (const Placed& placed : m_pages[static_cast<std::size_t>(index)])
        if (!placed.block->code.isEmpty() && !codes.contains(placed.block->code))
            codes << placed.block->code;
    const QString code = codes.join(QStringLiteral("  "));
    page.words({m_left, y}, code, bold, printTheme().ink);
    const double taken = code.isEmpty() ? 0 : advanceOf(bold, code) + 14 * unit;
    QString number;
    if (count() > 1 || m_foot.right.isEmpty())
        number = (m_foot.right.isEmpty() ? QStringLiteral("%1 / %2") : QStringLiteral(" \u00B7 %1 / %2"))
                     .arg(index + 1)
                     .arg(count());
    const double width = advanceOf(font, m_foot.right) + advanceOf(font, number),
                 room = m_width - 2 * m_left - width - taken - 20 * unit;
    page.words({m_width - m_left - width, y}, m_foot.right + number, font, printTheme().quietInk);
    if (m_foot.left.isEmpty() || room <= 0)
        return;
    const bool fits = advanceOf(font, m_foot.left) <= room; // to shorten a text is dear
    page.words({m_left + taken, y},
               fits ? m_foot.left : QFontMetricsF(font).elidedText(m_foot.left, Qt::ElideRight, room), font,
               printTheme().quietInk);
}

bool paintHandout(QPagedPaintDevice& device, const Result& result, const HandoutChoice& choice) {
    const double height = handoutFigureHeight(result, choice);
    const DisplayList figure = handoutFigure(result, choice, kHandoutWidth, height);
    const double division = handoutDivision(result, choice, kHandoutWidth, height);
    const HandoutPages pages(handoutOf(result, choice, division), figure,
                             device.pageLayout().fullRectPoints().size());
    QPainter painter;
    if (!painter.begin(&device))
        return false;
    for (int i = 0; i < pages.count(); ++i) {
        if (i > 0 && !device.newPage())
            return false;
        pages.paint(painter, i);
    }
    return painter.end();
}

void prepare(QPdfWriter& writer, const QString& title, QPageSize::PageSizeId paper) {
    writer.setResolution(HandoutPages::resolution());
    writer.setPageSize(QPageSize(paper));
    writer.setPageMargins({0, 0, 0, 0});
    nameDocument(writer, title);
}

QByteArray handoutPdf(const Result& result, const HandoutChoice& choice, QPageSize::PageSizeId paper) {
    QByteArray bytes;
    QBuffer buffer(&bytes);
    buffer.open(QIODevice::WriteOnly);
    bool isDone = false;
    { // the writer ends its file when it goes
        QPdfWriter writer(&buffer);
        prepare(writer, QString::fromStdString(titleWithCase(result.sketch)), paper);
        isDone = paintHandout(writer, result, choice);
    }
    settleDate(bytes);
    return isDone ? bytes : QByteArray();
}

} // namespace tailpoint
