// SPDX-License-Identifier: MIT
// Says aloud what only eyes would notice: a new result, a message, an error. All of it goes through one
// status line (SpokenLine); a result only once the numbers rest, not with every frame of a drag.
#pragma once

#include <QObject>
#include <QStringList>
#include <QTimer>

namespace tailpoint {

class Panel;
class SketchDocument;
class SpokenLine;

class Announcer : public QObject {
    Q_OBJECT
public:
    Announcer(const SketchDocument& document, const Panel& panel, SpokenLine& status, QObject* parent);

public slots:
    void say(const QString& line); ///< at once
    void
    sayAtRest(const QString& line); ///< when nothing else was said in this way for a moment; empty: nothing

private:
    void rested();
    void forget();

    const Panel& m_panel;
    SpokenLine& m_status;
    QTimer m_rest;
    QString m_line, m_lastLine; ///< that waits; that was said
    QStringList m_result;       ///< as last said
    bool m_withheld = false;    ///< the answer, when last heard of
};

} // namespace tailpoint
