#include "ui/document/files.h"

#include <QDir>
#include <QFile>
#include <QFileInfo>
#include <QRandomGenerator>

#include <cerrno>
#include <csignal>
#include <cstring>
#include <ctime>
#include <fcntl.h>
#include <sys/file.h>
#include <sys/stat.h>
#include <unistd.h>

namespace tailpoint {

namespace {

const QString kTemporaryPrefix = QStringLiteral(".tailpoint-saving-");
constexpr std::time_t kStaleSeconds = 60; ///< no saving takes that long between two writes

/// Owns a file descriptor; close() says whether the bytes arrived.
class Descriptor {
public:
    explicit Descriptor(int fd = -1) : m_fd(fd) {}
    Descriptor(const Descriptor&) = delete;
    Descriptor& operator=(const Descriptor&) = delete;
    ~Descriptor() { close(); }
    int get() const { return m_fd; }
    bool valid() const { return m_fd >= 0; }
    void reset(int fd) {
        close();
        m_fd = fd;
    }
    bool close() {
        const int fd = std::exchange(m_fd, -1);
        return fd < 0 || ::close(fd) == 0;
    }

private:
    int m_fd;
};

QString reason(int error) {
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
    default:
        return QStringLiteral("the system says '%1'; try again or save elsewhere")
            .arg(QString::fromLocal8Bit(std::strerror(error)));
    }
}

FileError notSaved(int error) {
    return {{}, QStringLiteral("not saved: %1").arg(reason(error))};
}

QByteArray encoded(const QString& path) {
    return QFile::encodeName(path);
}

int openRetrying(const QString& path, int flags, mode_t mode = 0) {
    int fd = -1;
    do
        fd = ::open(encoded(path).constData(), flags | O_CLOEXEC, mode);
    while (fd < 0 && errno == EINTR);
    return fd;
}

/// 0, or the error.
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

/// Up to `most` bytes; empty on an error, which is left in errno.
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

/// A file beside the target that goes away again unless it was renamed into its place.
class Temporary {
public:
    explicit Temporary(const QString& target) {
        const QDir folder = QFileInfo(target).absoluteDir();
        int fd = -1;
        for (int attempt = 0; attempt < 100 && fd < 0; ++attempt) {
            m_path = folder.filePath(kTemporaryPrefix +
                                     QString::number(QRandomGenerator::system()->generate64(), 36));
            fd = openRetrying(m_path, O_RDWR | O_CREAT | O_EXCL, 0666);
            if (fd < 0 && errno != EEXIST)
                break;
        }
        m_file.reset(fd);
        m_stands = m_file.valid();
        if (m_stands)
            ::flock(fd, LOCK_EX | LOCK_NB);
    }
    Temporary(const Temporary&) = delete;
    Temporary& operator=(const Temporary&) = delete;
    ~Temporary() {
        if (m_stands)
            ::unlink(encoded(m_path).constData());
    }
    Descriptor& file() { return m_file; }
    const QString& path() const { return m_path; }
    bool renameTo(const QString& target) {
        m_stands = ::rename(encoded(m_path).constData(), encoded(target).constData()) != 0;
        return !m_stands;
    }

private:
    QString m_path;
    Descriptor m_file;
    bool m_stands = false; ///< the file is there and not yet renamed
};

/// Permissions and, where allowed, the owner of the file that is about to be replaced.
bool takeOver(int fd, const struct stat& old) {
    if (old.st_uid != ::geteuid() || old.st_gid != ::getegid())
        if (::fchown(fd, old.st_uid, old.st_gid) != 0 &&
            ::fchown(fd, static_cast<uid_t>(-1), old.st_gid) != 0)
            errno = 0; // the new file belongs to who saved it
    return ::fchmod(fd, old.st_mode & 0777) == 0;
}

bool readsBack(const QString& path, const QByteArray& bytes) {
    const Descriptor file(openRetrying(path, O_RDONLY));
    if (!file.valid())
        return false;
    const std::optional<QByteArray> back = readUpTo(file.get(), bytes.size() + 1);
    return back && *back == bytes;
}

/// The name itself is safe only when its folder is on the disk; some file systems know no such thing
/// (EINVAL).
int syncFolder(const QString& target) {
    const Descriptor folder(openRetrying(QFileInfo(target).absolutePath(), O_RDONLY | O_DIRECTORY));
    if (!folder.valid())
        return errno == EACCES ? 0 : errno; // a folder that may be written but not listed
    return ::fsync(folder.get()) == 0 || errno == EINVAL ? 0 : errno;
}

std::optional<FileError> writeBeside(const QString& target, const struct stat* old, const QByteArray& bytes) {
    Temporary temporary(target);
    Descriptor& file = temporary.file();
    if (!file.valid())
        return notSaved(errno);
    if (old && !takeOver(file.get(), *old))
        return notSaved(errno);
    if (const int error = writeAll(file.get(), bytes))
        return notSaved(error);
    if (::fsync(file.get()) != 0 || !file.close())
        return notSaved(errno);
    if (!readsBack(temporary.path(), bytes))
        return FileError{{}, QStringLiteral("not saved: the disk gave other bytes back; save elsewhere")};
    if (!temporary.renameTo(target))
        return notSaved(errno);
    if (const int error = syncFolder(target))
        return FileError{{}, QStringLiteral("saved, but not yet safe on the disk: %1").arg(reason(error))};
    return std::nullopt;
}

std::optional<FileError> writeDirectly(const QString& target, const QByteArray& bytes) {
    Descriptor file(openRetrying(target, O_WRONLY));
    if (!file.valid())
        return notSaved(errno);
    if (const int error = writeAll(file.get(), bytes))
        return notSaved(error);
    return file.close() ? std::nullopt : std::optional(notSaved(errno));
}

bool nobodyWrites(const QString& path) {
    struct stat info {};
    const Descriptor file(openRetrying(path, O_RDONLY | O_NOFOLLOW));
    return file.valid() && ::fstat(file.get(), &info) == 0 &&
           std::time(nullptr) - info.st_mtime >= kStaleSeconds && ::flock(file.get(), LOCK_EX | LOCK_NB) == 0;
}

} // namespace

