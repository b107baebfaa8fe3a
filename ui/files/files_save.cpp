// SPDX-License-Identifier: MIT
#include "ui/files/files.h"

#include "ui/files/descriptor.h"

#include <QDir>
#include <QFileInfo>
#include <QRandomGenerator>

#include <cstdio>
#include <ctime>
#include <fcntl.h>
#include <memory>
#include <sys/file.h>
#include <sys/stat.h>
#include <unistd.h>

namespace tailpoint {

namespace {

const QString kTemporaryPrefix = QStringLiteral(".tailpoint-saving-");
constexpr std::time_t kStaleSeconds = 60; ///< no saving takes that long between two writes

FileError notSaved(int error) {
    return {{}, QStringLiteral("not saved: %1").arg(reasonOf(error))};
}

int renameRetrying(const QString& from, const QString& to) {
    return retrying([&] { return ::rename(encoded(from).constData(), encoded(to).constData()); });
}

QString freeNameBeside(const QString& target) {
    return QFileInfo(target).absoluteDir().filePath(
        kTemporaryPrefix + QString::number(QRandomGenerator::system()->generate64(), 36));
}

/// A file beside the target that goes away again unless it was renamed into its place.
class Temporary {
public:
    explicit Temporary(const QString& target) {
        int fd = -1;
        for (int attempt = 0; attempt < 100 && fd < 0; ++attempt) {
            m_path = freeNameBeside(target);
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
        m_stands = renameRetrying(m_path, target) != 0;
        return !m_stands;
    }

private:
    QString m_path;
    Descriptor m_file;
    bool m_stands = false; ///< the file is there and not yet renamed
};

int syncRetrying(int fd) {
    return retrying([&] { return ::fsync(fd); });
}

/// Permissions and, where allowed, the owner of the file that is about to be replaced.
bool takeOver(int fd, const struct stat& old) {
    if (old.st_uid != ::geteuid() || old.st_gid != ::getegid())
        if (retrying([&] { return ::fchown(fd, old.st_uid, old.st_gid); }) != 0 &&
            retrying([&] { return ::fchown(fd, static_cast<uid_t>(-1), old.st_gid); }) != 0)
            errno = 0; // the new file belongs to who saved it
    return retrying([&] { return ::fchmod(fd, old.st_mode & 0777); }) == 0;
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
    return syncRetrying(folder.get()) == 0 || errno == EINVAL ? 0 : errno;
}

std::optional<FileError> notYetSafe(const QString& target) {
    const int error = syncFolder(target);
    if (error == 0)
        return std::nullopt;
    return FileError{{}, QStringLiteral("saved, but not yet safe on the disk: %1").arg(reasonOf(error))};
}

/// New bytes on the disk beside the target, to be put into its place, and perhaps taken out of it again.
class Beside {
public:
    explicit Beside(QString target) : m_target(std::move(target)), m_temporary(m_target) {}
    ~Beside() { forgetOld(); }
    Beside(const Beside&) = delete;
    Beside& operator=(const Beside&) = delete;

