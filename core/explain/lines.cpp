// SPDX-License-Identifier: MIT
// Two magnitudes along known lines: two angles and a side, so the law of sines, or Lami's form of it.
#include "core/explain/families.h"
#include "core/explain/slip.h"

#include <cmath>
#include <numbers>

namespace tailpoint::explaining {

namespace {

/// Which of the two sought comes out greater, read off the triangle: opposite the greater angle.
Prose comparison(const Board& board, const Triangle& t, const Order& order) {
    constexpr double kUpright = 1e-9;
    const bool areBothSteep =
        t.opposite(order.great) < std::numbers::pi / 2 && t.opposite(order.small) < std::numbers::pi / 2;
    const bool isSteeper =
        t.r.loop && areBothSteep && std::abs(t.known().v.x()) <= kUpright * t.known().magnitude;
    const Vector &great = t.side(order.great), &small = t.side(order.small);
    const auto wording = [&] {
        if (order.alike)
            return SENTENCE("solution",
                            "In the triangle both make the same angle with {known}: expect {great} and "
                            "{small} to be equal.");
        if (isSteeper)
            return SENTENCE("solution",
                            "{greatVector} is the steeper of the two: in the triangle it makes the smaller "
                            "angle with {known} and is the longer side, so expect {great} to be greater "
                            "than {small}.");
        return SENTENCE("solution",
                        "In the triangle the side {greatVector} makes the smaller angle with {known}, so it "
                        "is the longer: expect {great} to be greater than {small}.");
    }();
    return board.say(wording, "known", t.known().vector, "greatVector", great.vector, "great", great.size,
                     "small", small.size);
}

/// Both beside what is known.
std::optional<Prose> besideKnown(const Board& board, const Triangle& t, const Order& order) {
    const auto wording = [&] {
        switch (order.place) {
        case Order::Place::below:
            return SENTENCE("solution", "Opposite {known} lies the greatest angle: {great} and {small} are "
                                        "both smaller than {size}, and together greater.");
        case Order::Place::above:
            return SENTENCE("solution", "Opposite {known} lies the smallest angle: {great} and {small} are "
                                        "both greater than {size}.");
        default:
            return SENTENCE("solution", "Opposite {known} lies the middle one of the angles: {great} is "
                                        "greater than {size}, {small} is smaller.");
        }
    }();
    if (order.place == Order::Place::level)
        return std::nullopt;
    return board.say(wording, "known", t.known().vector, "great", t.side(order.great).size, "small",
                     t.side(order.small).size, "size", equal(t.known().size, t.known().sizeNumber));
}

void writeAngles(Board& board, const Triangle& t) {
    Step& step =
        board.step(StepKey::angles, SENTENCE("solution", "The angles of the force triangle"), Stage::found);
    step.triangleAlone = true;
    step.parts = {part(FigurePart::Kind::triangle)};
    step.reasoning.push_back(namedAngles(t));
    nameAngles(step, t);
    step.reasoning.push_back(board.say(SENTENCE(
        "solution",
        "All three directions are known, and so are the angles: where two tails or two "
        "tips meet it is the difference of the directions, where a tip meets a tail its supplement.")));
    const auto [a, b] = Reduction::others(t.r.knownSide());
    for (const std::size_t i : {t.r.knownSide(), a, b})
        board.show(step, t.angle(i));
}

/// The angles of the two sought mixed up.
void noteExchange(const Board& board, Step& step, const Triangle& t, const QuantityId& right,
                  const QuantityId& wrong) {
    const QuantityId& size = t.sought(0).sizeId;
    const auto value =
        slipped(board, size, exchanged(board.carried.formulaOf(size), right, board.symbolOf(wrong)));
    if (!value)
        return;
    step.notes.push_back(board.say(
        t.r.loop
            ? SENTENCE("solution", "{size} goes with {right}, the angle between the other two forces: with "
                                   "{wrong} in its place it would come out as {value}.")
            : SENTENCE("solution", "{size} goes with {right}, the angle opposite it: with {wrong} in its "
                                   "place it would come out as {value}."),
        "size", t.sought(0).size, "right", board.symbolOf(right), "wrong", board.symbolOf(wrong), "value",
        *value));
}

/// The known force projected on a line, taken for the component or for what holds it.
void noteProjection(const Board& board, Step& step, const Triangle& t, const QuantityId& angle) {
    const Vector &whole = t.known(), &part = t.sought(0);
    const auto value =
        slipped(board, part.sizeId, absolute(product(whole.size, apply("cos", board.symbolOf(angle)))));
    if (!value)
        return;
    step.notes.push_back(board.say(
        SENTENCE("solution", "{part} is not the projection of {whole} on the line of {vector}, which would "
                             "have the length {value}."),
        "part", part.size, "whole", whole.vector, "vector", part.vector, "value", *value));
}

void readSenses(const Board& board, Step& step, const Triangle& t) {
    for (std::size_t n = 0; n < 2; ++n)
        if (t.sought(n).turned)
            step.conclusion.push_back(readSense(board, t.sought(n)));
}

void writeSineStep(Board& board, const Triangle& t) {
    const Vector &u = t.sought(0), &v = t.sought(1);
    Step& step = board.step(StepKey::sines, SENTENCE("solution", "Law of sines for both magnitudes"),
                            Stage::magnitudes, Law::sines);
    step.triangleAlone = true;
    step.parts = {arrowPart(u.index), arrowPart(v.index)};
    step.reasoning.push_back(board.say(
        SENTENCE("solution",
                 "All three angles and one side are known, and {known} stands opposite {angle}: one pair is "
                 "whole, and the law of sines starts at once. The law of cosines would need a second side."),
        "known", t.known().size, "angle", t.symbol(t.r.knownSide())));
    step.workings.push_back({{},
                             equal(overSine(u, t.symbol(t.r.sought[0])), overSine(v, t.symbol(t.r.sought[1])),
                                   overSine(t.known(), t.symbol(t.r.knownSide()))),
                             {},
                             {}});
    board.show(step, u.sizeId);
    board.show(step, v.sizeId);
    readSenses(board, step, t);
    noteExchange(board, step, t, t.angle(t.r.sought[0]), t.angle(t.r.sought[1]));
    noteProjection(board, step, t, t.angle(t.r.sought[1]));
}

/// Of an oblique component: not a projection, and at times greater than the whole.
void remarkOnComponents(Board& board, const Triangle& t) {
    if (t.r.knownSide() != 2)
        return;
    Step& step = board.worked.steps.back();
    const Vector& whole = t.known();
    if (std::abs(std::cos(t.opposite(2))) < 1e-12) {
        step.conclusion.push_back(board.say(
            SENTENCE("solution",
                     "The two lines are at right angles, so here the components are the projections "
                     "of {whole} as well."),
            "whole", whole.vector));
        return;
    }
    for (std::size_t n = 0; n < 2; ++n)
        if (t.sought(n).magnitude > whole.magnitude)
            step.conclusion.push_back(
                board.say(SENTENCE("solution",
                                   "{component} is greater than {whole} itself. That is no slip: an oblique "
                                   "component may exceed the force it belongs to."),
                          "component", t.sought(n).size, "whole", whole.size));
}

/// The angle between the tails of the two sides that are not `i`, named after the force it faces.
QuantityId facing(const Triangle& t, std::size_t i) {
    const auto [a, b] = Reduction::others(i);
    return {What::between, t.r.side[a], t.r.side[b]};
}

void writeFacingAngles(Board& board, const Triangle& t) {
    Step& step =
        board.step(StepKey::angles, SENTENCE("solution", "The angles between the forces"), Stage::interior);
    step.reasoning.push_back(
        board.say(SENTENCE("solution", "Lami's form needs the angles between the tails, all three.")));
    step.reasoning.push_back(facingNamed(t));
    for (std::size_t i = 0; i < 3; ++i) {
        const auto [a, b] = Reduction::others(i);
        step.parts.push_back(part(FigurePart::Kind::tails, t.side(a).index, t.side(b).index));
        step.angles.push_back(named(step.parts.back(), board.symbolOf(facing(t, i))));
        board.show(step, facing(t, i));
    }
    step.conclusion.push_back(
        board.say(SENTENCE("solution", "All three together make {full}: each of them is smaller than {half}, "
                                       "as it must be for three forces in equilibrium."),
                  "full", board.fullTurn(), "half", board.halfTurn()));
}

void writeLami(Board& board, const Triangle& t) {
    writeFacingAngles(board, t);
    Step& step = board.step(StepKey::sines, SENTENCE("solution", "Lami's form of the law of sines"),
                            Stage::magnitudes, Law::sines);
    step.parts = {arrowPart(t.sought(0).index), arrowPart(t.sought(1).index)};
    step.reasoning.push_back(
        board.say(SENTENCE("solution", "Three forces in equilibrium close a triangle whose angles "
                                       "are the supplements of the angles between the tails. An "
                                       "angle and its supplement have the same sine, so the law of "
                                       "sines holds with the angles between the tails: each force "
                                       "over the sine of the angle between the other two.")));
    const auto quotient = [&](std::size_t i) { return overSine(t.side(i), board.symbolOf(facing(t, i))); };
    step.workings.push_back({{}, equal(quotient(0), quotient(1), quotient(2)), {}, {}});
    board.show(step, t.sought(0).sizeId);
    board.show(step, t.sought(1).sizeId);
    readSenses(board, step, t);
    noteExchange(board, step, t, facing(t, t.r.sought[0]), facing(t, t.r.sought[1]));
    noteProjection(board, step, t, facing(t, t.r.sought[1]));
}

} // namespace

void writeLinesEstimate(Board& board) {
    const Triangle t(board);
    const Vector &u = t.sought(0), &v = t.sought(1);
    Step& step = board.step(StepKey::estimate, SENTENCE("solution", "Draw it to scale"), Stage::construction);
    step.parts = {part(FigurePart::Kind::locus, u.index), part(FigurePart::Kind::locus, v.index)};
    step.reasoning.push_back(board.say(
        t.r.loop
            ? SENTENCE("solution",
                       "Draw {known} to scale and through its two ends the parallels to the other lines of "
                       "action; where they meet, the triangle closes, and the two magnitudes can be "
                       "measured.")
            : SENTENCE(
                  "solution",
                  "Draw {known} to scale, and through its ends the parallels to the two lines of action: "
                  "where line meets line, {u} and {v} can be measured."),
        "known", t.known().vector, "u", u.size, "v", v.size));
    const Order order(t);
    step.conclusion.push_back(comparison(board, t, order));
    if (auto beside = besideKnown(board, t, order))
        step.conclusion.push_back(std::move(*beside));
    tellScale(board, step);
}

void writeLines(Board& board) {
    const Triangle t(board);
    writeGiven(board);
    writeCount(board);
    writeKnown(board);
    writeSenses(board);
    writeLinesEstimate(board);
    if (t.r.loop) {
        writeLami(board, t);
    } else {
        writeAngles(board, t);
        writeSineStep(board, t);
        remarkOnComponents(board, t);
    }
    writeEnd(board);
}

} // namespace tailpoint::explaining
