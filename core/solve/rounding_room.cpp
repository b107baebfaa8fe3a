// SPDX-License-Identifier: MIT
#include "core/solve/rounding_room.h"

#include "core/quantity/angle.h"
#include "core/sketch/shown.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace tailpoint {

RoundingRoom roundingRoom(const Sketch& sketch) {
    RoundingRoom room;
    room.halfAngle = halfOfLastPlace(sketch.sum.direction, sketch);
    const double sine = std::sin(room.halfAngle * 2 * std::numbers::pi / turnIn(sketch.angleUnit));
    const double size = sketch.sum.magnitude.value.value_or(0);
    if (size > 0) {
        room.half = room.along = halfOfLastPlace(size, sketch);
        room.across = size * sine;
        return room;
    }
    double greatest = 0, all = 0;
    for (const Force& force : sketch.forces) {
        const double magnitude = force.magnitude.value.value_or(0);
        greatest = std::max(greatest, magnitude);
        all += magnitude;
    }
    room.half = halfOfLastPlace(greatest, sketch);
    room.along = room.across = static_cast<double>(sketch.forces.size()) * room.half + all * sine;
    return room;
}

namespace {

void fillIn(Force& force, const SolvedForce& found) {
    if (found.magnitudeFound)
        force.magnitude = {found.magnitude, {}};
    if ((found.directionFound || found.turned) && found.direction)
        force.direction = {AngleForm{*found.direction}, {}};
}

} // namespace

Sketch filledIn(const Sketch& sketch, const Solution& solution) {
    Sketch filled = sketch;
    for (std::size_t i = 0; i < filled.forces.size(); ++i)
        fillIn(filled.forces[i], solution.forces[i]);
    fillIn(filled.sum, solution.sum);
    return filled;
}

bool isWithin(const RoundingRoom& room, double along, double across) {
    constexpr double kSlack = 1 + 1e-6; // a direction off moves the tip a little along the sum as well
    return std::abs(along) <= room.along * kSlack && std::abs(across) <= room.across * kSlack;
}

} // namespace tailpoint
