// A magnitude along a known line and a direction of known magnitude: two sides and an angle not between them.
// The steps of its solution, in the order in which they are written.
#pragma once

#include "core/explain/families.h"
#include "core/explain/triangle.h"

namespace tailpoint::explaining {

/// k: the known vector; u: on the line; v: on the circle. The angle opposite to v is known from directions.
struct Ambiguous {
    Question question;
    std::size_t k = 0, u = 0, v = 0;
    const Triangle& triangle() const { return question.triangle; }
    const Arrow& at(std::size_t i) const { return *question.triangle.side[i]; }
};

/// The question as it stands in answer `index`: its arrows, its primes.
struct Answer {
    Blackboard board;
    Triangle triangle;
    std::string prime;
};

/// In an answer's own symbols: with its prime, where there are two.
Formula primed(Formula symbol, const std::string& prime);

void writeEstimate(Blackboard& board, const Ambiguous& q);
Term writeKnownAngle(Blackboard& board, const Ambiguous& q);
/// How far the circle's centre is from the line, and so how many triangles.
void writeReach(Blackboard& board, const Ambiguous& q, const Term& angle);
Term writeCandidates(Blackboard& board, const Ambiguous& q, const Term& angle);
void writeDecision(Blackboard& board, const Ambiguous& q, const Term& angle, const Term& acute);
/// Third angle, magnitude and direction of one answer.
void writeRest(Blackboard& board, const Ambiguous& q, Answer& answer, Term angle, const Term& acute);

} // namespace tailpoint::explaining
