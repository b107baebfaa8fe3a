// SPDX-License-Identifier: MIT
// Names typed into the real file dialog: their endings, and the question before files are replaced.
#include "window_fixture.h"

#include "ui/canvas/canvas.h"
#include "ui/window/export_dialog.h"
#include "ui/window/handout_dialog.h"
#include "ui/window/save_name.h"

#include <QApplication>
#include <QComboBox>
#include <QFileDialog>
#include <QLabel>
#include <QLineEdit>
#include <QMessageBox>
#include <QPushButton>
#include <QTimer>

namespace tailpoint::test {
namespace TAILPOINT_FILE {

/// What a hand does in the dialogs that come up, one after the other.
class SaveNames : public OpenWindow {
protected:
    void SetUp() override {
        OpenWindow::SetUp();
        m_hand.setInterval(5);
        QObject::connect(&m_hand, &QTimer::timeout, [this] { answer(); });
        m_hand.start();
    }
    void put(const char* name) {
        QFile out(file(name));
        ASSERT_TRUE(out.open(QIODevice::WriteOnly) && out.write("kept") == 4);
    }
    bool isKept(const char* name) const { return bytesOf(file(name)) == "kept"; }

    QStringList m_typed;    ///< names still to be typed; none left: Escape
    QStringList m_pressed;  ///< object names of buttons still to be pressed in questions; none left: Escape
    QStringList m_asked;    ///< the questions that came
    QStringList m_proposed; ///< the names that the dialogs proposed

private:
    void answer() {
        QWidget* modal = QApplication::activeModalWidget();
        if (auto* box = qobject_cast<QMessageBox*>(modal))
            return press(*box);
        auto* dialog = qobject_cast<QFileDialog*>(modal);
        auto* name = dialog ? dialog->findChild<QLineEdit*>(QStringLiteral("fileNameEdit")) : nullptr;
        if (!name || !name->isVisible())
            return;
        dialog->activateWindow();
        name->setFocus();
        if (!name->hasFocus())
            return; // without it the dialog writes what is chosen in its list over what is typed
        m_proposed << name->text();
        if (m_typed.isEmpty())
            return void(QTest::keyClick(name, Qt::Key_Escape));
        name->setText(m_typed.takeFirst());
        QTest::keyClick(name, Qt::Key_Return);
    }
    void press(QMessageBox& box) {
        m_asked << box.text();
        if (m_pressed.isEmpty())
            return void(QTest::keyClick(&box, Qt::Key_Escape));
        box.findChild<QPushButton*>(m_pressed.takeFirst())->click();
    }
    QTimer m_hand;
};

TEST_F(SaveNames, TheEndingIsPutOnBeforeItIsAskedWhetherAFileMayBeReplaced) {
    put("taken.json");
    m_typed << file("taken") << file("free");
    m_pressed << QStringLiteral("chooseAnotherName");
    trigger("fileSaveAs");
    ASSERT_EQ(m_asked, QStringList{QStringLiteral("taken.json is there already. Replace it?")});
    EXPECT_EQ(m_proposed.last(), QStringLiteral("taken.json")) << "the name is there to be changed";
    EXPECT_TRUE(isKept("taken.json"));
    EXPECT_EQ(window->document().path(), file("free.json"));

    m_typed << file("taken.json");
    m_pressed << QStringLiteral("replaceFiles");
    trigger("fileSaveAs");
    EXPECT_EQ(m_asked.size(), 2) << "once";
    EXPECT_EQ(window->document().path(), file("taken.json"));
    EXPECT_TRUE(bytesOf(file("taken.json")).contains("tailpoint-sketch"));
}

TEST_F(SaveNames, CancelAndEscapeInTheQuestionSaveNothing) {
    put("taken.json");
    m_typed << file("taken");
    trigger("fileSaveAs"); // Escape
    EXPECT_EQ(m_asked.size(), 1);
    EXPECT_TRUE(isKept("taken.json"));
    EXPECT_EQ(window->document().path(), QString());
}

TEST_F(SaveNames, ANameWithAnotherEndingIsAskedAboutAndKeepsIt) {
    m_typed << file("raft.no. 3") << file("v1.2") << file("notes.txt");
    m_pressed << QStringLiteral("addEnding") << QStringLiteral("addEnding");
    for (const char* name : {"raft.no. 3.json", "v1.2.json", "notes.txt.json"}) {
        trigger("fileSaveAs");
        EXPECT_EQ(window->document().path(), file(name));
    }
    EXPECT_EQ(m_asked,
              (QStringList{QStringLiteral("v1.2 does not end in .json, as this kind of file does."),
                           QStringLiteral("notes.txt does not end in .json, as this kind of file does.")}));
    m_typed << file("raft.tailpoint");
    trigger("fileSaveAs");
    EXPECT_EQ(window->document().path(), file("raft.tailpoint")) << "the other ending of a sketch";
    EXPECT_EQ(m_asked.size(), 2);
    m_typed << file("other.txt") << file("other.json");
    m_pressed << QStringLiteral("chooseAnotherName");
    trigger("fileSaveAs");
    EXPECT_EQ(m_proposed.last(), QStringLiteral("other.txt")) << "to be changed";
    EXPECT_EQ(window->document().path(), file("other.json"));
    m_typed << file("third.txt"); // Escape
    trigger("fileSaveAs");
    EXPECT_EQ(window->document().path(), file("other.json"));
    m_typed << file("figure.svg");
    trigger("fileSaveAs");
    EXPECT_FALSE(QFile::exists(file("figure.svg")) || QFile::exists(file("figure.svg.json")));
    EXPECT_TRUE(child<QLabel>(*window, "noticeText")->text().contains(QStringLiteral("Export figure")));
}

TEST_F(SaveNames, AllStagesAreAskedAboutInOneQuestionWithTheirCount) {
    for (const char* name :
         {"k-0.svg", "k-1.svg", "k-2.svg", "k-3.svg", "k-4.svg", "k-5.svg", "k-6.svg", "k-7.svg", "k-8.svg"})
        put(name);
    ExportDialog& dialog = ask<ExportDialog>("fileExport");
    auto* stage = child<QComboBox>(dialog, "exportStage");
    stage->setCurrentIndex(stage->findData(-2));
    m_typed << file("k");
    child<QPushButton>(dialog, "exportSave")->click();
    ASSERT_EQ(m_asked.size(), 1);
    EXPECT_EQ(m_asked.front(), QString::fromUtf8("9 files are there already: k-0.svg, k-1.svg … k-8.svg. "
                                                 "Replace them?"));
    EXPECT_TRUE(isKept("k-0.svg") && isKept("k-8.svg"));
    ASSERT_TRUE(QFile::remove(file("k-8.svg")));
    m_typed << file("k.svg") << file("k.pdf");
    m_pressed << QStringLiteral("chooseAnotherName");
    child<QPushButton>(dialog, "exportSave")->click();
    EXPECT_TRUE(m_asked.last().startsWith(QStringLiteral("8 of the 9 files are there already")));
    EXPECT_EQ(m_asked.size(), 2) << "a PDF has pages: one file, which is free";
    EXPECT_TRUE(bytesOf(file("k.pdf")).startsWith("%PDF"));
    EXPECT_TRUE(isKept("k-0.svg"));
}

TEST_F(SaveNames, AFigureOfAVersionGetsItsEndingAndAnUnknownOneIsRefusedUnasked) {
    put("raft.doc");
    ExportDialog& dialog = ask<ExportDialog>("fileExport");
    m_typed << file("raft.doc");
    child<QPushButton>(dialog, "exportSave")->click();
    EXPECT_TRUE(m_asked.isEmpty() && isKept("raft.doc"));
    EXPECT_TRUE(child<QLabel>(dialog, "exportFault")->text().contains(QStringLiteral(".svg")));
    m_typed << file("v1.2");
    m_pressed << QStringLiteral("addEnding");
    child<QPushButton>(dialog, "exportSave")->click();
    EXPECT_TRUE(bytesOf(file("v1.2.svg")).contains("</svg>"));
}

TEST_F(SaveNames, AHandoutIsAskedAboutByItsFinalName) {
    put("sheet.html");
    HandoutDialog& dialog = ask<HandoutDialog>("fileHandout");
    m_typed << file("sheet");
    child<QPushButton>(dialog, "handoutSave")->click();
    EXPECT_EQ(m_asked, QStringList{QStringLiteral("sheet.html is there already. Replace it?")});
    EXPECT_TRUE(isKept("sheet.html"));
}

TEST_F(SaveNames, OneOfAllStagesDoesNotReplaceTheOnlySketch) {
    ExportDialog& dialog = ask<ExportDialog>("fileExport");
    ASSERT_TRUE(dialog.saveTo(file("k-3.svg")));
    ASSERT_TRUE(window->openPath(file("k-3.svg")));
    const QByteArray whole = bytesOf(file("k-3.svg"));
    ExportDialog& again = ask<ExportDialog>("fileExport");
    auto* stage = child<QComboBox>(again, "exportStage");
    stage->setCurrentIndex(stage->findData(-2));
    child<QAbstractButton>(again, "exportValues")->click();
    EXPECT_FALSE(again.saveTo(file("k.svg")));
    EXPECT_TRUE(
        child<QLabel>(again, "exportFault")->text().contains(QStringLiteral("k-3.svg carries a sketch")));
    EXPECT_EQ(bytesOf(file("k-3.svg")), whole);
    EXPECT_FALSE(QFile::exists(file("k-0.svg"))) << "nor is any other written";
}

TEST_F(SaveNames, NoOutputReplacesTheOpenSketchThroughALink) {
    ASSERT_TRUE(window->saveTo(file("raft.json")));
    const QByteArray whole = bytesOf(file("raft.json"));
    ASSERT_TRUE(QFile::link(file("raft.json"), file("raft.pdf")));
    EXPECT_FALSE(ask<ExportDialog>("fileExport").saveTo(file("raft.pdf")));
    EXPECT_FALSE(ask<HandoutDialog>("fileHandout").saveTo(file("raft.pdf")));
    EXPECT_EQ(bytesOf(file("raft.json")), whole);
}

TEST(SaveNamesOnly, AnEndingIsTwoToFourLettersOrDigitsThatBeginWithALetter) {
    EXPECT_EQ(endingMeantBy(QStringLiteral("/a.b/raft.SVG")), QStringLiteral("svg"));
    EXPECT_EQ(endingMeantBy(QStringLiteral("raft.json")), QStringLiteral("json"));
    for (const char* none :
         {"raft", "v1.2", "raft.", "raft.b", "no. 2", "raft.final", "/a.svg/raft", "1.25 kN"})
        EXPECT_EQ(endingMeantBy(QLatin1String(none)), QString()) << none;
}

} // namespace TAILPOINT_FILE
} // namespace tailpoint::test
