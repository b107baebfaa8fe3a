// SPDX-License-Identifier: MIT
// Question > Cases: made, named, chosen, taken out; what differs. Each edit is one undo step.
#pragma once

#include "ui/window/window_parts.h"

#include <QObject>
#include <QString>
#include <optional>

class QAction;
class QMenu;

namespace tailpoint {

class CasesDialog;
struct Sketch;

class CasesMenu : public QObject {
    Q_OBJECT
public:
    CasesMenu(const WindowParts& parts, QMenu* menu);

    QAction* add;

public slots:
    void rename();

private:
    void prepare();
    void step(int by);
    void addCase(const QString& name);
    void renameTo(const QString& name);
    void takeOut();
    void dropChanges();
    void ask(const QString& title, const QString& name, void (CasesMenu::*take)(const QString&));
    void apply(const Sketch& after, std::optional<std::size_t> shown, const QString& step);
    void openTable();

    WindowParts m_parts;
    QAction *m_rename, *m_takeOut, *m_drop, *m_next, *m_previous, *m_over, *m_table;
    CasesDialog* m_dialog = nullptr; ///< belongs to the window
};

} // namespace tailpoint
