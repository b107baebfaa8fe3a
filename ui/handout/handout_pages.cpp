#include "ui/handout/handout_pages.h"

#include "ui/handout/handout_blocks.h"
#include "ui/render/render.h"

#include <QBuffer>
#include <QPagedPaintDevice>
#include <QPdfWriter>

namespace tailpoint {

namespace {

constexpr double kMargin = 54, kFoot = 30; ///< points: round the text; the page's number from the lower edge

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

HandoutPages::HandoutPages(const Handout& handout, DisplayList figure, QSizeF paper)
    : m_figure(std::move(figure)), m_title(QString::fromStdString(titleOf(handout))),
      m_width(paper.width() * unitsInPoint()), m_height(paper.height() * unitsInPoint()),
      m_left(std::max(kMargin, (paper.width() - kHandoutWidth) / 2) * unitsInPoint()),
      m_groups(handoutGroups(handout, m_figure, m_width - 2 * m_left)) {
    flow();
}

/// Groups one below the other; one that no longer fits begins a page. One that fits on no page, or would
/// leave much of this one empty, is broken between its blocks.
void HandoutPages::flow() {
    const double top = kMargin * unitsInPoint(), bottom = m_height - kMargin * unitsInPoint();
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
        for (const Block& block : group) {
            if (y > top && y + block.before + block.height > bottom) {
                m_pages.emplace_back();
                y = top;
            }
            y += y > top ? block.before : 0;
            m_pages.back().push_back({&block, y});
            y += block.height;
        }
    }
}

void HandoutPages::paint(QPainter& painter, int index) const {
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    painter.scale(1 / kLayoutScale, 1 / kLayoutScale);
    for (const Placed& placed : m_pages[static_cast<std::size_t>(index)])
        paintBlock(painter, placed);
    paintFoot(painter, index);
    painter.restore();
}

void HandoutPages::paintBlock(QPainter& painter, const Placed& placed) const {
    const Theme& theme = printTheme();
    const Block& block = *placed.block;
    const double unit = unitsInPoint(), x = m_left + block.x;
    if (block.rule)
        painter.fillRect(QRectF(m_left, placed.y - 0.6 * block.before, m_width - 2 * m_left, 0.5 * unit),
                         theme.hairline);
    if (block.ink == Ink::figure) {
        painter.save();
        painter.translate(x, placed.y);
        painter.scale(unit, unit);
        tailpoint::paint(painter, m_figure, theme);
        painter.restore();
        return;
    }
    if (block.number > 0)
        paintStepNumber(painter, block.number, {m_left, placed.y + block.setting.ascent});
    if (block.ink == Ink::note)
        painter.fillRect(QRectF(x - 7 * unit, placed.y, 2 * unit, block.height), theme.warning);
    if (block.inset > 0) {
        painter.setPen(QPen(theme.warning, 0.75 * unit));
        painter.drawRect(QRectF(m_left, placed.y, m_width - 2 * m_left, block.height));
    }
    const bool warns = block.ink == Ink::note || block.ink == Ink::caution;
    painter.setPen(warns ? theme.warning : block.ink == Ink::quiet ? theme.quietInk : theme.ink);
    block.setting.paint(painter, {x, placed.y + block.inset + block.setting.ascent});
}

void HandoutPages::paintFoot(QPainter& painter, int index) const {
    const double unit = unitsInPoint(), y = m_height - kFoot * unit;
    const QFont font = handoutFont(8);
    painter.setFont(font);
    painter.setPen(printTheme().quietInk);
    const QString page = QStringLiteral("%1 / %2").arg(index + 1).arg(count());
    const QFontMetricsF metrics(font);
    const double number = metrics.horizontalAdvance(page), room = m_width - 2 * m_left - number - 20 * unit;
    painter.drawText(QPointF(m_width - m_left - number, y), page);
    if (count() > 1) // a single page has it at its head, and in full
        painter.drawText(QPointF(m_left, y), metrics.elidedText(m_title, Qt::ElideRight, room));
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

QByteArray handoutPdf(const Result& result, const HandoutChoice& choice, QPageSize::PageSizeId paper) {
    QByteArray bytes;
    QBuffer buffer(&bytes);
    buffer.open(QIODevice::WriteOnly);
    QPdfWriter writer(&buffer);
    writer.setResolution(HandoutPages::resolution());
    writer.setPageSize(QPageSize(paper));
    writer.setPageMargins({0, 0, 0, 0});
    writer.setTitle(QString::fromStdString(result.sketch.title));
    writer.setCreator(QStringLiteral("Tailpoint"));
    return paintHandout(writer, result, choice) ? bytes : QByteArray();
}

} // namespace tailpoint
