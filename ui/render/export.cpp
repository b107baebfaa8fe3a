// SPDX-License-Identifier: MIT
#include "ui/render/pdf_record.h"
#include "ui/render/render.h"

#include <QBuffer>
#include <QPageSize>
#include <QPdfWriter>
#include <algorithm>
#include <cmath>

namespace tailpoint {

QImage toImage(const DisplayList& list, const Theme& theme, double scale, bool transparent) {
    const int width = std::max(1, static_cast<int>(std::lround(list.width * scale)));
    const int height = std::max(1, static_cast<int>(std::lround(list.height * scale)));
    QImage image(width, height, QImage::Format_ARGB32_Premultiplied);
    if (image.isNull())
        return image;
    const int dotsPerMetre = qRound(scale * 72 / 0.0254);
    image.setDotsPerMeterX(dotsPerMetre);
    image.setDotsPerMeterY(dotsPerMetre);
    image.fill(transparent ? QColor(Qt::transparent) : theme.sheet);
    QPainter painter(&image);
    painter.scale(scale, scale);
    paint(painter, list, theme);
    return image;
}

QByteArray toPdf(const DisplayList& list, const Theme& theme) {
    return toPdf({list}, theme, list.width, list.height, {});
}

QByteArray toPdf(const std::vector<DisplayList>& lists, const Theme& theme, double pageWidth,
                 double pageHeight, Point at) {
    QByteArray bytes;
    QBuffer buffer(&bytes);
    buffer.open(QIODevice::WriteOnly);
    QPdfWriter writer(&buffer);
    constexpr int resolution = 1200;
    writer.setResolution(resolution);
    writer.setPageSize(QPageSize(QSizeF(pageWidth, pageHeight), QPageSize::Point, {}, QPageSize::ExactMatch));
    writer.setPageMargins({0, 0, 0, 0});
    nameDocument(writer, lists.empty() ? QString() : QString::fromStdString(lists.front().title));
    QPainter painter(&writer);
    painter.scale(resolution / 72.0, resolution / 72.0);
    painter.translate(at.x, at.y);
    for (std::size_t i = 0; i < lists.size(); ++i) {
        if (i > 0)
            writer.newPage();
        paint(painter, lists[i], theme);
    }
    painter.end();
    settleDate(bytes);
    return bytes;
}

} // namespace tailpoint
