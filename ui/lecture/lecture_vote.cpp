// The lecture while a question is put to the class.
#include "core/practice/other_numbers.h"
#include "ui/canvas/canvas.h"
#include "ui/lecture/lecture_view.h"
#include "ui/lecture/vote_board.h"

namespace tailpoint {

bool LectureView::isVoting() const {
    return m_vote->isVisibleTo(this);
}

/// The sheet goes back to what is given, so that it doesn't answer; afterwards it stands where it stood.
void LectureView::setVoting(bool on) {
    if (on == isVoting() || m_stops.empty())
        return;
    leaveCover();
    m_peeks = m_other = m_hidesNumbers = false;
    if (on)
        m_vote->setPolls(pollsOf(m_document.sketch()));
    m_vote->setVisible(on);
    m_column->setVisible(!on);
    if (on)
        m_vote->raise();
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
