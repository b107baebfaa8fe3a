// One force unknown beside two known vectors: the triangle has two sides and the angle between them.
#include "core/explain/families.h"
#include "core/explain/triangle.h"

#include <cmath>
#include <numbers>

namespace tailpoint::explaining {

namespace {

struct Missing {
    Question question;
    std::size_t x = 0, great = 0, small = 0; ///< sides: unknown, greater known, smaller known
    const Triangle& triangle() const { return question.triangle; }
    const Arrow& at(std::size_t i) const { return *question.triangle.side[i]; }
    bool equal() const { return at(great).magnitude == at(small).magnitude; }
};

void order(Missing& m) {
    m.x = m.question.sought.front();
    const auto [a, b] = Triangle::others(m.x);
    const bool first = m.at(a).magnitude >= m.at(b).magnitude;
    m.great = first ? a : b;
    m.small = first ? b : a;
}

Formula missingEquation(const Missing& m) {
    const auto& side = m.triangle().side;
    if (m.triangle().loop)
        return equal(side[2]->vector, negative(sum(side[0]->vector, side[1]->vector)));
    return equal(side[1]->vector, sum(side[2]->vector, negative(side[0]->vector)));
}

void writeEstimate(Blackboard& board, const Missing& m) {
    Step& step =
        board.step("estimate", "Sketch to scale, and estimate before computing", Stage::construction);
    step.parts = {arrowPart(m.at(m.great).index), arrowPart(m.at(m.small).index)};
    step.reasoning.push_back(m.triangle().loop ? say("Three forces in equilibrium close a triangle tip to "
                                                     "tail. {} holds what {} and {} amount to: as "
                                                     "great as their resultant, and opposed to it.",
                                                     m.at(m.x).vector, m.at(0).vector, m.at(1).vector)
                                               : say("{} leads from the tip of {} to the tip of {}: draw "
                                                     "both from the common point and join their tips.",
                                                     m.at(m.x).vector, m.at(0).vector, m.at(2).vector));
    step.workings.push_back({{}, missingEquation(m), {}, {}});
    const double low = m.at(m.great).magnitude - m.at(m.small).magnitude;
    const double high = m.at(m.great).magnitude + m.at(m.small).magnitude;
    step.conclusion.push_back(
        say("A side of a triangle is shorter than the other two together and longer than "
            "their difference: {}.",
            related(board.force(low), Relation::less, m.at(m.x).size, Relation::less, board.force(high))));
}

Term writeIncluded(Blackboard& board, const Missing& m) {
    const Arrow &a = m.at(m.great), &b = m.at(m.small);
    const bool own = m.triangle().isOwnAngle(m.great, m.small);
    Step& step = board.step("included", "The angle between the known sides", Stage::interior);
    step.parts = {part(FigurePart::Kind::tails, a.index, b.index)};
    step.reasoning.push_back(namedAngles(board, m.triangle()));
    nameAngles(step, board, m.triangle());
    const Formula& symbol = angleSymbol(board, m.x);
    step.reasoning.push_back(
        own ? say("{} and {} both start at the common point, so the angle {} between them in "
                  "the triangle is the angle between their tails, the difference of their "
                  "directions.",
                  a.vector, b.vector, symbol)
            : say("Tip to tail the two sides enclose the supplement of the angle between the "
                  "tails, so {} is {} less the difference of the directions.",
                  symbol, board.halfTurn()));
    Term found = writeAngleFromDirections(board, step, m.triangle(), m.x);
    remarkOnRounding(board, step, Quantity::angle);
    step.notes.push_back(
        own ? say("Here no supplement is taken: the tails of these two sides meet in a corner of "
                  "the triangle.")
            : say("The angle between the tails is not the angle in the triangle: tip to tail, the "
                  "sides enclose its supplement."));
    return found;
}

void writeCosineStep(Blackboard& board, const Missing& m, const Term& included) {
    Step& step = board.step("cosines", "Law of cosines for the magnitude", Stage::magnitudes, Law::cosines);
    step.triangleAlone = true;
    step.parts = {arrowPart(m.at(m.x).index), part(FigurePart::Kind::triangle)};
    step.reasoning.push_back(
        say("Known are two sides and the angle between them, so the law of cosines gives the "
            "third side. The law of sines can't start: no side is known together with the "
            "angle opposite to it."));
    Arrow& x = board.at(m.at(m.x).index);
    const Term size = writeCosinesForSide(board, step, x.size, sizeOf(m.at(m.great)), sizeOf(m.at(m.small)),
                                          included, x.magnitude);
    x.sizeNumber = size.number;
    step.conclusion.push_back(say("That lies within the estimate."));
}

Term writeHalf(Blackboard& board, const Missing& m, const Term& included) {
    Step& step = board.step("isosceles", "Equal sides, equal angles", Stage::triangle);
    step.triangleAlone = true;
    const Formula& symbol = angleSymbol(board, m.small);
    step.reasoning.push_back(
        say("{} and {} are equal, so the angles opposite to them are equal too and share what "
            "{} leaves of {}.",
            m.at(m.great).size, m.at(m.small).size, included.symbol, board.halfTurn()));
    const auto halfOf = [&](const Formula& angle) {
        return over(sum(board.halfTurn(), negative(angle)), count(2));
    };
    Working working{symbol, halfOf(included.symbol), halfOf(included.number), {}};
    const double full = fromRadians(m.triangle().opposite(m.small), board.sketch.angleUnit);
    Formula value = board.settle(working, full, Quantity::angle);
    step.workings.push_back(std::move(working));
    return {symbol, std::move(value)};
}

Term writeSineStep(Blackboard& board, const Missing& m, const Term& included) {
    const Arrow& x = m.at(m.x);
    const Formula& symbol = angleSymbol(board, m.small);
    Step& step = board.step("sines", "Law of sines for the angle opposite to the smaller side",
                            Stage::triangle, Law::sines);
    step.triangleAlone = true;
    step.parts = {part(FigurePart::Kind::opposite, m.at(m.small).index)};
    step.reasoning.push_back(
        say("With {} and {} one pair is whole. Of the angles left take {}, opposite to {}: of "
            "the two known sides {} is the smaller, so {} is surely acute.",
            x.size, included.symbol, symbol, m.at(m.small).size, m.at(m.small).size, symbol));
    Term found = writeSinesForAngle(board, step, symbol, sizeOf(m.at(m.small)), sizeOf(x), included,
                                    m.triangle().opposite(m.small));
    step.notes.push_back(say("The inverse sine also allows {}; opposite to the smaller side it never holds.",
                             board.angleInUnit(board.half() - board.valueOf(found.number))));
    return found;
}

void writeWay(Blackboard& board, const Missing& m, const Term& angle) {
    Arrow& x = board.at(m.at(m.x).index);
    const Arrow& great = m.at(m.great);
    Step& step = board.step("direction", "Refer the direction to the axis", Stage::all);
    step.parts = {part(FigurePart::Kind::direction, x.index), part(FigurePart::Kind::axis)};
    const Turn turn = writeSideDirection(board, step, m.triangle(), m.x, x.theta, m.great, angle);
    x.directionNumber = turn.number;
    const bool own = m.triangle().isOwnAngle(m.x, m.great);
    step.reasoning.push_back(
        own ? say("Between the tails of {} and {} lies the angle {} itself, turned {} from {}.", great.vector,
                  x.vector, angle.symbol, inWords(std::string(wayOf(turn.sign, board.sketch))), great.vector)
            : say("Between the tails of {} and {} lies the supplement of {}, turned {} from {}.",
                  great.vector, x.vector, angle.symbol, inWords(std::string(wayOf(turn.sign, board.sketch))),
                  great.vector));
    remarkOnRounding(board, step, Quantity::angle);
    step.conclusion.push_back(say("{} lies {}.", x.vector, inWords(quadrantWords(x.v))));
}

/// Lami: each force over the sine of the angle between the other two.
void writeLamiCheck(Blackboard& board, const Missing& m) {
    Step& step = board.step("lami", "Check by Lami's form", Stage::all, Law::sines);
    step.reasoning.push_back(
        say("Three forces in equilibrium: each over the sine of the angle between the tails of "
            "the other two gives one and the same number, for that sine is the sine of the "
            "triangle's angle opposite to the force."));
    const Triangle& t = m.triangle();
    for (std::size_t i = 0; i < 3; ++i) {
        const auto [a, b] = Triangle::others(i);
        const double between = tailsBetween(*t.side[a], *t.side[b]);
        const Formula angle = board.angle(between);
        Formula quotient = over(t.side[i]->sizeNumber, apply("sin", angle));
        const Formula value =
            board.force(static_cast<double>(evaluate(quotient, board.sketch.angleUnit).value_or(0)));
        step.workings.push_back({{}, {}, equal(std::move(quotient), value), {}});
    }
}

} // namespace

bool writeMissing(Blackboard& board) {
    Missing m;
    if (!buildQuestion(board, m.question) || m.triangle().isFlat())
        return false;
    order(m);
    writeGiven(board);
    writeCount(board);
    writeEstimate(board, m);
    const Term included = writeIncluded(board, m);
    writeCosineStep(board, m, included);
    const Term angle = m.equal() ? writeHalf(board, m, included) : writeSineStep(board, m, included);
    writeWay(board, m, angle);
    writeAnswer(board);
    if (m.triangle().loop)
        writeLamiCheck(board, m);
    writeCheck(board);
    writeRoundingCost(board);
    return true;
}

} // namespace tailpoint::explaining
