// SPDX-License-Identifier: MIT
// The end of the session, as its manager asks for it: what is not saved is there at the next start, and
// nobody is asked.
#ifdef TAILPOINT_HAS_SM

#include "tests/whole/window/left_behind.h"
#include "tests/whole/window/raft_fixture.h"
#include "tests/whole/window/session_manager.h"

#include <QFile>

using namespace whole;

namespace TAILPOINT_FILE {

class InASession : public ::testing::Test {
protected:
    void SetUp() override {
        ASSERT_FALSE(m_manager.address().isEmpty());
        m_file = copyOfSample(QStringLiteral("survey-raft.json"), m_folder);
        qputenv("SESSION_MANAGER", m_manager.address().toLocal8Bit());
        m_program = std::make_unique<Program>(QStringList{m_file});
        qunsetenv("SESSION_MANAGER");
        ASSERT_NE(m_program->window(), 0) << m_program->complaints().toStdString();
        ASSERT_TRUE(m_manager.waitForClient());
        ASSERT_TRUE(eventually([&] {
            return key(QStringLiteral("Tab")) && key(QStringLiteral("Up")) &&
                   m_program->title().contains(u'*');
        }));
    }
    QString lock() const { return m_folder.filePath(QStringLiteral(".survey-raft.json.tailpoint-lock")); }

    SessionManager m_manager;
    QTemporaryDir m_folder;
    QString m_file;
    std::unique_ptr<Program> m_program;
};

TEST_F(InASession, ItsEndLeavesTheWorkAndAsksNothing) {
    ASSERT_TRUE(m_manager.askToSave());
    const QList<double> kept = copiesIn(m_program->home());
    ASSERT_EQ(kept.size(), 1) << "on the disk once it is said that it is";
    EXPECT_GT(kept.front(), 340);
    ASSERT_TRUE(m_manager.sendAway());
    EXPECT_EQ(m_program->waitForEnd(), 0);
    EXPECT_EQ(m_program->complaints().toStdString(), "");
    EXPECT_EQ(copiesIn(m_program->home()), kept);
    EXPECT_TRUE(locksIn(recoveryOf(m_program->home())).isEmpty());
    EXPECT_FALSE(QFile::exists(lock()));

    Program next({}, m_program->home());
    ASSERT_NE(next.window(), 0);
    EXPECT_TRUE(eventually([&] { return key(QStringLiteral("alt+b")) && next.title().contains(u'*'); }));
}

TEST_F(InASession, AnEndThatIsCalledOffChangesNothing) {
    ASSERT_TRUE(m_manager.askToSave());
    ASSERT_TRUE(m_manager.callOff());
    ASSERT_TRUE(m_program->turnTo() && key(QStringLiteral("ctrl+s")));
    ASSERT_TRUE(eventually([&] { return !m_program->title().contains(u'*'); }));
    EXPECT_TRUE(QFile::exists(lock())) << "it is still open";
    ASSERT_TRUE(key(QStringLiteral("Up")));
    ASSERT_TRUE(eventually([&] { return m_program->title().contains(u'*'); }));
    ASSERT_TRUE(key(QStringLiteral("ctrl+q")));
    EXPECT_TRUE(eventually([&] { return m_program->asks(QStringLiteral("Unsaved changes")); }))
        << "a quit of one's own asks, as ever";
}

} // namespace TAILPOINT_FILE

#endif
