// Questions whose vectors all lie on one line, or of which nothing is left to add: no triangle, no law.
#include "core/explain/families.h"

namespace tailpoint::explaining {

namespace {

bool isZero(const Vector& vector) {
    return vector.magnitude == 0;
}

void writeOneLeft(Board& board) {
    const bool first = !isZero(board.forces()[0]);
    const Vector &rest = board.forces()[first ? 0U : 1U], &gone = board.forces()[first ? 1U : 0U];
    Step& step = board.step(StepKey::line, SENTENCE("solution", "Nothing to add"), Stage::construction);
    step.parts = {arrowPart(rest.index)};
    if (isZero(rest)) {
        step.reasoning.push_back(
            board.say(SENTENCE("solution", "Both forces are zero, and so is their resultant.")));
        return;
    }
    step.reasoning.push_back(board.say(
        SENTENCE(
            "solution",
            "{gone} is zero: there is no parallelogram, and the resultant is the other force unchanged."),
        "gone", gone.vector));
    step.workings.push_back({{}, equal(board.sum().vector, rest.vector), {}, {}});
}

void writeConclusion(const Board& board, Step& step, const Vector& along) {
    const Vector& sum = board.sum();
    if (!sum.direction)
        step.conclusion.push_back(board.say(SENTENCE(
            "solution", "Equal and opposite: they hold each other, and the resultant is zero. It has no "
                        "direction.")));
    else
        step.conclusion.push_back(board.say(
            SENTENCE("solution", "It is positive, so {sum} points the same way as {along}: {direction}."),
            "sum", sum.vector, "along", along.vector, "direction", equal(sum.theta, along.wayNumber)));
}

void writeAlongLine(Board& board) {
    const Vector &p = board.forces()[0], &q = board.forces()[1];
    const Vector& along = p.magnitude >= q.magnitude ? p : q;
    const bool opposed = p.v.dot(q.v) < 0;
    Step& step = board.step(StepKey::line,
                            opposed ? SENTENCE("solution", "In opposite senses on one line")
                                    : SENTENCE("solution", "In the same sense on one line"),
                            Stage::magnitudes);
    step.parts = {arrowPart(0), arrowPart(1), arrowPart(kSumIndex)};
    step.reasoning.push_back(board.say(
        opposed ? SENTENCE("solution",
                           "{p} and {q} act along the same line in opposite senses: the parallelogram is "
                           "flat, and neither law of the triangle is needed.")
                : SENTENCE("solution",
                           "{p} and {q} act along the same line: the parallelogram is flat, and neither "
                           "law of the triangle is needed."),
        "p", p.vector, "q", q.vector));
    step.reasoning.push_back(board.say(
        SENTENCE("solution",
                 "Count components along the line as positive in the sense of {along}; call that axis "
                 "{axis}."),
        "along", along.vector, "axis", symbol("u")));
    for (const VectorId vector : {p.id, q.id}) {
        const QuantityId component{What::along, vector};
        step.workings.push_back({board.symbolOf(component), {}, {}, board.number(component)});
        step.lines.push_back(component);
    }
    board.show(step, {What::along, kSumVector});
    board.show(step, board.sum().sizeId);
    writeConclusion(board, step, along);
}

/// What was asked for, with the figures that the check takes.
void writeFound(const Board& board, Step& step) {
    const auto add = [&](const Formula& symbol, const Formula& number) {
        if (!board.carried.value(number.id))
            step.workings.push_back(board.told({symbol, {}, {}, number}, number.id));
    };
    const auto addVector = [&](const Vector& vector) {
        if (!vector.sizeGiven)
            add(vector.size, vector.sizeNumber);
        if (!vector.wayGiven && vector.direction)
            add(vector.theta, vector.wayNumber);
    };
    for (const Vector& force : board.forces())
        addVector(board.found(force.id));
    addVector(board.found(kSumVector));
}

} // namespace

void writeAlongOneLine(Board& board) {
    writeGiven(board);
    writeCount(board);
    writeKnown(board);
    Step& step = board.step(StepKey::line, SENTENCE("solution", "No triangle to solve"), Stage::magnitudes);
    step.reasoning.push_back(board.say(
        SENTENCE("solution", "The vectors of this question lie on one line, or one of them vanishes: the "
                             "triangle is flat, and neither law of the triangle is needed. Along that line "
                             "components add with their signs, and across it there is nothing.")));
    writeFound(board, step);
    writeEnd(board);
}

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
