// SPDX-License-Identifier: MIT
#include "ui/lecture/lecture_view.h"

#include "core/explain/caution.h"
#include "ui/canvas/canvas.h"
#include "ui/lecture/column.h"
#include "ui/lecture/key_sheet.h"
#include "ui/lecture/lecture_notes.h"
#include "ui/lecture/progress.h"
#include "ui/lecture/screens.h"
#include "ui/lecture/vote_board.h"
#include "ui/lecture/vote_question.h"

#include <QCloseEvent>
#include <QGuiApplication>
#include <QPainter>
#include <QScreen>
#include <QTimer>
#include <QWindow>
#include <algorithm>

namespace tailpoint {

LectureView::LectureView(ThemeName theme, bool moves)
    : QWidget(nullptr, Qt::Window), m_theme(theme), m_moves(moves), m_canvas(new Canvas(m_document, this)),
      m_column(new LectureColumn(this)), m_progress(new LectureProgress(this)), m_keys(new KeySheet(this)),
      m_vote(new VoteBoard(this)), m_question(new VoteQuestion(this)), m_lessonNotes(new LectureNotes(this)),
      m_cover(new QWidget(this)) {
    setObjectName(QStringLiteral("lecture"));
    setAttribute(Qt::WA_QuitOnClose, false); // the program ends with its window
    setAttribute(Qt::WA_OpaquePaintEvent);
    m_cover->setAutoFillBackground(true);
    m_cover->hide();
    m_canvas->setStaged(true);
    connect(m_column, &LectureColumn::turned, this, [this] { m_progress->setMore(m_column->hasMore()); });
    connect(m_canvas, &Canvas::clicked, this, &LectureView::click);
    connect(&m_document, &SketchDocument::changed, this, &LectureView::replan);
    connect(qGuiApp, &QGuiApplication::screenRemoved, this, &LectureView::screenGone);
    setMoves(moves);
    setTheme(theme);
}

/// The canvas reads the document: it goes first.
LectureView::~LectureView() {
    m_document.disconnect(this);
    delete m_canvas;
}

void LectureView::begin(const Result& result, ConstructionKind construction, const ExplainOptions& options,
                        QScreen* screen, std::optional<LecturePlace> at) {
    const bool same = !m_stops.empty() && result.sketch == m_begun && result.chosen == m_planned &&
                      isInLesson() == m_isPartPlanned;
    const LecturePlace from = at.value_or(same ? place() : LecturePlace());
    m_isPartPlanned = isInLesson();
    m_begun = m_plan = result.sketch;
    m_planned = result.chosen;
    m_figure.construction =
        construction == ConstructionKind::none ? ConstructionKind::parallelogram : construction;
    m_options = options;
    m_blank = m_hidesNumbers = m_peeks = m_other = m_leavesOut = false;
    m_cover->hide();
    m_keys->hide();
    m_vote->hide();
    m_question->hide();
    m_column->setVisible(true); // a vote that was left stood in its place
    m_voted.reset();
    m_progress->setCaution(needsCaution(m_plan));
    if (m_measures.height > 0) { // else by its first size
        placeColumn();
        placeSheet();
    }
    takeScreen(screen);
    m_replanning = true; // below, at once
    m_document.replace(m_plan, QString());
    m_document.choose(m_planned);
    m_replanning = false;
    m_stops = planOf(m_document.result(), m_figure, m_options, m_words.of(m_document.sketch()));
    m_stop = std::min(from.stop, m_stops.size() - 1);
    m_beat = std::min(from.beat, m_stops[m_stop].lastBeat());
    anchor();
    show(false);
    m_canvas->fit();
    m_canvas->setFocus();
}

void LectureView::setPart(std::size_t index, std::size_t count, std::optional<QString> notes) {
    m_part = index;
    m_parts = count;
    m_speakers = std::move(notes);
    m_lessonNotes->setNotes(m_speakers.value_or(QString()));
    showNotes(showsNotes() && m_speakers.has_value());
}

bool LectureView::isChanged() const {
    return !(m_document.sketch() == m_plan);
}

FigureOptions LectureView::figureNow() const {
    FigureOptions options = isVoting() ? questionFigure() : m_stops[m_stop].figureAt(m_beat);
    options.style = m_figure.style;
    options.values = !m_hidesNumbers;
    if (m_other)
        options.otherStage = Stage::all;
    return options;
}

/// Brings sheet, column and line to where the lecture stands.
void LectureView::show(bool moves) {
    const Stop& stop = m_stops[m_stop];
    const std::size_t answer = m_other ? 1 - stop.solution : stop.solution;
    m_replanning = true; // which of two answers is drawn is no change of the sketch
    m_document.choose(answer);
    m_replanning = false;
    m_canvas->setFigure(figureNow(), moves && m_moves);
    Stop shown = stop;
    if (!m_notes)
        shown.step = shortened(shown.step);
    if (m_hidesNumbers)
        shown.step = withoutNumbers(shown.step);
    const bool peeks = m_peeks && m_stop + 1 < m_stops.size();
    if (peeks)
        m_column->showTitle(QString::fromStdString(m_stops[m_stop + 1].step.title));
    else
        m_column->show(shown, m_beat, m_notes, m_from);
    const double lines = static_cast<double>(stop.beats.size());
    m_progress->setMore(m_column->hasMore());
    m_progress->show(m_stop, m_stops.size(), static_cast<double>(m_beat + 1) / lines, isChanged());
    const QString title = QString::fromStdString(stop.step.title);
    const QString step = tr("%1 of %2: %3").arg(m_stop + 1).arg(m_stops.size()).arg(title);
    setWindowTitle(m_parts > 0
                       ? tr("Lecture, sketch %1 of %2 \u2013 %3").arg(m_part + 1).arg(m_parts).arg(step)
                       : tr("Lecture \u2013 %1").arg(step));
    m_progress->setPart(m_parts > 0 ? tr("sketch %1 / %2").arg(m_part + 1).arg(m_parts) : QString());
    setAccessibleName(windowTitle());
    m_column->setAccessibleName(m_column->spokenText());
}

bool LectureView::leaveCover() {
    const bool covered = m_blank || m_keys->isVisible();
    m_blank = false;
    m_cover->hide();
    m_keys->hide();
    return covered;
}

void LectureView::next() {
    if (leaveCover())
        return;
    if (isVoting())
        return m_vote->goOn();
    if (m_peeks) {
        m_peeks = false;
        return goTo(m_stop + 1, false);
    }
    if (m_column->pageOn())
        return;
    if (m_beat < m_stops[m_stop].lastBeat()) {
        ++m_beat;
        m_from = LectureColumn::From::newest;
        anchor();
        show(true);
    } else {
        goTo(m_stop + 1, false);
    }
}

void LectureView::previous() {
    if (leaveCover())
        return;
    if (isVoting())
        return m_vote->goBack();
    if (m_peeks) {
        m_peeks = false;
        show(false);
    } else if (m_column->pageBack()) {
        return;
    } else if (m_beat > 0) {
        --m_beat;
        m_from = LectureColumn::From::newest;
        anchor();
        show(false);
    } else if (m_stop > 0) {
        goTo(m_stop - 1, true, LectureColumn::From::end);
    }
}

void LectureView::nextStop() {
    if (leaveCover())
        return;
    m_peeks = false;
    if (m_beat < m_stops[m_stop].lastBeat())
        goTo(m_stop, true);
    else if (!m_column->pageOn()) // the rest of its lines first
        goTo(m_stop + 1, true);
}

void LectureView::previousStop() {
    if (leaveCover())
        return;
    m_peeks = false;
    if (m_stop > 0)
        goTo(m_stop - 1, true);
    else
        goTo(0, true);
}

void LectureView::goTo(std::size_t stop, bool whole) {
    goTo(stop, whole, whole ? LectureColumn::From::top : LectureColumn::From::newest);
}

void LectureView::goTo(std::size_t stop, bool whole, LectureColumn::From from) {
    m_peeks = false;
    const bool forward = stop >= m_stop;
    if (stop >= m_stops.size())
        return show(false);
    if (stop != m_stop)
        m_other = false;
    m_stop = stop;
    m_beat = whole ? m_stops[stop].lastBeat() : 0;
    m_from = from;
    anchor();
    show(forward);
}

void LectureView::takeOther() {
    if (m_document.result().solved.solutions.size() == 2) {
        m_other = !m_other;
        show(false);
    }
}

/// For students the stated values may do; what is judged against a limit keeps its tolerances.
bool LectureView::canLeaveTolerancesOut() const {
    return !statesLimits(m_begun) && withoutTolerances(m_begun) != m_begun;
}

void LectureView::takeTolerances() {
    if (!canLeaveTolerancesOut())
        return;
    m_leavesOut = !m_leavesOut;
    m_plan = m_leavesOut ? withoutTolerances(m_begun) : m_begun;
    m_document.replace(m_plan, QString());
    m_canvas->fit();
}

void LectureView::backToPlan() {
    if (!isChanged())
        return;
    m_document.replace(m_plan, QString());
    m_canvas->fit();
}

void LectureView::click() {
    next();
}

/// Beside the sheet a press counts as on it.
void LectureView::mousePressEvent(QMouseEvent* event) {
    event->accept();
}

void LectureView::mouseReleaseEvent(QMouseEvent* event) {
    if (event->button() == Qt::LeftButton)
        next();
    else if (event->button() == Qt::RightButton)
        previous();
}

} // namespace tailpoint
