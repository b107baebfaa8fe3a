// Unsaved work on the disk, so that a crash or a power cut costs seconds and not the lesson.
#pragma once

#include "ui/document/sketch_document.h"

#include <QDateTime>
#include <QList>
#include <QLockFile>
#include <QThreadPool>
#include <QTimer>
#include <memory>
#include <vector>

namespace tailpoint {

/// A copy whose owner is gone.
struct Recovery {
    QString file;     ///< of the copy
    QString path;     ///< of the sketch; empty: it never had one
    QDateTime saved;  ///< UTC
    QByteArray known; ///< digest of the bytes that stood under `path` at work; empty: not known
    Sketch sketch;
};

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

    /// What a crash left is the open sketch from now on, and is copied at once. Its old copy goes when the
    /// new one or the saved file is on the disk, not before: there is always one.
    void takeOver(const Recovery& left);

    /// Writes what is pending and waits for the disk.
    void flush();
    QString file() const { return m_file; }
    static constexpr int kDelayMs = 2000; ///< between a change and its copy

private:
    struct Left; ///< a copy that was taken over, and its lock
    void schedule();
    void writeSnapshot();
    void removeCopy();

    SketchDocument& m_document;
    QString m_file;
    std::unique_ptr<QLockFile> m_lock; ///< says to other windows that this copy's owner lives
    std::vector<std::shared_ptr<Left>> m_left;
    QTimer m_timer;
    QThreadPool m_pool; ///< one thread: copies are written and removed in order
};

QList<Recovery>
findRecoveries(const QString& folder = recoveryFolder()); ///< newest first; unreadable ones are left alone
void discard(const Recovery& recovery);

} // namespace tailpoint
