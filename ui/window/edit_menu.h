// SPDX-License-Identifier: MIT
// Edit: undo, forces in and out, values and figure to the clipboard.
#pragma once

#include "ui/window/window_parts.h"

#include <QObject>

class QAction;
class QMenu;

namespace tailpoint {

class EditMenu : public QObject {
    Q_OBJECT
public:
    EditMenu(const WindowParts& parts, QMenu* menu);
    QAction* addForce; ///< for the bar

private:
    void nameSteps();
    void addCopies(QMenu* menu);
    void paste();
    void switchPane();
    WindowParts m_parts;
    QAction *m_undo, *m_redo;
};

} // namespace tailpoint
