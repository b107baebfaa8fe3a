// SPDX-License-Identifier: MIT
// What is known before anything is found, and what a check puts together again.
#include "core/derive/writer.h"

namespace tailpoint {

namespace {

using deriving::Signed;
using deriving::Writer;

/// What is given in place of an answer that there is not.
Solved withoutAnswer(const Sketch& sketch, const Solved& solved) {
    Solved out = solved;
    Solution& given = out.solutions.emplace_back();
    for (const Force& force : sketch.forces)
        given.forces.push_back(asGiven(force, sketch));
    given.sum = asGiven(sketch.sum, sketch);
    return out;
}

bool isOneTriangle(const std::optional<Reduction>& reduction) {
    return reduction && !reduction->sought.empty() && (reduction->sought.size() > 1 || !reduction->addsUp());
}

bool isLong(const SolvedForce& vector) {
    return vector.direction && vector.magnitude > 0;
}

bool isSumAsked(const Sketch& sketch, const Solved& solved) {
    return solved.family == Family::closePolygon && !isGiven(sketch.sum.magnitude);
}

void writeSums(Writer& w, const std::vector<Signed>& terms) {
    std::array<std::vector<std::pair<Formula, int>>, 2> columns;
    for (const auto& [vector, sign] : terms) {
        columns[0].emplace_back(w.x(vector), sign);
        columns[1].emplace_back(w.y(vector), sign);
    }
    for (std::uint8_t axis = 0; axis < 2; ++axis)
        w.line({What::gap, kNobody, {}, 0, axis}, LineKind::check, deriving::total(std::move(columns[axis])));
}

/// By how much what the forces add up to differs from what their sum is to be.
void writeDifference(Writer& w) {
    const bool atRest = isEquilibrium(w.sketch) || !isLong(w.solvedVector(kSumVector));
    const auto gap = [](std::uint8_t part) { return QuantityId{What::gap, kNobody, {}, 0, part}; };
    if (!atRest) {
        w.line(gap(kDifferenceX), LineKind::elimination,
               sum(w.of(gap(0)), negative(w.of({What::x, kSumVector}))));
        w.line(gap(kDifferenceY), LineKind::elimination,
               sum(w.of(gap(1)), negative(w.of({What::y, kSumVector}))));
    }
    const Formula x = w.of(gap(atRest ? 0 : kDifferenceX)), y = w.of(gap(atRest ? 1 : kDifferenceY));
    const QuantityId square{What::square, kNobody, {}, 0, kDifference};
    w.line(square, LineKind::pythagoras, sum(power(x, 2), power(y, 2)));
    w.line(gap(kDifference), LineKind::elimination, root(w.of(square)));
}

} // namespace

SolvedForce asGiven(const Force& force, const Sketch& sketch) {
    SolvedForce given;
    given.name = force.name;
    given.magnitude = force.magnitude.value.value_or(0);
    const auto unit = unitVector(force.direction, sketch);
    if (!unit)
        return given;
    given.unit = {static_cast<double>(unit->cos), static_cast<double>(unit->sin)};
    given.vector = force.magnitude.value.value_or(1) * given.unit;
    given.direction = referredDirection(force.direction, sketch);
    return given;
}

Standing standingOf(const Solved& solved, VectorId vector, std::size_t solution) {
    Standing standing{vector, magnitudeId(vector), directionId(vector)};
    if (solution >= solved.solutions.size() || (vector.kind != VectorId::Kind::force && vector != kSumVector))
        return standing;
    const auto in = [&](std::size_t i) -> const SolvedForce& {
        return vector == kSumVector ? solved.solutions[i].sum : solved.solutions[i].forces[vector.index];
    };
    const bool both = solved.solutions.size() > 1;
    const auto answer = both ? static_cast<std::uint8_t>(solution + 1) : std::uint8_t{0};
    const SolvedForce& found = in(solution);
    if (found.magnitudeFound)
        standing.size.answer = answer;
    if (found.directionFound)
        standing.way.answer = answer;
    if (found.turned) {
        standing.way.part = 1;
        standing.way.answer = in(baseAnswer(solved)).turned ? std::uint8_t{0} : answer;
    }
    return standing;
}

Chain groundOf(const Sketch& sketch, const Solved& solved, const Things& things) {
    const bool isAnswered = !solved.solutions.empty();
    const Solved given = isAnswered ? Solved() : withoutAnswer(sketch, solved);
    Writer w(sketch, isAnswered ? solved : given, things, {});
    w.solution = isAnswered ? baseAnswer(solved) : 0;
    const auto tellWay = [&](VectorId vector) { // along a slope the angle waits for who needs it
        if (w.slopeOf(vector) == nullptr)
            w.way(vector);
    };
    for (std::size_t i = 0; i < sketch.forces.size(); ++i)
        tellWay(forceVector(i));
    tellWay(kSumVector);
    const auto reduction = reductionOf(sketch, solved);
    if (isOneTriangle(reduction)) {
        if (reduction->addsUp())
            deriving::writeKnown(w, *reduction);
        if (!isAnswered)
            deriving::writeFailure(w, *reduction);
    }
    deriving::collectGiven(w.chain);
    return std::move(w.chain);
}

Chain checkOf(const Sketch& sketch, const Solved& solved, const Things& things, std::size_t solution) {
    const bool isAnswered = solution < solved.solutions.size();
    const Solved given = isAnswered ? Solved() : withoutAnswer(sketch, solved);
    Writer w(sketch, isAnswered ? solved : given, things, {Route::Way::components, kNobody});
    w.solution = isAnswered ? solution : w.solved.solutions.size() - 1;
    std::vector<Signed> terms;
    for (std::size_t i = 0; i < sketch.forces.size(); ++i) {
        w.stand(standingOf(w.solved, forceVector(i), w.solution));
        if (isLong(w.solvedVector(forceVector(i))))
            terms.emplace_back(forceVector(i), 1);
    }
    w.stand(standingOf(w.solved, kSumVector, w.solution));
    for (const auto& [vector, sign] : terms)
        if (w.slopeOf(vector) == nullptr)
            w.fromX(vector);
    if (terms.empty())
        return std::move(w.chain);
    if (isSumAsked(sketch, solved)) {
        w.columnSums(kSumVector, terms);
        w.pythagoras(kSumVector);
        if (isLong(w.solvedVector(kSumVector)))
            w.wayFromComponents(kSumVector);
    } else {
        writeSums(w, terms);
        if (!isEquilibrium(sketch) && isLong(w.solvedVector(kSumVector))) {
            w.x(kSumVector);
            w.y(kSumVector);
        }
        if (!isAnswered)
            writeDifference(w);
    }
    deriving::collectGiven(w.chain);
    return std::move(w.chain);
}

Chain turnedCheckOf(const Sketch& sketch, const Solved& solved, const Things& things, std::size_t solution) {
    Writer w(sketch, solved, things, {Route::Way::components, kNobody});
    w.solution = solution;
    const VectorId axis = isSumAsked(sketch, solved) ? kSumVector : vectorId(solved.unknownVectors[0]);
    w.stand(standingOf(solved, axis, solution));
    const bool isLongSum = sketch.forces.size() > kMostInLine;
    std::array<std::vector<std::pair<Formula, int>>, 2> terms;
    const auto add = [&](VectorId vector, int sign) {
        w.stand(standingOf(solved, vector, solution));
        if (vector == axis || !isLong(w.solvedVector(vector)))
            return;
        const Formula from = sum(w.way(vector), negative(w.way(axis)));
        for (std::uint8_t part = 0; part < 2; ++part) {
            Formula term = product(w.size(vector), apply(part == 0 ? "cos" : "sin", from));
            if (isLongSum) { // each by itself
                const QuantityId component{What::along, vector, {}, 0, part};
                w.line(component, LineKind::check, std::move(term));
                term = w.of(component);
            }
            terms[part].emplace_back(std::move(term), sign);
        }
    };
    const bool isSum = axis == kSumVector; // a force makes up for what the others leave of the sum
    if (!isSum && !isEquilibrium(sketch))
        add(kSumVector, 1);
    for (std::size_t i = 0; i < sketch.forces.size(); ++i)
        add(forceVector(i), isSum ? 1 : -1);
    for (std::uint8_t part = 0; part < 2; ++part)
        if (!terms[part].empty())
            w.line(isSum ? QuantityId{What::gap, kNobody, {}, 0, static_cast<std::uint8_t>(part + 2)}
                         : QuantityId{What::along, axis, {}, 0, part},
                   LineKind::check, deriving::total(std::move(terms[part])));
    deriving::collectGiven(w.chain);
    return std::move(w.chain);
}

} // namespace tailpoint
