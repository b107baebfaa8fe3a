// SPDX-License-Identifier: MIT
// The menu of a cell.
#include "ui/document/sketch_document.h"
#include "ui/panel/bound_dialog.h"
#include "ui/panel/given_view.h"

#include <QAction>
#include <QClipboard>
#include <QGuiApplication>
#include <QMenu>

namespace tailpoint {

void GivenView::setEitherSense(int vector, bool either) {
    Sketch after = m_document.sketch();
    vectorOf(after, vector).lineOfActionOnly = either;
    apply(after, either ? tr("Take the line of action only") : tr("Keep the sense"));
}

void GivenView::editBounds(int vector) {
    auto* dialog = new BoundDialog(m_document, vector, window());
    dialog->open();
}

void GivenView::setToFind(int vector, Entry cell, bool toFind) {
    if (isToFind(m_document.sketch(), vector, cell) != toFind) {
        m_model->toggle(m_model->index(m_model->rowOf(vector), static_cast<int>(cell)));
    }
}

/// The sketch may change while the menu is open: what is chosen goes to the vector of that name, if there
/// still is one.
void GivenView::addCellActions(QMenu& menu, int vector, std::optional<Entry> cell) {
    const auto later = [this, name = vectorOf(m_document.sketch(), vector).name](auto act) {
        return [this, name, act] {
            const int now = vectorNamed(m_document.sketch(), name);
            if (now != kNoVector) {
                act(now);
            }
        };
    };
    if (cell && *cell != Entry::name) {
        const bool toFind = isToFind(m_document.sketch(), vector, *cell);
        menu.addAction(toFind ? tr("Make it given\t?") : tr("Make it one to find\t?"), this,
                       later([this, cell, toFind](int now) { setToFind(now, *cell, !toFind); }));
    }
    if (cell) {
        menu.addAction(*cell == Entry::name ? tr("Rename\tF2") : tr("Type a value\tF2"), this,
                       later([this, cell](int now) { edit(now, *cell); }));
    }
    const UnitOf unit = cell == Entry::direction ? UnitOf::angle : UnitOf::force;
    menu.addAction(unit == UnitOf::angle ? tr("Unit of angles…") : tr("Unit of force…"), this,
                   [this, unit] {
                       const QRect at = m_table->visualRect(m_table->currentIndex());
                       emit m_table->unitAsked(unit, m_table->viewport()->mapToGlobal(at.bottomLeft()));
                   })
        ->setObjectName(QStringLiteral("unit"));
    auto* bounds = menu.addAction(tr("Limit and permitted direction…"), this,
                                  later([this](int now) { editBounds(now); }));
    bounds->setObjectName(QStringLiteral("bounds"));
    auto* either = menu.addAction(tr("Line of action only, either sense"));
    either->setCheckable(true);
    either->setChecked(vectorOf(m_document.sketch(), vector).lineOfActionOnly);
    connect(either, &QAction::triggered, this,
            later([this, either](int now) { setEitherSense(now, either->isChecked()); }));
}

void GivenView::showMenu(const QModelIndex& index, const QPoint& place) {
    auto* menu = new QMenu(this);
    menu->setObjectName(QStringLiteral("givenMenu"));
    menu->setAttribute(Qt::WA_DeleteOnClose);
    if (index.isValid()) {
        const int vector = m_model->vectorAt(index.row());
        addCellActions(*menu, vector, GivenModel::cellAt(index.column()));
        menu->addSeparator();
        if (vector != kSumIndex) {
            menu->addAction(tr("Delete\tDel"), this, [this, names = chosenForces()] { remove(names); });
        }
        menu->addAction(tr("Copy\tCtrl+C"), this,
                        [this] { QGuiApplication::clipboard()->setText(m_table->selectedText()); });
    }
    menu->addAction(tr("Paste lines of name, magnitude, direction\tCtrl+V"), this,
                    [this] { paste(QGuiApplication::clipboard()->text()); });
    menu->popup(place);
}

} // namespace tailpoint
