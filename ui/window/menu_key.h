// SPDX-License-Identifier: MIT
// Shift+F10 opens the menu of what has the keyboard, as the Menu key does: not every keyboard has one, and Qt
// knows the other way on Windows alone.
#pragma once

#include <QObject>

namespace tailpoint {

class MenuKey : public QObject {
    Q_OBJECT
public:
    explicit MenuKey(QObject* parent);

protected:
    bool eventFilter(QObject* watched, QEvent* event) override;
};

} // namespace tailpoint
