// The menu Teach: the learner's own answer, and the lecture view, built when it is first asked for.
#pragma once

#include "ui/window/window_parts.h"

#include <QObject>
#include <memory>

class QAction;
class QMenu;

namespace tailpoint {

class LectureView;

class TeachMenu : public QObject {
    Q_OBJECT
public:
    TeachMenu(const WindowParts& parts, QMenu* menu);
    ~TeachMenu() override;

    QAction *lecture, *ownAnswer;
    void beginLecture();
    void askProblems();

private:
    void addOwnAnswer(QMenu* menu);
    void switchOwnAnswer(bool on);
    void showOwnAnswer();

    QAction* m_mark;
    WindowParts m_parts;
    std::unique_ptr<LectureView> m_view;
};

} // namespace tailpoint
