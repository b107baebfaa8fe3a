// SPDX-License-Identifier: MIT
// What was practised in this sitting, and in earlier ones where the record is kept. It is kept only where
// that is asked for, in one file on this machine. Several windows may keep it at once: each writes its own
// entries among what the file has by then, under a lock.
#pragma once

#include "core/practice/record.h"
#include "ui/files/files.h"

namespace tailpoint {

/// $XDG_STATE_HOME/tailpoint/practice.json; a relative or absent XDG_STATE_HOME counts as ~/.local/state.
QString practiceFile();

class Sitting {
public:
    explicit Sitting(QString file = practiceFile()) : m_file(std::move(file)) {}

    const PracticeRecord& record() const { return m_record; }
    int number() const { return m_number; } ///< of this sitting, from 1
    const QString& file() const { return m_file; }
    bool isKept() const { return m_isKept; }

    /// From now on what is there and what comes is kept: behind what the file has. Off: the file goes, what
    /// is known stays until the window is closed. A fault leaves the switch as it is; a file that can't be
    /// read stays as it is.
    std::optional<FileError> keep(bool on);
    /// The record, here and on the disk. The switch stays.
    std::optional<FileError> forget();

    /// By what it is known here.
    std::size_t add(const RecordEntry& entry);
    /// Null where it was forgotten.
    const RecordEntry* entry(std::size_t known) const;
    void change(std::size_t known, const RecordEntry& entry);
    /// Why what came last is not on the disk; empty: it is, or need not be.
    const std::optional<FileError>& fault() const { return m_fault; }

private:
    std::optional<FileError> readOthers();
    std::optional<FileError> takeFile();
    std::optional<FileError> write();
    void writeIfKept();
    void merge();

    QString m_file;
    PracticeRecord m_record;            ///< m_others and m_own, in their order
    std::vector<RecordEntry> m_others;  ///< of earlier sittings, and of other windows
    std::vector<RecordEntry> m_own;     ///< of this one
    std::vector<RecordEntry> m_written; ///< of m_own, as the file has them
    std::size_t m_forgotten = 0;        ///< of this one; never known again
    int m_number = 1;
    bool m_isKept = false, m_isNumbered = false; ///< m_isNumbered: behind the sittings of the file
    std::optional<FileError> m_fault;
};

} // namespace tailpoint
