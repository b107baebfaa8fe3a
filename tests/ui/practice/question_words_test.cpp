// SPDX-License-Identifier: MIT
// The question in words: of a problem's file that is opened, written by hand, handed out.
#include "tests/ui/practice/practice_fixture.h"
#include "ui/handout/handout_document.h"
#include "ui/window/words_dialog.h"

#include <QScrollArea>
#include <algorithm>

namespace tailpoint::test {
namespace TAILPOINT_FILE {

using QuestionInWords = PracticeWindow;

TEST_F(QuestionInWords, AProblemThatIsOpenedIsAQuestionAndWhatIsOpenedAfterItIsNot) {
    const QString path = file("problem.json"), raft = file("raft.json");
    QFile out(path);
    ASSERT_TRUE(out.open(QIODevice::WriteOnly));
    out.write(writeProblem(*problem(*problemIdOf(kCode))));
    out.close();
    ASSERT_TRUE(window->saveTo(raft));
    ASSERT_TRUE(window->openPath(path));
    EXPECT_TRUE(answer().isOn());
    EXPECT_TRUE(plainOf(window->panel(), "answer").isEmpty());
    EXPECT_TRUE(statement().contains(QStringLiteral("185 N")));
    EXPECT_TRUE(said().contains(QStringLiteral("F7"))) << "how its answer is seen: " << said().toStdString();
    EXPECT_FALSE(everything().contains(QStringLiteral("325.6")));
    give("326", "14.9");
    EXPECT_TRUE(summaryWords().contains(QStringLiteral("1 right at once"))) << summaryWords().toStdString();
    ASSERT_TRUE(window->openPath(raft));
    EXPECT_FALSE(answer().isOn());
    EXPECT_EQ(plainOf(window->panel(), "answer"), QStringLiteral("R = 520 N"));
    ASSERT_TRUE(window->openPath(path));
    trigger("ownAnswer");
    EXPECT_EQ(plainOf(window->panel(), "answer"), QStringLiteral("R = 326 N"));
}

TEST_F(QuestionInWords, InASmallWindowTheStatementScrollsByWholeLinesAndNoCommandCoversAnother) {
    begin();
    window->setMinimumSize(1, 1);
    window->resize(620, 340);
    auto* strip = child<QWidget>(*window, "practiceStrip");
    auto* page = child<QScrollArea>(*window, "statementPage");
    const auto* words = child<QLabel>(*window, "statement");
    const QList<QPushButton*> commands = strip->findChildren<QPushButton*>();
    ASSERT_EQ(commands.size(), 4);
    const auto placeOf = [&](const QWidget* one) {
        return QRect(one->mapTo(window.get(), QPoint()), one->size());
    };
    const auto isOnSheet = [&](const QPushButton* one) {
        return placeOf(one).intersects(placeOf(&window->canvas()));
    };
    ASSERT_TRUE(QTest::qWaitFor([&] { // laid out in several rounds
        return page->height() < words->height() && std::none_of(commands.begin(), commands.end(), isOnSheet);
    }));
    EXPECT_EQ(page->height() % QFontMetrics(words->font()).lineSpacing(), 0);
    const QRect sheet = placeOf(&window->canvas());
    for (const QPushButton* one : commands) {
        EXPECT_FALSE(placeOf(one).intersects(placeOf(page))) << one->text().toStdString();
        for (const QPushButton* other : commands)
            EXPECT_TRUE(one == other || !placeOf(one).intersects(placeOf(other)))
                << one->text().toStdString() << ", " << other->text().toStdString();
    }
    EXPECT_GE(sheet.height(), 90);
}

TEST_F(QuestionInWords, TheQuestionInWordsIsChangedSavedAndHandedOut) {
    begin();
    const QString before = statement();
    auto& dialog = ask<WordsDialog>("questionInWords");
    auto* words = child<QPlainTextEdit>(dialog, "words");
    EXPECT_EQ(words->toPlainText(), before);
    words->setPlainText(QStringLiteral("Two ropes, 185 N & 235 N.\n  How hard do they pull together?"));
    QTest::mouseClick(child<QPushButton>(dialog, "wordsTake"), Qt::LeftButton);
    const QString mine = QStringLiteral("Two ropes, 185 N & 235 N. How hard do they pull together?");
    EXPECT_EQ(statement(), mine);
    EXPECT_TRUE(answer().isOn());
    EXPECT_EQ(window->document().undoText(), QStringLiteral("Question in words"));
    ASSERT_TRUE(window->saveTo(file("mine.json")));
    EXPECT_TRUE(bytesOf(file("mine.json")).contains("185 N & 235 N. How hard"));
    const Sketch sketch = window->document().sketch();
    HandoutChoice choice;
    choice.solution = false;
    EXPECT_TRUE(handoutHtml(resultOf(sketch), choice).contains("185 N &amp; 235 N. How hard"));
    EXPECT_TRUE(handoutLatex(resultOf(sketch), choice).contains("235 N. How hard"));
    choice.ownWords = false; // of other values
    EXPECT_FALSE(handoutHtml(resultOf(sketch), choice).contains("How hard"));
    window->document().undo();
    EXPECT_EQ(statement(), before);
    EXPECT_EQ(id(), *problemIdOf(kCode)) << "the same problem all the while";
}

TEST_F(QuestionInWords, WordsAreWrittenForAnySketchAndTakenAwayAgain) {
    auto& dialog = ask<WordsDialog>("questionInWords");
    auto* words = child<QPlainTextEdit>(dialog, "words");
    EXPECT_TRUE(words->toPlainText().isEmpty());
    QTest::mouseClick(child<QPushButton>(dialog, "wordsFromValues"), Qt::LeftButton);
    EXPECT_TRUE(words->toPlainText().contains(QStringLiteral("340 N"))) << words->toPlainText().toStdString();
    QTest::mouseClick(child<QPushButton>(dialog, "wordsTake"), Qt::LeftButton);
    EXPECT_TRUE(statement().contains(QStringLiteral("340 N")));
    change();
    EXPECT_TRUE(statement().isEmpty()) << "they are of other values";
    ask<WordsDialog>("questionInWords");
    EXPECT_TRUE(child<QLabel>(dialog, "wordsNote")->text().contains(QStringLiteral("other values")));
    QTest::mouseClick(child<QPushButton>(dialog, "wordsTake"), Qt::LeftButton);
    EXPECT_TRUE(statement().contains(QStringLiteral("340 N"))) << "they hold, says who takes them";
    ask<WordsDialog>("questionInWords");
    words->setPlainText(QString(kLongestWords + 1, u'x'));
    EXPECT_FALSE(child<QPushButton>(dialog, "wordsTake")->isEnabled());
    words->clear();
    QTest::mouseClick(child<QPushButton>(dialog, "wordsTake"), Qt::LeftButton);
    EXPECT_TRUE(statementOf(window->document().sketch()).empty());
    EXPECT_FALSE(child<QWidget>(*window, "practiceStrip")->isVisible());
}

} // namespace TAILPOINT_FILE
} // namespace tailpoint::test
