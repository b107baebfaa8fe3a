#include "core/solve/solve.h"

#include "core/sketch/shown.h"
#include "core/solve/kernel.h"

namespace tailpoint {
namespace {

using kernel::Vec;

Eigen::Vector2d toDouble(Vec v) {
    return {static_cast<double>(v.x), static_cast<double>(v.y)};
}

SolvedForce asGiven(const Force& force, const CosSin& unit, const Sketch& sketch) {
    SolvedForce solved;
    solved.name = force.name;
    solved.magnitude = *force.magnitude.value;
    solved.direction = referredDirection(force.direction, sketch);
    solved.unit = toDouble(kernel::along(unit));
    solved.vector = toDouble(solved.magnitude * kernel::along(unit));
    return solved;
}

SolvedForce resultantOf(const kernel::VectorSum& sum, const Sketch& sketch) {
    SolvedForce solved;
    solved.name = sketch.sum.name;
    solved.magnitudeFound = solved.directionFound = true;
    const Vec v = sum.value();
    const long double size = kernel::length(v);
    if (size <= 4 * static_cast<long double>(sum.count()) * kernel::kUnitRoundoff * sum.magnitudes()) {
        return solved;
    }
    solved.magnitude = static_cast<double>(size);
    solved.direction = referredDirection(v.x, v.y, sketch);
    solved.vector = toDouble(v);
    solved.unit = toDouble((1 / size) * v);
    return solved;
}

} // namespace

std::string_view nameOf(Status status) {
    switch (status) {
    case Status::unique:
        return "unique";
    case Status::two:
        return "two";
    case Status::none:
        return "none";
    case Status::endless:
        return "endless";
    case Status::overdetermined:
        return "overdetermined";
    case Status::underdetermined:
        break;
    }
    return "underdetermined";
}

Solved solve(const Sketch& sketch) {
    Solved solved;
    kernel::VectorSum sum;
    Solution solution;
    for (const Force& force : sketch.forces) {
        const auto unit = unitVector(force.direction, sketch);
        if (!unit || !force.magnitude.value) {
            solved.message = "Too many unknowns: give every force a magnitude and a direction.";
            return solved;
        }
        const double magnitude = *force.magnitude.value;
        sum.add(static_cast<long double>(magnitude) * kernel::along(*unit), magnitude);
        solution.forces.push_back(asGiven(force, *unit, sketch));
    }
    solution.sum = resultantOf(sum, sketch);
    solved.status = Status::unique;
    solved.family = Family::closePolygon;
    solved.unknowns = {"magnitude of " + sketch.sum.name, "direction of " + sketch.sum.name};
    solved.unknownVectors = {kSumIndex, kNoVector};
    solved.knownSum = toDouble(sum.value());
    if (!solution.sum.direction) {
        solved.message = "The forces balance: " + sketch.sum.name + " is zero and has no direction.";
    }
    solved.solutions.push_back(std::move(solution));
    return solved;
}

SolvedForce equilibrant(const SolvedForce& sum, const Sketch& sketch) {
    SolvedForce opposite = sum;
    opposite.name = "equilibrant";
    opposite.vector = Eigen::Vector2d(0, 0) - sum.vector;
    opposite.unit = Eigen::Vector2d(0, 0) - sum.unit;
    opposite.direction =
        sum.direction ? referredDirection(opposite.unit.x(), opposite.unit.y(), sketch) : std::nullopt;
    return opposite;
}

} // namespace tailpoint
