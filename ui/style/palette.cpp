#include "ui/style/palette.h"

namespace tailpoint {

QPalette paletteOf(const Theme& theme) {
    QPalette palette(theme.ink, theme.bar, theme.bar, theme.hairline, theme.hairline, theme.ink, theme.ink,
                     theme.panel, theme.bar);
    palette.setColor(QPalette::AlternateBase, theme.bar);
    palette.setColor(QPalette::PlaceholderText, theme.quietInk);
    palette.setColor(QPalette::Highlight, theme.accentGround);
    palette.setColor(QPalette::HighlightedText, theme.ink);
    palette.setColor(QPalette::Link, theme.sum);
    palette.setColor(QPalette::LinkVisited, theme.sum);
    palette.setColor(QPalette::BrightText, theme.warning);
    palette.setColor(QPalette::ToolTipBase, theme.panel);
    palette.setColor(QPalette::ToolTipText, theme.ink);
    for (QPalette::ColorRole role : {QPalette::WindowText, QPalette::Text, QPalette::ButtonText}) {
        palette.setColor(QPalette::Disabled, role, theme.quietInk);
    }
    return palette;
}

} // namespace tailpoint
