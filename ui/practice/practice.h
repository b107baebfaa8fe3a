// SPDX-License-Identifier: MIT
// The open question as a problem under practice: its hints, what goes into the record of it, and which
// problem comes next. Follows the document and the learner's own answer; draws nothing.
#pragma once

#include "ui/practice/hints.h"
#include "ui/practice/sitting.h"

#include <QObject>
#include <QString>
#include <functional>
#include <map>

namespace tailpoint {

class OwnAnswer;
class SketchDocument;

class Practice : public QObject {
    Q_OBJECT
public:
    Practice(SketchDocument& document, OwnAnswer& answer, Sitting& sitting, QObject* parent = nullptr);

    /// The problem whose sketch is open, its values unchanged; empty: it is none.
    const std::optional<Problem>& problem() const { return m_problem; }
    /// What the file says in words, as long as the given values are those that it was said of.
    QString statement() const;
    /// There is a statement, but the values of the sheet are others now.
    bool isStatementStale() const { return m_isStale; }
    /// The words hold for the values that the sheet has now.
    void confirmStatement();

    /// The next sketch that is opened is a problem to be answered, aimed at that slip. Without this its
    /// answer has been seen, unless it is withheld.
    void expect(std::string aimedAt) { m_expected = std::move(aimedAt); }
    /// The answer of what was just opened was not seen: it is withheld from the start.
    void takeAsUnseen() { m_isExample = false; }

    const Hints& hints() const { return m_hints; }
    bool canHint() const; ///< there is one more, and the answer is still looked for
    /// Tells one more hint; false: first something must be entered, a value or an answer that is marked.
    bool openHint();
    /// The last hint was opened before it was right, or the answer was seen before anything was answered.
    bool isExample() const { return m_isExample; }

    /// The open problem is worked by its solution's lines: what is answered besides isn't counted.
    void workAsExample();
    /// How that went, as an entry of the record. Precondition: problem()
    void enterExample(WorkedAs worked, bool wentWell, int blank);

    Sitting& sitting() const { return m_sitting; }
    bool canBeHarder() const { return m_problem && m_problem->id.level < kLevels; }
    ProblemId onceMore(std::uint32_t seed) const; ///< same kind, other numbers. Precondition: problem()
    ProblemId harder(std::uint32_t seed) const;   ///< Precondition: canBeHarder()
    NextProblem next(std::uint32_t seed) const;   ///< Precondition: problem()

signals:
    void problemChanged(); ///< another, none, or other words for it
    void hintsChanged();
    void recorded(); ///< the record is another, or could not be written

private:
    void documentReplaced();
    void documentChanged();
    void look();
    void marked();
    void modeChanged();
    void seen();
    void becomeExample();
    bool hasEntered() const;
    std::map<std::string, QString> typed() const;
    std::vector<QuantityId> asked() const;
    void enter(const Marking& marking);

    SketchDocument& m_document;
    OwnAnswer& m_answer;
    Sitting& m_sitting;
    std::optional<Problem> m_opened;  ///< as it was opened
    std::optional<Problem> m_problem; ///< while its values are unchanged
    std::string m_statement;
    Sketch m_spokenOf; ///< of which m_statement was said
    bool m_isStale = false;
    std::optional<std::string> m_expected;
    std::string m_aimedAt;
    Hints m_hints;
    std::set<QuantityId> m_right; ///< as it was marked last
    int m_timesMarked = 0;
    bool m_hasMarked = false, m_hasHint = false, m_isExample = false, m_isSolved = false, m_isWorked = false;
    std::map<std::string, QString> m_typedBefore; ///< when the last hint was opened
    std::optional<std::size_t> m_place;           ///< in the record
};

} // namespace tailpoint
