// SPDX-License-Identifier: MIT
// Export figure: what its choices do, where it goes, what is remembered, and its printed pages.
#include "window_fixture.h"

#include "ui/canvas/canvas.h"
#include "ui/window/export_dialog.h"

#include <QAction>
#include <QCheckBox>
#include <QClipboard>
#include <QComboBox>
#include <QDir>
#include <QFile>
#include <QImage>
#include <QLabel>
#include <QLineEdit>
#include <QMimeData>
#include <QPrinter>
#include <QPushButton>
#include <QSettings>
#include <QTemporaryDir>
#include <QTest>
#include <gtest/gtest.h>

namespace tailpoint::test {
namespace TAILPOINT_FILE {

class ExportWindow : public OpenWindow {
protected:
    ExportDialog& ask() { return OpenWindow::ask<ExportDialog>("fileExport"); }
    template <class T>
    static T* part(ExportDialog& dialog, const char* name) {
        return child<T>(dialog, name);
    }
    void choose(ExportDialog& dialog, const char* box, const QVariant& data) {
        auto* combo = part<QComboBox>(dialog, box);
        combo->setCurrentIndex(combo->findData(data));
        QCoreApplication::processEvents();
    }
    QString fault(ExportDialog& dialog) { return part<QLabel>(dialog, "exportFault")->text(); }
};

TEST_F(ExportWindow, SavesInTheChosenFormAndTheEndingDecides) {
    ExportDialog& dialog = ask();
    choose(dialog, "exportForm", QStringLiteral("pdf"));
    EXPECT_TRUE(dialog.saveTo(file("raft")));
    EXPECT_TRUE(bytesOf(file("raft.pdf")).startsWith("%PDF"));
    EXPECT_TRUE(dialog.saveTo(file("raft.svg")));
    EXPECT_TRUE(bytesOf(file("raft.svg")).contains("<metadata"));
    EXPECT_TRUE(dialog.saveTo(file("raft.tex")));
    EXPECT_TRUE(bytesOf(file("raft.tex")).contains("tikzpicture"));
    EXPECT_FALSE(dialog.saveTo(file("raft.doc")));
    EXPECT_FALSE(fault(dialog).isEmpty());
    EXPECT_FALSE(QFile::exists(file("raft.doc")));
}

TEST_F(ExportWindow, ASavedSvgOpensAsTheSketchAgain) {
    change();
    const Sketch kept = window->document().sketch();
    ASSERT_TRUE(ask().saveTo(file("raft.svg")));
    ASSERT_TRUE(window->saveTo(file("kept.json")));
    trigger("fileNew");
    ASSERT_TRUE(window->openPath(file("raft.svg")));
    EXPECT_EQ(window->document().sketch(), kept);
}

TEST_F(ExportWindow, AFigureThatHidesSomethingDoesNotReplaceTheOnlySketch) {
    ASSERT_TRUE(ask().saveTo(file("raft.svg")));
    ASSERT_TRUE(window->openPath(file("raft.svg")));
    const QByteArray whole = bytesOf(file("raft.svg"));
    ExportDialog& dialog = ask();
    part<QCheckBox>(dialog, "exportValues")->setChecked(false);
    EXPECT_FALSE(dialog.saveTo(file("raft.svg")));
    EXPECT_TRUE(fault(dialog).contains(QStringLiteral("raft.svg carries a sketch")));
    EXPECT_EQ(bytesOf(file("raft.svg")), whole);
    EXPECT_TRUE(dialog.saveTo(file("exercise.svg")));
    EXPECT_TRUE(dialog.saveTo(file("exercise.svg"))); // no sketch in it
    ASSERT_TRUE(window->saveTo(file("raft.json")));
    EXPECT_TRUE(dialog.saveTo(file("raft.svg")));
}

TEST_F(ExportWindow, AFolderThatCantBeWrittenIsSaidInTheDialog) {
    ExportDialog& dialog = ask();
    EXPECT_FALSE(dialog.saveTo(file("no/such/folder/raft.svg")));
    EXPECT_TRUE(fault(dialog).contains(QStringLiteral("raft.svg")));
    EXPECT_TRUE(dialog.isVisible());
}

TEST_F(ExportWindow, ThePreviewFollowsTheChoices) {
    ExportDialog& dialog = ask();
    auto* preview = part<QWidget>(dialog, "exportPreview");
    QCoreApplication::processEvents();
    const QImage paper = preview->grab().toImage();
    choose(dialog, "exportTheme", 1);
    const QImage slate = preview->grab().toImage();
    EXPECT_NE(paper, slate);
    part<QCheckBox>(dialog, "exportGiven")->setChecked(true);
    QCoreApplication::processEvents();
    EXPECT_NE(preview->grab().toImage(), slate);
}

TEST_F(ExportWindow, TrueScaleIsTypedAndAnImpossibleOneIsRefusedBeforeAnythingIsWritten) {
    ExportDialog& dialog = ask();
    choose(dialog, "exportPaper", int(FigurePaper::a4));
    auto* field = part<QLineEdit>(dialog, "exportPerCm");
    const auto type = [&](const char* text) {
        field->clear();
        QTest::keyClicks(field, QLatin1String(text));
        QCoreApplication::processEvents();
    };
    type("0.05 kN");
    EXPECT_TRUE(part<QCheckBox>(dialog, "exportTrueScale")->isChecked());
    EXPECT_EQ(fault(dialog), QString());
    EXPECT_EQ(dialog.job().unitsPerCm, 50);
    for (const char* bad : {"2", "wide", "0"}) {
        type(bad);
        EXPECT_FALSE(fault(dialog).isEmpty()) << bad;
        EXPECT_FALSE(part<QPushButton>(dialog, "exportSave")->isEnabled()) << bad;
    }
    type("50");
    EXPECT_TRUE(part<QPushButton>(dialog, "exportSave")->isEnabled());
}

TEST_F(ExportWindow, ChoicesAreRememberedAndWhatIsLeftOutAgainIsSaid) {
    {
        ExportDialog& dialog = ask();
        EXPECT_FALSE(part<QLabel>(dialog, "exportLeftOut")->isVisible());
        choose(dialog, "exportForm", QStringLiteral("png"));
        choose(dialog, "exportPaper", int(FigurePaper::letter));
        choose(dialog, "exportTheme", int(ThemeName::contrast));
        part<QComboBox>(dialog, "exportSize")->setEditText(QStringLiteral("1234 px"));
        part<QCheckBox>(dialog, "exportTransparent")->setChecked(true);
        part<QCheckBox>(dialog, "exportValues")->setChecked(false);
        part<QCheckBox>(dialog, "exportNames")->setChecked(false);
        EXPECT_TRUE(dialog.saveTo(file("a.png")));
        EXPECT_EQ(QImage(file("a.png")).width(), 1234);
    }
    open();
    ExportDialog& dialog = ask();
    const FigureJob job = dialog.job();
    EXPECT_EQ(job.form, FigureForm::png);
    EXPECT_EQ(job.paper, FigurePaper::letter);
    EXPECT_EQ(job.theme, ThemeName::contrast);
    EXPECT_EQ(job.pixelWidth, 1234);
    EXPECT_TRUE(job.transparent);
    EXPECT_FALSE(job.options.values);
    EXPECT_FALSE(job.names);
    auto* told = part<QLabel>(dialog, "exportLeftOut");
    EXPECT_TRUE(told->isVisible());
    EXPECT_EQ(told->text(), QStringLiteral("As last time, without values and names."));
    part<QCheckBox>(dialog, "exportNames")->click();
    EXPECT_FALSE(told->isVisible());
}

/// An arrow of 520 N drawn to scale is an answer, whether or not a number stands beside it.
TEST_F(ExportWindow, WithoutValuesItIsSaidThatTheArrowsOfTheAnswerStay) {
    ExportDialog& dialog = ask();
    const auto isTold = [&] {
        QCoreApplication::processEvents();
        return part<QLabel>(dialog, "exportStillDrawn")->isVisible();
    };
    const auto isDrawn = [&] {
        EXPECT_TRUE(dialog.saveTo(file("left.svg"))) << fault(dialog).toStdString();
        const QByteArray svg = bytesOf(file("left.svg"));
        EXPECT_FALSE(svg.contains("520 N"));
        return svg.contains("id=\"sum\"");
    };
    EXPECT_FALSE(isTold());
    part<QCheckBox>(dialog, "exportValues")->click();
    EXPECT_TRUE(isTold() && isDrawn());
    choose(dialog, "exportStage", int(Stage::interior)); // nothing is found by then
    EXPECT_FALSE(isTold() || isDrawn());
    choose(dialog, "exportStage", int(Stage::magnitudes));
    EXPECT_TRUE(isTold() && isDrawn());
    part<QCheckBox>(dialog, "exportGiven")->click();
    EXPECT_FALSE(isTold() || isDrawn());
}

TEST_F(ExportWindow, AScaleIsRememberedWhereTheSketchFitsThePaperAtIt) {
    const auto exportAt = [&](const char* scale) {
        ExportDialog& dialog = ask();
        choose(dialog, "exportPaper", int(FigurePaper::a4));
        auto* field = part<QLineEdit>(dialog, "exportPerCm");
        field->clear();
        QTest::keyClicks(field, QLatin1String(scale));
        QCoreApplication::processEvents();
        EXPECT_TRUE(dialog.saveTo(file("a.svg"))) << fault(dialog).toStdString();
    };
    exportAt("60 N");
    open();
    EXPECT_EQ(ask().job().unitsPerCm, 60);
    Sketch sketch = window->document().sketch();
    for (Force& force : sketch.forces)
        force.magnitude.value = 100 * force.magnitude.value.value_or(1);
    ASSERT_FALSE(window->document().edit(sketch, QStringLiteral("a hundred times as much")));
    ExportDialog& dialog = ask();
    EXPECT_FALSE(part<QCheckBox>(dialog, "exportTrueScale")->isChecked());
    EXPECT_EQ(fault(dialog), QString());
    window->document().undo();
}

TEST_F(ExportWindow, APngsSizeIsTyped) {
    ExportDialog& dialog = ask();
    choose(dialog, "exportForm", QStringLiteral("png"));
    const auto type = [&](const char* text) {
        part<QComboBox>(dialog, "exportSize")->setEditText(QLatin1String(text));
        QCoreApplication::processEvents();
    };
    for (const char* text : {"96", "96 dpi", "96 dots per inch"}) {
        type(text);
        EXPECT_DOUBLE_EQ(dialog.job().pixelsPerPoint, 96 / 72.0) << text;
        EXPECT_FALSE(dialog.job().pixelWidth) << text;
        EXPECT_EQ(fault(dialog), QString()) << text;
    }
    for (const char* text : {"800 px", "800 pixels", "800 Pixels wide"}) {
        type(text);
        EXPECT_EQ(dialog.job().pixelWidth, 800) << text;
    }
    for (const char* bad : {"", "large", "0 px", "30000 px", "5 dpi", "300 dpi, please"}) {
        type(bad);
        EXPECT_FALSE(fault(dialog).isEmpty()) << bad;
        EXPECT_FALSE(part<QPushButton>(dialog, "exportSave")->isEnabled()) << bad;
    }
    choose(dialog, "exportForm", QStringLiteral("svg"));
    EXPECT_TRUE(part<QPushButton>(dialog, "exportSave")->isEnabled());
}

TEST_F(ExportWindow, TheClipboardTakesPictureAndWordsButNothingThatIsHidden) {
    ExportDialog& dialog = ask();
    dialog.copy();
    const QMimeData* mime = QGuiApplication::clipboard()->mimeData();
    EXPECT_TRUE(mime->hasImage());
    EXPECT_TRUE(mime->data(QStringLiteral("image/svg+xml")).contains("<svg"));
    EXPECT_TRUE(mime->text().contains(QStringLiteral("520 N")));
    part<QCheckBox>(dialog, "exportValues")->setChecked(false);
    dialog.copy();
    mime = QGuiApplication::clipboard()->mimeData();
    EXPECT_TRUE(mime->hasImage());
    EXPECT_FALSE(mime->text().contains(QStringLiteral("520 N")));
    EXPECT_FALSE(mime->data(QStringLiteral("image/svg+xml")).contains("520 N"));
}

TEST_F(ExportWindow, AllStagesArePagesOfThePrinter) {
    ExportDialog& dialog = ask();
    choose(dialog, "exportStage", -2);
    QPrinter printer(QPrinter::HighResolution);
    printer.setOutputFormat(QPrinter::PdfFormat);
    printer.setOutputFileName(file("print.pdf"));
    printer.setFullPage(true);
    EXPECT_TRUE(dialog.paintOn(printer));
    const QByteArray pdf = bytesOf(file("print.pdf"));
    EXPECT_EQ(pdf.count("/Type /Page\n"), kFigureStages);
}

} // namespace TAILPOINT_FILE
} // namespace tailpoint::test
