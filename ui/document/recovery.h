// Unsaved work on the disk, so that a crash or a power cut costs seconds and not the lesson.
#pragma once

#include "ui/document/sketch_document.h"

#include <QDateTime>
#include <QList>
#include <QLockFile>
#include <QThreadPool>
#include <QTimer>

namespace tailpoint {

/// $XDG_STATE_HOME/tailpoint/recovery; a relative or absent XDG_STATE_HOME counts as ~/.local/state.
QString recoveryFolder();

/// Keeps a copy of a modified sketch in `folder` and takes it away once the sketch is saved or the window is
/// closed in order. Writes a value snapshot on another thread: the disk may block, the window must not.
class Autosave : public QObject {
    Q_OBJECT
public:
    explicit Autosave(SketchDocument& document, const QString& folder = recoveryFolder(),
                      QObject* parent = nullptr);
    ~Autosave() override; ///< in order: the copy goes

    /// Writes what is pending and waits for the disk.
    void flush();
    QString file() const { return m_file; }
    static constexpr int kDelayMs = 2000; ///< between a change and its copy

private:
    void schedule();
    void writeSnapshot();
    void removeCopy();

    SketchDocument& m_document;
    QString m_file;
    std::unique_ptr<QLockFile> m_lock; ///< says to other windows that this copy's owner lives
    QTimer m_timer;
    QThreadPool m_pool; ///< one thread: copies are written and removed in order
};

/// A copy whose owner is gone.
struct Recovery {
    QString file;    ///< of the copy
    QString path;    ///< of the sketch; empty: it never had one
    QDateTime saved; ///< UTC
    Sketch sketch;
};
QList<Recovery>
findRecoveries(const QString& folder = recoveryFolder()); ///< newest first; unreadable ones are left alone
void discard(const Recovery& recovery);

} // namespace tailpoint
