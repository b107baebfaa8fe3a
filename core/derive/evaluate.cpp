// SPDX-License-Identifier: MIT
// A chain's numbers: line by line, each decided anew.
#include "core/derive/chain.h"
#include "core/derive/first_case.h"

#include <algorithm>

namespace tailpoint {

namespace {

const Force& givenVector(const Sketch& sketch, VectorId vector) {
    return vector == kSumVector ? sketch.sum : sketch.forces[vector.index];
}

std::optional<double> givenValue(const QuantityId& quantity, const Sketch& sketch) {
    const Force& vector = givenVector(sketch, quantity.of);
    return quantity.what == What::magnitude ? vector.magnitude.value
                                            : referredDirection(vector.direction, sketch);
}

} // namespace

Values givenValues(const Chain& chain, const Sketch& sketch) {
    Values values;
    values.reserve(chain.given.size() + chain.lines.size());
    for (const QuantityId& quantity : chain.given)
        if (const auto value = givenValue(quantity, sketch))
            values.set(quantity, *value);
    return values;
}

Overrides solvedValues(const Sketch& sketch, const Solved& solved) {
    Overrides values;
    const bool both = solved.solutions.size() > 1;
    for (std::size_t i = 0; i < solved.solutions.size(); ++i) {
        const auto answer = both ? static_cast<std::uint8_t>(i + 1) : std::uint8_t{0};
        const auto add = [&](VectorId vector, const SolvedForce& found) {
            if (found.magnitudeFound)
                values.emplace_back(magnitudeId(vector, answer), found.magnitude);
            if (found.directionFound && found.direction)
                values.emplace_back(directionId(vector, answer), *found.direction);
        };
        for (std::size_t f = 0; f < sketch.forces.size(); ++f)
            add(forceVector(f), solved.solutions[i].forces[f]);
        add(kSumVector, solved.solutions[i].sum);
    }
    return values;
}

std::pair<std::uint8_t, std::optional<long double>> evaluateLine(const Line& line, AngleUnit unit,
                                                                 const Values& values) {
    return evaluateLine(line, unit, [&values](const Formula& part) { return values.at(part.id); });
}

std::pair<std::uint8_t, std::optional<long double>> evaluateLine(const Line& line, AngleUnit unit,
                                                                 const SymbolLookup& lookUp) {
    const std::uint8_t taken =
        firstCase(line.cases, [&](const Formula& condition) { return holds(condition, unit, lookUp); });
    if (taken == kNoCase)
        return {taken, std::nullopt};
    return {taken, evaluate(line.cases[taken].formula, unit, lookUp)};
}

Values evaluate(const Chain& chain, const Values& given, const Overrides& overrides) {
    Values values = given;
    values.reserve(given.size() + chain.lines.size());
    values.taken.reserve(chain.lines.size());
    for (const Line& line : chain.lines) {
        const auto [taken, computed] = evaluateLine(line, chain.unit, values);
        values.taken.push_back(taken);
        const auto put = std::find_if(overrides.begin(), overrides.end(),
                                      [&](const auto& override) { return override.first == line.subject; });
        if (const auto value = put != overrides.end() ? std::optional(put->second) : computed)
            values.set(line.subject, *value);
    }
    return values;
}

} // namespace tailpoint
