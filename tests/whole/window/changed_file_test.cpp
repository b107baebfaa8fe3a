// SPDX-License-Identifier: MIT
// The open file is somebody else's too: another program's, or another window's through a link.
#include "tests/whole/window/raft_fixture.h"

#include <QFile>
#include <QFileInfo>

using namespace whole;

namespace TAILPOINT_FILE {

class Shared : public OnTheRaft {
protected:
    /// Whatever dialog there was is gone; the keys go to the window again.
    bool isBack(const char* dialog) {
        return eventually([&] { return !m_program->shows(QLatin1String(dialog)); }) && m_program->turnTo();
    }
    /// One step on the first force.
    void change() {
        ASSERT_TRUE(key(QStringLiteral("Tab")) && key(QStringLiteral("Up")));
        ASSERT_TRUE(becomesModified(true));
    }
    /// Another program puts 200 N where 340 N stood.
    QByteArray changeOnTheDisk() {
        QByteArray bytes = onDisk();
        EXPECT_TRUE(bytes.contains("340"));
        bytes.replace("340", "200");
        QFile file(m_file);
        EXPECT_TRUE(file.open(QIODevice::WriteOnly) && file.write(bytes) == bytes.size());
        return bytes;
    }
    QByteArray onDisk() const {
        QFile file(m_file);
        return file.open(QIODevice::ReadOnly) ? file.readAll() : QByteArray();
    }
    double firstMagnitude() const { return number(force(readJson(m_file), 0), "magnitude"); }
    bool asksAboutTheChange() {
        return eventually([&] { return m_program->asks(QStringLiteral("Changed on the disk")); });
    }
};

TEST_F(Shared, AFileThatAnotherProgramChangedIsNotReplacedUnasked) {
    change();
    const QByteArray theirs = changeOnTheDisk();
    ASSERT_TRUE(key(QStringLiteral("ctrl+s")));
    ASSERT_TRUE(eventually([&] { // the question, or the sketch saved
        return m_program->asks(QStringLiteral("Changed on the disk")) || !isModified();
    }));
    EXPECT_EQ(onDisk(), theirs);
    ASSERT_TRUE(asksAboutTheChange());
    ASSERT_TRUE(key(QStringLiteral("Escape")));
    ASSERT_TRUE(isBack("Changed on the disk"));
    EXPECT_TRUE(isModified());
    EXPECT_EQ(onDisk(), theirs);

    ASSERT_TRUE(key(QStringLiteral("ctrl+s")) && asksAboutTheChange() && key(QStringLiteral("Return")));
    ASSERT_TRUE(eventually([&] { return m_program->asks(QStringLiteral("Save the sketch")); }))
        << "the safe one is to save beside it";
    ASSERT_TRUE(key(QStringLiteral("Return")));
    EXPECT_TRUE(eventually([&] {
        return m_program->title().startsWith(QStringLiteral("survey-raft-2.json"));
    })) << m_program->title().toStdString();
    EXPECT_EQ(onDisk(), theirs);
    EXPECT_TRUE(QFile::exists(m_folder.filePath(QStringLiteral("survey-raft-2.json"))));
}

TEST_F(Shared, ReloadingTakesWhatStandsThereAndUndoBringsBackWhatWasHere) {
    change();
    changeOnTheDisk();
    ASSERT_TRUE(key(QStringLiteral("ctrl+s")) && asksAboutTheChange() && key(QStringLiteral("alt+l")));
    ASSERT_TRUE(becomesModified(false) && isBack("Changed on the disk"));
    EXPECT_EQ(firstMagnitude(), 200);
    ASSERT_TRUE(key(QStringLiteral("ctrl+z")));
    ASSERT_TRUE(becomesModified(true));
    saved(); // nothing is asked: what stands there is known
    EXPECT_GT(firstMagnitude(), 340);
}

TEST_F(Shared, ALinkIsNoWayRoundTheLockOfAnOpenFile) {
    const QString link = m_folder.filePath(QStringLiteral("link.json"));
    ASSERT_TRUE(QFile::link(m_file, link));
    const QByteArray before = onDisk();
    Program other({link});
    ASSERT_NE(other.window(), 0);
    settledScreen();
    ASSERT_TRUE(key(QStringLiteral("Tab")) && key(QStringLiteral("Up")));
    ASSERT_TRUE(eventually([&] { return other.title().contains(u'*'); }));
    const QImage modified = settledScreen();
    ASSERT_TRUE(key(QStringLiteral("ctrl+s")));
    const QImage after = screenWhere([&](const QImage& now) { // a line says why, or the mark is gone
        return changedPixels(modified, now, other.frame()) > 200 || !other.title().contains(u'*');
    });
    EXPECT_TRUE(other.title().contains(u'*')) << "saved" << keep(after);
    EXPECT_EQ(onDisk(), before);
}

TEST_F(Shared, SavingThroughALinkWritesItsTargetAndLeavesTheLink) {
    const QString link = m_folder.filePath(QStringLiteral("link.json"));
    ASSERT_TRUE(QFile::link(m_file, link));
    ASSERT_TRUE(key(QStringLiteral("ctrl+o")));
    ASSERT_TRUE(eventually([&] { return m_program->asks(QStringLiteral("Open a sketch")); }));
    ASSERT_TRUE(type(link) && key(QStringLiteral("Return")));
    ASSERT_TRUE(isBack("Open a sketch"));
    ASSERT_TRUE(eventually([&] { return m_program->title().startsWith(QStringLiteral("link.json")); }));
    change();
    saved();
    EXPECT_GT(firstMagnitude(), 340);
    EXPECT_TRUE(QFileInfo(link).isSymLink());
}

} // namespace TAILPOINT_FILE
