// SPDX-License-Identifier: MIT
// The resultant of two forces: parallelogram, half of it, law of cosines, law of sines.
#include "core/explain/resultant.h"
#include "core/explain/slip.h"

#include <cmath>

namespace tailpoint::explaining {

namespace {

enum class Opening { acute, right, obtuse };

Opening openingOf(const Pair& pair) {
    const double dot = pair.p.v.dot(pair.q.v);
    const double slack = 8e-16 * pair.p.magnitude * pair.q.magnitude;
    return dot > slack ? Opening::acute : dot < -slack ? Opening::obtuse : Opening::right;
}

Working boundsOf(const Board& board, const Pair& pair) {
    const auto bounds = [&](Formula low, Formula high) {
        return related(std::move(low), Relation::lessOrEqual, pair.sum.size, Relation::lessOrEqual,
                       std::move(high));
    };
    return {{},
            bounds(absolute(sum(pair.p.size, negative(pair.q.size))), sum(pair.p.size, pair.q.size)),
            {},
            bounds(board.bound(std::abs(pair.p.sizeNumber.value - pair.q.sizeNumber.value)),
                   board.bound(pair.p.sizeNumber.value + pair.q.sizeNumber.value))};
}

/// Compared with a right angle, which narrows the bounds.
void writeOpening(Board& board, Step& step, const Pair& pair) {
    const Formula right = board.force(std::hypot(pair.p.sizeNumber.value, pair.q.sizeNumber.value));
    const Opening opening = openingOf(pair);
    board.expected = {
        pair.sum.sizeId,
        opening == Opening::obtuse ? board.bound(std::abs(pair.p.sizeNumber.value - pair.q.sizeNumber.value))
                                   : right,
        opening == Opening::acute ? board.bound(pair.p.sizeNumber.value + pair.q.sizeNumber.value) : right};
    Formula square = equal(root(sum(power(pair.p.size, 2), power(pair.q.size, 2))), right);
    const auto wording = [&] {
        switch (opening) {
        case Opening::right:
            return SENTENCE("solution",
                            "The forces look perpendicular to each other: then {sum} is {square}.");
        case Opening::acute:
            return SENTENCE("solution",
                            "The angle between the tails looks acute, so {sum} is greater than {square}.");
        case Opening::obtuse:
            break;
        }
        return SENTENCE("solution",
                        "The angle between the tails looks obtuse, so {sum} is smaller than {square}.");
    }();
    step.conclusion.push_back(board.say(wording, "sum", pair.sum.size, "square", std::move(square)));
}

} // namespace

void writePairEstimate(Board& board) {
    const Pair pair(board);
    Step& step =
        board.step(StepKey::estimate, SENTENCE("solution", "Sketch to scale, and estimate before computing"),
                   Stage::directions);
    step.parts = {arrowPart(0), arrowPart(1)};
    step.reasoning.push_back(betweenTheBounds(board, pair.sum));
    step.workings.push_back(boundsOf(board, pair));
    writeOpening(board, step, pair);
    step.conclusion.push_back(
        pair.equal()
            ? board.say(SENTENCE("solution", "The forces are equal, so {sum} lies midway between them."),
                        "sum", pair.sum.vector)
            : board.say(SENTENCE("solution", "{sum} lies nearer to {great}, the greater force."), "sum",
                        pair.sum.vector, "great", pair.great.vector));
    tellScale(board, step);
}

namespace {

void writeTailsStep(Board& board, const Pair& pair) {
    Step& step = board.step(StepKey::tails, SENTENCE("solution", "Angle between the tails"), Stage::between);
    step.parts = {part(FigurePart::Kind::tails, 0, 1), part(FigurePart::Kind::direction, 0),
                  part(FigurePart::Kind::direction, 1)};
    step.angles = {named(part(FigurePart::Kind::tails, 0, 1), board.symbolOf(pair.phi))};
    const double p = pair.p.wayNumber.value, q = pair.q.wayNumber.value;
    const bool longWay = std::abs(p - q) > board.half();
    step.reasoning.push_back(board.say(
        longWay
            ? SENTENCE("solution",
                       "Both directions are measured from {axis}. Their difference, each with its sign, "
                       "goes the long way round, beyond {half}, so the angle {phi} between {p} and {q} is "
                       "what it leaves of the full turn.")
            : SENTENCE("solution",
                       "Both directions are measured from {axis}, so the angle {phi} between {p} and {q} "
                       "is their difference, each with its sign."),
        "axis", board.axisWords(), "phi", board.symbolOf(pair.phi), "p", pair.p.vector, "q", pair.q.vector,
        "half", board.halfTurn()));
    board.show(step, pair.phi);
    if (p * q < 0 && !longWay)
        step.notes.push_back(board.say(SENTENCE(
            "solution", "The directions lie on either side of the axis. Subtracting a negative angle "
                        "adds it: mind the sign.")));
}

void writeParallelogram(Board& board, const Pair& pair) {
    Step& step = board.step(StepKey::parallelogram, SENTENCE("solution", "Complete the parallelogram"),
                            Stage::interior);
    step.parts = {part(FigurePart::Kind::parallelogram), part(FigurePart::Kind::opposite, kSumIndex)};
    step.angles = {named(part(FigurePart::Kind::opposite, kSumIndex), board.symbolOf(pair.gamma))};
    step.reasoning.push_back(board.say(
        SENTENCE("solution",
                 "Through each tip draw the parallel to the other force; {sum} is the diagonal from "
                 "the common point. Opposite interior angles are equal, neighbouring ones make "
                 "{half}, all four {full}."),
        "sum", pair.sum.vector, "half", board.halfTurn(), "full", board.fullTurn()));
    step.reasoning.push_back(
        board.say(SENTENCE("solution", "So the angle {gamma} at the tips is the supplement of {phi}:"),
                  "gamma", board.symbolOf(pair.gamma), "phi", board.symbolOf(pair.phi)));
    board.show(step, pair.gamma);
    step.notes.push_back(board.say(
        pair.equal()
            ? SENTENCE("solution",
                       "The forces are equal, so the parallelogram is a rhombus and its diagonal halves "
                       "{phi}. With unequal forces it would not.")
            : SENTENCE("solution",
                       "The diagonal does not halve {phi}: it would only if the forces were equal."),
        "phi", board.symbolOf(pair.phi)));
    if (pair.equal())
        return;
    const auto value =
        slipped(board, {{pair.oppositeSmall(), over(board.symbolOf(pair.phi), count(2))}}, pair.sum.wayId);
    if (value)
        step.notes.back() = board.say(
            SENTENCE("solution", "The diagonal halves {phi} only where the forces are equal: here that would "
                                 "make {theta} {value}."),
            "phi", board.symbolOf(pair.phi), "theta", pair.sum.theta, "value", *value);
}

void writeTriangle(Board& board, const Pair& pair) {
    Step& step = board.step(StepKey::triangle, SENTENCE("solution", "Keep one half: the force triangle"),
                            Stage::found);
    const Formula opposite = board.symbolOf(pair.oppositeSmall()), gamma = board.symbolOf(pair.gamma),
                  oppositeGreat = board.symbolOf(pair.oppositeGreat());
    step.triangleAlone = true;
    step.parts = {part(FigurePart::Kind::triangle)};
    step.angles = {named(part(FigurePart::Kind::opposite, pair.small.index), opposite),
                   named(part(FigurePart::Kind::opposite, pair.great.index), oppositeGreat)};
    step.reasoning.push_back(board.say(
        SENTENCE("solution",
                 "Keep the half in which {great} starts at the common point and {small} follows at its "
                 "tip: it holds the angle {angle} between {great} and {sum}, and that one leads to "
                 "the direction asked for."),
        "great", pair.great.vector, "small", pair.small.vector, "angle", opposite, "sum", pair.sum.vector));
    step.reasoning.push_back(board.say(
        SENTENCE("solution", "Opposite pairs: {sum} and {gamma}, {small} and {oppositeSmall}, {great} and "
                             "{oppositeGreat}."),
        "sum", pair.sum.size, "gamma", gamma, "small", pair.small.size, "oppositeSmall", opposite, "great",
        pair.great.size, "oppositeGreat", oppositeGreat));
    step.reasoning.push_back(
        board.say(SENTENCE("solution",
                           "The two sides {great} and {small} and the angle {gamma} between them are known."),
                  "great", pair.great.size, "small", pair.small.size, "gamma", gamma));
}

void writeChoice(Board& board, const Pair& pair) {
    Step& step = board.step(StepKey::choice, SENTENCE("solution", "Which law?"), Stage::found);
    step.triangleAlone = true;
    step.parts = {part(FigurePart::Kind::triangle)};
    step.reasoning.push_back(
        board.say(SENTENCE("solution",
                           "Two sides and the angle between them: the law of cosines gives the third side. "
                           "The law of sines can't start, for it needs one whole pair, and of each pair one "
                           "half is missing: {gamma} without {sum}, {great} and {small} without "
                           "{oppositeGreat} and {oppositeSmall}."),
                  "gamma", board.symbolOf(pair.gamma), "sum", pair.sum.size, "great", pair.great.size,
                  "small", pair.small.size, "oppositeGreat", board.symbolOf(pair.oppositeGreat()),
                  "oppositeSmall", board.symbolOf(pair.oppositeSmall())));
    const QuantityId square{What::square, kSumVector};
    step.workings.push_back({board.symbolOf(square), board.carried.formulaOf(square), {}, {}});
    step.lines.push_back(square);
}

} // namespace

void narrowByRightAngle(Board& board, Step& step, const Vector& sought, const Vector& a, const Vector& b,
                        double low, double high) {
    const double right = std::hypot(a.sizeNumber.value, b.sizeNumber.value), dot = a.v.dot(b.v),
                 slack = 8e-16 * a.magnitude * b.magnitude;
    const bool isRight = std::abs(dot) <= slack, isLonger = sought.magnitude > right;
    const Formula hypotenuse = board.force(right);
    board.expected = {sought.sizeId, isLonger || isRight ? hypotenuse : board.bound(low),
                      isLonger && !isRight ? board.bound(high) : hypotenuse};
    const auto wording = [&] {
        if (isRight)
            return SENTENCE("solution",
                            "{a} and {b} look perpendicular to each other: then {size} is {square}.");
        if (dot > 0)
            return isLonger ? SENTENCE("solution", "The angle between {a} and {b} looks acute, so {size} is "
                                                   "greater than {square}.")
                            : SENTENCE("solution", "The angle between {a} and {b} looks acute, so {size} is "
                                                   "smaller than {square}.");
        return isLonger ? SENTENCE("solution", "The angle between {a} and {b} looks obtuse, so {size} is "
                                               "greater than {square}.")
                        : SENTENCE("solution", "The angle between {a} and {b} looks obtuse, so {size} is "
                                               "smaller than {square}.");
    }();
    step.conclusion.push_back(board.say(wording, "a", a.vector, "b", b.vector, "size", sought.size, "square",
                                        equal(root(sum(power(a.size, 2), power(b.size, 2))), hypotenuse)));
}

Prose betweenTheBounds(const Board& board, const Vector& sum) {
    return board.say(
        SENTENCE("solution",
                 "Drawn to scale, {sum} can be no shorter than the difference of the two magnitudes (forces "
                 "in opposite senses) and no longer than their sum (forces in the same sense):"),
        "sum", sum.vector);
}

void writeTwoForces(Board& board) {
    const Pair pair(board);
    writeGiven(board);
    writeCount(board);
    writePairEstimate(board);
    writeTailsStep(board, pair);
    writeParallelogram(board, pair);
    writeTriangle(board, pair);
    writeChoice(board, pair);
    writeCosines(board, pair);
    if (pair.equal())
        writeHalving(board, pair);
    else
        writeSines(board, pair);
    writeDirection(board, pair);
    writeEnd(board);
}

} // namespace tailpoint::explaining
