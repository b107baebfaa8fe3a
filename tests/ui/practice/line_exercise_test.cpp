// SPDX-License-Identifier: MIT
// A problem worked by its solution's lines, through the window's doors: list, menu, keys, mouse.
#include "core/practice/families.h"
#include "core/practice/scheme.h"
#include "tests/ui/attempt/own_answer_fixture.h"
#include "ui/panel/line_exercise_view.h"
#include "ui/panel/solution_lines.h"
#include "ui/practice/line_exercise.h"
#include "ui/practice/problem_file.h"
#include "ui/window/practice_dialog.h"
#include "ui/window/practice_summary.h"

#include <QComboBox>
#include <QPlainTextEdit>
#include <QRegularExpression>

namespace tailpoint::test {
namespace TAILPOINT_FILE {

// 0NGFZD: P = 185 N at 60 degrees, Q = 235 N at -19. By hand: phi = 79, gamma = 101 degrees,
// R = sqrt(185^2 + 235^2 + 2*185*235*cos 79) = 325.64 N, its direction 14.895 degrees.
const char* const kCode = "0NGFZD";

class LinesInTheWindow : public OwnAnswerTest {
protected:
    void begin(const char* button, const QString& code = QString::fromLatin1(kCode)) {
        auto& dialog = ask<PracticeDialog>("practice");
        auto* search = child<QLineEdit>(dialog, "practiceSearch");
        search->clear();
        QTest::keyClicks(search, code);
        QTest::mouseClick(child<QPushButton>(dialog, button), Qt::LeftButton);
        ASSERT_FALSE(dialog.isVisible());
        ASSERT_TRUE(lines().isOn());
        ASSERT_TRUE(answer().isOn()) << "withheld";
    }
    LineExerciseView& exerciseView() { return *child<LineExerciseView>(*window, "lineExercise"); }
    LineExercise& lines() { return exerciseView().exercise(); }
    SolutionLines& list() { return *child<SolutionLines>(exerciseView(), "solutionLines"); }
    QComboBox* principle() { return child<QComboBox>(exerciseView(), "exercisePrinciple"); }
    QLineEdit* number() { return child<QLineEdit>(exerciseView(), "exerciseNumber"); }
    QString said() { return child<QLabel>(exerciseView(), "exerciseSaid")->text(); }
    QString spoken() { return child<QLabel>(exerciseView(), "exerciseSaid")->accessibleName(); }
    QString told() { return child<MarkedText>(exerciseView(), "exerciseFindings")->plainText(); }
    ProblemId id() { return problemIdOf(window->document().sketch()).value_or(ProblemId()); }
    QString went() {
        auto& dialog = ask<PracticeSummary>("practiceSummary");
        const QString words = child<QPlainTextEdit>(dialog, "summaryWords")->toPlainText();
        dialog.reject();
        return words;
    }
    void choose(Principle one) {
        const auto at = std::find(kPrinciples.begin(), kPrinciples.end(), one) - kPrinciples.begin();
        principle()->setFocus();
        principle()->setCurrentIndex(static_cast<int>(at) + 1);
    }
    void enter(const QString& typed) {
        number()->setFocus();
        number()->selectAll();
        QTest::keyClicks(number(), typed);
        QTest::keyClick(number(), Qt::Key_Return);
    }
    /// What the line that is asked for rests on, and its number, from the core.
    void fillRightly() {
        const AskedLines asked(window->document().sketch());
        const std::size_t line = asked.lines().size() - lines().blankLines();
        choose(asked.lines()[line].principle);
        enter(QString::fromStdString(toText(*asked.working(line).value)));
    }
    void pointAt(WorkingPlace place) {
        const auto all = calculatedLines(lines().shown());
        const auto wanted = std::find(all.begin(), all.end(), place) - all.begin();
        list().takeFocus();
        for (int i = 0; i < wanted; ++i)
            QTest::keyClick(&list(), Qt::Key_Down);
        QTest::keyClick(&list(), Qt::Key_Return);
    }
};

/// With its sign: a lost minus is a slip.
bool hasNumber(const QString& all, const QString& number) {
    return QRegularExpression(
               QString::fromUtf8("(?<![-\u2212\\d.])%1(?!\\d)").arg(QRegularExpression::escape(number)))
        .match(all)
        .hasMatch();
}

TEST_F(LinesInTheWindow, ALineIsFilledInAndTheProblemCountsAsAnExample) {
    begin("practiceFillIn");
    EXPECT_FALSE(view().isVisible()) << "its own fields stand aside";
    EXPECT_EQ(lines().blankLines(), 1U);
    EXPECT_TRUE(list().plainText().contains(QStringLiteral("325.64"))) << list().plainText().toStdString();
    EXPECT_FALSE(list().plainText().contains(QStringLiteral("14.9")));
    EXPECT_TRUE(list().plainText().contains(QStringLiteral("Line 5 of 5"))) << "a node for each";
    EXPECT_EQ(window->focusWidget(), principle());
    choose(Principle::turned);
    enter(QStringLiteral("14.9"));
    EXPECT_TRUE(lines().isDone());
    EXPECT_FALSE(answer().isOn()) << "the answer may be seen now";
    EXPECT_EQ(plainOf(window->panel(), "answer"), QStringLiteral("R = 326 N"));
    EXPECT_TRUE(said().contains(QStringLiteral("right at once"))) << said().toStdString();
    EXPECT_TRUE(went().contains(QStringLiteral("One question: 1 as an example."))) << went().toStdString();
    trigger("practiceMore"); // in the same way
    EXPECT_EQ(lines().worked(), WorkedAs::faded);
    EXPECT_EQ(lines().blankLines(), 2U) << "one more each time it goes well";
    EXPECT_FALSE(view().isVisible());
}

TEST_F(LinesInTheWindow, WhatIsNotRightIsToldAndTheLineIsShownOnDemand) {
    begin("practiceFillIn");
    enter(QStringLiteral("14.9"));
    EXPECT_EQ(said(), QStringLiteral("Choose on what the line rests."));
    choose(Principle::turned);
    enter(QStringLiteral("about"));
    EXPECT_FALSE(said().isEmpty());
    EXPECT_FALSE(lines().canShowLine()) << "nothing was entered yet";
    choose(Principle::cosines);
    enter(QStringLiteral("14.9"));
    EXPECT_TRUE(said().startsWith(QStringLiteral("The number is right"))) << said().toStdString();
    choose(Principle::turned);
    enter(QStringLiteral("-14.9")); // counted in the other turning sense
    EXPECT_TRUE(said().startsWith(QStringLiteral("It rests on that"))) << said().toStdString();
    EXPECT_TRUE(spoken().contains(child<MarkedText>(exerciseView(), "exerciseFindings")->spokenText()))
        << "what the slip did is read out too";
    EXPECT_FALSE(told().isEmpty());
    EXPECT_FALSE(everything().contains(QStringLiteral("14.895"))) << "not told yet";
    QTest::mouseClick(child<QPushButton>(exerciseView(), "exerciseShow"), Qt::LeftButton);
    EXPECT_TRUE(lines().isDone());
    trigger("practiceFill");
    EXPECT_EQ(lines().blankLines(), 1U) << "it did not go well";
}

/// 335 for 520 and the like: with the supplement's cosine 269.92 N, by hand.
TEST_F(LinesInTheWindow, TheSlipInALineIsNamedAndInTheEndOnlyTheLawIsAskedFor) {
    begin("practiceFillIn");
    for (std::size_t blank = 1; blank < 5; ++blank) {
        ASSERT_EQ(lines().blankLines(), blank);
        if (blank == 3) {
            choose(Principle::cosines);
            enter(QStringLiteral("270"));
            EXPECT_TRUE(told().contains(QStringLiteral("cos"))) << told().toStdString();
            EXPECT_FALSE(told().contains(QStringLiteral("326")));
            EXPECT_FALSE(told().contains(QStringLiteral("325.6")));
            trigger("practiceFill"); // anew: it was not done
            ASSERT_EQ(lines().blankLines(), blank);
        }
        while (!lines().isDone())
            fillRightly();
        trigger("practiceFill");
    }
    ASSERT_TRUE(lines().asksLawAlone());
    EXPECT_TRUE(view().isVisible()) << "every line is the learner's own";
    EXPECT_FALSE(number()->isVisible());
    EXPECT_EQ(child<QLabel>(exerciseView(), "exercisePrompt")->text(),
              QStringLiteral("Which law starts, and why?"));
    choose(Principle::sines);
    QTest::mouseClick(child<QPushButton>(exerciseView(), "exerciseEnter"), Qt::LeftButton);
    EXPECT_FALSE(lines().isDone());
    choose(Principle::cosines);
    QTest::mouseClick(child<QPushButton>(exerciseView(), "exerciseEnter"), Qt::LeftButton);
    EXPECT_TRUE(lines().isDone());
    EXPECT_TRUE(told().contains(QStringLiteral("the angle between them"))) << told().toStdString();
    EXPECT_TRUE(answer().isOn()) << "the question goes on";
    EXPECT_FALSE(everything().contains(QStringLiteral("325.6")));
    type("R", "326");
    type("theta_R", "14.9");
    mark();
    EXPECT_TRUE(summary().contains(QStringLiteral("right"), Qt::CaseInsensitive));
    EXPECT_TRUE(went().contains(QStringLiteral("5 questions: 5 as an example."))) << went().toStdString();
}

TEST_F(LinesInTheWindow, ASlipIsFoundByKeysAndMended) {
    begin("practiceFindSlip");
    ASSERT_NE(lines().flawed(), nullptr);
    const FlawedSolution flawed = *lines().flawed();
    EXPECT_EQ(window->focusWidget(), &list());
    const QString right = QString::fromStdString(toText(*flawed.right.value));
    const auto places = calculatedLines(lines().shown());
    const WorkingPlace other = places.front() == flawed.flaw ? places.back() : places.front();
    pointAt(other);
    EXPECT_EQ(said(), QStringLiteral("Not that line: with the numbers before it, it is right."));
    EXPECT_TRUE(list().plainText().contains(QStringLiteral("This line is right.")));
    EXPECT_FALSE(number()->isVisible());
    EXPECT_FALSE(hasNumber(list().plainText(), right)) << list().plainText().toStdString();
    pointAt(flawed.flaw);
    EXPECT_EQ(said(), QStringLiteral("That is the line."));
    ASSERT_TRUE(number()->isVisible());
    EXPECT_EQ(window->focusWidget(), number());
    enter(QStringLiteral("1"));
    EXPECT_EQ(said(), QStringLiteral("The number is not right."));
    EXPECT_FALSE(hasNumber(everything(), right)) << "not told yet";
    enter(right);
    EXPECT_TRUE(lines().isDone());
    EXPECT_EQ(said(), QStringLiteral("Found and mended."));
    EXPECT_TRUE(told().contains(QString::fromStdString(slipName(flawed.slip)).mid(1)))
        << told().toStdString();
    EXPECT_TRUE(told().contains(QString::fromStdString(toText(flawed.mend)))) << told().toStdString();
    EXPECT_TRUE(told().contains(right));
    EXPECT_FALSE(answer().isOn());
    EXPECT_TRUE(went().contains(QStringLiteral("One question: 1 as an example.")));
}

TEST_F(LinesInTheWindow, ALineIsPointedAtByTheMouse) {
    begin("practiceFindSlip");
    const WorkingPlace flaw = lines().flawed()->flaw;
    for (int row = 0; row < list().count() && !lines().isFound(); ++row) {
        const QString words = list().item(row)->data(Qt::AccessibleTextRole).toString();
        const bool isLine = words.startsWith(QStringLiteral("Line "));
        EXPECT_EQ(list().item(row)->flags().testFlag(Qt::ItemIsEnabled), isLine) << words.toStdString();
        QTest::mouseClick(list().viewport(), Qt::LeftButton, {},
                          list().visualItemRect(list().item(row)).center());
    }
    EXPECT_TRUE(lines().isFound());
    EXPECT_EQ(lines().asked(), flaw);
}

TEST_F(LinesInTheWindow, EscapeLeavesAndOtherValuesEndIt) {
    begin("practiceFindSlip");
    QTest::keyClick(&list(), Qt::Key_Escape);
    EXPECT_FALSE(lines().isOn());
    EXPECT_FALSE(answer().isOn());
    EXPECT_FALSE(exerciseView().isVisible());
    trigger("practiceFill");
    ASSERT_TRUE(lines().isOn());
    change();
    EXPECT_FALSE(lines().isOn()) << "another question than the lines";
    EXPECT_TRUE(answer().isOn()) << "and still not told";
    EXPECT_TRUE(view().isVisible());
}

QString printed(const Working& line) {
    return QString::fromStdString(toText(*line.value, Minus::ascii));
}
QString unsignedText(QString text) {
    return text.remove(u'-').remove(QChar(0x2212));
}
/// What is given, and what other lines of the solution come to: a line may come to the same number.
bool isAnothers(const QString& number, const AskedLines& asked, const Working& own) {
    for (const Step& step : asked.worked().steps)
        if (step.key == StepKey::given && hasNumber(unsignedText(QString::fromStdString(toText(step))),
                                                    unsignedText(number))) // "45.0° clockwise"
            return true;
    for (std::size_t line = 0; line < asked.lines().size(); ++line)
        if (asked.working(line).subject != own.subject &&
            unsignedText(printed(asked.working(line))) == unsignedText(number))
            return true;
    return false;
}

/// Every family at every level, both ways: list, statement, title, tooltips, accessible texts, the sheet.
TEST_F(LinesInTheWindow, NothingGivesAnOpenLineAway) {
    int looked = 0, zeros = 0;
    const auto look = [&](const Problem& problem, const AskedLines& asked, const Working& own) {
        const QString number = printed(own);
        if (number.startsWith(
                QStringLiteral("0 "))) { // of a sum at rest it is given, and of other lines right
            const QString line =
                QString::fromStdString(toText(*own.subject)) + QStringLiteral(" = ") + number;
            ++zeros;
            EXPECT_FALSE(hasNumber(everything(), line)) << problem.code << ": " << line.toStdString();
            return;
        }
        if (isAnothers(number, asked, own))
            return;
        ++looked;
        for (const QString& told : everything().split(u'\n'))
            EXPECT_FALSE(hasNumber(told, number))
                << problem.code << ": " << number.toStdString() << " in: " << told.toStdString();
    };
    for (const FamilyEntry& family : problemFamilies())
        for (int level = 1; level <= kLevels; ++level) {
            const auto made = problem({std::string(family.id), level, 40});
            const AskedLines asked(made->sketch);
            begin("practiceFillIn", QString::fromStdString(made->code));
            look(*made, asked, asked.working(asked.lines().size() - 1));
            trigger("practiceFind");
            if (lines().worked() != WorkedAs::flawed)
                continue; // none of its slips changes just one line
            ASSERT_TRUE(lines().flawed()) << made->code;
            const FlawedSolution& flawed = *lines().flawed();
            ASSERT_LT(flawed.flaw.step, flawed.worked.steps.size()) << made->code << ' ' << flawed.slip;
            ASSERT_LT(flawed.flaw.working, flawed.worked.steps[flawed.flaw.step].workings.size())
                << made->code << ' ' << flawed.slip;
            ASSERT_TRUE(flawed.right.value) << made->code << ' ' << flawed.slip;
            ASSERT_TRUE(flawed.worked.steps[flawed.flaw.step].workings[flawed.flaw.working].value)
                << made->code << ' ' << flawed.slip;
            const Working& flaw = flawed.worked.steps[flawed.flaw.step]
                                      .workings[flawed.flaw.working]; // a lost sign: its size is told
            if (printed(flaw).remove(u'-') != printed(flawed.right).remove(u'-'))
                look(*made, asked, flawed.right);
        }
    EXPECT_GT(looked + zeros, 35);
}

TEST_F(LinesInTheWindow, WithoutAProblemThereAreNone) {
    EXPECT_FALSE(child<QAction>(*window, "practiceFill")->isEnabled());
    EXPECT_FALSE(child<QAction>(*window, "practiceFind")->isEnabled());
}

} // namespace TAILPOINT_FILE
} // namespace tailpoint::test