    std::optional<FileError> write(const struct stat* old, const QByteArray& bytes) {
        Descriptor& file = m_temporary.file();
        if (!file.valid())
            return notSaved(errno);
        if (old && !takeOver(file.get(), *old))
            return notSaved(errno);
        if (const int error = writeAll(file.get(), bytes))
            return notSaved(error);
        if (syncRetrying(file.get()) != 0 || !file.close())
            return notSaved(errno);
        if (!readsBack(m_temporary.path(), bytes))
            return FileError{{}, QStringLiteral("not saved: the disk gave other bytes back; save elsewhere")};
        m_replaces = old != nullptr;
        return std::nullopt;
    }
    std::optional<FileError> put() {
        return m_temporary.renameTo(m_target) ? std::nullopt : std::optional(notSaved(errno));
    }
    /// A second name for the file that put() replaces, so that takeBack() has it. Where the file system knows
    /// none, takeBack() leaves the new file.
    void keepOld() {
        const QString name = freeNameBeside(m_target);
        if (m_replaces && ::link(encoded(m_target).constData(), encoded(name).constData()) == 0)
            m_old = name;
    }
    void takeBack() {
        if (!m_replaces)
            ::unlink(encoded(m_target).constData());
        else if (!m_old.isEmpty() && renameRetrying(m_old, m_target) == 0)
            m_old.clear();
    }
    void forgetOld() {
        if (!m_old.isEmpty())
            ::unlink(encoded(m_old).constData());
        m_old.clear();
    }
    const QString& target() const { return m_target; }

private:
    QString m_target, m_old;
    Temporary m_temporary;
    bool m_replaces = false;
};

std::optional<FileError> writeBeside(const QString& target, const struct stat* old, const QByteArray& bytes) {
    Beside beside(target);
    if (auto error = beside.write(old, bytes))
        return error;
    if (auto error = beside.put())
        return error;
    return notYetSafe(target);
}

/// A pipe without a reader is not waited for.
std::optional<FileError> writeDirectly(const QString& target, const QByteArray& bytes) {
    Descriptor file(openRetrying(target, O_WRONLY | O_NONBLOCK));
    if (!file.valid())
        return notSaved(errno);
    if (::fcntl(file.get(), F_SETFL, O_WRONLY) != 0) // once there is one, its pace is heeded
        return notSaved(errno);
    if (const int error = writeAll(file.get(), bytes))
        return notSaved(error);
    return file.close() ? std::nullopt : std::optional(notSaved(errno));
}

/// Where bytes go and what stands there; the fault that can be told before anything is written.
struct Target {
    QString path;
    struct stat old {};
    bool exists = false;

    explicit Target(const QString& name) : path(finalPath(name)) {
        exists = ::stat(encoded(path).constData(), &old) == 0;
    }
    std::optional<FileError> fault() const {
        if (exists && S_ISDIR(old.st_mode))
            return FileError{{}, QStringLiteral("is a folder; name a file in it")};
        if (exists && S_ISSOCK(old.st_mode))
            return FileError{{}, QStringLiteral("is a socket, not a file; name a file")};
        if (exists && ::access(encoded(path).constData(), W_OK) != 0)
            return notSaved(errno);
        return std::nullopt;
    }
    bool isPlain() const { return !exists || S_ISREG(old.st_mode); }
    const struct stat* replaced() const { return exists ? &old : nullptr; }
};

bool nobodyWrites(const QString& path) {
    struct stat info {};
    const Descriptor file(openRetrying(path, O_RDONLY | O_NOFOLLOW));
    return file.valid() && ::fstat(file.get(), &info) == 0 &&
           std::time(nullptr) - info.st_mtime >= kStaleSeconds && ::flock(file.get(), LOCK_EX | LOCK_NB) == 0;
}

} // namespace

std::optional<FileError> saveBytes(const QString& path, const QByteArray& bytes) {
    const Target target(path);
    if (auto fault = target.fault())
        return fault;
    return target.isPlain() ? writeBeside(target.path, target.replaced(), bytes)
                            : writeDirectly(target.path, bytes);
}

std::optional<FailedFile> saveTogether(const std::vector<FileBytes>& files) {
    if (files.size() == 1) {
        auto error = saveBytes(files.front().path, files.front().bytes);
        return error ? std::optional(FailedFile{files.front().path, *error}) : std::nullopt;
    }
    std::vector<std::unique_ptr<Beside>> written;
    for (const FileBytes& file : files) {
        const Target target(file.path);
        auto fault = target.fault();
        if (!fault && !target.isPlain())
            fault = FileError{{}, QStringLiteral("is no file; name a file for each")};
        auto beside = fault ? nullptr : std::make_unique<Beside>(target.path);
        if (!fault)
            fault = beside->write(target.replaced(), file.bytes);
        if (fault)
            return FailedFile{file.path, *fault};
        written.push_back(std::move(beside));
    }
    for (const auto& file : written)
        file->keepOld();
    for (std::size_t i = 0; i < written.size(); ++i)
        if (auto error = written[i]->put()) {
            for (std::size_t put = i; put-- > 0;)
                written[put]->takeBack();
            return FailedFile{files[i].path, *error};
        }
    if (auto error = notYetSafe(written.front()->target()))
        return FailedFile{files.front().path, *error};
    return std::nullopt;
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
