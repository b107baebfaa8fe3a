// SPDX-License-Identifier: MIT
#include "ui/window/cases_menu.h"

#include "core/sketch/cases.h"
#include "ui/canvas/canvas.h"
#include "ui/cases/cases_dialog.h"
#include "ui/document/sketch_document.h"
#include "ui/style/symbols.h"
#include "ui/window/lines.h"
#include "ui/window/menu_tools.h"
#include "ui/window/settings.h"

#include <QInputDialog>
#include <QMainWindow>

namespace tailpoint {

CasesMenu::CasesMenu(const WindowParts& parts, QMenu* menu) : QObject(menu), m_parts(parts) {
    add = addCommand(menu, {"caseAdd", tr("&Add a case…")}, [this] {
        ask(tr("Add a case"), text(nextCaseName(m_parts.document.whole())), &CasesMenu::addCase);
    });
    m_rename = addCommand(menu, {"caseRename", tr("&Rename the case…")}, [this] { rename(); });
    m_drop = addCommand(menu, {"caseDrop", tr("Make the case as &drawn again")}, [this] { dropChanges(); });
    m_takeOut = addCommand(menu, {"caseDelete", tr("De&lete the case")}, [this] { takeOut(); });
    menu->addSeparator();
    m_next = addCommand(menu, {"caseNext", tr("&Next case"), QKeySequence(Qt::ALT | Qt::Key_PageDown)},
                        [this] { step(1); });
    m_previous =
        addCommand(menu, {"casePrevious", tr("&Previous case"), QKeySequence(Qt::ALT | Qt::Key_PageUp)},
                   [this] { step(-1); });
    menu->addSeparator();
    m_over = addSwitch(menu, {"casesOver", tr("Lay the &other cases over the sheet")}, [this](bool on) {
        m_parts.canvas.layCasesOver(on);
        m_parts.settings.setCasesOver(on);
    });
    m_over->setChecked(m_parts.settings.casesOver());
    m_parts.canvas.layCasesOver(m_over->isChecked());
    m_table = addCommand(
        menu,
        {"casesTable", tr("Differences and &envelope…"), QKeySequence(Qt::CTRL | Qt::SHIFT | Qt::Key_E)},
        [this] { openTable(); });
    connect(&m_parts.document, &SketchDocument::changed, this, &CasesMenu::prepare);
    prepare();
}

void CasesMenu::prepare() {
    const bool isOpen = !m_parts.document.withholdsAnswer();
    const bool has = isOpen && !m_parts.document.whole().cases.empty();
    const auto shown = isOpen ? m_parts.document.shownCase() : std::nullopt;
    add->setEnabled(isOpen && m_parts.document.whole().cases.size() < kMostCases);
    for (QAction* action : {m_rename, m_takeOut})
        action->setEnabled(shown.has_value());
    m_drop->setEnabled(shown && !m_parts.document.whole().cases[*shown].changes.empty());
    for (QAction* action : {m_next, m_previous, m_over, m_table})
        action->setEnabled(has);
}

/// Round and round, the sketch as drawn among them.
void CasesMenu::step(int by) {
    const auto shown = m_parts.document.shownCase();
    const int count = static_cast<int>(m_parts.document.whole().cases.size()) + 1;
    const int now = shown ? static_cast<int>(*shown) + 1 : 0, next = (now + by + count) % count;
    m_parts.document.showCase(next == 0 ? std::nullopt : std::optional(static_cast<std::size_t>(next - 1)));
}

void CasesMenu::ask(const QString& title, const QString& name, void (CasesMenu::*take)(const QString&)) {
    auto* dialog = new QInputDialog(&m_parts.window);
    dialog->setObjectName(QStringLiteral("caseName"));
    dialog->setAttribute(Qt::WA_DeleteOnClose);
    dialog->setWindowTitle(title);
    dialog->setLabelText(tr("Name of the case"));
    dialog->setTextValue(name);
    connect(dialog, &QInputDialog::textValueSelected, this,
            [this, take](const QString& typed) { (this->*take)(typed.trimmed()); });
    dialog->open();
}

void CasesMenu::apply(const Sketch& after, std::optional<std::size_t> shown, const QString& step) {
    if (const auto fault = m_parts.document.editWhole(after, shown, step))
        m_parts.notice.say(tr("The case: %1").arg(text(fault->message)));
    else
        m_parts.notice.say({});
}

/// A new one begins as what is on the sheet.
void CasesMenu::addCase(const QString& name) {
    Sketch after = m_parts.document.whole();
    const auto shown = m_parts.document.shownCase();
    LoadCase one{name.toStdString(), shown ? after.cases[*shown].changes : std::vector<CaseChange>()};
    after.cases.push_back(std::move(one));
    apply(after, after.cases.size() - 1, tr("Add the case %1").arg(name));
}

void CasesMenu::rename() {
    if (const auto shown = m_parts.document.shownCase())
        ask(tr("Rename the case"), text(m_parts.document.whole().cases[*shown].name), &CasesMenu::renameTo);
}

void CasesMenu::renameTo(const QString& name) {
    const auto shown = m_parts.document.shownCase();
    if (!shown)
        return;
    Sketch after = m_parts.document.whole();
    after.cases[*shown].name = name.toStdString();
    apply(after, shown, tr("Rename the case %1").arg(name));
}

void CasesMenu::takeOut() {
    const auto shown = m_parts.document.shownCase();
    if (!shown)
        return;
    Sketch after = m_parts.document.whole();
    const QString name = text(after.cases[*shown].name);
    after.cases.erase(after.cases.begin() + static_cast<std::ptrdiff_t>(*shown));
    apply(after, std::nullopt, tr("Delete the case %1").arg(name));
}

void CasesMenu::dropChanges() {
    const auto shown = m_parts.document.shownCase();
    if (!shown)
        return;
    Sketch after = m_parts.document.whole();
    after.cases[*shown].changes.clear();
    apply(after, shown, tr("Make the case %1 as drawn").arg(text(after.cases[*shown].name)));
}

/// It stays beside the sheet and follows it; made when it is first asked for.
void CasesMenu::openTable() {
    if (!m_dialog)
        m_dialog = new CasesDialog(m_parts.document, &m_parts.window);
    m_dialog->show();
    m_dialog->raise();
    m_dialog->activateWindow();
}

} // namespace tailpoint
