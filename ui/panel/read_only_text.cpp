// SPDX-License-Identifier: MIT
#include "ui/panel/read_only_text.h"

#include <QWidget>
#include <algorithm>

namespace tailpoint {

QString ReadOnlyText::text(int start, int end) const {
    const QString all = readText();
    const int last = end < 0 ? static_cast<int>(all.size()) : end;
    return all.mid(std::max(0, start), std::max(0, last - std::max(0, start)));
}

QString ReadOnlyText::attributes(int, int* start, int* end) const {
    *start = 0;
    *end = characterCount();
    return {};
}

QAccessible::State AccessibleReading::state() const {
    QAccessible::State state = QAccessibleWidget::state();
    state.readOnly = true;
    return state;
}

void* AccessibleReading::interface_cast(QAccessible::InterfaceType type) {
    return type == QAccessible::TextInterface ? static_cast<QAccessibleTextInterface*>(this)
                                              : QAccessibleWidget::interface_cast(type);
}

void tellNewText(QWidget* widget, const QString& before, const QString& now) {
    if (!QAccessible::isActive())
        return;
    if (now.isEmpty()) {
        QAccessibleTextRemoveEvent removed(widget, 0, before);
        QAccessible::updateAccessibility(&removed);
    } else {
        QAccessibleTextUpdateEvent update(widget, 0, before, now);
        QAccessible::updateAccessibility(&update);
    }
}

} // namespace tailpoint
