// SPDX-License-Identifier: MIT
// While a learner's own answer is under way nothing in the window tells what is right.
#include "tests/ui/attempt/own_answer_fixture.h"
#include "ui/document/given_edits.h"
#include "ui/window/export_dialog.h"
#include "ui/window/handout_dialog.h"

#include <QCheckBox>
#include <QClipboard>
#include <QDir>
#include <QMimeData>
#include <QTableView>

namespace tailpoint::test {
namespace TAILPOINT_FILE {

using HiddenAnswer = OwnAnswerTest;

// Hand formula: |R| = sqrt(340^2 + 275^2 + 2*340*275*cos 65) = 519.86 N at -3.648 degrees; R_x 518.81, R_y
// -33.08; the triangle's angles 36.4 and 28.6 degrees (by the law of sines, in Python).
const char* const kTelling[] = {"520", "519", "518.8", "3.6\u00b0", "3.65", "33.1", "36.4", "28.6"};

void expectNothingTold(const QString& all, const char* when) {
    for (const char* number : kTelling)
        EXPECT_FALSE(all.contains(QString::fromUtf8(number)))
            << when << ": " << number << " in\n"
            << all.mid(std::max<qsizetype>(0, all.indexOf(QString::fromUtf8(number)) - 60), 140)
                   .toStdString();
}

TEST_F(HiddenAnswer, NothingInTheWindowTellsItFromTheFirstMomentOn) {
    ASSERT_TRUE(everything().contains(QStringLiteral("520"))) << "it can be found where it stands";
    begin();
    expectNothingTold(everything(), "at once");
    change(); // P becomes 360 N, and R, by hand, 537.49 N at -2.63 degrees
    ASSERT_TRUE(waitFor([&] { return cellText(*window, "givenTable", 0, 1) == QStringLiteral("360 N"); }));
    const QString later = everything();
    EXPECT_FALSE(later.contains(QStringLiteral("537")) || later.contains(QStringLiteral("2.6\u00b0")));
    window->document().undo();
    expectNothingTold(everything(), "afterwards");
    EXPECT_FALSE(child<QWidget>(*window, "solution")->isVisible());
    EXPECT_FALSE(child<QTableView>(*window, "vectorTable")->isVisible());
}

TEST_F(HiddenAnswer, NothingTellsItWhileGivenForcesAreDraggedAndSelected) {
    begin();
    Canvas& canvas = window->canvas();
    canvas.setFocus(Qt::TabFocusReason);
    for (int i = 0; i < 3; ++i) {
        QTest::keyClick(&canvas, Qt::Key_Tab);
        expectNothingTold(everything(), "selected");
    }
    canvas.takeOtherAnswer();
    canvas.setConstruction(ConstructionKind::triangle);
    canvas.setConstruction(ConstructionKind::polygon);
    expectNothingTold(everything(), "polygon");
    EXPECT_FALSE(onSheet().contains(QStringLiteral("polygon"), Qt::CaseInsensitive));
}

TEST_F(HiddenAnswer, WhatIsCopiedIsTheQuestion) {
    begin();
    trigger("copyFigure");
    const QByteArray svg = QApplication::clipboard()->mimeData()->data(QStringLiteral("image/svg+xml"));
    ASSERT_FALSE(svg.isEmpty());
    EXPECT_FALSE(svg.contains("id=\"sum\"") || svg.contains("parallelogram")) << svg.toStdString();
    EXPECT_FALSE(svg.contains(">520") || svg.contains("520 N"));
    EXPECT_TRUE(svg.contains("force-P"));
    EXPECT_TRUE(QApplication::clipboard()->mimeData()->text().isEmpty());
    trigger("copyValues");
    expectNothingTold(QApplication::clipboard()->text(), "values");
    EXPECT_TRUE(QApplication::clipboard()->text().contains(QStringLiteral("resultant R")));
}

TEST_F(HiddenAnswer, AFigureThatIsExportedIsTheExercise) {
    begin();
    auto& dialog = ask<ExportDialog>("fileExport");
    EXPECT_TRUE(dialog.job().givenOnly);
    ASSERT_TRUE(dialog.saveTo(file("raft.svg")));
    const QByteArray svg = bytesOf(file("raft.svg"));
    EXPECT_FALSE(svg.contains("id=\"sum\"") || svg.contains("parallelogram"));
    EXPECT_FALSE(svg.contains(">520") || svg.contains("520 N"));
    dialog.close();
}

TEST_F(HiddenAnswer, WhatWouldTellItCantBeReachedAndSaysWhy) {
    begin();
    for (const char* name : {"lecture", "otherAnswer"})
        EXPECT_FALSE(child<QAction>(*window, name)->isEnabled()) << name;
    EXPECT_FALSE(child<QAction>(*window, "lecture")->toolTip().contains(QStringLiteral("F5")));
    trigger("ownAnswer");
    EXPECT_TRUE(child<QAction>(*window, "lecture")->isEnabled());
}

TEST_F(HiddenAnswer, TheQuestionAloneIsHandedOut) {
    begin();
    auto& dialog = ask<HandoutDialog>("fileHandout");
    auto* solution = child<QCheckBox>(dialog, "handoutSolution");
    EXPECT_FALSE(solution->isChecked() || solution->isEnabled());
    ASSERT_TRUE(dialog.saveTo(file("raft.html")));
    const QByteArray page = bytesOf(file("raft.html"));
    EXPECT_TRUE(page.contains("340"));
    for (const char* told : {"520 N", "520\u00a0N", "3.6\u00b0", "Law of cosines", "id=\"sum\""})
        EXPECT_FALSE(page.contains(told)) << told;
    dialog.close();
    trigger("ownAnswer");
    ask<HandoutDialog>("fileHandout");
    EXPECT_TRUE(solution->isChecked()) << "as it was chosen before";
}

TEST_F(HiddenAnswer, AValueToFindThatIsMadeGivenIsNotWorkedOut) {
    begin();
    for (const Entry cell : {Entry::magnitude, Entry::direction}) {
        const Sketch after = toggled(window->document(), kSumIndex, cell);
        EXPECT_FALSE(isToFind(after, kSumIndex, cell));
        EXPECT_NE(after.sum.magnitude.value, 520);
        const auto* angle = std::get_if<AngleForm>(&after.sum.direction.form);
        EXPECT_FALSE(angle != nullptr && angle->value == -3.6);
    }
}

TEST_F(HiddenAnswer, EverySampleWithAnAnswerHidesItAndShowsItAgain) {
    int tried = 0;
    const QDir samples(QStringLiteral(TAILPOINT_SAMPLES));
    for (const QString& name : samples.entryList({QStringLiteral("*.json")})) {
        ASSERT_TRUE(window->openPath(samples.filePath(name)));
        const QString shown = onSheet();
        const View before = window->canvas().view();
        const auto solved = window->document().result().solved;
        if (!child<QAction>(*window, "ownAnswer")->isEnabled())
            continue;
        const Marker marker(window->document().sketch(), solved);
        const std::string question = toText(marker.mark({}));
        begin();
        ++tried;
        const QString all = onSheet() + plainOf(*window, "answer") + plainOf(*window, "findMessage") +
                            window->canvas().figure().list.description.c_str();
        for (const MarkedQuantity& one : marker.mark({}).quantities)
            EXPECT_FALSE(all.contains(QString::fromStdString(one.name + " = " + one.expectedText)))
                << name.toStdString() << ": " << one.name << " = " << one.expectedText;
        EXPECT_FALSE(window->document().result().solved.solutions.size());
        trigger("ownAnswer");
        EXPECT_EQ(onSheet(), shown) << name.toStdString();
        EXPECT_EQ(window->canvas().view(), before) << name.toStdString();
    }
    EXPECT_GT(tried, 8);
}

TEST_F(HiddenAnswer, LeavingBringsTheWindowBackAsItWas) {
    window->canvas().zoomIn();
    const DisplayList before = window->canvas().figure().list;
    const QStringList folded = window->panel().folded();
    begin();
    window->canvas().zoomOut();
    QTest::keyClick(window.get(), Qt::Key_Escape);
    EXPECT_FALSE(answer().isOn());
    EXPECT_EQ(window->canvas().figure().list, before);
    EXPECT_EQ(plainOf(window->panel(), "answer"), QStringLiteral("R = 520 N"));
    EXPECT_TRUE(child<QWidget>(*window, "solution")->isVisible());
    EXPECT_EQ(window->panel().folded(), folded);
    EXPECT_FALSE(view().isVisible());
    EXPECT_FALSE(child<QAction>(*window, "ownAnswer")->isChecked());
    EXPECT_FALSE(window->isWindowModified());
    EXPECT_FALSE(window->document().canUndo());
}

TEST_F(HiddenAnswer, TheAnswerThatWasDrawnOfTwoIsDrawnAgain) {
    const QDir samples(QStringLiteral(TAILPOINT_SAMPLES));
    for (const QString& name : samples.entryList({QStringLiteral("*.json")})) {
        ASSERT_TRUE(window->openPath(samples.filePath(name)));
        if (window->document().result().solved.solutions.size() != 2)
            continue;
        window->document().choose(1);
        begin();
        trigger("ownAnswer");
        EXPECT_EQ(window->document().result().chosen, 1U);
        return;
    }
    FAIL() << "no sample with two answers";
}

TEST_F(HiddenAnswer, AnotherSketchThatIsOpenedHidesItsAnswerTooAndOneWithoutAnAnswerEndsIt) {
    begin();
    type("R", "335");
    const QDir samples(QStringLiteral(TAILPOINT_SAMPLES));
    ASSERT_TRUE(window->openPath(samples.filePath(QStringLiteral("missing-force.json"))));
    ASSERT_TRUE(answer().isOn());
    EXPECT_TRUE(window->document().result().solved.solutions.empty());
    EXPECT_EQ(answer().fields().size(), 2U);
    EXPECT_TRUE(answer().typed("R").isEmpty());
    ASSERT_TRUE(window->openPath(samples.filePath(QStringLiteral("no-answer.json"))));
    EXPECT_FALSE(answer().isOn());
    EXPECT_FALSE(window->document().withholdsAnswer());
    EXPECT_FALSE(view().isVisible());
}

TEST_F(HiddenAnswer, AChangeThatLeavesNoAnswerIsSaidAndNothingIsMarked) {
    begin();
    Sketch given = window->document().sketch();
    given.sum.magnitude.value = 500;
    given.sum.direction.form = AngleForm{0};
    ASSERT_FALSE(window->document().edit(given, QStringLiteral("give all")));
    EXPECT_TRUE(answer().isOn());
    EXPECT_TRUE(findings().contains(QStringLiteral("nothing to answer"))) << findings().toStdString();
    EXPECT_FALSE(child<QPushButton>(view(), "ownMark")->isEnabled());
    answer().mark();
    EXPECT_FALSE(answer().marking());
    window->document().undo();
    EXPECT_TRUE(findings().isEmpty());
    EXPECT_TRUE(child<QPushButton>(view(), "ownMark")->isEnabled());
    EXPECT_EQ(answer().fields().size(), 2U);
}

TEST_F(HiddenAnswer, AQuestionWithoutAnAnswerHasNothingToCheckAndTheMenuSaysWhy) {
    auto* action = child<QAction>(*window, "ownAnswer");
    trigger("fileNew");
    EXPECT_FALSE(action->isEnabled());
    EXPECT_TRUE(action->text().contains(QStringLiteral("no force"))) << action->text().toStdString();
    Sketch given = raft();
    given.sum.magnitude.value = 500;
    given.sum.direction.form = AngleForm{0};
    window->document().replace(given, {});
    EXPECT_FALSE(action->isEnabled());
    EXPECT_TRUE(action->text().contains(QStringLiteral("everything is given")));
    window->document().replace(raft(), {});
    EXPECT_TRUE(action->isEnabled());
    EXPECT_FALSE(action->text().contains(u'('));
}

} // namespace TAILPOINT_FILE
} // namespace tailpoint::test
