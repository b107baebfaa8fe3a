// SPDX-License-Identifier: MIT
// Saving never harms the file that was there; reading refuses in words.
#include "ui/files/files.h"

#include <gtest/gtest.h>

#include <QDir>
#include <QFile>
#include <QFileInfo>
#include <QTemporaryDir>
#include <csignal>
#include <cstring>
#include <fcntl.h>
#include <random>
#include <sys/file.h>
#include <sys/mount.h>
#include <sys/resource.h>
#include <sys/socket.h>
#include <sys/stat.h>
#include <sys/time.h>
#include <sys/un.h>
#include <sys/wait.h>
#include <thread>
#include <unistd.h>
#include <utime.h>

namespace tailpoint {
namespace TAILPOINT_FILE {

const QByteArray kOld = "the old sketch, still good\n";

class Files : public ::testing::Test {
protected:
    QString path(const char* name) const { return m_folder.filePath(QString::fromLatin1(name)); }
    void put(const QString& file, const QByteArray& bytes) {
        QFile out(file);
        ASSERT_TRUE(out.open(QIODevice::WriteOnly));
        ASSERT_EQ(out.write(bytes), bytes.size());
    }
    static QByteArray bytesOf(const QString& file) {
        QFile in(file);
        return in.open(QIODevice::ReadOnly) ? in.readAll() : QByteArray("unreadable");
    }
    static QStringList everythingIn(const QString& folder) {
        return QDir(folder).entryList(QDir::AllEntries | QDir::Hidden | QDir::System | QDir::NoDotAndDotDot);
    }
    static std::string said(const std::optional<FileError>& error) {
        return error ? error->line().toStdString() : "nothing";
    }
    QTemporaryDir m_folder;
};

TEST_F(Files, SavingWritesEveryByteAndLeavesNothingBeside) {
    EXPECT_FALSE(saveBytes(path("a.json"), "one"));
    EXPECT_FALSE(saveBytes(path("a.json"), "two"));
    EXPECT_EQ(bytesOf(path("a.json")), "two");
    EXPECT_EQ(everythingIn(m_folder.path()), QStringList{QStringLiteral("a.json")});
}

TEST_F(Files, SavingKeepsThePermissionsOfTheFileItReplaces) {
    put(path("a.json"), kOld);
    ASSERT_EQ(::chmod(qPrintable(path("a.json")), 0640), 0);
    EXPECT_FALSE(saveBytes(path("a.json"), "new"));
    struct stat info {};
    ASSERT_EQ(::stat(qPrintable(path("a.json")), &info), 0);
    EXPECT_EQ(info.st_mode & 0777u, 0640u);
}

TEST_F(Files, SavingThroughALinkChangesWhatItPointsToAndKeepsTheLink) {
    ASSERT_TRUE(QDir(m_folder.path()).mkdir(QStringLiteral("elsewhere")));
    put(path("elsewhere/a.json"), kOld);
    ASSERT_TRUE(QFile::link(QStringLiteral("elsewhere/a.json"), path("link.json")));
    EXPECT_FALSE(saveBytes(path("link.json"), "new"));
    EXPECT_TRUE(QFileInfo(path("link.json")).isSymLink());
    EXPECT_EQ(bytesOf(path("elsewhere/a.json")), "new");
}

TEST_F(Files, SavingThroughALinkToNothingMakesItsTarget) {
    ASSERT_TRUE(QFile::link(QStringLiteral("not-yet.json"), path("link.json")));
    EXPECT_FALSE(saveBytes(path("link.json"), "new"));
    EXPECT_TRUE(QFileInfo(path("link.json")).isSymLink());
    EXPECT_EQ(bytesOf(path("not-yet.json")), "new");
}

TEST_F(Files, SavingOntoAFolderIsRefused) {
    EXPECT_NE(said(saveBytes(m_folder.path(), "x")).find("is a folder"), std::string::npos);
}

TEST_F(Files, SavingIntoAFolderThatIsNotThereIsRefused) {
    EXPECT_NE(said(saveBytes(path("no/such/a.json"), "x")).find("folder does not exist"), std::string::npos);
}

TEST_F(Files, SavingToADeviceWritesToItAndLeavesItThere) {
    EXPECT_FALSE(saveBytes(QStringLiteral("/dev/null"), "x"));
    struct stat info {};
    ASSERT_EQ(::stat("/dev/null", &info), 0);
    EXPECT_TRUE(S_ISCHR(info.st_mode));
    EXPECT_NE(said(saveBytes(QStringLiteral("/dev/full"), "x")).find("disk is full"), std::string::npos);
}

/// Runs `job` in a child process; its exit status, or -1 where a signal ended it.
template <class Job>
int inChild(Job job) {
    const pid_t child = ::fork();
    if (child == 0)
        ::_exit(job());
    int status = 0;
    ::waitpid(child, &status, 0);
    return WIFEXITED(status) ? WEXITSTATUS(status) : -1;
}

TEST_F(Files, BeyondAFileSizeLimitTheOldFileStandsAndTheErrorIsSaid) {
    put(path("a.json"), kOld);
    const QString file = path("a.json");
    const int status = inChild([&] {
        turnFileSignalsIntoErrors();
        const rlimit limit{4096, 4096};
        if (::setrlimit(RLIMIT_FSIZE, &limit) != 0)
            return 99;
        const auto error = saveBytes(file, QByteArray(10'000, 'x'));
        return error && error->message.contains(QLatin1String("larger than the system allows")) ? 0 : 1;
    });
    EXPECT_EQ(status, 0);
    EXPECT_EQ(bytesOf(file), kOld);
    EXPECT_EQ(everythingIn(m_folder.path()).size(), 1);
}

/// A small file system in memory, where mounting is permitted.
class SmallDisk {
public:
    explicit SmallDisk(const QString& folder) : m_folder(folder) {
        QDir().mkpath(folder);
        m_mounted = ::mount("tmpfs", qPrintable(folder), "tmpfs", 0, "size=64k") == 0;
    }
    SmallDisk(const SmallDisk&) = delete;
    SmallDisk& operator=(const SmallDisk&) = delete;
    ~SmallDisk() {
        if (m_mounted)
            ::umount(qPrintable(m_folder));
    }
    bool mounted() const { return m_mounted; }

private:
    QString m_folder;
    bool m_mounted = false;
};

TEST_F(Files, OnAFullDiskTheOldFileStandsAndTheErrorIsSaid) {
    const QString disk = path("disk");
    const SmallDisk small(disk);
    if (!small.mounted())
        GTEST_SKIP() << "mounting a small tmpfs is not permitted here (it takes root): "
                     << std::strerror(errno);
    const QString file = disk + QStringLiteral("/a.json");
    put(file, kOld);
    const auto error = saveBytes(file, QByteArray(200'000, 'x'));
    EXPECT_NE(said(error).find("disk is full"), std::string::npos) << said(error);
    EXPECT_EQ(bytesOf(file), kOld);
    EXPECT_EQ(everythingIn(disk).size(), 1);
    EXPECT_FALSE(saveBytes(file, "fits"));
    EXPECT_EQ(bytesOf(file), "fits");
}

TEST_F(Files, OnADiskWithNoRoomForASecondCopyTheOldFileStands) {
    const QString disk = path("disk");
    const SmallDisk small(disk);
    if (!small.mounted())
        GTEST_SKIP() << "mounting a small tmpfs is not permitted here (it takes root): "
                     << std::strerror(errno);
    const QString file = disk + QStringLiteral("/a.json");
    const QByteArray old(40'000, 'o');
    put(file, old);
    EXPECT_TRUE(saveBytes(file, QByteArray(40'000, 'n')));
    EXPECT_EQ(bytesOf(file), old);
}

TEST_F(Files, SavingThatIsKilledAtAnyMomentLeavesAWholeFile) {
    constexpr unsigned kSeed = 4711;
    constexpr int kKills = 40;
    std::mt19937 random(kSeed);
    const QString file = path("a.json");
    const QByteArray a(50'000, 'a'), b(50'000, 'b');
    ASSERT_FALSE(saveBytes(file, a));
    for (int i = 0; i < kKills; ++i) {
        const itimerval blow{{0, 0}, {0, std::uniform_int_distribution<suseconds_t>(1, 3000)(random)}};
        const pid_t child = ::fork();
        if (child == 0) {
            saveBytes(file, b);
            ::setitimer(ITIMER_REAL, &blow, nullptr); // nobody catches the signal: it ends the process
            for (;;) {
                saveBytes(file, a);
                saveBytes(file, b);
            }
        }
        int ended = 0;
        ASSERT_EQ(::waitpid(child, &ended, 0), child);
        ASSERT_TRUE(WIFSIGNALED(ended) && WTERMSIG(ended) == SIGALRM);
        const QByteArray now = bytesOf(file);
        ASSERT_TRUE(now == a || now == b)
            << "seed " << kSeed << ", kill " << i << ": " << now.size() << " bytes";
    }
}

TEST_F(Files, StaleTemporariesAreSweptAndLivingOnesAreNot) {
    const QString stale = path(".tailpoint-saving-stale"), fresh = path(".tailpoint-saving-fresh"),
                  held = path(".tailpoint-saving-held"), other = path(".other-saving");
    for (const QString& file : {stale, fresh, held, other})
        put(file, "x");
    const utimbuf longAgo{0, 0};
    for (const QString& file : {stale, held, other})
        ASSERT_EQ(::utime(qPrintable(file), &longAgo), 0);
    // The lock is another process's: it holds it until its pipe is closed.
    int ready[2], done[2];
    ASSERT_EQ(::pipe(ready), 0);
    ASSERT_EQ(::pipe(done), 0);
    const pid_t child = ::fork();
    if (child == 0) {
        ::close(done[1]);
        const int fd = ::open(qPrintable(held), O_RDWR);
        char c = 0;
        if (::flock(fd, LOCK_EX) != 0 || ::write(ready[1], "x", 1) != 1 || ::read(done[0], &c, 1) < 0)
            ::_exit(1);
        ::_exit(0);
    }
    char c = 0;
    ASSERT_EQ(::read(ready[0], &c, 1), 1);
    EXPECT_EQ(sweepStaleTemporaries(m_folder.path()), 1);
    for (const int fd : {ready[0], ready[1], done[0], done[1]})
        ::close(fd);
    ::waitpid(child, nullptr, 0);
    EXPECT_FALSE(QFileInfo::exists(stale));
    EXPECT_TRUE(QFileInfo::exists(fresh) && QFileInfo::exists(held) && QFileInfo::exists(other));
}

std::string refused(const QString& file) {
    const auto result = readBytes(file);
    const auto* error = std::get_if<FileError>(&result);
    return error ? error->line().toStdString() : "was read";
}

TEST_F(Files, ReadingAFolderIsRefused) {
    EXPECT_EQ(refused(m_folder.path()), "is a folder; name a file in it");
}

TEST_F(Files, ReadingWhatIsNotThereIsRefused) {
    EXPECT_EQ(refused(path("none.json")), "does not exist; check the name");
}

TEST_F(Files, ReadingMoreThan16MiBIsRefusedWithoutReadingIt) {
    QFile sparse(path("huge.json"));
    ASSERT_TRUE(sparse.open(QIODevice::WriteOnly));
    ASSERT_TRUE(sparse.resize(200LL * 1000 * 1000));
    sparse.close();
    EXPECT_EQ(refused(path("huge.json")), "is larger than 16 MiB, which no sketch is; name another file");
}

TEST_F(Files, ReadingADeviceOrASocketIsRefused) {
    EXPECT_EQ(refused(QStringLiteral("/dev/zero")), "is a device, not a file; name a file");
    const int fd = ::socket(AF_UNIX, SOCK_STREAM, 0);
    sockaddr_un name{};
    name.sun_family = AF_UNIX;
    std::strncpy(name.sun_path, qPrintable(path("s")), sizeof name.sun_path - 1);
    ASSERT_EQ(::bind(fd, reinterpret_cast<const sockaddr*>(&name), sizeof name), 0);
    EXPECT_NE(refused(path("s")).find("socket"), std::string::npos);
    EXPECT_NE(said(saveBytes(path("s"), "x")).find("socket"), std::string::npos);
    ::close(fd);
}

TEST_F(Files, APipeIsRefusedAndNotWaitedFor) {
    ASSERT_EQ(::mkfifo(qPrintable(path("pipe")), 0600), 0);
    EXPECT_EQ(refused(path("pipe")), "is a pipe, not a file; name a file");
    EXPECT_EQ(said(saveBytes(path("pipe"), "x")),
              "not saved: nobody reads the pipe; start its reader first or save elsewhere");
}

TEST_F(Files, APipeThatTheShellGaveIsRead) {
    int ends[2];
    ASSERT_EQ(::pipe(ends), 0);
    ASSERT_EQ(::write(ends[1], "given", 5), 5);
    ::close(ends[1]);
    const auto read = readBytes(QStringLiteral("/dev/fd/%1").arg(ends[0]));
    ::close(ends[0]);
    const auto* bytes = std::get_if<QByteArray>(&read);
    ASSERT_TRUE(bytes);
    EXPECT_EQ(*bytes, "given");
}

TEST_F(Files, APipeWithAReaderIsWrittenAtItsPace) {
    ASSERT_EQ(::mkfifo(qPrintable(path("pipe")), 0600), 0);
    const QByteArray much(1 << 20, 'x'); // more than a pipe holds
    QByteArray read;
    std::thread reader([&] {
        QFile in(path("pipe"));
        if (in.open(QIODevice::ReadOnly))
            read = in.readAll();
    });
    std::optional<FileError> error;
    do // until the reader is there
        error = saveBytes(path("pipe"), much);
    while (error && error->message.contains(QStringLiteral("nobody reads")));
    reader.join();
    EXPECT_EQ(said(error), "nothing");
    EXPECT_EQ(read, much);
}

TEST_F(Files, SeveralAreSavedAllOrNone) {
    put(path("a"), kOld);
    put(path("b"), kOld);
    ASSERT_TRUE(QDir(m_folder.path()).mkdir(QStringLiteral("c")));
    const std::vector<FileBytes> files{
        {path("a"), "1"}, {path("new"), "2"}, {path("c"), "3"}, {path("b"), "4"}};
    const auto failed = saveTogether(files);
    ASSERT_TRUE(failed);
    EXPECT_EQ(failed->path, path("c"));
    EXPECT_EQ(bytesOf(path("a")), kOld);
    EXPECT_EQ(everythingIn(m_folder.path()),
              (QStringList{QStringLiteral("a"), QStringLiteral("b"), QStringLiteral("c")}));
    EXPECT_FALSE(saveTogether({files[0], files[1], files[3]}));
    EXPECT_EQ(bytesOf(path("a")) + bytesOf(path("new")) + bytesOf(path("b")), "124");
    EXPECT_EQ(everythingIn(m_folder.path()).size(), 4);
}

} // namespace TAILPOINT_FILE
} // namespace tailpoint
