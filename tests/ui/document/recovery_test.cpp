// A copy of unsaved work: there while it is needed, gone when it isn't, found after a crash.
#include "ui/document/recovery.h"

#include <gtest/gtest.h>

#include <QDir>
#include <QFileInfo>
#include <QTemporaryDir>

namespace tailpoint {
namespace {

class Recovering : public testing::Test {
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

TEST_F(Recovering, ARelativeStateFolderIsIgnored) {
    const QByteArray before = qgetenv("XDG_STATE_HOME");
    qputenv("XDG_STATE_HOME", "state");
    EXPECT_EQ(recoveryFolder(), QDir::homePath() + QStringLiteral("/.local/state/tailpoint/recovery"));
    qputenv("XDG_STATE_HOME", "/somewhere");
    EXPECT_EQ(recoveryFolder(), QStringLiteral("/somewhere/tailpoint/recovery"));
    before.isNull() ? qunsetenv("XDG_STATE_HOME") : qputenv("XDG_STATE_HOME", before);
}

} // namespace
} // namespace tailpoint
