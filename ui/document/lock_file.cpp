// SPDX-License-Identifier: MIT
#include "ui/document/lock_file.h"

#include <QCoreApplication>
#include <QDir>
#include <QFile>
#include <QFileInfo>
#include <QLocale>
#include <QRandomGenerator>
#include <QSysInfo>

#include <cerrno>
#include <csignal>
#include <cstdio>
#include <fcntl.h>
#include <sys/file.h>
#include <sys/stat.h>
#include <unistd.h>

namespace tailpoint {

namespace {

const QString kEnding = QStringLiteral(".lock");
constexpr qint64 kLongestText = 4096;    ///< bytes
constexpr qint64 kUnreadableSeconds = 5; ///< what is being made has its text by then

/// When that process started, in ticks since the machine did; empty: there is none, or no /proc.
/// Source: proc(5), /proc/pid/stat, field 22.
QByteArray startOf(qint64 process) {
    const Descriptor file(openRetrying(QStringLiteral("/proc/%1/stat").arg(process), O_RDONLY));
    const auto text = file.valid() ? readUpTo(file.get(), kLongestText) : std::nullopt;
    if (!text)
        return {};
    constexpr qsizetype kBehindName = 19; // the name, field 2, may have spaces
    return text->mid(text->lastIndexOf(')') + 2).split(' ').value(kBehindName);
}

QByteArray ownText() {
    const QByteArray lines[] = {QByteArray::number(QCoreApplication::applicationPid()),
                                QCoreApplication::applicationName().toUtf8(),
                                QSysInfo::machineHostName().toUtf8(),
                                QSysInfo::machineUniqueId(),
                                QSysInfo::bootUniqueId(),
                                startOf(QCoreApplication::applicationPid())};
    QByteArray text;
    for (const QByteArray& line : lines)
        text += line + '\n';
    return text;
}

/// A name beside it that sweepStaleTemporaries() knows.
QString asideOf(const QString& path) {
    return QFileInfo(path).absolutePath() + QStringLiteral("/.tailpoint-saving-lock-") +
           QString::number(QRandomGenerator::system()->generate64(), 36);
}

bool isSameFileBehind(int fd, const QString& path) {
    struct stat one {
    }, other{};
    return ::fstat(fd, &one) == 0 && ::stat(encoded(path).constData(), &other) == 0 &&
           one.st_dev == other.st_dev && one.st_ino == other.st_ino;
}

struct LockText {
    LockHolder holder;
    QString machine;
    QByteArray start;
};

/// Empty: no text yet, or none of a lock.
std::optional<LockText> readLock(int fd) {
    struct stat info {};
    const auto bytes = readUpTo(fd, kLongestText);
    if (!bytes || ::fstat(fd, &info) != 0)
        return std::nullopt;
    const QStringList lines = QString::fromUtf8(*bytes).split(u'\n');
    bool isNumber = false;
    const qint64 process = lines[0].toLongLong(&isNumber);
    if (!isNumber || process <= 0)
        return std::nullopt;
    return LockText{{process, lines.value(2), lines.value(4), QDateTime::fromSecsSinceEpoch(info.st_mtime)},
                    lines.value(3),
                    lines.value(5).toUtf8()};
}

/// Images of one disk give machines one id, hosts of one name differ by it: both have to agree.
bool isThisMachine(const LockText& lock) {
    const QString machine = QString::fromUtf8(QSysInfo::machineUniqueId());
    return (lock.holder.host.isEmpty() || lock.holder.host == QSysInfo::machineHostName()) &&
           (lock.machine.isEmpty() || machine.isEmpty() || lock.machine == machine);
}

bool isLeft(const LockText& lock) {
    if (!isThisMachine(lock))
        return false;
    const QString boot = QString::fromUtf8(QSysInfo::bootUniqueId());
    if (!lock.holder.boot.isEmpty() && !boot.isEmpty() && lock.holder.boot != boot)
        return true;
    if (::kill(static_cast<pid_t>(lock.holder.process), 0) != 0)
        return errno == ESRCH;
    const QByteArray start = startOf(lock.holder.process); // another process may have its number by now
    return !lock.start.isEmpty() && !start.isEmpty() && lock.start != start;
}

/// Of a lock that has no text: made at once, so a power cut took it.
bool isOldAndEmpty(int fd) {
    struct stat info {};
    return ::fstat(fd, &info) == 0 && QDateTime::currentSecsSinceEpoch() - info.st_mtime > kUnreadableSeconds;
}

} // namespace

QString LockHolder::words() const {
    const QDateTime today = QDateTime::currentDateTime();
    const QString when = since.date() == today.date() ? QLocale().toString(since.time(), QLocale::ShortFormat)
                                                      : QLocale().toString(since, QLocale::ShortFormat);
    const QString where =
        host.isEmpty() || host == QSysInfo::machineHostName() ? QStringLiteral("this machine") : host;
    return QStringLiteral("process %1 on %2, since %3").arg(QString::number(process), where, when);
}

/// With its text from the first moment on where the file system knows second names.
bool LockFile::make() {
    const QString aside = asideOf(m_path);
    m_file.reset(openRetrying(aside, O_RDWR | O_CREAT | O_EXCL, 0644));
    if (!m_file.valid())
        return false;
    ::flock(m_file.get(), LOCK_EX | LOCK_NB);
    int error = writeAll(m_file.get(), ownText());
    if (error == 0 && ::link(encoded(aside).constData(), encoded(m_path).constData()) != 0) {
        error = errno;
        if (error == EPERM || error == EOPNOTSUPP || error == ENOSYS) // no second names here
            error = QFileInfo::exists(m_path)                                                ? EEXIST
                    : ::rename(encoded(aside).constData(), encoded(m_path).constData()) == 0 ? 0
                                                                                             : errno;
    }
    ::unlink(encoded(aside).constData());
    if (error != 0)
        m_file.reset(-1);
    errno = error;
    return error == 0;
}

/// The lock is moved aside first and looked at there: whoever came in between has his own back.
bool LockFile::clearIfLeft() {
    const Descriptor there(openRetrying(m_path, O_RDWR | O_NOFOLLOW | O_NONBLOCK));
    if (!there.valid())
        return errno == ENOENT;
    const auto lock = readLock(there.get());
    if (!(lock ? isLeft(*lock) : isOldAndEmpty(there.get())) || ::flock(there.get(), LOCK_EX | LOCK_NB) != 0)
        return false;
    const QString aside = asideOf(m_path);
    if (::rename(encoded(m_path).constData(), encoded(aside).constData()) != 0)
        return errno == ENOENT;
    const bool isIt = isSameFileBehind(there.get(), aside);
    if (!isIt && ::link(encoded(aside).constData(), encoded(m_path).constData()) != 0)
        return false;
    ::unlink(encoded(aside).constData());
    return isIt;
}

LockFile::Taking LockFile::take() {
    if (holds())
        return Taking::held;
    giveUp();
    for (int attempt = 0; attempt < 4; ++attempt) { // another may clear it away at the same time
        if (make())
            return Taking::held;
        if (errno != EEXIST)
            return Taking::impossible;
        if (!clearIfLeft())
            return Taking::others;
    }
    return Taking::others;
}

LockFile::Taking LockFile::takeOver() {
    const Taking taking = take();
    if (taking != Taking::others)
        return taking;
    ::unlink(encoded(m_path).constData());
    return make() ? Taking::held : errno == EEXIST ? Taking::others : Taking::impossible;
}

void LockFile::giveUp() {
    if (holds())
        ::unlink(encoded(m_path).constData());
    m_file.reset(-1);
}

bool LockFile::holds() const {
    return m_file.valid() && isSameFileBehind(m_file.get(), m_path);
}

std::optional<LockHolder> LockFile::holder() const {
    const Descriptor there(openRetrying(m_path, O_RDONLY | O_NONBLOCK));
    const auto lock = there.valid() ? readLock(there.get()) : std::nullopt;
    return lock ? std::optional(lock->holder) : std::nullopt;
}

int sweepLeftLocks(const QString& folder) {
    int swept = 0;
    const QDir dir(folder);
    for (const QString& name : dir.entryList({u'*' + kEnding}, QDir::Files | QDir::Hidden)) {
        if (dir.exists(name.chopped(kEnding.size())))
            continue; // it goes with its file
        LockFile lock(dir.filePath(name));
        if (lock.take() == LockFile::Taking::held)
            ++swept; // and is given up at once
    }
    return swept;
}

} // namespace tailpoint
