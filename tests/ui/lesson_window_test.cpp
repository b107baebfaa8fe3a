// A lesson in the window: its notes beside the lecture, and the way from sketch to sketch.
#include "window_fixture.h"

#include "ui/canvas/canvas.h"
#include "ui/lecture/lecture_view.h"
#include "ui/window/lesson_notes.h"

#include <QApplication>
#include <QFileDialog>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QTimer>

namespace tailpoint::test {
namespace {

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
    EXPECT_TRUE(says("Sketch 1 of 3: Survey raft")) << notes().text().toStdString();
    EXPECT_TRUE(notes().text().contains(QStringLiteral("put it to a vote")));
    LectureView* view = lecture();
    ASSERT_NE(view, nullptr);
    EXPECT_TRUE(view->isVisible());
    EXPECT_TRUE(view->windowTitle().contains(QStringLiteral("sketch 1 of 3")));
    const auto turn = [&](Qt::Key key) { QTest::keyClick(&view->canvas(), key, Qt::ControlModifier); };
    turn(Qt::Key_Left);
    EXPECT_TRUE(says("Sketch 1 of 3")) << "there is none before";
    turn(Qt::Key_Right);
    EXPECT_TRUE(says("Sketch 2 of 3"));
    press("lessonNext");
    EXPECT_TRUE(says("Sketch 3 of 3"));
    EXPECT_EQ(view->document().result().solved.solutions.size(), 2U);
    EXPECT_FALSE(child<QPushButton>(notes(), "lessonNext")->isEnabled());
    QTest::keyClick(&view->canvas(), Qt::Key_Escape);
    EXPECT_FALSE(view->isVisible());
    EXPECT_TRUE(says("Sketch 3 of 3")) << "the lesson goes on where it was left";
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

TEST_F(LessonWindow, SaysWhyALessonIsNone) {
    openLesson(QStringLiteral(TAILPOINT_SAMPLES "/survey-raft.json"));
    EXPECT_TRUE(child<QLabel>(*window, "noticeText")->isVisible());
    EXPECT_TRUE(child<QLabel>(*window, "noticeText")
                    ->text()
                    .startsWith(QStringLiteral("survey-raft.json can't be opened as a lesson: format")));
    EXPECT_FALSE(notes().isVisible());
}

} // namespace
} // namespace tailpoint::test
