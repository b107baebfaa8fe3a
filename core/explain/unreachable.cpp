// Two unknowns that no triangle joins: the drawing is tried, and where it fails is said with numbers.
#include "core/explain/families.h"
#include "core/explain/triangle.h"

#include <algorithm>
#include <array>
#include <cmath>

namespace tailpoint::explaining {

namespace {

constexpr double kAlong = 1e-12; ///< sine of an angle below which two lines count as one direction

/// A vector of which only the direction is given counts as one along it, so that angles can be taken.
void giveLinesAUnit(Blackboard& board) {
    for (const int index : board.solved.unknownVectors) {
        if (index == kNoVector)
            continue;
        Arrow& arrow = board.at(index);
        const Force& given =
            index == kSumIndex ? board.sketch.sum : board.sketch.forces[static_cast<std::size_t>(index)];
        if (const auto unit = unitVector(given.direction, board.sketch); unit && !arrow.sizeGiven)
            arrow.v = {static_cast<double>(unit->cos), static_cast<double>(unit->sin)};
    }
}

Step& drawing(Blackboard& board, const Question& q, std::string title) {
    Step& step = board.step("estimate", std::move(title), Stage::construction);
    for (const std::size_t i : q.sought)
        step.parts.push_back(part(FigurePart::Kind::locus, q.triangle.side[i]->index));
    return step;
}

void writeParallels(Blackboard& board, const Question& q) {
    const Arrow &k = *q.triangle.side[q.known], &u = *q.triangle.side[q.sought[0]],
                &v = *q.triangle.side[q.sought[1]];
    Step& step = drawing(board, q, "Draw it to scale: two lines");
    step.reasoning.push_back(
        say("Draw {} to scale, and through its ends the parallels to the two lines of action: where line "
            "meets line, the triangle closes.",
            k.vector));
    step.conclusion.push_back(
        std::sin(q.triangle.opposite(q.known)) < kAlong
            ? say("Here the two lines run side by side and never meet: {} and {} act along one "
                  "direction, and {} doesn't.",
                  u.vector, v.vector, k.vector)
            : say("Here they meet only behind, where {} or {} would have to act against its sense.", u.vector,
                  v.vector));
}

void writeThreeSides(Blackboard& board, const Question& q) {
    std::array<const Arrow*, 3> sides = q.triangle.side;
    std::sort(sides.begin(), sides.end(),
              [](const Arrow* a, const Arrow* b) { return a->magnitude > b->magnitude; });
    const auto [a, b, c] = sides;
    if (c->magnitude == 0)
        return;
    Step& step = drawing(board, q, "Does the triangle close?");
    step.reasoning.push_back(
        say("Three sides close a triangle only if the greatest is no longer than the other two together. "
            "Here it is longer:"));
    step.workings.push_back(
        {{},
         related(a->size, Relation::greater, sum(b->size, c->size)),
         {},
         related(a->sizeNumber, Relation::greater, board.force(b->magnitude + c->magnitude))});
    step.conclusion.push_back(
        say("Circles about the two ends of {}, with the two magnitudes as radii, {}: no point lies on both.",
            q.triangle.side[q.known]->vector,
            inWords(a == q.triangle.side[q.known] ? "stay apart" : "lie one inside the other")));
}

/// The distance of the line from the centre of the circle, and what falls short of it.
void writeDistance(Blackboard& board, const Question& q, std::size_t onLine, std::size_t onCircle) {
    const Triangle& t = q.triangle;
    const Arrow &k = *t.side[q.known], &u = *t.side[onLine], &v = *t.side[onCircle];
    Step& angleStep = board.step("angle", "The angle that is known", Stage::construction);
    angleStep.parts = {part(FigurePart::Kind::tails, k.index, u.index)};
    angleStep.reasoning.push_back(
        say("{} is the angle between the sides {} and {}: their directions are known.",
            angleSymbol(board, onCircle), k.vector, u.vector));
    const Term angle = writeAngleFromDirections(board, angleStep, t, onCircle);
    remarkOnRounding(board, angleStep, Quantity::angle);

    Step& step = board.step("reach", "Does it reach?", Stage::construction);
    step.parts = {part(FigurePart::Kind::locus, u.index), part(FigurePart::Kind::locus, v.index)};
    const Formula d = board.things.formula({What::distance});
    step.reasoning.push_back(
        say("The distance {} of the line from the centre of the circle decides: a radius {} shorter than "
            "that never touches the line.",
            d, v.size));
    Working working{d,
                    product(k.size, apply("sin", angle.symbol)),
                    product(k.sizeNumber, apply("sin", angle.number)),
                    {}};
    const Formula value =
        board.settle(working, k.magnitude * std::sin(t.opposite(onCircle)), Quantity::force);
    step.workings.push_back(std::move(working));
    step.conclusion.push_back(
        say("{} is smaller than {}: the triangle can't close. The least magnitude that would do is {} "
            "itself, at right angles to {}.",
            equal(v.size, v.sizeNumber), equal(d, value), value, u.vector));
}

void writeLineAndCircle(Blackboard& board, const Question& q) {
    const bool firstOnLine = !q.triangle.side[q.sought[0]]->sizeGiven;
    const std::size_t onLine = q.sought[firstOnLine ? 0 : 1], onCircle = q.sought[firstOnLine ? 1 : 0];
    const Arrow &k = *q.triangle.side[q.known], &u = *q.triangle.side[onLine],
                &v = *q.triangle.side[onCircle];
    if (k.magnitude == 0)
        return;
    const bool tooShort = v.magnitude < k.magnitude * std::sin(q.triangle.opposite(onCircle));
    Step& step = drawing(board, q, "Draw it to scale: a line and a circle");
    step.reasoning.push_back(
        say("From one end of {} runs the line of action of {}, about the other end a circle of radius {}: "
            "where the line meets the circle, the triangle closes.",
            k.vector, u.vector, v.size));
    step.conclusion.push_back(
        tooShort ? say("Here the line passes the circle by.")
                 : say("Here they meet only on the side away from which {} points.", u.vector));
    if (tooShort)
        writeDistance(board, q, onLine, onCircle);
}

} // namespace

void writeWhyNone(Blackboard& board) {
    if (board.solved.unknownVectors[1] == kNoVector)
        return;
    giveLinesAUnit(board);
    Question q;
    if (!buildQuestion(board, q))
        return;
    switch (board.solved.family) {
    case Family::twoMagnitudes:
        return writeParallels(board, q);
    case Family::magnitudeAndDirection:
        return writeLineAndCircle(board, q);
    case Family::twoDirections:
        return writeThreeSides(board, q);
    default:
        return;
    }
}

} // namespace tailpoint::explaining
