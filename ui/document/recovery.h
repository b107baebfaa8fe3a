// SPDX-License-Identifier: MIT
// Unsaved work on the disk, so that a crash or a power cut costs seconds and not the lesson.
#pragma once

#include "ui/document/sketch_document.h"

#include <QDateTime>
#include <QElapsedTimer>
#include <QList>
#include <QTimer>
#include <memory>

namespace tailpoint {

/// A copy whose owner is gone.
struct Recovery {
    QString file;     ///< of the copy
    QString path;     ///< of the sketch; empty: it never had one
    QDateTime saved;  ///< UTC
    QByteArray known; ///< digest of the bytes that stood under `path` at work; empty: not known
    Sketch sketch;
    QString
        holder{}; ///< a process of another machine, of which nobody can tell whether it lives; empty: none
};

/// $XDG_STATE_HOME/tailpoint/recovery; a relative or absent XDG_STATE_HOME counts as ~/.local/state.
QString recoveryFolder();

class CopyWriter;

/// Keeps a copy of a modified sketch in `folder` and takes it away once the sketch is saved or the window is
/// closed in order. What is handed over is a value; all that touches the disk is done on a thread of its own,
/// which nothing here waits for but flush() and the end.
class Autosave : public QObject {
    Q_OBJECT
public:
    explicit Autosave(SketchDocument& document, const QString& folder = recoveryFolder(),
                      QObject* parent = nullptr);
    ~Autosave() override; ///< in order: the copy goes

    /// What a crash left is the open sketch from now on, and is copied at once. Its old copy goes when the
    /// new one or the saved file is on the disk, not before: there is always one.
    void takeOver(const Recovery& left);

    /// Writes what is pending and waits for the disk.
    void flush();
    /// The same, and the copy stays behind for the next start, free to be taken; nothing is copied any more.
    void leave();
    QString file() const { return m_file; }
    static constexpr int kPauseMs = 150;    ///< without a change, then it is copied
    static constexpr int kLongestMs = 1500; ///< between two copies, however long a hand goes on

signals:
    /// The copy could not be written; once for as long as it can't. `why`: one line.
    void failed(const QString& why);

private:
    void schedule();
    void writeSnapshot();
    void removeCopy();

    SketchDocument& m_document;
    QString m_file;
    QTimer m_timer;
    QElapsedTimer m_since; ///< the first change that is not handed over yet
    std::shared_ptr<CopyWriter> m_writer;
    bool m_hasCopy = false; ///< was handed over and not taken back
};

/// Newest first; unreadable ones are left alone. Those of other machines' processes come last.
QList<Recovery> findRecoveries(const QString& folder = recoveryFolder());
void discard(const Recovery& recovery);
/// What killed processes left beside the copies: locks without a copy, halves of savings.
void sweepRecoveries(const QString& folder = recoveryFolder());

} // namespace tailpoint
