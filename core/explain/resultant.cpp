// The resultant of two forces: parallelogram, half of it, law of cosines, law of sines.
#include "core/explain/families.h"
#include "core/explain/quadrant.h"
#include "core/explain/slip.h"

#include <cmath>

namespace tailpoint::explaining {

namespace {

/// The two forces by size, and the angles opposite to them.
struct Pair {
    explicit Pair(const Board& board)
        : p(board.forces()[0]), q(board.forces()[1]), great(p.magnitude >= q.magnitude ? p : q),
          small(p.magnitude >= q.magnitude ? q : p), sum(board.sum()) {}

    const Vector &p, &q, &great, &small, &sum;
    QuantityId phi{What::between, forceVector(0), forceVector(1)}, gamma{What::opposite, kSumVector};
    QuantityId oppositeGreat() const { return {What::opposite, great.id}; }
    QuantityId oppositeSmall() const { return {What::opposite, small.id}; }
    bool equal() const { return p.magnitude == q.magnitude; }
};

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
            bounds(board.force(std::abs(pair.p.magnitude - pair.q.magnitude)),
                   board.force(pair.p.magnitude + pair.q.magnitude))};
}

void writeOpening(const Board& board, Step& step, const Pair& pair) {
    Formula square = equal(root(sum(power(pair.p.size, 2), power(pair.q.size, 2))),
                           board.force(std::hypot(pair.p.magnitude, pair.q.magnitude)));
    const auto wording = [&] {
        switch (openingOf(pair)) {
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

void writeEstimate(Board& board, const Pair& pair) {
    Step& step =
        board.step(StepKey::estimate, SENTENCE("solution", "Sketch to scale, and estimate before computing"),
                   Stage::directions);
    step.parts = {arrowPart(0), arrowPart(1)};
    step.reasoning.push_back(board.say(
        SENTENCE("solution",
                 "Drawn to scale, {sum} can be no shorter than the difference of the two magnitudes (forces "
                 "in opposite senses) and no longer than their sum (forces in the same sense):"),
        "sum", pair.sum.vector));
    step.workings.push_back(boundsOf(board, pair));
    writeOpening(board, step, pair);
    step.conclusion.push_back(
        pair.equal()
            ? board.say(SENTENCE("solution", "The forces are equal, so {sum} lies midway between them."),
                        "sum", pair.sum.vector)
            : board.say(SENTENCE("solution", "{sum} lies nearer to {great}, the greater force."), "sum",
                        pair.sum.vector, "great", pair.great.vector));
}

void writeTailsStep(Board& board, const Pair& pair) {
    Step& step = board.step(StepKey::tails, SENTENCE("solution", "Angle between the tails"), Stage::between);
    step.parts = {part(FigurePart::Kind::tails, 0, 1), part(FigurePart::Kind::direction, 0),
                  part(FigurePart::Kind::direction, 1)};
    step.angles = {named(part(FigurePart::Kind::tails, 0, 1), board.symbolOf(pair.phi))};
    step.reasoning.push_back(board.say(
        SENTENCE("solution",
                 "Both directions are measured from {axis}, so the angle {phi} between {p} and {q} is "
                 "their difference, each with its sign."),
        "axis", board.axisWords(), "phi", board.symbolOf(pair.phi), "p", pair.p.vector, "q", pair.q.vector));
    const double p = pair.p.wayNumber.value, q = pair.q.wayNumber.value;
    const bool longWay = std::abs(p - q) > board.half();
    if (longWay)
        step.reasoning.push_back(
            board.say(SENTENCE("solution",
                               "The difference goes the long way round, beyond {half}: the angle between the "
                               "tails is what is left of the full turn."),
                      "half", board.halfTurn()));
    board.show(step, pair.phi);
    board.remarkOnRounding(step);
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
    board.remarkOnRounding(step);
    step.notes.push_back(board.say(
        pair.equal()
            ? SENTENCE("solution",
                       "The forces are equal, so the parallelogram is a rhombus and its diagonal halves "
                       "{phi}. With unequal forces it would not.")
            : SENTENCE("solution",
                       "The diagonal does not halve {phi}: it would only if the forces were equal."),
        "phi", board.symbolOf(pair.phi)));
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

Prose calculatorNote(const Board& board) {
    switch (board.sketch.angleUnit) {
    case AngleUnit::deg:
        return board.say(SENTENCE("solution", "Is the calculator set to degrees, not radians?"));
    case AngleUnit::rad:
        return board.say(SENTENCE("solution", "Is the calculator set to radians, not degrees?"));
    case AngleUnit::gon:
        break;
    }
    return board.say(SENTENCE("solution", "Is the calculator set to gon?"));
}

/// The magnitude found beside its estimate; where the digits shown are those of a bound, it is not between.
Prose beside(const Board& board, const Pair& pair) {
    const Formula &size = pair.sum.sizeNumber,
                  least = board.force(std::abs(pair.p.magnitude - pair.q.magnitude)),
                  most = board.force(pair.p.magnitude + pair.q.magnitude);
    const auto wording = [&] {
        if (size.text == most.text)
            return SENTENCE("solution",
                            "To the digits shown {size} is the upper bound itself: the forces act in "
                            "almost the same sense.");
        if (size.text == least.text)
            return SENTENCE("solution",
                            "To the digits shown {size} is the lower bound itself: the forces act in "
                            "almost opposite senses.");
        return SENTENCE("solution", "As estimated, {size} lies between {least} and {most}.");
    }();
    return board.say(wording, "size", size, "least", least, "most", most);
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
    step.conclusion.push_back(beside(board, pair));
    step.conclusion.push_back(
        byHand ? board.say(SENTENCE("solution", "The rounded value, {size}, is carried on."), "size", size)
               : board.say(
                     SENTENCE("solution", "The full value is carried on; only what is shown is rounded.")));
    step.notes.push_back(calculatorNote(board));
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
    const Formula second = board.angle(board.half() - board.number(pair.oppositeSmall()).value);
    step.conclusion.push_back(board.say(
        SENTENCE("solution", "The inverse sine also allows {supplement}. The greater side lies opposite the "
                             "greater angle, and {small} is smaller than {great}: {angle} is smaller than "
                             "{oppositeGreat} and so acute. {second} drops out."),
        "supplement", equal(sum(board.halfTurn(), negative(sought)), second), "small", pair.small.size,
        "great", pair.great.size, "angle", sought, "oppositeGreat", board.symbolOf(pair.oppositeGreat()),
        "second", second));
    step.notes.push_back(
        board.say(SENTENCE("solution", "The inverse sine has two values; the calculator shows only the acute "
                                       "one. Opposite the smaller side that is always the right one.")));
}

/// Which way one turns, and so whether the angle is added: clockwise may be the sheet's own sense.
Wording turningFrom(bool counterClockwise, bool added) {
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

void writeDirection(Board& board, const Pair& pair) {
    Step& step =
        board.step(StepKey::direction, SENTENCE("solution", "Refer the direction to the axis"), Stage::all);
    const Formula angle = board.symbolOf(pair.oppositeSmall());
    step.parts = {part(FigurePart::Kind::direction, kSumIndex), part(FigurePart::Kind::axis)};
    step.angles = {named(part(FigurePart::Kind::opposite, pair.small.index), angle)};
    const int sign = board.signOf(pair.sum.wayId);
    step.reasoning.push_back(board.say(turningFrom(board.isCounterClockwise(sign), sign > 0), "angle", angle,
                                       "great", pair.great.vector, "sum", pair.sum.vector, "theta",
                                       pair.great.theta));
    board.show(step, pair.sum.wayId);
    board.remarkOnRounding(step);
    step.conclusion.push_back(liesThere(board, pair.sum));
    step.notes.push_back(board.say(
        SENTENCE("solution",
                 "The question asks for the angle from {axis}. {angle} alone would answer another question."),
        "axis", board.axisWords(), "angle", board.number(pair.oppositeSmall())));
}

} // namespace

void writeTwoForces(Board& board) {
    const Pair pair(board);
    writeGiven(board);
    writeCount(board);
    writeEstimate(board, pair);
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
