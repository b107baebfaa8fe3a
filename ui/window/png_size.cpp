// SPDX-License-Identifier: MIT
#include "ui/window/png_size.h"

#include "core/quantity/typed.h"

#include <QCoreApplication>
#include <QRegularExpression>

namespace tailpoint {

namespace {

constexpr double kLeastDots = 10, kMostDots = 2400;
constexpr double kLeastPixels = 16, kMostPixels = 20'000;

} // namespace

std::optional<PngSize> pngSizeFrom(const QString& typed) {
    static const QRegularExpression form(
        QStringLiteral("^\\s*([0-9.,]+)\\s*(|dpi|dots|dots per inch|px|pixels?|pixels? wide)\\s*$"),
        QRegularExpression::CaseInsensitiveOption);
    const auto match = form.match(typed);
    if (!match.hasMatch())
        return std::nullopt;
    const auto number = parseNumber(match.captured(1).toStdString());
    const double* value = std::get_if<double>(&number);
    const bool pixels = match.captured(2).startsWith(QLatin1Char('p'), Qt::CaseInsensitive);
    if (value == nullptr || *value < (pixels ? kLeastPixels : kLeastDots) ||
        *value > (pixels ? kMostPixels : kMostDots))
        return std::nullopt;
    PngSize size;
    if (pixels)
        size.pixelWidth = qRound(*value);
    else
        size.dotsPerInch = *value;
    return size;
}

QStringList usualPngSizes() {
    QStringList sizes;
    for (const int dots : {150, 300, 600})
        sizes << QCoreApplication::translate("PngSize", "%1 dots per inch").arg(dots);
    for (const int pixels : {1920, 3840})
        sizes << QCoreApplication::translate("PngSize", "%1 pixels wide").arg(pixels);
    return sizes;
}

} // namespace tailpoint
