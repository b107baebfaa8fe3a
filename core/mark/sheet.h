// SPDX-License-Identifier: MIT
// One attempt marked: verdicts, points and findings put together. Internal to mark/.
#pragma once

#include "core/mark/telling.h"

namespace tailpoint::marking {

/// The verdicts of a whole, the one that applies first in front.
std::size_t rankOf(Verdict verdict);

/// The marks of one answer.
struct Part {
    std::vector<Given> givens;
    std::vector<UnreadValue> unread;
    std::vector<Fitting> fittings;
    std::vector<MarkedQuantity> quantities; ///< what is asked first
    std::vector<std::size_t> cells;         ///< of these
    Verdict verdict = Verdict::right;
    double points = 0;
};

class Sheet {
public:
    Sheet(const Question& question, const Findings& findings, const Telling& telling)
        : m_question(question), m_findings(findings), m_telling(telling) {}

    Marking mark(const Attempt& attempt) const;

private:
    Part part(const Attempt& attempt, std::size_t answer, std::size_t position) const;
    Known knownBy(const Fitting& fitting) const;
    Marking both(const Attempt& attempt) const;
    void judge(Part& part) const;
    void chargeOnce(Part& part) const;
    void judge(const Part& part, std::size_t index, MarkedQuantity& marked) const;
    MarkedQuantity marked(const Part& part, std::size_t cell) const;
    void remarkMoreFigures(Part& part) const;
    bool isAgainstSense(const Part& part, std::size_t given, const Fitting& fitting) const;
    bool isChargedBefore(const Part& part, const Fitting& fitting) const;
    Verdict verdictOf(const Part& part, std::size_t given) const;
    Verdict rootOf(const Part& part, std::size_t given, int depth) const;
    Verdict whole(const Part& part) const;
    double pointsOf(const Part& part, const MarkedQuantity& quantity, std::size_t given) const;
    bool isNegativeSize(const Given& given) const;
    void remark(const Part& part, MarkedQuantity& quantity, const Given& given) const;
    Marking made(Part part) const;

    const Question& m_question;
    const Findings& m_findings;
    const Telling& m_telling;
};

} // namespace tailpoint::marking
