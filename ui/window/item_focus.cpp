// SPDX-License-Identifier: MIT
#include "ui/window/item_focus.h"

#include <QAbstractItemView>
#include <QAccessible>
#include <QApplication>

namespace tailpoint {

namespace {

void tellItem(QAbstractItemView& view) {
    QAccessibleInterface* told = view.hasFocus() ? QAccessible::queryAccessibleInterface(&view) : nullptr;
    const QModelIndex current = view.currentIndex();
    if (told == nullptr || told->tableInterface() == nullptr || !current.isValid())
        return;
    if (QAccessibleInterface* item = told->tableInterface()->cellAt(current.row(), current.column())) {
        QAccessibleEvent event(item, QAccessible::Focus);
        QAccessible::updateAccessibility(&event);
    }
}

} // namespace

ItemFocus::ItemFocus(QObject* parent) : QObject(parent) {
    qApp->installEventFilter(this);
}

/// Queued: Qt itself tells of the view once this event is over.
bool ItemFocus::eventFilter(QObject* watched, QEvent* event) {
    if (event->type() != QEvent::FocusIn || !QAccessible::isActive())
        return false;
    if (auto* view = qobject_cast<QAbstractItemView*>(watched))
        QMetaObject::invokeMethod(
            view, [view] { tellItem(*view); }, Qt::QueuedConnection);
    return false;
}

} // namespace tailpoint
