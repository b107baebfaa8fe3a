// SPDX-License-Identifier: MIT
// The lecture's keys. Presenter remotes send Page Up, Page Down, '.' and Escape.
#include "ui/canvas/canvas.h"
#include "ui/lecture/column.h"
#include "ui/lecture/key_sheet.h"
#include "ui/lecture/lecture_notes.h"
#include "ui/lecture/lecture_view.h"
#include "ui/lecture/vote_board.h"

#include <QKeyEvent>

namespace tailpoint {

namespace {

ThemeName after(ThemeName name) {
    switch (name) {
    case ThemeName::slate:
        return ThemeName::paper;
    case ThemeName::paper:
        return ThemeName::contrast;
    case ThemeName::contrast:
        break;
    }
    return ThemeName::slate;
}

} // namespace

bool LectureView::moveKey(QKeyEvent* event) {
    const bool shift = event->modifiers().testFlag(Qt::ShiftModifier);
    switch (event->key()) {
    case Qt::Key_Space:
        shift ? previous() : next();
        return true;
    case Qt::Key_Right:
    case Qt::Key_PageDown:
    case Qt::Key_Return:
    case Qt::Key_Enter:
        next();
        return true;
    case Qt::Key_Left:
    case Qt::Key_PageUp:
    case Qt::Key_Backspace:
        previous();
        return true;
    case Qt::Key_Down:
        nextStop();
        return true;
    case Qt::Key_Up:
        previousStop();
        return true;
    case Qt::Key_Home:
        leaveCover();
        goTo(0, true);
        return true;
    case Qt::Key_End:
        leaveCover();
        goTo(m_stops.size() - 1, true);
        return true;
    default:
        return false;
    }
}

/// What is seen of it.
bool LectureView::showKey(QKeyEvent* event) {
    if (event->isAutoRepeat()) // a key held down would flicker
        return true;
    switch (event->key()) {
    case Qt::Key_B:
    case Qt::Key_Period:
        m_blank = !m_blank;
        m_cover->setVisible(m_blank);
        m_cover->raise();
        return true;
    case Qt::Key_N:
        m_hidesNumbers = !m_hidesNumbers;
        show(false);
        return true;
    case Qt::Key_T:
        m_peeks = !m_peeks && m_stop + 1 < m_stops.size();
        show(false);
        return true;
    case Qt::Key_M:
        m_notes = !m_notes;
        show(false);
        return true;
    case Qt::Key_O:
        takeOther();
        return true;
    case Qt::Key_R:
        takeTolerances();
        return true;
    case Qt::Key_C:
        setTheme(after(m_theme));
        emit themeChosen(m_theme);
        return true;
    case Qt::Key_A:
        setMoves(!m_moves);
        emit movesChosen(m_moves);
        return true;
    case Qt::Key_S:
        if (m_speakers)
            showNotes(!showsNotes());
        return true;
    case Qt::Key_F1:
    case Qt::Key_Question:
        m_keys->setKind({isVoting(), isInLesson(), m_speakers.has_value(), canLeaveTolerancesOut()});
        m_keys->place(m_measures);
        m_keys->setVisible(!m_keys->isVisible());
        m_keys->raise();
        return true;
    default:
        return false;
    }
}

/// While a question is put to the class: its own keys; of the others those for what is seen and for moving
/// on.
bool LectureView::voteKey(QKeyEvent* event) {
    switch (event->key()) {
    case Qt::Key_W:
        takeTwin();
        return true;
    case Qt::Key_Home:
    case Qt::Key_End:
    case Qt::Key_N: // no number of the figure is hidden from who is to answer
    case Qt::Key_T:
    case Qt::Key_M:
    case Qt::Key_O:
        return true;
    default:
        return m_vote->takeKey(event);
    }
}

/// What was tried for a question from the room, and the way back.
bool LectureView::changeKey(QKeyEvent* event) {
    const bool control = event->modifiers().testFlag(Qt::ControlModifier);
    if (event->key() == Qt::Key_U || (control && event->key() == Qt::Key_0)) {
        backToPlan();
    } else if (event->matches(QKeySequence::Undo)) {
        m_document.undo();
    } else if (event->matches(QKeySequence::Redo) || (control && event->key() == Qt::Key_Y)) {
        m_document.redo();
    } else if (control && m_parts > 0 && (event->key() == Qt::Key_Right || event->key() == Qt::Key_Left)) {
        if (!event->isAutoRepeat())
            emit partAsked(event->key() == Qt::Key_Right ? 1 : -1);
    } else if (control && (event->key() == Qt::Key_Up || event->key() == Qt::Key_Down)) {
        m_column->scrollBy((event->key() == Qt::Key_Up ? -3 : 3) * m_measures.serif);
    } else {
        return false;
    }
    return true;
}

void LectureView::keyPressEvent(QKeyEvent* event) {
    if (event->key() == Qt::Key_Escape) {
        if (event->isAutoRepeat() || leaveCover())
            return;
        isVoting() ? setVoting(false) : end();
        return;
    }
    const bool commands =
        event->modifiers().testFlag(Qt::ControlModifier) || event->modifiers().testFlag(Qt::AltModifier);
    if (!commands && event->key() == Qt::Key_V) {
        if (!event->isAutoRepeat())
            setVoting(!isVoting());
        return;
    }
    if (isVoting() && !commands && voteKey(event))
        return;
    if (!changeKey(event) && (commands || (!moveKey(event) && !showKey(event))))
        QWidget::keyPressEvent(event);
}

} // namespace tailpoint
