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

Sketch withAnglesFrom(const Sketch& before, Sketch after) {
    const double factor = turnIn(after.angleUnit) / turnIn(before.angleUnit);
    return eachVector(std::move(after), [&](Force& force) {
        apply(force.direction.plusMinus, factor);
        if (auto* angle = std::get_if<AngleForm>(&force.direction.form)) {
            angle->value = referredAgain(angle->value, before, after);
        }
    });
}

void makeGiven(Result& result, int vector) {
    for (Entry cell : {Entry::magnitude, Entry::direction}) {
        if (isToFind(result.sketch, vector, cell)) {
            result.sketch = toggled(result, vector, cell);
        }
    }
}

/// All forces given as found; as they are where nothing was found.
Result withForcesGiven(Result result) {
    result.sketch.smallest.reset();
    if (!result.solved.solutions.empty()) {
        for (std::size_t i = 0; i < result.sketch.forces.size(); ++i) {
            makeGiven(result, static_cast<int>(i));
        }
    }
    return result;
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
    if (numbers == Numbers::keep || unit == sketch.forceUnit) {
        return after;
    }
    return eachVector(std::move(after), [&](Force& force) {
        for (auto* value : {&force.magnitude.value, &force.magnitude.plusMinus}) {
            if (*value) {
                *value = tidied(convert(**value, sketch.forceUnit, unit));
            }
        }
    });
}

Sketch withAngleUnit(const Sketch& sketch, AngleUnit unit, Numbers numbers) {
    Sketch after = sketch;
    after.angleUnit = unit;
    return numbers == Numbers::keep || unit == sketch.angleUnit ? after
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
    Sketch after = withForcesGiven(result).sketch;
    after.sum.magnitude = {};
    after.sum.direction = {};
    return settled(std::move(after));
}

Sketch askingEquilibrant(const Result& result) {
    Sketch after = withForceToFind(withForcesGiven(result).sketch);
    after.sum.magnitude = {0.0, {}};
    after.sum.direction = {};
    return settled(std::move(after));
}

std::optional<Sketch> askingComponents(const Result& result) {
    if (result.sketch.forces.size() < 2 || !sumHasDirection(result)) {
        return std::nullopt;
    }
    Result given = withForcesGiven(result);
    makeGiven(given, kSumIndex);
    given.sketch.forces[0].magnitude = {};
    given.sketch.forces[1].magnitude = {};
    return settled(std::move(given.sketch));
}

std::optional<Sketch> askingSmallest(const Result& result, int vector) {
    if (vector < 0 || !hasVector(result.sketch, vector) || !sumHasDirection(result)) {
        return std::nullopt;
    }
    Result given = withForcesGiven(result);
    makeGiven(given, kSumIndex);
    Sketch& after = given.sketch;
    after.sum.magnitude = {};
    Force& force = vectorOf(after, vector);
    force.magnitude = {};
    force.direction = {};
    after.smallest = force.name;
    return after;
}

} // namespace tailpoint
