#include "ui/practice/sitting.h"

#include "ui/document/recovery.h"
#include "ui/practice/record_json.h"

#include <QDir>
#include <QFile>
#include <QFileInfo>

namespace tailpoint {

QString practiceFile() {
    return QFileInfo(recoveryFolder()).path() + QStringLiteral("/practice.json");
}

/// What was kept before stands in front; this sitting is the one after it.
std::optional<FileError> Sitting::takeFile() {
    if (!QFileInfo::exists(m_file))
        return std::nullopt;
    const auto bytes = readBytes(m_file, QStringLiteral("record of practice"));
    if (const auto* fault = std::get_if<FileError>(&bytes))
        return *fault;
    auto read = readRecord(std::get<QByteArray>(bytes));
    if (const auto* fault = std::get_if<FileError>(&read))
        return *fault;
    auto& kept = std::get<PracticeRecord>(read);
    const int before = kept.entries.empty() ? 0 : kept.entries.back().sitting;
    for (RecordEntry entry : m_record.entries) {
        entry.sitting += before;
        kept.entries.push_back(std::move(entry));
    }
    m_number += before;
    m_record = std::move(kept);
    return std::nullopt;
}

std::optional<FileError> Sitting::write() const {
    QDir().mkpath(QFileInfo(m_file).path());
    return saveBytes(m_file, writeRecord(m_record));
}

std::optional<FileError> Sitting::keep(bool on) {
    if (on == m_isKept)
        return std::nullopt;
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
    m_isKept = on;
    m_fault.reset();
    return std::nullopt;
}

std::optional<FileError> Sitting::forget() {
    if (QFileInfo::exists(m_file) && !QFile::remove(m_file))
        return FileError{m_file, QStringLiteral("cannot be removed; remove it by hand")};
    m_record = {};
    m_number = 1;
    m_fault.reset();
    return std::nullopt;
}

void Sitting::writeIfKept() {
    m_fault = m_isKept ? write() : std::nullopt;
}

std::size_t Sitting::add(const RecordEntry& entry) {
    m_record.entries.push_back(entry);
    writeIfKept();
    return m_record.entries.size() - 1;
}

void Sitting::change(std::size_t place, const RecordEntry& entry) {
    if (place < m_record.entries.size() && !(m_record.entries[place] == entry)) {
        m_record.entries[place] = entry;
        writeIfKept();
    }
}

} // namespace tailpoint
