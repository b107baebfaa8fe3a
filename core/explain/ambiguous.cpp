// SPDX-License-Identifier: MIT
// A magnitude along a known line and a direction of known magnitude: two sides and an angle not between them.
#include "core/explain/ambiguous.h"

#include "core/quantity/decimals.h"

#include <cmath>
#include <numbers>

namespace tailpoint::explaining {

namespace {

void writeKnownAngle(Board& board, const Ambiguous& q) {
    Step& step = board.step(StepKey::angle, SENTENCE("solution", "The angle that is known"), Stage::interior);
    step.parts = {part(FigurePart::Kind::tails, q.side(q.k).index, q.side(q.u).index)};
    step.reasoning.push_back(namedAngles(q));
    nameAngles(step, q);
    step.reasoning.push_back(board.say(
        q.r.isOwnAngle(q.k, q.u)
            ? SENTENCE("solution",
                       "The directions of {known} and {u} are known, and with them the angle {angle} between "
                       "these two sides.")
            : SENTENCE("solution",
                       "The directions of {known} and {u} are known, and with them the angle {angle} between "
                       "these two sides, the supplement of the one between their tails."),
        "known", q.side(q.k).vector, "u", q.side(q.u).vector, "angle", q.symbol(q.v)));
    board.show(step, q.angle(q.v));
}

Wording reached(const Ambiguous& q) {
    if (q.board.solved.tangent)
        return SENTENCE("solution", "{v} equals that distance: the circle touches the line at one point.");
    const bool areEqual = q.side(q.v).magnitude == q.side(q.k).magnitude;
    if (q.inBothSenses())
        return areEqual
                   ? SENTENCE("solution",
                              "{v} reaches beyond {distance}, so the parallel cuts the circle twice; and {v} "
                              "is no smaller than {k}, so the two points lie to either side of where "
                              "the parallel leaves {known}: one triangle with {u} in the sense drawn, and "
                              "one with {u} in the "
                              "other.")
                   : SENTENCE("solution",
                              "{v} reaches beyond {distance}, so the parallel cuts the circle twice; and {v} "
                              "is greater than {k}, so the two points lie to either side of where "
                              "the parallel leaves {known}: one triangle with {u} in the sense drawn, and "
                              "one with {u} in the "
                              "other.");
    if (!q.board.hasTwoAnswers())
        return areEqual ? SENTENCE("solution",
                                   "{v} reaches beyond {distance} and is no smaller than {k}: one triangle.")
                        : SENTENCE("solution",
                                   "{v} reaches beyond {distance} and is greater than {k}: one triangle.");
    return SENTENCE("solution",
                    "{angle} is acute, and {v} reaches beyond {distance} but is smaller than {k}: "
                    "two triangles.");
}

/// How far the circle's centre is from the line, and so how many triangles.
void writeReach(Board& board, const Ambiguous& q) {
    const QuantityId distance{What::distance};
    Step& step = board.step(StepKey::reach, SENTENCE("solution", "How many triangles?"), Stage::interior);
    step.reasoning.push_back(board.say(
        SENTENCE("solution",
                 "Two sides and an angle that does not lie between them are known: the ambiguous "
                 "case. The distance {distance} of the line from the centre of the circle decides."),
        "distance", board.symbolOf(distance)));
    board.show(step, distance);
    step.conclusion.push_back(board.say(
        reached(q), "v", equal(q.side(q.v).size, q.side(q.v).sizeNumber), "k",
        equal(q.side(q.k).size, q.side(q.k).sizeNumber), "u", q.side(q.u).vector, "known", q.side(q.k).vector,
        "angle", q.symbol(q.v), "distance", equal(board.symbolOf(distance), board.number(distance))));
}

/// What the law of cosines would lead to.
Wording quadratic(const Ambiguous& q) {
    if (q.board.solved.tangent)
        return SENTENCE("solution",
                        "The law of cosines would do as well: it gives a quadratic for {u}, whose two "
                        "roots coincide.");
    if (q.inBothSenses())
        return SENTENCE("solution",
                        "The law of cosines would do as well: it gives a quadratic for {u}, with one "
                        "root for either sense of its line.");
    if (q.board.hasTwoAnswers())
        return SENTENCE("solution",
                        "The law of cosines would do as well: it gives a quadratic for {u}, whose two "
                        "roots are the two answers.");
    return SENTENCE("solution",
                    "The law of cosines would do as well: it gives a quadratic for {u}, whose positive "
                    "root is the answer.");
}

/// The inverse sine; its second value is the decision's.
void writeCandidates(Board& board, const Ambiguous& q) {
    Step& step = board.step(StepKey::sines, SENTENCE("solution", "Law of sines, and its two angles"),
                            Stage::found, Law::sines);
    const QuantityId shown = q.isDecided() ? q.angle(q.k) : q.acute();
    step.triangleAlone = true;
    step.parts = {part(FigurePart::Kind::opposite, q.side(q.k).index)};
    step.reasoning.push_back(board.say(
        SENTENCE("solution", "{v} and {angle} are a whole pair, so the law of sines starts at once."), "v",
        q.side(q.v).size, "angle", q.symbol(q.v)));
    step.reasoning.push_back(board.say(quadratic(q), "u", q.side(q.u).size));
    if (shown == q.acute())
        step.reasoning.push_back(
            board.say(SENTENCE("solution", "{acute} is the acute angle that the inverse sine gives."),
                      "acute", board.symbolOf(shown)));
    step.workings.push_back({{},
                             equal(over(apply("sin", q.symbol(q.k)), q.side(q.k).size),
                                   over(apply("sin", q.symbol(q.v)), q.side(q.v).size)),
                             {},
                             {}});
    if (board.solved.tangent)
        board.show(step, {What::ratio, q.r.side[q.k]});
    board.show(step, shown, {q.acute()});
}

/// Whether the known side is shown as smaller than the one that swings.
bool isShorter(const Ambiguous& q) {
    return q.side(q.k).sizeNumber.value < q.side(q.v).sizeNumber.value;
}

/// Says which of the two angles lead to an answer, and why.
void writeDecision(Board& board, const Ambiguous& q) {
    Step& step = board.worked.steps.back();
    if (board.solved.tangent) {
        step.conclusion.push_back(
            board.say(SENTENCE("solution", "The sine is 1: both angles fall together in the right angle.")));
        return;
    }
    const Formula acute = board.number(q.acute()), second = board.supplementOf(q.acute());
    step.conclusion.push_back(
        board.say(SENTENCE("solution", "Two angles have this sine: {acute} and {supplement}."), "acute",
                  acute, "supplement", equal(sum(board.halfTurn(), negative(acute)), second)));
    if (q.inBothSenses()) {
        step.conclusion.push_back(board.say(
            isShorter(q)
                ? SENTENCE(
                      "solution",
                      "The greater side lies opposite the greater angle, and {k} is smaller than {v}, so "
                      "{angle} is smaller than the angle opposite {v} in either triangle, and so acute, in "
                      "either sense of {u}: {second} drops out.")
                : SENTENCE("solution", "{k} and {v} are equal, so {angle} is equal to the angle opposite {v} "
                                       "in either triangle, "
                                       "and so acute, in either sense of {u}: {second} drops out."),
            "v", q.side(q.v).size, "k", q.side(q.k).size, "angle", q.symbol(q.k), "u", q.side(q.u).vector,
            "second", second));
        return;
    }
    if (board.hasTwoAnswers()) {
        step.conclusion.push_back(board.say(
            SENTENCE("solution", "Each of them, added to {known}, stays below {half} and leaves room for a "
                                 "third angle: both lead to an answer, and both are carried on."),
            "known", equal(q.symbol(q.v), board.number(q.angle(q.v))), "half", board.halfTurn()));
        step.notes.push_back(board.say(SENTENCE(
            "solution", "The calculator shows only the acute angle. Look for the other one, and decide.")));
        return;
    }
    step.conclusion.push_back(
        q.opposite(q.k) <= std::numbers::pi / 2
            ? board.say(isShorter(q)
                            ? SENTENCE("solution",
                                       "The greater side lies opposite the greater angle, and {k} is smaller "
                                       "than {v}, so {angle} is the smaller of the two angles: {second} "
                                       "with {known} would leave nothing for the third. {acute} holds.")
                            : SENTENCE("solution",
                                       "{k} and {v} are equal, and so are the angles opposite: {second} "
                                       "with {known} would leave nothing for the third. {acute} holds."),
                        "k", q.side(q.k).size, "v", q.side(q.v).size, "angle", q.symbol(q.k), "second",
                        second, "known", board.number(q.angle(q.v)), "acute", acute)
            : board.say(SENTENCE("solution",
                                 "Only the obtuse angle closes the triangle on this side: {second} holds."),
                        "second", second));
    step.notes.push_back(board.say(SENTENCE(
        "solution", "The calculator shows only the acute angle. Look for the other one, and decide.")));
}

} // namespace

void writeAmbiguousEstimate(Board& board) {
    const Ambiguous q(board);
    Step& step = board.step(StepKey::estimate, SENTENCE("solution", "Draw it to scale: a line and a circle"),
                            Stage::construction);
    step.parts = {part(FigurePart::Kind::locus, q.side(q.u).index),
                  part(FigurePart::Kind::locus, q.side(q.v).index)};
    step.reasoning.push_back(board.say(
        SENTENCE(
            "solution",
            "Through one end of {known} draw the parallel to the line of action of {u}, and about the other "
            "end a circle of radius {v}: where the parallel meets the circle, the triangle closes."),
        "known", q.side(q.k).vector, "u", q.side(q.u).vector, "v", q.side(q.v).size));
    step.reasoning.push_back(board.say(SENTENCE(
        "solution", "No side of a triangle is shorter than the difference of the other two, or longer "
                    "than their sum:")));
    const double k = q.side(q.k).sizeNumber.value, v = q.side(q.v).sizeNumber.value;
    const Formula& size = q.side(q.u).size;
    const auto bounds = [&](Formula least, Formula most) {
        return related(std::move(least), Relation::lessOrEqual, size, Relation::lessOrEqual, std::move(most));
    };
    step.workings.push_back({{},
                             bounds(absolute(sum(q.side(q.k).size, negative(q.side(q.v).size))),
                                    sum(q.side(q.k).size, q.side(q.v).size)),
                             {},
                             bounds(board.bound(std::abs(k - v)), board.bound(k + v))});
    board.expected = {q.side(q.u).sizeId, board.bound(std::abs(k - v)), board.bound(k + v)};
    if (board.solved.tangent)
        step.conclusion.push_back(board.say(
            SENTENCE("solution", "Here the parallel seems just to touch the circle: whether it does must be "
                                 "computed.")));
    else if (board.hasTwoAnswers())
        step.conclusion.push_back(board.say(SENTENCE(
            "solution", "Here the parallel cuts the circle twice: expect two answers, and read off both.")));
    else
        step.conclusion.push_back(
            board.say(SENTENCE("solution", "Here one meeting point lies on the side to which {u} points."),
                      "u", q.side(q.u).vector));
    tellScale(board, step);
}

void writeAmbiguous(Board& board) {
    const Ambiguous q(board);
    writeGiven(board);
    writeCount(board);
    writeKnown(board);
    writeSenses(board);
    writeAmbiguousEstimate(board);
    writeKnownAngle(board, q);
    writeReach(board, q);
    writeCandidates(board, q);
    writeDecision(board, q);
    for (std::size_t i = 0; i < board.solved.solutions.size(); ++i)
        writeRest(board, q, i);
    writeOtherPoint(board, q);
    writeEnd(board);
}

} // namespace tailpoint::explaining
