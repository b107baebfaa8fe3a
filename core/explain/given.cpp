// SPDX-License-Identifier: MIT
// First steps of every solution: what is given, and how many unknowns there are.
#include "core/explain/families.h"
#include "core/explain/listed.h"
#include "core/explain/tolerance.h"
#include "core/sketch/shown.h"

#include <algorithm>

namespace tailpoint::explaining {

namespace {

constexpr std::size_t kMostListed = 8; ///< forces told one by one in a sentence

Formula typedWords(const std::string& text) {
    return inWords(withMinusSigns(text));
}

/// "at θ_P = 25.0°", "at 50 gon, θ_P = 45.0°".
Prose angleTold(const Board& board, const AngleForm& angle, const QuantityId& direction) {
    const Formula theta = equal(board.symbolOf(direction), board.carried.typed(angle.value, direction));
    return angle.typed ? board.say(SENTENCE("solution", "at {typed}, {angle}"), "typed",
                                   typedWords(shownAsTyped(*angle.typed)), "angle", theta)
                       : board.say(SENTENCE("solution", "at {angle}"), "angle", theta);
}

/// "at θ_P = 25.0°", "along run : rise = 3 : 4", "in the direction θ_Q, to find".
Prose givenWayTold(const Board& board, const Vector& vector) {
    const Direction& given = board.given(vector.id).direction;
    if (!vector.wayGiven)
        return board.say(SENTENCE("solution", "in the direction {theta}, to find"), "theta", vector.theta);
    const auto* angle = std::get_if<AngleForm>(&given.form);
    if (angle && normalized(angle->value, board.sketch.angleUnit) == angle->value)
        return angleTold(board, *angle, directionId(vector.id));
    const Formula words = inWords(withMinusSigns(shownAsGiven(given, board.sketch)));
    if (std::holds_alternative<SlopeForm>(given.form))
        return board.say(SENTENCE("solution", "along run : rise = {slope}"), "slope", words);
    return board.say(SENTENCE("solution", "at {angle}"), "angle", words);
}

Prose withToleranceTold(const Board& board, Prose value, const std::string& tolerance) {
    return tolerance.empty() ? value
                             : board.say(SENTENCE("solution", "{value} {tolerance}"), "value",
                                         std::move(value), "tolerance", typedWords(tolerance));
}

/// "P = 340 N ± 5 N", "P = 850 kgf = 8340 N", "P = weight of 850 kg = 8340 N (g = 9.80665 m/s²)".
Prose sizeTold(const Board& board, const Vector& vector, const Magnitude& given) {
    const std::string tolerance = shownTolerance(given, board.sketch);
    if (!given.typed)
        return withToleranceTold(
            board, board.say(SENTENCE("solution", "{size}"), "size", equal(vector.size, vector.sizeNumber)),
            tolerance);
    const Formula typed = typedWords(shownAsTyped(*given.typed));
    const Prose value = withToleranceTold(
        board, board.say(SENTENCE("solution", "{size}"), "size", vector.sizeNumber), tolerance);
    if (std::holds_alternative<ForceUnit>(given.typed->unit))
        return board.say(SENTENCE("solution", "{size} = {typed} = {value}"), "size", vector.size, "typed",
                         typed, "value", value);
    return board.say(SENTENCE("solution", "{size} = weight of {mass} = {weight} (g = {gravity})"), "size",
                     vector.size, "mass", typed, "weight", value, "gravity",
                     typedWords(shownGravity(board.sketch)));
}

/// "P = 340 N at θ_P = 25.0°"; what is to be found is said so.
Prose described(const Board& board, const Vector& vector) {
    if (!vector.sizeGiven && !vector.wayGiven)
        return board.say(SENTENCE("solution", "{size} and {theta} to find"), "size", vector.size, "theta",
                         vector.theta);
    const Magnitude& given = board.given(vector.id).magnitude;
    const bool eitherSense = board.given(vector.id).lineOfActionOnly && vector.wayGiven;
    const Prose size = vector.sizeGiven
                           ? sizeTold(board, vector, given)
                           : board.say(SENTENCE("solution", "{size} to find"), "size", vector.size);
    return board.say(eitherSense
                         ? SENTENCE("solution", "{size} {way} (line of action alone: either sense will do)")
                         : SENTENCE("solution", "{size} {way}"),
                     "size", size, "way",
                     withToleranceTold(board, givenWayTold(board, vector),
                                       shownTolerance(board.given(vector.id).direction, board.sketch)));
}

void writeForces(const Board& board, Step& step) {
    if (board.forces().size() > kMostListed) {
        step.reasoning.push_back(board.say(
            SENTENCE("solution",
                     "{count} forces act through one point; they are listed in the component table."),
            "count", count(static_cast<int>(board.forces().size()))));
        return;
    }
    for (const Vector& force : board.forces())
        step.reasoning.push_back(board.say(SENTENCE("solution", "{vector}: {described}."), "vector",
                                           force.vector, "described", described(board, force)));
}

Formula vectorEquation(const Board& board) {
    std::vector<Formula> terms;
    const std::size_t n = board.forces().size();
    for (std::size_t i = 0; i < n; ++i)
        if (n <= kMostListed || i < 2 || i + 1 == n)
            terms.push_back(board.forces()[i].vector);
        else if (i == 2)
            terms.push_back(inWords("…"));
    return sumOf(std::move(terms));
}

void writeSought(const Board& board, Step& step) {
    const Vector& sum = board.sum();
    if (isEquilibrium(board.sketch)) {
        step.reasoning.push_back(board.say(SENTENCE("solution", "They are to balance: their sum is zero.")));
        step.workings.push_back({{}, equal(vectorEquation(board), inWords("0")), {}, {}});
        return;
    }
    step.reasoning.push_back(
        sumWhollyUnknown(board)
            ? board.say(
                  SENTENCE("solution",
                           "To find: the resultant {sum}, its magnitude {size} and its direction {theta}."),
                  "sum", sum.vector, "size", sum.size, "theta", sum.theta)
            : board.say(board.solved.family == Family::check
                            ? SENTENCE("solution",
                                       "The resultant {sum} that is claimed, and is to be tested: "
                                       "{described}.")
                            : SENTENCE("solution", "Their resultant {sum}: {described}."),
                        "sum", sum.vector, "described", described(board, sum)));
    step.workings.push_back({{}, equal(sum.vector, vectorEquation(board)), {}, {}});
}

/// With how many figures numbers are carried on; nothing where there is nothing to compute.
void writeFigures(const Board& board, Step& step) {
    const bool isAnswered = board.isAnswered();
    if (!isAnswered && board.carried.quantities().empty())
        return;
    if (!board.options.handRounding)
        step.conclusion.push_back(board.say(
            isAnswered
                ? SENTENCE("solution", "Values on the way are carried with {count} figures more than "
                                       "the answer, sums with no more decimal places than their "
                                       "terms; the answer is rounded once, at the end.")
                : SENTENCE("solution", "Values on the way are carried with {count} figures more than "
                                       "the result, sums with no more decimal places than their terms."),
            "count", counted(board, board.carried.guard())));
    else
        step.conclusion.push_back(
            board.say(isAnswered || board.solved.family == Family::check
                          ? SENTENCE("solution",
                                     "Every value on the way is rounded as it is shown, and carried forward "
                                     "as rounded; the last step says what that costs.")
                          : SENTENCE("solution",
                                     "Every value on the way is rounded as it is shown, and carried forward "
                                     "as rounded.")));
}

} // namespace

bool sumWhollyUnknown(const Board& board) {
    return !board.sum().sizeGiven && !board.sum().wayGiven;
}

void writeGiven(Board& board) {
    Step& step = board.step(StepKey::given, SENTENCE("solution", "Given and to find"), Stage::directions);
    for (const Vector& force : board.forces())
        if (force.index < static_cast<int>(kMostListed))
            step.parts.push_back(arrowPart(force.index));
    step.parts.push_back(part(FigurePart::Kind::axis));
    writeForces(board, step);
    writeSought(board, step);
    step.conclusion.push_back(board.say(
        board.isCounterClockwise(1)
            ? SENTENCE("solution", "Angles are measured from {axis}, counter-clockwise being positive.")
            : SENTENCE("solution", "Angles are measured from {axis}, clockwise being positive."),
        "axis", board.axisWords()));
    step.conclusion.push_back(
        board.say(SENTENCE("solution", "Assumptions: the body may be treated as a particle, and all forces "
                                       "lie in one plane and meet at one point.")));
    if (const auto note = toleranceNote(board.sketch))
        step.conclusion.push_back(board.say(*note));
    writeFigures(board, step);
}

namespace {

/// One force of a free body, and the sense in which it is drawn.
Prose actingOf(const Board& board, const Vector& force) {
    if (!force.wayGiven)
        return board.say(SENTENCE("solution", "{force}, exerted by what pulls in a direction to be found, "
                                              "away from the point."),
                         "force", force.vector);
    const Prose way = givenWayTold(board, force);
    if (!force.sizeGiven)
        return board.say(SENTENCE("solution", "{force}, exerted by what is attached {way}, assumed to act "
                                              "away from the point."),
                         "force", force.vector, "way", way);
    return board.say(SENTENCE("solution", "{force}, exerted by what pulls {way}, away from the point."),
                     "force", force.vector, "way", way);
}

} // namespace

void writeFreeBody(Board& board) {
    if (!isEquilibrium(board.sketch) || board.forces().size() > kMostListed || board.forces().empty())
        return;
    Step& step = board.step(StepKey::freeBody, SENTENCE("solution", "Free body"), Stage::given);
    step.reasoning.push_back(
        board.say(SENTENCE("solution", "Isolate the body at the common point, and replace "
                                       "everything that holds it or pulls at it by the force that "
                                       "it exerts. On it act:")));
    for (const Vector& force : board.forces()) {
        step.reasoning.push_back(actingOf(board, force));
        step.parts.push_back(arrowPart(force.index));
    }
    const bool mayTurn = std::any_of(board.forces().begin(), board.forces().end(),
                                     [&](const Vector& force) { return !force.sizeGiven && force.wayGiven; });
    step.reasoning.push_back(board.say(
        mayTurn
            ? SENTENCE("solution",
                       "Each force is drawn as it acts on this body; on what exerts it, it acts "
                       "the other way. A rope can only pull, away from the body. A bar is assumed "
                       "to pull: a negative result says that it pushes.")
            : SENTENCE("solution", "Each force is drawn as it acts on this body; on what exerts it, it acts "
                                   "the other way.")));
    step.conclusion.push_back(board.say(SENTENCE("solution", "The axes: x to the right, y upwards.")));
}

namespace {

/// "the magnitude of R", "the direction of R".
std::vector<Prose> unknownsOf(const Board& board) {
    std::vector<Prose> unknowns;
    for (const VectorId vector : vectorsToFind(board.sketch)) {
        const Formula symbol = board.things.vectorFormula(vector);
        if (!isGiven(board.given(vector).magnitude))
            unknowns.push_back(
                board.say(SENTENCE("solution", "the magnitude of {vector}"), "vector", symbol));
        if (!isGiven(board.given(vector).direction))
            unknowns.push_back(
                board.say(SENTENCE("solution", "the direction of {vector}"), "vector", symbol));
    }
    return unknowns;
}

Prose unknownsTold(const Board& board) {
    std::vector<Prose> unknowns = unknownsOf(board);
    switch (unknowns.size()) {
    case 0:
        return board.say(SENTENCE("solution", "Nothing is unknown."));
    case 1:
        return board.say(SENTENCE("solution", "Unknown: {unknown}."), "unknown", std::move(unknowns[0]));
    default:
        return board.say(SENTENCE("solution", "Unknown: {unknowns}."), "unknowns",
                         listed(board, std::move(unknowns)));
    }
}

Prose tooMany(const Board& board) {
    const auto more = static_cast<int>(board.solved.unknowns.size()) - 2;
    return more == 1 ? board.say(SENTENCE("solution", "That is one unknown too many for two equations."))
                     : board.say(SENTENCE("solution", "That is {count} unknowns too many for two equations."),
                                 "count", counted(board, more));
}

std::optional<Prose> familyTold(const Board& board) {
    switch (board.solved.family) {
    case Family::closePolygon:
        return board.say(SENTENCE("solution",
                                  "Two unknowns of one vector: it closes the polygon of all the others, and "
                                  "there is just one such vector."));
    case Family::twoMagnitudes:
        return board.say(SENTENCE("solution", "Two magnitudes along known lines: line meets line, at one "
                                              "point unless the lines are parallel."));
    case Family::magnitudeAndDirection:
        return board.say(SENTENCE("solution",
                                  "A magnitude along a known line and a direction of known magnitude: a line "
                                  "meets a circle at no point, at one or at two."));
    case Family::twoDirections:
        if (board.solved.status == Status::endless)
            return board.say(SENTENCE(
                "solution", "Two directions of known magnitudes: a circle would meet a circle, but here "
                            "the two circles coincide."));
        return board.say(SENTENCE(
            "solution",
            "Two directions of known magnitudes: a circle meets a circle at no point, at one or at two."));
    case Family::smallestForce:
    case Family::smallestSum:
        return board.say(SENTENCE("solution", "That is one unknown too many for two equations; the condition "
                                              "that {smallest} be as small as possible makes up for it."),
                         "smallest", symbol(board.things.symbolNamed(*board.sketch.smallest), {}));
    case Family::oneUnknown:
        return board.say(SENTENCE("solution",
                                  "One unknown for two equations: one of them gives it, and the other must "
                                  "hold by itself. Whether it does, the numbers show."));
    case Family::check:
    case Family::unclear:
        break;
    }
    return board.solved.unknowns.size() > 2 ? std::optional(tooMany(board)) : std::nullopt;
}

} // namespace

void writeCount(Board& board) {
    writeFreeBody(board);
    Step& step = board.step(StepKey::count, SENTENCE("solution", "Count the unknowns"), Stage::directions);
    step.reasoning.push_back(board.say(
        SENTENCE("solution", "In a plane the vector equation stands for two scalar equations, one along each "
                             "of two axes.")));
    step.reasoning.push_back(unknownsTold(board));
    if (auto told = familyTold(board))
        step.reasoning.push_back(std::move(*told));
    writeDirections(board);
}

namespace {

/// A short sum of long vectors is only as good as what is given of them.
void tellSmallDifference(const Board& board, Step& step, const Vector& sought) {
    double room = 0;
    for (const Vector& force : board.forces())
        if (force.sizeGiven)
            room += halfOfLastPlace(board.given(force.id).magnitude.value.value_or(0), board.sketch);
    if (room > 0)
        step.conclusion.push_back(
            board.say(SENTENCE("solution",
                               "And {sought} is a small difference of large forces: half a unit in the last "
                               "place of each magnitude, as it is shown, may move it by {room}, and the "
                               "directions come on top. Trust it no further than that."),
                      "sought", sought.vector, "room", board.bound(room)));
}

} // namespace

void tellScale(const Board& board, Step& step) {
    constexpr double kShort = 0.1; ///< of the greatest: less than that a drawing hardly shows
    const Vector* sought = board.sought();
    double greatest = board.sum().magnitude;
    for (const Vector& force : board.forces())
        greatest = std::max(greatest, force.magnitude);
    if (board.solved.family == Family::closePolygon && sought != nullptr && sought->magnitude > 0 &&
        sought->magnitude < kShort * greatest) {
        step.conclusion.push_back(
            board.say(SENTENCE("solution",
                               "{sought} is short beside the others: a drawing good to one part in a hundred "
                               "may be off by {off}, so that only the calculation tells its magnitude."),
                      "off", board.force(greatest / 100), "sought", sought->vector));
        tellSmallDifference(board, step, *sought);
        return;
    }
    if (sought != nullptr && sought->magnitude > 0)
        step.conclusion.push_back(board.say(
            SENTENCE("solution", "Ruler and protractor on a sketch to scale give the answer to about "
                                 "two figures.")));
}

} // namespace tailpoint::explaining
