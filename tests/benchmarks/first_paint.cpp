// SPDX-License-Identifier: MIT
#include "tests/benchmarks/first_paint.h"

#include <QApplication>
#include <QEvent>
#include <QTimer>
#include <QWidget>
#include <cstdio>
#include <fstream>
#include <string>

namespace tailpoint::bench {

namespace {

long peakKilobytes() {
    std::ifstream status("/proc/self/status");
    for (std::string line; std::getline(status, line);)
        if (line.starts_with("VmHWM:"))
            return std::stol(line.substr(6));
    return 0;
}

class FirstPaint : public QObject {
public:
    using QObject::QObject;
    bool eventFilter(QObject* watched, QEvent* event) override {
        if (event->type() == QEvent::Paint && !m_seen) {
            m_seen = true;
            // Behind the paint of all children and the flush to the server.
            QTimer::singleShot(0, qApp, [] {
                std::printf("%ld\n", peakKilobytes());
                QCoreApplication::exit(0);
            });
        }
        return QObject::eventFilter(watched, event);
    }

private:
    bool m_seen = false;
};

} // namespace

void quitAfterFirstPaint(QWidget& window) {
    window.installEventFilter(new FirstPaint(&window));
}

} // namespace tailpoint::bench
