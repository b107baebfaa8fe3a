// SPDX-License-Identifier: MIT
// Ends that nobody asked for: a signal, a display that goes, a disk that fails. What is not saved is there at
// the next start. And what is said of a file that another window or machine has, or that is not there yet.
#include "tests/whole/window/left_behind.h"
#include "tests/whole/window/raft_fixture.h"
#include "tests/whole/window/x_server.h"

#include <QFile>
#include <csignal>

using namespace whole;

namespace TAILPOINT_FILE {

class Ended : public OnTheRaft {
protected:
    bool change() { return key(QStringLiteral("Tab")) && key(QStringLiteral("Up")) && becomesModified(true); }
    QString lock() const { return m_folder.filePath(QStringLiteral(".survey-raft.json.tailpoint-lock")); }
};

TEST_F(Ended, BySignalItLeavesItsWorkToTheNextStartAndNoLock) {
    ASSERT_TRUE(change());
    ASSERT_TRUE(QFile::exists(lock()));
    m_program->signal(SIGTERM); // at once: what is pending goes with it
    EXPECT_EQ(m_program->waitForEnd(), 128 + SIGTERM);
    EXPECT_EQ(m_program->complaints().toStdString(), "");
    const QList<double> copies = copiesIn(m_program->home());
    ASSERT_EQ(copies.size(), 1);
    EXPECT_GT(copies.front(), 340);
    EXPECT_TRUE(locksIn(recoveryOf(m_program->home())).isEmpty());
    EXPECT_FALSE(QFile::exists(lock()));

    Program next({}, m_program->home()); // a question that is open holds nothing up
    ASSERT_NE(next.window(), 0);
    ASSERT_TRUE(eventually([&] { return key(QStringLiteral("alt+b")) && next.title().contains(u'*'); }));
    ASSERT_TRUE(key(QStringLiteral("ctrl+q")));
    ASSERT_TRUE(eventually([&] { return next.asks(QStringLiteral("Unsaved changes")); }));
    next.signal(SIGHUP);
    EXPECT_EQ(next.waitForEnd(), 128 + SIGHUP);
    EXPECT_EQ(copiesIn(m_program->home()), copies);
}

TEST(ADisplayThatGoes, LeavesTheWorkAndNoLock) {
    const QByteArray usual = qgetenv("DISPLAY");
    const QTemporaryDir folder;
    const QString file = copyOfSample(QStringLiteral("survey-raft.json"), folder);
    auto server = std::make_unique<XServer>(1366, 768);
    qputenv("DISPLAY", QByteArray::fromStdString(server->display()));
    Program program({file});
    ASSERT_NE(program.window(), 0);
    ASSERT_TRUE(eventually([&] {
        return key(QStringLiteral("Tab")) && key(QStringLiteral("Up")) && program.title().contains(u'*');
    }));
    server.reset();
    qputenv("DISPLAY", usual);
    EXPECT_NE(program.waitForEnd(), 0);
    const QList<double> copies = copiesIn(program.home());
    ASSERT_EQ(copies.size(), 1);
    EXPECT_GT(copies.front(), 340);
    EXPECT_TRUE(locksIn(recoveryOf(program.home())).isEmpty());
    EXPECT_TRUE(locksIn(QDir(folder.path())).isEmpty());
}

TEST_F(Ended, AFileOfAVanishedMachineIsTakenOverByOneKey) {
    QFile vanished(m_folder.filePath(QStringLiteral(".other.json.tailpoint-lock")));
    ASSERT_TRUE(vanished.open(QIODevice::WriteOnly) &&
                vanished.write("7\ntailpoint\nlab7\n\nits boot\n") > 0);
    vanished.close();
    const QString other = m_folder.filePath(QStringLiteral("other.json"));
    ASSERT_TRUE(QFile::copy(m_file, other));
    ASSERT_TRUE(key(QStringLiteral("ctrl+o")));
    ASSERT_TRUE(eventually([&] { return m_program->asks(QStringLiteral("Open a sketch")); }));
    ASSERT_TRUE(type(other) && key(QStringLiteral("Return")));
    ASSERT_TRUE(eventually([&] { return m_program->title().startsWith(QStringLiteral("other.json")); }));
    ASSERT_TRUE(m_program->turnTo() && change());
    ASSERT_TRUE(key(QStringLiteral("alt+o"))); // Take it over
    ASSERT_TRUE(eventually([&] {
        QFile now(vanished.fileName());
        return now.open(QIODevice::ReadOnly) && !now.readAll().contains("lab7");
    }));
    ASSERT_TRUE(key(QStringLiteral("ctrl+s")) && becomesModified(false));
    EXPECT_GT(number(force(readJson(other), 0), "magnitude"), 340);
}

TEST(AFileThatIsNotThereYet, IsBegunWhereThatIsWanted) {
    const QTemporaryDir folder;
    const QString file = folder.filePath(QStringLiteral("new.json"));
    Program program({file});
    ASSERT_NE(program.window(), 0);
    EXPECT_FALSE(program.title().contains(QStringLiteral("new.json"))) << "not unasked";
    ASSERT_TRUE(eventually([&] {
        return key(QStringLiteral("alt+b")) && program.title().startsWith(QStringLiteral("new.json"));
    }));
    EXPECT_FALSE(QFile::exists(file));
    ASSERT_TRUE(key(QStringLiteral("ctrl+s")));
    EXPECT_TRUE(eventually([&] { return QFile::exists(file); }));
}

TEST(ADiskThatFails, LeavesTheFileAndTheWorkInTheWindow) {
    const QTemporaryDir folder;
    const QString file = copyOfSample(QStringLiteral("survey-raft.json"), folder);
    const double before = readJson(file)[QStringLiteral("forces")]
                              .toArray()[0]
                              .toObject()[QStringLiteral("magnitude")]
                              .toDouble();
    qputenv("LD_PRELOAD", TAILPOINT_FAULTS_LIBRARY);
    qputenv("TAILPOINT_FAULTS", "fsync=EIO:1:1000000");
    const QByteArray options = qgetenv("ASAN_OPTIONS");
    qputenv("ASAN_OPTIONS", options + ":verify_asan_link_order=0");
    Program program({file});
    for (const char* name : {"LD_PRELOAD", "TAILPOINT_FAULTS"})
        qunsetenv(name);
    qputenv("ASAN_OPTIONS", options);
    ASSERT_NE(program.window(), 0);
    ASSERT_TRUE(eventually([&] {
        return key(QStringLiteral("Tab")) && key(QStringLiteral("Up")) && program.title().contains(u'*');
    }));
    ASSERT_TRUE(key(QStringLiteral("ctrl+s")));
    const QImage said = screenWhere([&](const QImage& now) {
        return countNear(now, program.frame().adjusted(0, 60, 0, -300), kWarning) > 20;
    });
    EXPECT_FALSE(said.isNull()) << "a line that says why";
    EXPECT_TRUE(program.title().contains(u'*'));
    EXPECT_EQ(readJson(file)[QStringLiteral("forces")]
                  .toArray()[0]
                  .toObject()[QStringLiteral("magnitude")]
                  .toDouble(),
              before);
    EXPECT_EQ(
        QDir(folder.path()).entryList({QStringLiteral(".tailpoint-saving*")}, QDir::Files | QDir::Hidden),
        QStringList());
}

} // namespace TAILPOINT_FILE
