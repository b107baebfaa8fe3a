#include "ui/window/practice_menu.h"

#include "ui/canvas/canvas.h"
#include "ui/document/sketch_document.h"
#include "ui/marking/own_answer.h"
#include "ui/panel/panel.h"
#include "ui/panel/practice_hints.h"
#include "ui/panel/practice_strip.h"
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
#include <QTimer>

namespace tailpoint {

namespace {

constexpr int kNew = 400; // milliseconds in which a hint is laid out

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
    m_practice.strip.addAtLeft(m_hint);
    for (QAction* action : {m_more, m_harder, m_next})
        m_practice.strip.addAtRight(action);
    connect(&m_practice.practice, &Practice::problemChanged, this, &PracticeMenu::showWhat);
    connect(&m_practice.practice, &Practice::hintsChanged, this, &PracticeMenu::showWhat);
    connect(&m_practice.hints, &PracticeHints::laidOut, this,
            [this] { QTimer::singleShot(0, this, [this] { showHints(); }); }); // the panel too, by then
    connect(&m_practice.practice, &Practice::recorded, this, &PracticeMenu::sayFault);
    if (m_parts.settings.keepsPractice())
        if (const auto fault = m_practice.practice.sitting().keep(true))
            m_parts.notice.say(tr("The record of practice is not kept \u2013 %1").arg(fault->line()));
    showWhat();
}

void PracticeMenu::addTeaching(QMenu* menu) {
    Practice& practice = m_practice.practice;
    menu->addSeparator();
    addCommand(menu, {"practice", tr("P&ractice\u2026"), QKeySequence(Qt::Key_F8)}, [this] { choose(); });
    m_hint = addCommand(menu, {"practiceHint", tr("&Hint"), QKeySequence(Qt::Key_F9)}, [this] { hint(); });
    m_hint->setToolTip(tr("What leads to the next line (F9)"));
    m_more = addCommand(menu, {"practiceMore", tr("&Once more"), QKeySequence(Qt::CTRL | Qt::Key_F8)},
                        [this, &practice] { begin(practice.onceMore(anySeed())); });
    m_more->setToolTip(tr("The same kind, other numbers (Ctrl+F8)"));
    m_harder = addCommand(menu, {"practiceHarder", tr("Har&der"), QKeySequence(Qt::SHIFT | Qt::Key_F8)},
                          [this, &practice] { begin(practice.harder(anySeed())); });
    m_harder->setToolTip(tr("The next level (Shift+F8)"));
    m_next = addCommand(menu, {"practiceNext", tr("&Next"), QKeySequence(Qt::CTRL | Qt::Key_PageDown)},
                        [this] { next(); });
    m_next->setToolTip(tr("What is best asked now, after the answers before (Ctrl+Page Down)"));
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

void PracticeMenu::take(const PracticeChoice& choice) {
    if (!choice.sample.isEmpty())
        return openExample(choice);
    ProblemId id = choice.problem;
    if (!choice.isCoded)
        id.number = problemNumber(anySeed(), 0);
    begin(id);
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
        const QString first = tr("First try: type a value, or mark your answer.");
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

/// Of the same kind, with other numbers.
void PracticeMenu::offerExample(const ProblemId& next) {
    ProblemId example = next;
    example.number = (next.number + 1) % kProblemNumbers;
    m_parts.notice.ask(tr("Two slips at this level: a solved example may help."),
                       {{tr("Show one"), [this, example] { showExample(example); }}});
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
    m_next->setEnabled(is);
    m_harder->setEnabled(practice.canBeHarder());
}

void PracticeMenu::sayFault() {
    if (const auto& fault = m_practice.practice.sitting().fault())
        m_parts.notice.say(tr("The record of practice is not kept \u2013 %1").arg(fault->line()));
}

} // namespace tailpoint
