#include "ui/panel/spoken_line.h"

#include <QAccessible>
#include <QAccessibleWidget>

namespace tailpoint {

namespace {

/// A notification: what comes up in one is read out. A plain label's new name is not.
QAccessibleInterface* notificationFor(const QString& className, QObject* object) {
    auto* line = className == QLatin1String(SpokenLine::staticMetaObject.className())
                     ? qobject_cast<SpokenLine*>(object)
                     : nullptr;
    return line == nullptr ? nullptr : new QAccessibleWidget(line, QAccessible::Notification);
}

} // namespace

SpokenLine::SpokenLine(const QString& objectName, QWidget* parent) : QLabel(parent) {
    static const bool isInstalled = (QAccessible::installFactory(notificationFor), true);
    Q_UNUSED(isInstalled);
    setObjectName(objectName);
}

void SpokenLine::say(const QString& shown, const QString& spoken) {
    setText(shown);
    setAccessibleName(spoken);
    if (spoken.isEmpty() || !isVisible())
        return;
    for (const QAccessible::Event news : {QAccessible::ObjectShow, QAccessible::Alert}) { // one platform each
        QAccessibleEvent event(this, news);
        QAccessible::updateAccessibility(&event);
    }
}

} // namespace tailpoint
