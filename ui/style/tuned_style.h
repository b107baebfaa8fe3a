// SPDX-License-Identifier: MIT
// The style of the platform, but for two things. The chevrons of a menu bar that is too narrow are ours,
// tinted by the theme: Qt's own are a picture, and whoever makes a menu bar has all plugins for pictures read
// and loaded before anything is seen. And a drop-down list that has the focus has the ring that a field has:
// Fusion shows it by a shade of the edge that nobody sees on a projector.
#pragma once

#include <QProxyStyle>

namespace tailpoint {

class TunedStyle : public QProxyStyle {
public:
    QIcon standardIcon(StandardPixmap which, const QStyleOption* option = nullptr,
                       const QWidget* widget = nullptr) const override;
    void drawComplexControl(ComplexControl control, const QStyleOptionComplex* option, QPainter* painter,
                            const QWidget* widget = nullptr) const override;
};

} // namespace tailpoint
