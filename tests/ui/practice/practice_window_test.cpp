// SPDX-License-Identifier: MIT
// Practice in the window, through its doors: menu, list, keys and quiet buttons.
#include "core/practice/families.h"
#include "core/practice/scheme.h"
#include "tests/ui/practice/practice_fixture.h"
#include "ui/panel/line_exercise_view.h"
#include "ui/practice/line_exercise.h"
#include "ui/practice/problem_file.h"
#include "ui/practice/sitting.h"
#include "ui/window/practice_dialog.h"
#include "ui/window/practice_summary.h"

#include <QCheckBox>
#include <QListWidget>
#include <QMessageBox>
#include <QPlainTextEdit>
#include <QTimer>

namespace tailpoint::test {
namespace TAILPOINT_FILE {

TEST_F(PracticeWindow, TheListHasFamiliesLevelsAndSamplesAndIsFoundByWordsOfTheTrade) {
    auto& dialog = ask<PracticeDialog>("practice");
    auto* list = child<QListWidget>(dialog, "practiceList");
    auto* search = child<QLineEdit>(dialog, "practiceSearch");
    EXPECT_EQ(rows(*list, true).size(), static_cast<int>(problemFamilies().size()) + 1);
    EXPECT_GT(rows(*list, false).size(), 3 * static_cast<int>(problemFamilies().size()) + 15);
    QTest::keyClicks(search, QStringLiteral("BEARING level 3"));
    EXPECT_EQ(rows(*list, true).front(), QStringLiteral("Directions by compass"));
    for (const QString& row : rows(*list, false))
        EXPECT_TRUE(row.startsWith(QStringLiteral("Level 3"))) << row.toStdString();
    search->clear();
    QTest::keyClicks(search, QStringLiteral("marquee")); // of a scene
    EXPECT_TRUE(rows(*list, true).contains(QStringLiteral("Several forces and their resultant")));
    search->clear();
    QTest::keyClicks(search, QStringLiteral("quadrant")); // of a trap
    EXPECT_FALSE(rows(*list, false).isEmpty());
    search->clear();
    QTest::keyClicks(search, QStringLiteral("zeppelin"));
    EXPECT_EQ(list->count(), 0);
    QTest::keyClick(search, Qt::Key_Return); // nothing to begin
    EXPECT_TRUE(dialog.isVisible());
    EXPECT_FALSE(answer().isOn());
}

TEST_F(PracticeWindow, ArrowsPassTheHeadingsAndReturnBegins) {
    auto& dialog = ask<PracticeDialog>("practice");
    auto* list = child<QListWidget>(dialog, "practiceList");
    auto* search = child<QLineEdit>(dialog, "practiceSearch");
    EXPECT_EQ(list->currentRow(), 1);
    for (int i = 0; i < 3; ++i)
        QTest::keyClick(search, Qt::Key_Down);
    EXPECT_EQ(list->currentRow(), 5) << "the first level of the second family";
    QTest::keyClick(search, Qt::Key_Up);
    QTest::keyClick(search, Qt::Key_Return);
    EXPECT_FALSE(dialog.isVisible());
    EXPECT_EQ(id().family, "two-forces");
    EXPECT_EQ(id().level, 3);
    EXPECT_TRUE(answer().isOn());
    EXPECT_FALSE(window->isWindowModified());
    EXPECT_TRUE(window->document().path().isEmpty());
    EXPECT_EQ(statement().toStdString(), problem(id())->statement);
}

TEST_F(PracticeWindow, AFamilysOwnTitleComesBeforeOthersThatHaveItsWords) {
    auto& dialog = ask<PracticeDialog>("practice");
    auto* search = child<QLineEdit>(dialog, "practiceSearch");
    QTest::keyClicks(search, QStringLiteral("directions by run and rise"));
    QTest::keyClick(search, Qt::Key_Return);
    EXPECT_EQ(id().family, "slopes");
    EXPECT_EQ(id().level, 1);
}

TEST_F(PracticeWindow, TheWholeStatementIsToBeSeenHoweverWideTheWindow) {
    begin();
    auto* label = child<QLabel>(*window, "statement");
    for (const int width : {700, 1200, 1900}) {
        window->resize(width, 760);
        ASSERT_TRUE(waitFor([&] { return window->width() == width && label->isVisible(); }));
        EXPECT_TRUE(waitFor([&] { return label->height() >= label->heightForWidth(label->width()); }))
            << width;
        EXPECT_LE(label->width(), 900);
    }
}

TEST_F(PracticeWindow, AHintIsToBeSeenInALowWindow) {
    window->resize(900, 420);
    begin();
    trigger("practiceHint");
    auto* hints = child<QWidget>(*window, "hints");
    EXPECT_TRUE(waitFor([&] { return hints->visibleRegion().boundingRect().height() == hints->height(); }))
        << "all of it";
    EXPECT_EQ(window->focusWidget(), field("R")) << "the keyboard stays where it was";
}

TEST_F(PracticeWindow, WhatIsGivenStandsStillUnderAHandWhileItIsAnswered) {
    begin();
    const Sketch asked = window->document().sketch();
    const QString above = statement();
    Canvas& canvas = window->canvas();
    const auto dragTip = [&] { // P's, at the box's upper right: it points to 60 degrees
        const QPoint tip = canvas.vectorRect(0).topRight() + QPoint(-4, 4);
        QTest::mousePress(&canvas, Qt::LeftButton, {}, tip);
        for (int i = 1; i <= 5; ++i) {
            QMouseEvent move(QEvent::MouseMove, tip + QPoint(8 * i, 6 * i),
                             canvas.mapToGlobal(tip + QPoint(8 * i, 6 * i)), Qt::NoButton, Qt::LeftButton,
                             {});
            QCoreApplication::sendEvent(&canvas, &move);
        }
        QTest::mouseRelease(&canvas, Qt::LeftButton, {}, tip + QPoint(40, 30));
    };
    QString told;
    QObject::connect(&canvas, &Canvas::hint, window.get(), [&](const QString& text) { told = text; });
    canvas.nudgeMagnitude(0, 1);
    EXPECT_EQ(told, QStringLiteral("The question's values stand still in practice."));
    canvas.nudgeDirection(1, 1);
    EXPECT_FALSE(canvas.setMagnitude(0, 200));
    dragTip();
    EXPECT_EQ(window->document().sketch(), asked);
    EXPECT_EQ(statement(), above);
    trigger("ownAnswer"); // left: what if?
    dragTip();
    EXPECT_NE(window->document().sketch(), asked);
}

TEST_F(PracticeWindow, IsInTheBarAndItsButtonsSayWhatEachDoes) {
    QTest::mouseClick(child<QAbstractButton>(*window, "practiceButton"), Qt::LeftButton);
    auto* dialog = window->findChild<PracticeDialog*>();
    ASSERT_TRUE(dialog && dialog->isVisible());
    dialog->reject();
    begin();
    QSet<QString> told;
    for (const char* name :
         {"link-practiceHint", "link-practiceMore", "link-practiceHarder", "link-practiceNext"})
        told.insert(child<QAbstractButton>(*window, name)->toolTip());
    EXPECT_EQ(told.size(), 4);
}

TEST_F(PracticeWindow, ASampleIsOpenedAsAWorkedExample) {
    begin();
    auto& dialog = ask<PracticeDialog>("practice");
    QTest::keyClicks(child<QLineEdit>(dialog, "practiceSearch"),
                     QStringLiteral("survey raft two lines worked"));
    auto* list = child<QListWidget>(dialog, "practiceList");
    ASSERT_EQ(rows(*list, false), QStringList{QStringLiteral("Survey raft on two lines")});
    QTest::mouseClick(child<QPushButton>(dialog, "practiceBegin"), Qt::LeftButton);
    EXPECT_FALSE(answer().isOn());
    EXPECT_EQ(plainOf(window->panel(), "answer"), QStringLiteral("R = 520 N"));
    EXPECT_FALSE(child<QWidget>(*window, "practiceStrip")->isVisible());
}

TEST_F(PracticeWindow, UnsavedWorkIsAskedAbout) {
    change();
    const Sketch mine = window->document().sketch();
    bool asked = false;
    QTimer::singleShot(0, window.get(), [&] {
        QTimer::singleShot(0, window.get(), [&] {
            auto* box = qobject_cast<QMessageBox*>(QApplication::activeModalWidget());
            asked = box && box->objectName() == QLatin1String("unsavedQuestion");
            if (box)
                QTest::keyClick(box, Qt::Key_Escape);
        });
    });
    auto& dialog = ask<PracticeDialog>("practice");
    QTest::keyClick(child<QLineEdit>(dialog, "practiceSearch"), Qt::Key_Return);
    ASSERT_TRUE(waitFor([&] { return asked; }));
    EXPECT_EQ(window->document().sketch(), mine);
    EXPECT_FALSE(answer().isOn());
}

/// Every family at every level: list, statement, title, tooltips, accessible texts, the sheet.
TEST_F(PracticeWindow, NothingGivesTheAnswerAway) {
    int looked = 0;
    for (const FamilyEntry& family : problemFamilies())
        for (int level = 1; level <= kLevels; ++level) {
            const auto made = problem({std::string(family.id), level, 40});
            begin(QString::fromStdString(made->code));
            ASSERT_EQ(id(), made->id);
            const QString all = everything() + u'\n' + hints();
            for (const SchemeAnswer& answer : schemeOf(*made).answers)
                for (const std::string& number : answer.texts) {
                    ++looked;
                    const QString text = QString::fromStdString(number);
                    const QString pattern =
                        QStringLiteral("(?<![\\d.])%1(?!\\d)").arg(QRegularExpression::escape(text));
                    const auto found = QRegularExpression(pattern).match(all);
                    EXPECT_FALSE(found.hasMatch())
                        << made->code << ": " << number << " in "
                        << all.mid(std::max<qsizetype>(0, found.capturedStart() - 60), 140).toStdString();
                }
        }
    EXPECT_GT(looked, 60);
    const std::string last = schemeOf(*problem(id())).answers.front().texts.front();
    trigger("ownAnswer"); // left: there it is
    EXPECT_TRUE(everything().contains(QString::fromStdString(last))) << last;
}

TEST_F(PracticeWindow, AHintWaitsForAnEntryAndTheLastOneMakesAnExampleOfTheQuestion) {
    begin();
    trigger("practiceHint");
    EXPECT_EQ(hints().toStdString(), "Angle between the tails. Which relation gives this line, and why?");
    EXPECT_TRUE(child<QLabel>(*window, "practiceSaid")->accessibleName().startsWith(QStringLiteral("Angle")));
    trigger("practiceHint");
    EXPECT_EQ(said(), QStringLiteral("Before the next hint type a value, or mark your answer."));
    EXPECT_FALSE(hints().contains(u'='));
    type("R", "no idea");
    trigger("practiceHint");
    EXPECT_FALSE(hints().contains(u'=')) << "that is no value";
    type("R", "300");
    trigger("practiceHint");
    EXPECT_TRUE(hints().contains(u'='));
    const QString letters = hints();
    type("R", "30");
    type("R", "300"); // as it stood
    trigger("practiceHint");
    EXPECT_EQ(hints(), letters);
    mark(); // incomplete, and an entry
    trigger("practiceHint");
    EXPECT_TRUE(hints().contains(QStringLiteral("60.0")));
    auto* action = child<QAction>(*window, "practiceHint");
    int opened = 3;
    for (; action->isEnabled() && opened < 60; ++opened) {
        type("R", QByteArray::number(400 + opened).constData());
        action->trigger();
    }
    EXPECT_LT(opened, 60);
    EXPECT_EQ(said(), QStringLiteral("This question counts as an example now."));
    give("325.6", "14.9");
    EXPECT_TRUE(summary().contains(QStringLiteral("right"), Qt::CaseInsensitive)) << summary().toStdString();
    EXPECT_TRUE(summaryWords().contains(QStringLiteral("One question: 1 as an example.")))
        << summaryWords().toStdString();
}

TEST_F(PracticeWindow, ASlipIsRecordedAndTheNextQuestionIsAimedAtIt) {
    begin();
    giveSlip("supplement-in-cosines");
    EXPECT_EQ(answer().typed("R"), QStringLiteral("270 N")) << "as by hand";
    EXPECT_TRUE(findings().contains(QStringLiteral("cos"))) << findings().toStdString();
    const QString went = summaryWords();
    EXPECT_TRUE(went.contains(QStringLiteral("One question: 1 not right at once."))) << went.toStdString();
    EXPECT_TRUE(went.contains(QStringLiteral("Slips that are left:\n  supplement in the law of cosines")))
        << went.toStdString();
    answer().showSlip(true); // to look is no try
    answer().showSlip(false);
    give("326", "14.9"); // put right: the first answer counts
    const QString tried = summaryWords();
    EXPECT_TRUE(tried.contains(QStringLiteral("One question: 1 not right at once."))) << tried.toStdString();
    EXPECT_TRUE(tried.contains(QStringLiteral("not right: supplement in the law of cosines; right at try 2")))
        << tried.toStdString();
    trigger("practiceNext");
    EXPECT_EQ(id().family, "two-forces");
    EXPECT_EQ(id().level, 2);
    EXPECT_NE(id().number, problemIdOf(kCode)->number);
    EXPECT_EQ(said(), QStringLiteral("Chosen so that the last slip would show again."));
    EXPECT_GT(aim(*problem(id()), "supplement-in-cosines"), 0);
    EXPECT_TRUE(answer().isOn());
    EXPECT_TRUE(answer().typed("R").isEmpty());
    EXPECT_TRUE(field("R")->text().isEmpty()) << "what was typed is of the question before";
    // answered rightly the slip has gone
    const Scheme scheme = schemeOf(*problem(id()));
    for (const std::string& one : rightAnswers(scheme)) {
        const auto at = one.find(" = ");
        type(one.substr(0, at).c_str(), one.substr(at + 3).c_str());
    }
    mark();
    EXPECT_TRUE(
        summaryWords().contains(QStringLiteral("Slips that went away:\n  supplement in the law of cosines")))
        << summaryWords().toStdString();
}

/// One to be filled in, in the first place; who goes on has declined.
TEST_F(PracticeWindow, AfterTwoSlipsAnExampleToBeFilledInIsOfferedFirst) {
    makeTwoSlips();
    const ProblemId offered = id();
    ASSERT_TRUE(child<QWidget>(*window, "notice")->isVisible());
    EXPECT_TRUE(answer().isOn()) << "the question is there for who declines";
    QTest::mouseClick(child<QPushButton>(*window, "noticeOffer0"), Qt::LeftButton);
    const LineExercise& lines = child<LineExerciseView>(*window, "lineExercise")->exercise();
    EXPECT_EQ(lines.worked(), WorkedAs::faded);
    EXPECT_EQ(lines.blankLines(), 1U);
    EXPECT_EQ(id().family, offered.family);
    EXPECT_EQ(id().level, offered.level);
    EXPECT_NE(id().number, offered.number);
    EXPECT_TRUE(plainOf(window->panel(), "answer").isEmpty());
    trigger("practiceNext");
    EXPECT_FALSE(lines.isOn());
    EXPECT_TRUE(answer().isOn());
    EXPECT_TRUE(view().isVisible());
}

/// The question that was open before stays as it was answered; the one that is shown is an example.
TEST_F(PracticeWindow, AfterTwoSlipsASolvedExampleIsOfferedToo) {
    makeTwoSlips();
    const ProblemId offered = id();
    QTest::mouseClick(child<QPushButton>(*window, "noticeOffer1"), Qt::LeftButton);
    EXPECT_FALSE(answer().isOn());
    EXPECT_EQ(id().family, offered.family);
    EXPECT_EQ(id().level, offered.level);
    EXPECT_NE(id().number, offered.number);
    EXPECT_FALSE(plainOf(window->panel(), "answer").isEmpty());
    EXPECT_TRUE(summaryWords().startsWith(QStringLiteral("2 questions: 2 not right at once.")))
        << summaryWords().toStdString();
    trigger("practiceNext");
    EXPECT_TRUE(answer().isOn());
    EXPECT_TRUE(plainOf(window->panel(), "answer").isEmpty());
}

TEST_F(PracticeWindow, OnceMoreAndHarderByTheirKeysAndButtons) {
    begin();
    const ProblemId first = id();
    QTest::keyClick(window.get(), Qt::Key_F8, Qt::ControlModifier);
    EXPECT_EQ(id().family, first.family);
    EXPECT_EQ(id().level, first.level);
    EXPECT_NE(id().number, first.number);
    QTest::keyClick(window.get(), Qt::Key_F8, Qt::ShiftModifier);
    EXPECT_EQ(id().level, 3);
    EXPECT_FALSE(child<QPushButton>(*window, "link-practiceHarder")->isEnabled());
    const ProblemId third = id();
    QTest::mouseClick(child<QPushButton>(*window, "link-practiceNext"), Qt::LeftButton);
    EXPECT_EQ(id().level, 3) << "the level that was chosen stays";
    EXPECT_NE(id().number, third.number);
    const ProblemId fourth = id();
    QTest::keyClick(field("R"), Qt::Key_PageDown, Qt::ControlModifier);
    EXPECT_NE(id().number, fourth.number);
    EXPECT_FALSE(answer().marking());
    EXPECT_TRUE(summaryWords().startsWith(QStringLiteral("Nothing has been answered"))) << "only gone on";
}

TEST_F(PracticeWindow, WhoSeesTheAnswerFirstHasAnExample) {
    begin();
    QTest::keyClick(window.get(), Qt::Key_Escape);
    ASSERT_FALSE(answer().isOn());
    EXPECT_FALSE(child<QAction>(*window, "practiceHint")->isEnabled()) << "nothing is looked for";
    trigger("ownAnswer");
    give("326", "14.9");
    EXPECT_TRUE(summaryWords().contains(QStringLiteral("1 as an example"))) << summaryWords().toStdString();
}

TEST_F(PracticeWindow, OtherValuesOnTheSheetAreNoLongerThoseOfTheWords) {
    begin();
    change();
    EXPECT_TRUE(statement().isEmpty());
    EXPECT_TRUE(child<QLabel>(*window, "practiceKind")->text().contains(QStringLiteral("other values")));
    EXPECT_FALSE(child<QAction>(*window, "practiceHint")->isEnabled());
    window->document().undo();
    EXPECT_TRUE(statement().contains(QStringLiteral("185 N")));
    EXPECT_TRUE(child<QAction>(*window, "practiceHint")->isEnabled());
}

TEST_F(PracticeWindow, OtherNumbersAreOneStepAndTheStatementFollows) {
    begin();
    const QString before = statement();
    const Sketch old = window->document().sketch();
    trigger("otherNumbers");
    const Sketch now = window->document().sketch();
    EXPECT_FALSE(isSameQuestion(old, now));
    const QString size = QString::number(*now.forces.at(0).magnitude.value);
    EXPECT_TRUE(statement().contains(QStringLiteral("P = %1 N").arg(size))) << statement().toStdString();
    EXPECT_TRUE(answer().isOn());
    EXPECT_EQ(window->document().undoText(), QStringLiteral("Other numbers"));
    window->document().undo();
    EXPECT_EQ(statement(), before);
    EXPECT_FALSE(window->document().canUndo());
}

TEST_F(PracticeWindow, OtherNumbersOfAnySketchAndWhereThereAreNoneItIsSaid) {
    ASSERT_FALSE(answer().isOn());
    const Sketch raft = window->document().sketch();
    trigger("otherNumbers");
    EXPECT_FALSE(isSameQuestion(raft, window->document().sketch()));
    EXPECT_EQ(window->document().result().solved.solutions.size(), 1U);
    Sketch given = raft; // everything
    given.sum.magnitude.value = 500;
    given.sum.direction.form = AngleForm{0};
    window->document().replace(given, {});
    trigger("otherNumbers");
    EXPECT_EQ(window->document().sketch(), given);
    EXPECT_TRUE(child<QLabel>(*window, "noticeText")->text().contains(QStringLiteral("No other numbers")));
}

TEST_F(PracticeWindow, TheRecordIsKeptOnlyOnDemandAndForgottenOnDemand) {
    begin();
    give("326", "14.9");
    EXPECT_FALSE(QFile::exists(practiceFile()));
    auto& dialog = ask<PracticeSummary>("practiceSummary");
    auto* keep = child<QCheckBox>(dialog, "keepRecord");
    EXPECT_FALSE(keep->isChecked());
    EXPECT_TRUE(child<QLabel>(dialog, "recordFile")->text().contains(practiceFile()));
    QTest::mouseClick(keep, Qt::LeftButton, {}, QPoint(8, keep->height() / 2));
    EXPECT_TRUE(keep->isChecked());
    EXPECT_TRUE(bytesOf(practiceFile()).contains("\"right\""));
    dialog.reject();
    open();
    begin();
    give("420", "14.9");
    EXPECT_EQ(bytesOf(practiceFile()).count("\"sitting\": 2"), 1) << bytesOf(practiceFile()).toStdString();
    auto& again = ask<PracticeSummary>("practiceSummary");
    QTimer::singleShot(0, window.get(), [&] {
        if (auto* box = qobject_cast<QMessageBox*>(QApplication::activeModalWidget()))
            box->findChild<QPushButton*>(QStringLiteral("forgetIt"))->click();
    });
    QTest::mouseClick(child<QPushButton>(again, "forgetRecord"), Qt::LeftButton);
    EXPECT_FALSE(QFile::exists(practiceFile()));
    EXPECT_TRUE(child<QPlainTextEdit>(again, "summaryWords")
                    ->toPlainText()
                    .startsWith(QStringLiteral("Nothing has been answered")));
    again.reject();
}

} // namespace TAILPOINT_FILE
} // namespace tailpoint::test
