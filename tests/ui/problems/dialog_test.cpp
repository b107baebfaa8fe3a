// SPDX-License-Identifier: MIT
// The dialog of problem sheets: what is chosen is made and remembered, what is wrong is said in it, a sheet
// that is cancelled leaves nothing, and all of it goes by keyboard.
#include "tests/ui/window_fixture.h"
#include "ui/window/page_preview.h"
#include "ui/window/problems_dialog.h"

#include <QCheckBox>
#include <QComboBox>
#include <QDir>
#include <QLabel>
#include <QLineEdit>
#include <QListWidget>
#include <QProgressBar>
#include <QPushButton>
#include <QScreen>
#include <QScrollArea>
#include <QSpinBox>

namespace tailpoint::test {
namespace TAILPOINT_FILE {

class ProblemsWindow : public OpenWindow {
protected:
    ProblemsDialog& ask() { return OpenWindow::ask<ProblemsDialog>("problemSheet"); }
    QString out() const { return folder.filePath(QStringLiteral("out/sheet")); }
    void SetUp() override {
        OpenWindow::SetUp();
        ASSERT_TRUE(QDir(folder.path()).mkdir(QStringLiteral("out")));
    }
    QStringList left() const {
        return QDir(folder.filePath(QStringLiteral("out")))
            .entryList(QDir::AllEntries | QDir::Hidden | QDir::NoDotAndDotDot);
    }
    static void end(ProblemsDialog& dialog) {
        EXPECT_TRUE(QTest::qWaitFor([&] { return !dialog.isAtWork(); }, 60'000));
    }
};

TEST_F(ProblemsWindow, MakesWhatIsChosenAndRemembersIt) {
    ProblemsDialog& dialog = ask();
    auto* families = child<QListWidget>(dialog, "problemsFamilies");
    ASSERT_EQ(families->count(), 11); // the families of README
    families->item(0)->setCheckState(Qt::Unchecked);
    families->item(8)->setCheckState(Qt::Checked); // slopes
    child<QSpinBox>(dialog, "problemsCount")->setValue(2);
    child<QSpinBox>(dialog, "problemsSeed")->setValue(77);
    child<QComboBox>(dialog, "problemsLevel")->setCurrentIndex(1);
    child<QCheckBox>(dialog, "problemsGrid")->setChecked(true);
    child<QLineEdit>(dialog, "problemsFolder")->setText(out());
    dialog.make();
    end(dialog);
    EXPECT_FALSE(dialog.isVisible()) << child<QLabel>(dialog, "problemsFault")->text().toStdString();
    EXPECT_EQ(QDir(out()).entryList(QDir::AllEntries | QDir::NoDotAndDotDot),
              QStringList({QStringLiteral("answers.csv"), QStringLiteral("key.pdf"),
                           QStringLiteral("sheet.pdf"), QStringLiteral("sketches")}));
    EXPECT_TRUE(bytesOf(out() + QStringLiteral("/sheet.pdf")).startsWith("%PDF-"));
    EXPECT_TRUE(bytesOf(out() + QStringLiteral("/sketches/0002.json")).contains("\"slopes\""));
    EXPECT_EQ(child<QLineEdit>(ask(), "problemsFolder")->text(), out() + QStringLiteral("-2")); // a free name
    open();
    ProblemsDialog& again = ask();
    EXPECT_EQ(child<QListWidget>(again, "problemsFamilies")->item(8)->checkState(), Qt::Checked);
    EXPECT_EQ(child<QListWidget>(again, "problemsFamilies")->item(0)->checkState(), Qt::Unchecked);
    EXPECT_EQ(child<QSpinBox>(again, "problemsCount")->value(), 2);
    EXPECT_EQ(child<QSpinBox>(again, "problemsSeed")->value(), 77);
    EXPECT_EQ(child<QComboBox>(again, "problemsLevel")->currentData().toInt(), 2);
    EXPECT_TRUE(child<QCheckBox>(again, "problemsGrid")->isChecked());
}

TEST_F(ProblemsWindow, OpensWithinTheScreenAndItsChoicesScroll) {
    ProblemsDialog& dialog = ask();
    EXPECT_LE(dialog.height(), dialog.screen()->availableSize().height());
    dialog.resize(dialog.width(), 470); // 1920x1080 at twice the scale has 540
    EXPECT_LE(dialog.height(), 476);
    auto* last = child<QCheckBox>(dialog, "problemsGrid");
    auto* area = child<QScrollArea>(dialog, "problemsChoices");
    area->ensureWidgetVisible(last);
    EXPECT_TRUE(area->viewport()->rect().contains(last->mapTo(area->viewport(), last->rect().center())));
    EXPECT_TRUE(child<QPushButton>(dialog, "problemsMake")->isVisible());
    const auto* where = child<QLineEdit>(dialog, "problemsFolder"); // in sight without being scrolled to
    EXPECT_FALSE(area->isAncestorOf(where));
    EXPECT_TRUE(dialog.rect().contains(where->mapTo(&dialog, where->rect().center())));
    EXPECT_GE(where->mapTo(&dialog, QPoint(0, 0)).y(), area->mapTo(&dialog, area->rect().bottomLeft()).y());
    EXPECT_FALSE(child<QProgressBar>(dialog, "problemsProgress")->isVisible()) << "nothing is made yet";
}

TEST_F(ProblemsWindow, OneThatIsCancelledLeavesNothing) {
    ProblemsDialog& dialog = ask();
    child<QSpinBox>(dialog, "problemsCount")->setValue(3000);
    child<QLineEdit>(dialog, "problemsFolder")->setText(out());
    dialog.make();
    EXPECT_TRUE(dialog.isAtWork());
    EXPECT_FALSE(child<QSpinBox>(dialog, "problemsCount")->isEnabled());
    ASSERT_TRUE(QTest::qWaitFor([&] { return !left().isEmpty(); }, 60'000));
    QTest::keyClick(&dialog, Qt::Key_Escape);
    end(dialog);
    EXPECT_TRUE(dialog.isVisible());
    EXPECT_EQ(left(), QStringList());
    EXPECT_FALSE(child<QLabel>(dialog, "problemsFault")->text().isEmpty());
    QTest::keyClick(&dialog, Qt::Key_Escape);
    EXPECT_FALSE(dialog.isVisible());
}

TEST_F(ProblemsWindow, SaysWhatIsWrongAndWritesNothing) {
    ProblemsDialog& dialog = ask();
    auto* fault = child<QLabel>(dialog, "problemsFault");
    const auto refused = [&](const QString& part) {
        dialog.make();
        end(dialog);
        return dialog.isVisible() && fault->text().contains(part);
    };
    child<QLineEdit>(dialog, "problemsFolder")->setText(folder.filePath(QStringLiteral("absent/sheet")));
    EXPECT_TRUE(refused(QStringLiteral("cannot be written"))) << fault->text().toStdString();
    child<QLineEdit>(dialog, "problemsFolder")->setText(folder.filePath(QStringLiteral("out/..")));
    EXPECT_TRUE(refused(QStringLiteral("not empty"))) << fault->text().toStdString();
    child<QLineEdit>(dialog, "problemsFolder")->setText(out());
    child<QLineEdit>(dialog, "problemsRoster")->setText(folder.filePath(QStringLiteral("names.txt")));
    EXPECT_TRUE(refused(QStringLiteral("names.txt"))) << fault->text().toStdString();
    EXPECT_EQ(left(), QStringList());
}

TEST_F(ProblemsWindow, OnesOwnSketchesAreASheetInTheirOrder) {
    const QString samples = QStringLiteral(TAILPOINT_SAMPLES "/");
    ProblemsDialog& dialog = ask();
    child<QComboBox>(dialog, "problemsSource")->setCurrentIndex(1);
    EXPECT_FALSE(child<QPushButton>(dialog, "problemsMake")->isEnabled()); // there is none yet
    EXPECT_FALSE(child<QSpinBox>(dialog, "problemsSeed")->isEnabled());
    dialog.addOwn({samples + QStringLiteral("survey-raft.json"), samples + QStringLiteral("two-answers.json"),
                   samples + QStringLiteral("survey-raft.json")});
    auto* list = child<QListWidget>(dialog, "problemsOwn");
    ASSERT_EQ(list->count(), 3);
    child<QPushButton>(dialog, "problemsRemoveOwn")->click(); // the last, which is the current one
    ASSERT_EQ(list->count(), 2);
    list->setCurrentRow(1);
    EXPECT_FALSE(child<QPushButton>(dialog, "problemsDownOwn")->isEnabled());
    child<QPushButton>(dialog, "problemsUpOwn")->click();
    EXPECT_EQ(list->currentRow(), 0);
    child<QLineEdit>(dialog, "problemsFolder")->setText(out());
    dialog.make();
    end(dialog);
    EXPECT_FALSE(dialog.isVisible()) << child<QLabel>(dialog, "problemsFault")->text().toStdString();
    EXPECT_EQ(bytesOf(out() + QStringLiteral("/sketches/0001.json")),
              bytesOf(samples + QStringLiteral("two-answers.json")));
    EXPECT_EQ(bytesOf(out() + QStringLiteral("/sketches/0002.json")),
              bytesOf(samples + QStringLiteral("survey-raft.json")));
}

TEST_F(ProblemsWindow, ASketchWithoutAnAnswerIsSaidAndNothingIsWritten) {
    ProblemsDialog& dialog = ask();
    child<QComboBox>(dialog, "problemsSource")->setCurrentIndex(1);
    dialog.addOwn({QStringLiteral(TAILPOINT_SAMPLES "/too-few-given.json")});
    child<QLineEdit>(dialog, "problemsFolder")->setText(out());
    dialog.make();
    end(dialog);
    EXPECT_TRUE(dialog.isVisible());
    EXPECT_TRUE(
        child<QLabel>(dialog, "problemsFault")->text().contains(QStringLiteral("too-few-given.json")));
    EXPECT_EQ(left(), QStringList());
}

TEST_F(ProblemsWindow, WhatIsOnTheSheetIsChosenAndRemembered) {
    ProblemsDialog& dialog = ask();
    auto* task = child<QComboBox>(dialog, "problemsTask");
    task->setCurrentIndex(task->findData(QStringLiteral("find-slip")));
    auto* form = child<QComboBox>(dialog, "problemsForm");
    form->setCurrentIndex(form->findData(QStringLiteral("json")));
    child<QSpinBox>(dialog, "problemsCount")->setValue(1);
    child<QLineEdit>(dialog, "problemsFolder")->setText(out());
    dialog.make();
    end(dialog);
    EXPECT_TRUE(bytesOf(out() + QStringLiteral("/sheet.json")).contains("\"flawed\""));
    open();
    EXPECT_EQ(child<QComboBox>(ask(), "problemsTask")->currentData().toString(), QStringLiteral("find-slip"));
}

TEST_F(ProblemsWindow, ThePreviewIsThePageAsItWillBe) {
    ProblemsDialog& dialog = ask();
    auto* preview = child<PagePreview>(dialog, "problemsPreview");
    const QImage first = preview->grab().toImage();
    child<QSpinBox>(dialog, "problemsSeed")->setValue(2);
    EXPECT_TRUE(QTest::qWaitFor([&] { return preview->grab().toImage() != first; }));
    child<QListWidget>(dialog, "problemsFamilies")->item(0)->setCheckState(Qt::Unchecked);
    EXPECT_FALSE(child<QPushButton>(dialog, "problemsMake")->isEnabled());
}

TEST_F(ProblemsWindow, GoesByKeyboard) {
    ProblemsDialog& dialog = ask();
    auto* families = child<QListWidget>(dialog, "problemsFamilies");
    ASSERT_TRUE(QTest::qWaitForWindowActive(&dialog));
    ASSERT_EQ(dialog.focusWidget(), families);
    QTest::keyClick(families, Qt::Key_Down);
    QTest::keyClick(families, Qt::Key_Space);
    EXPECT_EQ(families->item(1)->checkState(), Qt::Checked);
    // Every field is reached by Tab and comes before the buttons.
    QStringList reached;
    for (int i = 0; i < 24; ++i) {
        QTest::keyClick(dialog.focusWidget(), Qt::Key_Tab);
        reached << dialog.focusWidget()->objectName();
    }
    for (const char* name : {"problemsTask", "problemsLevel", "problemsCount", "problemsSeed",
                             "problemsRoster", "problemsForm", "problemsPaper", "problemsFigures",
                             "problemsSolutions", "problemsGrid", "problemsFolder", "problemsMake"})
        EXPECT_TRUE(reached.contains(QLatin1String(name))) << name;
    EXPECT_LT(reached.indexOf(QStringLiteral("problemsFolder")),
              reached.indexOf(QStringLiteral("problemsMake")));
}

} // namespace TAILPOINT_FILE
} // namespace tailpoint::test
