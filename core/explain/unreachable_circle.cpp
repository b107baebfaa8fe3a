// SPDX-License-Identifier: MIT
// A line and a circle that do not meet where they should.
#include "core/explain/families.h"
#include "core/explain/slip.h"
#include "core/explain/unreachable.h"

#include "core/quantity/decimals.h"

#include <cmath>

namespace tailpoint::explaining::unreachable {

namespace {

struct Reach : Triangle {
    explicit Reach(const Board& theBoard) : Triangle(theBoard) {
        const bool firstOnLine = !sought(0).sizeGiven;
        onLine = r.sought[firstOnLine ? 0U : 1U];
        onCircle = r.sought[firstOnLine ? 1U : 0U];
    }
    std::size_t onLine = 0, onCircle = 0;
    bool isTooShort() const { return board.carried.find(kLack) != nullptr; }
};

/// The foot of the perpendicular lies where the one on the line would act against its sense.
bool isBehind(const Board& board, const Reach& t) {
    const Vector& u = t.side(t.onLine);
    return !board.given(u.id).lineOfActionOnly && board.carried.value(along(u)).value_or(0) < 0;
}

void writeKnownAngle(Board& board, const Reach& t) {
    const Vector &known = t.known(), &u = t.side(t.onLine);
    Step& angle =
        board.step(StepKey::angle, SENTENCE("solution", "The angle that is known"), Stage::construction);
    angle.parts = {part(FigurePart::Kind::tails, known.index, u.index)};
    angle.reasoning.push_back(board.say(
        SENTENCE("solution",
                 "{angle} is the angle between the sides {known} and {u}: their directions are known."),
        "angle", t.symbol(t.onCircle), "known", known.vector, "u", u.vector));
    board.show(angle, t.angle(t.onCircle));
}

/// The law of sines would ask for a sine above 1.
void noteSine(const Board& board, Step& step, const Reach& t) {
    const Vector &known = t.known(), &v = t.side(t.onCircle);
    const auto sine = evaluate(
        over(product(known.sizeNumber, apply("sin", board.number(t.angle(t.onCircle)))), v.sizeNumber),
        board.sketch.angleUnit);
    if (sine)
        step.notes.push_back(
            board.say(SENTENCE("solution", "The law of sines would require a sine of {sine} opposite "
                                           "{known}: no angle has it, and the calculator says error, "
                                           "not 'no answer'."),
                      "sine", number(static_cast<double>(*sine), significant(static_cast<double>(*sine), 4)),
                      "known", known.size));
    const auto value =
        slipped(board, kDistance, withFunction(board.carried.formulaOf(kDistance), "sin", "cos"));
    if (value && !value->text.starts_with('-'))
        step.notes.push_back(
            board.say(SENTENCE("solution", "{distance} lies across the line: with the cosine in place of the "
                                           "sine it would come out as {value}."),
                      "distance", board.symbolOf(kDistance), "value", *value));
}

/// The distance of the line from the centre of the circle, and what falls short of it.
void writeDistance(Board& board, const Reach& t) {
    const Vector &u = t.side(t.onLine), &v = t.side(t.onCircle);
    Step& step = reachStep(board, t, SENTENCE("solution", "Does it reach?"));
    step.reasoning.push_back(board.say(
        SENTENCE("solution",
                 "The distance {distance} of the line from the centre of the circle decides: a radius {v} "
                 "shorter than that never touches the line, and {lack} is what it falls short by."),
        "distance", board.symbolOf(kDistance), "v", v.size, "lack", board.symbolOf(kLack)));
    board.show(step, kDistance);
    board.show(step, kLack);
    step.conclusion.push_back(board.say(
        isBehind(board, t)
            ? SENTENCE(
                  "solution",
                  "{v} is smaller than {distance}, by {lack}: the triangle can't close. Were {size} as great "
                  "as {reach}, {u} would have to act against its sense; in the sense given {size} must be "
                  "greater than {known}.")
            : SENTENCE("solution",
                       "{v} is smaller than {distance}, by {lack}: the triangle can't close. The least "
                       "magnitude that would do is {least} itself, at right angles to {u}."),
        "v", equal(v.size, v.sizeNumber), "size", v.size, "distance", told(board, kDistance), "reach",
        board.symbolOf(kDistance), "lack", board.number(kLack), "least", board.number(kDistance), "u",
        u.vector, "known", t.known().size));
    noteSine(board, step, t);
}

/// At right angles to the line, on the side to which the triangle would close.
Formula acrossLine(const Board& board, const Reach& t) {
    const Eigen::Vector2d axis = t.side(t.onLine).v, known = t.known().v;
    const double side = axis.x() * known.y() - axis.y() * known.x(),
                 sign = -t.r.sign(t.r.knownSide()) * t.r.sign(t.onCircle) * (side > 0 ? 1 : -1) *
                        (board.sketch.reference.sense == Sense::ccw ? 1 : -1);
    return board.carried.carried(
        normalized(t.side(t.onLine).wayNumber.value + sign * board.half() / 2, board.sketch.angleUnit),
        Dimension::angle);
}

void checkDistance(Board& board, const Reach& t) {
    const Vector &u = t.side(t.onLine), &v = t.side(t.onCircle);
    const Formula& foot = board.number(along(u));
    Step& step = checkStep(board);
    step.reasoning.push_back(board.say(
        isBehind(board, t)
            ? SENTENCE(
                  "solution",
                  "Another way: {v} comes nearest to the line at right angles to {u}, that is at "
                  "{across}, and {u}, acting against its sense, at the foot of the perpendicular; {foot} "
                  "is its component along its own line, the axis {axis}. Put both into the equation by "
                  "components.")
            : SENTENCE("solution",
                       "Another way: {v} does most at right angles to {u}, that is at {across}, where {u} "
                       "reaches the foot of the perpendicular; {foot} is its component along its own line, "
                       "the axis {axis}. Put both into the equation by components."),
        "v", v.vector, "u", u.vector, "across", acrossLine(board, t), "foot", board.symbolOf(along(u)),
        "axis", symbol("u")));
    board.show(step, along(u));
    const Formula left =
        writeTrial(board, step,
                   {knownSide(t),
                    {withoutMinus(foot), u.wayNumber, t.r.sign(t.onLine) * (foot.value < 0 ? -1 : 1)},
                    {v.sizeNumber, acrossLine(board, t), t.r.sign(t.onCircle)}});
    step.conclusion.push_back(board.say(
        SENTENCE(
            "solution",
            "{left} is left over: that is how far the parallel misses the circle in the drawing, as found "
            "above."),
        "left", left));
}

/// Both points of the line lie behind.
void writeBehind(Board& board, const Reach& t) {
    const Vector &u = t.side(t.onLine), &v = t.side(t.onCircle), &known = t.known();
    const QuantityId chord{What::distance, {}, {}, 0, 1}, first = along(u, 1), second = along(u, 2);
    Step& step = reachStep(board, t, SENTENCE("solution", "Where does the line meet the circle?"));
    step.reasoning.push_back(
        board.say(SENTENCE("solution",
                           "{distance} is how far the line is from the centre of the circle, {along} how far "
                           "the foot of that distance lies along the line of {u}, the axis {axis}, and "
                           "{chord} how far the circle reaches "
                           "to either side of it, by Pythagoras' theorem; {first} and {second} are the "
                           "components of {u} at the two points."),
                  "axis", symbol("u"), "first", board.symbolOf(first), "second", board.symbolOf(second),
                  "distance", board.symbolOf(kDistance), "along", board.symbolOf(along(known)), "u", u.vector,
                  "chord", board.symbolOf(chord)));
    for (const QuantityId& id : {kDistance, along(known), chord, first, second})
        board.show(step, id);
    tellWaysBehind(board, step, u, v);
    step.conclusion.push_back(board.say(
        SENTENCE("solution", "{first} and {second} are both negative: at either point {u} would have to act "
                             "against its given sense."),
        "first", board.symbolOf(first), "second", board.symbolOf(second), "u", u.vector));
    if (const auto value = slipped(board, first, absolute(board.carried.formulaOf(first))))
        step.notes.push_back(board.say(
            SENTENCE("solution", "Without its sign {first} would be {value}, and nothing would show "
                                 "that {u} pulls the wrong way."),
            "first", board.symbolOf(first), "value", *value, "u", u.vector));
    const QuantityId square{What::square, {}, {}, 0, 1};
    if (const auto value =
            slipped(board, {{square, sum(power(v.size, 2), power(board.symbolOf(kDistance), 2))}}, first))
        step.notes.push_back(board.say(
            SENTENCE("solution", "{v} is the hypotenuse: with the squares added {first} would come out as "
                                 "{value}."),
            "v", v.size, "first", board.symbolOf(first), "value", *value));
}

void checkBehind(Board& board, const Reach& t) {
    const Vector &u = t.side(t.onLine), &v = t.side(t.onCircle), &known = t.known();
    Step& step = checkStep(board);
    step.reasoning.push_back(
        board.say(SENTENCE("solution", "Both points must be {v} from the centre of the circle."), "v",
                  equal(v.size, v.sizeNumber)));
    for (const std::uint8_t answer : {std::uint8_t{1}, std::uint8_t{2}})
        step.workings.push_back(worked(
            board, v.size,
            root(sum(power(board.number(kDistance), 2),
                     power(sum(board.number(along(known)), negative(board.number(along(u, answer)))), 2)))));
    step.conclusion.push_back(
        board.say(SENTENCE("solution",
                           "They are, and as in the drawing both lie on the side away from which {u} points: "
                           "{first} and {second}."),
                  "u", u.vector, "first", told(board, along(u, 1)), "second", told(board, along(u, 2))));
}

} // namespace

void writeLineAndCircle(Board& board) {
    const Reach t(board);
    if (t.known().magnitude == 0)
        return;
    Step& step = drawing(board, t, SENTENCE("solution", "Draw it to scale: a line and a circle"));
    step.reasoning.push_back(board.say(
        SENTENCE(
            "solution",
            "Through one end of {known} draw the parallel to the line of action of {u}, and about the other "
            "end a circle of radius {v}: where the parallel meets the circle, the triangle closes."),
        "known", t.known().vector, "u", t.side(t.onLine).vector, "v",
        equal(t.side(t.onCircle).size, t.side(t.onCircle).sizeNumber)));
    step.conclusion.push_back(
        t.isTooShort()
            ? board.say(SENTENCE("solution", "Here the parallel misses the circle."))
            : board.say(SENTENCE("solution", "Here they meet only on the side opposite to the sense of "
                                             "{u} points."),
                        "u", t.side(t.onLine).vector));
    writeKnownAngle(board, t);
    if (t.isTooShort())
        writeDistance(board, t);
    else if (board.carried.find(along(t.side(t.onLine), 1)) != nullptr)
        writeBehind(board, t);
}

void checkLineAndCircle(Board& board) {
    const Reach t(board);
    t.isTooShort() ? checkDistance(board, t) : checkBehind(board, t);
}

} // namespace tailpoint::explaining::unreachable
