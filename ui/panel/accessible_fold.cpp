// SPDX-License-Identifier: MIT
#include "ui/panel/accessible_fold.h"

#include <QAbstractButton>
#include <QAccessibleWidget>

namespace tailpoint {

namespace {

constexpr char kFoldProperty[] = "folds";

class AccessibleFold : public QAccessibleWidget {
public:
    explicit AccessibleFold(QAbstractButton* button) : QAccessibleWidget(button, QAccessible::Button) {}

    QAccessible::State state() const override {
        QAccessible::State state = QAccessibleWidget::state();
        state.expandable = true;
        state.expanded = button()->isChecked();
        state.collapsed = !button()->isChecked();
        return state;
    }
    QStringList actionNames() const override {
        return QStringList{pressAction()} + QAccessibleWidget::actionNames();
    }
    void doAction(const QString& name) override {
        if (name == pressAction())
            button()->click();
        else
            QAccessibleWidget::doAction(name);
    }

private:
    QAbstractButton* button() const { return static_cast<QAbstractButton*>(widget()); }
};

/// Asked again for every class that the button's is made of: the first answers.
QAccessibleInterface* foldFor(const QString&, QObject* object) {
    auto* button = qobject_cast<QAbstractButton*>(object);
    return button != nullptr && button->property(kFoldProperty).toBool() ? new AccessibleFold(button)
                                                                         : nullptr;
}

} // namespace

void makeFold(QAbstractButton& button) {
    static const bool isInstalled = (QAccessible::installFactory(foldFor), true);
    Q_UNUSED(isInstalled);
    button.setProperty(kFoldProperty, true);
    QObject::connect(&button, &QAbstractButton::toggled, &button, [&button] {
        QAccessible::State changed;
        changed.expanded = true;
        QAccessibleStateChangeEvent event(&button, changed);
        QAccessible::updateAccessibility(&event);
    });
}

} // namespace tailpoint
