// SPDX-License-Identifier: MIT
// Two screens: the offscreen platform has them when a file says so, for a whole program. So this program
// starts itself once more.
#include "tests/ui/lecture/lecture_support.h"
#include "ui/lecture/lecture_view.h"
#include "ui/lecture/screens.h"

#include <QCoreApplication>
#include <QFile>
#include <QGuiApplication>
#include <QProcess>
#include <QScreen>
#include <QTemporaryDir>

namespace tailpoint {
namespace TAILPOINT_FILE {

const char* const kTwoScreens = R"({"screens": [
  {"name": "desk", "x": 0, "y": 0, "width": 1366, "height": 768, "logicalDpi": 96, "logicalBaseDpi": 96, "dpr": 1},
  {"name": "room", "x": 1366, "y": 0, "width": 1920, "height": 1080, "logicalDpi": 96, "logicalBaseDpi": 96,
   "dpr": 1}]})";

TEST(LectureOnTwoScreens, TakesTheOneWhereTheWindowIsNot) {
    const QList<QScreen*> screens = QGuiApplication::screens();
    if (screens.size() < 2)
        GTEST_SKIP() << "one screen; LectureScreens starts this with two";
    EXPECT_EQ(screenForLecture(screens[0]), screens[1]);
    EXPECT_EQ(screenForLecture(screens[1]), screens[0]);
    LectureView view(ThemeName::slate, false);
    view.begin(sampleNamed("survey-raft.json"), ConstructionKind::parallelogram, {},
               screenForLecture(screens[0]));
    QCoreApplication::processEvents();
    EXPECT_EQ(view.screen(), screens[1]);
    EXPECT_EQ(view.geometry(), screens[1]->geometry());
    // Unplugged: what the platform says then.
    emit qGuiApp->screenRemoved(screens[1]);
    QCoreApplication::processEvents();
    EXPECT_TRUE(view.isVisible());
    EXPECT_EQ(view.geometry(), screens[0]->geometry());
    EXPECT_GT(view.stops().size(), 1U);
}

TEST(LectureScreens, ASecondScreenIsFoundAndLeftWhenItGoes) {
    QTemporaryDir folder;
    const QString path = folder.filePath(QStringLiteral("screens.json"));
    QFile file(path);
    ASSERT_TRUE(file.open(QIODevice::WriteOnly));
    file.write(kTwoScreens);
    file.close();
    QProcess again;
    QProcessEnvironment environment = QProcessEnvironment::systemEnvironment();
    environment.insert(QStringLiteral("QT_QPA_PLATFORM"), QStringLiteral("offscreen:configfile=") + path);
    again.setProcessEnvironment(environment);
    again.start(QCoreApplication::applicationFilePath(),
                {QStringLiteral("--gtest_filter=LectureOnTwoScreens.*")});
    ASSERT_TRUE(again.waitForFinished(60'000));
    const QByteArray said = again.readAllStandardOutput();
    EXPECT_EQ(again.exitCode(), 0) << said.toStdString();
    EXPECT_FALSE(said.contains("SKIPPED")) << said.toStdString();
    EXPECT_TRUE(said.contains("1 test")) << said.toStdString();
}

} // namespace TAILPOINT_FILE
} // namespace tailpoint
