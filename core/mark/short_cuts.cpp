// SPDX-License-Identifier: MIT
// Short cuts: the slips that have a chain of one line of their own.
#include "core/mark/rewriting.h"

#include "core/formula/turns.h"
#include "core/quantity/decimals.h"

#include <algorithm>

namespace tailpoint::marking::short_cuts {

namespace {

/// Vectors with a given magnitude that is not nothing.
std::vector<VectorId> withMagnitude(const Sketch& sketch) {
    std::vector<VectorId> all;
    for (const VectorId vector : vectorsOf(sketch))
        if (const auto& value = vectorOf(sketch, vector).magnitude.value; value && *value > 0)
            all.push_back(vector);
    return all;
}

Formula symbolOf(const Question& question, const QuantityId& id) {
    return question.things.formula(id);
}
Formula size(const Question& question, VectorId vector) {
    return symbolOf(question, magnitudeId(vector));
}
Formula way(const Question& question, VectorId vector) {
    return symbolOf(question, directionId(vector));
}

/// The vector of which all is sought.
std::optional<VectorId> soughtWhole(const Question& question) {
    return question.own.solved.family == Family::closePolygon
               ? std::optional(vectorId(question.own.solved.unknownVectors[0]))
               : std::nullopt;
}

bool isResultantOfTwo(const Question& question) {
    return soughtWhole(question) == kSumVector && question.sketch().forces.size() == 2;
}

/// A load that hangs straight down or pulls straight up from two others, all at rest.
struct Hung {
    VectorId load;
    std::array<VectorId, 2> ropes;
    std::array<Formula, 2> angles; ///< of the ropes to the horizontal
};
std::optional<Hung> hungOf(const Question& question) {
    const Sketch& sketch = question.sketch();
    const auto given = withMagnitude(sketch);
    if (question.own.solved.family != Family::twoMagnitudes || !isEquilibrium(sketch) ||
        sketch.forces.size() != 3 || given.size() != 1)
        return std::nullopt;
    const auto load = unitVector(vectorOf(sketch, given[0]).direction, sketch);
    if (!load || std::fabs(load->cos) > 1e-9L)
        return std::nullopt;
    Hung hung{given[0], {}, {}};
    for (std::size_t i = 0; i < 2; ++i) {
        hung.ropes[i] = vectorId(question.own.solved.unknownVectors[i]);
        const auto rope = unitVector(vectorOf(sketch, hung.ropes[i]).direction, sketch);
        if (!rope || rope->sin == 0)
            return std::nullopt;
        const auto angle = directionOf(std::fabs(rope->cos), std::fabs(rope->sin), sketch.angleUnit);
        hung.angles[i] = number(*angle, shortest(*angle), halfTurn(sketch.angleUnit).sub);
    }
    return hung;
}

ShortCut cut(VectorId of, VectorId with, std::vector<std::pair<QuantityId, Formula>> gives) {
    return {std::move(gives), of, with};
}

} // namespace

std::vector<ShortCut> magnitudesAdded(const Question& question) {
    const auto sought = soughtWhole(question);
    const auto given = withMagnitude(question.sketch());
    if (!sought || given.size() < 2)
        return {};
    std::vector<Formula> terms;
    for (const VectorId vector : given)
        terms.push_back(size(question, vector));
    return {cut(given[0], given[1], {{magnitudeId(*sought), sumOf(std::move(terms))}})};
}

std::vector<ShortCut> magnitudesSubtracted(const Question& question) {
    const auto sought = soughtWhole(question);
    const auto given = withMagnitude(question.sketch());
    if (!sought || given.size() != 2)
        return {};
    return {
        cut(given[0], given[1],
            {{magnitudeId(*sought), absolute(less(size(question, given[0]), size(question, given[1])))}})};
}

std::vector<ShortCut> directionAveraged(const Question& question) {
    if (!isResultantOfTwo(question))
        return {};
    const VectorId a = forceVector(0), b = forceVector(1);
    const Formula first = way(question, a), second = way(question, b);
    const Formula p = size(question, a), q = size(question, b);
    return {
        cut(a, b, {{directionId(kSumVector), over(sum(first, second), count(2))}}),
        cut(a, b, {{directionId(kSumVector), over(sum(product(p, first), product(q, second)), sum(p, q))}})};
}

std::vector<ShortCut> halvedLoad(const Question& question) {
    const auto hung = hungOf(question);
    if (!hung)
        return {};
    const Formula part = over(size(question, hung->load), count(2));
    return {
        cut(hung->load, kNobody, {{magnitudeId(hung->ropes[0]), part}, {magnitudeId(hung->ropes[1]), part}})};
}

std::vector<ShortCut> halfLoadEach(const Question& question) {
    const auto hung = hungOf(question);
    if (!hung)
        return {};
    const Formula part = over(size(question, hung->load), count(2));
    std::vector<std::pair<QuantityId, Formula>> divided, multiplied;
    for (std::size_t i = 0; i < 2; ++i) {
        const Formula sine = apply("sin", hung->angles[i]);
        divided.emplace_back(magnitudeId(hung->ropes[i]), over(part, sine));
        multiplied.emplace_back(magnitudeId(hung->ropes[i]), product(part, sine));
    }
    return {cut(hung->load, kNobody, std::move(divided)), cut(hung->load, kNobody, std::move(multiplied))};
}

std::vector<ShortCut> equalTensions(const Question& question) {
    const auto hung = hungOf(question);
    if (!hung)
        return {};
    const Formula each =
        over(size(question, hung->load), sum(apply("sin", hung->angles[0]), apply("sin", hung->angles[1])));
    return {
        cut(hung->load, kNobody, {{magnitudeId(hung->ropes[0]), each}, {magnitudeId(hung->ropes[1]), each}})};
}

std::vector<ShortCut> answersExchanged(const Question& question) {
    std::vector<ShortCut> all;
    const auto isAngleOfTriangle = [&](std::size_t quantity) {
        return question.quantities[quantity].id.what == What::opposite;
    };
    for (std::size_t i = 0; i < question.quantities.size(); ++i)
        for (std::size_t j = i + 1; j < question.quantities.size(); ++j) {
            const bool areAsked = j < question.asked;
            if (!areAsked && !(isAngleOfTriangle(i) && isAngleOfTriangle(j)))
                continue;
            for (std::size_t answer = 0; answer < question.answers; ++answer) {
                const Answerable &a = question.quantities[i], &b = question.quantities[j];
                if (a.dimension != b.dimension)
                    continue;
                const QuantityId first = question.ownId(question.cell(i, answer)),
                                 second = question.ownId(question.cell(j, answer));
                all.push_back(
                    cut(a.id.of, b.id.of,
                        {{first, symbolOf(question, second)}, {second, symbolOf(question, first)}}));
            }
        }
    return all;
}

std::vector<ShortCut> smallestToTheForce(const Question& question) {
    const Solved& solved = question.own.solved;
    const auto reduction = reductionOf(question.sketch(), solved);
    if (solved.family != Family::smallestForce || !reduction || reduction->sought.size() != 2 ||
        (solved.unknownVectors[1] != kSumIndex && !reduction->loop))
        return {};
    const VectorId known = reduction->side[reduction->knownSide()];
    VectorId leg = vectorId(solved.unknownVectors[0]), line = vectorId(solved.unknownVectors[1]);
    if (question.things.name(leg) != *question.sketch().smallest)
        std::swap(leg, line);
    const Solution& answer = solved.solutions.front();
    const SolvedForce& along = line == kSumVector ? answer.sum : answer.forces[line.index];
    Eigen::Vector2d k(0, 0);
    if (known != kKnownVector)
        k = known == kSumVector ? answer.sum.vector : answer.forces[known.index].vector;
    else
        k = solved.knownSum;
    const double toLine = line == kSumVector ? 1 : -1; // at rest the other force leads back
    const double turn = toLine * (k.x() * along.unit.y() - k.y() * along.unit.x()); // towards the line
    const bool up = (turn > 0) == (question.sketch().reference.sense == Sense::ccw);
    const Formula angle = symbolOf(question, {What::opposite, leg}),
                  quarter = quarterTurn(question.sketch().angleUnit), from = way(question, known);
    return {cut(leg, known,
                {{magnitudeId(leg), absolute(product(size(question, known), apply("tan", angle)))},
                 {directionId(leg), up ? sum(from, quarter) : less(from, quarter)},
                 {magnitudeId(line), absolute(over(size(question, known), apply("cos", angle)))}})};
}

std::vector<ShortCut> answersMixed(const Question& question) {
    std::vector<ShortCut> all;
    for (std::size_t i = 0; question.answers == 2 && i < question.asked; ++i)
        for (std::size_t answer = 0; answer < 2; ++answer)
            all.push_back(cut(question.quantities[i].id.of, kNobody,
                              {{question.ownId(question.cell(i, answer)),
                                symbolOf(question, question.ownId(question.cell(i, 1 - answer)))}}));
    return all;
}

} // namespace tailpoint::marking::short_cuts
