// SPDX-License-Identifier: MIT
// Practice in the menu Teach: the list of problems, a hint, what comes next, how it went; and other numbers
// for any question. Opens a problem as a new sketch whose answer is withheld.
#pragma once

#include "core/practice/record.h"
#include "ui/window/window_parts.h"

#include <QElapsedTimer>
#include <QObject>
#include <functional>

class QAction;
class QMenu;

namespace tailpoint {

struct PracticeChoice;
class LineExercise;
class LineExerciseView;
class Practice;
class PracticeHints;
class PracticeStrip;

/// What it works on, beside the window's parts.
struct PracticeParts {
    Practice& practice;
    PracticeStrip& strip;
    PracticeHints& hints;
    LineExercise& exercise;
    LineExerciseView& lines;
    QAction* ownAnswer;                   ///< switches the learner's own answer on
    std::function<bool()> mayLoseChanges; ///< asks before the open sketch is replaced
};

class PracticeMenu : public QObject {
    Q_OBJECT
public:
    PracticeMenu(const WindowParts& parts, PracticeParts practice, QMenu* teach, QMenu* question);

    QAction* practiceList = nullptr; ///< the list of problems

private:
    void addTeaching(QMenu* menu);
    void choose();
    void take(const PracticeChoice& choice, WorkedAs as);
    bool begin(const ProblemId& id, const std::string& aimedAt = {});
    void beginAs(ProblemId id, WorkedAs as);
    void beginAgain(const ProblemId& id);
    void fillIn();
    void findSlip();
    bool findSlipFrom(ProblemId id);
    void showExercise();
    void opened();
    void openExample(const PracticeChoice& choice);
    void showExample(const ProblemId& id);
    void hint();
    void showHints();
    void next();
    void offerExample(const ProblemId& next);
    void otherNumbers();
    void showWhat();
    void sayFault();

    QElapsedTimer m_sinceHint;
    bool m_showsSolved = false; ///< the problem that is being opened may be seen
    bool m_isProblem = false;   ///< that was open before
    WindowParts m_parts;
    PracticeParts m_practice;
    QAction *m_hint = nullptr, *m_more = nullptr, *m_harder = nullptr, *m_next = nullptr, *m_fill = nullptr,
            *m_find = nullptr;
};

} // namespace tailpoint
