// SPDX-License-Identifier: MIT
// One given value too few: what the givens bound all the same, drawn to scale.
#include "core/explain/families.h"
#include "core/explain/rounded.h"

#include <cmath>
#include <numbers>

namespace tailpoint::explaining {

namespace {

/// The vectors by what is known of them. A vector without length is none.
struct Open {
    explicit Open(const Board& theBoard) : board(theBoard) {
        for (const Vector& force : board.forces())
            take(force);
        take(board.sum());
    }
    const Board& board;
    const Vector *whole = nullptr, *half = nullptr, *known = nullptr; ///< the last of each kind
    int wholes = 0, halves = 0, knowns = 0;

    bool isOneTooFew() const { return wholes == 1 && halves == 1; }
    bool isLine() const { return half->wayGiven; }
    /// From the known vector to the one on the line, within half a turn either way.
    double angle() const {
        return normalized(half->wayNumber.value - known->wayNumber.value, board.sketch.angleUnit);
    }
    bool isParallel() const { return std::abs(std::sin(angle() * std::numbers::pi / board.half())) < 1e-12; }
    /// The perpendicular to the line ends on it, on the side to which the vector points.
    bool meetsFoot() const {
        const bool areAdded = (half->id == kSumVector) == (known->id == kSumVector);
        const bool isAcute = std::abs(angle()) < board.half() / 2;
        return board.given(half->id).lineOfActionOnly || isAcute != areAdded;
    }

private:
    void take(const Vector& vector) {
        if (vector.sizeGiven && vector.magnitude == 0)
            return;
        const int given = (vector.sizeGiven ? 1 : 0) + (vector.wayGiven ? 1 : 0);
        (given == 0 ? whole : given == 1 ? half : known) = &vector;
        ++(given == 0 ? wholes : given == 1 ? halves : knowns);
    }
};

Formula atLeast(const Formula& size, Formula least) {
    return related(size, Relation::greaterOrEqual, std::move(least));
}

/// The perpendicular from the end of the known vector to the line.
void writeFoot(const Board& board, Step& step, const Open& q) {
    const bool isForward = q.angle() > 0;
    const auto sine = [&](const Formula& line, const Formula& known) {
        return apply("sin", isForward ? sum(line, negative(known)) : sum(known, negative(line)));
    };
    const Formula numbers = product(q.known->sizeNumber, sine(q.half->wayNumber, q.known->wayNumber));
    const Formula between = product(
        q.known->sizeNumber, apply("sin", board.carried.carried(std::abs(q.angle()), Dimension::angle)));
    const Formula least =
        board.bound(static_cast<double>(evaluate(numbers, board.sketch.angleUnit).value_or(0)));
    step.reasoning.push_back(board.say(
        SENTENCE("solution", "Draw {known} to scale, and through one of its ends the parallel to the line of "
                             "action of {half}: {whole} "
                             "joins the other end to a point of that line, and is shortest where it meets "
                             "the line at right angles:"),
        "half", q.half->vector, "whole", q.whole->vector, "known", q.known->vector));
    Working bound{{},
                  atLeast(q.whole->size, product(q.known->size, sine(q.half->theta, q.known->theta))),
                  atLeast(q.whole->size, between),
                  atLeast(q.whole->size, least)};
    step.workings.push_back(std::move(bound));
    step.conclusion.push_back(
        board.say(SENTENCE("solution", "So {size} can't be less than {least}; one more value must "
                                       "be given to fix it."),
                  "size", q.whole->size, "least", least));
}

/// The perpendicular would end behind: the vector on the line only makes the other one longer.
void writeBehind(const Board& board, Step& step, const Open& q) {
    step.reasoning.push_back(board.say(
        SENTENCE("solution", "Draw {known} to scale, and through one of its ends the parallel to the line of "
                             "action of {half}: {whole} "
                             "joins the other end to a point of that line. The farther {half} reaches in "
                             "its sense, the longer {whole}, so it is shortest where {half} is zero:"),
        "known", q.known->vector, "half", q.half->vector, "whole", q.whole->vector));
    step.workings.push_back(
        {{}, atLeast(q.whole->size, q.known->size), {}, atLeast(q.whole->size, q.known->sizeNumber)});
}

void writeCircle(const Board& board, Step& step, const Open& q) {
    const double k = q.known->sizeNumber.value, v = q.half->sizeNumber.value;
    step.reasoning.push_back(board.say(
        SENTENCE("solution", "Whatever the direction of {half}, {whole} is no shorter than the difference of "
                             "the two magnitudes that are given and no longer than their sum:"),
        "half", q.half->vector, "whole", q.whole->vector));
    step.workings.push_back(
        {{},
         related(absolute(sum(q.known->size, negative(q.half->size))), Relation::lessOrEqual, q.whole->size,
                 Relation::lessOrEqual, sum(q.known->size, q.half->size)),
         {},
         related(board.bound(std::abs(k - v)), Relation::lessOrEqual, q.whole->size, Relation::lessOrEqual,
                 board.bound(k + v))});
}

} // namespace

void writeOpenEstimate(Board& board) {
    const Open q(board);
    Step& step =
        board.step(StepKey::estimate, SENTENCE("solution", "What a drawing can tell"), Stage::directions);
    if (!q.isOneTooFew() || q.knowns == 0 || (q.knowns == 1 && q.isLine() && q.isParallel())) {
        step.reasoning.push_back(
            board.say(SENTENCE("solution", "No estimate can be made: each value chosen for one of the "
                                           "unknowns makes another drawing.")));
        return;
    }
    if (q.knowns > 1) {
        step.reasoning.push_back(board.say(
            q.isLine()
                ? SENTENCE("solution", "Draw what is known tip to tail, then the line of {half} in its "
                                       "sense: {whole} closes the polygon from a point of that line. The "
                                       "shortest such way, to be read off, is the least that {whole} can be.")
                : SENTENCE("solution", "Draw what is known tip to tail, then the circle of {half}: {whole} "
                                       "closes the polygon from a point of it. The shortest and the longest "
                                       "such way, to be read off, bound {whole}."),
            "half", q.half->vector, "whole", q.whole->vector));
        return;
    }
    if (!q.isLine())
        return writeCircle(board, step, q);
    return q.meetsFoot() ? writeFoot(board, step, q) : writeBehind(board, step, q);
}

} // namespace tailpoint::explaining
