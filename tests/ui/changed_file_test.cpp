// SPDX-License-Identifier: MIT
// What the window says of a file that was changed under it, and of a copy that a crash left.
#include "panel_support.h"

#include "ui/document/recovery.h"
#include "window_fixture.h"

#include <QApplication>
#include <QDir>
#include <QLabel>
#include <QMessageBox>
#include <QPushButton>
#include <QTimer>
#include <utime.h>

namespace tailpoint::test {
namespace TAILPOINT_FILE {

class ChangedUnder : public OpenWindow {
protected:
    void SetUp() override {
        OpenWindow::SetUp();
        ASSERT_TRUE(window->saveTo(file("raft.json")));
    }
    void changeOnTheDisk() {
        QByteArray bytes = bytesOf(file("raft.json"));
        bytes.replace("340", "200");
        QFile out(file("raft.json"));
        ASSERT_TRUE(out.open(QIODevice::WriteOnly) && out.write(bytes) == bytes.size());
    }
    /// Away to another window and back.
    void turnToIt() {
        QWidget other;
        other.show();
        other.activateWindow();
        ASSERT_TRUE(QTest::qWaitForWindowActive(&other));
        other.hide();
        window->activateWindow();
        ASSERT_TRUE(QTest::qWaitForWindowActive(window.get()));
    }
    QWidget& bar() { return *child<QWidget>(*window, "notice"); }
    QString notice() { return bar().isVisible() ? child<QLabel>(*window, "noticeText")->text() : QString(); }
    QPushButton& offer(const char* name) { return *child<QPushButton>(*window, name); }
    /// A crash leaves this copy of the raft's file, saved now.
    void leaveACopy(const Sketch& sketch) {
        SketchDocument lost;
        Autosave autosave(lost, recoveryFolder());
        lost.restore(sketch, file("raft.json"), window->document().file().known());
        ASSERT_TRUE(lost.isModified());
        autosave.flush();
        ASSERT_TRUE(QFile::copy(autosave.file(), file("kept")));
        m_copy = autosave.file();
    }
    void startAgain() {
        window.reset();
        ASSERT_TRUE(QFile::rename(file("kept"), m_copy));
        open();
        ASSERT_TRUE(waitFor([&] { return offer("noticeOffer0").isVisible(); }));
    }
    QString m_copy;
};

TEST_F(ChangedUnder, TurningToTheWindowSaysSoOnceAndOffersWhatCanBeDone) {
    turnToIt();
    EXPECT_EQ(notice(), QString());
    changeOnTheDisk();
    turnToIt();
    EXPECT_TRUE(notice().startsWith(QStringLiteral("raft.json was changed by another program, ")))
        << notice().toStdString();
    EXPECT_EQ(offer("noticeOffer0").text(), QStringLiteral("&Reload it"));
    EXPECT_FALSE(offer("noticeOffer1").isVisible()) << "nothing of one's own to be saved";
    child<QAbstractButton>(*window, "noticeClose")->click();
    turnToIt();
    EXPECT_EQ(notice(), QString()) << "it was said";
}

TEST_F(ChangedUnder, ReloadingIsOneClickAndOneUndo) {
    change();
    changeOnTheDisk();
    turnToIt();
    EXPECT_TRUE(offer("noticeOffer1").isVisible()) << "or to save one's own beside it";
    QTest::mouseClick(&offer("noticeOffer0"), Qt::LeftButton);
    EXPECT_EQ(window->document().sketch().forces[0].magnitude.value, 200);
    EXPECT_FALSE(window->isWindowModified());
    EXPECT_EQ(notice(), QString());
    trigger("undo");
    EXPECT_EQ(window->document().sketch().forces[0].magnitude.value, 360);
}

TEST_F(ChangedUnder, ACopyThatIsOlderThanTheFileSaysSoAndDoesNotReplaceItUnasked) {
    Sketch lost = window->document().sketch();
    lost.title = "Lost and found";
    leaveACopy(lost);
    changeOnTheDisk();
    const QByteArray theirs = bytesOf(file("raft.json"));
    const utimbuf later{0, ::time(nullptr) + 3600};
    ASSERT_EQ(::utime(qPrintable(file("raft.json")), &later), 0);
    startAgain();
    EXPECT_TRUE(notice().contains(QStringLiteral("Work that was not saved: Lost and found (raft.json)")))
        << notice().toStdString();
    EXPECT_TRUE(notice().contains(QStringLiteral("The file itself is newer"))) << notice().toStdString();
    QTest::mouseClick(&offer("noticeOffer0"), Qt::LeftButton);
    ASSERT_EQ(window->document().sketch(), lost);
    bool asked = false;
    QTimer::singleShot(0, window.get(), [&] {
        auto* box = qobject_cast<QMessageBox*>(QApplication::activeModalWidget());
        asked = box && box->objectName() == QLatin1String("changedQuestion");
        if (box)
            QTest::keyClick(box, Qt::Key_Escape);
    });
    trigger("fileSave");
    EXPECT_TRUE(asked);
    EXPECT_EQ(bytesOf(file("raft.json")), theirs);
    EXPECT_TRUE(window->isWindowModified());
    ASSERT_TRUE(window->saveTo(file("found.json")));
}

TEST_F(ChangedUnder, ACopyThatIsNewerThanTheFileSaysSoAndIsSavedWithoutAQuestion) {
    Sketch lost = window->document().sketch();
    lost.title = "Lost and found";
    const utimbuf earlier{0, ::time(nullptr) - 3600};
    ASSERT_EQ(::utime(qPrintable(file("raft.json")), &earlier), 0);
    leaveACopy(lost);
    startAgain();
    EXPECT_TRUE(notice().contains(QStringLiteral("It is newer than the file"))) << notice().toStdString();
    QTest::mouseClick(&offer("noticeOffer0"), Qt::LeftButton);
    trigger("fileSave");
    EXPECT_FALSE(window->isWindowModified());
    EXPECT_TRUE(bytesOf(file("raft.json")).contains("Lost and found"));
}

TEST_F(ChangedUnder, TheOfferOfACopyIsNotReplacedByTheLineAboutAChange) {
    leaveACopy(window->document().sketch());
    window.reset();
    ASSERT_TRUE(QFile::rename(file("kept"), m_copy));
    window = std::make_unique<MainWindow>();
    ASSERT_TRUE(window->openPath(file("raft.json")));
    window->show();
    ASSERT_TRUE(waitFor([&] { return offer("noticeOffer0").isVisible(); }));
    const QString offered = notice();
    changeOnTheDisk();
    turnToIt();
    EXPECT_EQ(notice(), offered);
}

} // namespace TAILPOINT_FILE
} // namespace tailpoint::test
