// SPDX-License-Identifier: MIT
// The style of the platform, but for the chevrons of a menu bar that is too narrow: these are ours, tinted by
// the theme. Qt's own are a picture, and whoever makes a menu bar has all plugins for pictures read and
// loaded before anything is seen.
#pragma once

#include <QProxyStyle>

namespace tailpoint {

class ChevronStyle : public QProxyStyle {
public:
    QIcon standardIcon(StandardPixmap which, const QStyleOption* option = nullptr,
                       const QWidget* widget = nullptr) const override;
};

} // namespace tailpoint
