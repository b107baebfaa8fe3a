// SPDX-License-Identifier: MIT
#include "ui/canvas/nudge.h"

#include <cmath>

namespace tailpoint {

double nextMultiple(double value, double step, int way) {
    constexpr double kNear = 1e-6; // of a step: a value on a multiple goes on to the next one
    const double count = value / step;
    return way > 0 ? (std::floor(count + kNear) + 1) * step : (std::ceil(count - kNear) - 1) * step;
}

Nudges::Nudges(SketchDocument& document) : m_document(document) {
    m_pause.setSingleShot(true);
    connect(&m_pause, &QTimer::timeout, this, &Nudges::end);
    connect(&m_document, &SketchDocument::previewEnded, this, [this] {
        m_pause.stop();
        m_underWay = m_held = false; // m_down stays: the key that ended it may still be down
    });
}

std::optional<SketchFault> Nudges::take(int vector, Nudged what, const Sketch& after, const QString& step) {
    if (vector != m_vector || what != m_what)
        end();
    if (!m_underWay)
        m_document.commit(); // of whatever else was previewed
    if (auto fault = m_document.preview(after, step))
        return fault;
    m_underWay = true;
    m_vector = vector;
    m_what = what;
    if (m_down)
        m_pause.stop();
    else
        m_pause.start(kPause);
    return std::nullopt;
}

void Nudges::end() {
    if (m_underWay)
        m_document.commit();
}

void Nudges::keyPressed(bool again) {
    m_down = true;
    m_held = m_held || again;
    m_pause.stop();
}

void Nudges::keyReleased() {
    m_down = false;
    if (m_underWay)
        m_pause.start(m_held ? kAfterRelease : kPause);
}

} // namespace tailpoint
