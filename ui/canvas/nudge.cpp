#include "ui/canvas/nudge.h"

#include "ui/document/sketch_document.h"

#include <cmath>

namespace tailpoint {

double nextMultiple(double value, double step, int way) {
    constexpr double kNear = 1e-6; // of a step: a value on a multiple goes on to the next one
    const double count = value / step;
    return way > 0 ? (std::floor(count + kNear) + 1) * step : (std::ceil(count - kNear) - 1) * step;
}

NudgeToken::NudgeToken(Clock clock) : m_clock(std::move(clock)) {
    if (!m_clock) {
        QElapsedTimer timer;
        timer.start();
        m_clock = [timer] { return timer.elapsed(); };
    }
}

quint64 NudgeToken::next(int vector, Nudged what) {
    const qint64 now = m_clock();
    const bool goesOn = m_token != 0 && vector == m_vector && what == m_what && now - m_last <= kPause;
    if (!goesOn) {
        m_token = SketchDocument::newGesture();
    }
    m_last = now;
    m_vector = vector;
    m_what = what;
    return m_token;
}

} // namespace tailpoint
