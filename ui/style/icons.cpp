// SPDX-License-Identifier: MIT
#include "ui/style/icons.h"

#include <QFile>
#include <QPainter>
#include <QSvgRenderer>

namespace tailpoint {

QPixmap tintedIcon(const QString& name, const QColor& ink, int side, qreal pixelRatio) {
    QFile file(QStringLiteral(":/icons/%1.svg").arg(name));
    if (!file.open(QIODevice::ReadOnly)) {
        return {};
    }
    QByteArray svg = file.readAll();
    svg.replace("#000000", ink.name().toLatin1());
    QSvgRenderer renderer(svg);
    const int pixels = qRound(side * pixelRatio);
    QPixmap pixmap(pixels, pixels);
    pixmap.fill(Qt::transparent);
    QPainter painter(&pixmap);
    renderer.render(&painter, QRectF(0, 0, pixels, pixels));
    painter.end();
    pixmap.setDevicePixelRatio(pixelRatio);
    return pixmap;
}

} // namespace tailpoint
