// More than two forces, parallelogram by parallelogram: each partial sum takes the next force.
#include "core/construct/pairs.h"
#include "core/explain/families.h"

#include <cmath>

namespace tailpoint::explaining {

namespace {

constexpr double kEqualSides = 1e-12; // relative: a partial sum that is equal but for its last bits

/// Adds `next` to `partial`; `made` comes out with its magnitude and direction carried.
void writePair(Blackboard& board, const Arrow& partial, const Arrow& next, Arrow& made, std::size_t index) {
    const bool last = made.index == kSumIndex;
    Step& step = board.step("pair" + std::to_string(index),
                            last ? "The last parallelogram gives the resultant"
                                 : "Parallelogram " + std::to_string(index) + ": two vectors become one",
                            last ? Stage::all : Stage::construction, Law::cosines);
    for (const Arrow* arrow : {&partial, &next, static_cast<const Arrow*>(&made)})
        if (arrow->index != kNoVector)
            step.parts.push_back(arrowPart(arrow->index));
    step.parts.push_back(part(FigurePart::Kind::parallelogram, next.index));
    step.pair = static_cast<int>(index);
    step.reasoning.push_back(say(
        "Add {} and {}: the angle between the tails, its supplement in the triangle, the law of cosines for "
        "the magnitude of {}, the law of sines for the angle beside the greater of the two, and that angle "
        "turned off from it.",
        partial.vector, next.vector, made.vector));
    const auto number = static_cast<std::uint8_t>(index);
    const Term phi = writeTails(board, step, partial, next,
                                board.things.formula({What::between, partial.id, next.id, 0, number}));
    const double inner = std::abs(signedAngle(partial.v, -next.v).value_or(0));
    const Term gamma = writeSupplement(
        board, step, board.things.formula({What::opposite, made.id, {}, 0, number}), phi, inner);
    const auto pair = static_cast<int>(index); // the figure knows the parallelogram by its number
    step.angles = {named(part(FigurePart::Kind::tails, kNoVector, pair), phi.symbol),
                   named(part(FigurePart::Kind::opposite, kNoVector, pair), gamma.symbol)};
    made.sizeNumber =
        writeCosinesForSide(board, step, made.size, sizeOf(partial), sizeOf(next), gamma, made.magnitude)
            .number;
    const bool first = partial.magnitude >= next.magnitude;
    const Arrow &great = first ? partial : next, &small = first ? next : partial;
    const double beside = std::abs(signedAngle(great.v, made.v).value_or(0));
    const Term angle =
        writeSinesForAngle(board, step, board.things.formula({What::opposite, small.id, {}, 0, number}),
                           sizeOf(small), sizeOf(made), gamma, beside);
    const Turn turn = writeTurn(board, step, made.theta, thetaOf(great), angle, made.direction.value_or(0));
    remarkOnRounding(board, step, Quantity::angle);
    made.directionNumber = turn.number;
    const bool equal = great.magnitude - small.magnitude <= kEqualSides * great.magnitude;
    step.conclusion.push_back(say(
        equal ? "{} lies opposite to one of two equal sides, so it is acute; from {} towards {} one turns {}."
              : "{} lies opposite to the smaller side, so it is acute; from {} towards {} one turns {}.",
        angle.symbol, great.vector, made.vector, inWords(std::string(wayOf(turn.sign, board.sketch)))));
}

} // namespace

bool writePairs(Blackboard& board) {
    const std::vector<Parallelogram> pairs = pairsOf(board.sketch, board.solved, board.solution);
    if (pairs.empty())
        return false;
    writeGiven(board);
    writeCount(board);
    writePolygonEstimate(board);
    Arrow partial = board.forces[0];
    for (std::size_t i = 1; i < board.forces.size(); ++i) {
        const bool last = i + 1 == board.forces.size();
        Arrow made = last ? board.sum : board.madeArrow(partialVector(i), pairs[i].corners[1]);
        writePair(board, partial, board.forces[i], made, i);
        partial = std::move(made);
    }
    board.sum = partial;
    writeAnswer(board);
    writeCheck(board);
    writeRoundingCost(board);
    return true;
}

} // namespace tailpoint::explaining
