// SPDX-License-Identifier: MIT
#pragma once

#include <QObject>

class QWidget;

namespace tailpoint::bench {

/// Ends the program once `window` has painted for the first time and the server has taken the picture, and
/// prints its peak memory (VmHWM, kB) on standard output.
void quitAfterFirstPaint(QWidget& window);

} // namespace tailpoint::bench
