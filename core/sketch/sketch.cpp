// SPDX-License-Identifier: MIT
#include "core/sketch/sketch.h"

#include <algorithm>
#include <array>
#include <cmath>

namespace tailpoint {
namespace {

constexpr long double kRadiansPerDegree = 3.14159265358979323846264338327950288L / 180;

CosSin turned(const CosSin& by, const CosSin& base) {
    return {base.cos * by.cos - base.sin * by.sin, base.sin * by.cos + base.cos * by.sin};
}

CosSin mirrored(const CosSin& direction) {
    return {direction.cos, 0.0L - direction.sin};
}

// Axis and angle added without loss: the part that the double sum drops is turned on afterwards.
CosSin sumOfDegrees(double axis, double angle) {
    const double sum = axis + angle;
    const double part = sum - axis;
    const double lost = (axis - (sum - part)) + (angle - part);
    const CosSin base = cosSin(sum, AngleUnit::deg);
    const long double rest = lost * kRadiansPerDegree;
    return {base.cos - base.sin * rest, base.sin + base.cos * rest};
}

CosSin unitOf(const AngleForm& form, const Sketch& sketch) {
    const double angle = sketch.reference.sense == Sense::cw ? -form.value : form.value;
    if (sketch.angleUnit == AngleUnit::deg) {
        return sumOfDegrees(sketch.reference.axisDegrees, angle);
    }
    return turned(cosSin(sketch.reference.axisDegrees, AngleUnit::deg), cosSin(angle, sketch.angleUnit));
}

CosSin unitOf(const SlopeForm& form, const Sketch&) {
    const long double run = form.run;
    const long double rise = form.rise;
    const long double length = std::hypot(run, rise);
    return {run / length + 0.0L, rise / length + 0.0L};
}

CosSin unitOf(const BearingForm& form, const Sketch&) {
    const CosSin fromMeridian = cosSin(form.degrees, AngleUnit::deg);
    return {(form.toward == 'E' ? fromMeridian.sin : -fromMeridian.sin) + 0.0L,
            (form.from == 'N' ? fromMeridian.cos : -fromMeridian.cos) + 0.0L};
}

bool hasForceNamed(const std::vector<Force>& forces, std::string_view name) {
    return std::any_of(forces.begin(), forces.end(), [&](const Force& force) { return force.name == name; });
}

} // namespace

bool isGiven(const Magnitude& magnitude) {
    return magnitude.value.has_value();
}
bool isGiven(const Direction& direction) {
    return !std::holds_alternative<ToFind>(direction.form);
}
bool isEquilibrium(const Sketch& sketch) {
    return sketch.sum.magnitude.value == 0.0;
}

std::optional<CosSin> unitVector(const Direction& direction, const Sketch& sketch) {
    if (const auto* angle = std::get_if<AngleForm>(&direction.form)) {
        return unitOf(*angle, sketch);
    }
    if (const auto* slope = std::get_if<SlopeForm>(&direction.form)) {
        return unitOf(*slope, sketch);
    }
    if (const auto* bearing = std::get_if<BearingForm>(&direction.form)) {
        return unitOf(*bearing, sketch);
    }
    return std::nullopt;
}

bool isPlainReference(const Sketch& sketch) {
    return sketch.reference.sense == Sense::ccw &&
           normalized(sketch.reference.axisDegrees, AngleUnit::deg) == 0;
}

std::optional<double> referredDirection(long double x, long double y, const Sketch& sketch) {
    const CosSin back = mirrored(cosSin(sketch.reference.axisDegrees, AngleUnit::deg));
    const CosSin along = turned(back, {x, y});
    const bool clockwise = sketch.reference.sense == Sense::cw;
    return directionOf(along.cos, clockwise ? 0.0L - along.sin : along.sin, sketch.angleUnit);
}

std::optional<double> referredDirection(const Direction& direction, const Sketch& sketch) {
    if (const auto* angle = std::get_if<AngleForm>(&direction.form)) {
        return normalized(angle->value, sketch.angleUnit);
    }
    const std::optional<CosSin> unit = unitVector(direction, sketch);
    return unit ? referredDirection(unit->cos, unit->sin, sketch) : std::nullopt;
}

std::optional<double> referredAsGiven(const Direction& direction, const Sketch& sketch) {
    const auto* angle = std::get_if<AngleForm>(&direction.form);
    return angle ? std::optional(std::fmod(angle->value, turnIn(sketch.angleUnit)))
                 : referredDirection(direction, sketch);
}

namespace {

void leaveOut(Magnitude& magnitude) {
    magnitude.tolerance.reset();
    if (magnitude.typed)
        magnitude.typed->tolerance.reset();
}

void leaveOut(Direction& direction) {
    direction.tolerance.reset();
    if (auto* angle = std::get_if<AngleForm>(&direction.form); angle && angle->typed)
        angle->typed->tolerance.reset();
}

} // namespace

Sketch withoutTolerances(Sketch sketch) {
    const auto leave = [](Force& vector) {
        leaveOut(vector.magnitude);
        leaveOut(vector.direction);
    };
    for (Force& force : sketch.forces)
        leave(force);
    leave(sketch.sum);
    for (LoadCase& one : sketch.cases)
        for (CaseChange& change : one.changes) {
            if (change.magnitude)
                leaveOut(*change.magnitude);
            if (change.direction)
                leaveOut(*change.direction);
        }
    return sketch;
}

bool statesLimits(const Sketch& sketch) {
    const auto states = [](const Force& vector) { return vector.limit || vector.permitted; };
    return states(sketch.sum) || std::any_of(sketch.forces.begin(), sketch.forces.end(), states);
}

std::string nextForceName(const Sketch& sketch) {
    constexpr std::array<std::string_view, 7> kLetters{"P", "Q", "S", "T", "U", "V", "W"};
    const auto isFree = [&](std::string_view name) {
        return !hasForceNamed(sketch.forces, name) && sketch.sum.name != name;
    };
    for (const std::string_view letter : kLetters) {
        if (isFree(letter)) {
            return std::string(letter);
        }
    }
    int number = 1;
    while (!isFree("F" + std::to_string(number))) {
        ++number;
    }
    return "F" + std::to_string(number);
}

std::string defaultSumName(const std::vector<Force>& forces) {
    for (const std::string_view name : {"R", "S", "T"}) {
        if (!hasForceNamed(forces, name)) {
            return std::string(name);
        }
    }
    int number = 1;
    while (hasForceNamed(forces, "R" + std::to_string(number))) {
        ++number;
    }
    return "R" + std::to_string(number);
}

Sketch emptySketch() {
    Sketch sketch;
    sketch.sum.name = "R";
    return sketch;
}

} // namespace tailpoint
