// SPDX-License-Identifier: MIT
// The menus of the sheet.
#include "ui/canvas/canvas_p.h"
#include "ui/canvas/label_gesture.h"
#include "ui/canvas/words.h"

#include <QMenu>

namespace tailpoint {

/// The sketch may change while the menu is open: what is chosen goes to the vector of that name, if there
/// still is one.
std::unique_ptr<QMenu> Canvas::Private::menuFor(int vector) {
    auto menu = std::make_unique<QMenu>();
    const QString name = words::name(*forceAt(scene.sketch(), vector));
    const auto later = [this, who = name.toStdString()](auto act) {
        return [this, who, act] {
            const int now = vectorNamed(scene.sketch(), who);
            if (now != kNoVector) {
                act(now);
            }
        };
    };
    const auto question = [&](const QString& text, Entry quantity) {
        QAction* action = menu->addAction(text);
        action->setCheckable(true);
        action->setChecked(isToFind(scene.sketch(), vector, quantity));
        connect(action, &QAction::triggered, &q, later([this, action, quantity](int now) {
                    if (isToFind(scene.sketch(), now, quantity) != action->isChecked()) {
                        toggle(now, quantity);
                    }
                }));
    };
    question(tr("Magnitude to find"), Entry::magnitude);
    question(tr("Direction to find"), Entry::direction);
    menu->addSeparator();
    const auto typed = [&](const QString& text, Cell cell) {
        menu->addAction(text, &q, later([this, cell](int now) { openEditor(cell, now); }));
    };
    typed(tr("Type the magnitude…\tEnter"), Cell::magnitude);
    typed(tr("Type the direction…\tShift+Enter"), Cell::direction);
    typed(tr("Rename…\tF2"), Cell::name);
    if (hasPins(scene.sketch(), vector)) {
        menu->addAction(tr("Let the label find its own place\tCtrl+Backspace"), &q,
                        later([this](int now) { q.freeLabels(now); }));
    }
    if (scene.result().solved.solutions.size() == 2) {
        menu->addSeparator();
        menu->addAction(tr("Take the other answer\tN"), &q, [this] { q.takeOtherAnswer(); });
    }
    if (vector != kSumIndex) {
        menu->addSeparator();
        menu->addAction(tr("Delete %1\tDel").arg(name), &q, later([this](int now) {
                            q.select(now);
                            q.removeSelected();
                        }));
    }
    return menu;
}

std::unique_ptr<QMenu> Canvas::Private::sheetMenu() {
    auto menu = std::make_unique<QMenu>();
    menu->addAction(tr("Add a force\tInsert"), &q, [this] { q.addForce(); });
    menu->addAction(tr("Fit to the sheet\t0"), &q, [this] { q.fit(); });
    QAction* snap = menu->addAction(tr("Snapping\tS"));
    snap->setCheckable(true);
    snap->setChecked(snapping);
    connect(snap, &QAction::triggered, &q, [this](bool on) { q.setSnapping(on); });
    return menu;
}

} // namespace tailpoint
