// SPDX-License-Identifier: MIT
// The lecture: full screen, step by step, the same figure and formulas as in the window. It speaks from a
// document of its own, a copy taken when it begins: what is tried before a room never reaches the open
// sketch, its undo stack or its file, and the plan is always there to go back to.
#pragma once

#include "ui/lecture/column.h"
#include "ui/lecture/measures.h"
#include "ui/lecture/plan.h"
#include "ui/practice/problem_file.h"
#include "ui/style/theme.h"

#include <QWidget>
#include <memory>
#include <optional>

class QScreen;

namespace tailpoint {

class Canvas;
class LectureNotes;
class LectureProgress;
class KeySheet;
class VoteBoard;
class VoteQuestion;

/// Where a lecture stands: the stop, and how much of it is read out.
struct LecturePlace {
    std::size_t stop = 0, beat = 0;
};

/// A window of its own; hidden until begin(). Object name "lecture".
class LectureView : public QWidget {
    Q_OBJECT
public:
    explicit LectureView(ThemeName theme, bool moves);
    ~LectureView() override;

    /// Takes a copy of the sketch and shows it on `screen`, at that place; without one the same sketch as
    /// last time goes on where it was, and another begins at its first step.
    void begin(const Result& result, ConstructionKind construction, const ExplainOptions& options,
               QScreen* screen, std::optional<LecturePlace> at = std::nullopt);

    /// Which sketch of a lesson this is, from 0; of 0: no lesson. `notes`: offered on a key here (empty:
    /// there are none of this sketch); without a value the window alone has them. Kept until it is set again.
    void setPart(std::size_t index, std::size_t count, std::optional<QString> notes = std::nullopt);

    // Where it stands.
    const std::vector<Stop>& stops() const { return m_stops; }
    std::size_t stop() const { return m_stop; }
    std::size_t beat() const { return m_beat; }
    LecturePlace place() const { return {m_stop, m_beat}; }
    bool isInLesson() const { return m_parts > 0; }
    bool showsNotes() const; ///< those for who speaks
    bool isBlank() const { return m_blank; }
    bool hidesNumbers() const { return m_hidesNumbers; }
    bool showsNextTitle() const { return m_peeks; }
    bool isVoting() const;  ///< a question is put to the class, and the sheet shows what is given
    bool isChanged() const; ///< the sketch is not the plan's any more
    bool leavesTolerancesOut() const { return m_leavesOut; }
    ThemeName theme() const { return m_theme; }
    bool moves() const { return m_moves; }
    Canvas& canvas() { return *m_canvas; }
    LectureColumn& column() { return *m_column; }
    VoteBoard& voteBoard() { return *m_vote; }
    SketchDocument& document() { return m_document; }
    const Measures& measures() const { return m_measures; }

public slots:
    void next();
    void previous();
    void nextStop();     ///< whole
    void previousStop(); ///< whole
    void goTo(std::size_t stop, bool whole);
    void backToPlan();
    void setVoting(bool on);
    void takeTwin(); ///< the question with other numbers, in the lecture's own document
    void setTheme(tailpoint::ThemeName name);
    void setMoves(bool on);

signals:
    void themeChosen(tailpoint::ThemeName name);
    void movesChosen(bool on);
    void partAsked(int by); ///< of a lesson: 1 the next sketch, -1 the one before
    void ended();           ///< Escape: hidden, the window is to have the keys again

protected:
    void keyPressEvent(QKeyEvent* event) override;
    void mouseReleaseEvent(QMouseEvent* event) override;
    void mousePressEvent(QMouseEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;
    void closeEvent(QCloseEvent* event) override;
    void paintEvent(QPaintEvent* event) override;
    bool focusNextPrevChild(bool) override { return false; }

private:
    bool moveKey(QKeyEvent* event);
    bool showKey(QKeyEvent* event);
    bool changeKey(QKeyEvent* event);
    bool voteKey(QKeyEvent* event);
    void goTo(std::size_t stop, bool whole, LectureColumn::From from);
    void click();
    bool leaveCover(); ///< what covers the sheet goes first; true where something did
    void replan();     ///< the sketch changed: the same step of the new solution
    void anchor();
    std::optional<std::size_t> stopAt(const StepPlace& place, std::size_t index) const;
    void show(bool moves);
    void takeOther();
    bool canLeaveTolerancesOut() const;
    void takeTolerances(); ///< leaves them out of the lecture, or takes them in again
    void end();
    void takeScreen(QScreen* screen);
    void placeColumn();
    void placeSheet();
    void showNotes(bool on);
    void beginVote();
    void screenGone(QScreen* screen);
    FigureOptions figureNow() const;
    FigureOptions questionFigure() const;

    SketchDocument m_document;
    Sketch m_plan;
    Sketch m_begun;            ///< what the lecture is of; m_plan may be without its tolerances
    bool m_leavesOut = false;  ///< them
    std::size_t m_planned = 0; ///< the answer that was chosen in the window
    FigureOptions m_figure;
    ExplainOptions m_options;
    std::vector<Stop> m_stops;
    ProblemWords m_words; ///< at every move of a drag
    std::size_t m_stop = 0, m_beat = 0;
    std::vector<StepPlace> m_walked; ///< the steps up to here, when it last went on or back
    std::size_t m_walkedBeat = 0;
    bool m_walkedWhole = false;
    LectureColumn::From m_from = LectureColumn::From::newest;
    bool m_blank = false, m_hidesNumbers = false, m_peeks = false, m_notes = false, m_other = false;
    bool m_replanning = false;
    ThemeName m_theme;
    bool m_moves;
    std::size_t m_part = 0, m_parts = 0; ///< of a lesson
    bool m_isPartPlanned = false;        ///< what is shown is a lesson's
    std::optional<QString> m_speakers;   ///< the part's notes, where they are offered here
    Measures m_measures;
    Canvas* m_canvas;
    LectureColumn* m_column;
    LectureProgress* m_progress;
    KeySheet* m_keys;
    VoteBoard* m_vote;
    VoteQuestion* m_question;      ///< over the sheet while there is a vote
    LectureNotes* m_lessonNotes;   ///< under it, on a key
    std::optional<Sketch> m_voted; ///< whose question the board has
    std::uint32_t m_twins = 0;     ///< how many were made
    QWidget* m_cover;              ///< blank
};

} // namespace tailpoint
