// SPDX-License-Identifier: MIT
#include "ui/lecture/screens.h"

#include <QGuiApplication>
#include <QScreen>

namespace tailpoint {

QScreen* screenForLecture(QScreen* own) {
    if (own == nullptr)
        own = QGuiApplication::primaryScreen();
    for (QScreen* screen : QGuiApplication::screens())
        if (screen != own && !screen->geometry().intersects(own->geometry()))
            return screen;
    return own;
}

} // namespace tailpoint
