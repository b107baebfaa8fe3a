// The smallest force that puts the sum on a line, and the smallest sum that a force along a line leaves: a
// right triangle each time.
#include "core/explain/families.h"
#include "core/explain/triangle.h"

#include <cmath>
#include <numbers>

namespace tailpoint::explaining {

namespace {

/// `leg` is sought at right angles to `line`; the known side is the hypotenuse.
struct Right {
    Question question;
    std::size_t leg = 0, line = 0;
    const Triangle& triangle() const { return question.triangle; }
    const Arrow& at(std::size_t i) const { return *question.triangle.side[i]; }
    const Arrow& known() const { return at(question.known); }
};

/// Vectors with unknowns by their part in the question: the one asked to be smallest, the one on a line.
void assign(const Blackboard& board, Right& q) {
    const std::string& name = *board.sketch.smallest;
    for (std::size_t i = 0; i < 3; ++i) {
        if (i == q.question.known)
            continue;
        (q.at(i).name == name ? q.leg : q.line) = i;
    }
}

bool ofSum(const Blackboard& board) {
    return board.solved.family == Family::smallestSum;
}

void writeWhy(Blackboard& board, const Right& q) {
    Step& step = board.step("why", "Why the right angle?", Stage::construction);
    step.parts = {part(FigurePart::Kind::locus, q.at(q.line).index)};
    if (ofSum(board))
        step.reasoning.push_back(
            say("Whatever the magnitude of {}, the tip of {} stays on the line through the tip of {} "
                "parallel to {}. The point of that line nearest to the common point is the foot of "
                "the perpendicular.",
                q.at(q.line).vector, q.at(q.leg).vector, q.known().vector, q.at(q.line).vector));
    else
        step.reasoning.push_back(
            say("{} must lead from the tip of {} to some point of the line of {}. The shortest way "
                "from a point to a line is the perpendicular: every other way is the hypotenuse "
                "of a right triangle over it, and longer.",
                q.at(q.leg).vector, q.known().vector, q.at(q.line).vector));
    step.conclusion.push_back(
        say("So {} is perpendicular to {}, the triangle is right-angled, and {} is its hypotenuse.",
            q.at(q.leg).vector, q.at(q.line).vector, q.known().vector));
}

Term writeAngle(Blackboard& board, const Right& q) {
    Step& step = board.step("angle", "The angle beside the right one", Stage::interior);
    step.parts = {part(FigurePart::Kind::tails, q.known().index, q.at(q.line).index)};
    step.angles = {named(part(FigurePart::Kind::opposite, q.at(q.leg).index), angleSymbol(board, q.leg))};
    step.reasoning.push_back(say("Between the sides {} and {} lies {}, from their directions.",
                                 q.known().vector, q.at(q.line).vector, angleSymbol(board, q.leg)));
    Term angle = writeAngleFromDirections(board, step, q.triangle(), q.leg);
    remarkOnRounding(board, step, Quantity::angle);
    return angle;
}

void writeLegs(Blackboard& board, const Right& q, const Term& angle) {
    Step& step = board.step("legs", "The two legs", Stage::magnitudes, Law::sines);
    step.triangleAlone = true;
    step.parts = {arrowPart(q.at(q.leg).index), arrowPart(q.at(q.line).index)};
    step.reasoning.push_back(
        say("In a right triangle the law of sines shrinks to sine and cosine, since the sine of the "
            "right angle is 1: the leg opposite to the angle is the hypotenuse times its sine, the "
            "leg beside it the hypotenuse times its cosine."));
    const auto write = [&](std::size_t i, const char* function) {
        Arrow& arrow = board.at(q.at(i).index);
        Working working{arrow.size,
                        product(q.known().size, apply(function, angle.symbol)),
                        product(q.known().sizeNumber, apply(function, angle.number)),
                        {}};
        arrow.sizeNumber = board.settle(working, arrow.magnitude, Quantity::force);
        step.workings.push_back(std::move(working));
    };
    write(q.leg, "sin");
    write(q.line, "cos");
}

void writeWay(Blackboard& board, const Right& q) {
    Arrow& leg = board.at(q.at(q.leg).index);
    const Arrow& line = q.at(q.line);
    Step& step = board.step("direction", "The direction of the smallest", Stage::all);
    step.parts = {part(FigurePart::Kind::direction, leg.index)};
    const double quarter = board.half() / 2;
    const Formula right = board.sketch.angleUnit == AngleUnit::deg   ? number(90, "90", "°")
                          : board.sketch.angleUnit == AngleUnit::gon ? number(100, "100", "gon")
                                                                     : number(quarter, "π/2", "rad");
    const Turn turn =
        writeTurn(board, step, leg.theta, thetaOf(line), {right, right}, leg.direction.value_or(0));
    leg.directionNumber = turn.number;
    step.reasoning.push_back(
        say("Perpendicular to {}, on the side to which the triangle closes: turned {} from it by {}.",
            line.vector, inWords(std::string(wayOf(turn.sign, board.sketch))), right));
}

} // namespace

void writeSmallest(Blackboard& board) {
    writeGiven(board);
    writeCount(board);
    Right q;
    if (!buildQuestion(board, q.question) || q.triangle().isFlat())
        return writeAlongOneLine(board);
    assign(board, q);
    writeSenses(board);
    writeWhy(board, q);
    const Term angle = writeAngle(board, q);
    writeLegs(board, q, angle);
    writeWay(board, q);
    writeAnswer(board);
    writeCheck(board);
    writeRoundingCost(board);
}

} // namespace tailpoint::explaining
