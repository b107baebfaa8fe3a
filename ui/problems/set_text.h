// SPDX-License-Identifier: MIT
// Single lines of words for the pages of sheets and keys.
#pragma once

#include "ui/handout/handout_blocks.h"
#include "ui/render/fonts.h"

#include <QFontMetricsF>
#include <algorithm>

namespace tailpoint {

inline QString inText(std::string_view text) {
    return QString::fromUtf8(text.data(), static_cast<qsizetype>(text.size()));
}

/// One line, `points` large; in layout units.
inline Setting textOf(const QString& text, double points, int weight = QFont::Normal) {
    const QFont font = handoutFont(points, weight);
    const QFontMetricsF metrics(font);
    Setting out;
    out.width = advanceOf(font, text);
    out.ascent = metrics.ascent();
    out.descent = metrics.descent();
    out.texts.push_back({{0, 0}, text, std::make_shared<const QFont>(font)});
    return out;
}

/// The same cut short with an ellipsis where it would be wider than `room`.
inline Setting elided(const QString& text, double points, int weight, double room) {
    Setting whole = textOf(text, points, weight);
    if (whole.width <= room)
        return whole;
    const QFontMetricsF metrics(handoutFont(points, weight));
    return textOf(metrics.elidedText(text, Qt::ElideRight, std::max(0.0, room)), points, weight);
}

/// A line to write on, `length` long in layout units.
inline Setting ruledLine(double length) {
    Setting out;
    QPainterPath path;
    path.addRect(0, 0, length, 0.5 * unitsInPoint());
    out.shapes.push_back({path, 0});
    out.width = length;
    return out;
}

/// What belongs to a problem tells its code at the foot of its page.
inline void setCode(std::vector<HandoutPages::Kept>& groups, const std::string& code) {
    for (HandoutPages::Kept& group : groups)
        for (HandoutPages::Block& block : group)
            block.code = inText(code);
}

} // namespace tailpoint
