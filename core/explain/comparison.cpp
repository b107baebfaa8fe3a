// SPDX-License-Identifier: MIT
// All given: what the forces add up to beside what their sum is to be.
#include "core/explain/families.h"
#include "core/explain/table_slips.h"
#include "core/explain/trial.h"

#include "core/quantity/decimals.h"
#include "core/solve/rounding_room.h"

#include <algorithm>
#include <cmath>

namespace tailpoint::explaining {

namespace {

constexpr QuantityId gap(std::uint8_t part) {
    return {What::gap, kNobody, {}, 0, part};
}

Entries longForces(const Board& board) {
    Entries forces;
    for (const Vector& force : board.forces())
        if (force.magnitude > 0)
            forces.emplace_back(force.id, 1);
    return forces;
}

/// The greatest of the forces less all others, and all together.
struct Bounds {
    double least = 0, most = 0;
};

Bounds boundsOf(const Board& board) {
    Bounds bounds;
    double greatest = 0;
    for (const Vector& force : board.forces()) {
        bounds.most += force.sizeNumber.value;
        greatest = std::max(greatest, force.sizeNumber.value);
    }
    bounds.least = std::max(0.0, 2 * greatest - bounds.most);
    return bounds;
}

void writeEstimate(Board& board) {
    const auto [least, most] = boundsOf(board);
    const Vector& sum = board.sum();
    const bool atRest = isEquilibrium(board.sketch);
    Step& step =
        board.step(StepKey::estimate, SENTENCE("solution", "Sketch to scale, and estimate before computing"),
                   Stage::construction);
    step.parts = {part(FigurePart::Kind::polygon)};
    step.reasoning.push_back(
        atRest
            ? board.say(SENTENCE("solution", "Set tip to tail in any order, the forces must lead back to "
                                             "the common point if they balance."))
            : board.say(SENTENCE("solution", "Set tip to tail in any order, the forces must lead to the tip "
                                             "of {sum} if the equation holds."),
                        "sum", sum.vector));
    const bool isInside = sum.sizeNumber.value >= least && sum.sizeNumber.value <= most;
    const bool areTwo = board.forces().size() == 2;
    step.conclusion.push_back(board.say(
        areTwo && isInside
            ? SENTENCE("solution",
                       "Together the two make no less than the difference of their magnitudes and "
                       "no more than their sum, between {least} and {most}: {size} is possible.")
        : areTwo
            ? SENTENCE("solution", "Together the two make no less than the difference of their magnitudes "
                                   "and no more than their sum, between {least} and {most}: {size} is not "
                                   "possible.")
        : isInside
            ? SENTENCE("solution", "Together they make no less than the greatest of them less the others "
                                   "and no more than all magnitudes, between {least} and {most}: {size} "
                                   "is possible.")
            : SENTENCE("solution", "Together they make no less than the greatest of them less the others "
                                   "and no more than all magnitudes, between {least} and {most}: {size} "
                                   "is not possible."),
        "least", board.bound(least), "most", board.bound(most), "size",
        atRest ? board.force(0) : equal(sum.size, sum.sizeNumber)));
}

Formula forceOf(const Board& board, double value) {
    return number(value, shortest(value), std::string(symbolOf(board.sketch.forceUnit)));
}

Formula sineOfHalf(const Board& board, const RoundingRoom& room) {
    const Formula shown = board.angle(0);
    return apply("sin", number(room.halfAngle, shortest(room.halfAngle), shown.sub));
}

/// A part of what is left over, without its sign, and what the rounding of given values may leave of it.
struct Margin {
    Formula left, room; ///< equations, or a number
    bool isKept = true;
};

Margin marginOf(const Formula& subject, const Formula& value, const Formula& room, const Formula& roomValue) {
    const Formula size = withoutMinus(value);
    return {equal(value.value < 0 ? absolute(subject) : subject, size), room, size.value <= roomValue.value};
}

/// Of forces that are to balance.
std::vector<Margin> writeBalanceMargin(const Board& board, Step& step, const RoundingRoom& room) {
    std::vector<Formula> sizes;
    for (const Vector& force : board.forces())
        sizes.push_back(force.sizeNumber);
    const Formula halves = product(count(static_cast<int>(sizes.size())), forceOf(board, room.half)),
                  most = symbol("Δ", "max");
    const Working all =
        worked(board, most, sum(halves, product(sumOf(std::move(sizes)), sineOfHalf(board, room))));
    step.reasoning.push_back(board.say(
        SENTENCE("solution", "Each magnitude may be rounded by {half}, half a unit in the last place of the "
                             "greatest, and each direction by {angle}: together that may leave {room} at the "
                             "most, the terms of the directions being each magnitude times the sine."),
        "half", forceOf(board, room.half), "angle", sineOfHalf(board, room).parts[0], "room", most));
    step.workings.push_back(all);
    return {marginOf(board.symbolOf(gap(kDifference)), board.number(gap(kDifference)),
                     equal(most, *all.value), *all.value)};
}

/// Along and across a sum that is given.
std::vector<Margin> writeSumMargins(const Board& board, Step& step, const RoundingRoom& room) {
    const Vector& sum = board.sum();
    const Formula dx = board.number(gap(kDifferenceX)), dy = board.number(gap(kDifferenceY)),
                  x = board.number({What::x, kSumVector}), y = board.number({What::y, kSumVector}),
                  u = symbol("Δ", "u"), v = symbol("Δ", "v"), most = symbol("Δ", "max"),
                  half = forceOf(board, room.half);
    const Working along =
                      worked(board, u, over(tailpoint::sum(product(dx, x), product(dy, y)), sum.sizeNumber)),
                  across =
                      worked(board, v,
                             over(tailpoint::sum(product(dy, x), negative(product(dx, y))), sum.sizeNumber)),
                  turned = worked(board, most, product(sum.sizeNumber, sineOfHalf(board, room)));
    step.reasoning.push_back(board.say(
        SENTENCE(
            "solution",
            "The forces are taken as they are given, and {sum} as a result that was rounded as it is shown: "
            "{size} by up to {half}, half a unit in its last place, which moves its tip along {sum}, and "
            "{theta} by up to {angle}, which moves it by {most} across. {u} and {v} are the parts of "
            "{lack} along and across {sum}."),
        "sum", sum.vector, "size", sum.size, "half", half, "theta", sum.theta, "angle",
        sineOfHalf(board, room).parts[0], "most", most, "u", u, "v", v, "lack",
        equal(board.symbolOf(gap(kDifference)), board.number(gap(kDifference)))));
    for (const Working& working : {turned, along, across})
        step.workings.push_back(working);
    return {marginOf(u, *along.value, half, half),
            marginOf(v, *across.value, equal(most, *turned.value), *turned.value)};
}

/// What the printed numbers say.
Prose keptTold(const Board& board, const std::vector<Margin>& margins) {
    if (margins.size() == 1)
        return board.say(SENTENCE("solution", "{left} is no more than {room}"), "left", margins[0].left,
                         "room", margins[0].room);
    return board.say(
        SENTENCE("solution", "{first} is no more than {room}, and {second} no more than {other}"), "first",
        margins[0].left, "room", margins[0].room, "second", margins[1].left, "other", margins[1].room);
}

void writeVerdict(Board& board) {
    const Formula lack = equal(board.symbolOf(gap(kDifference)), board.number(gap(kDifference)));
    if (board.solved.messageCode() == MessageCode::equationHolds) {
        board.worked.steps.back().conclusion.push_back(
            board.say(board.number(gap(kDifference)).value != 0
                          ? SENTENCE("solution", "{lack} comes from rounding on the way: the equation holds.")
                          : SENTENCE("solution", "{lack}: both sides are the same, and the equation holds."),
                      "lack", lack));
        return;
    }
    const RoundingRoom room = roundingRoom(board.sketch);
    Step& step = board.step(StepKey::check, SENTENCE("solution", "Can rounding explain it?"), Stage::all);
    const bool atRest = isEquilibrium(board.sketch),
               fails = board.solved.messageCode() == MessageCode::equationFails;
    const std::vector<Margin> margins =
        atRest ? writeBalanceMargin(board, step, room) : writeSumMargins(board, step, room);
    const auto more = std::find_if(margins.begin(), margins.end(), [](const Margin& m) { return !m.isKept; });
    if (more == margins.end()) {
        step.conclusion.push_back(
            board.say(fails ? SENTENCE("solution",
                                       "{kept}. By these numbers rounding would explain it; with full values "
                                       "it does not, and the equation does not hold.")
                            : SENTENCE("solution", "{kept}: the equation holds within rounding."),
                      "kept", keptTold(board, margins)));
        return;
    }
    step.conclusion.push_back(board.say(
        !fails ? SENTENCE("solution", "{left} is more than {room}; but that comes from rounding on the way, "
                                      "and with full values the equation holds.")
        : atRest
            ? SENTENCE("solution", "{left} is more than {room}: no rounding of what is given explains it, "
                                   "and the equation does not hold.")
            : SENTENCE("solution", "{left} is more than {room}: no rounding of {sum} explains it, and the "
                                   "equation does not hold."),
        "left", more->left, "room", more->room, "sum", board.sum().vector));
}

/// The magnitude of what the forces add up to; of forces that are to balance it is what is left over.
void besideEstimate(const Board& board, Step& step) {
    const auto [least, most] = boundsOf(board);
    const Formula added = inWords("|ΣF|");
    const bool atRest = board.carried.find(gap(kDifferenceX)) == nullptr;
    Formula size = board.number(gap(kDifference));
    if (!atRest) {
        const Working whole =
            worked(board, added, root(sum(power(board.number(gap(0)), 2), power(board.number(gap(1)), 2))));
        step.workings.push_back(whole);
        size = *whole.value;
    }
    const bool isInside = size.value >= least && size.value <= most;
    step.conclusion.push_back(board.say(
        isInside
            ? SENTENCE("solution", "The estimate said between {least} and {most} for the magnitude of what "
                                   "the forces add up to: {size} lies between.")
            : SENTENCE("solution", "The estimate said between {least} and {most} for the magnitude of what "
                                   "the forces add up to: {size} lies outside. There is a slip, or too "
                                   "much was rounded on the way."),
        "least", board.bound(least), "most", board.bound(most), "size",
        equal(atRest ? board.symbolOf(gap(kDifference)) : added, std::move(size))));
}

} // namespace

void writeComparison(Board& board) {
    if (board.carried.find(gap(kDifference)) == nullptr)
        return;
    writeEstimate(board);
    const Entries forces = longForces(board);
    writeComponents(board, board.carried, forces);
    Step& step = board.step(StepKey::components, SENTENCE("solution", "What the forces add up to"),
                            Stage::all, Law::components);
    const Total total{inWords("ΣF"), gap(0), gap(1)};
    writeComponentTable(board, step, board.carried, forces, total);
    writeColumns(board, step, forces, total);
    Step& last = board.step(StepKey::check, SENTENCE("solution", "By how much do they differ?"), Stage::all,
                            Law::components);
    if (board.carried.find(gap(kDifferenceX)) != nullptr) {
        last.reasoning.push_back(
            board.say(SENTENCE("solution", "{sum} by components, and taken away from what the forces add up "
                                           "to:"),
                      "sum", board.sum().vector));
        showComponents(board, last, kSumVector);
        board.show(last, gap(kDifferenceX));
        board.show(last, gap(kDifferenceY));
    }
    board.show(last, gap(kDifference));
    noteComponentSlips(board, last, forces, gap(kDifference));
    besideEstimate(board, last);
    writeVerdict(board);
}

} // namespace tailpoint::explaining
