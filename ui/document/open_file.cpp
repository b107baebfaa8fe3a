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
    std::unique_ptr<QLockFile> file; ///< empty: not held
    QString readOnly;
};

QString holderWords(const QLockFile& lock) {
    qint64 process = 0;
    QString host, application;
    lock.getLockInfo(&process, &host, &application);
    return QStringLiteral("is open in another Tailpoint window (process %1 on %2); save under another name")
        .arg(QString::number(process), host.isEmpty() ? QStringLiteral("this machine") : host);
}

/// A file in a folder that can't be written has no lock, and needs none.
Lock lockFor(const QString& target) {
    auto lock = std::make_unique<QLockFile>(lockPathOf(target));
    lock->setStaleLockTime(0); // a lock goes stale with its process, not with the clock
    if (lock->tryLock(100))
        return {std::move(lock), {}};
    if (lock->error() == QLockFile::LockFailedError)
        return {nullptr, holderWords(*lock)};
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
