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

/// What the rounding of the given values may leave over, and what is left over.
struct Margin {
    Formula room, left; ///< numbers, or equations that end in one
    static double valueOf(const Formula& told) {
        return told.parts.empty() ? told.value : told.parts[1].value;
    }
    bool isKept() const { return std::abs(valueOf(left)) <= valueOf(room); }
};

/// Of forces that are to balance.
Margin writeBalanceMargin(const Board& board, Step& step, const RoundingRoom& room) {
    std::vector<Formula> sizes;
    for (const Vector& force : board.forces())
        sizes.push_back(force.sizeNumber);
    const Working all = worked(board, symbol("Δ_max"),
                               sum(product(count(static_cast<int>(sizes.size())), forceOf(board, room.half)),
                                   product(sumOf(std::move(sizes)), sineOfHalf(board, room))));
    step.reasoning.push_back(board.say(
        SENTENCE("solution", "Each magnitude may be rounded by {half}, half of one in the last place of the "
                             "greatest, and each direction by {angle}: together that may leave {room} at the "
                             "most, the terms of the directions being each magnitude times the sine."),
        "half", forceOf(board, room.half), "angle", sineOfHalf(board, room).parts[0], "room", *all.subject));
    step.workings.push_back(all);
    return {equal(*all.subject, *all.value),
            equal(board.symbolOf(gap(kDifference)), board.number(gap(kDifference)))};
}

/// Along and across a sum that is given; the first that is more than rounding explains, else the first.
Margin writeSumMargin(Board& board, Step& step, const RoundingRoom& room) {
    const Vector& sum = board.sum();
    const Formula dx = board.number(gap(kDifferenceX)), dy = board.number(gap(kDifferenceY)),
                  x = board.number({What::x, kSumVector}), y = board.number({What::y, kSumVector});
    const auto part = [&](const char* axis, Formula numerator) {
        return worked(board, symbol("Δ", axis), over(std::move(numerator), sum.sizeNumber));
    };
    const Working along = part("u", tailpoint::sum(product(dx, x), product(dy, y))),
                  across = part("v", tailpoint::sum(product(dy, x), negative(product(dx, y)))),
                  turned =
                      worked(board, symbol("Δ", "max"), product(sum.sizeNumber, sineOfHalf(board, room)));
    step.reasoning.push_back(board.say(
        SENTENCE("solution",
                 "As it is shown {size} may be rounded by {half}, half of one in its last place, which moves "
                 "the tip of {sum} along it; {theta} may be by {angle}, which moves it by {turned} across. "
                 "{along} and {across} are the parts of {lack} along and across {sum}."),
        "size", equal(sum.size, sum.sizeNumber), "half", forceOf(board, room.half), "sum", sum.vector,
        "theta", sum.theta, "angle", sineOfHalf(board, room).parts[0], "turned", *turned.subject, "along",
        *along.subject, "across", *across.subject, "lack", board.symbolOf(gap(kDifference))));
    for (const Working& working : {turned, along, across})
        step.workings.push_back(working);
    const Margin lengths{forceOf(board, room.half), equal(*along.subject, *along.value)},
        turns{equal(*turned.subject, *turned.value), equal(*across.subject, *across.value)};
    return lengths.isKept() ? turns : lengths;
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
    const Margin margin = atRest ? writeBalanceMargin(board, step, room) : writeSumMargin(board, step, room);
    const auto wording = [&] {
        if (margin.isKept() == fails) // by hand alone
            return fails
                       ? SENTENCE("solution",
                                  "By these numbers {left} is no more than {room}; but with full values it "
                                  "is more than rounding explains, and the equation does not hold.")
                       : SENTENCE("solution",
                                  "{left} is more than {room}; but that comes from rounding on the way, and "
                                  "with full values the equation holds.");
        if (fails)
            return SENTENCE("solution",
                            "{left} is more than {room}: no rounding of what is given explains it, "
                            "and the equation does not hold.");
        return atRest ? SENTENCE("solution",
                                 "{left} is no more than {room}: the equation holds within rounding.")
                      : SENTENCE("solution", "Neither part of {lack} is more than rounding explains: the "
                                             "equation holds within it.");
    }();
    step.conclusion.push_back(board.say(wording, "left", margin.left, "room", margin.room, "lack", lack));
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
