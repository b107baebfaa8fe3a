// SPDX-License-Identifier: MIT
#include "ui/lecture/measures.h"

#include "ui/style/theme.h"

#include <QFontMetricsF>
#include <algorithm>

namespace tailpoint {

namespace {

constexpr double kSafety = 1.01; ///< fonts are set to fractions of a pixel
constexpr double kLeaders = 0.6; ///< width of a leader line by the figure's factor: it decides the factor
constexpr double kLeastColumn = 14.5; ///< ems of text that a line of calculation wants

} // namespace

double capitalOf(QFont font) {
    constexpr int kSize = 200;
    font.setPixelSize(kSize);
    font.setHintingPreference(QFont::PreferNoHinting);
    return QFontMetricsF(font).tightBoundingRect(QStringLiteral("E")).height() / kSize;
}

Measures measuresOf(QSize screen) {
    QFont italic = serifFont();
    italic.setItalic(true);
    const double serif = std::min(capitalOf(serifFont()), capitalOf(italic)), sans = capitalOf(sansFont());
    Measures m;
    m.width = screen.width();
    m.height = screen.height();
    m.serif = kSafety * kCapital * m.height / serif;
    m.sans = kSafety * kCapital * m.height / sans;
    m.margin = 0.045 * m.height;
    m.column = std::clamp(kLeastColumn * m.serif + 1.6 * m.margin, m.width / 3, 0.43 * m.width);
    return m;
}

Style Measures::figure(double pixelsPerPoint) const {
    const double screen = height / pixelsPerPoint; // points
    Style style;
    style.factor = kThinStroke * screen / kLeaders;
    const auto wide = [&](double part) { return part * screen / style.factor; };
    style.leastStroke = kThinStroke * screen;
    style.leastArrow = kStroke * screen;
    style.leastSerif = serif / pixelsPerPoint;
    style.leastSans = sans / pixelsPerPoint;
    style.angleSize = style.leastSerif / style.factor;
    style.labelSize = 1.08 * style.angleSize;
    style.givenWidth = wide(1.0 / 200);
    style.sumWidth = wide(1.0 / 145);
    style.arcWidth = wide(kStroke);
    style.constructionWidth = style.axisWidth = style.locusWidth = wide(1.0 / 480);
    style.gridWidth = wide(1.0 / 1080);
    return style;
}

} // namespace tailpoint
