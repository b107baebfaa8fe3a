// SPDX-License-Identifier: MIT
#include "ui/files/files.h"

#include "ui/files/descriptor.h"

#include <QDir>
#include <QFile>
#include <QFileInfo>

#include <csignal>
#include <cstring>
#include <fcntl.h>
#include <sys/stat.h>
#include <unistd.h>

namespace tailpoint {

namespace {

FileError tooLarge(const QString& kind) {
    return {{},
            QStringLiteral("is larger than %1 MiB, which no %2 is; name another file")
                .arg(kLargestFile / (1024 * 1024))
                .arg(kind)};
}

FileError notRead(int error) {
    if (error == ENOENT || error == ENOTDIR)
        return {{}, QStringLiteral("does not exist; check the name")};
    if (error == EISDIR)
        return {{}, QStringLiteral("is a folder; name a file in it")};
    if (error == EACCES || error == EPERM)
        return {{}, QStringLiteral("can't be read: no permission; change the permissions")};
    return {{},
            QStringLiteral("can't be read: the system says '%1'; try another file")
                .arg(QString::fromLocal8Bit(std::strerror(error)))};
}

std::variant<QByteArray, FileError> readFrom(int fd, const QString& kind) {
    std::optional<QByteArray> bytes = readUpTo(fd, kLargestFile + 1);
    if (!bytes)
        return notRead(errno);
    if (bytes->size() > kLargestFile)
        return tooLarge(kind);
    return *bytes;
}

/// Empty: none, or no plain file.
std::optional<struct stat> plainFile(const QString& path, int standard) {
    struct stat info {};
    const int failed =
        path == QLatin1String("-") ? ::fstat(standard, &info) : ::stat(encoded(path).constData(), &info);
    return failed == 0 && S_ISREG(info.st_mode) ? std::optional(info) : std::nullopt;
}

/// The end of a pipe that the shell made and gave this process: its writer is there.
bool isGivenPipe(const QString& path) {
    return path == QLatin1String("/dev/stdin") || path.startsWith(QLatin1String("/dev/fd/")) ||
           path.startsWith(QLatin1String("/proc/self/fd/"));
}

/// Why what stands there is not read; empty: it is a plain file, or a pipe that was given.
std::optional<FileError> notToBeRead(const struct stat& info, bool given) {
    if (S_ISDIR(info.st_mode))
        return notRead(EISDIR);
    if (S_ISREG(info.st_mode) || given)
        return std::nullopt;
    const QString what = S_ISFIFO(info.st_mode)   ? QStringLiteral("a pipe")
                         : S_ISSOCK(info.st_mode) ? QStringLiteral("a socket")
                                                  : QStringLiteral("a device");
    return FileError{{}, QStringLiteral("is %1, not a file; name a file").arg(what)};
}

} // namespace

QString FileError::line() const {
    return place.isEmpty() ? message : place + QStringLiteral(": ") + message;
}

std::variant<QByteArray, FileError> readBytes(const QString& path, const QString& kind) {
    if (path == QLatin1String("-"))
        return readFrom(STDIN_FILENO, kind);
    const bool given = isGivenPipe(path);
    const Descriptor file(openRetrying(path, given ? O_RDONLY : O_RDONLY | O_NONBLOCK)); // waits for nobody
    struct stat info {};
    if (!file.valid() && errno == ENXIO)
        return FileError{{}, QStringLiteral("is a socket or a device, not a file; name a file")};
    if (!file.valid() || ::fstat(file.get(), &info) != 0)
        return notRead(errno);
    if (auto refused = notToBeRead(info, given))
        return *refused;
    if (info.st_size > kLargestFile)
        return tooLarge(kind);
    return readFrom(file.get(), kind);
}

QString finalPath(const QString& path) {
    if (const QString real = QFileInfo(path).canonicalFilePath(); !real.isEmpty())
        return real;
    QString target = path; // links to nothing
    for (int hop = 0; hop < 40 && QFileInfo(target).isSymLink(); ++hop)
        target = QFileInfo(target).symLinkTarget();
    const QFileInfo info(target);
    const QString folder = QFileInfo(info.absolutePath()).canonicalFilePath();
    return folder.isEmpty() ? info.absoluteFilePath() : QDir(folder).filePath(info.fileName());
}

bool isSameFile(const QString& output, const QString& input) {
    const auto one = plainFile(output, STDOUT_FILENO), other = plainFile(input, STDIN_FILENO);
    return one && other && one->st_dev == other->st_dev && one->st_ino == other->st_ino;
}

QString replacedInput(const QStringList& outputs, const QString& input) {
    for (const QString& output : outputs)
        if (isSameFile(output, input))
            return output;
    return {};
}

std::optional<FileError> writeStandardOutput(const QByteArray& bytes) {
    const int error = writeAll(STDOUT_FILENO, bytes);
    return error == 0 ? std::nullopt
                      : std::optional(FileError{{}, QStringLiteral("not written: %1").arg(reasonOf(error))});
}

void turnFileSignalsIntoErrors() {
    std::signal(SIGXFSZ, SIG_IGN);
    std::signal(SIGPIPE, SIG_IGN);
}

} // namespace tailpoint
