// SPDX-License-Identifier: MIT
// Last steps of every solution: the answer in one sentence, and what rounding by hand costs.
#include "core/explain/agreement.h"
#include "core/explain/families.h"
#include "core/explain/rounded.h"

#include "core/quantity/decimals.h"

#include <cmath>

namespace tailpoint::explaining {

namespace {

/// "3.6° clockwise from +x", the angle as a number.
Prose fromAxisTold(const Board& board, const Vector& vector) {
    const double value = vector.wayNumber.value;
    const FromAxis from = fromAxis(value, board.sketch);
    const auto wording = [&] {
        switch (from.way) {
        case FromAxis::Way::along:
            return SENTENCE("solution", "along {axis}");
        case FromAxis::Way::opposite:
            return SENTENCE("solution", "opposite to {axis}");
        case FromAxis::Way::counterClockwise:
            return from.lessThan ? SENTENCE("solution", "less than {angle} counter-clockwise from {axis}")
                                 : SENTENCE("solution", "{angle} counter-clockwise from {axis}");
        case FromAxis::Way::clockwise:
            break;
        }
        return from.lessThan ? SENTENCE("solution", "less than {angle} clockwise from {axis}")
                             : SENTENCE("solution", "{angle} clockwise from {axis}");
    }();
    Formula size = from.size.empty() ? Formula() : numberWithUnit(std::abs(value), from.size);
    return board.say(wording, "angle", std::move(size), "axis", board.axisWords());
}

/// The same with its bearing, where bearings are given.
Prose wayTold(const Board& board, const Vector& vector) {
    Prose way = fromAxisTold(board, vector);
    const auto full = board.carried.full(vector.wayId); // printed for another unit than a bearing's
    std::string bearing = bearingWords(full && !board.options.handRounding ? static_cast<double>(*full)
                                                                           : vector.wayNumber.value,
                                       board.sketch);
    return bearing.empty() ? way
                           : board.say(SENTENCE("solution", "{way}, bearing {bearing}"), "way",
                                       std::move(way), "bearing", inWords(std::move(bearing)));
}

/// What is found of the question says it.
bool saysNoDirection(const Board& board) {
    const MessageCode code = board.solved.messageCode();
    return code == MessageCode::forcesBalance || code == MessageCode::othersClose ||
           code == MessageCode::noForces;
}

/// "R = 520 N, 3.6° clockwise from +x" of one vector, as far as it was asked for, each with its range.
Prose foundOf(const Board& board, std::size_t answer, const Vector& vector) {
    const Prose size =
        withRange(board, answer, vector, {{equal(vector.size, board.answered(vector.sizeNumber))}});
    const auto way = [&] { return withRangeOfWay(board, answer, vector, wayTold(board, vector)); };
    if (!vector.direction && !vector.sizeGiven && saysNoDirection(board))
        return board.say(SENTENCE("solution", "{size}"), "size", size);
    if (!vector.direction && !vector.sizeGiven)
        return board.say(SENTENCE("solution", "{size}: it has no direction"), "size", size);
    if (vector.sizeGiven)
        return board.say(SENTENCE("solution", "{vector} acts {way}"), "vector", vector.vector, "way", way());
    if (!vector.wayGiven)
        return board.say(SENTENCE("solution", "{size}, {way}"), "size", size, "way", way());
    if (vector.turned)
        return board.say(SENTENCE("solution", "{size}, in the other sense of its line: {way}"), "size", size,
                         "way", way());
    return board.say(SENTENCE("solution", "{size}"), "size", size);
}

bool wasSought(const Vector& vector) {
    return !vector.sizeGiven || (!vector.wayGiven && vector.magnitude != 0);
}

/// As an answer has them: forces in the sketch's order, the sum last.
std::vector<const Vector*> soughtIn(const Board& board, std::size_t answer) {
    std::vector<const Vector*> vectors;
    for (const Vector& force : board.forces())
        if (wasSought(force))
            vectors.push_back(&board.in(answer, force.id));
    if (wasSought(board.sum()))
        vectors.push_back(&board.in(answer, kSumVector));
    return vectors;
}

/// "P = 180 N; Q acts 10.3° clockwise from +x" of all that was asked for.
Prose foundIn(const Board& board, std::size_t answer) {
    Prose found;
    bool first = true;
    for (const Vector* vector : soughtIn(board, answer)) {
        found = first ? foundOf(board, answer, *vector)
                      : board.say(SENTENCE("list", "{before}; {next}"), "before", std::move(found), "next",
                                  foundOf(board, answer, *vector));
        first = false;
    }
    return found;
}

} // namespace

void writeAnswer(Board& board) {
    Step& step = board.step(StepKey::answer, SENTENCE("solution", "Answer"), Stage::all);
    for (const Vector* vector : soughtIn(board, board.solution))
        step.parts.push_back(arrowPart(vector->index));
    board.worked.answer =
        board.say(SENTENCE("solution", "{found}."), "found", foundIn(board, board.solution));
    if (board.hasTwoAnswers()) {
        step.reasoning.push_back(
            board.say(SENTENCE("solution", "First answer: {found}."), "found", foundIn(board, 0)));
        step.reasoning.push_back(
            board.say(SENTENCE("solution", "Second answer: {found}."), "found", foundIn(board, 1)));
    } else
        step.reasoning.push_back(board.worked.answer);
    if (const Prose found = board.message(); !found.pieces.empty())
        step.conclusion.push_back(found);
    writeExtremes(board, step);
}

void writeEnd(Board& board) {
    writeAnswer(board);
    const bool isSum = board.solved.family == Family::closePolygon;
    const bool addsUp = board.reduction && board.reduction->addsUp(); // a slip in K would go through both
    if (board.way == Route::Way::components && (!isSum || board.options.method == Method::components) &&
        !addsUp && hasTriangle(board))
        writeTriangleCheck(board);
    else
        writeCheck(board);
    returnToEstimate(board);
    writeRoundingCost(board);
}

namespace {

/// In the last place shown of one or the other; angles may differ by a full turn.
int placesBetween(const Board& board, const Formula& a, const Formula& b) {
    const double place = std::min(lastPlaceOf(board, a), lastPlaceOf(board, b));
    return static_cast<int>(std::lround(distanceOf(board, a, b) / place));
}

/// A quantity that was asked, by hand and with full values.
void appendCost(const Board& board, Step& step, const Formula& symbol, const Formula& byHand, double full) {
    const Dimension dimension = dimensionOf(symbol.id.what);
    Formula exact = board.carried.guarded(full, dimension);
    exact.id = symbol.id;
    const Formula shown = board.carried.shown(full, dimension);
    if (const double noise =
            Carried::kNoise * (dimension == Dimension::angle ? board.half() : board.carried.scale);
        distanceOf(board, byHand, number(full, {}, byHand.sub)) <= noise) {
        step.reasoning.push_back(board.say(
            SENTENCE("solution",
                     "By hand and with full values {byHand}: the rounding on the way has not moved it."),
            "byHand", equal(symbol, byHand)));
        return;
    }
    const int places = placesBetween(board, byHand, shown);
    const auto wording = [&] {
        switch (places) {
        case 0:
            return SENTENCE("solution", "{byHand} by hand, with full values {full}: the rounding moved it by "
                                        "{gap}, too little to show.");
        case 1:
            return SENTENCE("solution", "{byHand} by hand, but with full values {full}: the rounding "
                                        "moved it by {gap}, which changed it by one unit in the last "
                                        "place.");
        default:
            return SENTENCE("solution", "{byHand} by hand, but with full values {full}: the rounding "
                                        "moved it by {gap}, which changed it by {count} units in the "
                                        "last place.");
        }
    }();
    step.reasoning.push_back(
        board.say(wording, "byHand", equal(symbol, byHand), "full",
                  exact.text == shown.text ? Prose{{exact}} : roundedTo(board, exact, shown), "gap",
                  turnedApart(board, byHand, exact), "count", count(places)));
}

} // namespace

void writeRoundingCost(Board& board) {
    constexpr QuantityId kGap{What::gap, kNobody, {}, 0, kDifference};
    const bool isCompared = board.solved.family == Family::check && board.carried.find(kGap) != nullptr;
    if (!board.options.handRounding || (!board.isAnswered() && !isCompared))
        return;
    Step& step =
        board.step(StepKey::rounding, SENTENCE("solution", "What the rounding by hand costs"), Stage::all);
    if (!board.isAnswered())
        return step.reasoning.push_back(
            board.say(SENTENCE("solution",
                               "{byHand} by hand, with full values {full}: what lies between comes from the "
                               "rounding on the way."),
                      "byHand", equal(board.symbolOf(kGap), board.number(kGap)), "full",
                      board.force(static_cast<double>(board.carried.full(kGap).value_or(0)))));
    const Solution& full = board.solved.solutions[board.solution];
    const auto compare = [&](VectorId id, const SolvedForce& solved) {
        const Vector& vector = board.found(id);
        if (solved.magnitudeFound)
            appendCost(board, step, vector.size, board.answered(vector.sizeNumber), solved.magnitude);
        if (solved.directionFound && solved.direction)
            appendCost(board, step, vector.theta, board.answered(vector.wayNumber), *solved.direction);
    };
    for (std::size_t i = 0; i < full.forces.size(); ++i)
        compare(forceVector(i), full.forces[i]);
    compare(kSumVector, full.sum);
}

} // namespace tailpoint::explaining
