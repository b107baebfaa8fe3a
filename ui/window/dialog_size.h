// SPDX-License-Identifier: MIT
// How large a dialog opens: as it would like to be, and within the screen.
#pragma once

#include <QScreen>
#include <QWidget>

namespace tailpoint {

inline QSize withinScreen(const QWidget& dialog, QSize wanted) {
    constexpr QSize frame(16, 64); // the title bar and borders that a window manager adds
    return wanted.boundedTo(dialog.screen()->availableSize() - frame);
}

} // namespace tailpoint
