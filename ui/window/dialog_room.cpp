// SPDX-License-Identifier: MIT
#include "ui/window/dialog_room.h"

#include <QApplication>
#include <QDialog>
#include <QEvent>
#include <QScreen>
#include <algorithm>

namespace tailpoint {

DialogRoom::DialogRoom(QObject* parent) : QObject(parent) {
    qApp->installEventFilter(this);
}

/// Before it is seen, when it has its size and place.
bool DialogRoom::eventFilter(QObject* watched, QEvent* event) {
    if (event->type() != QEvent::Show || event->spontaneous())
        return false;
    auto* dialog = qobject_cast<QDialog*>(watched);
    if (dialog == nullptr || !dialog->isWindow())
        return false;
    constexpr int kBorder = 8, kTitleBar = 40; // that a window manager adds
    const QRect room = dialog->screen()->availableGeometry().adjusted(kBorder, kTitleBar, -kBorder, -kBorder);
    const QRect now = dialog->geometry();
    if (room.contains(now))
        return false;
    const QSize size = now.size().boundedTo(room.size());
    const QPoint at(std::clamp(now.x(), room.left(), room.left() + room.width() - size.width()),
                    std::clamp(now.y(), room.top(), room.top() + room.height() - size.height()));
    dialog->setGeometry(QRect(at, size));
    return false;
}

} // namespace tailpoint
