// All given: what the forces add up to beside what their sum is to be.
#include "core/explain/families.h"
#include "core/explain/table_slips.h"
#include "core/explain/trial.h"

#include "core/quantity/decimals.h"

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

/// Half of one in the last place to which the greatest magnitude is given.
std::pair<const Vector*, double> lastDigit(const Board& board) {
    const Vector* greatest = &board.sum();
    for (const Vector& force : board.forces())
        if (force.magnitude > greatest->magnitude)
            greatest = &force;
    const double lead = greatest->magnitude > 0 ? std::floor(std::log10(greatest->magnitude)) : 0;
    return {greatest, 0.5 * std::pow(10.0, lead + 1 - board.sketch.figures)};
}

void writeVerdict(const Board& board, Step& step) {
    const Formula lack = equal(board.symbolOf(gap(kDifference)), board.number(gap(kDifference)));
    const auto [greatest, half] = lastDigit(board);
    const bool isMore = board.number(gap(kDifference)).value > half,
               fails = board.solved.messageCode() == MessageCode::equationFails;
    const auto wording = [&] {
        if (isMore != fails) // by hand alone
            return fails
                       ? SENTENCE("solution",
                                  "{lack} is no more than half of one in the last place to which {greatest} "
                                  "is shown, {half}; but with full values it is more, and the equation does "
                                  "not hold.")
                       : SENTENCE("solution",
                                  "{lack} is more than half of one in the last place to which {greatest} is "
                                  "shown, {half}; but that comes from rounding on the way, and with full "
                                  "values the equation holds.");
        switch (board.solved.messageCode()) {
        case MessageCode::equationHolds:
            if (board.number(gap(kDifference)).value != 0)
                return SENTENCE("solution", "{lack} comes from rounding on the way: the equation holds.");
            return SENTENCE("solution", "{lack}: both sides are the same, and the equation holds.");
        case MessageCode::equationHoldsShown:
            return SENTENCE("solution", "{lack} is no more than half of one in the last place to which "
                                        "{greatest} is shown, {half}: the equation holds within rounding.");
        default:
            return SENTENCE("solution",
                            "{lack} is more than half of one in the last place to which {greatest} "
                            "is shown, {half}: no rounding explains it, and the equation does not "
                            "hold.");
        }
    }();
    step.conclusion.push_back(
        board.say(wording, "lack", lack, "greatest", equal(greatest->size, greatest->sizeNumber), "half",
                  number(half, shortest(half), std::string(symbolOf(board.sketch.forceUnit)))));
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
    step.conclusion.push_back(board.say(
        SENTENCE("solution", "The estimate said between {least} and {most} for the magnitude of what the "
                             "forces add up to: {size}."),
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
    writeVerdict(board, last);
    noteComponentSlips(board, last, forces, gap(kDifference));
    besideEstimate(board, last);
}

} // namespace tailpoint::explaining
