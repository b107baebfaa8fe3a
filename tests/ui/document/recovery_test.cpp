// SPDX-License-Identifier: MIT
// A copy of unsaved work: there while it is needed, gone when it isn't, found after a crash.
#include "ui/document/recovery.h"

#include "tests/ui/panel_support.h"

#include <gtest/gtest.h>

#include <QDir>
#include <QFileInfo>
#include <QSysInfo>
#include <QTemporaryDir>
#include <utime.h>

namespace tailpoint {
namespace TAILPOINT_FILE {

class Recovering : public ::testing::Test {
protected:
    void change() {
        Sketch sketch = document.sketch();
        sketch.title += "x";
        ASSERT_FALSE(document.edit(sketch, QStringLiteral("Change the title")));
    }
    QString folder() const { return m_folder.filePath(QStringLiteral("recovery")); }

    QTemporaryDir m_folder;
    SketchDocument document;
};

TEST_F(Recovering, AnUnmodifiedSketchLeavesNoCopy) {
    Autosave autosave(document, folder());
    autosave.flush();
    EXPECT_FALSE(QFileInfo::exists(autosave.file()));
}

TEST_F(Recovering, AModifiedSketchIsCopiedAndTheCopyGoesWhenItIsSaved) {
    Autosave autosave(document, folder());
    change();
    autosave.flush();
    EXPECT_TRUE(QFileInfo::exists(autosave.file()));
    ASSERT_FALSE(document.save(m_folder.filePath(QStringLiteral("a.json"))));
    autosave.flush();
    EXPECT_FALSE(QFileInfo::exists(autosave.file()));
}

TEST_F(Recovering, WhatAHandStillHoldsIsCopiedTooAndLeavesItsCopyWhenItIsTakenBack) {
    QString copy;
    {
        Autosave autosave(document, folder());
        Sketch seen = document.sketch();
        seen.title = "in the middle of a gesture";
        ASSERT_FALSE(document.preview(seen, QStringLiteral("Drag")));
        autosave.flush();
        ASSERT_TRUE(QFile::copy(autosave.file(), copy = folder() + QStringLiteral("/left.json")));
        EXPECT_TRUE(document.isPreviewing()) << "a copy ends no gesture";
        document.cancel();
        autosave.flush();
        EXPECT_FALSE(QFileInfo::exists(autosave.file()));
    }
    const QList<Recovery> found = findRecoveries(folder());
    ASSERT_EQ(found.size(), 1);
    EXPECT_EQ(found[0].sketch.title, "in the middle of a gesture");
}

TEST_F(Recovering, TheCopyOfALivingWindowIsNotOffered) {
    Autosave autosave(document, folder());
    change();
    autosave.flush();
    EXPECT_TRUE(findRecoveries(folder()).isEmpty());
}

TEST_F(Recovering, ClosingInOrderLeavesNothing) {
    {
        Autosave autosave(document, folder());
        change();
        autosave.flush();
    }
    EXPECT_TRUE(QDir(folder()).entryList(QDir::Files).isEmpty());
}

TEST_F(Recovering, AfterACrashTheVerySketchAndItsPathAreFound) {
    const QString path = m_folder.filePath(QStringLiteral("a.json"));
    ASSERT_FALSE(document.save(path));
    QString copy;
    {
        Autosave autosave(document, folder());
        change();
        autosave.flush();
        ASSERT_TRUE(QFile::copy(autosave.file(), m_folder.filePath(QStringLiteral("kept"))));
        copy = autosave.file();
    }
    ASSERT_TRUE(
        QFile::rename(m_folder.filePath(QStringLiteral("kept")), copy)); // as a crash would have left it
    const QList<Recovery> found = findRecoveries(folder());
    ASSERT_EQ(found.size(), 1);
    EXPECT_EQ(found[0].sketch, document.sketch());
    EXPECT_EQ(found[0].path, path);
    EXPECT_TRUE(found[0].saved.isValid());
    discard(found[0]);
    EXPECT_TRUE(findRecoveries(folder()).isEmpty());
}

/// What a crash left, as findRecoveries() gives it.
Recovery leftBehind(const Sketch& sketch, const QString& folder) {
    SketchDocument lost;
    Autosave autosave(lost, folder);
    EXPECT_FALSE(lost.edit(sketch, QStringLiteral("work")));
    autosave.flush();
    const QString copy = autosave.file(), aside = copy + QStringLiteral(".aside");
    EXPECT_TRUE(QFile::copy(copy, aside));
    EXPECT_FALSE(lost.save(folder + QStringLiteral("/saved"))); // its copy goes
    autosave.flush();
    EXPECT_TRUE(QFile::rename(aside, copy));
    return {copy, {}, QDateTime::currentDateTimeUtc(), {}, sketch};
}

TEST_F(Recovering, ACopyThatIsTakenOverGoesOnceItsSuccessorIsOnTheDisk) {
    Sketch sketch = document.sketch();
    sketch.title = "Lost and found";
    const Recovery left = leftBehind(sketch, folder());
    Autosave autosave(document, folder());
    document.restore(left.sketch, left.path);
    autosave.takeOver(left);
    autosave.flush();
    EXPECT_TRUE(QFileInfo::exists(autosave.file()));
    EXPECT_FALSE(QFileInfo::exists(left.file));
}

TEST_F(Recovering, ACopyThatIsTakenOverStaysWhereNoSuccessorCanBeWrittenAndGoesWithTheSavedFile) {
    Sketch sketch = document.sketch();
    sketch.title = "Lost and found";
    const Recovery left = leftBehind(sketch, folder());
    Autosave autosave(document, folder());
    ASSERT_TRUE(QDir().mkpath(autosave.file())); // a folder stands in its way
    document.restore(left.sketch, left.path);
    autosave.takeOver(left);
    change();
    autosave.flush();
    EXPECT_TRUE(QFileInfo::exists(left.file));
    EXPECT_TRUE(findRecoveries(folder()).isEmpty()) << "no other window offers it";
    ASSERT_FALSE(document.save(m_folder.filePath(QStringLiteral("a.json"))));
    autosave.flush();
    EXPECT_FALSE(QFileInfo::exists(left.file));
}

TEST_F(Recovering, ACopyKnowsTheFileThatItBelongsTo) {
    const QString path = m_folder.filePath(QStringLiteral("a.json"));
    ASSERT_FALSE(document.save(path));
    Autosave autosave(document, folder());
    change();
    autosave.flush();
    const auto copy = readBytes(autosave.file());
    EXPECT_TRUE(std::get<QByteArray>(copy).contains(document.file().known().toHex()));
}

TEST_F(Recovering, WhatIsLeftIsThereForTheNextStartAndLockedByNobody) {
    Autosave autosave(document, folder());
    change();
    autosave.leave();
    EXPECT_EQ(QDir(folder()).entryList(QDir::Files), QStringList{QFileInfo(autosave.file()).fileName()});
    const QList<Recovery> found = findRecoveries(folder());
    ASSERT_EQ(found.size(), 1);
    EXPECT_EQ(found[0].sketch, document.sketch());
}

TEST_F(Recovering, APauseIsEnoughForACopy) {
    Autosave autosave(document, folder());
    change();
    EXPECT_TRUE(test::waitFor([&] { return QFileInfo::exists(autosave.file()); }));
}

TEST_F(Recovering, AHandThatNeverPausesIsCopiedAllTheSame) {
    Autosave autosave(document, folder());
    int moves = 0;
    EXPECT_TRUE(test::waitFor([&] { // every turn of the loop is a move
        Sketch moved = document.sketch();
        moved.title = "move " + std::to_string(++moves);
        EXPECT_FALSE(document.preview(moved, QStringLiteral("Drag")));
        return QFileInfo::exists(autosave.file());
    }));
    EXPECT_TRUE(document.isPreviewing());
}

TEST_F(Recovering, WhereNoCopyCanBeWrittenItIsSaidOnceInOneLine) {
    QFile file(m_folder.filePath(QStringLiteral("file")));
    ASSERT_TRUE(file.open(QIODevice::WriteOnly));
    Autosave autosave(document, file.fileName() + QStringLiteral("/recovery"));
    QStringList said;
    QObject::connect(&autosave, &Autosave::failed, [&](const QString& why) { said << why; });
    for (int i = 0; i < 3; ++i) {
        change();
        autosave.flush();
    }
    ASSERT_TRUE(test::waitFor([&] { return !said.isEmpty(); }));
    QCoreApplication::processEvents();
    ASSERT_EQ(said.size(), 1);
    EXPECT_TRUE(said[0].contains(QStringLiteral("not saved")) && !said[0].contains(u'\n'))
        << said[0].toStdString();
}

TEST_F(Recovering, OrphansAreSweptAndWhatIsInUseStays) {
    Autosave autosave(document, folder());
    change();
    autosave.flush();
    const auto put = [&](const char* name, const QByteArray& text) {
        QFile file(folder() + u'/' + QLatin1String(name));
        EXPECT_TRUE(file.open(QIODevice::WriteOnly) && file.write(text) == text.size());
    };
    const QByteArray host = QSysInfo::machineHostName().toUtf8();
    put("1-gone.json.lock", "1\ntailpoint\n" + host + "\n\nanother boot\n");
    put("1-lab7.json.lock", "1\ntailpoint\nlab7\n\nits boot\n");
    put(".tailpoint-saving-1", "half");
    const utimbuf longAgo{0, 0};
    ASSERT_EQ(::utime(qPrintable(folder() + QStringLiteral("/.tailpoint-saving-1")), &longAgo), 0);
    sweepRecoveries(folder());
    const QString copy = QFileInfo(autosave.file()).fileName();
    EXPECT_EQ(QDir(folder()).entryList(QDir::Files | QDir::Hidden, QDir::Name),
              (QStringList{QStringLiteral("1-lab7.json.lock"), copy, copy + QStringLiteral(".lock")}));
}

TEST_F(Recovering, WhatAnotherMachineMayHaveOpenComesLastAndSaysSo) {
    Sketch sketch = document.sketch();
    sketch.title = "Lost and found";
    const Recovery here = leftBehind(sketch, folder());
    const Recovery there = leftBehind(sketch, folder());
    QFile lock(there.file + QStringLiteral(".lock"));
    ASSERT_TRUE(lock.open(QIODevice::WriteOnly) && lock.write("7\ntailpoint\nlab7\n\nits boot\n") > 0);
    lock.close();
    const QList<Recovery> found = findRecoveries(folder());
    ASSERT_EQ(found.size(), 2);
    EXPECT_EQ(found[0].file, here.file);
    EXPECT_TRUE(found[1].holder.contains(QStringLiteral("process 7 on lab7")))
        << found[1].holder.toStdString();
}

TEST_F(Recovering, ARelativeStateFolderIsIgnored) {
    const QByteArray before = qgetenv("XDG_STATE_HOME");
    qputenv("XDG_STATE_HOME", "state");
    EXPECT_EQ(recoveryFolder(), QDir::homePath() + QStringLiteral("/.local/state/tailpoint/recovery"));
    qputenv("XDG_STATE_HOME", "/somewhere");
    EXPECT_EQ(recoveryFolder(), QStringLiteral("/somewhere/tailpoint/recovery"));
    before.isNull() ? qunsetenv("XDG_STATE_HOME") : qputenv("XDG_STATE_HOME", before);
}

} // namespace TAILPOINT_FILE
} // namespace tailpoint
