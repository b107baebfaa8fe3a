// SPDX-License-Identifier: MIT
// given -> to find and back.
#include "core/quantity/decimals.h"
#include "core/sketch/shown.h"
#include "ui/document/given_edits.h"
#include "ui/document/sketch_document.h"

#include <algorithm>

namespace tailpoint {

namespace {

double plainMagnitude(const Sketch& sketch) {
    double greatest = 0;
    for (const Force& force : sketch.forces) {
        greatest = std::max(greatest, force.magnitude.value.value_or(0));
    }
    return greatest > 0 ? greatest : 100;
}

/// As found; where nothing was, as the vector would have to be to close the polygon of the others.
std::optional<SolvedForce> foundVector(const Result& result, int vector) {
    if (result.chosen < result.solved.solutions.size()) {
        return vectorIn(result.solved.solutions[result.chosen], vector);
    }
    if (result.isWithheld) {
        return std::nullopt;
    }
    Sketch open = result.sketch;
    open.smallest.reset();
    vectorOf(open, vector).magnitude = {};
    vectorOf(open, vector).direction = {};
    const Solved solved = solve(open);
    return solved.solutions.size() == 1 ? std::optional(vectorIn(solved.solutions[0], vector)) : std::nullopt;
}

Magnitude magnitudeFor(const Result& result, int vector) {
    const auto found = foundVector(result, vector);
    const Sketch& sketch = result.sketch;
    const double value = found ? found->magnitude : plainMagnitude(sketch);
    return {roundedToFigures(value, sketch.figures), {}};
}

Direction directionFor(const Result& result, int vector) {
    const auto found = foundVector(result, vector);
    const double value = found ? found->direction.value_or(0) : 0;
    return {AngleForm{roundedAsShown(value, result.sketch)}, {}};
}

} // namespace

Sketch toggled(const Result& result, int vector, Entry cell) {
    return toggled(result.sketch, result, vector, cell);
}

Sketch toggled(Sketch after, const Result& result, int vector, Entry cell) {
    Force& force = vectorOf(after, vector);
    const bool toFind = isToFind(after, vector, cell);
    if (cell == Entry::magnitude) {
        force.magnitude = toFind ? magnitudeFor(result, vector) : Magnitude{};
    } else if (cell == Entry::direction) {
        force.direction = toFind ? directionFor(result, vector) : Direction{};
    }
    return settled(std::move(after));
}

Sketch toggled(const SketchDocument& document, int vector, Entry cell) {
    const Result& result = document.result();
    Sketch after = toggled(result, vector, cell);
    if (!result.solved.solutions.empty() || !isToFind(result.sketch, vector, cell)) {
        return after;
    }
    const std::string& name = vectorOf(after, vector).name;
    const auto stood = [&](const Sketch& sketch) {
        return hasVector(sketch, vector) && vectorOf(sketch, vector).name == name &&
               !isToFind(sketch, vector, cell) && sketch.forceUnit == after.forceUnit &&
               sketch.angleUnit == after.angleUnit && sketch.reference == after.reference;
    };
    if (const Sketch* former = document.lastWhere(stood)) {
        const Force& was = vectorOf(*former, vector);
        if (cell == Entry::magnitude) {
            vectorOf(after, vector).magnitude = was.magnitude;
        } else {
            vectorOf(after, vector).direction = was.direction;
        }
        after = settled(std::move(after));
    }
    return after;
}

Sketch withForceToFind(const Sketch& sketch) {
    Sketch after = sketch;
    Force force;
    force.name = nextForceName(sketch);
    after.forces.push_back(std::move(force));
    return after;
}

} // namespace tailpoint
