// SPDX-License-Identifier: MIT
// What a window knows of its file: whether somebody else changed it, and whose it is.
#include "ui/document/open_file.h"
#include "ui/document/previous.h"
#include "ui/document/sketch_document.h"

#include <gtest/gtest.h>

#include <QFile>
#include <QFileInfo>
#include <QTemporaryDir>
#include <fcntl.h>
#include <sys/stat.h>
#include <unistd.h>

namespace tailpoint {
namespace TAILPOINT_FILE {

class OpenFiles : public ::testing::Test {
protected:
    QString path(const char* name) const { return m_folder.filePath(QLatin1String(name)); }
    /// Into the file that is there, as an editor does that keeps the file.
    static void put(const QString& file, const QByteArray& bytes) {
        QFile out(file);
        ASSERT_TRUE(out.open(QIODevice::WriteOnly));
        ASSERT_EQ(out.write(bytes), bytes.size());
    }
    static QByteArray bytesOf(const QString& file) {
        QFile in(file);
        return in.open(QIODevice::ReadOnly) ? in.readAll() : QByteArray();
    }
    /// The raft's file, saved and open in `document`.
    QString saved(SketchDocument& document) const {
        Sketch sketch = document.sketch();
        sketch.title = "mine";
        EXPECT_FALSE(document.edit(sketch, QStringLiteral("title")));
        EXPECT_FALSE(document.save(path("a.json")));
        return path("a.json");
    }
    QTemporaryDir m_folder;
};

using Now = OpenFile::Now;

TEST_F(OpenFiles, AFileIsTheSameUntilItsBytesAreOthers) {
    SketchDocument document;
    const QString file = saved(document);
    EXPECT_EQ(document.file().now(), Now::same);
    const QByteArray mine = bytesOf(file);
    put(file, mine); // written anew with the same bytes: a copy tool, a backup
    EXPECT_EQ(document.file().now(), Now::same);
    QByteArray theirs = mine;
    theirs.replace("mine", "them"); // as long as before
    put(file, theirs);
    EXPECT_EQ(document.file().now(), Now::changed);
    EXPECT_EQ(document.file().now(), Now::changed) << "until somebody decides";
    ASSERT_FALSE(document.save(file));
    EXPECT_EQ(document.file().now(), Now::same);
}

TEST_F(OpenFiles, ANewFileInItsPlaceWithTheOldTimeAndSizeIsNoticed) {
    SketchDocument document;
    const QString file = saved(document);
    ASSERT_EQ(document.file().now(), Now::same);
    struct stat before {};
    ASSERT_EQ(::stat(qPrintable(file), &before), 0);
    QByteArray theirs = bytesOf(file);
    theirs.replace("mine", "them");
    put(path("b.json"), theirs);
    const timespec times[] = {before.st_atim, before.st_mtim};
    ASSERT_EQ(::utimensat(AT_FDCWD, qPrintable(path("b.json")), times, 0), 0);
    ASSERT_EQ(::rename(qPrintable(path("b.json")), qPrintable(file)), 0);
    EXPECT_EQ(document.file().now(), Now::changed);
}

TEST_F(OpenFiles, AFileThatIsGoneIsNotAChangedOne) {
    SketchDocument document;
    const QString file = saved(document);
    ASSERT_TRUE(QFile::remove(file));
    EXPECT_EQ(document.file().now(), Now::gone);
    EXPECT_FALSE(document.save(file));
    EXPECT_EQ(document.file().now(), Now::same);
}

TEST_F(OpenFiles, ReloadingIsOneStepThatCanBeUndone) {
    SketchDocument document;
    const QString file = saved(document);
    QByteArray theirs = bytesOf(file);
    theirs.replace("mine", "them");
    put(file, theirs);
    Sketch changed = document.sketch();
    changed.title = "changed here";
    ASSERT_FALSE(document.edit(changed, QStringLiteral("title")));
    ASSERT_FALSE(document.reload());
    EXPECT_EQ(document.sketch().title, "them");
    EXPECT_FALSE(document.isModified());
    EXPECT_EQ(document.file().now(), Now::same);
    document.undo();
    EXPECT_EQ(document.sketch().title, "changed here");
    EXPECT_TRUE(document.isModified());
    put(file, "no sketch");
    EXPECT_TRUE(document.reload());
    EXPECT_EQ(document.sketch().title, "changed here") << "the open sketch stays";
}

TEST_F(OpenFiles, ALinkLeadsToTheSameLock) {
    SketchDocument first, second;
    const QString file = saved(first);
    ASSERT_TRUE(QFile::link(QStringLiteral("a.json"), path("link.json")));
    ASSERT_TRUE(QFile::link(QStringLiteral("link.json"), path("further.json")));
    ASSERT_FALSE(second.open(path("further.json")));
    EXPECT_TRUE(second.readOnlyReason().contains(QStringLiteral("another Tailpoint window")));
    const auto refused = second.save(path("further.json"));
    ASSERT_TRUE(refused);
    EXPECT_TRUE(refused->message.contains(QStringLiteral("another Tailpoint window")));
    EXPECT_TRUE(second.save(path("link.json"))) << "nor under another name of it";
}

TEST_F(OpenFiles, TheWindowThatHasTheFileSavesItUnderEveryNameOfIt) {
    SketchDocument document;
    const QString file = saved(document);
    ASSERT_TRUE(QFile::link(QStringLiteral("a.json"), path("link.json")));
    EXPECT_FALSE(document.save(path("link.json")));
    EXPECT_TRUE(QFileInfo(path("link.json")).isSymLink());
    EXPECT_EQ(document.path(), path("link.json"));
    EXPECT_FALSE(document.open(path("a.json")));
    EXPECT_EQ(document.readOnlyReason(), QString());
}

TEST_F(OpenFiles, OnceTheOtherWindowIsClosedTheFileCanBeSaved) {
    SketchDocument second;
    {
        SketchDocument first;
        ASSERT_FALSE(second.open(saved(first)));
        ASSERT_TRUE(second.save(path("a.json")));
    }
    EXPECT_FALSE(second.save(path("a.json")));
    EXPECT_EQ(second.readOnlyReason(), QString());
}

TEST_F(OpenFiles, ALockOfAVanishedMachineIsToldAndTakenOver) {
    SketchDocument first, second;
    const QString file = saved(first);
    first.leaveFile();
    put(path(".a.json.tailpoint-lock"), "7\ntailpoint\nlab7\n\nits boot\n");
    ASSERT_FALSE(second.open(file));
    EXPECT_TRUE(second.readOnlyReason().contains(QStringLiteral("process 7 on lab7, since ")))
        << second.readOnlyReason().toStdString();
    ASSERT_TRUE(second.save(file));
    ASSERT_TRUE(second.file().takeOver());
    EXPECT_EQ(second.readOnlyReason(), QString());
    EXPECT_FALSE(second.save(file));
}

TEST_F(OpenFiles, AWindowWhoseFileWasTakenOverFindsOutWhenItSaves) {
    SketchDocument first, second;
    const QString file = saved(first);
    ASSERT_FALSE(second.open(file));
    ASSERT_TRUE(second.file().takeOver());
    const auto refused = first.save(file);
    ASSERT_TRUE(refused);
    EXPECT_TRUE(refused->message.contains(QStringLiteral("another Tailpoint window")));
    EXPECT_FALSE(second.save(file));
    ASSERT_TRUE(QFile::remove(path(".a.json.tailpoint-lock")));
    EXPECT_FALSE(second.save(file)) << "a lock that is merely gone is made again";
    EXPECT_TRUE(QFile::exists(path(".a.json.tailpoint-lock")));
}

TEST_F(OpenFiles, AFileThatIsLeftIsFreeAndTheSketchIsACopyWithoutAName) {
    SketchDocument first, second;
    const QString file = saved(first);
    first.leaveFile();
    EXPECT_EQ(first.path(), QString());
    EXPECT_EQ(first.sketch().title, "mine");
    ASSERT_FALSE(second.open(file));
    EXPECT_EQ(second.readOnlyReason(), QString());
}

TEST_F(OpenFiles, TheFirstSaveOfASittingKeepsWhatStoodThereBefore) {
    const QString file = path("a.json");
    {
        SketchDocument before;
        saved(before);
    }
    EXPECT_FALSE(hasPrevious(file));
    SketchDocument document;
    ASSERT_FALSE(document.open(file));
    for (const char* title : {"second", "third"}) {
        Sketch sketch = document.sketch();
        sketch.title = title;
        ASSERT_FALSE(document.edit(sketch, QStringLiteral("title")));
        ASSERT_FALSE(document.save(file));
        const auto previous = previousOf(file);
        ASSERT_TRUE(previous);
        EXPECT_EQ(previous->sketch.title, "mine") << title;
    }
    QByteArray theirs = bytesOf(file);
    theirs.replace("third", "them!");
    put(file, theirs);
    ASSERT_FALSE(document.save(file)) << "replaced knowingly";
    EXPECT_EQ(previousOf(file)->sketch.title, "them!");
}

TEST_F(OpenFiles, WhatIsBroughtBackKnowsTheFileAsItWasAtWork) {
    SketchDocument document;
    const QString file = saved(document);
    const QByteArray known = document.file().known();
    document.restore(document.sketch(), file, known);
    EXPECT_EQ(document.file().now(), Now::same);
    put(file, "{}");
    EXPECT_EQ(document.file().now(), Now::changed);
}

TEST_F(OpenFiles, TheSameFileIsKnownByEveryName) {
    put(path("a.json"), "x");
    put(path("b.json"), "x");
    ASSERT_TRUE(QFile::link(path("a.json"), path("soft.json")));
    ASSERT_EQ(::link(qPrintable(path("a.json")), qPrintable(path("hard.json"))), 0);
    EXPECT_TRUE(isSameFile(path("soft.json"), path("a.json")));
    EXPECT_TRUE(isSameFile(path("a.json"), path("hard.json")));
    EXPECT_FALSE(isSameFile(path("b.json"), path("a.json")));
    EXPECT_FALSE(isSameFile(path("none.json"), path("none.json")));
    EXPECT_FALSE(isSameFile(QStringLiteral("/dev/null"), QStringLiteral("/dev/null")));
    EXPECT_EQ(replacedInput({path("none.json"), path("b.json"), path("soft.json")}, path("hard.json")),
              path("soft.json"));
    EXPECT_EQ(replacedInput({path("b.json")}, path("a.json")), QString());
}

} // namespace TAILPOINT_FILE
} // namespace tailpoint
