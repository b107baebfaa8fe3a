// SPDX-License-Identifier: MIT
#include "core/figure/case_arrows.h"

#include "core/figure/drawing.h"

#include <algorithm>

namespace tailpoint {

namespace {

/// Tips so near to each other, by the longer of the two, are one.
constexpr double kSame = 1e-9;
constexpr double kLabel = 0.85; ///< of an angle's label
constexpr double kHead = 7;     ///< points
constexpr double kThin = 0.75;  ///< by the construction's strokes

bool areOne(const Eigen::Vector2d& a, const Eigen::Vector2d& b) {
    return (a - b).norm() <= kSame * std::max(a.norm(), b.norm());
}

Vectors vectorsIn(const CaseState& state, std::size_t answer) {
    const std::size_t count = state.solved.solutions.size();
    return vectorsOf(state.sketch, state.solved, answer < count ? answer : 0);
}

void take(std::vector<CaseArrow>& arrows, VectorId of, const Eigen::Vector2d& vector,
          const std::string& name) {
    const auto known = std::find_if(arrows.begin(), arrows.end(), [&](const CaseArrow& arrow) {
        return arrow.of == of && areOne(arrow.vector, vector);
    });
    if (known == arrows.end())
        arrows.push_back({of, vector, name});
    else
        known->names += ", " + name;
}

} // namespace

std::vector<CaseArrow> caseArrows(const std::vector<CaseState>& states, std::size_t shown,
                                  std::size_t answer) {
    std::vector<CaseArrow> arrows;
    const Vectors drawn = vectorsIn(states[shown], answer);
    const auto compare = [&](const PlainVector& other, const PlainVector& own, VectorId of,
                             const std::string& name) {
        const bool isSeen = other.complete() && other.magnitude > 0;
        if (isSeen && !(own.complete() && areOne(other.vector, own.vector)))
            take(arrows, of, other.vector, name);
    };
    for (std::size_t s = 0; s < states.size(); ++s) {
        if (s == shown)
            continue;
        const Vectors other = vectorsIn(states[s], answer);
        for (std::size_t i = 0; i < other.forces.size(); ++i)
            compare(other.forces[i], drawn.forces[i], forceVector(i), states[s].name);
        compare(other.sum, drawn.sum, kSumVector, states[s].name);
    }
    return arrows;
}

void drawCases(Drawing& d) {
    if (!d.shows(Stage::found) || d.options.alone)
        return;
    for (std::size_t i = 0; i < d.options.cases.size(); ++i) {
        const CaseArrow& arrow = d.options.cases[i];
        const std::string name = d.things.name(arrow.of);
        d.add(Role::construction, "case-" + std::to_string(i), {"Case " + arrow.names + ": " + name, {}});
        Group& group = d.figure.list.groups.back();
        const Point tip = d.view.toSheet(arrow.vector);
        const double long_ = length(tip - d.common()), width = d.weight(kThin * d.style.constructionWidth);
        group.items.emplace_back(line(Role::construction, d.common(), tip, width, Dash::dashed));
        addHead(group.items, Role::construction, tip, unitFrom(d.common(), tip),
                std::min(kHead * d.factor, 0.4 * long_), Head::small, width);
        Runs label = symbolRuns(d.things.symbol(arrow.of));
        const Runs names = plainRuns(", " + arrow.names);
        label.insert(label.end(), names.begin(), names.end());
        d.ask(Spot{tip, 4 * d.factor}, Role::label, kLabel * d.style.angleSize, std::move(label)).optional =
            true;
    }
}

} // namespace tailpoint
