// SPDX-License-Identifier: MIT
// More than two forces, parallelogram by parallelogram: each partial sum takes the next force.
#include "core/explain/families.h"
#include "core/explain/slip.h"

namespace tailpoint::explaining {

namespace {

constexpr double kEqualSides = 1e-12; // relative: a partial sum that is equal but for its last bits

/// `next` is added to the sum so far.
struct Addition {
    const Vector &soFar, &next, &made;
    std::uint8_t number;
    const Vector& great() const { return soFar.magnitude >= next.magnitude ? soFar : next; }
    const Vector& small() const { return soFar.magnitude >= next.magnitude ? next : soFar; }
    QuantityId tails() const { return {What::between, soFar.id, next.id, 0, number}; }
    QuantityId inner() const { return {What::opposite, made.id, {}, 0, number}; }
    QuantityId beside() const { return {What::opposite, small().id, {}, 0, number}; }
};

Step& stepOf(Board& board, const Addition& a) {
    if (a.made.index == kSumIndex)
        return board.step(StepKey::pair, SENTENCE("solution", "The last parallelogram gives the resultant"),
                          Stage::all, Law::cosines);
    Step& step =
        board.step(StepKey::pair, SENTENCE("solution", "Parallelogram {number}: two vectors become one"),
                   Stage::construction, Law::cosines);
    step.title = toText(board.say(SENTENCE("solution", "Parallelogram {number}: two vectors become one"),
                                  "number", count(a.number)));
    return step;
}

Wording turningTowards(bool equal, bool counterClockwise) {
    if (equal)
        return counterClockwise
                   ? SENTENCE("solution", "{angle} lies opposite one of two equal sides, so it is acute; "
                                          "from {great} towards {made} one turns counter-clockwise.")
                   : SENTENCE("solution", "{angle} lies opposite one of two equal sides, so it is acute; "
                                          "from {great} towards {made} one turns clockwise.");
    return counterClockwise ? SENTENCE("solution", "{angle} lies opposite the smaller side, so it is acute; "
                                                   "from {great} towards {made} one turns counter-clockwise.")
                            : SENTENCE("solution", "{angle} lies opposite the smaller side, so it is acute; "
                                                   "from {great} towards {made} one turns clockwise.");
}

/// The angle between the tails left in the law of cosines; the angle found turned off the other way.
void noteSlips(const Board& board, Step& step, const Addition& a) {
    const QuantityId square{What::square, a.made.id};
    const Formula outer = board.symbolOf(a.tails());
    if (const auto size = slipped(
            board, {{square, exchanged(board.carried.formulaOf(square), a.inner(), outer)}}, a.made.sizeId))
        step.notes.push_back(board.say(
            SENTENCE("solution", "The angle in the triangle is {inner}, not {outer} between "
                                 "the tails: with that one after the minus sign {made} would "
                                 "come out as {value}."),
            "inner", board.symbolOf(a.inner()), "outer", outer, "made", a.made.size, "value", *size));
    if (const auto way = slipped(board, a.made.wayId, turnedBack(board.carried.formulaOf(a.made.wayId))))
        step.notes.push_back(board.say(
            SENTENCE("solution", "Turned the other way from {great}, {theta} would come out as {value}."),
            "great", a.great().vector, "theta", a.made.theta, "value", *way));
}

void writePair(Board& board, const Addition& a) {
    Step& step = stepOf(board, a);
    step.pair = a.number;
    for (const Vector* vector : {&a.soFar, &a.next, &a.made})
        if (vector->index != kNoVector)
            step.parts.push_back(arrowPart(vector->index));
    step.parts.push_back(part(FigurePart::Kind::parallelogram, a.next.index));
    step.reasoning.push_back(board.say(
        a.number > 1
            ? SENTENCE("solution",
                       "Add {first} and {second} to {made} in the same way, with {tails}, {inner} "
                       "and {beside}.")
            : SENTENCE("solution",
                       "Add {first} and {second}: {tails} is the angle between the tails, {inner} its "
                       "supplement in "
                       "the triangle; the law of cosines gives the magnitude of {made}, the law of sines "
                       "{beside}, "
                       "the angle beside the greater of the two, and that angle is laid off from it."),
        "first", a.soFar.vector, "second", a.next.vector, "made", a.made.vector, "tails",
        board.symbolOf(a.tails()), "inner", board.symbolOf(a.inner()), "beside", board.symbolOf(a.beside())));
    const int number = a.number; // the figure knows the parallelogram by its number
    step.angles = {named(part(FigurePart::Kind::tails, kNoVector, number), board.symbolOf(a.tails())),
                   named(part(FigurePart::Kind::opposite, kNoVector, number), board.symbolOf(a.inner()))};
    for (const QuantityId& line : {a.tails(), a.inner(), a.made.sizeId, a.beside(), a.made.wayId})
        board.show(step, line);
    const double difference = a.great().magnitude - a.small().magnitude;
    step.conclusion.push_back(board.say(turningTowards(difference <= kEqualSides * a.great().magnitude,
                                                       board.isCounterClockwise(board.signOf(a.made.wayId))),
                                        "angle", board.symbolOf(a.beside()), "great", a.great().vector,
                                        "made", a.made.vector));
    if (a.number == 1 || a.made.id == kSumVector)
        noteSlips(board, step, a);
}

} // namespace

void writePairs(Board& board) {
    writeGiven(board);
    writeCount(board);
    writePolygonEstimate(board);
    const std::size_t forces = board.forces().size();
    VectorId soFar = forceVector(0);
    for (std::size_t i = 1; i < forces; ++i) {
        const VectorId made = i + 1 == forces ? kSumVector : partialVector(i);
        writePair(board, {board.at(soFar), board.forces()[i], board.at(made), static_cast<std::uint8_t>(i)});
        soFar = made;
    }
    writeEnd(board);
}

} // namespace tailpoint::explaining
