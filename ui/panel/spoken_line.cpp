// SPDX-License-Identifier: MIT
#include "ui/panel/spoken_line.h"

#include "ui/panel/read_only_text.h"

#include <QPainter>
#include <QStyle>

namespace tailpoint {

namespace {

/// A notification: what comes up in one is read out. A plain label's new name is not.
QAccessibleInterface* notificationFor(const QString& className, QObject* object) {
    auto* line = className == QLatin1String(SpokenLine::staticMetaObject.className())
                     ? qobject_cast<SpokenLine*>(object)
                     : nullptr;
    return line == nullptr ? nullptr : new AccessibleReading(line, QAccessible::Notification, [line] {
        return line->accessibleName();
    });
}

} // namespace

SpokenLine::SpokenLine(const QString& objectName, QWidget* parent) : QLabel(parent) {
    static const bool isInstalled = (QAccessible::installFactory(notificationFor), true);
    Q_UNUSED(isInstalled);
    setObjectName(objectName);
}

/// Said in each of the ways that one screen reader or another listens to: the name that changes, the text
/// that is inserted, the notification that comes up.
void SpokenLine::say(const QString& shown, const QString& spoken) {
    setText(shown);
    const QString before = accessibleName();
    if (spoken != before) // each setting is told
        setAccessibleName(spoken);
    if (!isVisible() || (spoken.isEmpty() && before.isEmpty()))
        return;
    tellNewText(this, before, spoken);
    if (spoken.isEmpty())
        return;
    for (const QAccessible::Event news : {QAccessible::ObjectShow, QAccessible::Alert}) { // one platform each
        QAccessibleEvent event(this, news);
        QAccessible::updateAccessibility(&event);
    }
}

void SpokenLine::paintEvent(QPaintEvent* event) {
    const QRect room = contentsRect();
    const bool isOneLine = !wordWrap() && !Qt::mightBeRichText(text());
    if (!isOneLine || fontMetrics().horizontalAdvance(text()) <= room.width())
        return QLabel::paintEvent(event);
    QPainter painter(this);
    style()->drawItemText(&painter, room, static_cast<int>(alignment()), palette(), isEnabled(),
                          fontMetrics().elidedText(text(), Qt::ElideRight, room.width()), foregroundRole());
}

} // namespace tailpoint
