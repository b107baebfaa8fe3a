// SPDX-License-Identifier: MIT
// Where the lecture stands after a change of the sketch.
#include "ui/lecture/lecture_view.h"
#include "ui/lecture/vote_board.h"

#include <algorithm>

namespace tailpoint {

/// Remembers by what steps the lecture came here: a changed sketch may have others.
void LectureView::anchor() {
    m_walked.clear();
    for (std::size_t i = 0; i <= m_stop; ++i)
        m_walked.push_back(placeOf(m_stops[i].step));
    m_walkedBeat = m_beat;
    m_walkedWhole = m_beat == m_stops[m_stop].lastBeat();
}

/// Where `place` stands among the steps, nearest to `index`.
std::optional<std::size_t> LectureView::stopAt(const StepPlace& place, std::size_t index) const {
    std::optional<std::size_t> best;
    const auto away = [&](std::size_t i) { return i > index ? i - index : index - i; };
    for (std::size_t i = 0; i < m_stops.size(); ++i)
        if (placeOf(m_stops[i].step) == place && (!best || away(i) < away(*best)))
            best = i;
    return best;
}

/// The sketch changed: the lecture stays at the same step; where there is none now, at the last one that the
/// room has seen. Changed back it is where it was.
void LectureView::replan() {
    if (m_replanning || m_stops.empty())
        return;
    m_stops = planOf(m_document.result(), m_figure, m_options, m_words.of(m_document.sketch()));
    m_stop = 0;
    for (std::size_t i = m_walked.size(); i-- > 0;)
        if (const auto at = stopAt(m_walked[i], i)) {
            const bool same = i + 1 == m_walked.size();
            m_stop = *at;
            m_beat = same && !m_walkedWhole ? std::min(m_walkedBeat, m_stops[m_stop].lastBeat())
                                            : m_stops[m_stop].lastBeat();
            break;
        }
    m_beat = std::min(m_beat, m_stops[m_stop].lastBeat());
    m_peeks = m_peeks && m_stop + 1 < m_stops.size();
    if (isVoting()) {
        beginVote();
        placeSheet();
    }
    show(false);
}

} // namespace tailpoint
