// SPDX-License-Identifier: MIT
// Make handout: what its choices do, where it goes, what is remembered, and its pages.
#include "window_fixture.h"

#include "ui/canvas/canvas.h"
#include "ui/handout/handout_blocks.h"
#include "ui/panel/panel.h"
#include "ui/window/handout_dialog.h"

#include <QAction>
#include <QCheckBox>
#include <QClipboard>
#include <QComboBox>
#include <QDir>
#include <QFile>
#include <QImage>
#include <QLabel>
#include <QMimeData>
#include <QPdfWriter>
#include <QPushButton>
#include <QSettings>
#include <QTemporaryDir>
#include <QTest>
#include <gtest/gtest.h>

namespace tailpoint::test {
namespace TAILPOINT_FILE {

class HandoutWindow : public OpenWindow {
protected:
    HandoutDialog& ask() { return OpenWindow::ask<HandoutDialog>("fileHandout"); }
    template <class T>
    static T* part(HandoutDialog& dialog, const char* name) {
        return child<T>(dialog, name);
    }
    void choose(HandoutDialog& dialog, const char* box, const char* data) {
        auto* combo = part<QComboBox>(dialog, box);
        combo->setCurrentIndex(combo->findData(QLatin1String(data)));
    }
};

TEST_F(HandoutWindow, IsBuiltOnFirstUseOnly) {
    EXPECT_EQ(window->findChild<HandoutDialog*>(), nullptr);
    HandoutDialog& first = ask();
    first.reject();
    EXPECT_EQ(&ask(), &first);
}

TEST_F(HandoutWindow, SavesWhatTheEndingSays) {
    HandoutDialog& dialog = ask();
    ASSERT_TRUE(dialog.saveTo(file("a.html")));
    EXPECT_TRUE(bytesOf(file("a.html")).contains("Law of cosines"));
    ASSERT_TRUE(dialog.saveTo(file("a.tex")));
    EXPECT_TRUE(bytesOf(file("a.tex")).startsWith("\\documentclass"));
    ASSERT_TRUE(dialog.saveTo(file("a.pdf")));
    EXPECT_TRUE(bytesOf(file("a.pdf")).startsWith("%PDF-"));
    choose(dialog, "handoutForm", "latex");
    ASSERT_TRUE(dialog.saveTo(file("bare")));
    EXPECT_TRUE(QFile::exists(file("bare.tex")));
}

TEST_F(HandoutWindow, LeavesTheSolutionOut) {
    HandoutDialog& dialog = ask();
    part<QCheckBox>(dialog, "handoutSolution")->setChecked(false);
    EXPECT_FALSE(part<QCheckBox>(dialog, "handoutRounding")->isEnabled());
    ASSERT_TRUE(dialog.saveTo(file("exercise.html")));
    const QByteArray html = bytesOf(file("exercise.html"));
    EXPECT_TRUE(html.contains("Find the resultant") && html.contains("340"));
    EXPECT_FALSE(html.contains("520 N") || html.contains("Law of cosines"));
}

TEST_F(HandoutWindow, RoundsByHandAsThePanelDoesUnlessToldOtherwise) {
    window->findChild<QAction*>(QStringLiteral("handRounding"))->trigger();
    EXPECT_TRUE(window->panel().handRounding());
    HandoutDialog& dialog = ask();
    EXPECT_TRUE(part<QCheckBox>(dialog, "handoutRounding")->isChecked());
    ASSERT_TRUE(dialog.saveTo(file("hand.html")));
    EXPECT_TRUE(bytesOf(file("hand.html")).contains("What the rounding by hand costs"));
    part<QCheckBox>(dialog, "handoutRounding")->setChecked(false);
    ASSERT_TRUE(dialog.saveTo(file("full.html")));
    EXPECT_FALSE(bytesOf(file("full.html")).contains("What the rounding by hand costs"));
    EXPECT_TRUE(window->panel().handRounding()) << "the panel's own setting stays";
}

TEST_F(HandoutWindow, RemembersRoundingFormPaperAndSolution) {
    window->findChild<QAction*>(QStringLiteral("handRounding"))->trigger();
    HandoutDialog& dialog = ask();
    choose(dialog, "handoutForm", "pdf");
    choose(dialog, "handoutPaper", "Letter");
    part<QCheckBox>(dialog, "handoutSolution")->setChecked(false);
    ASSERT_TRUE(dialog.saveTo(file("a.pdf")));
    open();
    EXPECT_TRUE(window->findChild<QAction*>(QStringLiteral("handRounding"))->isChecked());
    EXPECT_TRUE(window->panel().handRounding());
    HandoutDialog& again = ask();
    EXPECT_EQ(part<QComboBox>(again, "handoutForm")->currentData().toString(), QStringLiteral("pdf"));
    EXPECT_EQ(part<QComboBox>(again, "handoutPaper")->currentData().toString(), QStringLiteral("Letter"));
    EXPECT_FALSE(part<QCheckBox>(again, "handoutSolution")->isChecked());
}

TEST_F(HandoutWindow, OffersThePaperForPagesAlone) {
    HandoutDialog& dialog = ask();
    choose(dialog, "handoutForm", "html");
    EXPECT_FALSE(part<QComboBox>(dialog, "handoutPaper")->isEnabled());
    choose(dialog, "handoutForm", "pdf");
    EXPECT_TRUE(part<QComboBox>(dialog, "handoutPaper")->isEnabled());
}

TEST_F(HandoutWindow, SaysInTheDialogWhatWentWrong) {
    HandoutDialog& dialog = ask();
    auto* fault = part<QLabel>(dialog, "handoutFault");
    EXPECT_FALSE(fault->isVisible());
    EXPECT_FALSE(dialog.saveTo(file("a.docx")));
    EXPECT_TRUE(fault->isVisible());
    EXPECT_TRUE(fault->text().contains(QStringLiteral(".html, .pdf or .tex")));
    EXPECT_FALSE(dialog.saveTo(file("no-such-folder/a.html")));
    EXPECT_TRUE(fault->text().contains(QStringLiteral("a.html"))) << fault->text().toStdString();
    EXPECT_TRUE(dialog.isVisible());
    choose(dialog, "handoutForm", "latex");
    EXPECT_FALSE(fault->isVisible()) << "a new choice is a new try";
}

TEST_F(HandoutWindow, GoesToTheClipboardInItsForm) {
    HandoutDialog& dialog = ask();
    choose(dialog, "handoutForm", "html");
    part<QPushButton>(dialog, "handoutCopy")->click();
    const QMimeData* mime = QApplication::clipboard()->mimeData();
    EXPECT_TRUE(mime->html().contains(QStringLiteral("<math>")));
    EXPECT_TRUE(mime->text().contains(QStringLiteral("Law of cosines")));
    choose(dialog, "handoutForm", "latex");
    part<QPushButton>(dialog, "handoutCopy")->click();
    EXPECT_TRUE(QApplication::clipboard()->text().contains(QStringLiteral("\\begin{tikzpicture}")));
    choose(dialog, "handoutForm", "pdf");
    part<QPushButton>(dialog, "handoutCopy")->click();
    EXPECT_TRUE(
        QApplication::clipboard()->mimeData()->data(QStringLiteral("application/pdf")).startsWith("%PDF"));
}

TEST_F(HandoutWindow, TakesWhatIsBeingTypedAndTheSketchAsItIsNow) {
    Sketch sketch = window->document().sketch();
    sketch.forces.at(0).magnitude.value = 360;
    ASSERT_FALSE(window->document().edit(sketch, QStringLiteral("change")));
    ASSERT_TRUE(ask().saveTo(file("a.html")));
    EXPECT_TRUE(bytesOf(file("a.html")).contains("360"));
}

Sketch sampled(const char* name) {
    QFile in(QStringLiteral(TAILPOINT_SAMPLES "/") + QLatin1String(name));
    EXPECT_TRUE(in.open(QIODevice::ReadOnly));
    return std::get<Sketch>(readSketch(in.readAll()));
}

struct Paper {
    const char* name;
    double width, height; ///< points
};
constexpr Paper kPapers[]{{"A4", 595, 842}, {"Letter", 612, 792}};

/// Rows and columns with ink, in pixels.
QRect inkOf(const QImage& page) {
    QRect ink;
    for (int y = 0; y < page.height(); ++y)
        for (int x = 0; x < page.width(); ++x)
            if (qGray(page.pixel(x, y)) < 200)
                ink |= QRect(x, y, 1, 1);
    return ink;
}

TEST(HandoutPagesTest, KeepAllInkWithinTheMarginsOfEveryPaper) {
    for (const QString& name : QDir(QStringLiteral(TAILPOINT_SAMPLES)).entryList({QStringLiteral("*.json")}))
        for (const Paper& paper : kPapers) {
            const Result result = resultOf(sampled(name.toUtf8().constData()));
            const HandoutPages pages(
                handoutOf(result, {}, 50),
                handoutFigure(result, {}, kHandoutWidth, handoutFigureHeight(result, {})),
                {paper.width, paper.height});
            ASSERT_GE(pages.count(), 1) << name.toStdString();
            EXPECT_LE(pages.count(), 7) << name.toStdString();
            const double scale = HandoutPages::resolution() / 72.0;
            for (int i = 0; i < pages.count(); ++i) {
                QImage page(qRound(paper.width * scale), qRound(paper.height * scale), QImage::Format_RGB32);
                page.fill(Qt::white);
                QPainter painter(&page);
                pages.paint(painter, i);
                painter.end();
                const QRect ink = inkOf(page);
                const int margin = qRound(50 * scale), foot = qRound(24 * scale);
                EXPECT_GE(ink.left(), margin) << name.toStdString() << ", page " << i + 1;
                EXPECT_GE(ink.top(), margin) << name.toStdString() << ", page " << i + 1;
                EXPECT_LE(ink.right(), page.width() - margin) << name.toStdString() << ", page " << i + 1;
                EXPECT_LE(ink.bottom(), page.height() - foot) << name.toStdString() << ", page " << i + 1;
                EXPECT_GT(ink.height(), page.height() / 8) << name.toStdString() << ": an empty page";
            }
        }
}

TEST(HandoutPagesTest, BreakTheLongestTitleWithinTheMarginsWhateverItIsMadeOf) {
    for (const QString& title : {QString(500, u'W'), QStringLiteral("word ").repeated(100).trimmed()}) {
        Sketch sketch = sampled("survey-raft.json");
        sketch.title = title.toStdString();
        const Result result = resultOf(sketch);
        const HandoutPages pages(handoutOf(result, {}, 50),
                                 handoutFigure(result, {}, kHandoutWidth, handoutFigureHeight(result, {})),
                                 {595, 842});
        const double scale = HandoutPages::resolution() / 72.0;
        QImage page(qRound(595 * scale), qRound(842 * scale), QImage::Format_RGB32);
        page.fill(Qt::white);
        QPainter painter(&page);
        pages.paint(painter, 0);
        painter.end();
        const QRect ink = inkOf(page);
        EXPECT_GE(ink.left(), qRound(50 * scale));
        EXPECT_LE(ink.right(), page.width() - qRound(50 * scale));
        EXPECT_LE(ink.bottom(), page.height() - qRound(24 * scale));
    }
}

TEST(HandoutPagesTest, KeepEachStepWholeWhereItFitsOnAPage) {
    const Result result = resultOf(sampled("survey-raft.json"));
    const auto groups = handoutGroups(
        handoutOf(result, {}, 50), handoutFigure(result, {}, kHandoutWidth, handoutFigureHeight(result, {})),
        kHandoutWidth * unitsInPoint());
    int numbers = 0;
    for (const auto& group : groups)
        for (const auto& block : group)
            numbers += block.number > 0 ? 1 : 0;
    EXPECT_EQ(numbers, 12);
    EXPECT_EQ(groups.size(), 1u + 12u) << "statement with figure, then one group a step";
}

TEST(HandoutPagesTest, BreakALongTableOverPages) {
    Sketch sketch = emptySketch();
    for (int i = 0; i < 150; ++i) {
        Force force;
        force.name = "F" + std::to_string(i);
        force.magnitude.value = 10 + i;
        force.direction.form = AngleForm{7.0 * i};
        sketch.forces.push_back(force);
    }
    const Result result = resultOf(sketch);
    const HandoutPages pages(handoutOf(result, {}, 50),
                             handoutFigure(result, {}, kHandoutWidth, handoutFigureHeight(result, {})),
                             {595, 842});
    EXPECT_GT(pages.count(), 4);
}

} // namespace TAILPOINT_FILE
} // namespace tailpoint::test
