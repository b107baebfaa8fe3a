// SPDX-License-Identifier: MIT
#include "core/solve/question.h"

namespace tailpoint {
namespace {

using kernel::Vec;

// Enters one vector: its unit, what of it is to be found, and where it is given its part of the sums.
void enter(Question& question, const Sketch& sketch, int index) {
    const Force& force = vectorAt(sketch, index);
    const std::optional<CosSin> unit = unitVector(force.direction, sketch);
    question.units.push_back(unit.value_or(CosSin{}));
    const bool zero = force.magnitude.value == 0.0;
    const bool findMagnitude = !isGiven(force.magnitude);
    const bool findDirection = !unit && !zero;
    if (findMagnitude || findDirection) {
        question.unknowns.push_back({index, findMagnitude, findDirection});
        question.scalars += (findMagnitude ? 1u : 0u) + (findDirection ? 1u : 0u);
        return;
    }
    const long double magnitude = *force.magnitude.value;
    const Vec vector = magnitude * kernel::vec(question.units.back());
    if (index == kSumIndex) {
        question.gap.add(vector, magnitude);
        return;
    }
    question.gap.add(-vector, magnitude);
    question.forces.add(vector, magnitude);
    if (!zero) {
        ++question.givenForces;
        question.onlyForce = index;
    }
}

// A magnitude that is given where only the direction is to be found belongs to the scale of the bands too.
void addUnknownScales(Question& question, const Sketch& sketch) {
    for (const UnknownVector& unknown : question.unknowns) {
        if (!unknown.magnitude) {
            question.circles += *vectorAt(sketch, unknown.index).magnitude.value;
        }
    }
}

} // namespace

const Force& vectorAt(const Sketch& sketch, int index) {
    return index == kSumIndex ? sketch.sum : sketch.forces[static_cast<std::size_t>(index)];
}

const UnknownVector* Question::find(int index) const {
    for (const UnknownVector& unknown : unknowns) {
        if (unknown.index == index) {
            return &unknown;
        }
    }
    return nullptr;
}

Question questionOf(const Sketch& sketch) {
    Question question;
    question.units.reserve(sketch.forces.size() + 1);
    for (std::size_t i = 0; i < sketch.forces.size(); ++i) {
        enter(question, sketch, static_cast<int>(i));
    }
    enter(question, sketch, kSumIndex);
    addUnknownScales(question, sketch);
    return question;
}

Side sideOf(const Sketch& sketch, const Question& question, const UnknownVector& unknown) {
    const Force& force = vectorAt(sketch, unknown.index);
    if (unknown.direction) {
        return kernel::Circle{*force.magnitude.value};
    }
    const Vec unit = signOf(unknown.index) * kernel::vec(question.unitOf(unknown.index));
    return kernel::Line{unit, !force.lineOfActionOnly};
}

kernel::Roots meet(const Side& first, const Side& second, const kernel::Target& target) {
    return std::visit([&](const auto& a, const auto& b) { return kernel::meet(a, b, target); }, first,
                      second);
}

} // namespace tailpoint
