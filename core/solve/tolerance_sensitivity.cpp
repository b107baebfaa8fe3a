// SPDX-License-Identifier: MIT
#include "core/solve/tolerance_sensitivity.h"

#include "core/solve/kernel.h"

#include <array>
#include <cmath>

namespace tailpoint::tolerance {
namespace {

using kernel::Vec;

/// A vector of the answer on the forces' side of the equation.
struct Side {
    int index = kSumIndex;
    Vec unit;
    long double magnitude = 0, sign = 1;
    bool magnitudeFound = false, directionFound = false;
    bool magnitudeGiven = false, directionGiven = false;

    Vec byMagnitude() const { return sign * unit; }
    Vec byDirection() const { return (sign * magnitude) * kernel::leftOf(unit); }
};

/// What is solved for: a vector's magnitude or direction.
struct Scalar {
    std::size_t vector = 0;
    bool isDirection = false;
};

struct Equation {
    std::vector<Side> sides;
    std::vector<Scalar> unknown;
    std::optional<std::size_t> square, line; ///< of the smallest vector and the line that it is square to
    bool isOverdetermined = false;           ///< one unknown: least is left over, square to its column

    Vec column(const Scalar& scalar) const {
        const Side& side = sides[scalar.vector];
        return scalar.isDirection ? side.byDirection() : side.byMagnitude();
    }
};

Equation equationOf(const Sketch& sketch, const Solution& solution) {
    Equation equation;
    const auto add = [&](const SolvedForce& solved, const Force& force, int index) {
        Side side;
        side.index = index;
        side.unit = {static_cast<long double>(solved.unit.x()), static_cast<long double>(solved.unit.y())};
        side.magnitude = solved.magnitude;
        side.sign = index == kSumIndex ? -1 : 1;
        side.magnitudeFound = solved.magnitudeFound;
        side.directionFound = solved.directionFound;
        side.directionGiven = isGiven(force.direction);
        // A zero without a direction is no value that could be moved.
        side.magnitudeGiven = isGiven(force.magnitude) && (side.directionGiven || side.directionFound);
        equation.sides.push_back(side);
    };
    for (std::size_t i = 0; i < solution.forces.size(); ++i) {
        add(solution.forces[i], sketch.forces[i], static_cast<int>(i));
    }
    add(solution.sum, sketch.sum, kSumIndex);
    return equation;
}

// The two scalars to be found; of the smallest vector the direction hangs on its line's.
bool findUnknown(Equation& equation, bool isSmallest) {
    for (std::size_t i = 0; i < equation.sides.size(); ++i) {
        const Side& side = equation.sides[i];
        if (isSmallest && side.magnitudeFound) {
            (side.directionFound ? equation.square : equation.line) = i;
        }
        if (side.magnitudeFound) {
            equation.unknown.push_back({i, false});
        }
        if (side.directionFound && !isSmallest) {
            equation.unknown.push_back({i, true});
        }
        if (side.directionFound && side.magnitude == 0) {
            return false;
        }
    }
    if (!isSmallest || !equation.square || !equation.line) {
        return !isSmallest && equation.unknown.size() == (equation.isOverdetermined ? 1 : 2);
    }
    constexpr long double kSquare = 1e-9L;
    const Side& line = equation.sides[*equation.line];
    return std::fabs(kernel::dot(equation.sides[*equation.square].unit, line.unit)) < kSquare;
}

/// Force's unit, and radians counter-clockwise.
struct Rates {
    std::vector<std::array<long double, 2>> own; ///< of magnitude and direction, by vector
};

std::optional<Rates> ratesOf(const Equation& equation, const Scalar& input) {
    Rates rates{std::vector<std::array<long double, 2>>(equation.sides.size())};
    Vec change = equation.column(input);
    rates.own[input.vector][input.isDirection ? 1 : 0] = 1;
    if (input.isDirection && equation.line == input.vector) {
        change = change + equation.column({*equation.square, true});
        rates.own[*equation.square][1] = 1;
    }
    const Vec first = equation.column(equation.unknown[0]);
    const Vec second =
        equation.isOverdetermined ? kernel::leftOf(first) : equation.column(equation.unknown[1]);
    const long double determinant = kernel::cross(first, second);
    const long double size = kernel::length(first) * kernel::length(second);
    if (std::fabs(determinant) <= kernel::kTangentBand * size) {
        return std::nullopt;
    }
    const std::array<long double, 2> found{-kernel::cross(change, second) / determinant,
                                           -kernel::cross(first, change) / determinant};
    for (std::size_t i = 0; i < equation.unknown.size(); ++i) {
        const Scalar& scalar = equation.unknown[i];
        rates.own[scalar.vector][scalar.isDirection ? 1 : 0] += found[i];
    }
    return rates;
}

// `scale`: what one of the input's units is, magnitude's or radians counter-clockwise; `angle`: the sheet's
// unit in its sense for a radian counter-clockwise.
InputSlope slopeOf(const Equation& equation, const Scalar& input, const Rates& rates, long double angle) {
    InputSlope slope;
    slope.index = equation.sides[input.vector].index;
    slope.isDirection = input.isDirection;
    const long double scale = input.isDirection ? 1 / angle : 1;
    for (std::size_t i = 0; i < equation.sides.size(); ++i) {
        const Side& side = equation.sides[i];
        const auto& [magnitude, direction] = rates.own[i];
        const Vec moved = magnitude * side.unit + (side.magnitude * direction) * kernel::leftOf(side.unit);
        slope.vectors.push_back({static_cast<double>(scale * magnitude),
                                 static_cast<double>(scale * direction * angle),
                                 static_cast<double>(scale * moved.x), static_cast<double>(scale * moved.y)});
    }
    return slope;
}

} // namespace

Sensitivity sensitivityOf(const Sketch& sketch, const Solved& solved, std::size_t answer) {
    if (solved.tangent || solved.unknownVectors[0] == kNoVector) {
        return std::nullopt;
    }
    Equation equation = equationOf(sketch, solved.solutions[answer]);
    equation.isOverdetermined = solved.family == Family::oneUnknown;
    if (!findUnknown(equation, sketch.smallest.has_value())) {
        return std::nullopt;
    }
    const long double sense = sketch.reference.sense == Sense::cw ? -1.0L : 1.0L;
    const long double angle = sense * static_cast<long double>(fromRadians(1.0, sketch.angleUnit));
    std::vector<InputSlope> slopes;
    for (std::size_t i = 0; i < equation.sides.size(); ++i) {
        const Side& side = equation.sides[i];
        for (const bool isDirection : {false, true}) {
            if (!(isDirection ? side.directionGiven : side.magnitudeGiven)) {
                continue;
            }
            const std::optional<Rates> rates = ratesOf(equation, {i, isDirection});
            if (!rates) {
                return std::nullopt;
            }
            slopes.push_back(slopeOf(equation, {i, isDirection}, *rates, angle));
        }
    }
    return slopes;
}

} // namespace tailpoint::tolerance
