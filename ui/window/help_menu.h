// SPDX-License-Identifier: MIT
// Help: keys and gestures on one page, and what this program is.
#pragma once

class QMenu;
class QWidget;

namespace tailpoint {

void addHelp(QMenu* menu, QWidget* window);

} // namespace tailpoint
