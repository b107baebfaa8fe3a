// SPDX-License-Identifier: MIT
// One scalar for two equations: what closes the equation along the vector, and what is left over beside it.
#include "core/explain/families.h"

namespace tailpoint::explaining {

namespace {

/// Nothing is left over but by rounding on the way.
bool holdsExactly(const Board& board) {
    return board.solved.messageCode() == MessageCode::holdsByChance;
}

void showFromX(const Board& board, Step& step, const Vector& sought) {
    if (isPlainReference(board.sketch) || isToldFromX(board, sought.id) ||
        board.carried.find({What::fromX, sought.id}) == nullptr)
        return;
    introduceFromX(board, step);
    board.show(step, {What::fromX, sought.id});
}

void concludeAcross(const Board& board, Step& step, const Vector& sought, const QuantityId& across) {
    const Formula left = board.number(across);
    const auto wording = [&] {
        if (!holdsExactly(board))
            return SENTENCE("solution", "{left} is left over across {sought}, which has nothing there: by so "
                                        "much the other equation is off.");
        return left.value == 0
                   ? SENTENCE("solution", "Nothing is left across {sought}: the other equation holds too.")
                   : SENTENCE("solution", "{left} across {sought} comes from rounding on the way: the other "
                                          "equation holds too.");
    }();
    step.conclusion.push_back(
        board.say(wording, "left", equal(board.symbolOf(across), left), "sought", sought.vector));
}

/// Along the given direction, and across it.
void writeAlong(Board& board, const Vector& sought) {
    const QuantityId across{What::along, sought.id, {}, 0, 1};
    Step& step = board.step(StepKey::magnitude, SENTENCE("solution", "Along its direction, and across it"),
                            Stage::all, Law::components);
    step.parts = {arrowPart(sought.index)};
    step.reasoning.push_back(board.say(
        SENTENCE("solution", "{x} and {y} are what {sought} must have to close the equation. Turn them to an "
                             "axis {u} along {sought} and an axis {v} at right angles to it, a quarter turn "
                             "counter-clockwise. Along {u} they give the magnitude; along {v}, where "
                             "{sought} has no component, {across} must be zero."),
        "x", board.symbolOf({What::x, sought.id}), "y", board.symbolOf({What::y, sought.id}), "sought",
        sought.vector, "u", symbol("u"), "v", symbol("v"), "across", board.symbolOf(across)));
    showFromX(board, step, sought);
    introduceAlong(board, step, {&sought});
    showMagnitude(board, step, sought);
    board.show(step, across);
    concludeAcross(board, step, sought, across);
}

/// The direction that closes, and the magnitude that would.
void writeDirection(Board& board, const Vector& sought) {
    constexpr QuantityId kLeft{What::gap, kNobody, {}, 0, kDifference};
    Step& step = board.step(StepKey::magnitude, SENTENCE("solution", "Its direction, and its magnitude"),
                            Stage::all, Law::components);
    step.parts = {arrowPart(sought.index), part(FigurePart::Kind::direction, sought.index)};
    step.reasoning.push_back(board.say(
        SENTENCE("solution", "{x} and {y} are what {sought} must have to close the equation. They say its "
                             "direction. Its magnitude is given, and must be theirs by itself: {left} is by "
                             "how much it is not."),
        "x", board.symbolOf({What::x, sought.id}), "y", board.symbolOf({What::y, sought.id}), "sought",
        sought.vector, "left", board.symbolOf(kLeft)));
    writeWayFromComponents(board, step, sought);
    board.show(step, kLeft);
    const Formula left = board.number(kLeft);
    const auto wording = [&] {
        if (!holdsExactly(board))
            return SENTENCE("solution",
                            "{left} is left over along {sought}: by so much the equation is off.");
        return left.value == 0
                   ? SENTENCE("solution", "Nothing is left over: the magnitude is the given one.")
                   : SENTENCE("solution", "{left} comes from rounding on the way: the magnitude is the given "
                                          "one.");
    }();
    step.conclusion.push_back(
        board.say(wording, "left", equal(board.symbolOf(kLeft), left), "sought", sought.vector));
}

} // namespace

void writeOneUnknown(Board& board) {
    writeGiven(board);
    writeCount(board);
    const Vector& sought = board.found(board.sought()->id);
    writeNeeded(board, sought);
    if (sought.sizeGiven)
        writeDirection(board, sought);
    else
        writeAlong(board, sought);
    writeAnswer(board);
    writeCheck(board);
    writeRoundingCost(board);
}

} // namespace tailpoint::explaining
