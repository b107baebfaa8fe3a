#include "ui/canvas/drawn.h"

#include "ui/canvas/force_edits.h"

#include <algorithm>

namespace tailpoint {

namespace {

/// Without an answer only what is wholly given can be drawn.
std::optional<Eigen::Vector2d> givenVector(const Force& force, const Sketch& sketch) {
    const std::optional<CosSin> unit = unitVector(force.direction, sketch);
    if (!unit || !force.magnitude.value) {
        return std::nullopt;
    }
    const auto m = static_cast<long double>(*force.magnitude.value);
    return Eigen::Vector2d(static_cast<double>(m * unit->cos), static_cast<double>(m * unit->sin));
}

std::optional<Eigen::Vector2d> shownVector(const Result& result, int vector) {
    if (result.chosen < result.solved.solutions.size()) {
        return solvedAt(result.solved.solutions[result.chosen], vector)->vector;
    }
    return givenVector(*forceAt(result.sketch, vector), result.sketch);
}

void addGhosts(std::vector<DrawnVector>& drawn, const Result& result) {
    for (std::size_t i = 0; i < result.solved.solutions.size(); ++i) {
        if (i == result.chosen) {
            continue;
        }
        for (const int vector : result.solved.unknownVectors) {
            if (const SolvedForce* other =
                    vector == kNoVector ? nullptr : solvedAt(result.solved.solutions[i], vector)) {
                drawn.push_back({vector, {0, 0}, other->vector, true});
            }
        }
    }
}

} // namespace

std::vector<DrawnVector> drawnVectors(const Result& result) {
    std::vector<DrawnVector> drawn;
    const auto add = [&](int vector) {
        if (const std::optional<Eigen::Vector2d> tip = shownVector(result, vector)) {
            drawn.push_back({vector, {0, 0}, *tip, false});
        }
    };
    for (std::size_t i = 0; i < result.sketch.forces.size(); ++i) {
        add(static_cast<int>(i));
    }
    add(kSumIndex);
    addGhosts(drawn, result);
    return drawn;
}

const DrawnVector* drawnOf(const std::vector<DrawnVector>& drawn, int vector) {
    const auto at = std::find_if(drawn.begin(), drawn.end(),
                                 [&](const DrawnVector& d) { return d.vector == vector && !d.ghost; });
    return at == drawn.end() ? nullptr : &*at;
}

} // namespace tailpoint
