// SPDX-License-Identifier: MIT
#include "ui/canvas/resting_tips.h"

namespace tailpoint {

namespace {
constexpr int kMoment = 150; // milliseconds
}

RestingTips::RestingTips(QObject* parent) : QObject(parent) {
    m_maker.setMaxThreadCount(1);
    m_wait.setSingleShot(true);
    m_wait.setInterval(kMoment);
    connect(&m_wait, &QTimer::timeout, this, &RestingTips::make);
}

RestingTips::~RestingTips() {
    m_maker.clear();
    m_maker.waitForDone();
}

void RestingTips::follow(const Snapshot& shown) {
    m_shown = shown;
    if (shown && shown->isMoving && shown->tolerated(shown->chosen))
        m_wait.start();
    else
        m_wait.stop();
}

void RestingTips::make() {
    m_maker.clear(); // of an earlier rest
    m_maker.start([this, of = m_shown] {
        const auto tips = std::make_shared<const Tolerated>(
            Tolerated{tolerance::rangesOf(of->sketch, of->solved),
                      tolerance::tipRegions(of->sketch, of->solved, of->chosen)});
        QMetaObject::invokeMethod(
            this,
            [this, of, tips] {
                if (of == m_shown) // else the hand has gone on
                    emit made(of, tips);
            },
            Qt::QueuedConnection);
    });
}

} // namespace tailpoint
