// SPDX-License-Identifier: MIT
#include "ui/document/open_file.h"

#include <QCryptographicHash>
#include <QFile>
#include <QFileInfo>
#include <sys/stat.h>

namespace tailpoint {

namespace {

QString lockPathOf(const QString& target) {
    const QFileInfo info(target);
    return info.absolutePath() + QStringLiteral("/.") + info.fileName() + QStringLiteral(".tailpoint-lock");
}

struct Lock {
    std::unique_ptr<LockFile> file; ///< null: not held
    QString readOnly;
};

QString holderWords(const LockFile& lock) {
    const auto holder = lock.holder();
    return QStringLiteral("is open in another Tailpoint window (%1); save under another name")
        .arg(holder ? holder->words() : QStringLiteral("which doesn't say where"));
}

/// A file in a folder that can't be written has no lock, and needs none.
Lock lockFor(const QString& target) {
    auto lock = std::make_unique<LockFile>(lockPathOf(target));
    switch (lock->take()) {
    case LockFile::Taking::held:
        return {std::move(lock), {}};
    case LockFile::Taking::others:
        return {nullptr, holderWords(*lock)};
    case LockFile::Taking::impossible:
        break;
    }
    return {};
}

/// Which file it is, its size and when it was written; empty: there is none.
QByteArray stampOf(const QString& path) {
    struct stat info {};
    if (::stat(QFile::encodeName(path).constData(), &info) != 0)
        return {};
    const qint64 parts[] = {static_cast<qint64>(info.st_dev), static_cast<qint64>(info.st_ino),
                            static_cast<qint64>(info.st_size), static_cast<qint64>(info.st_mtim.tv_sec),
                            static_cast<qint64>(info.st_mtim.tv_nsec)};
    return {reinterpret_cast<const char*>(parts), sizeof parts};
}

/// Written so lately that another writing in the same tick of the clock would have the same stamp.
bool isFresh(const QString& path) {
    constexpr qint64 kTickMs = 2000; // the coarsest file system's
    return QFileInfo(path).lastModified().msecsTo(QDateTime::currentDateTime()) < kTickMs;
}

QByteArray digestOfFile(const QString& path) {
    const auto read = readBytes(path);
    const auto* bytes = std::get_if<QByteArray>(&read);
    return bytes ? digestOf(*bytes) : QByteArray();
}

} // namespace

QByteArray digestOf(const QByteArray& bytes) {
    return QCryptographicHash::hash(bytes, QCryptographicHash::Sha256);
}

void OpenFile::take(const QString& path) {
    const QString target = path.isEmpty() ? QString() : finalPath(path);
    if (target.isEmpty() || target != m_target || !m_readOnly.isEmpty()) {
        m_lock.reset();
        Lock lock = target.isEmpty() ? Lock{} : lockFor(target);
        m_lock = std::move(lock.file);
        m_readOnly = lock.readOnly;
        m_target = target;
    }
    m_path = path;
    know({});
}

bool OpenFile::takeOver() {
    auto lock = std::make_unique<LockFile>(lockPathOf(m_target));
    if (lock->takeOver() == LockFile::Taking::others) {
        m_readOnly = holderWords(*lock);
        return false;
    }
    m_lock = std::move(lock);
    m_readOnly.clear();
    return true;
}

/// Another window took the lock over; empty: none did, and a lock that was merely removed is made again.
QString OpenFile::takenReason() const {
    if (!m_lock || m_lock->take() != LockFile::Taking::others)
        return {};
    return holderWords(*m_lock);
}

OpenFile::Now OpenFile::now() {
    if (m_path.isEmpty() || m_known.isEmpty())
        return Now::same;
    const QByteArray stamp =
        stampOf(m_path); // before the bytes: what is written in between is seen next time
    if (stamp.isEmpty())
        return Now::gone;
    if (stamp == m_seen)
        return Now::same;
    if (digestOfFile(m_path) != m_known)
        return Now::changed;
    m_seen = isFresh(m_path) ? QByteArray() : stamp;
    return Now::same;
}

QDateTime OpenFile::changedAt() const {
    return QFileInfo(m_path).lastModified();
}

std::optional<FileError> OpenFile::save(const QString& path, const QByteArray& bytes) {
    const QString target = finalPath(path);
    if (target == m_target && m_readOnly.isEmpty())
        m_readOnly = takenReason();
    const bool held = target == m_target && m_readOnly.isEmpty();
    Lock lock = held ? Lock{} : lockFor(target);
    if (!lock.readOnly.isEmpty())
        return FileError{{}, lock.readOnly};
    const QByteArray digest = digestOf(bytes);
    if (auto error = saveBytes(path, bytes)) {
        if (held && digestOfFile(path) == digest) // there, though not yet safe: nobody else's
            know(digest);
        return error;
    }
    if (!held) {
        m_lock = std::move(lock.file);
        m_readOnly.clear();
    }
    m_path = path;
    m_target = finalPath(path);
    know(digest);
    return std::nullopt;
}

} // namespace tailpoint
