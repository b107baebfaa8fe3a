// SPDX-License-Identifier: MIT
// Five hundred gestures of seeded hands on the whole window; by the thousand: tests/gestured.
#include "tests/ui/hands/round.h"
#include "tests/ui/window_fixture.h"

#include <QApplication>
#include <QDir>
#include <QPalette>
#include <cstdio>

namespace tailpoint::test {
namespace TAILPOINT_FILE {

constexpr int kAtATime = 50; ///< gestures between two looks at undo

class HandsOnTheWindow : public OpenWindow {
protected:
    void SetUp() override {
        OpenWindow::SetUp();
        m_home = qgetenv("HOME");
        qputenv("HOME", folder.path().toUtf8()); // where dialogs propose to save
        QDir::setCurrent(folder.path());
    }
    void TearDown() override {
        window.reset();
        QApplication::setPalette(m_palette); // of whatever theme they left
        QDir::setCurrent(m_before);
        qputenv("HOME", m_home);
    }

private:
    QByteArray m_home;
    QPalette m_palette = QApplication::palette();
    QString m_before = QDir::currentPath();
};

TEST_F(HandsOnTheWindow, FiveHundredGesturesRaiseNoWarningAndUndoLeadsBackToTheStart) {
    const QStringList sketches = sketchesIn(folder.path());
    Warnings warnings;
    Round round(*window, warnings);
    int done = 0;
    for (const std::uint32_t seed : {20261130U, 7U}) {
        Hands hands(*window, seed);
        for (const char* name :
             {"survey-raft", "two-answers", "with-tolerance", "raft-in-weather", "kip-bearings"}) {
            const QString path = file(name) + QStringLiteral(".json");
            ASSERT_TRUE(sketches.contains(path));
            const QString fault = round.play(hands, path, done, kAtATime);
            ASSERT_TRUE(fault.isEmpty()) << "seed " << seed << ", gesture " << round.step() << " ("
                                         << hands.told().toStdString() << "): " << fault.toStdString();
            done += kAtATime;
        }
    }
    std::printf("%d gestures, %d undo steps taken back, %d sketches begun\n", done, round.undone(),
                round.replaced());
    EXPECT_EQ(done, 500);
    EXPECT_GT(round.undone(), 50) << "the hands do something";
}

} // namespace TAILPOINT_FILE
} // namespace tailpoint::test
