// Questions whose vectors all lie on one line, or of which nothing is left to add: no triangle, no law.
#include "core/explain/families.h"

#include <cmath>

namespace tailpoint::explaining {

namespace {

/// Signed along the direction of the greater force.
struct Line {
    const Arrow& along;
    std::vector<Formula> symbols, numbers;
};

bool isZero(const Arrow& arrow) {
    return arrow.magnitude == 0;
}

void writeOneLeft(Blackboard& board) {
    const bool first = !isZero(board.forces[0]);
    const Arrow& rest = first ? board.forces[0] : board.forces[1];
    const Arrow& gone = first ? board.forces[1] : board.forces[0];
    Step& step = board.step("line", "Nothing to add", Stage::construction);
    step.parts = {arrowPart(rest.index)};
    if (isZero(rest)) {
        step.reasoning.push_back(say("Both forces are zero, and so is their resultant."));
        return;
    }
    step.reasoning.push_back(
        say("{} is zero: there is no parallelogram, and the resultant is the other force as it "
            "stands.",
            gone.vector));
    step.workings.push_back({{}, equal(board.sum.vector, rest.vector), {}, {}});
    board.sum.sizeNumber = rest.sizeNumber;
    board.sum.directionNumber = rest.directionNumber;
}

Line lineOf(const Blackboard& board) {
    const Arrow &p = board.forces[0], &q = board.forces[1];
    Line line{p.magnitude >= q.magnitude ? p : q, {}, {}};
    for (const Arrow& arrow : board.forces) {
        const bool against = arrow.v.dot(line.along.v) < 0;
        line.symbols.push_back(board.symbolOf(What::along, arrow));
        line.numbers.push_back(against ? negative(arrow.sizeNumber) : arrow.sizeNumber);
    }
    return line;
}

void writeAlongLine(Blackboard& board) {
    const Arrow &p = board.forces[0], &q = board.forces[1];
    const bool opposed = p.v.dot(q.v) < 0;
    const Line line = lineOf(board);
    Step& step =
        board.step("line", opposed ? "Opposed on one line" : "Side by side on one line", Stage::magnitudes);
    step.parts = {arrowPart(0), arrowPart(1), arrowPart(kSumIndex)};
    step.reasoning.push_back(
        say("{} and {} act along the same line{}: the parallelogram is flat, and neither law of "
            "the triangle is needed.",
            p.vector, q.vector, inWords(opposed ? " in opposite senses" : "")));
    step.reasoning.push_back(
        say("Count components along the line as positive in the sense of {}; call that axis {}.",
            line.along.vector, symbol("u")));
    for (std::size_t i = 0; i < board.forces.size(); ++i)
        step.workings.push_back({line.symbols[i], {}, line.numbers[i], {}});
    Working working{board.symbolOf(What::along, board.sum), sumOf(line.symbols), sumOf(line.numbers), {}};
    const Formula along = board.settle(working, board.sum.magnitude, Quantity::force);
    step.workings.push_back(std::move(working));
    board.sum.sizeNumber = along;
    if (!board.sum.direction) {
        step.conclusion.push_back(
            say("Equal and opposite: they hold each other, and the resultant is zero. It has no "
                "direction."));
        return;
    }
    board.sum.directionNumber = line.along.directionNumber;
    step.conclusion.push_back(say("It is positive, so {} points the way of {}: {}.", board.sum.vector,
                                  line.along.vector, equal(board.sum.theta, line.along.directionNumber)));
}

} // namespace

void writeAlongOneLine(Blackboard& board) {
    Step& step = board.step("line", "No triangle to solve", Stage::magnitudes);
    step.reasoning.push_back(
        say("The vectors of this question lie along one line, or one of them vanishes: the triangle "
            "is flat and no law of it is needed. Along that line components add with their signs, "
            "and across it there is nothing."));
    writeAnswer(board);
    writeCheck(board);
    writeRoundingCost(board);
}

void writeFlat(Blackboard& board) {
    writeGiven(board);
    writeCount(board);
    if (isZero(board.forces[0]) || isZero(board.forces[1]))
        writeOneLeft(board);
    else
        writeAlongLine(board);
    writeAnswer(board);
    writeCheck(board);
    writeRoundingCost(board);
}

} // namespace tailpoint::explaining
