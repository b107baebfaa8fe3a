// SPDX-License-Identifier: MIT
#include "core/construct/vectors.h"

#include <algorithm>

namespace tailpoint {
namespace {

PlainVector fromGiven(const Force& force, const Sketch& sketch) {
    PlainVector out;
    out.name = force.name;
    if (force.magnitude.value) {
        out.hasMagnitude = true;
        out.magnitude = *force.magnitude.value;
    }
    if (const auto unit = unitVector(force.direction, sketch)) {
        out.hasDirection = true;
        out.unit = {static_cast<double>(unit->cos), static_cast<double>(unit->sin)};
    }
    if (out.hasMagnitude && out.hasDirection)
        out.vector = out.magnitude * out.unit;
    return out;
}

PlainVector fromSolved(const SolvedForce& solved) {
    PlainVector out;
    out.name = solved.name;
    out.vector = solved.vector;
    out.magnitude = solved.magnitude;
    out.hasMagnitude = true;
    out.hasDirection = solved.direction.has_value();
    out.unit = solved.unit;
    if (out.hasDirection && out.unit.isZero() && out.magnitude > 0)
        out.unit = out.vector / out.magnitude;
    out.foundMagnitude = solved.magnitudeFound;
    out.foundDirection = solved.directionFound;
    return out;
}

} // namespace

bool Vectors::forcesComplete() const {
    return std::all_of(forces.begin(), forces.end(), [](const PlainVector& f) { return f.complete(); });
}

bool Vectors::isUnknown(const Solved& solved, int index) {
    return solved.unknownVectors[0] == index || solved.unknownVectors[1] == index;
}

Vectors vectorsOf(const Sketch& sketch, const Solved& solved, std::size_t solution) {
    Vectors out;
    if (solution < solved.solutions.size() &&
        solved.solutions[solution].forces.size() == sketch.forces.size()) {
        const Solution& answer = solved.solutions[solution];
        out.forces.reserve(answer.forces.size());
        for (const SolvedForce& force : answer.forces)
            out.forces.push_back(fromSolved(force));
        out.sum = fromSolved(answer.sum);
        return out;
    }
    out.forces.reserve(sketch.forces.size());
    for (const Force& force : sketch.forces)
        out.forces.push_back(fromGiven(force, sketch));
    out.sum = fromGiven(sketch.sum, sketch);
    return out;
}

} // namespace tailpoint
