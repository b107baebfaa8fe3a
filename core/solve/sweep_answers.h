// SPDX-License-Identifier: MIT
// The answers at one place of a sweep, each in its own branch. Used by sweep() only.
#pragma once

#include "core/solve/sweep.h"

#include <array>

namespace tailpoint {

inline constexpr std::size_t kMostSwept = 5; ///< two vectors wholly found, and the larger magnitude

/// An answer at one place: a value a curve.
struct BranchPoint {
    std::array<std::optional<double>, kMostSwept> value;
    bool exists = false;
    double openness = 1; ///< sine of the angle at which the two loci cross: 0 where they touch
};
using Branches = std::array<BranchPoint, 2>;

class SweepAnswers {
public:
    SweepAnswers(const Sketch& sketch, const SweepRange& range);

    /// What the curves are of; `answer` is 0.
    const std::vector<Swept>& swept() const { return m_swept; }
    Branches at(double value) const;
    /// Which branch holds the answer that Solved has first, at a place with two.
    std::size_t firstBranch(double value) const;
    double scale() const { return m_scale; } ///< sum of the given magnitudes, the varied one at its largest
    double turn() const { return turnIn(m_sketch.angleUnit); }

private:
    int sideOf(const Sketch& sketch, const Solved& solved, const Solution& solution, double& openness) const;
    BranchPoint pointOf(const Solution& solution) const;

    Sketch m_sketch;
    Scalar m_varied;
    std::vector<Swept> m_swept;
    double m_scale = 0;
    bool m_isBeyond = false; ///< more is to be found than can be, whatever the value
};

} // namespace tailpoint
