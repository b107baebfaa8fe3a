// SPDX-License-Identifier: MIT
// The resultant of two forces on one line, or of which one is zero: no triangle, no law.
#include "core/explain/families.h"
#include "core/explain/slip.h"

#include <cmath>

namespace tailpoint::explaining {

namespace {

bool isZero(const Vector& vector) {
    return vector.magnitude == 0;
}

/// On one line the estimate is exact.
void expectExactly(Board& board, const Vector& vector, const Formula& size) {
    board.expected = {vector.sizeId, size, size};
}

/// The zero force's direction and size have no say.
void noteHalfWay(const Board& board, Step& step, const Vector& rest, const Vector& gone) {
    const Formula half = over(rest.size, count(2));
    if (const auto value = slipped(board, board.sum().sizeId, half))
        step.notes.push_back(board.say(
            SENTENCE("solution", "A resultant is no mean value: {half} would be {value}, and {gone} takes "
                                 "nothing from {rest}."),
            "half", half, "value", *value, "gone", gone.vector, "rest", rest.vector));
    if (!gone.direction)
        return;
    const auto value =
        slipped(board, board.sum().wayId, over(sum(rest.theta, board.carried.number(gone.wayId)), count(2)));
    if (value)
        step.notes.push_back(board.say(
            SENTENCE("solution", "{gone} is zero, and its direction has no say: half way between the two "
                                 "{theta} would come out as {value}."),
            "gone", gone.vector, "theta", board.sum().theta, "value", *value));
}

void writeOneLeft(Board& board) {
    const bool first = !isZero(board.forces()[0]);
    const Vector &rest = board.forces()[first ? 0U : 1U], &gone = board.forces()[first ? 1U : 0U];
    Step& step = board.step(StepKey::line, SENTENCE("solution", "Nothing to add"), Stage::construction);
    step.parts = {arrowPart(rest.index)};
    if (isZero(rest)) {
        step.reasoning.push_back(board.say(
            SENTENCE("solution", "Both forces are zero, and so is their resultant: there is nothing to draw, "
                                 "and nothing to estimate.")));
        board.show(step, board.sum().sizeId);
        return;
    }
    step.reasoning.push_back(
        board.say(SENTENCE("solution",
                           "{gone} is zero: there is no parallelogram, and the resultant is the other force "
                           "unchanged. An estimate would be the answer itself."),
                  "gone", gone.vector));
    step.workings.push_back({{}, equal(board.sum().vector, rest.vector), {}, {}});
    board.show(step, board.sum().sizeId);
    if (board.sum().direction)
        board.show(step, board.sum().wayId);
    noteHalfWay(board, step, rest, gone);
}

/// Two forces on one line.
struct InLine {
    explicit InLine(const Board& board)
        : p(board.forces()[0]), q(board.forces()[1]), great(p.magnitude >= q.magnitude ? p : q),
          small(p.magnitude >= q.magnitude ? q : p), isOpposed(p.v.dot(q.v) < 0) {}
    const Vector &p, &q, &great, &small;
    bool isOpposed;
};

} // namespace

void writeLineEstimate(Board& board) {
    const InLine two(board);
    const Vector& sum = board.sum();
    const double p = two.p.sizeNumber.value, q = two.q.sizeNumber.value;
    const Formula least = board.bound(std::abs(p - q)), most = board.bound(p + q);
    const auto bounds = [&](Formula low, Formula high) {
        return related(std::move(low), Relation::lessOrEqual, sum.size, Relation::lessOrEqual,
                       std::move(high));
    };
    Step& step =
        board.step(StepKey::estimate, SENTENCE("solution", "Sketch to scale, and estimate before computing"),
                   Stage::directions);
    step.parts = {arrowPart(0), arrowPart(1)};
    step.reasoning.push_back(betweenTheBounds(board, sum));
    step.workings.push_back({{},
                             bounds(absolute(tailpoint::sum(two.p.size, negative(two.q.size))),
                                    tailpoint::sum(two.p.size, two.q.size)),
                             {},
                             bounds(least, most)});
    const auto wording = [&] {
        if (!two.isOpposed)
            return SENTENCE("solution",
                            "The two directions are the same, so both act along one line in the same "
                            "sense: expect the upper bound itself, {most}.");
        return sum.direction
                   ? SENTENCE("solution",
                              "The two directions are {half} apart, so both act along one line in opposite "
                              "senses: expect "
                              "the lower bound itself, {least}, in the sense of {great}, "
                              "the greater.")
                   : SENTENCE("solution",
                              "The two directions are {half} apart, so both act along one line in opposite "
                              "senses, and they are "
                              "equal: expect the lower bound itself, {least}.");
    }();
    step.conclusion.push_back(board.say(wording, "least", least, "most", most, "great", two.great.vector,
                                        "half", board.halfTurn()));
    expectExactly(board, sum, two.isOpposed ? least : most);
}

namespace {

void writeConclusion(const Board& board, Step& step, const Vector& along) {
    const Vector& sum = board.sum();
    step.conclusion.push_back(
        sum.direction
            ? board.say(SENTENCE("solution", "{component} is positive, so {sum} points the same way as "
                                             "{along}."),
                        "component", board.symbolOf({What::along, kSumVector}), "sum", sum.vector, "along",
                        along.vector)
            : board.say(SENTENCE("solution", "Equal and opposite: they balance each other, and the "
                                             "resultant is zero.")));
}

/// The senses disregarded; a right angle where there is none; the sense of the smaller.
void noteLineSlips(const Board& board, Step& step, const InLine& two) {
    const QuantityId along{What::along, kSumVector}, &size = board.sum().sizeId;
    const Formula p = board.symbolOf({What::along, two.p.id}), q = board.symbolOf({What::along, two.q.id});
    if (const auto value = slipped(board, {{along, sum(p, negative(q))}}, size))
        step.notes.push_back(
            two.isOpposed
                ? board.say(SENTENCE("solution",
                                     "The senses count: added as plain numbers the magnitudes would "
                                     "make {size} come out as {value}."),
                            "size", board.sum().size, "value", *value)
                : board.say(SENTENCE("solution", "Both senses are the same: with one of the two taken away "
                                                 "{size} would come out as {value}."),
                            "size", board.sum().size, "value", *value));
    const Formula hypotenuse = root(sum(power(two.p.size, 2), power(two.q.size, 2)));
    if (const auto value = slipped(board, size, hypotenuse))
        step.notes.push_back(board.say(
            SENTENCE("solution", "{hypotenuse} holds for forces at right angles only; here it would "
                                 "give {value}."),
            "hypotenuse", hypotenuse, "value", *value));
    if (!two.isOpposed || !board.sum().direction)
        return;
    if (const auto value = slipped(board, board.sum().wayId, board.number(two.small.wayId)))
        step.notes.push_back(board.say(
            SENTENCE("solution", "In the sense of {small}, the smaller, {theta} would come out as {value}."),
            "small", two.small.vector, "theta", board.sum().theta, "value", *value));
}

void writeAlongLine(Board& board) {
    const InLine two(board);
    writeLineEstimate(board);
    Step& step = board.step(StepKey::line,
                            two.isOpposed ? SENTENCE("solution", "In opposite senses on one line")
                                          : SENTENCE("solution", "In the same sense on one line"),
                            Stage::magnitudes);
    step.parts = {arrowPart(0), arrowPart(1), arrowPart(kSumIndex)};
    step.reasoning.push_back(board.say(
        two.isOpposed
            ? SENTENCE("solution",
                       "{p} and {q} act along the same line in opposite senses: the parallelogram "
                       "is flat, and neither law of the triangle is needed.")
            : SENTENCE("solution", "{p} and {q} act along the same line: the parallelogram is flat, and "
                                   "neither law of the triangle is needed."),
        "p", two.p.vector, "q", two.q.vector));
    step.reasoning.push_back(board.say(
        SENTENCE("solution",
                 "Count components along the line as positive in the sense of {along}; call that axis "
                 "{axis}."),
        "along", two.great.vector, "axis", symbol("u")));
    for (const VectorId vector : {two.p.id, two.q.id, kSumVector})
        board.show(step, {What::along, vector});
    board.show(step, board.sum().sizeId);
    if (board.sum().direction)
        board.show(step, board.sum().wayId);
    writeConclusion(board, step, two.great);
    noteLineSlips(board, step, two);
}

} // namespace

void writeFlat(Board& board) {
    writeGiven(board);
    writeCount(board);
    if (isZero(board.forces()[0]) || isZero(board.forces()[1]))
        writeOneLeft(board);
    else
        writeAlongLine(board);
    writeEnd(board);
}

} // namespace tailpoint::explaining
