// SPDX-License-Identifier: MIT
// Words as glyphs, each shaped once by a thread: to shape a text costs more than to paint it, and pages are
// full of words that come again. Numbers don't come again, and are put together of their figures. Internal to
// render/.
#pragma once

#include <QFont>
#include <QList>
#include <QPointF>
#include <QRawFont>
#include <QStringView>
#include <cmath>
#include <vector>

namespace tailpoint {

/// Of one font.
struct ShapedGlyphs {
    QRawFont font;
    QList<quint32> indexes;
    QList<QPointF> positions, wholes; ///< exact, and at whole units
};

/// A word with the blank behind it, the left end of its baseline at the origin; its glyphs are of several
/// fonts where one has not all letters.
struct ShapedWord {
    std::vector<ShapedGlyphs> glyphs;
    double advance = 0;
};

/// Words that follow one another. Valid until the next call in the thread.
using ShapedWords = std::vector<const ShapedWord*>;

/// A word with the blank behind it: itself, or a number's parts.
const ShapedWords& shapedWords(const QFont& font, QStringView word);

inline QPointF whole(QPointF at) {
    return {std::round(at.x()), std::round(at.y())};
}

} // namespace tailpoint
