// SPDX-License-Identifier: MIT
// The lecture as a window: its screen, its parts and their looks.
#include "ui/lecture/lecture_view.h"

#include "ui/canvas/canvas.h"
#include "ui/lecture/column.h"
#include "ui/lecture/key_sheet.h"
#include "ui/lecture/lecture_notes.h"
#include "ui/lecture/progress.h"
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

/// Without a window manager nobody else makes it as large as the screen.
void LectureView::takeScreen(QScreen* screen) {
    create();
    if (windowHandle()->screen() != screen)
        windowHandle()->setScreen(screen);
    setGeometry(screen->geometry());
    showFullScreen();
    raise();
    activateWindow();
}

/// The projector was unplugged: on with the lecture on what is left.
void LectureView::screenGone(QScreen* screen) {
    if (!isVisible())
        return;
    const bool ours = windowHandle() == nullptr || windowHandle()->screen() == screen ||
                      !QGuiApplication::screenAt(geometry().center());
    if (ours)
        QTimer::singleShot(0, this, [this] {
            if (isVisible() && QGuiApplication::primaryScreen() != nullptr)
                takeScreen(QGuiApplication::primaryScreen());
        });
}

void LectureView::setTheme(ThemeName name) {
    m_theme = name;
    const Theme& theme = themeOf(name);
    m_canvas->setTheme(name);
    m_column->setTheme(theme);
    m_progress->setTheme(theme);
    m_keys->setTheme(theme);
    m_vote->setTheme(theme);
    m_question->setTheme(theme);
    m_lessonNotes->setTheme(theme);
    QPalette ground = m_cover->palette();
    ground.setColor(QPalette::Window, theme.sheet);
    m_cover->setPalette(ground);
    update();
}

void LectureView::setMoves(bool on) {
    m_moves = on;
    m_canvas->setAnimated(on);
    m_column->setMoves(on);
}

void LectureView::resizeEvent(QResizeEvent*) {
    m_measures = measuresOf(size());
    m_figure.style = m_measures.figure(logicalDpiY() / 72.0);
    m_progress->setMeasures(m_measures);
    placeColumn();
    placeSheet();
    QFont readout = sansFont();
    readout.setPointSizeF(m_measures.sans * 72 / logicalDpiY());
    m_canvas->setFont(readout);
    m_keys->place(m_measures);
    m_cover->setGeometry(rect());
    if (!m_stops.empty()) {
        show(false);
        m_canvas->fit();
    }
}

/// Over its foot, which is higher with a caution.
void LectureView::placeColumn() {
    const int column = qRound(m_measures.column), foot = m_progress->heightNeeded();
    m_column->setGeometry(0, 0, column, height() - foot);
    m_column->setMeasures(m_measures);
    m_vote->setGeometry(m_column->geometry());
    m_vote->setMeasures(m_measures);
    m_progress->setGeometry(0, height() - foot, column, foot);
}

/// Between the question over it, while there is a vote, and the notes under it.
void LectureView::placeSheet() {
    const int column = qRound(m_measures.column), wide = width() - column;
    const int top = isVoting() ? m_question->lay(m_measures, wide) : 0;
    const int foot = showsNotes() ? m_lessonNotes->lay(m_measures, wide) : 0;
    m_question->setGeometry(column, 0, wide, top);
    m_lessonNotes->setGeometry(column, height() - foot, wide, foot);
    m_canvas->setGeometry(column, top, wide, height() - top - foot);
}

bool LectureView::showsNotes() const {
    return m_lessonNotes->isVisibleTo(this);
}

void LectureView::showNotes(bool on) {
    m_lessonNotes->setVisible(on);
    if (m_measures.height > 0)
        placeSheet();
}

void LectureView::paintEvent(QPaintEvent*) {
    QPainter(this).fillRect(rect(), themeOf(m_theme).sheet);
}

void LectureView::end() {
    hide();
    emit ended();
}

/// A window manager's close button is Escape.
void LectureView::closeEvent(QCloseEvent* event) {
    event->ignore();
    end();
}

} // namespace tailpoint
