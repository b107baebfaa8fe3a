// Two magnitudes along known lines: two angles and a side, so the law of sines, or Lami's form of it.
#include "core/explain/families.h"
#include "core/explain/triangle.h"

#include <array>
#include <cmath>

namespace tailpoint::explaining {

namespace {

struct Lines {
    Question question;
    const Triangle& triangle() const { return question.triangle; }
    const Arrow& at(std::size_t i) const { return *question.triangle.side[i]; }
    const Arrow& known() const { return at(question.known); }
    std::size_t u() const { return question.sought[0]; }
    std::size_t v() const { return question.sought[1]; }
};

void writeEstimate(Blackboard& board, const Lines& q) {
    Step& step = board.step("estimate", "Draw it to scale", Stage::construction);
    step.parts = {part(FigurePart::Kind::locus, q.at(q.u()).index),
                  part(FigurePart::Kind::locus, q.at(q.v()).index)};
    if (q.triangle().loop)
        step.reasoning.push_back(
            say("Draw {} to scale and through its two ends the parallels to the other lines of "
                "action; where they meet, the triangle closes, and the two magnitudes can be "
                "measured.",
                q.known().vector));
    else
        step.reasoning.push_back(
            say("Draw {} to scale, and through its ends the parallels to the two lines of action: "
                "where line meets line, {} and {} can be measured.",
                q.known().vector, q.at(q.u()).size, q.at(q.v()).size));
}

std::array<Term, 3> writeAngles(Blackboard& board, const Lines& q) {
    Step& step = board.step("angles", "The angles of the force triangle", Stage::found);
    step.triangleAlone = true;
    step.parts = {part(FigurePart::Kind::triangle)};
    step.reasoning.push_back(namedAngles(board, q.triangle()));
    nameAngles(step, board, q.triangle());
    step.reasoning.push_back(
        say("All three directions are known, and so are the angles: where two tails meet it is "
            "the difference of the directions, where a tip meets a tail the supplement of it."));
    std::array<Term, 3> angles;
    const auto [a, b] = Triangle::others(q.question.known);
    angles[q.question.known] = writeAngleFromDirections(board, step, q.triangle(), q.question.known);
    angles[a] = writeAngleFromDirections(board, step, q.triangle(), a);
    angles[b] = writeThird(board, step, angleSymbol(board, b), angles[q.question.known], angles[a],
                           q.triangle().opposite(b));
    remarkOnRounding(board, step, Quantity::angle);
    return angles;
}

void writeSine(Blackboard& board, Step& step, const Lines& q, std::size_t i,
               const std::array<Term, 3>& angles) {
    Arrow& arrow = board.at(q.at(i).index);
    arrow.sizeNumber = writeSinesForSide(board, step, arrow.size, angles[i], sizeOf(q.known()),
                                         angles[q.question.known], arrow.magnitude)
                           .number;
}

void writeSineStep(Blackboard& board, const Lines& q, const std::array<Term, 3>& angles) {
    Step& step = board.step("sines", "Law of sines for both magnitudes", Stage::magnitudes, Law::sines);
    step.triangleAlone = true;
    step.parts = {arrowPart(q.at(q.u()).index), arrowPart(q.at(q.v()).index)};
    step.reasoning.push_back(
        say("Known are two angles and a side, and {} stands opposite to {}: one pair is whole, and "
            "the law of sines starts at once. The law of cosines would need a second side.",
            q.known().size, angleSymbol(board, q.question.known)));
    step.workings.push_back({{},
                             equal(over(q.at(q.u()).size, apply("sin", angles[q.u()].symbol)),
                                   over(q.at(q.v()).size, apply("sin", angles[q.v()].symbol)),
                                   over(q.known().size, apply("sin", angles[q.question.known].symbol))),
                             {},
                             {}});
    writeSine(board, step, q, q.u(), angles);
    writeSine(board, step, q, q.v(), angles);
}

/// Of an oblique component: not a projection, and at times greater than the whole.
void remarkOnComponents(Blackboard& board, const Lines& q) {
    if (q.triangle().loop || q.question.known != 2)
        return;
    Step& step = board.worked.steps.back();
    const Arrow& whole = q.known();
    if (std::abs(std::cos(q.triangle().opposite(2))) < 1e-12) {
        step.conclusion.push_back(
            say("The two lines are at right angles, so here the components are the projections "
                "of {} as well.",
                whole.vector));
        return;
    }
    step.notes.push_back(
        say("A component along an oblique line is not the projection on it: {} times the cosine of "
            "the angle to the line would be wrong.",
            whole.size));
    for (std::size_t i : q.question.sought)
        if (q.at(i).magnitude > whole.magnitude)
            step.conclusion.push_back(
                say("{} is greater than {} itself. That is no slip: an oblique component may "
                    "exceed the force it belongs to.",
                    q.at(i).size, whole.size));
}

/// The angle between the tails of the two sides that are not `i`, named after the force it faces.
Formula facing(const Blackboard& board, const Lines& q, std::size_t i) {
    const auto [a, b] = Triangle::others(i);
    return board.between(q.at(a), q.at(b));
}

std::array<Term, 3> writeFacingAngles(Blackboard& board, const Lines& q) {
    Step& step = board.step("angles", "The angles between the forces", Stage::interior);
    step.reasoning.push_back(
        say("Lami's form needs the angles between the tails, each facing one force: {} between "
            "{} and {}, and so on round the point.",
            facing(board, q, 0), q.at(1).vector, q.at(2).vector));
    std::array<Term, 3> angles;
    for (std::size_t i = 0; i < 3; ++i) {
        const auto [a, b] = Triangle::others(i);
        step.parts.push_back(part(FigurePart::Kind::tails, q.at(a).index, q.at(b).index));
        step.angles.push_back(named(step.parts.back(), facing(board, q, i)));
        angles[i] = writeTails(board, step, q.at(a), q.at(b), facing(board, q, i));
    }
    step.conclusion.push_back(
        say("All three together make {}: each of them is smaller than {}, as it must be for "
            "three forces that only pull.",
            board.fullTurn(), board.halfTurn()));
    return angles;
}

void writeLami(Blackboard& board, const Lines& q) {
    const std::array<Term, 3> angles = writeFacingAngles(board, q);
    Step& step = board.step("sines", "Lami's form of the law of sines", Stage::magnitudes, Law::sines);
    step.parts = {arrowPart(q.at(q.u()).index), arrowPart(q.at(q.v()).index)};
    step.reasoning.push_back(
        say("Three forces in equilibrium close a triangle whose angles are the supplements of the "
            "angles between the tails. A sine doesn't change under the supplement, so the law "
            "of sines holds with the angles between the tails: each force over the sine of the "
            "angle between the other two."));
    step.workings.push_back({{},
                             equal(over(q.at(0).size, apply("sin", angles[0].symbol)),
                                   over(q.at(1).size, apply("sin", angles[1].symbol)),
                                   over(q.at(2).size, apply("sin", angles[2].symbol))),
                             {},
                             {}});
    writeSine(board, step, q, q.u(), angles);
    writeSine(board, step, q, q.v(), angles);
}

} // namespace

void writeLines(Blackboard& board) {
    writeGiven(board);
    writeCount(board);
    Lines q;
    buildQuestion(board, q.question);
    if (q.triangle().isFlat())
        return writeAlongOneLine(board);
    writeSenses(board);
    writeEstimate(board, q);
    if (q.triangle().loop)
        writeLami(board, q);
    else {
        const std::array<Term, 3> angles = writeAngles(board, q);
        writeSineStep(board, q, angles);
        remarkOnComponents(board, q);
    }
    writeAnswer(board);
    writeCheck(board);
    writeRoundingCost(board);
}

} // namespace tailpoint::explaining
