#include "ui/document/sheet_edits.h"

#include "core/quantity/decimals.h"
#include "ui/document/given_edits.h"
#include "ui/document/sketch_document.h"

#include <cmath>

namespace tailpoint {

namespace {

template <class Change>
Sketch eachVector(Sketch sketch, Change change) {
    for (Force& force : sketch.forces) {
        change(force);
    }
    change(sketch.sum);
    return sketch;
}

void apply(std::optional<double>& value, double factor) {
    if (value) {
        value = tidied(*value * factor);
    }
}

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

/// A value that the file states in a unit of its own is converted from there, not from what the sheet made of
/// it; seen from another axis it is another value.
void referAgain(Direction& direction, const Sketch& before, const Sketch& after) {
    auto* angle = std::get_if<AngleForm>(&direction.form);
    if (angle && angle->typed && before.reference == after.reference) {
        direction = directionOf(*angle->typed, after.angleUnit);
        return;
    }
    apply(direction.plusMinus, turnIn(after.angleUnit) / turnIn(before.angleUnit));
    if (angle) {
        *angle = AngleForm{referredAgain(angle->value, before, after)};
    }
}

Sketch withAnglesFrom(const Sketch& before, Sketch after) {
    return eachVector(std::move(after), [&](Force& force) { referAgain(force.direction, before, after); });
}

/// Numbers that stay where the unit changes are no longer those of the file's own unit.
void keepNumbers(Force& force) {
    force.magnitude.typed.reset();
}
void keepAngles(Force& force) {
    if (auto* angle = std::get_if<AngleForm>(&force.direction.form)) {
        angle->typed.reset();
    }
}

void convertMagnitude(Magnitude& magnitude, ForceUnit from, ForceUnit to) {
    if (magnitude.typed) {
        magnitude = magnitudeOf(*magnitude.typed, to);
        return;
    }
    for (auto* value : {&magnitude.value, &magnitude.plusMinus}) {
        if (*value) {
            *value = tidied(convert(**value, from, to));
        }
    }
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
    const double near = roundedToFigures(value, 14);
    return std::abs(value - near) <= 1e-15 * std::abs(value) ? near : value;
}

Sketch withForceUnit(const Sketch& sketch, ForceUnit unit, Numbers numbers) {
    Sketch after = sketch;
    after.forceUnit = unit;
    if (unit == sketch.forceUnit) {
        return after;
    }
    if (numbers == Numbers::keep) {
        return eachVector(std::move(after), keepNumbers);
    }
    return eachVector(std::move(after),
                      [&](Force& force) { convertMagnitude(force.magnitude, sketch.forceUnit, unit); });
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
