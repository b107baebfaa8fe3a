// SPDX-License-Identifier: MIT
#include "ui/window/figure_preview.h"

#include "ui/render/render.h"

#include <QPainter>
#include <algorithm>

namespace tailpoint {

FigurePreview::FigurePreview(QWidget* parent) : QWidget(parent) {
    setObjectName(QStringLiteral("exportPreview"));
    setAccessibleName(tr("Preview of the figure"));
    setMinimumSize(320, 240);
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Expanding);
}

void FigurePreview::show(std::vector<DisplayList> lists, const FigureJob& job) {
    m_lists = std::move(lists);
    m_job = job;
    update();
}

QSize FigurePreview::sizeHint() const {
    return {520, 400};
}

void FigurePreview::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    if (m_lists.empty())
        return;
    const PageRoom room = roomOf(m_job);
    const double scale = std::min((width() - 2) / room.pageWidth, (height() - 2) / room.pageHeight);
    painter.translate((width() - scale * room.pageWidth) / 2, (height() - scale * room.pageHeight) / 2);
    painter.scale(scale, scale);
    const QRectF page(0, 0, room.pageWidth, room.pageHeight);
    const Theme& theme = themeOf(m_job.theme);
    // Behind a transparent figure of a dark theme stands a dark slide, most likely.
    painter.fillRect(page, m_job.transparent ? theme.sheet : QColor(Qt::white));
    painter.setPen(QPen(palette().color(QPalette::Mid), 0));
    painter.drawRect(page);
    painter.setClipRect(page);
    painter.translate(room.left, room.top);
    paint(painter, m_lists.back(), theme);
}

} // namespace tailpoint
