// SPDX-License-Identifier: MIT
#include "core/construct/pairs.h"

#include "core/construct/parallelogram.h"
#include "core/sketch/things.h"

#include <algorithm>

namespace tailpoint {
namespace {

bool isProperPair(const Eigen::Vector2d& a, const Eigen::Vector2d& b) {
    const double cross = a.x() * b.y() - a.y() * b.x();
    return std::abs(cross) > kPairBand * a.norm() * b.norm() &&
           (a + b).norm() > kPairBand * (a.norm() + b.norm());
}

bool asksForResultant(const Vectors& vectors, const Solved& solved) {
    const std::size_t n = vectors.forces.size();
    return n >= 3 && n <= kMostPaired && solved.family == Family::closePolygon &&
           solved.unknownVectors[0] == kSumIndex && vectors.forcesComplete() &&
           !(vectors.sum.complete() && vectors.sum.magnitude == 0);
}

} // namespace

std::vector<Parallelogram> pairsOf(const Sketch& sketch, const Solved& solved, std::size_t solution) {
    if (sketch.forces.size() < 3 || sketch.forces.size() > kMostPaired)
        return {};
    const Vectors vectors = vectorsOf(sketch, solved, solution);
    if (!asksForResultant(vectors, solved))
        return {};
    std::vector<Parallelogram> pairs;
    PlainVector partial = vectors.forces[0];
    const Things things(sketch);
    for (std::size_t i = 1; i < vectors.forces.size(); ++i) {
        const PlainVector& next = vectors.forces[i];
        if (!isProperPair(partial.vector, next.vector))
            return {};
        const bool reaches = i + 1 == vectors.forces.size() && vectors.sum.complete();
        const Eigen::Vector2d far =
            reaches ? vectors.sum.vector : Eigen::Vector2d(partial.vector + next.vector);
        pairs.push_back(parallelogramOf(partial, next, far));
        partial.vector = far;
        partial.name = things.name(partialVector(i));
    }
    return pairs;
}

} // namespace tailpoint
