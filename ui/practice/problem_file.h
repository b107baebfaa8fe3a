// SPDX-License-Identifier: MIT
// A problem as a sketch's file: its statement, who made it, and how it is marked stand beside what every
// sketch has.
#pragma once

#include "core/practice/problem.h"

#include <QByteArray>

namespace tailpoint {

/// {"statement": "Two boats …", "practice": {"code": "080005", "family": "two-forces", "level": 1,
/// "number": 5, "version": 1}} and, where both answers are wanted, "marking": {"bothAnswers": true}: keys of
/// the file that the window keeps and doesn't heed.
Sketch withPracticeKeys(const Problem& problem);
QByteArray writeProblem(const Problem& problem);

/// The statement as it stands in the file, edited or not; empty where there is none.
std::string statementOf(const Sketch& sketch);
/// The same, unless it is the words that a problem was made with and the values are others now: these would
/// ask another question.
std::string wordsOf(const Sketch& sketch);
/// The same of a sketch that changes time and again: a problem is made once, to be compared with.
class ProblemWords {
public:
    std::string of(const Sketch& sketch);

private:
    std::optional<ProblemId> m_id;
    std::optional<Problem> m_made;
};
/// Which problem it is, where the file says so and the problem exists.
std::optional<ProblemId> problemIdOf(const Sketch& sketch);
/// The sketch with another statement; an empty one takes the key out.
Sketch withStatement(const Sketch& sketch, const std::string& statement);

/// otherNumbers() of a sketch as a file has it. It is no longer the problem of its code; a statement as it
/// was generated says the new values, one that was edited goes, for nobody knows which of its numbers are
/// meant.
std::optional<Sketch> withOtherNumbers(const Sketch& sketch, std::uint32_t seed);

} // namespace tailpoint
