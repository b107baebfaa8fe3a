// SPDX-License-Identifier: MIT
#include "ui/canvas/force_edits.h"

#include <cmath>

namespace tailpoint {

namespace {

/// A force by its index, the sum by kSumIndex; null beyond them. `all` is a sketch or a solution.
template <class All>
auto at(All& all, int vector) -> decltype(&all.sum) {
    if (vector == kSumIndex) {
        return &all.sum;
    }
    const bool inside = vector >= 0 && static_cast<std::size_t>(vector) < all.forces.size();
    return inside ? &all.forces[static_cast<std::size_t>(vector)] : nullptr;
}

} // namespace

const Force* forceAt(const Sketch& sketch, int vector) {
    return at(sketch, vector);
}

Force* forceAt(Sketch& sketch, int vector) {
    return at(sketch, vector);
}

const SolvedForce* solvedAt(const Solution& solution, int vector) {
    return at(solution, vector);
}

bool tipCanMove(const Sketch& sketch, int vector) {
    const Force* force = forceAt(sketch, vector);
    return force != nullptr && (isGiven(force->magnitude) || isGiven(force->direction));
}

bool bodyCanTurn(const Sketch& sketch, int vector) {
    const Force* force = forceAt(sketch, vector);
    return force != nullptr && isGiven(force->direction);
}

Polar polarOf(const Eigen::Vector2d& v, const Sketch& sketch) {
    return {std::hypot(v.x(), v.y()), referredDirection(v.x(), v.y(), sketch).value_or(0)};
}

Sketch withForce(const Sketch& sketch, const Polar& polar) {
    Sketch after = sketch;
    Force force;
    force.name = nextForceName(sketch);
    setShownMagnitude(force, polar.magnitude, sketch);
    setShownDirection(force, polar.referred, sketch);
    after.forces.push_back(std::move(force));
    return after;
}

} // namespace tailpoint
