// SPDX-License-Identifier: MIT
// The window and its files: what is asked before changes are lost, what cannot be read, what a crash left.
#include "panel_support.h"

#include "ui/document/recovery.h"
#include "window_fixture.h"

#include <QApplication>
#include <QDir>
#include <QDropEvent>
#include <QFile>
#include <QMenu>
#include <QMessageBox>
#include <QMimeData>
#include <QSettings>
#include <QTableView>
#include <QTest>

namespace tailpoint::test {
namespace TAILPOINT_FILE {

class WindowFilesTest : public OpenWindow {
protected:
    QString notice() { return child<QLabel>(*window, "noticeText")->text(); }
};

TEST_F(WindowFilesTest, ASketchComesBackFromItsFile) {
    change();
    EXPECT_TRUE(window->isWindowModified());
    const Sketch kept = window->document().sketch();
    ASSERT_TRUE(window->saveTo(file("raft.json")));
    EXPECT_EQ(child<QLabel>(*window, "hint")->accessibleName(), QStringLiteral("Saved in raft.json."));
    EXPECT_FALSE(window->isWindowModified());
    EXPECT_TRUE(window->windowTitle().startsWith(QStringLiteral("raft.json[*]")));
    trigger("fileNew");
    EXPECT_TRUE(window->document().sketch().forces.empty());
    ASSERT_TRUE(window->openPath(file("raft.json")));
    EXPECT_EQ(window->document().sketch(), kept);
}

TEST_F(WindowFilesTest, AFileThatCantBeReadNeverReplacesTheSketch) {
    change();
    const Sketch kept = window->document().sketch();
    QFile bad(file("bad.json"));
    ASSERT_TRUE(bad.open(QIODevice::WriteOnly));
    bad.write("{ \"format\": \"tailpoint-sketch\", \"version\": 1, \"forces\": [ { \"name\": \"P\", ");
    bad.close();
    for (const char* name : {"bad.json", "missing.json", "."}) {
        EXPECT_FALSE(window->openPath(file(name))) << name;
        EXPECT_FALSE(notice().isEmpty()) << name;
        EXPECT_TRUE(child<QWidget>(*window, "notice")->isVisible()) << name;
        EXPECT_EQ(window->document().sketch(), kept) << name;
    }
    EXPECT_EQ(window->document().history().count(), 1) << "nor its undo steps";
}

TEST_F(WindowFilesTest, ASketchWithAKeyThatCouldChangeAVerdictIsNotOpenedAndTheNoticeNamesIt) {
    change();
    const Sketch kept = window->document().sketch();
    QFile limited(file("limited.json"));
    ASSERT_TRUE(limited.open(QIODevice::WriteOnly));
    limited.write(R"({"format": "tailpoint-sketch", "version": 1, "units": {"force": "N", "angle": "deg"},
        "forces": [{"name": "P", "magnitude": 340, "direction": 25, "sector": 300}]})");
    limited.close();
    EXPECT_FALSE(window->openPath(file("limited.json")));
    EXPECT_TRUE(child<QWidget>(*window, "notice")->isVisible());
    EXPECT_TRUE(notice().contains(QStringLiteral("sector"))) << notice().toStdString();
    EXPECT_TRUE(notice().contains(QStringLiteral("forces[0]"))) << notice().toStdString();
    EXPECT_EQ(window->document().sketch(), kept);
}

TEST_F(WindowFilesTest, AsksBeforeChangesAreLostAndStaysOnCancel) {
    change();
    bool asked = false;
    answerNext(QMessageBox::Cancel, asked);
    EXPECT_FALSE(window->close());
    EXPECT_TRUE(asked);
    EXPECT_TRUE(window->isVisible());
    asked = false;
    answerNext(QMessageBox::Discard, asked);
    EXPECT_TRUE(window->close());
    EXPECT_TRUE(asked);
}

TEST_F(WindowFilesTest, SavesWhenAskedToBeforeItCloses) {
    change();
    ASSERT_TRUE(window->saveTo(file("raft.json")));
    Sketch sketch = window->document().sketch();
    sketch.forces[0].magnitude.value = 375;
    window->document().edit(sketch, QStringLiteral("again"));
    bool asked = false;
    answerNext(QMessageBox::Save, asked);
    EXPECT_TRUE(window->close());
    EXPECT_TRUE(asked);
    open();
    ASSERT_TRUE(window->openPath(file("raft.json")));
    EXPECT_EQ(window->document().sketch().forces[0].magnitude.value, 375);
}

TEST_F(WindowFilesTest, NothingIsAskedWhereNothingWasChanged) {
    EXPECT_TRUE(window->close());
}

TEST_F(WindowFilesTest, DamagedSettingsAreNoReasonNotToStart) {
    {
        QSettings settings(QStringLiteral("Tailpoint"), QStringLiteral("Tailpoint"));
        settings.setValue(QStringLiteral("window/geometry"), QStringLiteral("x"));
        settings.setValue(QStringLiteral("window/theme"), 7);
        settings.setValue(QStringLiteral("newSheet/figures"), -40);
        settings.setValue(QStringLiteral("newSheet/forceUnit"), QStringLiteral("stone"));
        settings.setValue(QStringLiteral("files/recent"), 3);
    }
    open();
    trigger("fileNew");
    EXPECT_EQ(window->document().sketch().figures, 3);
    EXPECT_EQ(window->document().sketch().forceUnit, ForceUnit::N);
}

TEST_F(WindowFilesTest, RecentFilesAreListedNewestFirst) {
    ASSERT_TRUE(window->saveTo(file("one.json")));
    ASSERT_TRUE(window->saveTo(file("two.json")));
    auto* menu = child<QMenu>(*window, "recentMenu");
    emit menu->aboutToShow();
    ASSERT_GE(menu->actions().size(), 2);
    EXPECT_EQ(menu->actions()[0]->text(), QStringLiteral("two.json"));
    menu->actions()[1]->trigger();
    EXPECT_TRUE(window->document().path().endsWith(QStringLiteral("one.json")));
}

TEST_F(WindowFilesTest, AFileDroppedOnTheWindowIsOpened) {
    change();
    ASSERT_TRUE(window->saveTo(file("dropped.json")));
    const Sketch kept = window->document().sketch();
    trigger("fileNew");
    QMimeData data;
    data.setUrls({QUrl::fromLocalFile(file("dropped.json"))});
    QDragEnterEvent enter(QPoint(300, 300), Qt::CopyAction, &data, Qt::LeftButton, Qt::NoModifier);
    QApplication::sendEvent(window.get(), &enter);
    EXPECT_TRUE(enter.isAccepted());
    QDropEvent drop(QPointF(300, 300), Qt::CopyAction, &data, Qt::LeftButton, Qt::NoModifier);
    QApplication::sendEvent(window.get(), &drop);
    EXPECT_EQ(window->document().sketch(), kept);
}

/// A copy of this sketch as a program that crashed leaves it; its file.
QString leftByACrash(const Sketch& lost) {
    const QString left = recoveryFolder();
    EXPECT_TRUE(QDir().mkpath(left));
    QString copy;
    {
        SketchDocument other;
        Autosave autosave(other, left);
        EXPECT_FALSE(other.edit(lost, QStringLiteral("work")));
        autosave.flush();
        EXPECT_TRUE(QFile::copy(autosave.file(), left + QStringLiteral("/copy")));
        copy = autosave.file();
    } // closed in order: its copy goes
    EXPECT_TRUE(QFile::rename(left + QStringLiteral("/copy"), copy));
    return copy;
}

TEST_F(WindowFilesTest, WorkThatACrashLeftIsOfferedAgain) {
    Sketch lost = raft();
    lost.title = "Lost and found";
    const QFile copy(leftByACrash(lost));
    window.reset();
    open();
    auto* table = child<QTableView>(*window, "givenTable");
    const QPoint place = table->mapTo(window.get(), QPoint());
    auto* offer = child<QPushButton>(*window, "noticeOffer0");
    ASSERT_TRUE(waitFor([&] { return offer->isVisible(); }));
    EXPECT_TRUE(notice().contains(QStringLiteral("Lost and found"))) << notice().toStdString();
    QCoreApplication::processEvents();
    EXPECT_EQ(table->mapTo(window.get(), QPoint()), place) << "a hand may be in the table";
    QTest::mouseClick(offer, Qt::LeftButton);
    EXPECT_EQ(window->document().sketch(), lost);
    EXPECT_TRUE(window->isWindowModified());
    EXPECT_TRUE(waitFor([&] { return !QFile::exists(copy.fileName()); })) << "its successor is there";
}

TEST_F(WindowFilesTest, WorkWithoutATitleIsNamedByItsForces) {
    Sketch lost = raft();
    lost.title.clear();
    leftByACrash(lost);
    window.reset();
    open();
    ASSERT_TRUE(waitFor([&] { return child<QPushButton>(*window, "noticeOffer0")->isVisible(); }));
    EXPECT_TRUE(notice().contains(QStringLiteral("without a title (P, Q)"))) << notice().toStdString();
}

} // namespace TAILPOINT_FILE
} // namespace tailpoint::test
