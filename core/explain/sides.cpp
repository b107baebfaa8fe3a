// SPDX-License-Identifier: MIT
// Two directions of known magnitudes: three sides, so the law of cosines, the greatest angle first.
#include "core/explain/families.h"
#include "core/explain/slip.h"

#include <algorithm>
#include <array>

namespace tailpoint::explaining {

namespace {

struct ThreeSides : Triangle {
    explicit ThreeSides(const Board& theBoard) : Triangle(theBoard) {
        std::sort(bySize.begin(), bySize.end(),
                  [&](std::size_t a, std::size_t b) { return side(a).magnitude > side(b).magnitude; });
    }
    std::array<std::size_t, 3> bySize{0, 1, 2}; ///< greatest side first
};

/// Which of the two sought turns less from the known one: opposite the smaller side.
Prose comparison(const Board& board, const ThreeSides& q) {
    const bool swapped = q.sought(0).magnitude < q.sought(1).magnitude;
    const Vector &great = q.sought(swapped ? 1 : 0), &small = q.sought(swapped ? 0 : 1);
    return board.say(
        great.magnitude == small.magnitude
            ? SENTENCE("solution", "Read off both: {great} and {small} are equal, so in the triangle "
                                   "both make the same angle with {known}.")
            : SENTENCE("solution", "Read off both: in the triangle {great}, the greater, makes the "
                                   "smaller angle with {known}."),
        "great", great.vector, "small", small.vector, "known", q.known().vector);
}

void writeGreatest(Board& board, const ThreeSides& q) {
    const std::size_t i = q.bySize[0];
    Step& step = board.step(StepKey::cosines, SENTENCE("solution", "Law of cosines for the greatest angle"),
                            Stage::triangle, Law::cosines);
    step.triangleAlone = true;
    step.parts = {part(FigurePart::Kind::opposite, q.side(i).index)};
    step.reasoning.push_back(namedAngles(q));
    nameAngles(step, q);
    step.reasoning.push_back(
        board.say(SENTENCE("solution", "Three sides and no angle: only the law of cosines can "
                                       "start. Take the greatest angle first, {angle}, opposite "
                                       "{side}; if any angle is obtuse it is this one, and the "
                                       "cosine shows it by its sign."),
                  "angle", q.symbol(i), "side", q.side(i).size));
    board.show(step, q.angle(i));
    const QuantityId ratio{What::ratio, q.side(i).id, {}, 0, kCosine};
    if (const auto value = slipped(board, {{ratio, negative(board.carried.formulaOf(ratio))}}, q.angle(i)))
        step.notes.push_back(
            board.say(SENTENCE("solution", "The square that is taken away is that of {side}, the side "
                                           "opposite: with the sign of the numerator reversed {angle} "
                                           "would come out as {value}, its supplement."),
                      "side", q.side(i).size, "angle", q.symbol(i), "value", *value));
}

void writeSecond(Board& board, const ThreeSides& q) {
    const auto [greatest, second, last] = q.bySize;
    Step& step = board.step(StepKey::sines, SENTENCE("solution", "Law of sines for the second angle"),
                            Stage::triangle, Law::sines);
    step.triangleAlone = true;
    step.parts = {part(FigurePart::Kind::opposite, q.side(second).index)};
    step.reasoning.push_back(board.say(
        SENTENCE("solution",
                 "Now {side} and {angle} are a whole pair, and the law of sines is quicker. The two angles "
                 "left are acute, so the obtuse value of the inverse sine is ruled out."),
        "side", q.side(greatest).size, "angle", q.symbol(greatest)));
    board.show(step, q.angle(second));
    board.show(step, q.angle(last));
    const QuantityId ratio{What::ratio, q.side(second).id};
    const auto value = slipped(
        board, {{ratio, exchanged(board.carried.formulaOf(ratio), q.side(second).sizeId, q.side(last).size)}},
        q.angle(second));
    if (value)
        step.notes.push_back(
            board.say(SENTENCE("solution",
                               "{angle} lies opposite {side}: with {wrong} in its place it would come out as "
                               "{value}, which is the third angle."),
                      "angle", q.symbol(second), "side", q.side(second).size, "wrong", q.side(last).size,
                      "value", *value));
    step.notes.push_back(
        board.say(SENTENCE("solution", "Had we started with a smaller angle, the inverse sine could "
                                       "have hidden an obtuse one. That is why the greatest angle "
                                       "comes first.")));
}

Step& waysStep(Board& board, std::size_t index) {
    if (!board.hasTwoAnswers())
        return board.step(StepKey::directions, SENTENCE("solution", "The directions from the axis"),
                          Stage::all);
    return index == 0
               ? board.step(StepKey::first,
                            SENTENCE("solution", "First answer: the directions from the axis"), Stage::all)
               : board.step(StepKey::second, SENTENCE("solution", "Second answer: the triangle mirrored"),
                            Stage::all);
}

/// The two angles mixed up: each direction is turned by the angle opposite the other side.
void noteExchange(const Board& board, Step& step, const ThreeSides& q) {
    const std::size_t target = q.r.sought[0], other = q.r.sought[1];
    const Vector& vector = board.in(0, q.r.side[target]);
    const auto value =
        slipped(board, vector.wayId,
                exchanged(board.carried.formulaOf(vector.wayId), q.angle(other), q.symbol(target)));
    if (value)
        step.notes.push_back(board.say(
            SENTENCE("solution",
                     "Between {known} and {vector} lies {right}, opposite the third side: with {wrong} "
                     "in its place {theta} would come out as {value}."),
            "known", q.known().vector, "vector", vector.vector, "right", q.symbol(other), "wrong",
            q.symbol(target), "theta", vector.theta, "value", *value));
}

/// The directions sought, turned from the known vector; in the second answer's triangle the other way.
void writeWays(Board& board, const ThreeSides& q, std::size_t index) {
    Step& step = waysStep(board, index);
    step.reasoning.push_back(board.say(
        index == 0 ? SENTENCE("solution",
                              "Start from {known}, whose direction is known, and turn by the angle between "
                              "the tails: an angle of the triangle where both tails or both tips meet, "
                              "its supplement where a tip meets a tail.")
                   : SENTENCE("solution",
                              "Mirrored in the line of {known} the sides stay the same: every turn is taken "
                              "the other way."),
        "known", q.known().vector));
    for (const std::size_t target : q.r.sought) {
        step.parts.push_back(part(FigurePart::Kind::direction, q.side(target).index));
        board.show(step, board.in(index, q.r.side[target]).wayId);
    }
    if (index == 0)
        noteExchange(board, step, q);
}

} // namespace

void writeSidesEstimate(Board& board) {
    const ThreeSides q(board);
    Step& step =
        board.step(StepKey::estimate, SENTENCE("solution", "Does the triangle close?"), Stage::construction);
    step.parts = {part(FigurePart::Kind::locus, q.sought(0).index),
                  part(FigurePart::Kind::locus, q.sought(1).index)};
    const Vector &a = q.side(q.bySize[0]), &b = q.side(q.bySize[1]), &c = q.side(q.bySize[2]);
    step.reasoning.push_back(board.say(SENTENCE(
        "solution", "Three sides close a triangle if the greatest is shorter than the other two together:")));
    step.workings.push_back(
        {{},
         related(a.size, Relation::less, sum(b.size, c.size)),
         {},
         related(a.sizeNumber, Relation::less, board.bound(b.sizeNumber.value + c.sizeNumber.value))});
    step.conclusion.push_back(board.say(
        SENTENCE("solution", "Circles about the two ends of {known}, with the two magnitudes as radii, meet "
                             "at the missing corner: on one side of {known}, and mirrored on the other."),
        "known", q.known().vector));
    step.conclusion.push_back(comparison(board, q));
    tellScale(board, step);
}

void writeSides(Board& board) {
    const ThreeSides q(board);
    writeGiven(board);
    writeCount(board);
    writeKnown(board);
    writeSidesEstimate(board);
    writeGreatest(board, q);
    writeSecond(board, q);
    for (std::size_t i = 0; i < board.solved.solutions.size(); ++i)
        writeWays(board, q, i);
    writeEnd(board);
}

} // namespace tailpoint::explaining
