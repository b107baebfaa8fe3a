#include "core/explain/ambiguous.h"

#include <array>
#include <cmath>
#include <numbers>

namespace tailpoint::explaining {

namespace {

/// Two answers, one in each sense of the line of action.
bool inBothSenses(const Blackboard& board, const Ambiguous& q) {
    return board.solved.solutions.size() > 1 && q.at(q.v).magnitude >= q.at(q.k).magnitude;
}

} // namespace

Formula primed(Formula symbol, const std::string& prime) {
    symbol.text += prime;
    return symbol;
}

void writeEstimate(Blackboard& board, const Ambiguous& q) {
    Step& step = board.step("estimate", "Draw it to scale: a line and a circle", Stage::construction);
    step.parts = {part(FigurePart::Kind::locus, q.at(q.u).index),
                  part(FigurePart::Kind::locus, q.at(q.v).index)};
    step.reasoning.push_back(
        say("From one end of {} runs the line of action of {}, about the other end a circle of "
            "radius {}: where the line meets the circle, the triangle closes.",
            q.at(q.k).vector, q.at(q.u).vector, q.at(q.v).size));
    if (board.solved.tangent)
        step.conclusion.push_back(say("Here the line just touches the circle: one answer."));
    else if (board.solved.solutions.size() > 1)
        step.conclusion.push_back(say("Here the line cuts the circle twice: expect two answers."));
    else
        step.conclusion.push_back(
            say("Here one meeting point lies on the side to which {} points.", q.at(q.u).vector));
}

Term writeKnownAngle(Blackboard& board, const Ambiguous& q) {
    Step& step = board.step("angle", "The angle that is known", Stage::interior);
    step.parts = {part(FigurePart::Kind::tails, q.at(q.k).index, q.at(q.u).index)};
    step.reasoning.push_back(namedAngles(board, q.triangle()));
    nameAngles(step, board, q.triangle());
    step.reasoning.push_back(say(
        "The directions of {} and {} are known, and with them the angle {} between these two "
        "sides{}.",
        q.at(q.k).vector, q.at(q.u).vector, angleSymbol(board, q.v),
        inWords(q.triangle().isOwnAngle(q.k, q.u) ? "" : ", the supplement of the one between their tails")));
    Term angle = writeAngleFromDirections(board, step, q.triangle(), q.v);
    remarkOnRounding(board, step, Quantity::angle);
    return angle;
}

void writeReach(Blackboard& board, const Ambiguous& q, const Term& angle) {
    Step& step = board.step("reach", "How many triangles?", Stage::interior);
    step.reasoning.push_back(
        say("Known are two sides and an angle that does not lie between them: the ambiguous case. "
            "The distance of the line from the centre of the circle decides."));
    const Formula d = board.things.formula({What::distance});
    const double distance = q.at(q.k).magnitude * std::sin(q.triangle().opposite(q.v));
    Working working{d,
                    product(q.at(q.k).size, apply("sin", angle.symbol)),
                    product(q.at(q.k).sizeNumber, apply("sin", angle.number)),
                    {}};
    const Formula value = board.settle(working, distance, Quantity::force);
    step.workings.push_back(std::move(working));
    const Formula &k = q.at(q.k).size, &v = q.at(q.v).size;
    if (board.solved.tangent)
        step.conclusion.push_back(
            say("{} equals that distance: the circle touches the line in one point.", v));
    else if (inBothSenses(board, q))
        step.conclusion.push_back(
            say("{} is no smaller than {}: one triangle with {} in the sense drawn, and one with "
                "{} in the other, since its line of action leaves the sense open.",
                v, k, q.at(q.u).vector, q.at(q.u).vector));
    else if (board.solved.solutions.size() < 2)
        step.conclusion.push_back(
            say("{} reaches beyond {} and is no smaller than {}: one triangle.", v, equal(d, value), k));
    else
        step.conclusion.push_back(
            say("{} reaches beyond {} but is smaller than {}: two triangles.", v, equal(d, value), k));
}

/// The inverse sine and its second value; returns the acute one.
Term writeCandidates(Blackboard& board, const Ambiguous& q, const Term& angle) {
    Step& step = board.step("sines", "Law of sines, and its two angles", Stage::found, Law::sines);
    step.triangleAlone = true;
    step.parts = {part(FigurePart::Kind::opposite, q.at(q.k).index)};
    const Formula& symbol = angleSymbol(board, q.k);
    step.reasoning.push_back(
        say("{} and {} are a whole pair, so the law of sines starts. The law of cosines can't: it "
            "would need the third side or the angle between the known ones.",
            q.at(q.v).size, angle.symbol));
    step.workings.push_back(
        {{},
         equal(over(apply("sin", symbol), q.at(q.k).size), over(apply("sin", angle.symbol), q.at(q.v).size)),
         {},
         {}});
    const double rad = q.triangle().opposite(q.k);
    Term acute = writeSinesForAngle(board, step, symbol, sizeOf(q.at(q.k)), sizeOf(q.at(q.v)), angle,
                                    std::min(rad, std::numbers::pi - rad));
    return acute;
}

/// Says which of the two angles lead to an answer, and why.
void writeDecision(Blackboard& board, const Ambiguous& q, const Term& angle, const Term& acute) {
    Step& step = board.worked.steps.back();
    const Formula second = board.angleInUnit(board.half() - board.valueOf(acute.number));
    if (board.solved.tangent) {
        step.conclusion.push_back(say("The sine is 1: both angles fall together in the right angle."));
        return;
    }
    step.conclusion.push_back(say("The inverse sine has two angles: {} and {}.", acute.number,
                                  equal(sum(board.halfTurn(), negative(acute.number)), second)));
    if (inBothSenses(board, q)) {
        step.conclusion.push_back(
            say("{} is no smaller than {}, so {} is acute, in either sense of {}: {} drops out.",
                q.at(q.v).size, q.at(q.k).size, acute.symbol, q.at(q.u).vector, second));
        return;
    }
    if (board.solved.solutions.size() > 1) {
        step.conclusion.push_back(
            say("Each of them with {} stays below {} and leaves a third angle: both are "
                "answers, and both are carried on.",
                equal(angle.symbol, angle.number), board.halfTurn()));
        return;
    }
    const bool isAcute = q.triangle().opposite(q.k) <= std::numbers::pi / 2;
    step.conclusion.push_back(
        isAcute ? say("The greater side lies opposite to the greater angle, and {} is no greater than "
                      "{}, so {} can't be the greater angle: {} with {} would leave nothing for the "
                      "third. {} holds.",
                      q.at(q.k).size, q.at(q.v).size, acute.symbol, second, angle.number, acute.number)
                : say("Only the obtuse angle closes the triangle on this side: {} holds.", second));
    step.notes.push_back(
        say("The calculator shows only the acute angle. Look for the other one, and decide."));
}

namespace {

/// The direction of the line's other sense, half a turn on.
void writeTurned(Blackboard& board, Step& step, const Ambiguous& q, Answer& answer) {
    const Arrow& drawn = q.at(q.u);
    Arrow& u = answer.board.at(drawn.index);
    const Formula half = drawn.directionNumber.value > 0 ? negative(board.halfTurn()) : board.halfTurn();
    Working working{
        primed(u.theta, answer.prime), sum(drawn.theta, half), sum(drawn.directionNumber, half), {}};
    u.directionNumber = board.settle(working, u.direction.value_or(0), Quantity::angle);
    u.theta = *working.subject;
    step.workings.push_back(std::move(working));
}

} // namespace

void writeRest(Blackboard& board, const Ambiguous& q, Answer& answer, Term angle, const Term& acute) {
    const Triangle& t = answer.triangle;
    const bool both = !answer.prime.empty();
    const bool first = answer.prime != "″";
    Step& step = board.step(!both   ? "rest"
                            : first ? "first"
                                    : "second",
                            !both   ? "Third angle, magnitude, direction"
                            : first ? "First answer"
                                    : "Second answer",
                            Stage::all, Law::sines);
    const Arrow &u = *t.side[q.u], &v = *t.side[q.v];
    step.parts = {arrowPart(u.index), arrowPart(v.index)};
    const bool isObtuse = t.opposite(q.k) > std::numbers::pi / 2 + 1e-12;
    const auto name = [&](std::size_t side, const Formula& symbol) {
        step.angles.push_back(named(part(FigurePart::Kind::opposite, t.side[side]->index), symbol));
    };
    const bool otherSense = std::abs(t.opposite(q.v) - q.triangle().opposite(q.v)) > 1e-9;
    if (otherSense) {
        step.reasoning.push_back(
            say("Here {} acts in the other sense of its line, so the angle between the sides is the "
                "supplement.",
                u.vector));
        angle = writeSupplement(board, step, primed(angle.symbol, answer.prime), angle, t.opposite(q.v));
        writeTurned(board, step, q, answer);
    }
    name(q.v, angle.symbol);
    Term atK{primed(acute.symbol, answer.prime), acute.number};
    if (isObtuse)
        atK = writeSupplement(board, step, primed(acute.symbol, both ? answer.prime : "′"), acute,
                              t.opposite(q.k));
    else if (both)
        step.workings.push_back({atK.symbol, {}, {}, acute.number});
    const Term third =
        writeThird(board, step, primed(angleSymbol(board, q.u), answer.prime), angle, atK, t.opposite(q.u));
    name(q.k, atK.symbol);
    name(q.u, third.symbol);
    remarkOnRounding(board, step, Quantity::angle);
    const Formula size =
        writeSinesForSide(board, step, primed(u.size, answer.prime), third, sizeOf(v), angle, u.magnitude)
            .number;
    const Turn turn = writeSideDirection(board, step, t, q.v, primed(v.theta, answer.prime), q.k, third);
    remarkOnRounding(board, step, Quantity::angle);
    step.reasoning.push_back(say(
        "The sum of {} gives the third angle, the law of sines the magnitude; from {} the direction of {} is "
        "reached by turning {}.",
        board.halfTurn(), q.at(q.k).vector, v.vector, inWords(std::string(wayOf(turn.sign, board.sketch)))));
    answer.board.at(u.index).sizeNumber = size;
    answer.board.at(v.index).directionNumber = turn.number;
}

} // namespace tailpoint::explaining
