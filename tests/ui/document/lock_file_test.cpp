// SPDX-License-Identifier: MIT
// Whose a lock is: of a living process, of one that ended, of another start of the machine, of another
// machine.
#include "ui/document/lock_file.h"

#include <gtest/gtest.h>

#include <QCoreApplication>
#include <QDir>
#include <QFile>
#include <QSysInfo>
#include <QTemporaryDir>
#include <sys/wait.h>
#include <unistd.h>
#include <utime.h>

namespace tailpoint {
namespace TAILPOINT_FILE {

using Taking = LockFile::Taking;

class Locks : public ::testing::Test {
protected:
    QString path() const { return m_folder.filePath(QStringLiteral("lock")); }
    void put(const QByteArray& text) const {
        QFile file(path());
        ASSERT_TRUE(file.open(QIODevice::WriteOnly) && file.write(text) == text.size());
    }
    static QByteArray lock(qint64 process, const QByteArray& host, const QByteArray& boot,
                           const QByteArray& start = {}) {
        return QByteArray::number(process) + "\ntailpoint\n" + host + '\n' + QSysInfo::machineUniqueId() +
               '\n' + boot + '\n' + start + '\n';
    }
    Taking taken() const { return LockFile(path()).take(); }
    static QByteArray host() { return QSysInfo::machineHostName().toUtf8(); }
    static QByteArray boot() { return QSysInfo::bootUniqueId(); }
    static qint64 self() { return QCoreApplication::applicationPid(); }
    /// Of a process that was and is no more.
    static qint64 endedProcess() {
        const pid_t child = ::fork();
        if (child == 0)
            ::_exit(0);
        ::waitpid(child, nullptr, 0);
        return child;
    }
    QTemporaryDir m_folder;
};

TEST_F(Locks, OneHoldsItAndTheOtherIsToldWho) {
    LockFile first(path());
    ASSERT_EQ(first.take(), Taking::held);
    EXPECT_TRUE(first.holds());
    LockFile second(path());
    EXPECT_EQ(second.take(), Taking::others);
    const auto holder = second.holder();
    ASSERT_TRUE(holder);
    EXPECT_EQ(holder->process, self());
    EXPECT_EQ(holder->host, QSysInfo::machineHostName());
    EXPECT_LT(std::abs(holder->since.secsTo(QDateTime::currentDateTime())), 60);
    first.giveUp();
    EXPECT_EQ(second.take(), Taking::held);
}

TEST_F(Locks, NothingIsLeftOnceItIsGivenUp) {
    EXPECT_EQ(taken(), Taking::held);
    EXPECT_TRUE(QDir(m_folder.path()).isEmpty(QDir::AllEntries | QDir::Hidden | QDir::NoDotAndDotDot));
}

TEST_F(Locks, OfAProcessThatEndedIsNobodys) {
    put(lock(endedProcess(), host(), boot()));
    EXPECT_EQ(taken(), Taking::held);
}

TEST_F(Locks, OfAnotherStartOfThisMachineIsNobodysThoughItsProcessHasANumberThatLives) {
    put(lock(self(), host(), "11111111-2222-3333-4444-555555555555"));
    EXPECT_EQ(taken(), Taking::held);
}

TEST_F(Locks, OfAProcessWhoseNumberAnotherHasByNowIsNobodys) {
    put(lock(self(), host(), boot(), "1"));
    EXPECT_EQ(taken(), Taking::held);
    put(lock(self(), host(), boot()));
    EXPECT_EQ(taken(), Taking::others) << "which can't be told where the lock doesn't say when it started";
}

TEST_F(Locks, OfAnotherMachineStandsUntilItIsTakenOver) {
    put(lock(endedProcess(), "lab7", "its boot"));
    LockFile mine(path());
    ASSERT_EQ(mine.take(), Taking::others);
    EXPECT_TRUE(mine.holder()->words().contains(QStringLiteral(" on lab7, since ")));
    EXPECT_EQ(mine.takeOver(), Taking::held);
    EXPECT_TRUE(mine.holds());
}

TEST_F(Locks, WhoLostItToAnotherLeavesTheOthersAlone) {
    LockFile first(path());
    ASSERT_EQ(first.take(), Taking::held);
    LockFile second(path());
    ASSERT_EQ(second.takeOver(), Taking::held);
    EXPECT_FALSE(first.holds());
    first.giveUp();
    EXPECT_TRUE(second.holds());
}

TEST_F(Locks, WithoutATextItIsBeingMadeOrWasCutOff) {
    put("");
    EXPECT_EQ(taken(), Taking::others);
    const utimbuf longAgo{0, 0};
    ASSERT_EQ(::utime(qPrintable(path()), &longAgo), 0);
    EXPECT_EQ(taken(), Taking::held);
}

TEST_F(Locks, AFolderThatIsNotThereTakesNone) {
    EXPECT_EQ(LockFile(m_folder.filePath(QStringLiteral("no/lock"))).take(), Taking::impossible);
}

} // namespace TAILPOINT_FILE
} // namespace tailpoint
