// SPDX-License-Identifier: MIT
// Starting the program with nobody's settings, and starting it on what can't be opened.
#include "tests/whole/window/raft_fixture.h"

#include <QFile>

using namespace whole;

namespace TAILPOINT_FILE {

TEST(TheFirstStart, OpensTheSurveyRaftWithItsArrowsAndItsSum) {
    Program program;
    ASSERT_NE(program.window(), 0) << program.complaints().toStdString();
    const QImage seen = settledScreen();
    const auto raft = findRaft(seen, program.sheet());
    ASSERT_TRUE(raft);
    EXPECT_NEAR(raft->q.length() / raft->p.length(), 275.0 / 340.0, 0.02) << "drawn to scale";
    const Arrow sum = followed(seen, raft->p.tail, -3.6, kSum);
    EXPECT_NEAR(sum.length() / raft->p.length(), 520.0 / 340.0, 0.03);
    EXPECT_FALSE(program.title().contains(u'*'));
}

TEST_F(OnTheRaft, TheTitleNamesTheFile) {
    EXPECT_TRUE(m_program->title().contains(QStringLiteral("survey-raft.json")))
        << m_program->title().toStdString();
    EXPECT_FALSE(isModified());
}

TEST(ABadFile, GivenAtTheStartLeavesTheWindowOnTheRaftAndTheFileAsItWas) {
    const QTemporaryDir folder;
    const QString path = folder.filePath(QStringLiteral("broken.json"));
    const QByteArray bytes = "{ \"format\": \"tailpoint-sketch\", \"version\": 1, \"forces\": [ { \"name\": ";
    QFile file(path);
    ASSERT_TRUE(file.open(QIODevice::WriteOnly) && file.write(bytes) == bytes.size());
    file.close();
    Program program({path});
    ASSERT_NE(program.window(), 0) << program.complaints().toStdString();
    const QImage seen = settledScreen();
    EXPECT_TRUE(findRaft(seen, program.sheet()));
    EXPECT_FALSE(program.title().contains(QStringLiteral("broken")));
    EXPECT_GT(countNear(seen, program.frame().adjusted(0, 60, 0, -300), kWarning), 20)
        << "a line that says why";
    ASSERT_TRUE(file.open(QIODevice::ReadOnly));
    EXPECT_EQ(file.readAll(), bytes);
}

TEST_F(OnTheRaft, ABadFileChosenInTheDialogLeavesTheOpenSketch) {
    const QString path = m_folder.filePath(QStringLiteral("bad.json"));
    QFile bad(path);
    ASSERT_TRUE(bad.open(QIODevice::WriteOnly) && bad.write("340 N") == 5);
    bad.close();
    ASSERT_TRUE(key(QStringLiteral("ctrl+o")));
    ASSERT_TRUE(eventually([&] { return m_program->asks(QStringLiteral("Open a sketch")); }));
    ASSERT_TRUE(type(path) && key(QStringLiteral("Return")));
    ASSERT_TRUE(eventually([&] { return !m_program->shows(QStringLiteral("Open a sketch")); }));
    const QImage seen = settledScreen();
    EXPECT_TRUE(findRaft(seen, m_program->sheet())) << keep(seen);
    EXPECT_TRUE(m_program->title().contains(QStringLiteral("survey-raft.json")));
    EXPECT_FALSE(isModified());
}

} // namespace TAILPOINT_FILE
