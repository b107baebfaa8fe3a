// SPDX-License-Identifier: MIT
// Where tips can lie, while a drag rests: true outlines, made beside the thread that paints.
#pragma once

#include "core/figure/tolerated.h"
#include "ui/files/result.h"

#include <QObject>
#include <QThreadPool>
#include <QTimer>

namespace tailpoint {

class RestingTips : public QObject {
    Q_OBJECT
public:
    explicit RestingTips(QObject* parent = nullptr);
    ~RestingTips() override; ///< waits for what is being made: well below a tenth of a second

    /// This is on the sheet now. Once it has stayed for a moment its tips are made, where a hand is at it.
    void follow(const Snapshot& shown);

signals:
    void made(const tailpoint::Snapshot& of, const std::shared_ptr<const tailpoint::Tolerated>& tips);

private:
    void make();

    Snapshot m_shown;
    QTimer m_wait;
    QThreadPool m_maker;
};

} // namespace tailpoint
