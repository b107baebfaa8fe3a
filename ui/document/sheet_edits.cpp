// SPDX-License-Identifier: MIT
#include "ui/document/sheet_edits.h"

#include "core/quantity/decimals.h"
#include "ui/document/given_edits.h"
#include "ui/document/sketch_document.h"

#include <cmath>

namespace tailpoint {

namespace {

/// The values of a case as those of a vector.
template <class Change>
void changeIn(CaseChange& values, Change change) {
    Force vector;
    vector.magnitude = values.magnitude.value_or(Magnitude{});
    vector.direction = values.direction.value_or(Direction{});
    change(vector);
    if (values.magnitude) {
        values.magnitude = vector.magnitude;
    }
    if (values.direction) {
        values.direction = vector.direction;
    }
}

/// The vectors, and what they are in the cases.
template <class Change>
Sketch eachVector(Sketch sketch, Change change) {
    for (Force& force : sketch.forces) {
        change(force);
    }
    change(sketch.sum);
    for (LoadCase& one : sketch.cases) {
        for (CaseChange& values : one.changes) {
            changeIn(values, change);
        }
    }
    return sketch;
}

template <class Convert>
void convertTolerance(std::optional<Tolerance>& tolerance, Convert convert) {
    if (tolerance) {
        tolerance = convertedTolerance(*tolerance, [&](double side) { return tidied(convert(side)); });
    }
}

/// Angles, as another unit has them.
struct Turned {
    Turned(const Sketch& before, const Sketch& after)
        : factor(turnIn(after.angleUnit) / turnIn(before.angleUnit)),
          mirrored(before.reference.sense != after.reference.sense) {}
    double operator()(double angle) const { return tidied(angle * factor); }
    double factor;
    bool mirrored; ///< what grew one way grows the other
};

/// An angle within a few u of a turn from a decimal of 11 places is that decimal.
double withoutDust(double angle) {
    const double near = roundedToDecimals(angle, 11);
    return std::abs(angle - near) <= 1e-13 ? near : angle;
}

/// An angle from the old sheet's axis, in its sense and unit, as the new sheet says it.
double referredAgain(double value, const Sketch& before, const Sketch& after) {
    const double turnBefore = turnIn(before.angleUnit), turnAfter = turnIn(after.angleUnit);
    const double ownBefore = before.reference.sense == Sense::ccw ? 1 : -1;
    const double ownAfter = after.reference.sense == Sense::ccw ? 1 : -1;
    const double between = (before.reference.axisDegrees - after.reference.axisDegrees) / 360 * turnAfter;
    const double absolute = ownBefore * value / turnBefore * turnAfter + between;
    return normalized(withoutDust(ownAfter * absolute), after.angleUnit);
}

/// What a tolerance says of another number for the same direction: a share of an angle becomes an angle where
/// the angle is no longer the same multiple; a sheet that turns the other way exchanges up and down, but for
/// a bearing, which has a sense of its own.
void referAgain(std::optional<Tolerance>& tolerance, const Direction& direction, const Sketch& before,
                const Sketch& after) {
    if (!tolerance) {
        return;
    }
    const Turned turned(before, after);
    const auto* angle = std::get_if<AngleForm>(&direction.form);
    if (tolerance->percent && angle) {
        const double now = referredAgain(angle->value, before, after);
        if (std::abs(std::abs(now) - std::abs(turned(angle->value))) <= 1e-12 * std::abs(now)) {
            return;
        }
        const double margin = marginsOf(direction, before).plus;
        tolerance = plusMinus(margin);
    }
    convertTolerance(tolerance, turned);
    if (turned.mirrored && !std::holds_alternative<BearingForm>(direction.form)) {
        std::swap(tolerance->plus, tolerance->minus);
    }
}

void referAgain(std::optional<Permitted>& permitted, const Sketch& before, const Sketch& after) {
    if (permitted) {
        permitted = Permitted{referredAgain(permitted->axis, before, after),
                              Turned(before, after)(permitted->within)};
    }
}

/// A value that is stated in a unit of its own is converted from there, not from what the sheet made of it;
/// seen from another axis it is another value.
void referAgain(Direction& direction, const Sketch& before, const Sketch& after) {
    auto* angle = std::get_if<AngleForm>(&direction.form);
    if (angle && angle->typed && before.reference == after.reference) {
        direction = directionOf(*angle->typed, after.angleUnit);
        return;
    }
    auto tolerance = direction.tolerance;
    referAgain(tolerance, direction, before, after);
    direction.tolerance = tolerance;
    if (angle) {
        *angle = AngleForm{referredAgain(angle->value, before, after)};
    }
}

Sketch withAnglesFrom(const Sketch& before, Sketch after) {
    return eachVector(std::move(after), [&](Force& force) {
        referAgain(force.direction, before, after);
        referAgain(force.permitted, before, after);
    });
}

/// Numbers that stay where the unit changes are no longer those of a unit of their own; a limit that was
/// stated in the sheet's unit is so still.
void keepNumbers(Force& force, ForceUnit from, ForceUnit to) {
    force.magnitude.typed.reset();
    if (force.limit && force.limit->unit == LoadUnit(from)) {
        force.limit->unit = to;
    }
}
void keepAngles(Force& force) {
    if (auto* angle = std::get_if<AngleForm>(&force.direction.form)) {
        angle->typed.reset();
    }
}

void convertMagnitude(Magnitude& magnitude, ForceUnit from, const Sketch& after) {
    if (magnitude.typed) {
        magnitude = magnitudeOf(*magnitude.typed, after.forceUnit, after.gravity);
        return;
    }
    const auto inUnit = [&](double value) { return convert(value, from, after.forceUnit); };
    if (magnitude.value) {
        magnitude.value = tidied(inUnit(*magnitude.value));
    }
    convertTolerance(magnitude.tolerance, inUnit);
}

/// `sketch` with one vector given as `result` found it.
Sketch withGiven(Sketch sketch, const Result& result, int vector) {
    for (Entry cell : {Entry::magnitude, Entry::direction}) {
        if (isToFind(sketch, vector, cell)) {
            sketch = toggled(std::move(sketch), result, vector, cell);
        }
    }
    return sketch;
}

/// All forces given as found; as they are where nothing was found.
Sketch withForcesGiven(const Result& result) {
    Sketch sketch = result.sketch;
    sketch.smallest.reset();
    if (!result.solved.solutions.empty()) {
        for (std::size_t i = 0; i < sketch.forces.size(); ++i) {
            sketch = withGiven(std::move(sketch), result, static_cast<int>(i));
        }
    }
    return sketch;
}

Sketch withAllGiven(const Result& result) {
    return withGiven(withForcesGiven(result), result, kSumIndex);
}

bool sumHasDirection(const Result& result) {
    const auto& solutions = result.solved.solutions;
    return isGiven(result.sketch.sum.direction) ||
           (result.chosen < solutions.size() && solutions[result.chosen].sum.direction.has_value());
}

} // namespace

double tidied(double value) {
    constexpr int kFigures = 12; // with more, a number comes by chance so near to one that it is moved
    const double near = roundedToFigures(value, kFigures);
    return std::abs(value - near) <= 1e-15 * std::abs(value) ? near : value;
}

Sketch withForceUnit(const Sketch& sketch, ForceUnit unit, Numbers numbers) {
    Sketch after = sketch;
    after.forceUnit = unit;
    if (unit == sketch.forceUnit) {
        return after;
    }
    if (numbers == Numbers::keep) {
        return eachVector(std::move(after),
                          [&](Force& force) { keepNumbers(force, sketch.forceUnit, unit); });
    }
    const Sketch sheet = after;
    return eachVector(std::move(after),
                      [&](Force& force) { convertMagnitude(force.magnitude, sketch.forceUnit, sheet); });
}

Sketch withGravity(const Sketch& sketch, double gravity) {
    Sketch after = sketch;
    after.gravity = gravity;
    return eachVector(std::move(after), [&](Force& force) {
        if (force.magnitude.typed) {
            force.magnitude = magnitudeOf(*force.magnitude.typed, sketch.forceUnit, gravity);
        }
    });
}

Sketch withAngleUnit(const Sketch& sketch, AngleUnit unit, Numbers numbers) {
    Sketch after = sketch;
    after.angleUnit = unit;
    if (unit == sketch.angleUnit) {
        return after;
    }
    return numbers == Numbers::keep ? eachVector(std::move(after), keepAngles)
                                    : withAnglesFrom(sketch, std::move(after));
}

Sketch withReference(const Sketch& sketch, Reference reference, Numbers numbers) {
    Sketch after = sketch;
    after.reference = reference;
    return numbers == Numbers::keep || reference == sketch.reference
               ? after
               : withAnglesFrom(sketch, std::move(after));
}

Sketch askingResultant(const Result& result) {
    Sketch after = withForcesGiven(result);
    after.sum.magnitude = {};
    after.sum.direction = {};
    return settled(std::move(after));
}

Sketch askingEquilibrant(const Result& result) {
    Sketch after = withForceToFind(withForcesGiven(result));
    after.sum.magnitude = {0.0, {}};
    after.sum.direction = {};
    return settled(std::move(after));
}

std::optional<Sketch> askingComponents(const Result& result) {
    if (result.sketch.forces.size() < 2 || !sumHasDirection(result)) {
        return std::nullopt;
    }
    Sketch after = withAllGiven(result);
    after.forces[0].magnitude = {};
    after.forces[1].magnitude = {};
    return settled(std::move(after));
}

int besideSmallest(const Sketch& sketch, int vector) {
    if (!isEquilibrium(sketch)) {
        return kSumIndex;
    }
    for (int other = 0; other < static_cast<int>(sketch.forces.size()); ++other) {
        const Force& force = vectorOf(sketch, other);
        if (other != vector && !isGiven(force.magnitude) && isGiven(force.direction)) {
            return other;
        }
    }
    return kNoVector;
}

std::optional<Sketch> askingSmallest(const Result& result, int vector) {
    if (vector < 0 || !hasVector(result.sketch, vector)) {
        return std::nullopt;
    }
    const int beside = besideSmallest(result.sketch, vector);
    if (beside == kNoVector || (beside == kSumIndex && !sumHasDirection(result))) {
        return std::nullopt;
    }
    Sketch after = withAllGiven(result);
    vectorOf(after, beside).magnitude = {};
    Force& force = vectorOf(after, vector);
    force.magnitude = {};
    force.direction = {};
    after.smallest = force.name;
    return after;
}

} // namespace tailpoint
