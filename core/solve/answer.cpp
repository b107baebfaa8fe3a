// SPDX-License-Identifier: MIT
#include "core/solve/answer.h"

namespace tailpoint {
namespace {

using kernel::Found;
using kernel::Vec;

Eigen::Vector2d toDouble(Vec v) {
    return {static_cast<double>(v.x) + 0.0, static_cast<double>(v.y) + 0.0};
}

SolvedForce givenVector(const Sketch& sketch, const Question& question, int index) {
    const Force& force = vectorAt(sketch, index);
    const UnknownVector* unknown = question.find(index);
    SolvedForce solved;
    solved.name = force.name;
    solved.magnitudeFound = unknown != nullptr && unknown->magnitude;
    solved.directionFound = unknown != nullptr && unknown->direction;
    solved.magnitude = force.magnitude.value.value_or(0.0);
    if (isGiven(force.direction)) {
        const Vec unit = kernel::vec(question.unitOf(index));
        solved.direction = referredDirection(force.direction, sketch);
        solved.unit = toDouble(unit);
        solved.vector = toDouble(solved.magnitude * unit);
    }
    return solved;
}

SolvedForce& vectorOf(Solution& solution, int index) {
    return index == kSumIndex ? solution.sum : solution.forces[static_cast<std::size_t>(index)];
}

// `found` stands on the forces' side of the equation; the sum there is reversed.
void enterFound(SolvedForce& solved, const Found& found, int index, const Sketch& sketch) {
    const bool against = found.magnitude < 0;
    const long double sign = signOf(index) * (against ? -1.0L : 1.0L);
    const Vec unit = sign * found.unit;
    if (solved.magnitudeFound) {
        solved.magnitude = static_cast<double>(std::fabs(found.magnitude));
    }
    if (solved.directionFound && solved.magnitude == 0) {
        return;
    }
    solved.unit = toDouble(unit);
    solved.vector = toDouble(std::fabs(found.magnitude) * unit);
    if (solved.directionFound) {
        solved.direction = referredDirection(unit.x, unit.y, sketch);
    } else if (against) {
        solved.turned = true;
        solved.direction = halfTurned(*solved.direction, sketch.angleUnit);
    }
}

// The vector that the reported magnitude and direction say, read back as if they had been typed.
Vec readBack(const SolvedForce& solved, const Question& question, int index, const Sketch& sketch) {
    if (!solved.direction) {
        return {};
    }
    if (!solved.directionFound) {
        const long double sign = solved.turned ? -1.0L : 1.0L;
        return (sign * solved.magnitude) * kernel::vec(question.unitOf(index));
    }
    Direction direction;
    direction.form = AngleForm{*solved.direction};
    return solved.magnitude * kernel::vec(*unitVector(direction, sketch));
}

double residualOf(Solution& solution, const Question& question, const Sketch& sketch) {
    kernel::VectorSum rest = question.gap;
    for (const UnknownVector& unknown : question.unknowns) {
        const Vec vector = readBack(vectorOf(solution, unknown.index), question, unknown.index, sketch);
        rest.add(-signOf(unknown.index) * vector, 0);
    }
    return static_cast<double>(kernel::length(rest.value()));
}

} // namespace

double halfTurned(double referred, AngleUnit unit) {
    const double half = turnIn(unit) / 2;
    const double turned = referred > 0 ? referred - half : referred + half;
    return turned <= -half ? half : turned + 0.0;
}

Solution givenPart(const Sketch& sketch, const Question& question) {
    Solution solution;
    solution.forces.reserve(sketch.forces.size());
    for (std::size_t i = 0; i < sketch.forces.size(); ++i) {
        solution.forces.push_back(givenVector(sketch, question, static_cast<int>(i)));
    }
    solution.sum = givenVector(sketch, question, kSumIndex);
    return solution;
}

Solution answered(const Solution& given, const Sketch& sketch, const Question& question,
                  const kernel::Root& root) {
    Solution solution = given;
    const UnknownVector& first = question.unknowns.front();
    enterFound(vectorOf(solution, first.index), root.first, first.index, sketch);
    if (question.unknowns.size() > 1) {
        const UnknownVector& second = question.unknowns[1];
        enterFound(vectorOf(solution, second.index), root.second, second.index, sketch);
    }
    solution.residual = residualOf(solution, question, sketch);
    return solution;
}

} // namespace tailpoint
