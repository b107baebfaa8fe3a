// SPDX-License-Identifier: MIT
// Short ways to put commands into menus.
#pragma once

#include <QAction>
#include <QActionGroup>
#include <QKeySequence>
#include <QMenu>

namespace tailpoint {

struct Command {
    const char* name; ///< object name, for the tests that drive the window
    QString title;
    QKeySequence keys = {};
};

/// A command of the menu that calls `run()`.
template <class Run>
QAction* addCommand(QMenu* menu, const Command& command, Run run) {
    QAction* action = menu->addAction(command.title);
    action->setObjectName(QLatin1String(command.name));
    action->setShortcut(command.keys);
    QObject::connect(action, &QAction::triggered, menu, [run] { run(); });
    return action;
}

/// A command that is on or off and calls `run(bool)` when somebody switches it.
template <class Run>
QAction* addSwitch(QMenu* menu, const Command& command, Run run) {
    QAction* action = menu->addAction(command.title);
    action->setObjectName(QLatin1String(command.name));
    action->setShortcut(command.keys);
    action->setCheckable(true);
    QObject::connect(action, &QAction::triggered, menu, run);
    return action;
}

} // namespace tailpoint
