// SPDX-License-Identifier: MIT
#include "ui/window/teach_menu.h"

#include "ui/canvas/canvas.h"
#include "ui/document/sketch_document.h"
#include "ui/lecture/lecture_view.h"
#include "ui/lecture/movement.h"
#include "ui/lecture/screens.h"
#include "ui/marking/own_answer.h"
#include "ui/panel/panel.h"
#include "ui/window/lesson_notes.h"
#include "ui/window/lines.h"
#include "ui/window/menu_tools.h"
#include "ui/window/problems_dialog.h"
#include "ui/window/settings.h"

#include <QFileDialog>
#include <QFileInfo>
#include <QMainWindow>
#include <QScreen>

namespace tailpoint {

TeachMenu::TeachMenu(const WindowParts& parts, QMenu* menu) : QObject(menu), m_parts(parts) {
    lecture = addCommand(menu, {"lecture", tr("&Lecture view"), QKeySequence(Qt::Key_F5)},
                         [this] { beginLecture(); });
    lecture->setIconText(tr("Lecture"));
    lecture->setToolTip(tr("Reveal the solution step by step on a full screen (F5)"));
    m_lesson = addCommand(menu, {"lesson", tr("L&esson\u2026"), QKeySequence(Qt::SHIFT | Qt::Key_F5)},
                          [this] { chooseLesson(); });
    m_lesson->setToolTip(tr("Several sketches in one lecture, in the order of a lesson's file (Shift+F5)"));
    connect(&m_parts.lessonNotes, &LessonNotes::asked, this, &TeachMenu::turnPart);
    connect(&m_parts.lessonNotes, &LessonNotes::resumed, this, [this] {
        if (m_running)
            goToPart(m_part);
    });
    connect(&m_parts.lessonNotes, &LessonNotes::ended, this, &TeachMenu::endLesson);
    connect(&m_parts.lessonNotes, &LessonNotes::written, this, &TeachMenu::saveTyped);
    addOwnAnswer(menu);
    menu->addSeparator();
    addCommand(menu, {"problemSheet", tr("&Problem sheet\u2026")}, [this] { askProblems(); });
}

void TeachMenu::askProblems() {
    auto* dialog = m_parts.window.findChild<ProblemsDialog*>();
    if (!dialog) {
        dialog = new ProblemsDialog(m_parts);
        connect(dialog, &ProblemsDialog::said, &m_parts.hints, &HintLine::setHint);
    }
    dialog->ask();
}

void TeachMenu::addOwnAnswer(QMenu* menu) {
    ownAnswer = addSwitch(menu, {"ownAnswer", {}, QKeySequence(Qt::Key_F7)},
                          [this](bool on) { switchOwnAnswer(on); });
    ownAnswer->setIconText(tr("My answer"));
    m_mark = addCommand(menu, {"markOwnAnswer", tr("&Mark it"), QKeySequence(Qt::CTRL | Qt::Key_M)},
                        [this] { m_parts.ownAnswer.mark(); });
    connect(&m_parts.ownAnswer, &OwnAnswer::modeChanged, this, &TeachMenu::showOwnAnswer);
    connect(&m_parts.ownAnswer, &OwnAnswer::modeChanged, this, [this] {
        const QString shown = tr("The answer is shown; F7 hides it again.");
        if (!m_parts.ownAnswer.isOn() &&
            m_parts.ownAnswer.whyNot().isEmpty()) // another sketch may have nothing to hide
            m_parts.hints.setRichHint(shown, shown);
    });
    connect(&m_parts.ownAnswer, &OwnAnswer::asideChanged, this, &TeachMenu::showOwnAnswer);
    connect(&m_parts.document, &SketchDocument::changed, this, &TeachMenu::showOwnAnswer);
    showOwnAnswer();
}

void TeachMenu::switchOwnAnswer(bool on) {
    if (!on) {
        m_parts.ownAnswer.end();
    } else if (m_parts.panel.finishTyping(); m_parts.ownAnswer.begin()) {
        m_parts.hints.setHint(
            tr("Type what you have found, or drag the open tip on the sheet; Enter marks it. "
               "Esc leaves."));
    }
    showOwnAnswer();
}

/// Says why where it can't be begun; what would tell the answer waits until it may be told.
void TeachMenu::showOwnAnswer() {
    const bool on = m_parts.ownAnswer.isOn();
    const QString why = on ? QString() : m_parts.ownAnswer.whyNot();
    ownAnswer->setEnabled(why.isEmpty());
    ownAnswer->setChecked(on);
    ownAnswer->setText(why.isEmpty() ? tr("Check my &answer") : tr("Check my &answer (%1)").arg(why));
    ownAnswer->setToolTip(why.isEmpty() ? tr("Hide the answer and check your own (F7)")
                                        : tr("There is nothing to check: %1").arg(why));
    m_mark->setEnabled(on && !m_parts.ownAnswer.standsAside());
    lecture->setEnabled(!on);
    m_lesson->setEnabled(!on);
    lecture->setToolTip(on ? tr("Not while the answer is hidden")
                           : tr("Reveal the solution step by step on a full screen (F5)"));
}

TeachMenu::~TeachMenu() = default;

void TeachMenu::makeView() {
    if (m_view)
        return;
    Settings& settings = m_parts.settings;
    const auto chosen = settings.lectureMoves();
    m_view = std::make_unique<LectureView>(settings.lectureTheme(), chosen ? *chosen : desktopMoves());
    connect(m_view.get(), &LectureView::themeChosen, this,
            [this](ThemeName name) { m_parts.settings.setLectureTheme(name); });
    connect(m_view.get(), &LectureView::movesChosen, this,
            [this](bool on) { m_parts.settings.setLectureMoves(on); });
    connect(m_view.get(), &LectureView::partAsked, this, &TeachMenu::turnPart);
    connect(m_view.get(), &LectureView::ended, this, [this] {
        m_parts.lessonNotes.setShown(false);
        m_parts.window.activateWindow(); // where the keys were before is where they are again
        m_parts.window.raise();
    });
}

bool TeachMenu::isOnOneScreen() const {
    return screenForLecture(m_parts.window.screen()) == m_parts.window.screen();
}

void TeachMenu::begin(const Result& result, std::optional<LecturePlace> at) {
    ExplainOptions options;
    options.handRounding = m_parts.panel.handRounding(); // the same numbers as beside the sheet
    options.method = m_parts.panel.method();
    options.uncertainty = m_parts.panel.explainOptions().uncertainty;
    options.parallelograms = m_parts.panel.byParallelograms();
    m_view->begin(result, m_parts.canvas.construction(), options, screenForLecture(m_parts.window.screen()),
                  at);
}

void TeachMenu::beginLecture() {
    makeView();
    leavePart();
    m_parts.lessonNotes.setShown(false);
    m_view->setPart(0, 0);
    begin(m_parts.document.result());
}

void TeachMenu::chooseLesson() {
    const QString path = QFileDialog::getOpenFileName(&m_parts.window, tr("Open a lesson"),
                                                      QFileInfo(m_parts.document.path()).absolutePath(),
                                                      tr("Lessons (*.lesson.json *.json);;All files (*)"));
    if (!path.isEmpty())
        beginLesson(path);
}

bool TeachMenu::beginLesson(const QString& path) {
    auto read = readLessonFile(path);
    if (const auto* error = std::get_if<FileError>(&read)) {
        m_parts.notice.say(
            tr("%1 can't be opened as a lesson: %2").arg(QFileInfo(path).fileName(), error->line()));
        return false;
    }
    endLesson(); // another that ran
    makeView();
    m_running = std::move(std::get<Lesson>(read));
    m_places.assign(m_running->parts.size(), {});
    goToPart(0);
    return true;
}

/// Where the lecture stands in the sketch that it shows, to come back to.
void TeachMenu::leavePart() {
    if (m_running && m_view->isInLesson())
        m_places[m_part] = m_view->place();
}

void TeachMenu::goToPart(std::size_t part) {
    m_parts.lessonNotes.finish();
    leavePart();
    m_part = part;
    const LessonPart& now = m_running->parts[part];
    const std::size_t count = m_running->parts.size();
    m_parts.lessonNotes.show({part, count, now.name, now.notes, true});
    m_view->setPart(part, count, isOnOneScreen() ? std::optional(now.notes) : std::nullopt);
    begin(resultOf(now.sketch), m_places[part]);
}

/// What can't be saved stays with the lesson until it ends.
void TeachMenu::saveTyped(std::size_t part, const QString& notes) {
    if (!m_running)
        return;
    const QString name = QFileInfo(m_running->path).fileName();
    if (const auto error = saveNotes(*m_running, part, notes)) {
        m_running->parts[part].notes = notes;
        m_parts.notice.say(tr("The notes can't be saved in %1: %2").arg(name, error->line()));
    } else {
        m_parts.hints.setHint(tr("Notes saved in %1.").arg(name));
    }
}

void TeachMenu::turnPart(int by) {
    if (!m_running)
        return;
    const auto to = static_cast<std::ptrdiff_t>(m_part) + by;
    if (to >= 0 && to < static_cast<std::ptrdiff_t>(m_running->parts.size()))
        goToPart(static_cast<std::size_t>(to));
}

void TeachMenu::endLesson() {
    m_parts.lessonNotes.finish();
    m_running.reset();
    m_parts.lessonNotes.hide();
    if (!m_view)
        return;
    m_view->hide();
    m_view->setPart(0, 0);
}

} // namespace tailpoint
