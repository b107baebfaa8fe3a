// SPDX-License-Identifier: MIT
// Of the ambiguous case, an answer from the angle that was decided on: third angle, magnitude, direction.
#include "core/explain/ambiguous.h"
#include "core/explain/slip.h"

namespace tailpoint::explaining {

namespace {

Step& restStep(Board& board, std::uint8_t answer) {
    switch (answer) {
    case 0:
        return board.step(StepKey::rest, SENTENCE("solution", "Third angle, magnitude, direction"),
                          Stage::all, Law::sines);
    case 1:
        return board.step(StepKey::first, SENTENCE("solution", "First answer"), Stage::all, Law::sines);
    default:
        return board.step(StepKey::second, SENTENCE("solution", "Second answer"), Stage::all, Law::sines);
    }
}

/// The other sense of the line, where this answer has it: the angle's supplement, the direction half a turn
/// on.
bool writeOtherSense(Board& board, Step& step, const Ambiguous& q, const Vector& u, std::uint8_t answer) {
    const QuantityId supplement = q.in(answer, q.v);
    if (answer == 0 || board.carried.find(supplement) == nullptr)
        return false;
    step.reasoning.push_back(board.say(
        SENTENCE("solution",
                 "Here {u} acts in the other sense of its line, so the angle between the sides is the "
                 "supplement."),
        "u", u.vector));
    board.show(step, supplement);
    board.show(step, u.wayId);
    return true;
}

/// Of two answers on one side of the line: which of the two angles is taken.
void sayWhichAngle(const Board& board, Step& step, const Ambiguous& q, const QuantityId& atK) {
    if (!board.hasTwoAnswers() || q.inBothSenses())
        return;
    step.reasoning.push_back(board.say(
        board.carried.formulaOf(atK).id == q.acute()
            ? SENTENCE("solution", "This answer takes the acute one of the two angles, {acute} itself.")
            : SENTENCE("solution",
                       "This answer takes the obtuse one of the two angles, the supplement of {acute}."),
        "acute", board.symbolOf(q.acute())));
}

/// Who takes the calculator's angle alone loses the answer of the other one.
void noteOneAngle(const Board& board, Step& step, const Ambiguous& q, const Vector& u,
                  const QuantityId& atK) {
    if (!board.hasTwoAnswers() || q.inBothSenses() || board.carried.formulaOf(atK).id == q.acute())
        return;
    step.notes.push_back(board.say(
        SENTENCE("solution", "The calculator shows only {acute}: anyone who stops there loses the answer "
                             "{size}."),
        "acute", board.number(q.acute()), "size", equal(u.size, board.answered(u.sizeNumber))));
}

/// The wrong angle in the law of sines, and the third angle turned off the wrong way.
void noteSlips(const Board& board, Step& step, const Ambiguous& q, const Vector& u, const Vector& v,
               const QuantityId& atK, const QuantityId& third) {
    const auto size =
        slipped(board, u.sizeId, exchanged(board.carried.formulaOf(u.sizeId), third, board.symbolOf(atK)));
    if (size)
        step.notes.push_back(board.say(
            SENTENCE("solution",
                     "{size} lies opposite {right}: with {wrong} in its place the law of sines would give "
                     "{value}, which is {known} once more."),
            "size", u.size, "right", board.symbolOf(third), "wrong", board.symbolOf(atK), "value", *size,
            "known", q.side(q.k).size));
    if (const auto way = slipped(board, v.wayId, turnedBack(board.carried.formulaOf(v.wayId))))
        step.notes.push_back(board.say(
            SENTENCE("solution", "Turned the other way from {known}, {theta} would come out as {value}."),
            "known", q.side(q.k).vector, "theta", v.theta, "value", *way));
}

} // namespace

void writeRest(Board& board, const Ambiguous& q, std::size_t index) {
    const auto answer = static_cast<std::uint8_t>(board.hasTwoAnswers() ? index + 1 : 0);
    const Vector &u = board.in(index, q.r.side[q.u]), &v = board.in(index, q.r.side[q.v]);
    Step& step = restStep(board, answer);
    step.parts = {arrowPart(u.index), arrowPart(v.index)};
    const bool otherSense = writeOtherSense(board, step, q, u, answer);
    const QuantityId known = otherSense ? q.in(answer, q.v) : q.angle(q.v), atK = q.in(answer, q.k),
                     third = q.in(answer, q.u);
    if (!q.isDecided()) {
        sayWhichAngle(board, step, q, atK);
        board.show(step, atK);
    }
    board.show(step, third);
    const auto name = [&](const Vector& opposite, const QuantityId& angle) {
        step.angles.push_back(named(part(FigurePart::Kind::opposite, opposite.index), board.symbolOf(angle)));
    };
    name(v, known);
    name(q.side(q.k), atK);
    name(u, third);
    board.show(step, u.sizeId);
    board.show(step, v.wayId);
    step.reasoning.push_back(board.say(
        board.isCounterClockwise(board.signOf(v.wayId))
            ? SENTENCE("solution",
                       "The angle sum of {half} gives the third angle, the law of sines the magnitude; from "
                       "{known} the direction of {v} is reached by turning counter-clockwise.")
            : SENTENCE("solution",
                       "The angle sum of {half} gives the third angle, the law of sines the magnitude; from "
                       "{known} the direction of {v} is reached by turning clockwise."),
        "half", board.halfTurn(), "known", q.side(q.k).vector, "v", v.vector));
    if (u.turned)
        step.conclusion.push_back(readSense(board, u));
    noteOneAngle(board, step, q, u, atK);
    if (index == 0)
        noteSlips(board, step, q, u, v, atK, third);
}

} // namespace tailpoint::explaining
