// SPDX-License-Identifier: MIT
#include "tests/benchmarks/drag.h"

#include <QCoreApplication>
#include <QElapsedTimer>
#include <QMouseEvent>
#include <QPaintEvent>
#include <algorithm>
#include <cmath>
#include <cstdio>
#include <cstdlib>
#include <ctime>

namespace tailpoint::bench {

namespace {

double milliseconds(clockid_t clock) {
    timespec now{};
    clock_gettime(clock, &now);
    return static_cast<double>(now.tv_sec) * 1e3 + static_cast<double>(now.tv_nsec) / 1e6;
}

void send(Canvas& canvas, QEvent::Type type, QPointF at, Qt::MouseButtons buttons) {
    const Qt::MouseButton button = type == QEvent::MouseMove ? Qt::NoButton : Qt::LeftButton;
    QMouseEvent event(type, at, canvas.mapToGlobal(at), button, buttons, Qt::AltModifier);
    QCoreApplication::sendEvent(&canvas, &event);
}

} // namespace

PaintCounter::PaintCounter(QWidget& watched) : m_watched(watched) {
    watched.installEventFilter(this);
}

bool PaintCounter::eventFilter(QObject*, QEvent* event) {
    if (event->type() != QEvent::Paint)
        return false;
    ++m_painted;
    m_region = static_cast<QPaintEvent*>(event)->region();
    return false;
}

bool PaintCounter::waitForOne() {
    const int before = m_painted;
    QElapsedTimer patience;
    patience.start();
    while (m_painted == before && patience.elapsed() < 1000)
        QCoreApplication::processEvents();
    return m_painted != before;
}

double median(const Frames& frames, double Frame::*part) {
    std::vector<double> values;
    for (const Frame& frame : frames)
        values.push_back(frame.*part);
    std::sort(values.begin(), values.end());
    return values.empty() ? 0 : values[values.size() / 2];
}

Frame timed(const std::function<void()>& action) {
    const double wall = milliseconds(CLOCK_MONOTONIC), cpu = milliseconds(CLOCK_THREAD_CPUTIME_ID);
    action();
    return {milliseconds(CLOCK_MONOTONIC) - wall, milliseconds(CLOCK_THREAD_CPUTIME_ID) - cpu};
}

Drag::Drag(Canvas& canvas, const SketchDocument& document) : m_canvas(canvas) {
    const auto& tip = document.result().solved.solutions.at(0).forces.at(0).vector;
    const Point at = canvas.view().toSheet(tip);
    m_start = QPointF(at.x, at.y) * canvas.pixelsPerPoint();
    send(m_canvas, QEvent::MouseButtonPress, m_start, Qt::LeftButton);
}

Drag::~Drag() {
    send(m_canvas, QEvent::MouseButtonRelease, m_start, Qt::NoButton);
}

void Drag::moveTo(int frame) {
    const double turn = 2 * M_PI * frame / 97;
    send(m_canvas, QEvent::MouseMove, m_start + 60 * QPointF(std::cos(turn) - 1.3, std::sin(turn)),
         Qt::LeftButton);
}

void insist(bool holds, const char* otherwise) {
    if (!holds) {
        std::fprintf(stderr, "%s\n", otherwise);
        std::exit(1);
    }
}

} // namespace tailpoint::bench
