// SPDX-License-Identifier: MIT
#include "core/solve/sweep_answers.h"

#include "core/solve/question.h"

#include <algorithm>
#include <cmath>

namespace tailpoint {
namespace {

bool isToFind(const Force& force, Swept::Kind kind) {
    return kind == Swept::Kind::magnitude ? !isGiven(force.magnitude)
                                          : !isGiven(force.direction) && force.magnitude.value != 0.0;
}

/// Magnitudes, their larger, directions: the order of the curves.
std::vector<Swept> sweptOf(const Sketch& sketch) {
    const Solved question = asked(sketch);
    std::vector<Swept> all;
    for (const auto kind : {Swept::Kind::magnitude, Swept::Kind::direction}) {
        for (const int vector : question.unknownVectors) {
            if (vector != kNoVector && isToFind(vectorAt(sketch, vector), kind)) {
                all.push_back({kind, vector, 0});
            }
        }
        if (kind == Swept::Kind::magnitude && question.family == Family::twoMagnitudes && all.size() == 2) {
            all.push_back({Swept::Kind::larger, all.front().vector, 0});
        }
    }
    return all;
}

double givenMagnitudes(const Sketch& sketch) {
    double all = sketch.sum.magnitude.value.value_or(0);
    for (const Force& force : sketch.forces) {
        all += force.magnitude.value.value_or(0);
    }
    return all;
}

double crossOf(const Eigen::Vector2d& a, const Eigen::Vector2d& b) {
    return a.x() * b.y() - a.y() * b.x();
}

/// Magnitudes that run through zero on the line give the same unit vector on both sides of it.
Eigen::Vector2d lineOf(const Sketch& sketch, int vector) {
    const auto unit = unitVector(vectorAt(sketch, vector).direction, sketch);
    return unit ? Eigen::Vector2d(static_cast<double>(unit->cos), static_cast<double>(unit->sin))
                : Eigen::Vector2d(1, 0);
}

} // namespace

SweepAnswers::SweepAnswers(const Sketch& sketch, const SweepRange& range)
    : m_sketch(sketch), m_varied(range.varied), m_swept(sweptOf(sketch)), m_scale(givenMagnitudes(sketch)) {
    const bool staysAsked = isGiven(vectorAt(sketch, m_varied.vector).direction); // even where it is zero
    m_isBeyond = !sketch.smallest && asked(sketch).unknowns.size() > 2 && staysAsked;
    if (!m_varied.isDirection) {
        m_scale += std::max(range.from, range.to) - presentValue(sketch, m_varied).value_or(0);
    }
}

/// On which side the loci cross. It goes on without a jump while a value is varied and changes only where
/// they touch, so that it tells one answer from the other. 0: there is but one, or they touch.
int SweepAnswers::sideOf(const Sketch& sketch, const Solved& solved, const Solution& solution,
                         double& openness) const {
    const auto [first, second] = solved.unknownVectors;
    const auto unitOf = [&](int vector) { return vectorIn(solution, vector).unit; };
    double crossing = 0;
    if (solved.family == Family::twoDirections) {
        crossing = crossOf(unitOf(first), unitOf(second));
    } else if (solved.family == Family::magnitudeAndDirection) {
        const bool isFirstLine = !isGiven(vectorAt(sketch, first).magnitude);
        const int line = isFirstLine ? first : second, circle = isFirstLine ? second : first;
        crossing = unitOf(circle).dot(lineOf(sketch, line));
    } else {
        return 0;
    }
    openness = std::fabs(crossing);
    return solved.tangent || crossing == 0 ? 0 : crossing > 0 ? 1 : -1;
}

BranchPoint SweepAnswers::pointOf(const Solution& solution) const {
    BranchPoint point;
    point.exists = true;
    double larger = 0;
    for (const Swept& swept : m_swept) {
        if (swept.kind == Swept::Kind::magnitude) {
            larger = std::max(larger, vectorIn(solution, swept.vector).magnitude);
        }
    }
    for (std::size_t i = 0; i < m_swept.size(); ++i) {
        const SolvedForce& vector = vectorIn(solution, m_swept[i].vector);
        switch (m_swept[i].kind) {
        case Swept::Kind::magnitude:
            point.value[i] = vector.magnitude;
            break;
        case Swept::Kind::larger:
            point.value[i] = larger;
            break;
        case Swept::Kind::direction:
            point.value[i] = vector.direction;
            break;
        }
    }
    return point;
}

Branches SweepAnswers::at(double value) const {
    if (m_isBeyond) {
        return {};
    }
    const Sketch sketch = withValue(m_sketch, m_varied, value);
    const Solved solved = solveInSilence(sketch);
    Branches branches;
    for (const Solution& solution : solved.solutions) {
        BranchPoint point = pointOf(solution);
        std::size_t branch = sideOf(sketch, solved, solution, point.openness) < 0 ? 1 : 0;
        branch = branches[branch].exists ? 1 - branch : branch;
        branches[branch] = point;
        if (solved.tangent) {
            branches[1 - branch] = point;
        }
    }
    return branches;
}

std::size_t SweepAnswers::firstBranch(double value) const {
    const Sketch sketch = withValue(m_sketch, m_varied, value);
    const Solved solved = solve(sketch);
    double openness = 1;
    return !solved.solutions.empty() && sideOf(sketch, solved, solved.solutions.front(), openness) < 0 ? 1
                                                                                                       : 0;
}

} // namespace tailpoint
