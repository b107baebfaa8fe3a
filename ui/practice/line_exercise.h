// SPDX-License-Identifier: MIT
// The open problem worked as an example: a solution whose last lines are blank and are filled one by one, or
// one in which a line was rewritten by a slip, to be found and mended. The answer is withheld meanwhile, and
// the fields of a learner's own answer stand aside. It goes into the record as an example. Draws nothing.
#pragma once

#include "core/practice/asked_lines.h"
#include "core/practice/record.h"

#include <QObject>
#include <QString>

namespace tailpoint {

class OwnAnswer;
class Practice;
class SketchDocument;

class LineExercise : public QObject {
    Q_OBJECT
public:
    LineExercise(SketchDocument& document, OwnAnswer& answer, Practice& practice, QObject* parent = nullptr);
    ~LineExercise() override;

    /// So many lines are blank as the record suggests. False, and nothing happens, where no problem is open.
    bool beginFaded();
    /// One of the slips that are likely at the problem's level. False, and nothing happens, where none of
    /// them can be shown in a line of its solution.
    bool beginFlawed(std::uint32_t seed);
    /// Some likely slip of the problem's level can be shown in a line of its solution.
    static bool hasSlip(const Problem& problem);
    /// Nothing is asked any more; whether the answer is withheld stays as it is.
    void end();

    bool isOn() const { return m_worked != WorkedAs::question; }
    WorkedAs worked() const { return m_worked; } ///< question: none is under way
    bool isDone() const { return m_isDone; }     ///< the solution stands whole
    bool wentWell() const { return m_wentWell; }
    /// What may be seen now: without the blank lines, with the slip until it is mended.
    const Worked& shown() const { return m_shown; }

    /// The line that is asked for, in shown(): the first blank one, or the one with the slip once it is
    /// found.
    std::optional<WorkingPlace> asked() const;
    bool asksLawAlone() const { return m_faded.onlyLaw; }           ///< 'Which law starts, and why?'
    std::string prompt() const;                                     ///< for the principle, of a faded one
    std::size_t blankLines() const { return m_faded.blank.size(); } ///< that are left
    /// A number, and on what its line rests; where the law alone is asked for, only that. Right: the line
    /// stands in shown(), and the next one is asked for.
    void fill(std::optional<Principle> principle, const QString& typed);

    bool isFound() const { return m_isFound; } ///< the line with the slip was pointed at
    void pointAt(WorkingPlace place);          ///< a line of shown() that calculates
    void mend(const QString& typed);           ///< Precondition: isFound()
    const FlawedSolution* flawed() const { return m_flawed ? &*m_flawed : nullptr; }

    /// Given up: the line that is asked for is shown.
    bool canShowLine() const { return m_hasTried && !m_isDone; }
    void showLine();

    /// What came of the last entry.
    struct Came {
        std::optional<LineMark> mark;
        std::optional<bool> isPrincipleRight;
        std::optional<WorkingPlace> computes; ///< pointed at, and not the one; in shown()
        QString fault;                        ///< why it can't be taken
        std::optional<Working> line;          ///< that stands now: it was right, or given up
        bool isGivenUp = false;
    };
    const Came& came() const { return m_came; }
    /// Why the solution starts with that law; told once it is done.
    std::vector<Prose> why() const { return m_isDone ? m_asked->whyAtStart() : std::vector<Prose>(); }

signals:
    void changed();  ///< begun, ended, or another line is asked for
    void answered(); ///< came() is new

private:
    bool begin(WorkedAs worked);
    void fade();
    void fillLaw(std::optional<Principle> principle);
    void take(bool isGivenUp);
    void finish();
    void modeChanged();
    void problemChanged();
    std::size_t line() const { return m_asked->lines().size() - m_left; }

    SketchDocument& m_document;
    OwnAnswer& m_answer;
    Practice& m_practice;
    WorkedAs m_worked = WorkedAs::question;
    std::optional<AskedLines> m_asked;
    Worked m_shown;
    FadedSolution m_faded;
    std::size_t m_blank = 0, m_left = 0; ///< lines that were blank at first, and that are
    std::optional<FlawedSolution> m_flawed;
    bool m_isFound = false, m_isDone = false, m_wentWell = true, m_hasTried = false, m_isTurning = false;
    std::optional<ProblemId> m_problem;
    Came m_came;
};

} // namespace tailpoint
