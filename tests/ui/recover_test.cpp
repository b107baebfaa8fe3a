// SPDX-License-Identifier: MIT
// What a crash left, offered until it is answered; and the version before this sitting's first save.
#include "panel_support.h"

#include "ui/document/recovery.h"
#include "ui/window/recover_dialog.h"
#include "window_fixture.h"

#include <QApplication>
#include <QDir>
#include <QLabel>
#include <QListWidget>
#include <QMenu>
#include <QPushButton>
#include <QTimer>

namespace tailpoint::test {
namespace TAILPOINT_FILE {

class Recovered : public OpenWindow {
protected:
    /// Sketches of these titles, left by crashes; the window is started again.
    void leave(const QStringList& titles) {
        for (const QString& title : titles) {
            SketchDocument lost;
            Autosave autosave(lost, recoveryFolder());
            Sketch sketch = raft();
            sketch.title = title.toStdString();
            ASSERT_FALSE(lost.edit(sketch, QStringLiteral("work")));
            autosave.leave();
        }
        window.reset();
        open();
        ASSERT_TRUE(waitFor([&] { return offer().isVisible(); }));
    }
    QPushButton& offer() { return *child<QPushButton>(*window, "noticeOffer0"); }
    QString notice() {
        return child<QWidget>(*window, "notice")->isVisible() ? child<QLabel>(*window, "noticeText")->text()
                                                              : QString();
    }
    /// What the menu's dialog lists; then this button, on the row of this number.
    QStringList choose(int row, const char* button) {
        QStringList listed;
        QTimer::singleShot(0, window.get(), [&] {
            auto* dialog = qobject_cast<RecoverDialog*>(QApplication::activeModalWidget());
            ASSERT_TRUE(dialog);
            auto* list = child<QListWidget>(*dialog, "recoverList");
            for (int i = 0; i < list->count(); ++i)
                listed << list->item(i)->text();
            list->setCurrentRow(row);
            button ? child<QPushButton>(*dialog, button)->click() : dialog->reject();
        });
        trigger("fileRecover");
        return listed;
    }
};

TEST_F(Recovered, AnOfferOutlivesSavingAndOpeningAndOtherLines) {
    leave({QStringLiteral("Lost and found")});
    ASSERT_TRUE(window->saveTo(file("mine.json")));
    EXPECT_TRUE(notice().contains(QStringLiteral("Lost and found")));
    ASSERT_TRUE(window->openPath(file("mine.json")));
    EXPECT_TRUE(notice().contains(QStringLiteral("Lost and found")));
    EXPECT_FALSE(window->openPath(file("none.json")));
    EXPECT_TRUE(notice().startsWith(QStringLiteral("Not opened")));
    child<QAbstractButton>(*window, "noticeClose")->click();
    EXPECT_TRUE(notice().contains(QStringLiteral("Lost and found"))) << "it waited below";
    child<QAbstractButton>(*window, "noticeClose")->click();
    EXPECT_EQ(notice(), QString());
    EXPECT_EQ(choose(0, nullptr).size(), 1) << "and is to be had from the menu";
    choose(0, "recoverBringBack");
    EXPECT_EQ(window->document().sketch().title, "Lost and found");
    EXPECT_TRUE(window->isWindowModified());
    EXPECT_TRUE(waitFor([&] { return findRecoveries().isEmpty(); }));
}

TEST_F(Recovered, SeveralAreToldAndChosenFrom) {
    leave({QStringLiteral("first"), QStringLiteral("second"), QStringLiteral("third")});
    EXPECT_TRUE(notice().contains(QStringLiteral("third")) &&
                notice().contains(QStringLiteral("File › Recover")))
        << notice().toStdString();
    const QStringList listed = choose(2, "recoverBringBack");
    ASSERT_EQ(listed.size(), 3);
    EXPECT_TRUE(listed[0].startsWith(QStringLiteral("third")) &&
                listed[2].startsWith(QStringLiteral("first")));
    EXPECT_EQ(window->document().sketch().title, "first");
    EXPECT_TRUE(notice().contains(QStringLiteral("third"))) << "the others are still offered";
    QTest::mouseClick(child<QPushButton>(*window, "noticeOffer1"), Qt::LeftButton); // thrown away
    EXPECT_TRUE(notice().contains(QStringLiteral("second")) && !notice().contains(QStringLiteral("third")));
}

TEST_F(Recovered, TheVersionBeforeTheFirstSaveIsOneStepAway) {
    Sketch sketch = raft();
    ASSERT_FALSE(window->document().edit(sketch, QStringLiteral("raft")));
    ASSERT_TRUE(window->saveTo(file("raft.json")));
    open(); // another sitting
    ASSERT_TRUE(window->openPath(file("raft.json")));
    change();
    ASSERT_TRUE(window->saveTo(file("raft.json")));
    auto* action = child<QAction>(*window, "filePrevious");
    emit qobject_cast<QMenu*>(action->parent())->aboutToShow();
    ASSERT_TRUE(action->isEnabled());
    action->trigger();
    EXPECT_EQ(window->document().sketch().forces[0].magnitude.value, 340);
    EXPECT_TRUE(window->isWindowModified());
    trigger("undo");
    EXPECT_EQ(window->document().sketch().forces[0].magnitude.value, 360);
    EXPECT_FALSE(window->isWindowModified());
}

TEST_F(Recovered, AFileThatAnotherMachineHasIsTakenOverOrACopyMade) {
    ASSERT_TRUE(window->saveTo(file("raft.json")));
    trigger("fileNew");
    QFile lock(file(".raft.json.tailpoint-lock"));
    ASSERT_TRUE(lock.open(QIODevice::WriteOnly) && lock.write("7\ntailpoint\nlab7\n\nits boot\n") > 0);
    lock.close();
    ASSERT_TRUE(window->openPath(file("raft.json")));
    EXPECT_TRUE(notice().contains(QStringLiteral("process 7 on lab7, since "))) << notice().toStdString();
    EXPECT_FALSE(window->saveTo(file("raft.json")));
    EXPECT_TRUE(notice().startsWith(QString::fromUtf8("Not saved – raft.json is open in another")));
    QTest::mouseClick(&offer(), Qt::LeftButton);
    EXPECT_EQ(notice(), QString());
    EXPECT_TRUE(window->saveTo(file("raft.json")));
}

} // namespace TAILPOINT_FILE
} // namespace tailpoint::test
