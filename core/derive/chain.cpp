// SPDX-License-Identifier: MIT
#include "core/derive/chain.h"

#include "core/construct/pairs.h"
#include "core/derive/writer.h"

#include <algorithm>

namespace tailpoint {

namespace {

using deriving::Writer;

bool isAnswered(const Solved& solved) {
    return !solved.solutions.empty() && solved.family != Family::check && solved.family != Family::unclear;
}

bool isResultantOfTwo(const Sketch& sketch, const Solved& solved) {
    return solved.family == Family::closePolygon && solved.unknownVectors[0] == kSumIndex &&
           sketch.forces.size() == 2;
}

/// Begun at either of the known sides, the greater one first.
void addTriangles(std::vector<Route>& routes, const Sketch& sketch, const Solved& solved,
                  const Writer& writer) {
    const auto reduction = reductionOf(sketch, solved);
    if (solved.family != Family::closePolygon) {
        routes.push_back({Route::Way::triangle, kNobody});
        return;
    }
    const auto [a, b] = Reduction::others(reduction->sought[0]);
    VectorId great = reduction->side[a], small = reduction->side[b];
    if (writer.solvedVector(great).magnitude < writer.solvedVector(small).magnitude)
        std::swap(great, small);
    routes.push_back({Route::Way::triangle, great});
    routes.push_back({Route::Way::triangle, small});
}

/// Symbols of quantities that no line before has given.
class GivenOnes {
public:
    explicit GivenOnes(Chain& chain) : m_chain(chain) {}

    void collect() {
        for (const Line& line : m_chain.lines) {
            for (const Case& one : line.cases) {
                for (const Formula& condition : one.when)
                    visit(condition);
                visit(one.formula);
            }
            m_seen.add(line.subject);
        }
    }

private:
    void visit(const Formula& formula) {
        if (formula.id.what != What::none && m_seen.contains(formula.id))
            return;
        if (formula.kind == FormulaKind::symbol && formula.id.what != What::none) {
            m_chain.given.push_back(formula.id);
            m_seen.add(formula.id);
        }
        for (const Formula& part : formula.parts)
            visit(part);
    }

    Chain& m_chain;
    QuantityIndex m_seen;
};

/// In an answer some line of action is found in the other sense.
bool isTurned(const Solution& solution) {
    return solution.sum.turned || std::any_of(solution.forces.begin(), solution.forces.end(),
                                              [](const SolvedForce& force) { return force.turned; });
}

} // namespace

namespace deriving {

void collectGiven(Chain& chain) {
    GivenOnes(chain).collect();
}

void writeSenses(Writer& w) {
    for (std::size_t i = 0; i < w.sketch.forces.size(); ++i)
        if (w.solvedVector(forceVector(i)).turned)
            w.turnRound(forceVector(i));
    if (w.solvedVector(kSumVector).turned)
        w.turnRound(kSumVector);
}

} // namespace deriving

std::size_t baseAnswer(const Solved& solved) {
    const auto& answers = solved.solutions;
    return answers.size() == 2 && isTurned(answers[0]) && !isTurned(answers[1]) ? 1 : 0;
}

std::vector<Route> routesOf(const Sketch& sketch, const Solved& solved) {
    std::vector<Route> routes;
    if (!isAnswered(solved))
        return routes;
    const Things things(sketch);
    Writer writer(sketch, solved, things, {});
    writer.solution = baseAnswer(solved);
    if (solved.family != Family::oneUnknown && deriving::hasTriangle(writer))
        addTriangles(routes, sketch, solved, writer);
    else if (isResultantOfTwo(sketch, solved))
        routes.push_back({Route::Way::triangle, kNobody});
    routes.push_back({Route::Way::components, kNobody});
    if (!pairsOf(sketch, solved).empty())
        routes.push_back({Route::Way::parallelograms, kNobody});
    return routes;
}

Chain chainOf(const Sketch& sketch, const Solved& solved, const Things& things, Route route) {
    Writer writer(sketch, solved, things, route);
    if (!isAnswered(solved))
        return std::move(writer.chain);
    writer.solution = baseAnswer(solved);
    switch (route.way) {
    case Route::Way::triangle:
        deriving::writeByTriangle(writer);
        break;
    case Route::Way::components:
        deriving::writeByComponents(writer);
        break;
    case Route::Way::parallelograms:
        deriving::writeByParallelograms(writer);
        break;
    }
    deriving::collectGiven(writer.chain);
    return std::move(writer.chain);
}

} // namespace tailpoint
