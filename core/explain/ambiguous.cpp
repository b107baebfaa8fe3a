// A magnitude along a known line and a direction of known magnitude: two sides and an angle not between them.
#include "core/explain/families.h"
#include "core/explain/slip.h"

#include <cmath>
#include <numbers>

namespace tailpoint::explaining {

namespace {

/// k: the known vector; u: on the line; v: on the circle. The angle opposite to v is known from directions.
struct Ambiguous : Triangle {
    explicit Ambiguous(const Board& theBoard) : Triangle(theBoard), k(r.knownSide()) {
        const bool firstOnLine = !sought(0).sizeGiven;
        u = r.sought[firstOnLine ? 0U : 1U];
        v = r.sought[firstOnLine ? 1U : 0U];
    }

    std::size_t k, u = 0, v = 0;
    /// What the inverse sine gives for the angle opposite to k, before it is decided whether that is obtuse.
    QuantityId acute() const { return {What::acute, r.side[k], {}, 0, kOfInverseSine}; }
    /// Two answers, one in each sense of the line of action.
    bool inBothSenses() const { return board.hasTwoAnswers() && side(v).magnitude >= side(k).magnitude; }
    /// The acute angle is the triangle's own, and needs no letter beside it.
    bool isDecided() const {
        return !board.hasTwoAnswers() && board.carried.formulaOf(angle(k)).id == acute();
    }
    QuantityId in(std::uint8_t answer, std::size_t i) const {
        return {What::opposite, r.side[i], {}, answer};
    }
};

void writeEstimate(Board& board, const Ambiguous& q) {
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
    const double k = q.side(q.k).magnitude, v = q.side(q.v).magnitude;
    step.workings.push_back({{},
                             {},
                             {},
                             related(board.force(std::abs(k - v)), Relation::lessOrEqual, q.side(q.u).size,
                                     Relation::lessOrEqual, board.force(k + v))});
    if (board.solved.tangent)
        step.conclusion.push_back(
            board.say(SENTENCE("solution", "Here the parallel just touches the circle: one answer.")));
    else if (board.hasTwoAnswers())
        step.conclusion.push_back(board.say(SENTENCE(
            "solution", "Here the parallel cuts the circle twice: expect two answers, and read off both.")));
    else
        step.conclusion.push_back(
            board.say(SENTENCE("solution", "Here one meeting point lies on the side to which {u} points."),
                      "u", q.side(q.u).vector));
}

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
    board.remarkOnRounding(step);
}

Wording reached(const Ambiguous& q) {
    if (q.board.solved.tangent)
        return SENTENCE("solution", "{v} equals that distance: the circle touches the line at one point.");
    if (q.inBothSenses())
        return SENTENCE("solution",
                        "{v} is no smaller than {k}: one triangle with {u} in the sense drawn, and one "
                        "with {u} in the other, since its line of action leaves the sense open.");
    if (!q.board.hasTwoAnswers())
        return SENTENCE("solution",
                        "{v} reaches beyond {distance} and is no smaller than {k}: one triangle.");
    return SENTENCE("solution", "{v} reaches beyond {distance} but is smaller than {k}: two triangles.");
}

/// How far the circle's centre is from the line, and so how many triangles.
void writeReach(Board& board, const Ambiguous& q) {
    const QuantityId distance{What::distance};
    Step& step = board.step(StepKey::reach, SENTENCE("solution", "How many triangles?"), Stage::interior);
    step.reasoning.push_back(board.say(
        SENTENCE("solution", "Two sides and an angle that does not lie between them are known: the ambiguous "
                             "case. The distance of the line from the centre of the circle decides.")));
    board.show(step, distance);
    step.conclusion.push_back(board.say(reached(q), "v", q.side(q.v).size, "k", q.side(q.k).size, "u",
                                        q.side(q.u).vector, "distance",
                                        equal(board.symbolOf(distance), board.number(distance))));
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
    step.workings.push_back({{},
                             equal(over(apply("sin", q.symbol(q.k)), q.side(q.k).size),
                                   over(apply("sin", q.symbol(q.v)), q.side(q.v).size)),
                             {},
                             {}});
    board.show(step, shown, {q.acute()});
}

/// Says which of the two angles lead to an answer, and why.
void writeDecision(Board& board, const Ambiguous& q) {
    Step& step = board.worked.steps.back();
    if (board.solved.tangent) {
        step.conclusion.push_back(
            board.say(SENTENCE("solution", "The sine is 1: both angles fall together in the right angle.")));
        return;
    }
    const Formula acute = board.number(q.acute()), second = board.angle(board.half() - acute.value);
    step.conclusion.push_back(
        board.say(SENTENCE("solution", "Two angles have this sine: {acute} and {supplement}."), "acute",
                  acute, "supplement", equal(sum(board.halfTurn(), negative(acute)), second)));
    if (q.inBothSenses()) {
        step.conclusion.push_back(board.say(
            SENTENCE("solution",
                     "{v} is no smaller than {k}, so {angle} is acute, in either sense of {u}: {second} "
                     "drops out."),
            "v", q.side(q.v).size, "k", q.side(q.k).size, "angle", q.symbol(q.k), "u", q.side(q.u).vector,
            "second", second));
        return;
    }
    if (board.hasTwoAnswers()) {
        step.conclusion.push_back(board.say(
            SENTENCE("solution", "Each of them, added to {known}, stays below {half} and leaves room for a "
                                 "third angle: both lead to an answer, and both are carried on."),
            "known", equal(q.symbol(q.v), board.number(q.angle(q.v))), "half", board.halfTurn()));
        return;
    }
    step.conclusion.push_back(
        q.opposite(q.k) <= std::numbers::pi / 2
            ? board.say(SENTENCE("solution",
                                 "The greater side lies opposite the greater angle, and {k} is no "
                                 "greater than {v}, so {angle} can't be the greater angle: {second} "
                                 "with {known} would leave nothing for the third. {acute} holds."),
                        "k", q.side(q.k).size, "v", q.side(q.v).size, "angle", q.symbol(q.k), "second",
                        second, "known", board.number(q.angle(q.v)), "acute", acute)
            : board.say(SENTENCE("solution",
                                 "Only the obtuse angle closes the triangle on this side: {second} holds."),
                        "second", second));
    step.notes.push_back(board.say(SENTENCE(
        "solution", "The calculator shows only the acute angle. Look for the other one, and decide.")));
}

Step& restStep(Board& board, std::uint8_t answer) {
    switch (answer) {
    case 0:
        return board.step(StepKey::rest, SENTENCE("solution", "Third angle, magnitude, direction"),
                          Stage::all, Law::sines);
    case 1:
        return board.step(StepKey::first, SENTENCE("solution", "First answer"), Stage::all, Law::sines);
    default:
        return board.step(StepKey::second, SENTENCE("solution", "Second answer"), Stage::all, Law::sines);
    }
}

/// The other sense of the line, where this answer has it: the angle's supplement, the direction half a turn
/// on.
bool writeOtherSense(Board& board, Step& step, const Ambiguous& q, const Vector& u, std::uint8_t answer) {
    const QuantityId supplement = q.in(answer, q.v);
    if (answer == 0 || board.carried.find(supplement) == nullptr)
        return false;
    step.reasoning.push_back(board.say(
        SENTENCE("solution",
                 "Here {u} acts in the other sense of its line, so the angle between the sides is the "
                 "supplement."),
        "u", u.vector));
    board.show(step, supplement);
    board.show(step, u.wayId);
    return true;
}

/// Of two answers on one side of the line: which of the two angles is taken.
void sayWhichAngle(const Board& board, Step& step, const Ambiguous& q, const QuantityId& atK) {
    if (!board.hasTwoAnswers() || q.inBothSenses())
        return;
    step.reasoning.push_back(board.say(
        board.carried.formulaOf(atK).id == q.acute()
            ? SENTENCE("solution", "This answer takes the acute one of the two angles, {acute} itself.")
            : SENTENCE("solution",
                       "This answer takes the obtuse one of the two angles, the supplement of {acute}."),
        "acute", board.symbolOf(q.acute())));
}

/// The wrong angle in the law of sines, and the third angle turned off the wrong way.
void noteSlips(const Board& board, Step& step, const Ambiguous& q, const Vector& u, const Vector& v,
               const QuantityId& atK, const QuantityId& third) {
    const auto size =
        slipped(board, u.sizeId, exchanged(board.carried.formulaOf(u.sizeId), third, board.symbolOf(atK)));
    if (size)
        step.notes.push_back(board.say(
            SENTENCE("solution",
                     "{size} lies opposite {right}: with {wrong} in its place the law of sines would give "
                     "{value}, which is {known} once more."),
            "size", u.size, "right", board.symbolOf(third), "wrong", board.symbolOf(atK), "value", *size,
            "known", q.side(q.k).size));
    if (const auto way = slipped(board, v.wayId, turnedBack(board.carried.formulaOf(v.wayId))))
        step.notes.push_back(board.say(
            SENTENCE("solution", "Turned the other way from {known}, {theta} would come out as {value}."),
            "known", q.side(q.k).vector, "theta", v.theta, "value", *way));
}

/// Third angle, magnitude and direction of one answer.
void writeRest(Board& board, const Ambiguous& q, std::size_t index) {
    const auto answer = static_cast<std::uint8_t>(board.hasTwoAnswers() ? index + 1 : 0);
    const Vector &u = board.in(index, q.r.side[q.u]), &v = board.in(index, q.r.side[q.v]);
    Step& step = restStep(board, answer);
    step.parts = {arrowPart(u.index), arrowPart(v.index)};
    const bool otherSense = writeOtherSense(board, step, q, u, answer);
    const QuantityId known = otherSense ? q.in(answer, q.v) : q.angle(q.v), atK = q.in(answer, q.k),
                     third = q.in(answer, q.u);
    if (!q.isDecided()) {
        sayWhichAngle(board, step, q, atK);
        board.show(step, atK);
    }
    board.show(step, third);
    const auto name = [&](const Vector& opposite, const QuantityId& angle) {
        step.angles.push_back(named(part(FigurePart::Kind::opposite, opposite.index), board.symbolOf(angle)));
    };
    name(v, known);
    name(q.side(q.k), atK);
    name(u, third);
    board.remarkOnRounding(step);
    board.show(step, u.sizeId);
    board.show(step, v.wayId);
    board.remarkOnRounding(step);
    step.reasoning.push_back(board.say(
        board.isCounterClockwise(board.signOf(v.wayId))
            ? SENTENCE("solution",
                       "The angle sum of {half} gives the third angle, the law of sines the magnitude; from "
                       "{known} the direction of {v} is reached by turning counter-clockwise.")
            : SENTENCE("solution",
                       "The angle sum of {half} gives the third angle, the law of sines the magnitude; from "
                       "{known} the direction of {v} is reached by turning clockwise."),
        "half", board.halfTurn(), "known", q.side(q.k).vector, "v", v.vector));
    if (index == 0)
        noteSlips(board, step, q, u, v, atK, third);
}

} // namespace

void writeAmbiguous(Board& board) {
    const Ambiguous q(board);
    writeGiven(board);
    writeCount(board);
    writeKnown(board);
    writeSenses(board);
    writeEstimate(board, q);
    writeKnownAngle(board, q);
    writeReach(board, q);
    writeCandidates(board, q);
    writeDecision(board, q);
    for (std::size_t i = 0; i < board.solved.solutions.size(); ++i)
        writeRest(board, q, i);
    writeEnd(board);
}

} // namespace tailpoint::explaining
