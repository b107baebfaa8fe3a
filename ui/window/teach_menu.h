// SPDX-License-Identifier: MIT
// The menu Teach: the learner's own answer, and the lecture view, built when it is first asked for.
#pragma once

#include "ui/lecture/lecture_view.h"
#include "ui/lesson/lesson.h"
#include "ui/window/window_parts.h"

#include <QObject>
#include <memory>

class QAction;
class QMenu;

namespace tailpoint {

class Result;

class TeachMenu : public QObject {
    Q_OBJECT
public:
    TeachMenu(const WindowParts& parts, QMenu* menu);
    ~TeachMenu() override;

    QAction *lecture, *ownAnswer;
    void beginLecture();
    void askProblems();
    /// Reads a lesson and begins with its first sketch. False: the notice says why not.
    bool beginLesson(const QString& path);

private:
    void makeView();
    void begin(const Result& result, std::optional<LecturePlace> at = std::nullopt);
    bool isOnOneScreen() const;
    void leavePart();
    void saveTyped(std::size_t part, const QString& notes);
    void chooseLesson();
    void goToPart(std::size_t part);
    void turnPart(int by);
    void endLesson();
    void addOwnAnswer(QMenu* menu);
    void switchOwnAnswer(bool on);
    void showOwnAnswer();

    QAction* m_mark;
    QAction* m_lesson;
    WindowParts m_parts;
    std::unique_ptr<LectureView> m_view;
    std::optional<Lesson> m_running;
    std::size_t m_part = 0;
    std::vector<LecturePlace> m_places; ///< where each sketch of the lesson was left
};

} // namespace tailpoint
