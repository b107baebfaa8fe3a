// SPDX-License-Identifier: MIT
// The file of the open sketch: its name, its lock, and what was in it when it was last read or written here,
// so that nobody's work is replaced unseen.
#pragma once

#include "ui/document/lock_file.h"
#include "ui/files/files.h"

#include <QDateTime>
#include <memory>

namespace tailpoint {

/// Stands for the bytes of a file; empty: nothing is known of them.
QByteArray digestOf(const QByteArray& bytes);

class OpenFile {
public:
    /// As it was when it was last read or written here; changed by somebody else since; not there any more.
    enum class Now { same, changed, gone };

    QString path() const { return m_path; } ///< as it was named, absolute; empty: none
    /// Why saving under the present name is refused ("is open in another Tailpoint window ..."); empty: it
    /// isn't.
    QString readOnlyReason() const { return m_readOnly; }
    /// From now on the lock is this window's, whoever holds it: that window finds out when it saves. False:
    /// somebody else was faster.
    bool takeOver();

    /// Another name (empty: none), and its lock: of the file that the name leads to, so that a link is no way
    /// round it. Nothing is known of its bytes yet.
    void take(const QString& path);
    /// These are the bytes that stand under the name, as far as this window knows.
    void know(const QByteArray& digest) { m_known = digest, m_seen = {}; }
    QByteArray known() const { return m_known; }

    /// Looks at the disk: reads the file only where its time, its size or the file itself is another. A name
    /// that leads nowhere, and a file of which nothing is known, are the same.
    Now now();
    QDateTime changedAt() const; ///< local time; invalid: no such file

    /// Saves under this name and takes it; refused where another window has it. On an error the old name
    /// stays.
    std::optional<FileError> save(const QString& path, const QByteArray& bytes);

private:
    QString takenReason() const;
    QString m_path, m_target;         ///< m_target: what is locked
    std::unique_ptr<LockFile> m_lock; ///< null: not held
    QString m_readOnly;
    QByteArray m_known, m_seen; ///< m_seen: the stamp that the known bytes had; empty: not looked yet
};

} // namespace tailpoint
