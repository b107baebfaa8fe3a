// SPDX-License-Identifier: MIT
#include "ui/window/edit_menu.h"

#include "ui/canvas/canvas.h"
#include "ui/document/sketch_document.h"
#include "ui/panel/copied_values.h"
#include "ui/panel/panel.h"
#include "ui/window/figure_output.h"
#include "ui/window/lines.h"
#include "ui/window/menu_tools.h"

#include <QClipboard>
#include <QGuiApplication>
#include <QMimeData>

namespace tailpoint {

EditMenu::EditMenu(const WindowParts& parts, QMenu* menu) : QObject(menu), m_parts(parts) {
    m_undo = addCommand(menu, {"undo", tr("&Undo"), QKeySequence::Undo}, [this] { m_parts.document.undo(); });
    m_redo = addCommand(menu, {"redo", tr("&Redo")}, [this] { m_parts.document.redo(); });
    m_redo->setShortcuts(
        {QKeySequence(Qt::CTRL | Qt::SHIFT | Qt::Key_Z), QKeySequence(Qt::CTRL | Qt::Key_Y)});
    connect(&m_parts.document, &SketchDocument::historyChanged, this, &EditMenu::nameSteps);
    nameSteps();
    menu->addSeparator();
    addForce =
        addCommand(menu, {"addForce", tr("&Add force"), QKeySequence(Qt::CTRL | Qt::Key_Return)}, [this] {
            m_parts.canvas.setFocus(); // what is typed next is the new force's value
            m_parts.canvas.addForce();
        });
    addForce->setToolTip(tr("Add a force"));
    addCommand(menu, {"deleteForce", tr("&Delete force")}, [this] { m_parts.canvas.removeSelected(); });
    addCommand(menu, {"pasteForces", tr("&Paste forces"), QKeySequence::Paste}, [this] { paste(); });
    menu->addSeparator();
    addCopies(menu);
    menu->addSeparator();
    addCommand(menu, {"switchPane", tr("Go to &sheet or table"), QKeySequence(Qt::Key_F6)},
               [this] { switchPane(); });
}

void EditMenu::addCopies(QMenu* menu) {
    const auto copy = [this](QMimeData* data, const QString& hint) {
        QGuiApplication::clipboard()->setMimeData(data);
        m_parts.hints.setHint(hint);
    };
    const auto from = [this] { return provenanceOf(m_parts.document.path()); };
    addCommand(menu, {"copyFigure", tr("Copy &figure"), QKeySequence(Qt::CTRL | Qt::SHIFT | Qt::Key_C)},
               [this, copy, from] {
                   copy(figureForClipboard(m_parts.document.result(), figureAsSeen(m_parts.canvas),
                                           m_parts.panel.explainOptions(), from()),
                        tr("The figure is on the clipboard as SVG, PNG and text."));
               });
    addCommand(menu, {"copyValues", tr("Copy &values"), QKeySequence(Qt::CTRL | Qt::SHIFT | Qt::Key_V)},
               [this, copy, from] {
                   copy(valuesForClipboard(m_parts.document.result(), m_parts.panel.explainOptions(), from()),
                        tr("The values are on the clipboard as a table, as text and for a spreadsheet."));
               });
    addCommand(menu, {"copyNote", tr("Copy as &note")}, [this, copy, from] {
        const Result& result = m_parts.document.result();
        copy(noteForClipboard(result, figurePng(result, figureAsSeen(m_parts.canvas)), from()),
             tr("The note is on the clipboard: a paragraph, a table and the figure."));
    });
}

/// "Undo Turn P"; grey where there is nothing to undo.
void EditMenu::nameSteps() {
    const SketchDocument& document = m_parts.document;
    m_undo->setText(tr("&Undo %1").arg(document.undoText()).trimmed());
    m_undo->setEnabled(document.canUndo());
    m_redo->setText(tr("&Redo %1").arg(document.redoText()).trimmed());
    m_redo->setEnabled(document.canRedo());
}

void EditMenu::paste() {
    m_parts.panel.paste(QGuiApplication::clipboard()->text());
}

void EditMenu::switchPane() {
    if (m_parts.canvas.hasFocus()) {
        m_parts.panel.takeFocus();
    } else {
        m_parts.canvas.setFocus(Qt::TabFocusReason);
    }
}

} // namespace tailpoint
