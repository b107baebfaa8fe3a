// SPDX-License-Identifier: MIT
// What stands between the answers at single places and the curves of a sweep: samples, dense where answers
// begin and end, and the curves through them. Used by sweep() only.
#pragma once

#include "core/solve/sweep_answers.h"
#include "core/solve/sweep_bounds.h"

#include <cstddef>

namespace tailpoint {

inline constexpr std::size_t kNoStep = static_cast<std::size_t>(-1);

struct SweepSample {
    double at = 0;
    std::size_t step = kNoStep; ///< which of the steps it is
    Branches branches;
};

/// Samples from the range's lower end up: the steps, more between them up to kSweepGrid parts, both sides of
/// wherever a curve can turn, begin or end, and of every end of a gap the last place with an answer and the
/// first without.
class SweepSamples {
public:
    /// `steps`: at least two, rising or falling.
    SweepSamples(const SweepAnswers& answers, const SweepBounds& bounds, const std::vector<double>& steps);
    const std::vector<SweepSample>& all() const { return m_samples; }
    std::size_t steps() const { return m_steps; }
    double spacing() const { return m_spacing; } ///< of the grid
    std::vector<Gap> gaps() const;               ///< where no branch has an answer
    bool isProven() const { return m_isProven; } ///< as in Sweep

private:
    void add(const SweepAnswers& answers, double at, std::size_t step = kNoStep);
    void sort();
    void addTurns(const SweepAnswers& answers, const SweepBounds& bounds);
    void addHiddenGaps(const SweepAnswers& answers, std::size_t branch);
    void addEnds(const SweepAnswers& answers, std::size_t branch);

    std::vector<SweepSample> m_samples;
    std::size_t m_steps = 0;
    double m_spacing = 0;
    bool m_isProven = true;
};

std::vector<Curve> curvesOf(const SweepAnswers& answers, const SweepSamples& samples);

} // namespace tailpoint
