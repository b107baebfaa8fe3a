// SPDX-License-Identifier: MIT
// The program's own line icons, tinted by the theme and rendered for the screen's pixel ratio.
#pragma once

#include <QColor>
#include <QPixmap>
#include <QString>

namespace tailpoint {

/// `name` as in resources/icons, without ".svg"; `side` in logical pixels. Empty where there is none of that
/// name.
QPixmap tintedIcon(const QString& name, const QColor& ink, int side, qreal pixelRatio);

} // namespace tailpoint
