// SPDX-License-Identifier: MIT
// A file that says who is at work on another one, so that two windows don't write over each other: on this
// machine or, in a folder that several share, on others.
#pragma once

#include "ui/files/descriptor.h"

#include <QDateTime>
#include <QString>
#include <optional>

namespace tailpoint {

/// As a lock tells it.
struct LockHolder {
    qint64 process = 0;
    QString host; ///< empty: not told
    QString boot; ///< which start of that machine
    QDateTime since;
    /// "process 123 on lab7, since 10:42" (with the date where it isn't today's).
    QString words() const;
};

/// Held from take() until it goes, or until somebody takes it over. Left by a process of this machine that
/// ended, or by another start of it, it is nobody's and is cleared away; whether a process of another machine
/// lives can't be known from here, so its lock stands until it is taken over.
///
/// The text is one line each: process, program, host, machine, boot, start of the process.
class LockFile {
public:
    explicit LockFile(QString path) : m_path(std::move(path)) {}
    ~LockFile() { giveUp(); }
    LockFile(const LockFile&) = delete;
    LockFile& operator=(const LockFile&) = delete;

    /// `impossible`: the folder takes none (no permission, read-only, full).
    enum class Taking { held, others, impossible };
    Taking take();
    /// From whoever holds it, who finds out by holds().
    Taking takeOver();
    void giveUp();
    /// Taken, and the file is still the one that was made here.
    bool holds() const;
    /// Of whoever holds it; empty: nobody, or nothing to be read.
    std::optional<LockHolder> holder() const;
    const QString& path() const { return m_path; }

private:
    bool make();
    bool clearIfLeft();
    QString m_path;
    Descriptor m_file; ///< locked while held: tells a living holder in another namespace of processes
};

/// Takes away locks in `folder` that nobody holds and that belong to no file any more. How many.
int sweepLeftLocks(const QString& folder);

} // namespace tailpoint
