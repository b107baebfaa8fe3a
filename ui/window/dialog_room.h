// SPDX-License-Identifier: MIT
// No dialog is larger than its screen, Qt's own ones of files neither: with large letters on a small screen
// their buttons would lie below it.
#pragma once

#include <QObject>

namespace tailpoint {

class DialogRoom : public QObject {
    Q_OBJECT
public:
    explicit DialogRoom(QObject* parent); ///< for all dialogs of the program

protected:
    bool eventFilter(QObject* watched, QEvent* event) override;
};

} // namespace tailpoint
