// SPDX-License-Identifier: MIT
// A lesson in the window: its notes beside the lecture, and the way from sketch to sketch.
#include "window_fixture.h"

#include "ui/canvas/canvas.h"
#include "ui/lecture/key_sheet.h"
#include "ui/lecture/lecture_notes.h"
#include "ui/lecture/lecture_view.h"
#include "ui/lecture/progress.h"
#include "ui/window/lesson_notes.h"

#include <QApplication>
#include <QDir>
#include <QFileDialog>
#include <QLabel>
#include <QLineEdit>
#include <QPlainTextEdit>
#include <QPushButton>
#include <QTimer>

namespace tailpoint::test {
namespace TAILPOINT_FILE {

class LessonWindow : public OpenWindow {
protected:
    void SetUp() override {
        OpenWindow::SetUp();
        m_hand.setInterval(5);
        QObject::connect(&m_hand, &QTimer::timeout, [this] { typeName(); });
        m_hand.start();
    }
    /// Through the menu's command and its dialog, as a lecturer would.
    void openLesson(const QString& path) {
        m_typed = path;
        trigger("lesson");
        ASSERT_TRUE(m_typed.isEmpty()) << "no dialog came";
    }
    LessonNotes& notes() { return *child<LessonNotes>(*window, "lessonNotes"); }
    bool says(const char* start) { return notes().text().startsWith(QLatin1String(start)); }
    void press(const char* button) { QTest::mouseClick(child<QPushButton>(notes(), button), Qt::LeftButton); }
    static LectureView* lecture() {
        for (QWidget* widget : QApplication::topLevelWidgets())
            if (auto* view = qobject_cast<LectureView*>(widget))
                return view;
        return nullptr;
    }

private:
    void typeName() {
        auto* dialog = qobject_cast<QFileDialog*>(QApplication::activeModalWidget());
        auto* name = dialog ? dialog->findChild<QLineEdit*>(QStringLiteral("fileNameEdit")) : nullptr;
        if (!name || !name->isVisible())
            return;
        dialog->activateWindow();
        name->setFocus();
        if (!name->hasFocus())
            return;
        name->setText(std::exchange(m_typed, {}));
        QTest::keyClick(name, Qt::Key_Return);
    }
    QTimer m_hand;
    QString m_typed;
};

TEST_F(LessonWindow, ShowsItsNotesAndGoesOnByKeysAndButtons) {
    const Sketch open = window->document().sketch();
    EXPECT_FALSE(notes().isVisible());
    openLesson(QStringLiteral(TAILPOINT_SAMPLES "/lessons/two-forces.lesson.json"));
    ASSERT_TRUE(notes().isVisible());
    EXPECT_TRUE(says("The lecture shows sketch 1 of 3: Survey raft on two lines."))
        << notes().text().toStdString();
    EXPECT_TRUE(notes().text().contains(QStringLiteral("put it to a vote")));
    LectureView* view = lecture();
    ASSERT_NE(view, nullptr);
    EXPECT_TRUE(view->isVisible());
    EXPECT_TRUE(view->windowTitle().contains(QStringLiteral("sketch 1 of 3")));
    const auto turn = [&](Qt::Key key) { QTest::keyClick(&view->canvas(), key, Qt::ControlModifier); };
    turn(Qt::Key_Left);
    EXPECT_TRUE(says("The lecture shows sketch 1 of 3")) << "there is none before";
    turn(Qt::Key_Right);
    EXPECT_TRUE(says("The lecture shows sketch 2 of 3"));
    press("lessonNext");
    EXPECT_TRUE(says("The lecture shows sketch 3 of 3: A second boat of known pull. The sheet below is no "
                     "part of it."));
    EXPECT_EQ(view->document().result().solved.solutions.size(), 2U);
    EXPECT_FALSE(child<QPushButton>(notes(), "lessonNext")->isEnabled());
    QTest::keyClick(&view->canvas(), Qt::Key_Escape);
    EXPECT_FALSE(view->isVisible());
    EXPECT_TRUE(says("The lesson waits at sketch 3 of 3")) << "the lesson goes on where it was left";
    press("lessonResume");
    EXPECT_TRUE(view->isVisible());
    EXPECT_EQ(window->document().sketch(), open) << "the open sketch is no part of it";
    press("lessonEnd");
    EXPECT_FALSE(notes().isVisible());
    EXPECT_FALSE(view->isVisible());
    trigger("lecture");
    EXPECT_FALSE(view->windowTitle().contains(QStringLiteral("sketch")));
    turn(Qt::Key_Right);
    EXPECT_FALSE(notes().isVisible());
}

TEST_F(LessonWindow, BeginsEachSketchAtItsFirstStepAndComesBackToWhereItWasLeft) {
    trigger("lecture"); // the open sketch is the lesson's first
    LectureView* view = lecture();
    const auto press = [&](Qt::Key key, Qt::KeyboardModifiers modifiers = {}) {
        QTest::keyClick(&view->canvas(), key, modifiers);
    };
    press(Qt::Key_End);
    const std::size_t last = view->stop();
    EXPECT_GT(last, 5U);
    press(Qt::Key_Escape);
    openLesson(QStringLiteral(TAILPOINT_SAMPLES "/lessons/two-forces.lesson.json"));
    EXPECT_EQ(view->stop(), 0U);
    for (int i = 0; i < 3; ++i)
        press(Qt::Key_Down);
    const std::size_t left = view->stop();
    EXPECT_GT(left, 0U);
    press(Qt::Key_Right, Qt::ControlModifier);
    EXPECT_EQ(view->stop(), 0U);
    press(Qt::Key_V);
    press(Qt::Key_Left, Qt::ControlModifier);
    EXPECT_EQ(view->stop(), left);
    EXPECT_FALSE(view->isVoting());
    EXPECT_TRUE(view->column().isVisible()) << "a vote that was left stood in its place";
    press(Qt::Key_Escape);
    trigger("lecture");
    EXPECT_EQ(view->stop(), 0U) << "the open sketch again, without the lesson's place";
    press(Qt::Key_End);
    press(Qt::Key_Escape);
    this->press("lessonResume");
    EXPECT_EQ(view->stop(), left);
}

/// The offscreen platform has one screen: the window is behind the lecture.
TEST_F(LessonWindow, OffersItsNotesOnAKeyWhereTheWindowIsBehindTheLecture) {
    openLesson(QStringLiteral(TAILPOINT_SAMPLES "/lessons/two-forces.lesson.json"));
    LectureView* view = lecture();
    auto* strip = view->findChild<LectureNotes*>();
    const auto key = [&](Qt::Key which, Qt::KeyboardModifiers modifiers = {}) {
        QTest::keyClick(&view->canvas(), which, modifiers);
    };
    EXPECT_FALSE(view->showsNotes()) << "the class would read them";
    const int whole = view->canvas().height();
    key(Qt::Key_S);
    EXPECT_TRUE(strip->isVisible());
    EXPECT_TRUE(strip->text().contains(QStringLiteral("is R longer than P?")));
    EXPECT_LT(view->canvas().height(), whole) << "the sheet stays whole over them";
    EXPECT_LE(view->canvas().geometry().bottom(), strip->geometry().top());
    key(Qt::Key_Right, Qt::ControlModifier);
    EXPECT_TRUE(strip->text().contains(QStringLiteral("R is shorter than P")));
    auto* keys = view->findChild<KeySheet*>();
    key(Qt::Key_F1);
    EXPECT_TRUE(keys->text().contains(QStringLiteral("S: lesson: your notes")));
    EXPECT_TRUE(keys->text().contains(QStringLiteral("lesson: the next sketch")));
    key(Qt::Key_F1);
    EXPECT_TRUE(view->findChild<LectureProgress*>()->text().endsWith(QStringLiteral("F1 keys")));
    key(Qt::Key_S);
    EXPECT_FALSE(strip->isVisible());
    EXPECT_EQ(view->canvas().height(), whole);
    key(Qt::Key_S);
    press("lessonEnd");
    trigger("lecture");
    EXPECT_FALSE(view->showsNotes());
    key(Qt::Key_S);
    EXPECT_FALSE(view->showsNotes()) << "no lesson, no notes";
}

/// A copy of the lesson, with its sketches beside it.
TEST_F(LessonWindow, KeepsNotesThatAreTypedInTheLessonsFile) {
    for (const char* name : {"survey-raft.json", "obtuse-pulls.json", "two-answers.json"})
        ASSERT_TRUE(QFile::copy(QStringLiteral(TAILPOINT_SAMPLES "/") + QLatin1String(name), file(name)));
    ASSERT_TRUE(QDir(folder.path()).mkdir(QStringLiteral("lessons")));
    const QString path = file("lessons/copy.lesson.json");
    ASSERT_TRUE(QFile::copy(QStringLiteral(TAILPOINT_SAMPLES "/lessons/two-forces.lesson.json"), path));
    QFile::setPermissions(path, QFile::ReadOwner | QFile::WriteOwner);
    openLesson(path);
    auto* field = child<QPlainTextEdit>(notes(), "lessonNotesText");
    EXPECT_TRUE(field->toPlainText().startsWith(QStringLiteral("Ask first")));
    field->setFocus();
    field->moveCursor(QTextCursor::End);
    QTest::keyClicks(field, " \"And why?\"");
    QTest::keyClick(field, Qt::Key_Z, Qt::ControlModifier);
    EXPECT_TRUE(field->toPlainText().endsWith(QStringLiteral("a vote.")))
        << "undone by the field itself: " << field->toPlainText().toStdString();
    EXPECT_EQ(window->document().history().count(), 0);
    QTest::keyClicks(field, " Once more.");
    press("lessonNext");
    EXPECT_TRUE(bytesOf(path).contains("put it to a vote. Once more.\""));
    field->setFocus();
    field->selectAll();
    QTest::keyClicks(field, "Other notes.");
    press("lessonEnd");
    EXPECT_TRUE(bytesOf(path).contains("\"notes\": \"Other notes.\""));
    openLesson(path);
    EXPECT_TRUE(field->toPlainText().endsWith(QStringLiteral("Once more.")));
}

TEST_F(LessonWindow, SaysWhyALessonIsNone) {
    openLesson(QStringLiteral(TAILPOINT_SAMPLES "/survey-raft.json"));
    EXPECT_TRUE(child<QLabel>(*window, "noticeText")->isVisible());
    EXPECT_TRUE(child<QLabel>(*window, "noticeText")
                    ->text()
                    .startsWith(QStringLiteral("survey-raft.json can't be opened as a lesson: format")));
    EXPECT_FALSE(notes().isVisible());
}

} // namespace TAILPOINT_FILE
} // namespace tailpoint::test
