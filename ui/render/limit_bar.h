// SPDX-License-Identifier: MIT
// The bar of a limit (core/explain/limit_bar), painted: in the panel and on pages.
#pragma once

#include "core/explain/limit_bar.h"

#include <QColor>
#include <QPainter>
#include <QRectF>

namespace tailpoint {

struct LimitBarInk {
    QColor bar, frame, ground,
        limit; ///< ground: beside the limit's stroke, so that it is clear of what is filled
};

/// `frame`: where the bar goes; the limit's stroke stands out by kLimitOut units above and below. `unit`:
/// what a logical pixel or a point is to the painter.
void paintLimitBar(QPainter& painter, const QRectF& frame, const LimitBar& bar, const LimitBarInk& ink,
                   double unit = 1);
inline constexpr double kLimitOut = 3;

} // namespace tailpoint
