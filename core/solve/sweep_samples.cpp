// SPDX-License-Identifier: MIT
#include "core/solve/sweep_curves.h"
#include "core/solve/sweep_extremes.h"

#include <algorithm>
#include <cmath>

namespace tailpoint {
namespace {

constexpr int kMostNarrowings = 1100; // from any distance to neighbouring doubles

/// From one place with an answer and one without to two neighbouring ones.
std::pair<double, double> endBetween(const SweepAnswers& answers, std::size_t branch, double with,
                                     double without) {
    for (int i = 0; i < kMostNarrowings; ++i) {
        const double middle = with + (without - with) / 2;
        if (middle == with || middle == without) {
            break;
        }
        (answers.at(middle)[branch].exists ? with : without) = middle;
    }
    return {with, without};
}

/// What is least just where an answer is about to be lost: the openness of the loci, a found magnitude.
std::optional<double> margin(const BranchPoint& point, const std::vector<Swept>& swept, std::size_t which) {
    if (!point.exists) {
        return std::nullopt;
    }
    if (which == 0) {
        return point.openness;
    }
    return swept[which - 1].kind == Swept::Kind::magnitude ? point.value[which - 1] : std::optional(1.0);
}

/// Whether what is least at the middle one of three samples could be nothing between them. It falls like a
/// root toward the end of an answer, so by more than the last fall.
bool mayVanish(double before, double here, double after) {
    constexpr double kSteeper = 4;
    return here <= before && here <= after && here <= kSteeper * (std::max(before, after) - here);
}

} // namespace

SweepSamples::SweepSamples(const SweepAnswers& answers, const SweepBounds& bounds,
                           const std::vector<double>& steps)
    : m_steps(steps.size()) {
    const std::size_t parts = (kSweepGrid + steps.size() - 2) / (steps.size() - 1);
    m_samples.reserve((steps.size() - 1) * parts + 16);
    for (std::size_t i = 0; i < steps.size(); ++i) {
        add(answers, steps[i], i);
        for (std::size_t part = 1; part < parts && i + 1 < steps.size(); ++part) {
            const double share = static_cast<double>(part) / static_cast<double>(parts);
            add(answers, steps[i] + share * (steps[i + 1] - steps[i]));
        }
    }
    m_spacing = std::fabs(steps.back() - steps.front()) / static_cast<double>((steps.size() - 1) * parts);
    sort();
    addTurns(answers, bounds);
    for (const std::size_t branch : {std::size_t{0}, std::size_t{1}}) {
        addHiddenGaps(answers, branch);
        addEnds(answers, branch);
    }
}

void SweepSamples::add(const SweepAnswers& answers, double at, std::size_t step) {
    m_samples.push_back({at, step, answers.at(at)});
}

/// Of two samples at one place the step stays.
void SweepSamples::sort() {
    std::stable_sort(m_samples.begin(), m_samples.end(), [](const SweepSample& a, const SweepSample& b) {
        return a.at != b.at ? a.at < b.at : a.step != kNoStep && b.step == kNoStep;
    });
    const auto isSame = [](const SweepSample& a, const SweepSample& b) {
        return a.at == b.at && b.step == kNoStep;
    };
    m_samples.erase(std::unique(m_samples.begin(), m_samples.end(), isSame), m_samples.end());
}

void SweepSamples::addTurns(const SweepAnswers& answers, const SweepBounds& bounds) {
    std::vector<double> grid;
    grid.reserve(m_samples.size());
    for (const SweepSample& sample : m_samples) {
        grid.push_back(sample.at);
    }
    const SweepBounds::Turns turns = bounds.turns(grid);
    m_isProven = turns.isAll;
    for (const double place : turns.places) {
        add(answers, place);
    }
    sort();
}

void SweepSamples::addHiddenGaps(const SweepAnswers& answers, std::size_t branch) {
    const auto& swept = answers.swept();
    std::vector<double> missing;
    for (std::size_t which = 0; which <= swept.size(); ++which) {
        const auto at = [&](const SweepSample& sample) {
            return margin(sample.branches[branch], swept, which);
        };
        for (std::size_t i = 1; i + 1 < m_samples.size(); ++i) {
            const auto before = at(m_samples[i - 1]), here = at(m_samples[i]), after = at(m_samples[i + 1]);
            if (!before || !here || !after || !mayVanish(*before, *here, *after)) {
                continue;
            }
            const Lowest lowest =
                lowestBetween([&](double place) { return margin(answers.at(place)[branch], swept, which); },
                              m_samples[i - 1].at, m_samples[i].at, m_samples[i + 1].at);
            if (lowest.missing) {
                missing.push_back(*lowest.missing);
            }
        }
    }
    for (const double place : missing) {
        add(answers, place);
    }
    sort();
}

void SweepSamples::addEnds(const SweepAnswers& answers, std::size_t branch) {
    std::vector<double> places;
    for (std::size_t i = 1; i < m_samples.size(); ++i) {
        const bool before = m_samples[i - 1].branches[branch].exists,
                   here = m_samples[i].branches[branch].exists;
        if (before != here) {
            const auto [with, without] = endBetween(answers, branch, m_samples[before ? i - 1 : i].at,
                                                    m_samples[before ? i : i - 1].at);
            places.insert(places.end(), {with, without});
        }
    }
    for (const double place : places) {
        add(answers, place);
    }
    sort();
}

std::vector<Gap> SweepSamples::gaps() const {
    std::vector<Gap> gaps;
    bool isOpen = false;
    for (const SweepSample& sample : m_samples) {
        const bool exists = sample.branches[0].exists || sample.branches[1].exists;
        if (!exists && !isOpen) {
            gaps.push_back({sample.at, sample.at});
        } else if (!exists) {
            gaps.back().to = sample.at;
        }
        isOpen = !exists;
    }
    return gaps;
}

} // namespace tailpoint
