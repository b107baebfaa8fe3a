// SPDX-License-Identifier: MIT
// The lecture while a question is put to the class.
#include "core/practice/other_numbers.h"
#include "ui/canvas/canvas.h"
#include "ui/lecture/lecture_view.h"
#include "ui/lecture/vote_board.h"
#include "ui/lecture/vote_question.h"

namespace tailpoint {

bool LectureView::isVoting() const {
    return m_vote->isVisibleTo(this);
}

/// All that is given, with its directions, and nothing else: as an exercise is drawn.
FigureOptions LectureView::questionFigure() const {
    FigureOptions options = m_figure;
    options.stage = Stage::directions;
    options.note = options.caution = false; // it is told in the column
    options.asGiven = options.bearings = true;
    options.names = namesOfGiven(m_document.sketch(), options.stage);
    return options;
}

/// A vote that was left for the steps goes on where it was, as long as the question is the same.
void LectureView::beginVote() {
    m_question->setSketch(m_document.sketch());
    if (m_voted == m_document.sketch())
        return;
    m_vote->setPolls(pollsOf(m_document.sketch()));
    m_voted = m_document.sketch();
}

/// The sheet goes back to what is given, so that it doesn't answer; afterwards it stands where it stood.
void LectureView::setVoting(bool on) {
    if (on == isVoting() || m_stops.empty())
        return;
    leaveCover();
    m_peeks = m_other = m_hidesNumbers = false;
    if (on)
        beginVote();
    m_vote->setVisible(on);
    m_column->setVisible(!on);
    m_question->setVisible(on);
    if (on)
        m_vote->raise();
    placeSheet();
    show(false);
}

void LectureView::takeTwin() {
    const auto twin = otherNumbers(m_document.sketch(), m_twins);
    if (!twin)
        return m_vote->setTwinFailed(true);
    ++m_twins;
    m_document.replace(*twin, tr("Other numbers"));
    m_canvas->fit();
}

} // namespace tailpoint
