// SPDX-License-Identifier: MIT
// One force unknown beside two known vectors: the triangle has two sides and the angle between them.
#include "core/explain/agreement.h"
#include "core/explain/families.h"
#include "core/explain/quadrant.h"
#include "core/explain/slip.h"

#include <cmath>

namespace tailpoint::explaining {

namespace {

struct Missing : Triangle {
    explicit Missing(const Board& theBoard) : Triangle(theBoard), x(r.sought.front()) {
        const auto [a, b] = Reduction::others(x);
        const bool first = side(a).magnitude >= side(b).magnitude;
        greatSide = first ? a : b;
        smallSide = first ? b : a;
    }

    std::size_t x, greatSide = 0, smallSide = 0; ///< sides: unknown, greater known, smaller known
    const Vector& missing() const { return side(x); }
    const Vector& great() const { return side(greatSide); }
    const Vector& small() const { return side(smallSide); }
    bool equal() const { return great().magnitude == small().magnitude; }
    bool isOwn() const { return r.isOwnAngle(greatSide, smallSide); }
};

Formula missingEquation(const Missing& m) {
    if (m.r.loop)
        return equal(m.side(2).vector, negative(sum(m.side(0).vector, m.side(1).vector)));
    return equal(m.side(1).vector, sum(m.side(2).vector, negative(m.side(0).vector)));
}

void writeEstimate(Board& board, const Missing& m) {
    Step& step =
        board.step(StepKey::estimate, SENTENCE("solution", "Sketch to scale, and estimate before computing"),
                   Stage::construction);
    step.parts = {arrowPart(m.great().index), arrowPart(m.small().index)};
    step.reasoning.push_back(
        m.r.loop
            ? board.say(SENTENCE("solution", "Three forces in equilibrium close a triangle tip to tail. "
                                             "{missing} balances what {first} and {second} amount to: it "
                                             "is as great as their resultant, and opposed to it."),
                        "missing", m.missing().vector, "first", m.side(0).vector, "second", m.side(1).vector)
            : board.say(
                  SENTENCE("solution", "{missing} leads from the tip of {first} to the tip of {second}: draw "
                                       "both from the common point and join their tips."),
                  "missing", m.missing().vector, "first", m.side(0).vector, "second", m.side(2).vector));
    step.workings.push_back({{}, missingEquation(m), {}, {}});
    const double low = m.great().sizeNumber.value - m.small().sizeNumber.value,
                 high = m.great().sizeNumber.value + m.small().sizeNumber.value;
    const auto bounds = [&](Formula least, Formula most) {
        return related(std::move(least), Relation::less, m.missing().size, Relation::less, std::move(most));
    };
    step.workings.push_back(
        {{},
         bounds(sum(m.great().size, negative(m.small().size)), sum(m.great().size, m.small().size)),
         {},
         bounds(board.bound(low), board.bound(high))});
    step.conclusion.push_back(board.say(
        SENTENCE("solution", "A side of a triangle is shorter than the other two together and longer than "
                             "their difference.")));
    narrowByRightAngle(board, step, m.missing(), m.great(), m.small(), low, high);
    tellScale(board, step);
}

void writeIncluded(Board& board, const Missing& m) {
    Step& step = board.step(StepKey::included, SENTENCE("solution", "The angle between the known sides"),
                            Stage::interior);
    step.parts = {part(FigurePart::Kind::tails, m.great().index, m.small().index)};
    step.reasoning.push_back(namedAngles(m));
    nameAngles(step, m);
    step.reasoning.push_back(board.say(
        m.isOwn()
            ? SENTENCE("solution",
                       "{great} and {small} both start at the common point, so the angle {angle} between "
                       "them in the triangle is the angle between their tails, the difference of their "
                       "directions.")
            : SENTENCE("solution",
                       "Tip to tail the two sides enclose the supplement of the angle between the "
                       "tails, so {angle} is {half} less the difference of the directions."),
        "great", m.great().vector, "small", m.small().vector, "angle", m.symbol(m.x), "half",
        board.halfTurn()));
    board.show(step, m.angle(m.x));
    if (m.isOwn())
        step.notes.push_back(board.say(
            SENTENCE("solution", "Here no supplement is taken: the tails of these two sides meet in a corner "
                                 "of the triangle.")));
}

/// The supplement taken for the angle, or the other way about.
void noteSupplement(const Board& board, Step& step, const Missing& m) {
    const Formula angle = m.symbol(m.x), &right = board.carried.formulaOf({What::square, m.missing().id});
    const Formula wrong = exchanged(right, m.angle(m.x), sum(board.halfTurn(), negative(angle)));
    if (const auto value = slipped(board, m.missing().sizeId, root(wrong)))
        step.notes.push_back(board.say(
            SENTENCE("solution",
                     "With the supplement of {angle} in its place {size} would come out as {value}."),
            "angle", angle, "size", m.missing().size, "value", *value));
}

void writeCosineStep(Board& board, const Missing& m) {
    Step& step = board.step(StepKey::cosines, SENTENCE("solution", "Law of cosines for the magnitude"),
                            Stage::magnitudes, Law::cosines);
    step.triangleAlone = true;
    step.parts = {arrowPart(m.missing().index), part(FigurePart::Kind::triangle)};
    step.reasoning.push_back(board.say(SENTENCE(
        "solution",
        "Two sides and the angle between them are known, so the law of cosines gives the third side. The law "
        "of sines can't start: no side is known together with the angle opposite it.")));
    board.show(step, m.missing().sizeId);
    noteSupplement(board, step, m);
}

void writeHalf(Board& board, const Missing& m) {
    Step& step =
        board.step(StepKey::isosceles, SENTENCE("solution", "Equal sides, equal angles"), Stage::triangle);
    step.triangleAlone = true;
    step.reasoning.push_back(board.say(
        SENTENCE("solution", "{great} and {small} are equal, so the angles opposite them are equal too and "
                             "share what {angle} leaves of {half}."),
        "great", m.great().size, "small", m.small().size, "angle", m.symbol(m.x), "half", board.halfTurn()));
    board.show(step, m.angle(m.smallSide));
}

void writeSineStep(Board& board, const Missing& m) {
    Step& step = board.step(StepKey::sines,
                            SENTENCE("solution", "Law of sines for the angle opposite the smaller side"),
                            Stage::triangle, Law::sines);
    step.triangleAlone = true;
    step.parts = {part(FigurePart::Kind::opposite, m.small().index)};
    step.reasoning.push_back(board.say(
        SENTENCE("solution",
                 "With {side} and {opposite} one pair is whole. Of the angles left take {angle}, opposite "
                 "{small}: of the two known sides {small} is the smaller, so {angle} is certainly acute."),
        "side", m.missing().size, "opposite", m.symbol(m.x), "angle", m.symbol(m.smallSide), "small",
        m.small().size));
    board.show(step, m.angle(m.smallSide));
    step.notes.push_back(
        board.say(SENTENCE("solution", "The inverse sine also allows {second}; opposite the smaller "
                                       "side it is never right."),
                  "second", board.supplementOf(m.angle(m.smallSide))));
}

Wording turningFrom(bool own, bool counterClockwise) {
    if (own)
        return counterClockwise
                   ? SENTENCE("solution",
                              "Between the tails of {great} and {missing} lies the angle {angle} itself, "
                              "turned counter-clockwise from {great}.")
                   : SENTENCE("solution",
                              "Between the tails of {great} and {missing} lies the angle {angle} itself, "
                              "turned clockwise from {great}.");
    return counterClockwise
               ? SENTENCE("solution",
                          "Between the tails of {great} and {missing} lies the supplement of {angle}, "
                          "turned counter-clockwise from {great}.")
               : SENTENCE("solution",
                          "Between the tails of {great} and {missing} lies the supplement of {angle}, "
                          "turned clockwise from {great}.");
}

void writeWay(Board& board, const Missing& m) {
    const Vector& missing = m.missing();
    Step& step =
        board.step(StepKey::direction, SENTENCE("solution", "Refer the direction to the axis"), Stage::all);
    step.parts = {part(FigurePart::Kind::direction, missing.index), part(FigurePart::Kind::axis)};
    board.show(step, missing.wayId);
    const bool own = m.r.isOwnAngle(m.x, m.greatSide);
    step.reasoning.push_back(
        board.say(turningFrom(own, board.isCounterClockwise(board.signOf(missing.wayId))), "great",
                  m.great().vector, "missing", missing.vector, "angle", m.symbol(m.smallSide)));
    step.conclusion.push_back(liesThere(board, missing));
    if (m.equal())
        return;
    const QuantityId angle = m.angle(m.smallSide);
    const auto value = slipped(board, missing.wayId,
                               exchanged(board.carried.formulaOf(missing.wayId), angle,
                                         sum(board.halfTurn(), negative(m.symbol(m.smallSide)))));
    if (value)
        step.notes.push_back(board.say(
            SENTENCE("solution", "With the obtuse value {second} for {angle}, {theta} would come out as "
                                 "{value}."),
            "second", board.supplementOf(angle), "angle", m.symbol(m.smallSide), "theta", missing.theta,
            "value", *value));
}

/// Lami: each force over the sine of the angle between the other two. Nothing where a triangle is so flat
/// that a printed angle has no sine.
void writeLamiCheck(Board& board, const Missing& m) {
    std::array<Formula, 3> equations, quotients;
    std::array<QuantityId, 3> angles;
    for (std::size_t i = 0; i < 3; ++i) {
        const auto [a, b] = Reduction::others(i);
        angles[i] = {What::between, m.r.side[a], m.r.side[b]};
        if (board.carried.find(angles[i]) == nullptr)
            return;
        Formula quotient = over(m.side(i).sizeNumber, apply("sin", board.number(angles[i])));
        const auto value = evaluate(quotient, board.sketch.angleUnit);
        if (!value)
            return;
        quotients[i] = board.carried.carried(*value, Dimension::force);
        equations[i] = equal(std::move(quotient), quotients[i]);
    }
    Step& step =
        board.step(StepKey::lami, SENTENCE("solution", "Check by Lami's form"), Stage::all, Law::sines);
    step.reasoning.push_back(board.say(
        SENTENCE("solution", "Three forces in equilibrium: each over the sine of the angle between the tails "
                             "of the other two must give the same number, for that sine is the sine of the "
                             "triangle's angle opposite the force.")));
    step.reasoning.push_back(facingNamed(m));
    for (const QuantityId& angle : angles)
        board.show(step, angle);
    for (Formula& equation : equations)
        step.workings.push_back({{}, {}, std::move(equation), {}});
    step.conclusion.push_back(sameQuotients(board, quotients));
}

} // namespace

void writeMissing(Board& board) {
    const Missing m(board);
    writeGiven(board);
    writeCount(board);
    writeEstimate(board, m);
    writeIncluded(board, m);
    writeCosineStep(board, m);
    if (m.equal())
        writeHalf(board, m);
    else
        writeSineStep(board, m);
    writeWay(board, m);
    writeAnswer(board);
    if (m.r.loop)
        writeLamiCheck(board, m);
    writeCheck(board);
    returnToEstimate(board);
    writeRoundingCost(board);
}

} // namespace tailpoint::explaining
