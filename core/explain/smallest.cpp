// SPDX-License-Identifier: MIT
// The smallest force that puts the sum on a line, and the smallest sum that a force along a line leaves: a
// right triangle each time.
#include "core/explain/families.h"
#include "core/explain/slip.h"

#include "core/formula/turns.h"

namespace tailpoint::explaining {

namespace {

/// `leg` is sought at right angles to `line`; the known side is the hypotenuse.
struct Right : Triangle {
    explicit Right(const Board& theBoard) : Triangle(theBoard) {
        const auto [a, b] = Reduction::others(r.knownSide());
        leg = board.things.name(r.side[a]) == *board.sketch.smallest ? a : b;
        line = a + b - leg;
    }
    std::size_t leg = 0, line = 0;
};

void writeWhy(Board& board, const Right& q) {
    Step& step = board.step(StepKey::why, SENTENCE("solution", "Why the right angle?"), Stage::construction);
    step.parts = {part(FigurePart::Kind::locus, q.side(q.line).index)};
    const Formula &leg = q.side(q.leg).vector, &line = q.side(q.line).vector, &known = q.known().vector;
    step.reasoning.push_back(board.say(
        board.solved.family == Family::smallestSum
            ? SENTENCE(
                  "solution",
                  "Whatever the magnitude of {line}, the tip of {leg} stays on the line through the tip of "
                  "{known} parallel to {line}. The point of that line nearest to the common point is the "
                  "foot "
                  "of the perpendicular.")
        : !q.r.loop && q.r.side[2] == q.known().id
            ? SENTENCE(
                  "solution",
                  "{leg} must lead from some point of the line of {line} to the tip of {known}. The shortest "
                  "way from a line to a point is the perpendicular: every other way is the hypotenuse of a "
                  "right triangle over it, and longer.")
            : SENTENCE(
                  "solution",
                  "{leg} must lead from the tip of {known} to some point of the line of {line}. The shortest "
                  "way "
                  "from a point to a line is the perpendicular: every other way is the hypotenuse of a right "
                  "triangle over it, and longer."),
        "line", line, "leg", leg, "known", known));
    step.conclusion.push_back(board.say(
        SENTENCE("solution",
                 "So {leg} is perpendicular to {line}, the triangle is right-angled, and {known} is its "
                 "hypotenuse."),
        "leg", leg, "line", line, "known", known));
}

void writeEstimate(Board& board, const Right& q) {
    Step& step =
        board.step(StepKey::estimate, SENTENCE("solution", "Estimate before computing"), Stage::construction);
    step.parts = {part(FigurePart::Kind::locus, q.side(q.line).index)};
    step.reasoning.push_back(
        board.say(SENTENCE("solution", "A leg is shorter than the hypotenuse: both {leg} and {line} must "
                                       "come out smaller than {known}."),
                  "leg", q.side(q.leg).size, "line", q.side(q.line).size, "known",
                  equal(q.known().size, q.known().sizeNumber)));
    step.conclusion.push_back(board.say(SENTENCE(
        "solution", "Drawn to scale, the foot of the perpendicular shows about how long each of them is.")));
    tellScale(board, step);
}

void writeAngle(Board& board, const Right& q) {
    Step& step =
        board.step(StepKey::angle, SENTENCE("solution", "The angle beside the right one"), Stage::interior);
    step.parts = {part(FigurePart::Kind::tails, q.known().index, q.side(q.line).index)};
    step.angles = {named(part(FigurePart::Kind::opposite, q.side(q.leg).index), q.symbol(q.leg))};
    step.reasoning.push_back(board.say(
        SENTENCE("solution", "Between the sides {known} and {line} lies {angle}, from their directions."),
        "known", q.known().vector, "line", q.side(q.line).vector, "angle", q.symbol(q.leg)));
    board.show(step, q.angle(q.leg));
}

void noteSlips(const Board& board, Step& step, const Right& q) {
    const Vector& leg = q.side(q.leg);
    const Formula& right = board.carried.formulaOf(leg.sizeId);
    if (const auto cosine = slipped(board, leg.sizeId, withFunction(right, "sin", "cos")))
        step.notes.push_back(board.say(
            SENTENCE("solution",
                     "{leg} lies opposite {angle}: with the cosine in place of the sine it would come "
                     "out as {value}."),
            "leg", leg.size, "angle", q.symbol(q.leg), "value", *cosine));
    if (const auto tangent = slipped(board, leg.sizeId, withFunction(right, "sin", "tan")))
        step.notes.push_back(
            board.say(SENTENCE("solution",
                               "{known} is the hypotenuse: taken for a leg, with the tangent, it would give "
                               "{value} for {leg}, which is not the smallest."),
                      "known", q.known().size, "value", *tangent, "leg", leg.size));
}

void writeLegs(Board& board, const Right& q) {
    Step& step =
        board.step(StepKey::legs, SENTENCE("solution", "The two legs"), Stage::magnitudes, Law::sines);
    step.triangleAlone = true;
    step.parts = {arrowPart(q.side(q.leg).index), arrowPart(q.side(q.line).index)};
    step.reasoning.push_back(board.say(
        SENTENCE("solution", "In a right triangle the law of sines reduces to sine and cosine, since the "
                             "sine of the right angle is 1: the leg opposite the angle is the hypotenuse "
                             "times its sine, the leg beside it the hypotenuse times its cosine.")));
    board.show(step, q.side(q.leg).sizeId);
    board.show(step, q.side(q.line).sizeId);
    noteSlips(board, step, q);
}

void writeWay(Board& board, const Right& q) {
    const Vector& leg = q.side(q.leg);
    Step& step = board.step(StepKey::direction, SENTENCE("solution", "The direction of the smallest vector"),
                            Stage::all);
    step.parts = {part(FigurePart::Kind::direction, leg.index)};
    board.show(step, leg.wayId);
    step.reasoning.push_back(
        board.say(board.isCounterClockwise(board.signOf(leg.wayId))
                      ? SENTENCE("solution",
                                 "Perpendicular to {line}, on the side to which the triangle closes: turned "
                                 "counter-clockwise from it by {right}.")
                      : SENTENCE("solution",
                                 "Perpendicular to {line}, on the side to which the triangle closes: turned "
                                 "clockwise from it by {right}."),
                  "line", q.side(q.line).vector, "right", quarterTurn(board.sketch.angleUnit)));
    if (const auto way = slipped(board, leg.wayId, turnedBack(board.carried.formulaOf(leg.wayId))))
        step.notes.push_back(board.say(
            SENTENCE("solution",
                     "Turned the other way from {line}, {theta} would come out as {value}: there the "
                     "triangle does not close."),
            "line", q.side(q.line).vector, "theta", leg.theta, "value", *way));
}

} // namespace

void writeSmallestEstimate(Board& board) {
    const Right q(board);
    writeWhy(board, q);
    writeEstimate(board, q);
}

void writeSmallest(Board& board) {
    const Right q(board);
    writeGiven(board);
    writeCount(board);
    writeKnown(board);
    writeSenses(board);
    writeSmallestEstimate(board);
    writeAngle(board, q);
    writeLegs(board, q);
    writeWay(board, q);
    writeEnd(board);
}

} // namespace tailpoint::explaining
