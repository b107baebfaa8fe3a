// SPDX-License-Identifier: MIT
#include "core/solve/tolerance_problem.h"

#include <algorithm>
#include <numbers>

namespace tailpoint::tolerance {
namespace {

using kernel::Vec;

Pt toPt(Vec v) {
    return {static_cast<double>(v.x), static_cast<double>(v.y)};
}

bool isUnknown(const Solved& solved, const BoxVector& vector) {
    return vector.index == solved.unknownVectors[0] || vector.index == solved.unknownVectors[1];
}

void scale(Span& span, int exponent) {
    span.least = std::ldexp(span.least, -exponent);
    span.nominal = std::ldexp(span.nominal, -exponent);
    span.greatest = std::ldexp(span.greatest, -exponent);
}

// The power of two next to the greatest magnitude of all.
int exponentOf(const Box& box) {
    long double greatest = 0;
    for (const BoxVector& vector : box.vectors) {
        greatest = std::fmax(greatest, vector.magnitude.greatest);
    }
    return greatest == 0 ? 0 : std::ilogb(greatest);
}

void addInputs(Problem& problem, std::size_t at) {
    const BoxVector& vector = problem.box.vectors[at];
    std::array<int, 2> own{-1, -1};
    if (vector.magnitudeGiven && !vector.magnitude.isPoint()) {
        own[0] = static_cast<int>(problem.inputs.size());
        const Span& span = vector.magnitude;
        problem.inputs.push_back({at, false, span.least, span.nominal, span.greatest});
    }
    const bool anyDirection =
        vector.magnitudeGiven && !vector.directionGiven && own[0] >= 0 && vector.magnitude.nominal == 0;
    if ((vector.directionGiven && !vector.direction.isPoint()) || anyDirection) {
        own[1] = static_cast<int>(problem.inputs.size());
        const Arc& arc = vector.direction;
        problem.inputs.push_back({at, true, arc.from, arc.nominal, arc.to});
    }
    problem.inputOf.push_back(own);
}

// A direction of a sector as the input's value; an end is the input's own to the last bit.
long double valueOf(const Input& input, double at, Turned turned) {
    const double turn = turned == Turned::yes ? std::numbers::pi : 0.0;
    if (at <= static_cast<double>(input.least) + turn) {
        return input.least;
    }
    if (at >= static_cast<double>(input.greatest) + turn) {
        return input.greatest;
    }
    return std::clamp(static_cast<long double>(at) - turn, input.least, input.greatest);
}

} // namespace

bool hasRest(const Solved& solved) {
    return solved.family == Family::oneUnknown && !solved.solutions.empty() && !isDirectionOfRest(solved);
}

bool isDirectionOfRest(const Solved& solved) {
    if (solved.family != Family::oneUnknown || solved.solutions.empty()) {
        return false;
    }
    const int index = solved.unknownVectors[0];
    const Solution& solution = solved.solutions.front();
    return (index == kSumIndex ? solution.sum : solution.forces[static_cast<std::size_t>(index)])
        .directionFound;
}

bool hasRange(const Solved& solved) {
    return solved.unknownVectors[0] != kNoVector;
}

Sector sectorOf(const BoxVector& vector, Turned turned) {
    const Arc& arc = vector.direction;
    const double turn = turned == Turned::yes ? std::numbers::pi : 0.0;
    const double sign = turned == Turned::yes ? -1.0 : 1.0;
    Sector sector;
    sector.least = static_cast<double>(vector.magnitude.least);
    sector.greatest = static_cast<double>(vector.magnitude.greatest);
    sector.from = static_cast<double>(arc.from) + turn;
    sector.to = static_cast<double>(arc.to) + turn;
    sector.atFrom = sign * toPt(arc.atFrom);
    sector.atTo = sign * toPt(arc.atTo);
    return sector;
}

Point Problem::nominal() const {
    Point point;
    point.reserve(inputs.size());
    for (const Input& input : inputs) {
        point.push_back(input.nominal);
    }
    return point;
}

long double Problem::magnitudeAt(const Point& point, std::size_t vector) const {
    const int input = inputOf[vector][0];
    return input < 0 ? box.vectors[vector].magnitude.nominal : point[static_cast<std::size_t>(input)];
}

Vec Problem::unitAt(const Point& point, std::size_t vector) const {
    const int input = inputOf[vector][1];
    const Arc& arc = box.vectors[vector].direction;
    const Vec unit = input < 0 ? arc.atNominal : arc.unitAt(point[static_cast<std::size_t>(input)]);
    return box.vectors[vector].index == kSumIndex ? -unit : unit;
}

Vec Problem::targetAt(const Point& point) const {
    Vec sum = fixed;
    for (const std::size_t vector : loose) {
        sum = sum + magnitudeAt(point, vector) * unitAt(point, vector);
    }
    const long double terms = static_cast<long double>(loose.size() + 1);
    return kernel::length(sum) <= kernel::kZeroBand * terms * scale ? Vec{} : -sum;
}

void Problem::place(Point& point, std::size_t vector, const Sector& part, Pt along, Turned turned,
                    bool inner) const {
    const Pt toward = inner ? -along : along;
    const double first = dot(part.atFrom, along);
    const double second = dot(part.atTo, along);
    const bool facing = part.faces(toward);
    if (const int input = inputOf[vector][0]; input >= 0) {
        const Input& own = inputs[static_cast<std::size_t>(input)];
        const bool most = facing ? !inner : std::max(first, second) > 0;
        point[static_cast<std::size_t>(input)] = most ? own.greatest : own.least;
    }
    if (const int input = inputOf[vector][1]; input >= 0) {
        double at = first >= second ? part.from : part.to;
        if (facing) {
            const double past = std::atan2(toward.y, toward.x) - part.middle();
            at = std::clamp(part.middle() + std::remainder(past, 2 * std::numbers::pi), part.from, part.to);
        }
        point[static_cast<std::size_t>(input)] = valueOf(inputs[static_cast<std::size_t>(input)], at, turned);
    }
}

Problem problemOf(const Sketch& sketch, const Solved& solved) {
    Problem problem;
    problem.box = boxOf(sketch);
    if (hasRest(solved)) {
        BoxVector rest;
        rest.index = kNoVector;
        rest.direction = wholeTurn(0);
        problem.box.vectors.push_back(rest);
    }
    problem.exponent = exponentOf(problem.box);
    kernel::VectorSum sum;
    for (std::size_t i = 0; i < problem.box.vectors.size(); ++i) {
        BoxVector& vector = problem.box.vectors[i];
        scale(vector.magnitude, problem.exponent);
        addInputs(problem, i);
        problem.scale += vector.magnitude.greatest;
        if (isUnknown(solved, vector)) {
            continue;
        }
        if (problem.inputOf[i][0] >= 0 || problem.inputOf[i][1] >= 0) {
            problem.loose.push_back(i);
            problem.sectors.push_back(sectorOf(vector, problem.turnedOf(i)));
        } else {
            const long double sign = vector.index == kSumIndex ? -1 : 1;
            sum.add((sign * vector.magnitude.nominal) * vector.direction.atNominal, vector.magnitude.nominal);
        }
    }
    problem.fixed = sum.settled();
    const double terms = static_cast<double>(problem.loose.size());
    problem.slack = static_cast<double>(problem.scale) * (0x1p-49 + terms * 0x1p-53);
    return problem;
}

} // namespace tailpoint::tolerance
