// SPDX-License-Identifier: MIT
#include "ui/render/limit_bar.h"

namespace tailpoint {

void paintLimitBar(QPainter& painter, const QRectF& frame, const LimitBar& bar, const LimitBarInk& ink,
                   double unit) {
    constexpr double step = 5;
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setBrush(Qt::NoBrush);
    const auto at = [&](double share) { return frame.left() + share * frame.width(); };
    painter.fillRect(QRectF(frame.topLeft(), QPointF(at(bar.certain), frame.bottom())), ink.bar);
    painter.setPen(QPen(ink.bar, 1.2 * unit));
    for (const HatchStroke& each :
         hatch(at(bar.certain), frame.top(), at(bar.possible) - at(bar.certain), frame.height(), step * unit))
        painter.drawLine(QPointF(each.x1, each.y1), QPointF(each.x2, each.y2));
    painter.setPen(QPen(ink.frame, unit));
    painter.drawRect(frame);
    const QLineF limit(at(bar.limit), frame.top() - kLimitOut * unit, at(bar.limit),
                       frame.bottom() + kLimitOut * unit);
    painter.setPen(QPen(ink.ground, 5 * unit));
    painter.drawLine(limit);
    painter.setPen(QPen(ink.limit, 2 * unit));
    painter.drawLine(limit);
    painter.restore();
}

} // namespace tailpoint