QString FileError::line() const {
    return place.isEmpty() ? message : place + QStringLiteral(": ") + message;
}

std::variant<QByteArray, FileError> readBytes(const QString& path, const QString& kind) {
    if (path == QLatin1String("-"))
        return readFrom(STDIN_FILENO, kind);
    const Descriptor file(openRetrying(path, O_RDONLY));
    struct stat info {};
    if (!file.valid() || ::fstat(file.get(), &info) != 0)
        return notRead(errno);
    if (S_ISDIR(info.st_mode))
        return notRead(EISDIR);
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

std::optional<FileError> saveBytes(const QString& path, const QByteArray& bytes) {
    const QString target = finalPath(path);
    struct stat old {};
    const bool exists = ::stat(encoded(target).constData(), &old) == 0;
    if (!exists)
        return writeBeside(target, nullptr, bytes);
    if (S_ISDIR(old.st_mode))
        return FileError{{}, QStringLiteral("is a folder; name a file in it")};
    if (::access(encoded(target).constData(), W_OK) != 0)
        return notSaved(errno);
    return S_ISREG(old.st_mode) ? writeBeside(target, &old, bytes) : writeDirectly(target, bytes);
}

std::optional<FileError> writeStandardOutput(const QByteArray& bytes) {
    const int error = writeAll(STDOUT_FILENO, bytes);
    return error == 0 ? std::nullopt
                      : std::optional(FileError{{}, QStringLiteral("not written: %1").arg(reason(error))});
}

void turnFileSignalsIntoErrors() {
    std::signal(SIGXFSZ, SIG_IGN);
    std::signal(SIGPIPE, SIG_IGN);
}

int sweepStaleTemporaries(const QString& folder) {
    int swept = 0;
    const QDir dir(folder);
    for (const QString& name :
         dir.entryList({kTemporaryPrefix + QLatin1Char('*')}, QDir::Files | QDir::Hidden))
        if (nobodyWrites(dir.filePath(name)) && ::unlink(encoded(dir.filePath(name)).constData()) == 0)
            ++swept;
    return swept;
}

} // namespace tailpoint
