// SPDX-License-Identifier: MIT
// Short ways to write sketches in tests. Angles in degrees from +x, counter-clockwise.
#pragma once

#include "core/sketch/sketch.h"

#include <cmath>
#include <optional>
#include <string>
#include <utility>
#include <vector>

namespace tailpoint::testing {

inline constexpr std::nullopt_t kToFind = std::nullopt;

/// A force by magnitude and direction, either of them kToFind.
inline Force force(std::string name, std::optional<double> magnitude, std::optional<double> direction) {
    Force made;
    made.name = std::move(name);
    made.magnitude.value = magnitude;
    if (direction) {
        made.direction.form = AngleForm{*direction};
    }
    return made;
}

inline Force slope(std::string name, std::optional<double> magnitude, double run, double rise) {
    Force made = force(std::move(name), magnitude, kToFind);
    made.direction.form = SlopeForm{run, rise};
    return made;
}

inline Force bearing(std::string name, std::optional<double> magnitude, char from, double degrees,
                     char toward) {
    Force made = force(std::move(name), magnitude, kToFind);
    made.direction.form = BearingForm{from, degrees, toward};
    return made;
}

/// The same force by its line of action alone.
inline Force either(Force force) {
    force.lineOfActionOnly = true;
    return force;
}

/// A force by its components; for tests of sums given along x and y.
inline Force components(std::string name, double x, double y) {
    return slope(std::move(name), std::hypot(x, y), x, y);
}

inline Sketch sketch(std::vector<Force> forces, Force sum = force("R", kToFind, kToFind)) {
    Sketch made = emptySketch();
    made.forces = std::move(forces);
    made.sum = std::move(sum);
    return made;
}

/// Without forces.
inline Sketch sheet(AngleUnit unit = AngleUnit::deg, double axis = 0, Sense sense = Sense::ccw) {
    Sketch made = emptySketch();
    made.angleUnit = unit;
    made.reference = {axis, sense};
    return made;
}

inline Sketch balanced(std::vector<Force> forces) {
    return sketch(std::move(forces), force("R", 0, kToFind));
}

inline Sketch smallest(Sketch made, std::string name) {
    made.smallest = std::move(name);
    return made;
}

} // namespace tailpoint::testing
