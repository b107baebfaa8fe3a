#include "core/construct/pairs.h"

#include "core/construct/parallelogram.h"

#include <algorithm>

namespace tailpoint {
namespace {

bool isProperPair(const Eigen::Vector2d& a, const Eigen::Vector2d& b) {
    const double cross = a.x() * b.y() - a.y() * b.x();
    return std::abs(cross) > kPairBand * a.norm() * b.norm() &&
           (a + b).norm() > kPairBand * (a.norm() + b.norm());
}

/// "K2", with primes where a vector is called so.
std::string partialName(const Vectors& vectors, std::size_t index) {
    std::string name = "K" + std::to_string(index);
    const auto isTaken = [&](const PlainVector& v) { return v.name == name; };
    while (std::any_of(vectors.forces.begin(), vectors.forces.end(), isTaken) || isTaken(vectors.sum))
        name += "\u2032";
    return name;
}

bool asksForResultant(const Vectors& vectors, const Solved& solved) {
    const std::size_t n = vectors.forces.size();
    return n >= 3 && n <= kMostPaired && solved.family == Family::closePolygon &&
           solved.unknownVectors[0] == kSumIndex && vectors.forcesComplete() && vectors.sum.complete() &&
           vectors.sum.magnitude > 0;
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
    for (std::size_t i = 1; i < vectors.forces.size(); ++i) {
        const PlainVector& next = vectors.forces[i];
        if (!isProperPair(partial.vector, next.vector))
            return {};
        const bool last = i + 1 == vectors.forces.size();
        const Eigen::Vector2d far = last ? vectors.sum.vector : Eigen::Vector2d(partial.vector + next.vector);
        pairs.push_back(parallelogramOf(partial, next, far));
        partial.vector = far;
        partial.name = partialName(vectors, i);
    }
    return pairs;
}

} // namespace tailpoint
