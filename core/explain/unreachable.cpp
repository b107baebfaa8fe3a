// Two unknowns that no triangle joins: the drawing is tried, and where it fails is said with numbers.
#include "core/explain/families.h"

#include <algorithm>
#include <array>
#include <cmath>

namespace tailpoint::explaining {

namespace {

constexpr double kAlong = 1e-12; ///< sine of an angle below which two lines count as one direction

Step& drawing(Board& board, const Triangle& t, const Wording& title) {
    Step& step = board.step(StepKey::estimate, title, Stage::construction);
    for (const std::size_t i : t.r.sought)
        step.parts.push_back(part(FigurePart::Kind::locus, t.side(i).index));
    return step;
}

void writeParallels(Board& board, const Triangle& t) {
    Step& step = drawing(board, t, SENTENCE("solution", "Draw it to scale: two lines"));
    step.reasoning.push_back(board.say(
        SENTENCE("solution",
                 "Draw {known} to scale, and through its ends the parallels to the two lines of action: "
                 "where line meets line, the triangle closes."),
        "known", t.known().vector));
    step.conclusion.push_back(board.say(
        std::sin(t.opposite(t.r.knownSide())) < kAlong
            ? SENTENCE("solution",
                       "Here the two lines run side by side and never meet: {u} and {v} act along one "
                       "direction, and {known} doesn't.")
            : SENTENCE(
                  "solution",
                  "Here they meet only behind, where {u} or {v} would have to act against its given sense."),
        "u", t.sought(0).vector, "v", t.sought(1).vector, "known", t.known().vector));
}

void writeThreeSides(Board& board, const Triangle& t) {
    std::array<const Vector*, 3> sides{&t.side(0), &t.side(1), &t.side(2)};
    std::sort(sides.begin(), sides.end(),
              [](const Vector* a, const Vector* b) { return a->magnitude > b->magnitude; });
    const auto [a, b, c] = sides;
    if (c->magnitude == 0)
        return;
    Step& step = drawing(board, t, SENTENCE("solution", "Does the triangle close?"));
    step.reasoning.push_back(board.say(SENTENCE(
        "solution", "Three sides close a triangle only if the greatest is no longer than the other two "
                    "together. Here it is longer:")));
    step.workings.push_back(
        {{},
         related(a->size, Relation::greater, sum(b->size, c->size)),
         {},
         related(a->sizeNumber, Relation::greater, board.bound(b->sizeNumber.value + c->sizeNumber.value))});
    step.conclusion.push_back(board.say(
        a == &t.known()
            ? SENTENCE("solution", "Circles about the two ends of {known}, with the two magnitudes as "
                                   "radii, stay apart: no point lies on both.")
            : SENTENCE("solution", "Circles about the two ends of {known}, with the two magnitudes as "
                                   "radii, lie one inside the other: no point lies on both."),
        "known", t.known().vector));
}

/// A line and a circle about the end of the known vector.
struct Reach : Triangle {
    explicit Reach(const Board& theBoard) : Triangle(theBoard) {
        const bool firstOnLine = !sought(0).sizeGiven;
        onLine = r.sought[firstOnLine ? 0U : 1U];
        onCircle = r.sought[firstOnLine ? 1U : 0U];
    }
    std::size_t onLine = 0, onCircle = 0;
    bool isTooShort() const {
        return side(onCircle).magnitude < known().magnitude * std::sin(opposite(onCircle));
    }
};

/// The distance of the line from the centre of the circle, and what falls short of it.
void writeDistance(Board& board, const Reach& t) {
    const Vector &known = t.known(), &u = t.side(t.onLine), &v = t.side(t.onCircle);
    Step& angle =
        board.step(StepKey::angle, SENTENCE("solution", "The angle that is known"), Stage::construction);
    angle.parts = {part(FigurePart::Kind::tails, known.index, u.index)};
    angle.reasoning.push_back(board.say(
        SENTENCE("solution",
                 "{angle} is the angle between the sides {known} and {u}: their directions are known."),
        "angle", t.symbol(t.onCircle), "known", known.vector, "u", u.vector));
    board.show(angle, t.angle(t.onCircle));

    const QuantityId distance{What::distance};
    Step& step = board.step(StepKey::reach, SENTENCE("solution", "Does it reach?"), Stage::construction);
    step.parts = {part(FigurePart::Kind::locus, u.index), part(FigurePart::Kind::locus, v.index)};
    step.reasoning.push_back(board.say(
        SENTENCE("solution",
                 "The distance {distance} of the line from the centre of the circle decides: a radius {v} "
                 "shorter than that never touches the line."),
        "distance", board.symbolOf(distance), "v", v.size));
    board.show(step, distance);
    step.conclusion.push_back(board.say(
        SENTENCE("solution",
                 "{v} is smaller than {distance}: the triangle can't close. The least magnitude that would "
                 "do is {least} itself, at right angles to {u}."),
        "v", equal(v.size, v.sizeNumber), "distance", equal(board.symbolOf(distance), board.number(distance)),
        "least", board.number(distance), "u", u.vector));
}

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
        "known", t.known().vector, "u", t.side(t.onLine).vector, "v", t.side(t.onCircle).size));
    step.conclusion.push_back(
        t.isTooShort()
            ? board.say(SENTENCE("solution", "Here the parallel misses the circle."))
            : board.say(SENTENCE("solution", "Here they meet only on the side away from which {u} points."),
                        "u", t.side(t.onLine).vector));
    if (t.isTooShort())
        writeDistance(board, t);
}

bool isOneTriangle(const Board& board) {
    return board.reduction && !board.reduction->sought.empty() &&
           (board.reduction->sought.size() > 1 || !board.reduction->addsUp());
}

} // namespace

void writeWhyNone(Board& board) {
    if (board.solved.unknownVectors[1] == kNoVector || !isOneTriangle(board))
        return;
    writeKnown(board);
    switch (board.solved.family) {
    case Family::twoMagnitudes:
        return writeParallels(board, Triangle(board));
    case Family::magnitudeAndDirection:
        return writeLineAndCircle(board);
    case Family::twoDirections:
        return writeThreeSides(board, Triangle(board));
    default:
        return;
    }
}

} // namespace tailpoint::explaining
