// SPDX-License-Identifier: MIT
// The resultant of two forces, from the triangle that is kept: law of cosines, law of sines, direction.
#include "core/explain/quadrant.h"
#include "core/explain/resultant.h"
#include "core/explain/slip.h"

#include "core/quantity/decimals.h"

#include <cmath>
#include <numbers>

namespace tailpoint::explaining {

namespace {

/// The angle read in another unit: that many of the sheet's units are one of it.
struct OtherUnit {
    double factor;
    Wording asked;
};
OtherUnit otherUnit(const Board& board) {
    switch (board.sketch.angleUnit) {
    case AngleUnit::deg:
        return {180 / std::numbers::pi,
                SENTENCE("solution", "Is the calculator set to degrees? In radians {sum} "
                                     "would come out as {value}.")};
    case AngleUnit::rad:
        return {std::numbers::pi / 180,
                SENTENCE("solution", "Is the calculator set to radians? In degrees {sum} "
                                     "would come out as {value}.")};
    case AngleUnit::gon:
        break;
    }
    return {
        200.0 / 180,
        SENTENCE("solution", "Is the calculator set to gon? In degrees {sum} would come out as {value}.")};
}

void noteCalculator(const Board& board, Step& step, const Pair& pair) {
    const OtherUnit other = otherUnit(board);
    const QuantityId square{What::square, kSumVector};
    Formula read = product(number(other.factor, shortest(other.factor)), board.symbolOf(pair.gamma));
    if (const auto value = slipped(
            board, {{square, exchanged(board.carried.formulaOf(square), pair.gamma, std::move(read))}},
            pair.sum.sizeId))
        step.notes.push_back(board.say(other.asked, "sum", pair.sum.size, "value", *value));
}

/// The angle between the tails taken for the triangle's.
void noteAngle(const Board& board, Step& step, const Pair& pair) {
    const Formula square = board.carried.formulaOf({What::square, kSumVector}),
                  phi = board.symbolOf(pair.phi);
    const auto value = slipped(board, pair.sum.sizeId, root(exchanged(square, pair.gamma, phi)));
    if (!value)
        return;
    step.notes.push_back(board.say(
        SENTENCE("solution",
                 "The angle in the triangle is {inner}, not {outer} between the tails: with {phi} after the "
                 "minus sign {sum} would come out as {value}."),
        "inner", equal(board.symbolOf(pair.gamma), board.number(pair.gamma)), "outer",
        equal(phi, board.number(pair.phi)), "phi", phi, "sum", pair.sum.size, "value", *value));
}

} // namespace

void writeCosines(Board& board, const Pair& pair) {
    Step& step = board.step(StepKey::cosines, SENTENCE("solution", "Law of cosines for the magnitude"),
                            Stage::magnitudes, Law::cosines);
    const bool byHand = board.options.handRounding;
    const Formula& size = pair.sum.sizeNumber;
    step.triangleAlone = true;
    step.parts = {part(FigurePart::Kind::triangle), arrowPart(kSumIndex),
                  part(FigurePart::Kind::opposite, kSumIndex)};
    step.reasoning.push_back(board.say(
        byHand ? SENTENCE("solution",
                          "Take the root, put in the numbers with their units, and round as on paper.")
               : SENTENCE("solution",
                          "Take the root, put in the numbers with their units, and round only at the end.")));
    board.show(step, pair.sum.sizeId);
    if (byHand)
        step.conclusion.push_back(
            board.say(SENTENCE("solution", "The rounded value, {size}, is carried on."), "size", size));
    noteCalculator(board, step, pair);
    noteAngle(board, step, pair);
}

void writeHalving(Board& board, const Pair& pair) {
    Step& step =
        board.step(StepKey::halving, SENTENCE("solution", "Equal forces: the diagonal halves the angle"),
                   Stage::triangle);
    step.triangleAlone = true;
    step.parts = {part(FigurePart::Kind::opposite, pair.small.index)};
    step.reasoning.push_back(
        board.say(SENTENCE("solution", "The triangle has two equal sides, so the angles opposite them are "
                                       "equal, and {sum} halves {phi}. No law of sines is needed."),
                  "sum", pair.sum.vector, "phi", board.symbolOf(pair.phi)));
    board.show(step, pair.oppositeSmall());
}

void writeSines(Board& board, const Pair& pair) {
    Step& step = board.step(StepKey::sines,
                            SENTENCE("solution", "Law of sines for the angle beside the greater force"),
                            Stage::triangle, Law::sines);
    const Formula sought = board.symbolOf(pair.oppositeSmall()), gamma = board.symbolOf(pair.gamma);
    step.triangleAlone = true;
    step.parts = {part(FigurePart::Kind::opposite, pair.small.index), arrowPart(pair.small.index)};
    step.reasoning.push_back(board.say(
        SENTENCE("solution",
                 "Now the pair {sum}, {gamma} is whole. Find {angle}, opposite the smaller force {small}."),
        "sum", pair.sum.size, "gamma", gamma, "angle", sought, "small", pair.small.vector));
    step.workings.push_back(
        {{},
         equal(over(apply("sin", sought), pair.small.size), over(apply("sin", gamma), pair.sum.size)),
         {},
         {}});
    board.show(step, pair.oppositeSmall());
    const Formula second = board.supplementOf(pair.oppositeSmall());
    step.conclusion.push_back(board.say(
        SENTENCE("solution", "The inverse sine also allows {supplement}. The greater side lies opposite the "
                             "greater angle, and {small} is smaller than {great}: {angle} is smaller than "
                             "{oppositeGreat} and so acute. {second} drops out."),
        "supplement", equal(sum(board.halfTurn(), negative(sought)), second), "small", pair.small.size,
        "great", pair.great.size, "angle", sought, "oppositeGreat", board.symbolOf(pair.oppositeGreat()),
        "second", second));
    const auto value = slipped(board, pair.sum.wayId,
                               exchanged(board.carried.formulaOf(pair.sum.wayId), pair.oppositeSmall(),
                                         sum(board.halfTurn(), negative(sought))));
    if (value)
        step.notes.push_back(
            board.say(SENTENCE("solution", "With {second} for {angle}, {theta} would come out as {value}."),
                      "second", second, "angle", sought, "theta", pair.sum.theta, "value", *value));
}

namespace {

/// Which way one turns, and so whether the angle is added: clockwise may be the sheet's own sense.
Wording turningByAngle(bool counterClockwise, bool added) {
    if (counterClockwise)
        return added
                   ? SENTENCE("solution", "{angle} is measured from {great}, not from the axis. From {great} "
                                          "towards {sum} one turns counter-clockwise, so {angle} is added to "
                                          "{theta}.")
                   : SENTENCE("solution", "{angle} is measured from {great}, not from the axis. From {great} "
                                          "towards {sum} one turns counter-clockwise, so {angle} is "
                                          "subtracted from {theta}.");
    return added ? SENTENCE("solution",
                            "{angle} is measured from {great}, not from the axis. From {great} towards "
                            "{sum} one turns clockwise, so {angle} is added to {theta}.")
                 : SENTENCE("solution",
                            "{angle} is measured from {great}, not from the axis. From {great} towards "
                            "{sum} one turns clockwise, so {angle} is subtracted from {theta}.");
}

} // namespace

void writeDirection(Board& board, const Pair& pair) {
    Step& step =
        board.step(StepKey::direction, SENTENCE("solution", "Refer the direction to the axis"), Stage::all);
    const Formula angle = board.symbolOf(pair.oppositeSmall());
    step.parts = {part(FigurePart::Kind::direction, kSumIndex), part(FigurePart::Kind::axis)};
    step.angles = {named(part(FigurePart::Kind::opposite, pair.small.index), angle)};
    const int sign = board.signOf(pair.sum.wayId);
    step.reasoning.push_back(board.say(turningByAngle(board.isCounterClockwise(sign), sign > 0), "angle",
                                       angle, "great", pair.great.vector, "sum", pair.sum.vector, "theta",
                                       pair.great.theta));
    board.show(step, pair.sum.wayId);
    step.conclusion.push_back(liesThere(board, pair.sum));
    step.notes.push_back(board.say(
        SENTENCE("solution",
                 "The question asks for the angle from {axis}. {angle} alone would answer another question."),
        "axis", board.axisWords(), "angle", board.number(pair.oppositeSmall())));
}

} // namespace tailpoint::explaining
