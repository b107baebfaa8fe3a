// SPDX-License-Identifier: MIT
// How large a PNG becomes, as it is chosen or typed: '300 dots per inch', '1920 pixels wide'.
#pragma once

#include <QString>
#include <QStringList>
#include <optional>

namespace tailpoint {

struct PngSize {
    double dotsPerInch = 300;
    std::optional<int> pixelWidth; ///< instead
};

/// '300', '300 dpi', '300 dots per inch'; '1920 px', '1920 pixels wide'. From 10 to 2400 dots, from 16 to
/// 20000 pixels. Empty: neither.
std::optional<PngSize> pngSizeFrom(const QString& typed);
QStringList usualPngSizes();

} // namespace tailpoint
