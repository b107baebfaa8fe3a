// SPDX-License-Identifier: MIT
// The thread that writes and removes the copy of unsaved work.
#pragma once

#include "ui/document/lock_file.h"
#include "ui/document/recovery.h"

#include <condition_variable>
#include <functional>
#include <memory>
#include <mutex>
#include <optional>
#include <thread>
#include <vector>

namespace tailpoint {

struct CopyContent {
    Sketch sketch;
    QString path;
    QByteArray known;
};
QByteArray copyText(const CopyContent& content); ///< as it stands in the file

/// Has at most one thing to do: the newest copy, or its removal; what is older is dropped. Lives as long as
/// its thread works, also where its owner could not wait for the disk any more.
class CopyWriter : public std::enable_shared_from_this<CopyWriter> {
public:
    /// `tell` is called on the writer's thread: empty when the copy is on the disk, else why it isn't.
    using Tell = std::function<void(const QString&)>;
    static std::shared_ptr<CopyWriter> start(const QString& file, Tell tell);

    void write(CopyContent content);
    void remove();
    /// It goes when the next copy is on the disk, or with it. Locked at once: nobody offers it any more.
    void takeOver(const QString& left);
    bool waitForDone(int milliseconds); ///< false: the disk is still at it
    void leave();                       ///< gives the locks up, once it is done; the copy stays
    void stop(); ///< ends the thread; waited for it is not. Nobody is told anything any more

private:
    struct Left {
        QString file;
        std::unique_ptr<LockFile> lock; ///< other windows don't offer it meanwhile
    };
    CopyWriter(const QString& file, Tell tell)
        : m_file(file), m_tell(std::move(tell)), m_lock(lockOf(file)) {}
    static QString lockOf(const QString& file) { return file + QStringLiteral(".lock"); }
    void run();
    QString written(const CopyContent& content);
    void discardLeft();

    const QString m_file;
    std::mutex m_mutex;
    std::condition_variable m_wake, m_done;
    std::optional<CopyContent> m_next; ///< under m_mutex, as these four
    bool m_remove = false, m_leave = false, m_stop = false, m_busy = false;
    std::vector<Left> m_taken; ///< under m_mutex: to be taken over
    Tell m_tell;               ///< under m_mutex
    LockFile m_lock;           ///< of the thread alone, as m_left
    std::vector<Left> m_left;
};

} // namespace tailpoint
