// SPDX-License-Identifier: MIT
#include "ui/window/question_menu.h"

#include "core/explain/explain.h"
#include "ui/canvas/canvas.h"
#include "ui/document/given_edits.h"
#include "ui/document/sheet_edits.h"
#include "ui/document/sketch_document.h"
#include "ui/panel/panel.h"
#include "ui/style/symbols.h"
#include "ui/sweep/sweep_dialog.h"
#include "ui/window/cases_menu.h"
#include "ui/window/lines.h"
#include "ui/window/menu_tools.h"
#include "ui/window/settings.h"
#include "ui/window/words_dialog.h"

#include <QActionGroup>
#include <QMainWindow>

namespace tailpoint {

QuestionMenu::QuestionMenu(const WindowParts& parts, QMenu* menu) : QObject(menu), m_parts(parts) {
    addCommand(menu, {"askResultant", tr("Find the &resultant")},
               [this] { apply(askingResultant(m_parts.document.result()), tr("Ask for the resultant")); });
    addCommand(menu, {"askEquilibrant", tr("Find one more force that &balances")}, [this] {
        apply(askingEquilibrant(m_parts.document.result()), tr("Ask for the equilibrant"));
    });
    m_components = addCommand(menu, {"askComponents", {}}, [this] {
        if (const auto after = askingComponents(m_parts.document.result())) {
            apply(*after, tr("Ask for two components"));
        }
    });
    m_smallest = addCommand(menu, {"askSmallest", {}}, [this] { askSmallest(); });
    menu->addSeparator();
    m_sweep = addCommand(menu, {"sweep", tr("Swe&ep…"), QKeySequence(Qt::CTRL | Qt::SHIFT | Qt::Key_W)},
                         [this] { openSweep(); });
    m_sweep->setToolTip(tr("Vary one given value and see what becomes of the answer"));
    cases = new CasesMenu(parts, menu->addMenu(tr("&Cases"))); // belongs to its menu
    m_other =
        addCommand(menu, {"otherAnswer", tr("Take the &other answer"), QKeySequence(Qt::CTRL | Qt::Key_T)},
                   [this] { m_parts.canvas.takeOtherAnswer(); });
    menu->addSeparator();
    QAction* byHand =
        addSwitch(menu, {"handRounding", tr("Round by &hand in the solution")}, [this](bool on) {
            m_parts.panel.setHandRounding(on);
            m_parts.settings.setHandRounding(on);
        });
    byHand->setChecked(m_parts.settings.handRounding());
    addMethods(menu->addMenu(tr("&Method of the solution")));
    m_pairs = addSwitch(menu, {"byParallelograms", tr("Add several forces &parallelogram by parallelogram")},
                        [this](bool on) {
                            m_parts.panel.setByParallelograms(on);
                            m_parts.settings.setByParallelograms(on);
                            showAdding();
                        });
    showAdding();
    addUncertainties(menu->addMenu(tr("Standard &uncertainty in the solution")));
    menu->addSeparator();
    addCommand(menu, {"questionInWords", tr("Question in &words\u2026")}, [this] {
        auto* dialog = m_parts.window.findChild<WordsDialog*>();
        (dialog ? dialog : new WordsDialog(m_parts))->ask();
    });
    connect(menu, &QMenu::aboutToShow, this, &QuestionMenu::prepare);
    connect(&m_parts.document, &SketchDocument::changed, m_other,
            [this] { m_other->setEnabled(m_parts.document.result().solved.solutions.size() == 2); });
    prepare();
}

/// Which way the solution takes; the other one is its check.
void QuestionMenu::addMethods(QMenu* menu) {
    auto* group = new QActionGroup(menu);
    const auto add = [&](Method method, const QString& title) {
        QAction* action = menu->addAction(title, this, [this, method] {
            m_parts.panel.setMethod(method);
            m_parts.settings.setMethod(method);
            showAdding();
        });
        action->setObjectName(QStringLiteral("method-") + text(nameOf(method)));
        action->setCheckable(true);
        action->setChecked(m_parts.panel.method() == method);
        group->addAction(action);
    };
    add(Method::suited, tr("As &suits the question"));
    add(Method::triangle, tr("By the force &triangle"));
    add(Method::components, tr("By &components"));
}

/// Behind the ranges, where tolerances are given; what each tolerance is taken for.
void QuestionMenu::addUncertainties(QMenu* menu) {
    auto* group = new QActionGroup(menu);
    const auto chosen = m_parts.panel.explainOptions().uncertainty;
    const auto add = [&](const char* name, const std::optional<tolerance::UncertaintyAsked>& asked,
                         const QString& title) {
        QAction* action = menu->addAction(title, this, [this, asked] {
            m_parts.panel.setUncertainty(asked);
            m_parts.settings.setUncertainty(asked);
        });
        action->setObjectName(QLatin1String("uncertainty-") + QLatin1String(name));
        action->setCheckable(true);
        action->setChecked(chosen == asked);
        group->addAction(action);
    };
    using tolerance::Spread;
    add("none", {}, tr("&Not told"));
    add("rectangular", tolerance::UncertaintyAsked{}, tr("Tolerances &rectangular"));
    for (const int k : {2, 3})
        add(k == 2 ? "normal2" : "normal3", tolerance::UncertaintyAsked{Spread::normal, double(k)},
            tr("Tolerances normal, half-width = &%1 standard uncertainties").arg(k));
}

/// The sheet follows the text. By the triangle several forces are added two at a time, by components never:
/// the switch has a say only where neither is asked for.
void QuestionMenu::showAdding() {
    const ExplainOptions& options = m_parts.panel.explainOptions();
    m_parts.canvas.setByParallelograms(addsByParallelograms(options));
    m_pairs->setEnabled(options.method == Method::suited);
    m_pairs->setChecked(addsByParallelograms(options));
}

void QuestionMenu::apply(const Sketch& after, const QString& step) {
    if (const auto fault = m_parts.document.edit(after, step)) {
        m_parts.notice.say(text(fault->message));
    }
}

/// It stays beside the sheet and follows it; made when it is first asked for.
void QuestionMenu::openSweep() {
    if (!m_sweepDialog) {
        m_sweepDialog = new SweepDialog(
            m_parts.document, [this] { return m_parts.canvas.theme(); }, &m_parts.window);
        m_sweepDialog->take(m_parts.settings.sweepChoices());
        connect(m_sweepDialog, &SweepDialog::closed, this,
                [this] { m_parts.settings.setSweepChoices(m_sweepDialog->choices()); });
    }
    m_sweepDialog->show();
    m_sweepDialog->raise();
    m_sweepDialog->activateWindow();
}

void QuestionMenu::askSmallest() {
    const int vector = m_parts.canvas.selected();
    if (const auto after = askingSmallest(m_parts.document.result(), vector)) {
        apply(*after, tr("Ask for the smallest force"));
    }
}

/// Says what a command would do now, and leaves out of reach what can't be asked.
void QuestionMenu::prepare() {
    const Result& result = m_parts.document.result();
    const auto nameOf = [&](int vector) { return text(vectorOf(result.sketch, vector).name); };
    const bool two = askingComponents(result).has_value();
    m_components->setEnabled(two);
    m_components->setText(
        two ? tr("Resol&ve %1 along the lines of %2 and %3").arg(nameOf(kSumIndex), nameOf(0), nameOf(1))
            : tr("Resolve the resultant along two lines"));
    const int selected = m_parts.canvas.selected();
    const bool smallest = askingSmallest(result, selected).has_value();
    m_smallest->setEnabled(smallest);
    const int beside = besideSmallest(result.sketch, selected);
    m_smallest->setText(
        smallest && beside >= 0
            ? tr("Find the &smallest %1 that balances with %2").arg(nameOf(selected), nameOf(beside))
        : smallest
            ? tr("Find the &smallest %1 that keeps %2 on its line").arg(nameOf(selected), nameOf(kSumIndex))
            : tr("Find the smallest force (select it first)"));
    m_other->setEnabled(result.solved.solutions.size() == 2);
    m_sweep->setEnabled(!result.isWithheld);
}

} // namespace tailpoint
