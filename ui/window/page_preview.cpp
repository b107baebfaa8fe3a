// SPDX-License-Identifier: MIT
#include "ui/window/page_preview.h"

#include <QPainter>
#include <algorithm>

namespace tailpoint {

PagePreview::PagePreview(QWidget* parent)
    : QWidget(parent), m_paper(QPageSize(QPageSize::A4).size(QPageSize::Point)) {
    setObjectName(QStringLiteral("problemsPreview"));
    setAccessibleName(tr("Preview of the first page"));
    setMinimumSize(280, 380);
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Expanding);
}

void PagePreview::show(std::unique_ptr<HandoutPages> pages, QSizeF paper) {
    m_pages = std::move(pages);
    m_paper = paper;
    update();
}

void PagePreview::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    const double scale = std::min((width() - 2) / m_paper.width(), (height() - 2) / m_paper.height());
    painter.translate((width() - scale * m_paper.width()) / 2, (height() - scale * m_paper.height()) / 2);
    painter.scale(scale, scale);
    const QRectF page(QPointF(), m_paper);
    painter.fillRect(page, Qt::white);
    painter.setPen(QPen(palette().color(QPalette::Mid), 0));
    painter.drawRect(page);
    if (!m_pages)
        return;
    painter.scale(72.0 / HandoutPages::resolution(), 72.0 / HandoutPages::resolution());
    m_pages->paint(painter, 0);
}

} // namespace tailpoint
