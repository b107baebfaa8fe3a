// SPDX-License-Identifier: MIT
#include "ui/files/descriptor.h"

#include <QFile>

#include <cstring>
#include <fcntl.h>
#include <unistd.h>
#include <utility>

namespace tailpoint {

void Descriptor::reset(int fd) {
    close();
    m_fd = fd;
}

/// Interrupted, it is closed all the same (Linux, close(2)): called again it could close somebody else's.
bool Descriptor::close() {
    const int fd = std::exchange(m_fd, -1);
    return fd < 0 || ::close(fd) == 0 || errno == EINTR;
}

QString reasonOf(int error) {
    switch (error) {
    case ENOSPC:
    case EDQUOT:
        return QStringLiteral("the disk is full; make room or save elsewhere");
    case EFBIG:
        return QStringLiteral("the file would be larger than the system allows; save elsewhere");
    case EACCES:
    case EPERM:
        return QStringLiteral("no permission; change the permissions or save elsewhere");
    case EROFS:
        return QStringLiteral("the disk is read-only; save elsewhere");
    case ENOENT:
    case ENOTDIR:
        return QStringLiteral("the folder does not exist; make it first or save elsewhere");
    case ENAMETOOLONG:
        return QStringLiteral("the name is too long; choose a shorter one");
    case EPIPE:
        return QStringLiteral(
            "the reader closed the pipe before everything was written; let it read to the end");
    case ENXIO:
        return QStringLiteral("nobody reads the pipe; start its reader first or save elsewhere");
    default:
        return QStringLiteral("the system says '%1'; try again or save elsewhere")
            .arg(QString::fromLocal8Bit(std::strerror(error)));
    }
}

QByteArray encoded(const QString& path) {
    return QFile::encodeName(path);
}

int openRetrying(const QString& path, int flags, mode_t mode) {
    return retrying([&] { return ::open(encoded(path).constData(), flags | O_CLOEXEC, mode); });
}

int writeAll(int fd, const QByteArray& bytes) {
    qsizetype done = 0;
    while (done < bytes.size()) {
        const ssize_t n =
            ::write(fd, bytes.constData() + done, static_cast<std::size_t>(bytes.size() - done));
        if (n < 0 && errno != EINTR)
            return errno;
        if (n > 0)
            done += n;
    }
    return 0;
}

std::optional<QByteArray> readUpTo(int fd, qint64 most) {
    QByteArray bytes;
    char buffer[1 << 16];
    while (bytes.size() < most) {
        const auto wanted = std::min<qint64>(most - bytes.size(), static_cast<qint64>(sizeof buffer));
        const ssize_t n = ::read(fd, buffer, static_cast<std::size_t>(wanted));
        if (n == 0)
            break;
        if (n < 0 && errno != EINTR)
            return std::nullopt;
        if (n > 0)
            bytes.append(buffer, n);
    }
    return bytes;
}

} // namespace tailpoint
