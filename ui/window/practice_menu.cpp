// SPDX-License-Identifier: MIT
#include "ui/window/practice_menu.h"

#include "ui/canvas/canvas.h"
#include "ui/document/sketch_document.h"
#include "ui/marking/own_answer.h"
#include "ui/panel/line_exercise_view.h"
#include "ui/panel/panel.h"
#include "ui/panel/practice_hints.h"
#include "ui/panel/practice_strip.h"
#include "ui/practice/line_exercise.h"
#include "ui/practice/practice.h"
#include "ui/practice/practice_choices.h"
#include "ui/practice/problem_file.h"
#include "ui/window/lines.h"
#include "ui/window/menu_tools.h"
#include "ui/window/practice_dialog.h"
#include "ui/window/practice_summary.h"
#include "ui/window/settings.h"

#include <QMainWindow>
#include <QRandomGenerator>
#include <QScopedValueRollback>
#include <QTimer>
#include <utility>

namespace tailpoint {

namespace {

constexpr int kNew = 400;         // milliseconds in which a hint is laid out
constexpr int kMostProblems = 12; // looked at for one whose solution can have a slip in a line

std::uint32_t anySeed() {
    return QRandomGenerator::global()->generate();
}

QString reasonWords(NextReason reason) {
    switch (reason) {
    case NextReason::plain:
        break;
    case NextReason::afterSlip:
        return PracticeMenu::tr("Chosen so that the last slip would show again.");
    case NextReason::askedAgain:
        return PracticeMenu::tr("Asked again: a slip that went away would show here.");
    case NextReason::higher:
        return PracticeMenu::tr("Three right: one level up.");
    }
    return {};
}

} // namespace

PracticeMenu::PracticeMenu(const WindowParts& parts, PracticeParts practice, QMenu* teach, QMenu* question)
    : QObject(teach), m_parts(parts), m_practice(std::move(practice)) {
    addTeaching(teach);
    question->addSeparator();
    addCommand(question,
               {"otherNumbers", tr("Other &numbers"), QKeySequence(Qt::CTRL | Qt::SHIFT | Qt::Key_N)},
               [this] { otherNumbers(); });
    m_practice.strip.addAtLeft(m_hint, QStringLiteral("hint"));
    m_practice.strip.addAtRight(m_more, QStringLiteral("once-more"));
    m_practice.strip.addAtRight(m_harder, QStringLiteral("harder"));
    m_practice.strip.addAtRight(m_next, QStringLiteral("next"));
    connect(&m_practice.practice, &Practice::problemChanged, this, &PracticeMenu::showWhat);
    connect(&m_practice.practice, &Practice::hintsChanged, this, &PracticeMenu::showWhat);
    connect(&m_practice.hints, &PracticeHints::laidOut, this,
            [this] { QTimer::singleShot(0, this, [this] { showHints(); }); }); // the panel too, by then
    connect(&m_practice.practice, &Practice::recorded, this, &PracticeMenu::sayFault);
    connect(&m_parts.document, &SketchDocument::replaced, this, &PracticeMenu::opened);
    connect(&m_practice.lines, &LineExerciseView::asks, this,
            [this] { QTimer::singleShot(0, this, [this] { showExercise(); }); });
    connect(&m_practice.exercise, &LineExercise::changed, this, [this] {
        if (m_practice.exercise.isDone() && !m_parts.ownAnswer.isOn())
            m_parts.hints.setHint(
                tr("Ctrl+F8: once more, with other numbers. Ctrl+Page Down: the next question."));
    });
    connect(&m_practice.lines, &LineExerciseView::wentTo, this, [this](const QRect& row) {
        const QPoint at = m_practice.lines.mapTo(m_parts.panel.widget(), row.topLeft());
        m_parts.panel.ensureVisible(0, at.y() + row.height(), 0, 12);
        m_parts.panel.ensureVisible(0, at.y(), 0, 12);
    });
    if (m_parts.settings.keepsPractice())
        if (const auto fault = m_practice.practice.sitting().keep(true))
            m_parts.notice.say(tr("The record of practice is not kept \u2013 %1").arg(fault->line()));
    showWhat();
}

void PracticeMenu::addTeaching(QMenu* menu) {
    Practice& following = m_practice.practice;
    menu->addSeparator();
    practiceList =
        addCommand(menu, {"practice", tr("P&ractice\u2026"), QKeySequence(Qt::Key_F8)}, [this] { choose(); });
    practiceList->setIconText(tr("Practice"));
    practiceList->setToolTip(tr("Questions to answer, by kind and level (F8)"));
    m_hint = addCommand(menu, {"practiceHint", tr("&Hint"), QKeySequence(Qt::Key_F9)}, [this] { hint(); });
    m_hint->setToolTip(tr("What leads to the next line (F9)"));
    m_more = addCommand(menu, {"practiceMore", tr("&Once more"), QKeySequence(Qt::CTRL | Qt::Key_F8)},
                        [this, &following] { beginAgain(following.onceMore(anySeed())); });
    m_more->setToolTip(tr("The same kind and level with other numbers (Ctrl+F8)"));
    m_harder = addCommand(menu, {"practiceHarder", tr("Har&der"), QKeySequence(Qt::SHIFT | Qt::Key_F8)},
                          [this, &following] { beginAgain(following.harder(anySeed())); });
    m_harder->setToolTip(tr("The next level (Shift+F8)"));
    m_next = addCommand(menu, {"practiceNext", tr("&Next"), QKeySequence(Qt::CTRL | Qt::Key_PageDown)},
                        [this] { next(); });
    m_next->setToolTip(tr("Goes on: what is best asked now, after the answers before; aimed at a slip, asked "
                          "again, or a level up (Ctrl+Page Down)"));
    m_fill =
        addCommand(menu, {"practiceFill", tr("&Fill in the solution"), QKeySequence(Qt::SHIFT | Qt::Key_F9)},
                   [this] { fillIn(); });
    m_find = addCommand(menu, {"practiceFind", tr("Find the &slip"), QKeySequence(Qt::CTRL | Qt::Key_F9)},
                        [this] { findSlip(); });
    addCommand(menu, {"practiceSummary", tr("How it &went\u2026")}, [this] {
        auto* dialog = m_parts.window.findChild<PracticeSummary*>();
        if (!dialog)
            dialog = new PracticeSummary(m_practice.practice.sitting(), m_parts.settings, &m_parts.window);
        dialog->ask();
    });
}

/// Built on first use: a start does not pay for it.
void PracticeMenu::choose() {
    auto* dialog = m_parts.window.findChild<PracticeDialog*>();
    if (!dialog) {
        dialog = new PracticeDialog(&m_parts.window);
        connect(dialog, &PracticeDialog::chosen, this, &PracticeMenu::take);
    }
    dialog->ask();
}

void PracticeMenu::take(const PracticeChoice& choice, WorkedAs as) {
    if (!choice.sample.isEmpty())
        return openExample(choice);
    ProblemId id = choice.problem;
    if (!choice.isCoded)
        id.number = problemNumber(anySeed(), 0);
    beginAs(id, as);
}

void PracticeMenu::beginAs(ProblemId id, WorkedAs as) {
    if (!begin(id) || as == WorkedAs::question)
        return;
    if (as == WorkedAs::faded)
        return fillIn();
    findSlip();
}

/// In the way in which the open one was worked.
void PracticeMenu::beginAgain(const ProblemId& id) {
    beginAs(id, m_practice.exercise.worked());
}

void PracticeMenu::fillIn() {
    if (!m_practice.exercise.beginFaded())
        return;
    m_practice.lines.takeFocus();
    m_parts.hints.setHint(
        tr("Choose what the line rests on, type its number, Return enters it. Esc leaves and shows the "
           "answer."));
}

/// Where none of the likely slips can be shown in a line, another problem of the kind is offered.
void PracticeMenu::findSlip() {
    if (m_practice.exercise.beginFlawed(anySeed())) {
        m_parts.hints.setHint(
            tr("Arrows go from line to line, Return points at one, and so does a click. Esc leaves and "
               "shows the answer."));
        return m_practice.lines.takeFocus();
    }
    const auto& problem = m_practice.practice.problem();
    if (!problem)
        return;
    const ProblemId id = problem->id;
    m_parts.notice.ask(tr("None of the likely slips changes just one line of this solution."),
                       {{tr("Take another problem"), [this, id] { findSlipFrom(id); }}});
}

/// The next of the kind in whose solution there is one.
bool PracticeMenu::findSlipFrom(ProblemId id) {
    for (int tried = 0; tried < kMostProblems; ++tried) {
        id.number = (id.number + 1) % kProblemNumbers;
        const auto made = problem(id);
        if (made && LineExercise::hasSlip(*made))
            return beginAs(id, WorkedAs::flawed), true;
    }
    m_parts.notice.say(tr("No problem was found at this level whose solution can have a slip in one line."));
    return false;
}

/// A problem, wherever it comes from, is a question; what else is opened after one is to be seen whole.
void PracticeMenu::opened() {
    const bool was = std::exchange(m_isProblem, m_practice.practice.problem().has_value());
    if (m_showsSolved)
        return;
    if (!m_isProblem) {
        if (was)
            m_parts.ownAnswer.end();
        return;
    }
    m_practice.practice.takeAsUnseen();
    if (m_parts.ownAnswer.isOn() || !m_parts.ownAnswer.begin())
        return;
    const QString how = tr("Opened as a question: F7 or Esc shows the answer.");
    m_practice.strip.say(how, how);
    m_parts.hints.setHint(
        tr("Type what you have found, or drag the open tip on the sheet; Enter marks it. F7 "
           "or Esc shows the answer."));
}

/// Its answer is withheld before the sheet can show it: while one is looked for it stays withheld.
bool PracticeMenu::begin(const ProblemId& id, const std::string& aimedAt) {
    const auto made = problem(id);
    if (!made || !m_practice.mayLoseChanges())
        return false;
    m_practice.practice.expect(aimedAt);
    m_parts.document.replace(withPracticeKeys(*made), {});
    m_parts.notice.say({});
    if (!m_parts.ownAnswer.isOn())
        m_practice.ownAnswer->trigger();
    m_parts.canvas.fit();
    m_parts.panel.takeFocus();
    m_practice.strip.say({}, {});
    return true;
}

/// Solved: nothing is withheld.
void PracticeMenu::openExample(const PracticeChoice& choice) {
    if (const auto sketch = sampleSketch(choice.sample); sketch && m_practice.mayLoseChanges()) {
        m_parts.document.replace(*sketch, {});
        m_parts.ownAnswer.end();
        m_parts.notice.say({});
        m_parts.canvas.fit();
    }
}

void PracticeMenu::showExample(const ProblemId& id) {
    const auto made = problem(id);
    if (!made || !m_practice.mayLoseChanges())
        return;
    const QScopedValueRollback shown(m_showsSolved, true);
    m_parts.document.replace(withPracticeKeys(*made), {});
    m_parts.ownAnswer.end(); // afterwards: what was open before stays as it was answered
    m_parts.canvas.fit();
    m_practice.strip.say(tr("Solved, as an example. Next goes on."), tr("Solved, as an example."));
}

void PracticeMenu::hint() {
    if (m_practice.practice.openHint()) {
        const QString words = m_practice.hints.lastWords();
        const QString shown =
            m_practice.practice.isExample() ? tr("This question counts as an example now.") : QString();
        m_practice.strip.say(shown, shown.isEmpty() ? words : words + u'\n' + shown);
        m_sinceHint.start();
    } else if (m_practice.practice.canHint()) {
        const QString first = tr("Before the next hint type a value, or mark your answer.");
        m_practice.strip.say(first, first);
    }
    showWhat();
}

/// The end of them, which is new, where it is out of sight.
void PracticeMenu::showHints() {
    if (!m_sinceHint.isValid() || m_sinceHint.elapsed() > kNew)
        return;
    const PracticeHints& hints = m_practice.hints;
    const QPoint end = hints.mapTo(m_parts.panel.widget(), hints.rect().bottomLeft());
    m_parts.panel.ensureVisible(0, end.y(), 0, 12);
}

void PracticeMenu::next() {
    const NextProblem next = m_practice.practice.next(anySeed());
    if (!begin(next.problem, next.aimedAt))
        return;
    const QString why = reasonWords(next.reason);
    m_practice.strip.say(why, why);
    if (next.offersExample)
        offerExample(next.problem);
}

/// Of the same kind, with other numbers: to be filled in, or solved. Who goes on declines.
void PracticeMenu::offerExample(const ProblemId& next) {
    ProblemId example = next;
    example.number = (next.number + 1) % kProblemNumbers;
    m_parts.notice.ask(tr("Two slips at this level: a worked example may help."),
                       {{tr("Fill one in"), [this, example] { beginAs(example, WorkedAs::faded); }},
                        {tr("Show one"), [this, example] { showExample(example); }}});
}

/// What is asked now, where it is out of sight.
void PracticeMenu::showExercise() {
    const LineExerciseView& lines = m_practice.lines;
    if (!lines.isVisible())
        return;
    const QPoint end = lines.mapTo(m_parts.panel.widget(), lines.rect().bottomLeft()),
                 top = lines.mapTo(m_parts.panel.widget(), lines.rect().topLeft());
    m_parts.panel.ensureVisible(0, end.y(), 0, 12);
    if (m_practice.exercise.flawed() != nullptr && !m_practice.exercise.isFound())
        m_parts.panel.ensureVisible(0, top.y(), 0, 12);
}

void PracticeMenu::otherNumbers() {
    m_parts.panel.finishTyping();
    m_parts.document.commit();
    const auto other = withOtherNumbers(m_parts.document.sketch(), anySeed());
    if (!other)
        return m_parts.notice.say(tr("No other numbers were found for this question."));
    if (m_parts.document.edit(*other, tr("Other numbers")))
        return;
    m_parts.notice.say({});
    m_parts.canvas.fit();
}

void PracticeMenu::showWhat() {
    const Practice& practice = m_practice.practice;
    const bool is = practice.problem().has_value();
    m_hint->setEnabled(practice.canHint());
    m_more->setEnabled(is);
    m_fill->setEnabled(is);
    m_find->setEnabled(is);
    m_next->setEnabled(is);
    m_harder->setEnabled(practice.canBeHarder());
    m_parts.canvas.setGivensStill(is && m_parts.ownAnswer.isOn());
}

void PracticeMenu::sayFault() {
    if (const auto& fault = m_practice.practice.sitting().fault())
        m_parts.notice.say(tr("The record of practice is not kept \u2013 %1").arg(fault->line()));
}

} // namespace tailpoint
