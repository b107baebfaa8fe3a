// SPDX-License-Identifier: MIT
// Two unknowns that no triangle joins: where the drawing fails, in numbers, and the nearest that can be done.
#include "core/explain/unreachable.h"
#include "core/explain/families.h"
#include "core/explain/slip.h"

#include "core/quantity/decimals.h"

#include <algorithm>
#include <array>
#include <cmath>

namespace tailpoint::explaining {

namespace unreachable {

Step& drawing(Board& board, const Triangle& t, const Wording& title) {
    Step& step = board.step(StepKey::estimate, title, Stage::construction);
    for (const std::size_t i : t.r.sought)
        step.parts.push_back(part(FigurePart::Kind::locus, t.side(i).index));
    return step;
}

Step& reachStep(Board& board, const Triangle& t, const Wording& title) {
    Step& step = board.step(StepKey::reach, title, Stage::construction);
    for (const std::size_t i : t.r.sought)
        step.parts.push_back(part(FigurePart::Kind::locus, t.side(i).index));
    return step;
}

Step& checkStep(Board& board) {
    return board.step(StepKey::check, SENTENCE("solution", "Check by components"), Stage::construction,
                      Law::components);
}

Formula told(const Board& board, const QuantityId& quantity) {
    return equal(board.symbolOf(quantity), board.number(quantity));
}

QuantityId along(const Vector& vector, std::uint8_t answer) {
    return {What::along, vector.id, {}, answer};
}

Tried knownSide(const Triangle& t) {
    return {t.known().sizeNumber, t.known().wayNumber, t.r.sign(t.r.knownSide())};
}

} // namespace unreachable

namespace {

using namespace unreachable;

// Two lines that are one direction.

/// Whether the two, each in its sense, can make what the known vector has along their line.
bool canMeet(const Board& board, const Triangle& t) {
    const Vector &u = t.sought(0), &v = t.sought(1);
    if (board.given(u.id).lineOfActionOnly || board.given(v.id).lineOfActionOnly)
        return true;
    const int first = t.r.sign(t.r.sought[0]), second = t.r.sign(t.r.sought[1]) * (u.v.dot(v.v) < 0 ? -1 : 1);
    const double wanted = -t.r.sign(t.r.knownSide()) * board.number(along(t.known())).value;
    return first != second || wanted * first >= 0;
}

void writeAcross(Board& board, const Triangle& t) {
    const Vector &u = t.sought(0), &v = t.sought(1), &known = t.known();
    const QuantityId reach = along(known);
    Step& step = reachStep(board, t, SENTENCE("solution", "What is left across the line?"));
    step.reasoning.push_back(board.say(
        SENTENCE("solution",
                 "Whatever their magnitudes, {u} and {v} have no component across their line; {known} "
                 "has one, {distance}, beside {along} along the line of {u}, the axis {axis}."),
        "u", u.vector, "v", v.vector, "known", known.vector, "distance", board.symbolOf(kDistance), "along",
        board.symbolOf(reach), "axis", symbol("u")));
    for (const QuantityId& id : board.carried.quantities())
        if (id.what == What::between && board.carried.find(id) != nullptr) {
            step.reasoning.push_back(tailsNamed(board, id));
            board.show(step, id);
        }
    board.show(step, kDistance);
    board.show(step, reach);
    step.conclusion.push_back(
        board.say(SENTENCE("solution", "{distance} is more than zero: no magnitudes of {u} and {v} make up "
                                       "for it."),
                  "distance", told(board, kDistance), "u", u.vector, "v", v.vector));
    if (canMeet(board, t))
        step.notes.push_back(board.say(
            SENTENCE("solution",
                     "{along} can be met, but that alone is no answer: {distance} is left across the line."),
            "along", told(board, reach), "distance", board.number(kDistance)));
    const double beyond = std::abs(board.number(reach).value) - known.sizeNumber.value;
    const Formula left = board.force(std::hypot(beyond, board.number(kDistance).value));
    step.notes.push_back(
        board.say(SENTENCE("solution", "A magnitude is not a component: {size} laid along the line "
                                       "would leave {left}."),
                  "size", equal(known.size, known.sizeNumber), "left", left));
}

void checkAcross(Board& board, const Triangle& t) {
    const Vector &u = t.sought(0), &known = t.known();
    const Formula& reach = board.number(along(known));
    const int sign = t.r.sign(t.r.knownSide()) * (reach.value < 0 ? 1 : -1);
    Step& step = checkStep(board);
    step.reasoning.push_back(
        board.say(SENTENCE("solution",
                           "Another way: along the line of {u} take {along}, all that {known} has there, and "
                           "put it into the equation by components."),
                  "u", u.vector, "along", withoutMinus(reach), "known", known.vector));
    const Formula left = writeTrial(board, step, {knownSide(t), {withoutMinus(reach), u.wayNumber, sign}});
    step.conclusion.push_back(board.say(
        !canMeet(board, t)
            ? SENTENCE("solution",
                       "{left} is left over, the distance between the two parallels in the drawing, "
                       "{distance}; and it took {u} against its sense: in the senses given even "
                       "more is left.")
        : std::abs(left.value - board.number(kDistance).value) <= Carried::kNoise * board.carried.scale
            ? SENTENCE("solution", "{left} is left over: that is the distance between the two "
                                   "parallels in the drawing, {distance}, and no choice of "
                                   "magnitudes leaves less.")
            : SENTENCE("solution", "{left} is left over: but for the rounding on the way that "
                                   "is the distance between the two parallels in the drawing, "
                                   "{distance}, the least that any choice of magnitudes leaves."),
        "left", left, "distance", told(board, kDistance), "u", u.vector));
}

// Two lines that meet behind.

Prose behind(const Board& board, const Triangle& t) {
    const bool first = board.carried.value(along(t.sought(0))).value_or(0) < 0,
               second = board.carried.value(along(t.sought(1))).value_or(0) < 0;
    const Formula &u = t.sought(0).vector, &v = t.sought(1).vector;
    if (first && second)
        return board.say(SENTENCE("solution", "Here they meet only behind, where {u} and {v} would both have "
                                              "to act against their given senses."),
                         "u", u, "v", v);
    return board.say(SENTENCE("solution", "Here they meet where {vector} would have to act against its given "
                                          "sense."),
                     "vector", first ? u : v);
}

void writeSigned(Board& board, const Triangle& t) {
    const Vector &u = t.sought(0), &v = t.sought(1);
    const QuantityId first = along(u), second = along(v);
    Step& step = reachStep(board, t, SENTENCE("solution", "Both magnitudes with their signs"));
    step.reasoning.push_back(board.say(
        SENTENCE("solution", "Across the line of {v} there are only components of {known} and of {u}, across "
                             "that of {u} only of {known} and of {v}. {first} and {second} follow, the "
                             "components of {u} and {v}, each along its own line, the axis {axis}, and "
                             "positive in its given sense:"),
        "v", v.vector, "known", t.known().vector, "u", u.vector, "first", board.symbolOf(first), "second",
        board.symbolOf(second), "axis", symbol("u")));
    board.show(step, first);
    board.show(step, second);
    for (const QuantityId& id : {first, second})
        if (board.carried.value(id).value_or(0) < 0)
            step.conclusion.push_back(
                board.say(SENTENCE("solution",
                                   "{along} is negative: {vector} would have to act against its given sense, "
                                   "with {size}."),
                          "along", board.symbolOf(id), "vector", board.at(id.of).vector, "size",
                          withoutMinus(board.number(id))));
    const Formula& right = board.carried.formulaOf(first);
    if (const auto value = slipped(board, first, withFunction(right, "sin", "cos")))
        step.notes.push_back(
            board.say(SENTENCE("solution", "With cosines in place of the sines {first} would come out as "
                                           "{value}."),
                      "first", board.symbolOf(first), "value", *value));
    const auto term = [&](const Vector& vector) {
        const double length = vector.v.norm();
        return Eigen::Vector2d(std::abs(board.number(along(vector)).value) / length * vector.v);
    };
    const double su = t.r.sign(t.r.sought[0]), sv = t.r.sign(t.r.sought[1]);
    const Eigen::Vector2d left = t.r.sign(t.r.knownSide()) * t.known().v + su * term(u) + sv * term(v);
    step.notes.push_back(
        board.say(SENTENCE("solution",
                           "Taken without their signs the two would not close the triangle: {left} would be "
                           "left over."),
                  "left", board.force(left.norm())));
}

void checkSigned(Board& board, const Triangle& t) {
    Step& step = checkStep(board);
    step.reasoning.push_back(
        board.say(SENTENCE("solution", "Put both into the equation with their signs, by components.")));
    std::vector<Tried> tried{knownSide(t)};
    for (const std::size_t i : t.r.sought) {
        const Formula& size = board.number(along(t.side(i)));
        tried.push_back({withoutMinus(size), t.side(i).wayNumber, t.r.sign(i) * (size.value < 0 ? -1 : 1)});
    }
    const Formula left = writeTrial(board, step, tried);
    step.conclusion.push_back(board.say(
        SENTENCE("solution",
                 "Only {left} is left over, which is the rounding of the two: the signs are right, "
                 "and the lines meet as in the drawing, at {first} and {second}."),
        "left", left, "first", told(board, along(t.sought(0))), "second", told(board, along(t.sought(1)))));
}

void writeAway(Board& board, const Triangle& t) {
    const Vector &u = t.sought(0), &v = t.sought(1), &known = t.known();
    const QuantityId reach = along(known);
    if (board.carried.find(reach) == nullptr)
        return;
    Step& step = reachStep(board, t, SENTENCE("solution", "All along one line"));
    step.reasoning.push_back(board.say(
        SENTENCE("solution", "Count components along the line as positive in the sense of {u}; call "
                             "that axis {axis}."),
        "u", u.vector, "axis", symbol("u")));
    board.show(step, reach);
    step.conclusion.push_back(
        board.say(SENTENCE("solution", "{u} and {v} act in the same sense, and {known} would need "
                                       "the other: their magnitudes would have to make {reach}, and "
                                       "magnitudes are never negative."),
                  "u", u.vector, "v", v.vector, "known", known.vector, "reach",
                  negative(withoutMinus(board.number(reach)))));
    step.notes.push_back(
        board.say(SENTENCE("solution",
                           "As plain numbers {u} and {v} could make {size}; but they would add to what they "
                           "should balance, and {twice} would be left over."),
                  "u", u.size, "v", v.size, "size", withoutMinus(board.number(reach)), "twice",
                  board.bound(2 * known.sizeNumber.value)));
    step.notes.push_back(board.say(
        SENTENCE("solution", "{away} is no magnitude: with both turned round {size} would do."), "away",
        negative(withoutMinus(board.number(reach))), "size", withoutMinus(board.number(reach))));
}

void writeParallels(Board& board, const Triangle& t) {
    const bool isApart = board.carried.find(kDistance) != nullptr,
               meets = board.carried.find(along(t.sought(0))) != nullptr;
    Step& step = drawing(board, t, SENTENCE("solution", "Draw it to scale: two lines"));
    step.reasoning.push_back(board.say(
        SENTENCE("solution",
                 "Draw {known} to scale, and through its ends the parallels to the two lines of action: "
                 "where line meets line, the triangle closes."),
        "known", t.known().vector));
    if (isApart)
        step.conclusion.push_back(
            board.say(SENTENCE("solution", "Here the two parallels are distinct and never meet: {u} and "
                                           "{v} act along one line, and {known} does not. The distance "
                                           "between them can be read off; it is at most {size}."),
                      "u", t.sought(0).vector, "v", t.sought(1).vector, "known", t.known().vector, "size",
                      equal(t.known().size, t.known().sizeNumber)));
    else if (meets)
        step.conclusion.push_back(behind(board, t));
    else
        step.conclusion.push_back(
            board.say(SENTENCE("solution", "Here both lines are one, and {u} and {v} lead away along it from "
                                           "where they would have to end."),
                      "u", t.sought(0).vector, "v", t.sought(1).vector));
    if (isApart)
        return writeAcross(board, t);
    return meets ? writeSigned(board, t) : writeAway(board, t);
}

// Three sides.

struct BySize {
    explicit BySize(const Triangle& t) : sides{0, 1, 2} {
        std::sort(sides.begin(), sides.end(),
                  [&](std::size_t a, std::size_t b) { return t.side(a).magnitude > t.side(b).magnitude; });
    }
    std::array<std::size_t, 3> sides;
};

/// The law of cosines would ask for a cosine beyond 1.
void noteCosine(const Board& board, Step& step, const Vector& a, const Vector& b, const Vector& c) {
    const Formula cosine =
        over(sum(power(b.sizeNumber, 2), power(c.sizeNumber, 2), negative(power(a.sizeNumber, 2))),
             product(count(2), b.sizeNumber, c.sizeNumber));
    const auto value = evaluate(cosine, board.sketch.angleUnit);
    if (!value)
        return;
    const auto shown = static_cast<double>(*value);
    step.notes.push_back(
        board.say(SENTENCE("solution",
                           "The law of cosines would ask for the cosine {cosine} opposite {a}: no angle has "
                           "it, and the calculator says error, not 'no answer'."),
                  "cosine", number(shown, significant(shown, 4)), "a", a.size));
    step.notes.push_back(
        board.say(SENTENCE("solution", "{hypotenuse} is no bound: the two reach {most} where they "
                                       "act in the same sense."),
                  "hypotenuse",
                  equal(root(sum(power(b.size, 2), power(c.size, 2))),
                        board.force(std::hypot(b.sizeNumber.value, c.sizeNumber.value))),
                  "most", board.bound(b.sizeNumber.value + c.sizeNumber.value)));
}

void writeUnequal(Board& board, const Vector& a, const Vector& b) {
    Step& step = board.step(StepKey::estimate, SENTENCE("solution", "Does it close?"), Stage::construction);
    step.reasoning.push_back(
        board.say(SENTENCE("solution", "Nothing else acts: drawn to scale, {a} and {b} can only "
                                       "balance each other if they are equal. Here they are not; "
                                       "{lack} is how much they differ by:"),
                  "a", a.vector, "b", b.vector, "lack", board.symbolOf(kLack)));
    board.show(step, kLack);
    step.conclusion.push_back(
        board.say(SENTENCE("solution", "In whatever directions, {lack} at least would be left over."), "lack",
                  told(board, kLack)));
}

void writeThreeSides(Board& board, const Triangle& t) {
    const BySize order(t);
    const Vector &a = t.side(order.sides[0]), &b = t.side(order.sides[1]), &c = t.side(order.sides[2]);
    if (c.magnitude == 0)
        return writeUnequal(board, a, b);
    Step& step = drawing(board, t, SENTENCE("solution", "Does the triangle close?"));
    step.reasoning.push_back(board.say(SENTENCE(
        "solution", "Three sides close a triangle only if the greatest is no longer than the other two "
                    "together. Here it is longer:")));
    step.workings.push_back(
        {{},
         related(a.size, Relation::greater, sum(b.size, c.size)),
         {},
         related(a.sizeNumber, Relation::greater, board.bound(b.sizeNumber.value + c.sizeNumber.value))});
    step.conclusion.push_back(board.say(
        order.sides[0] == t.r.knownSide()
            ? SENTENCE("solution", "Circles about the two ends of {known}, with the two magnitudes as "
                                   "radii, stay apart: no point lies on both.")
            : SENTENCE("solution", "Circles about the two ends of {known}, with the two magnitudes as "
                                   "radii, lie one inside the other: no point lies on both."),
        "known", t.known().vector));
    Step& reach = reachStep(board, t, SENTENCE("solution", "By how much does it fail?"));
    reach.reasoning.push_back(
        board.say(SENTENCE("solution", "{b} and {c} reach farthest when both act in the direction "
                                       "of {a}; {lack} is what is then missing:"),
                  "b", b.vector, "c", c.vector, "a", a.vector, "lack", board.symbolOf(kLack)));
    board.show(reach, kLack);
    reach.conclusion.push_back(board.say(
        SENTENCE("solution", "{a} is {lack} too long: the other two would have to make at least {most}."),
        "a", a.size, "lack", board.number(kLack), "most", a.sizeNumber));
    noteCosine(board, reach, a, b, c);
}

void checkThreeSides(Board& board, const Triangle& t) {
    const BySize order(t);
    const Vector& a = t.side(order.sides[0]);
    if (t.side(order.sides[2]).magnitude == 0)
        return;
    Step& step = checkStep(board);
    step.reasoning.push_back(board.say(
        SENTENCE("solution", "Along the line of {known} the two smaller ones can do most: by components, "
                             "take from {a} what they make there."),
        "known", t.known().vector, "a", a.vector));
    std::vector<Tried> tried;
    for (std::size_t n = 0; n < 3; ++n)
        tried.push_back({t.side(order.sides[n]).sizeNumber, t.known().wayNumber, n == 0 ? 1 : -1});
    const Formula left = writeTrial(board, step, tried);
    step.conclusion.push_back(
        board.say(SENTENCE("solution", "{left} is left over: {a} is too long by that much, as found above."),
                  "left", left, "a", equal(a.size, a.sizeNumber)));
}

bool isOneTriangle(const Board& board) {
    return board.reduction && !board.reduction->sought.empty() &&
           (board.reduction->sought.size() > 1 || !board.reduction->addsUp());
}

bool hasNoTriangle(const Board& board) {
    return board.solved.status == Status::none && board.solved.unknownVectors[1] != kNoVector &&
           isOneTriangle(board);
}

} // namespace

void writeWhyNone(Board& board) {
    if (!hasNoTriangle(board))
        return;
    writeKnown(board);
    switch (board.solved.family) {
    case Family::twoMagnitudes:
        return writeParallels(board, Triangle(board));
    case Family::magnitudeAndDirection:
        return unreachable::writeLineAndCircle(board);
    case Family::twoDirections:
        return writeThreeSides(board, Triangle(board));
    default:
        return;
    }
}

void writeNearest(Board& board) {
    if (!hasNoTriangle(board) || !board.hasStep(StepKey::reach))
        return;
    const Triangle t(board);
    const bool isApart = board.carried.find(kDistance) != nullptr;
    switch (board.solved.family) {
    case Family::twoMagnitudes:
        if (isApart)
            checkAcross(board, t);
        else if (board.carried.find(along(t.sought(0))) != nullptr)
            checkSigned(board, t);
        return;
    case Family::magnitudeAndDirection:
        return unreachable::checkLineAndCircle(board);
    case Family::twoDirections:
        return checkThreeSides(board, t);
    default:
        return;
    }
}

} // namespace tailpoint::explaining