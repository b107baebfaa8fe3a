// SPDX-License-Identifier: MIT
#include "ui/practice/sitting.h"

#include "ui/document/lock_file.h"
#include "ui/document/recovery.h"
#include "ui/practice/record_json.h"

#include <QDeadlineTimer>
#include <QDir>
#include <QFile>
#include <QFileInfo>
#include <QThread>
#include <algorithm>
#include <tuple>

namespace tailpoint {

QString practiceFile() {
    return QFileInfo(recoveryFolder()).path() + QStringLiteral("/practice.json");
}

namespace {

constexpr int kPatience = 1500, kPause = 3; // milliseconds; another window writes for one or two
constexpr int kVanishedSeconds = 600;       // whoever held it as long has gone, on whatever machine

/// Held as long as the record is read and written anew.
class RecordLock {
public:
    explicit RecordLock(const QString& file) : m_lock(file + QStringLiteral(".lock")), m_file(file) {
        QDir().mkpath(QFileInfo(file).path());
        const QDeadlineTimer patience(kPatience);
        while ((m_taking = m_lock.take()) == LockFile::Taking::others && !patience.hasExpired())
            QThread::msleep(kPause);
        if (m_taking != LockFile::Taking::others)
            return;
        m_holder = m_lock.holder();
        if (m_holder && m_holder->since.secsTo(QDateTime::currentDateTime()) > kVanishedSeconds)
            m_taking = m_lock.takeOver();
    }
    /// A folder that takes no lock takes no record either: writing says so.
    std::optional<FileError> fault() const {
        if (m_taking != LockFile::Taking::others)
            return std::nullopt;
        const QString who = m_holder ? QStringLiteral(" (%1)").arg(m_holder->words()) : QString();
        return FileError{m_file, QStringLiteral("is held by another window%1; what is missing is written "
                                                "with the next answer")
                                     .arg(who)};
    }

private:
    LockFile m_lock;
    QString m_file;
    LockFile::Taking m_taking = LockFile::Taking::others;
    std::optional<LockHolder> m_holder;
};

bool isBefore(const RecordEntry& a, const RecordEntry& b) {
    return std::tie(a.sitting, a.when) < std::tie(b.sitting, b.when);
}

int lastSitting(const std::vector<RecordEntry>& entries) {
    int last = 0;
    for (const RecordEntry& entry : entries)
        last = std::max(last, entry.sitting);
    return last;
}

} // namespace

/// What the file has beside what was written from here.
std::optional<FileError> Sitting::readOthers() {
    if (!QFileInfo::exists(m_file)) {
        m_others.clear(); // somebody had it forgotten
        m_written.clear();
        return std::nullopt;
    }
    const auto bytes = readBytes(m_file, QStringLiteral("record of practice"));
    if (const auto* fault = std::get_if<FileError>(&bytes))
        return *fault;
    auto read = readRecord(std::get<QByteArray>(bytes));
    if (const auto* fault = std::get_if<FileError>(&read))
        return *fault;
    std::vector<RecordEntry> mine = m_written;
    m_others.clear();
    for (RecordEntry& entry : std::get<PracticeRecord>(read).entries) {
        const auto own = std::find(mine.begin(), mine.end(), entry);
        if (own == mine.end())
            m_others.push_back(std::move(entry));
        else
            mine.erase(own);
    }
    return std::nullopt;
}

/// Both stay in their own order.
void Sitting::merge() {
    m_record.entries.clear();
    auto own = m_own.begin();
    for (const RecordEntry& other : m_others) {
        for (; own != m_own.end() && isBefore(*own, other); ++own)
            m_record.entries.push_back(*own);
        m_record.entries.push_back(other);
    }
    m_record.entries.insert(m_record.entries.end(), own, m_own.end());
}

/// What was kept before stands in front; this sitting is the one after it.
std::optional<FileError> Sitting::takeFile() {
    const std::vector<RecordEntry> known = m_others; // of a file that went when it was switched off
    if (auto fault = readOthers())
        return fault;
    if (m_others.empty())
        m_others = known;
    if (!m_isNumbered) {
        const int before = lastSitting(m_others);
        for (RecordEntry& entry : m_own)
            entry.sitting += before;
        m_number += before;
        m_isNumbered = true;
    }
    merge();
    return std::nullopt;
}

/// Under the lock.
std::optional<FileError> Sitting::write() {
    if (auto fault = saveBytes(m_file, writeRecord(m_record)))
        return fault;
    m_written = m_own;
    return std::nullopt;
}

std::optional<FileError> Sitting::keep(bool on) {
    if (on == m_isKept)
        return std::nullopt;
    const RecordLock lock(m_file);
    if (auto fault = lock.fault())
        return fault;
    if (on) {
        const Sitting before = *this;
        const bool isNew = !QFileInfo::exists(m_file) || !m_record.entries.empty();
        auto fault = takeFile();
        if (!fault && isNew)
            fault = write();
        if (fault) {
            *this = before;
            return fault;
        }
    } else if (QFileInfo::exists(m_file) && !QFile::remove(m_file))
        return FileError{m_file, QStringLiteral("cannot be removed; remove it by hand")};
    else
        m_written.clear();
    m_isKept = on;
    m_fault.reset();
    return std::nullopt;
}

std::optional<FileError> Sitting::forget() {
    const RecordLock lock(m_file);
    if (auto fault = lock.fault())
        return fault;
    if (QFileInfo::exists(m_file) && !QFile::remove(m_file))
        return FileError{m_file, QStringLiteral("cannot be removed; remove it by hand")};
    m_record = {};
    m_others.clear();
    m_forgotten += m_own.size();
    m_own.clear();
    m_written.clear();
    m_number = 1;
    m_fault.reset();
    return std::nullopt;
}

/// Into what the file has by now: another window may have written since.
void Sitting::writeIfKept() {
    m_fault.reset();
    if (!m_isKept)
        return merge();
    const RecordLock lock(m_file);
    m_fault = lock.fault();
    if (!m_fault)
        m_fault = readOthers();
    merge();
    if (!m_fault)
        m_fault = write();
}

std::size_t Sitting::add(const RecordEntry& entry) {
    m_own.push_back(entry);
    writeIfKept();
    return m_forgotten + m_own.size() - 1;
}

const RecordEntry* Sitting::entry(std::size_t known) const {
    return known >= m_forgotten && known - m_forgotten < m_own.size() ? &m_own[known - m_forgotten] : nullptr;
}

void Sitting::change(std::size_t known, const RecordEntry& entry) {
    if (const RecordEntry* own = this->entry(known); own != nullptr && !(*own == entry)) {
        m_own[known - m_forgotten] = entry;
        writeIfKept();
    }
}

} // namespace tailpoint
