// The resultant of two forces: parallelogram, half of it, law of cosines, law of sines.
#include "core/explain/families.h"

#include <cmath>

namespace tailpoint::explaining {

namespace {

/// The two forces by size, and the symbols of the angles opposite to them.
struct Pair {
    const Arrow& great;
    const Arrow& small;
    Formula oppositeGreat, oppositeSmall;
    bool equal = false;
};

Pair pairOf(const Blackboard& board) {
    const Arrow &p = board.forces[0], &q = board.forces[1];
    const bool first = p.magnitude >= q.magnitude;
    return {first ? p : q, first ? q : p, first ? board.alpha : board.beta, first ? board.beta : board.alpha,
            p.magnitude == q.magnitude};
}

enum class Opening { acute, right, obtuse };

Opening openingOf(const Arrow& p, const Arrow& q) {
    const double dot = p.v.dot(q.v);
    const double slack = 8e-16 * p.magnitude * q.magnitude;
    return dot > slack ? Opening::acute : dot < -slack ? Opening::obtuse : Opening::right;
}

void writeEstimate(Blackboard& board) {
    const Arrow &p = board.forces[0], &q = board.forces[1], &r = board.sum;
    Step& step = board.step("estimate", "Sketch to scale, and estimate before computing", Stage::directions);
    step.parts = {arrowPart(0), arrowPart(1)};
    step.reasoning.push_back(
        say("Drawn to scale, {} can be no shorter than the difference of the two magnitudes "
            "(forces opposed) and no longer than their sum (forces side by side):",
            r.vector));
    const auto bounds = [](Formula low, Formula middle, Formula high) {
        return related(std::move(low), Relation::lessOrEqual, std::move(middle), Relation::lessOrEqual,
                       std::move(high));
    };
    step.workings.push_back({{},
                             bounds(absolute(sum(p.size, negative(q.size))), r.size, sum(p.size, q.size)),
                             {},
                             bounds(board.force(std::abs(p.magnitude - q.magnitude)), r.size,
                                    board.force(p.magnitude + q.magnitude))});
    const Formula square = root(sum(power(p.size, 2), power(q.size, 2)));
    const Formula value = board.force(std::hypot(p.magnitude, q.magnitude));
    const Opening opening = openingOf(p, q);
    if (opening == Opening::right)
        step.conclusion.push_back(
            say("The forces look square to each other: then {} is {}.", r.size, equal(square, value)));
    else
        step.conclusion.push_back(say(
            opening == Opening::acute ? "The angle between the tails looks acute, so {} is greater than {}."
                                      : "The angle between the tails looks obtuse, so {} is smaller than {}.",
            r.size, equal(square, value)));
    if (p.magnitude == q.magnitude)
        step.conclusion.push_back(say("The forces are equal, so {} lies midway between them.", r.vector));
    else
        step.conclusion.push_back(
            say("{} lies nearer to {}, the greater force.", r.vector, pairOf(board).great.vector));
}

Term writeTailsStep(Blackboard& board) {
    const Arrow &p = board.forces[0], &q = board.forces[1];
    Step& step = board.step("tails", "Angle between the tails", Stage::between);
    step.parts = {part(FigurePart::Kind::tails, 0, 1), part(FigurePart::Kind::direction, 0),
                  part(FigurePart::Kind::direction, 1)};
    step.angles = {named(part(FigurePart::Kind::tails, 0, 1), board.between(p, q))};
    step.reasoning.push_back(say("Both directions are measured from {}, so the angle {} between {} and {} is "
                                 "their difference, each with its sign.",
                                 board.axisWords(), board.between(p, q), p.vector, q.vector));
    const double gap = std::abs(p.directionNumber.value - q.directionNumber.value);
    if (gap > board.half())
        step.reasoning.push_back(
            say("The difference goes the long way round, beyond {}: the angle between the "
                "tails is what is left of the full turn.",
                board.halfTurn()));
    Term phi = writeTails(board, step, p, q, board.between(p, q));
    remarkOnRounding(board, step, Quantity::angle);
    if (p.directionNumber.value * q.directionNumber.value < 0 && gap <= board.half())
        step.notes.push_back(
            say("The directions lie on either side of the axis. Subtracting a negative angle "
                "adds it: mind the sign."));
    return phi;
}

Term writeParallelogram(Blackboard& board, const Term& phi) {
    const Arrow &p = board.forces[0], &q = board.forces[1];
    Step& step = board.step("parallelogram", "Complete the parallelogram", Stage::interior);
    step.parts = {part(FigurePart::Kind::parallelogram), part(FigurePart::Kind::opposite, kSumIndex)};
    step.angles = {named(part(FigurePart::Kind::opposite, kSumIndex), board.gamma)};
    step.reasoning.push_back(
        say("Through each tip draw the parallel to the other force; {} is the diagonal from "
            "the common point. Opposite interior angles are equal, neighbouring ones make {}, "
            "all four {}.",
            board.sum.vector, board.halfTurn(), board.fullTurn()));
    step.reasoning.push_back(
        say("So the angle {} at the tips is the supplement of {}:", board.gamma, phi.symbol));
    const double rad = std::abs(signedAngle(p.v, -q.v).value_or(0));
    Term gamma = writeSupplement(board, step, board.gamma, phi, rad);
    remarkOnRounding(board, step, Quantity::angle);
    if (p.magnitude == q.magnitude)
        step.notes.push_back(
            say("The forces are equal, so the parallelogram is a rhombus and its diagonal halves "
                "{}. With unequal forces it would not.",
                phi.symbol));
    else
        step.notes.push_back(
            say("The diagonal does not halve {}: it would only if the forces were equal.", phi.symbol));
    return gamma;
}

void writeTriangle(Blackboard& board, const Pair& pair) {
    const Arrow& r = board.sum;
    Step& step = board.step("triangle", "Keep one half: the force triangle", Stage::found);
    step.triangleAlone = true;
    step.parts = {part(FigurePart::Kind::triangle)};
    step.angles = {named(part(FigurePart::Kind::opposite, pair.small.index), pair.oppositeSmall),
                   named(part(FigurePart::Kind::opposite, pair.great.index), pair.oppositeGreat)};
    step.reasoning.push_back(
        say("Keep the half in which {} starts at the common point and {} follows at its tip: "
            "it holds the angle {} between {} and {}, and that one leads to the direction "
            "asked for.",
            pair.great.vector, pair.small.vector, pair.oppositeSmall, pair.great.vector, r.vector));
    step.reasoning.push_back(say("Opposite pairs: {} and {}, {} and {}, {} and {}.", r.size, board.gamma,
                                 pair.small.size, pair.oppositeSmall, pair.great.size, pair.oppositeGreat));
    step.reasoning.push_back(say("Known are the two sides {} and {} and the angle {} between them.",
                                 pair.great.size, pair.small.size, board.gamma));
}

void writeChoice(Blackboard& board, const Pair& pair) {
    const Arrow& r = board.sum;
    const Formula &p = board.forces[0].size, &q = board.forces[1].size;
    Step& step = board.step("choice", "Which law?", Stage::found);
    step.triangleAlone = true;
    step.parts = {part(FigurePart::Kind::triangle)};
    step.reasoning.push_back(
        say("Two sides and the angle between them: the law of cosines gives the third side. "
            "The law of sines can't start, for it needs one whole pair, and of each pair one "
            "half is missing: {} without {}, {} and {} without {} and {}.",
            board.gamma, r.size, pair.great.size, pair.small.size, pair.oppositeGreat, pair.oppositeSmall));
    step.workings.push_back(
        {power(r.size, 2),
         sum(power(p, 2), power(q, 2), negative(product(count(2), p, q, apply("cos", board.gamma)))),
         {},
         {}});
}

Term writeCosines(Blackboard& board, const Term& phi, const Term& gamma) {
    const Arrow &p = board.forces[0], &q = board.forces[1], &r = board.sum;
    Step& step = board.step("cosines", "Law of cosines for the magnitude", Stage::magnitudes, Law::cosines);
    step.triangleAlone = true;
    step.parts = {part(FigurePart::Kind::triangle), arrowPart(kSumIndex),
                  part(FigurePart::Kind::opposite, kSumIndex)};
    step.reasoning.push_back(
        say(board.options.handRounding
                ? "Take the root, put in the numbers with their units, and round as on paper."
                : "Take the root, put in the numbers with their units, and round only at the end."));
    Term size = writeCosinesForSide(board, step, r.size, sizeOf(p), sizeOf(q), gamma, r.magnitude);
    board.sum.sizeNumber = size.number;
    step.conclusion.push_back(say("As estimated, {} lies between {} and {}.", size.number,
                                  board.force(std::abs(p.magnitude - q.magnitude)),
                                  board.force(p.magnitude + q.magnitude)));
    if (board.options.handRounding)
        step.conclusion.push_back(say("Carried on is the rounded value, {}.", size.number));
    else
        step.conclusion.push_back(say("The full value is carried on; only what is shown is rounded."));
    step.notes.push_back(say("Is the calculator set to {}?",
                             inWords(board.sketch.angleUnit == AngleUnit::deg   ? "degrees, not radians"
                                     : board.sketch.angleUnit == AngleUnit::rad ? "radians, not degrees"
                                                                                : "gon")));
    if (openingOf(p, q) != Opening::right)
        step.notes.push_back(
            say("The angle in the triangle is {}, not {} between the tails. With {} the last sign "
                "would be a plus.",
                equal(gamma.symbol, gamma.number), equal(phi.symbol, phi.number), phi.symbol));
    return size;
}

Term writeHalving(Blackboard& board, const Pair& pair, const Term& phi) {
    Step& step = board.step("halving", "Equal forces: the diagonal halves the angle", Stage::triangle);
    step.triangleAlone = true;
    step.parts = {part(FigurePart::Kind::opposite, pair.small.index)};
    step.reasoning.push_back(
        say("The triangle has two equal sides, so the angles opposite to them are equal, and "
            "{} halves {}. No law of sines is needed.",
            board.sum.vector, phi.symbol));
    Working working{pair.oppositeSmall, over(phi.symbol, count(2)), over(phi.number, count(2)), {}};
    const double half = std::abs(signedAngle(pair.great.v, board.sum.v).value_or(0));
    Formula value = board.settle(working, fromRadians(half, board.sketch.angleUnit), Quantity::angle);
    step.workings.push_back(std::move(working));
    return {pair.oppositeSmall, std::move(value)};
}

Term writeSines(Blackboard& board, const Pair& pair, const Term& gamma) {
    const Arrow& r = board.sum;
    Step& step = board.step("sines", "Law of sines for the angle beside the greater force", Stage::triangle,
                            Law::sines);
    step.triangleAlone = true;
    step.parts = {part(FigurePart::Kind::opposite, pair.small.index), arrowPart(pair.small.index)};
    step.reasoning.push_back(say("Now the pair {}, {} is whole. Seek {}, opposite to the smaller force {}.",
                                 r.size, gamma.symbol, pair.oppositeSmall, pair.small.vector));
    step.workings.push_back({{},
                             equal(over(apply("sin", pair.oppositeSmall), pair.small.size),
                                   over(apply("sin", gamma.symbol), r.size)),
                             {},
                             {}});
    const double rad = std::abs(signedAngle(pair.great.v, r.v).value_or(0));
    Term found =
        writeSinesForAngle(board, step, pair.oppositeSmall, sizeOf(pair.small), sizeOf(r), gamma, rad);
    const Formula second = board.angleInUnit(board.half() - board.valueOf(found.number));
    step.conclusion.push_back(
        say("The inverse sine also allows {}. The greater side lies opposite to the "
            "greater angle, and {} is smaller than {}: {} is smaller than {} and so acute. {} "
            "drops out.",
            equal(sum(board.halfTurn(), negative(found.symbol)), second), pair.small.size, pair.great.size,
            pair.oppositeSmall, pair.oppositeGreat, second));
    step.notes.push_back(
        say("The inverse sine has two values; the calculator shows only the acute one. Opposite to "
            "the smaller side that is always the right one."));
    return found;
}

void writeDirection(Blackboard& board, const Pair& pair, const Term& beside) {
    Arrow& r = board.sum;
    Step& step = board.step("direction", "Refer the direction to the axis", Stage::all);
    step.parts = {part(FigurePart::Kind::direction, kSumIndex), part(FigurePart::Kind::axis)};
    step.angles = {named(part(FigurePart::Kind::opposite, pair.small.index), beside.symbol)};
    const Turn turn = writeTurn(board, step, r.theta, thetaOf(pair.great), beside, r.direction.value_or(0));
    r.directionNumber = turn.number;
    step.reasoning.push_back(
        say("{} is measured from {}, not from the axis. From {} towards {} one turns {}, so "
            "{} is {} {}.",
            beside.symbol, pair.great.vector, pair.great.vector, r.vector,
            inWords(std::string(wayOf(turn.sign, board.sketch))), beside.symbol,
            inWords(turn.sign > 0 ? "added to" : "subtracted from"), pair.great.theta));
    remarkOnRounding(board, step, Quantity::angle);
    step.conclusion.push_back(say("{} lies {}.", r.vector, inWords(quadrantWords(r.v))));
    step.notes.push_back(
        say("The question asks for the angle from {}. {} alone would answer another question.",
            board.axisWords(), beside.number));
}

} // namespace

void writeTwoForces(Blackboard& board) {
    const Pair pair = pairOf(board);
    writeGiven(board);
    writeCount(board);
    writeEstimate(board);
    const Term phi = writeTailsStep(board);
    const Term gamma = writeParallelogram(board, phi);
    writeTriangle(board, pair);
    writeChoice(board, pair);
    writeCosines(board, phi, gamma);
    const Term beside = pair.equal ? writeHalving(board, pair, phi) : writeSines(board, pair, gamma);
    writeDirection(board, pair, beside);
    writeAnswer(board);
    writeCheck(board);
    writeRoundingCost(board);
}

} // namespace tailpoint::explaining
