// SPDX-License-Identifier: MIT
#include "ui/style/palette.h"

namespace tailpoint {

QColor disabledInk(const Theme& theme) {
    const auto mixed = [](int ink, int ground) { return (ink * 55 + ground * 45) / 100; };
    return QColor(mixed(theme.ink.red(), theme.bar.red()), mixed(theme.ink.green(), theme.bar.green()),
                  mixed(theme.ink.blue(), theme.bar.blue()));
}

QPalette paletteOf(const Theme& theme) {
    QPalette palette(theme.ink, theme.bar, theme.bar, theme.hairline, theme.hairline, theme.ink, theme.ink,
                     theme.panel, theme.bar);
    palette.setColor(QPalette::AlternateBase, theme.bar);
    palette.setColor(QPalette::PlaceholderText, theme.quietInk);
    palette.setColor(QPalette::Highlight, theme.accentGround);
    palette.setColor(QPalette::HighlightedText, theme.ink);
    palette.setColor(QPalette::Link, theme.given);
    palette.setColor(QPalette::LinkVisited, theme.sum);
    palette.setColor(QPalette::BrightText, theme.warning);
    palette.setColor(QPalette::ToolTipBase, theme.panel);
    palette.setColor(QPalette::ToolTipText, theme.ink);
    for (QPalette::ColorRole role : {QPalette::WindowText, QPalette::Text, QPalette::ButtonText}) {
        palette.setColor(QPalette::Disabled, role, disabledInk(theme));
    }
    return palette;
}

} // namespace tailpoint
