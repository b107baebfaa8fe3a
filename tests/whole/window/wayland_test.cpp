// SPDX-License-Identifier: MIT
// The window under a compositor of Wayland: weston in a window of our X server, which hands the mouse and the
// keys on.
#include "tests/whole/window/left_behind.h"
#include "tests/whole/window/raft_fixture.h"

#include <QLibraryInfo>
#include <QStandardPaths>
#include <csignal>

using namespace whole;

namespace TAILPOINT_FILE {

bool hasWayland() {
    const QDir plugins(QLibraryInfo::path(QLibraryInfo::PluginsPath) + QStringLiteral("/platforms"));
    return !QStandardPaths::findExecutable(QStringLiteral("weston")).isEmpty() &&
           !plugins.entryList({QStringLiteral("libqwayland*")}).isEmpty();
}

class OnWayland : public ::testing::Test {
protected:
    void SetUp() override {
        if (!hasWayland())
            GTEST_SKIP() << "weston or qt6-wayland is not installed: nothing is tried under Wayland";
        m_file = copyOfSample(QStringLiteral("survey-raft.json"), m_folder);
        m_environment = homeIn(m_home.path());
        startCompositor();
        ASSERT_TRUE(eventually([this] { return QFile::exists(socket()); }))
            << m_compositor.readAll().toStdString();
        m_environment.insert(QStringLiteral("QT_QPA_PLATFORM"), QStringLiteral("wayland"));
        m_environment.insert(QStringLiteral("WAYLAND_DISPLAY"), QStringLiteral("wayland-ours"));
        m_environment.remove(QStringLiteral("DISPLAY"));
        m_program.setProcessEnvironment(m_environment);
        m_program.start(QStringLiteral(TAILPOINT_BINARY), {m_file});
        ASSERT_TRUE(eventually([this] {
            m_raft = findRaft(settledScreen(), sheet());
            return m_raft.has_value();
        })) << m_program.readAllStandardError().toStdString();
        ASSERT_TRUE(turnToClass(QStringLiteral("weston")));
        ASSERT_TRUE(eventually([this] { return isHandedOn(); })) << "the pointer comes to nobody";
    }
    void TearDown() override {
        for (QProcess* process : {&m_program, &m_compositor})
            if (process->state() != QProcess::NotRunning) {
                process->terminate();
                if (!process->waitForFinished(3'000)) {
                    process->kill();
                    process->waitForFinished();
                }
            }
    }

    /// The shell of one window that fills the screen; painted without a graphics card.
    void startCompositor() {
        QProcess help;
        help.start(QStringLiteral("weston"), {QStringLiteral("--help")});
        help.waitForFinished();
        const bool isNewer = help.readAllStandardOutput().contains("--renderer");
        m_compositor.setProcessEnvironment(m_environment);
        m_compositor.setProcessChannelMode(QProcess::MergedChannels);
        m_compositor.start(
            QStringLiteral("weston"),
            {QStringLiteral("--backend=x11-backend.so"), QStringLiteral("--shell=kiosk-shell.so"),
             isNewer ? QStringLiteral("--renderer=pixman") : QStringLiteral("--use-pixman"),
             QStringLiteral("--socket=wayland-ours"), QStringLiteral("--width=1366"),
             QStringLiteral("--height=768"), QStringLiteral("--idle-time=0"), QStringLiteral("--no-config")});
        ASSERT_TRUE(m_compositor.waitForStarted());
    }
    QString socket() const {
        return m_environment.value(QStringLiteral("XDG_RUNTIME_DIR")) + QStringLiteral("/wayland-ours");
    }
    /// The X server's window has the pointer some time before weston hands it on: then a tip shows that it
    /// may be dragged.
    bool isHandedOn() {
        moveTo(QPointF(sheet().topLeft()));
        const QImage still = settledScreen();
        moveTo(m_raft->p.tip);
        const QRect around(m_raft->p.tip.toPoint() - QPoint(20, 20), QSize(40, 40));
        return changedPixels(still, settledScreen(), around) > 20;
    }
    static QRect sheet() { return QRect(4, 110, 1366 - 4 - 440, 768 - 110 - 40); }
    double magnitude(int force) const {
        const QJsonArray forces = readJson(m_file)[QStringLiteral("forces")].toArray();
        return forces.at(force).toObject()[QStringLiteral("magnitude")].toDouble();
    }

    QTemporaryDir m_folder, m_home;
    QString m_file;
    QProcessEnvironment m_environment;
    QProcess m_compositor, m_program;
    std::optional<Raft> m_raft;
};

/// Half the length of P further along its line: 340 N and 170 N.
TEST_F(OnWayland, AForceIsDraggedAndSaved) {
    // Where weston has lost the pointer or the keys in between, or has only now given the window the whole
    // screen, once more.
    ASSERT_TRUE(eventually([&] {
        turnToClass(QStringLiteral("weston"));
        if (const auto raft = findRaft(settledScreen(), sheet()))
            m_raft = raft;
        const QPointF along = m_raft->p.tip - m_raft->p.tail;
        drag(m_raft->p.tip - along * 0.01, m_raft->p.tail + along * 0.5, QStringLiteral("shift"));
        settledScreen();
        key(QStringLiteral("ctrl+s"));
        settledScreen();
        return magnitude(0) < 200;
    })) << "P is "
        << magnitude(0);
    EXPECT_NEAR(magnitude(0), 170, 10);
    EXPECT_EQ(magnitude(1), 275);
    m_program.terminate();
    ASSERT_TRUE(m_program.waitForFinished(20'000));
    EXPECT_EQ(m_program.exitCode(), 128 + SIGTERM);
    EXPECT_EQ(m_program.readAllStandardError().toStdString(), "");
    EXPECT_TRUE(copiesIn(m_home.path()).isEmpty()) << "all is saved";
}

TEST_F(OnWayland, ACompositorThatDiesLeavesTheWorkOnTheDisk) {
    ASSERT_TRUE(eventually([this] {
        turnToClass(QStringLiteral("weston"));
        click(m_raft->p.tip - (m_raft->p.tip - m_raft->p.tail) * 0.01);
        settledScreen();
        key(QStringLiteral("Up"));
        settledScreen();
        const QList<double> copies = copiesIn(m_home.path());
        return copies.size() == 1 && copies.front() > 340;
    })) << "unsaved work is on the disk after a pause";
    m_compositor.kill();
    ASSERT_TRUE(m_program.waitForFinished(20'000));
    EXPECT_EQ(m_program.exitStatus(), QProcess::NormalExit) << "no crash";
    EXPECT_NE(m_program.exitCode(), 0);
    EXPECT_EQ(copiesIn(m_home.path()).size(), 1);
    EXPECT_EQ(magnitude(0), 340);

    Program next({m_file}, m_home.path()); // on X: the lock of who ended is nobody's
    ASSERT_NE(next.window(), 0) << next.complaints().toStdString();
    EXPECT_TRUE(eventually([&] { return key(QStringLiteral("alt+b")) && next.title().contains(u'*'); }));
    ASSERT_TRUE(key(QStringLiteral("ctrl+s")));
    EXPECT_TRUE(eventually([this] { return magnitude(0) > 340; }));
}

} // namespace TAILPOINT_FILE
