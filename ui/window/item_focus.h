// SPDX-License-Identifier: MIT
// A list or a table that takes the keyboard is told of by the item that has it: Qt names the view alone,
// which says nothing of where in it one is.
#pragma once

#include <QObject>

namespace tailpoint {

class ItemFocus : public QObject {
    Q_OBJECT
public:
    explicit ItemFocus(QObject* parent); ///< for all views of the program, dialogs too

protected:
    bool eventFilter(QObject* watched, QEvent* event) override;
};

} // namespace tailpoint
