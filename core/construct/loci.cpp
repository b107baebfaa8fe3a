// SPDX-License-Identifier: MIT
#include "core/construct/loci.h"

namespace tailpoint {
namespace {

const Force& forceAt(const Sketch& sketch, int index) {
    return index == kSumIndex ? sketch.sum : sketch.forces[static_cast<std::size_t>(index)];
}

/// The locus of one vector with exactly one unknown, starting at `start`; `outward` is -1 where it is drawn
/// against the vector.
void addLocus(std::vector<Locus>& loci, const Sketch& sketch, int index, const Eigen::Vector2d& start,
              double outward) {
    const Force& force = forceAt(sketch, index);
    const auto unit = unitVector(force.direction, sketch);
    if (unit && !isGiven(force.magnitude)) {
        const Eigen::Vector2d along(static_cast<double>(unit->cos), static_cast<double>(unit->sin));
        loci.push_back(LineLocus{index, start, outward * along, !force.lineOfActionOnly});
    } else if (!unit && isGiven(force.magnitude) && *force.magnitude.value > 0) {
        loci.push_back(CircleLocus{index, start, *force.magnitude.value});
    }
}

bool hasOneUnknown(const Force& force) {
    return isGiven(force.magnitude) != isGiven(force.direction) &&
           !(isGiven(force.magnitude) && *force.magnitude.value == 0);
}

std::vector<Locus> unmetLoci(const Sketch& sketch) {
    std::vector<Locus> loci;
    constexpr std::size_t most = 12; // more is no drawing, only ink
    for (std::size_t i = 0; i < sketch.forces.size() && loci.size() < most; ++i)
        if (hasOneUnknown(sketch.forces[i]))
            addLocus(loci, sketch, static_cast<int>(i), {0, 0}, 1);
    if (hasOneUnknown(sketch.sum))
        addLocus(loci, sketch, kSumIndex, {0, 0}, 1);
    return loci;
}

/// What the known vectors leave for two unknown forces: S - K.
Eigen::Vector2d remainder(const Sketch& sketch, const Solved& solved) {
    const auto unit = unitVector(sketch.sum.direction, sketch);
    if (!unit || !isGiven(sketch.sum.magnitude))
        return -solved.knownSum;
    const double size = *sketch.sum.magnitude.value;
    return Eigen::Vector2d(size * static_cast<double>(unit->cos), size * static_cast<double>(unit->sin)) -
           solved.knownSum;
}

} // namespace

bool lociMeet(const Solved& solved) {
    switch (solved.family) {
    case Family::twoMagnitudes:
    case Family::magnitudeAndDirection:
    case Family::twoDirections:
    case Family::smallestForce:
    case Family::smallestSum:
        return true;
    default:
        return false;
    }
}

std::array<int, 2> lociOrder(const Sketch& sketch, const Solved& solved) {
    const auto [u, v] = solved.unknownVectors;
    const bool circleLast = u >= 0 && v >= 0 && isGiven(forceAt(sketch, u).direction) &&
                            isGiven(forceAt(sketch, v).magnitude) && !isGiven(forceAt(sketch, v).direction);
    return circleLast ? std::array{v, u} : std::array{u, v};
}

std::vector<Locus> lociOf(const Sketch& sketch, const Solved& solved) {
    if (!lociMeet(solved))
        return unmetLoci(sketch);
    std::vector<Locus> loci;
    const auto [u, v] = lociOrder(sketch, solved);
    const bool withSum = u == kSumIndex || v == kSumIndex;
    if (withSum) {
        const int force = u == kSumIndex ? v : u;
        if (force != kNoVector)
            addLocus(loci, sketch, force, solved.knownSum, 1);
        addLocus(loci, sketch, kSumIndex, {0, 0}, 1);
    } else {
        if (u != kNoVector)
            addLocus(loci, sketch, u, {0, 0}, 1);
        if (v != kNoVector)
            addLocus(loci, sketch, v, remainder(sketch, solved), -1);
    }
    return loci;
}

std::vector<Eigen::Vector2d> meetingsOf(const Sketch& sketch, const Solved& solved) {
    std::vector<Eigen::Vector2d> out;
    if (!lociMeet(solved))
        return out;
    const auto [u, v] = lociOrder(sketch, solved);
    for (const Solution& answer : solved.solutions) {
        const bool atSum = u == kSumIndex || v == kSumIndex || u == kNoVector;
        out.push_back(atSum ? answer.sum.vector : answer.forces[static_cast<std::size_t>(u)].vector);
    }
    return out;
}

} // namespace tailpoint
