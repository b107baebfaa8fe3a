// SPDX-License-Identifier: MIT
#include "core/solve/sweep_curves.h"

#include "core/solve/sweep_extremes.h"

#include <algorithm>
#include <cmath>
#include <iterator>

namespace tailpoint {
namespace {

/// A magnitude beyond this times all that is given grows without bound: lines of action become parallel. The
/// solver takes for parallel what would make it 2^49 times (kParallelBand).
constexpr double kUnbounded = 1e9;
/// A direction that turns by more than this part of a turn between two samples is followed more closely.
constexpr double kFollowedTurn = 0.2;
constexpr int kMostFollowed = 52;
/// A direction that turns by more than this part of a turn within nothing jumps: nearer to the place than
/// this part of the samples' distance rounding would tell it.
constexpr double kJump = 0.125, kNearJump = 1e-6;
/// So many candidates for a least are closed in upon: the most promising.
constexpr std::size_t kMostRefined = 6;

/// One curve in the making: the values of one quantity in one branch.
class Tracer {
public:
    Tracer(const SweepAnswers& answers, const SweepSamples& samples, std::size_t which, std::size_t branch)
        : m_answers(answers), m_samples(samples), m_which(which), m_branch(branch),
          m_isDirection(answers.swept()[which].kind == Swept::Kind::direction) {}

    Curve traced() {
        m_curve.of = m_answers.swept()[m_which];
        m_curve.values.resize(m_samples.steps());
        for (const SweepSample& sample : m_samples.all()) {
            take(sample);
        }
        for (const bool greatest : {false, true}) {
            findExtreme(greatest);
        }
        for (const double pole : m_poles) {
            splitAt(pole);
        }
        return std::move(m_curve);
    }

private:
    std::optional<double> valueAt(double at) const { return m_answers.at(at)[m_branch].value[m_which]; }

    double unwrapped(double value, double reference) const {
        const double turn = m_answers.turn();
        return m_isDirection ? value + turn * std::round((reference - value) / turn) : value;
    }

    /// The value at `to` as it comes out when one goes there from `from`; empty where it jumps.
    std::optional<double> followed(CurvePoint from, double to, double raw, int depth) const {
        const double direct = unwrapped(raw, from.value);
        if (!m_isDirection || std::fabs(direct - from.value) <= kFollowedTurn * m_answers.turn()) {
            return direct;
        }
        const double middle = from.at + (to - from.at) / 2;
        const auto there = valueAt(middle);
        if (depth == 0 || middle == from.at || middle == to || !there) {
            return std::nullopt;
        }
        const auto half = followed(from, middle, *there, depth - 1);
        return half ? followed({middle, *half}, to, raw, depth - 1) : std::nullopt;
    }

    std::vector<CurvePoint>& piece() { return m_curve.pieces.back(); }

    void begin(double at, double raw) {
        const double reference = m_curve.pieces.empty() ? raw : piece().back().value;
        m_curve.pieces.push_back({{at, unwrapped(raw, reference)}});
    }

    /// A direction jumps where its vector is zero: both sides are closed in upon as far as it is well told.
    void jump(double at, double raw) {
        while (at - piece().back().at > kNearJump * m_samples.spacing()) {
            const CurvePoint before = piece().back();
            const double middle = before.at + (at - before.at) / 2;
            if (middle <= before.at || middle >= at) { // neighbours
                break;
            }
            const auto there = valueAt(middle);
            if (!there) {
                closeBefore(middle);
                return;
            }
            const double value = unwrapped(*there, before.value);
            if (std::fabs(value - before.value) < kJump * m_answers.turn()) {
                piece().push_back({middle, value});
            } else {
                at = middle;
                raw = *there;
            }
        }
        begin(at, raw);
    }

    /// The same where the zero is met: the curve ends beside it and begins anew.
    void closeBefore(double at) {
        const double near = kNearJump * m_samples.spacing(), end = m_samples.all().back().at;
        const auto before = valueAt(at - near), behind = at + near < end ? valueAt(at + near) : std::nullopt;
        if (m_isOpen && before && piece().back().at < at - near) {
            piece().push_back({at - near, unwrapped(*before, piece().back().value)});
        }
        if (behind) {
            begin(at + near, *behind);
        }
        m_isOpen = behind.has_value();
    }

    void take(const SweepSample& sample) {
        const BranchPoint& point = sample.branches[m_branch];
        const auto raw = point.value[m_which];
        if (!raw) {
            if (point.exists) {
                closeBefore(sample.at);
            }
            m_isOpen = m_isOpen && point.exists;
            return;
        }
        if (!m_isOpen) {
            begin(sample.at, *raw);
        } else if (sample.at <= piece().back().at) {
            // too near to a jump: the curve has begun anew behind it
        } else if (const auto value = followed(piece().back(), sample.at, *raw, kMostFollowed)) {
            piece().push_back({sample.at, *value});
        } else {
            jump(sample.at, *raw);
            if (piece().back().at < sample.at) {
                piece().push_back({sample.at, unwrapped(*raw, piece().back().value)});
            }
        }
        m_isOpen = true;
        if (sample.step != kNoStep) {
            m_curve.values[sample.step] = piece().back().value;
        }
    }

    bool isUnbounded(double value) const { return !m_isDirection && value > kUnbounded * m_answers.scale(); }

    Extreme::Where placeOf(const std::vector<CurvePoint>& piece, std::size_t i) const {
        const auto& all = m_samples.all();
        if (piece[i].at == all.front().at || piece[i].at == all.back().at) {
            return Extreme::Where::endOfRange;
        }
        return i == 0 || i + 1 == piece.size() ? Extreme::Where::endOfGap : Extreme::Where::inside;
    }

    struct Candidate {
        std::size_t piece = 0, point = 0;
        double hoped = 0; ///< what a parabola through the three points has as its least
    };

    /// Local leasts of `sign` times the curve.
    std::vector<Candidate> candidates(double sign) const {
        std::vector<Candidate> all;
        for (std::size_t p = 0; p < m_curve.pieces.size(); ++p) {
            const auto& piece = m_curve.pieces[p];
            for (std::size_t i = 1; i + 1 < piece.size(); ++i) {
                const double before = sign * piece[i - 1].value, here = sign * piece[i].value,
                             after = sign * piece[i + 1].value;
                if (here <= before && here <= after && before + after > 2 * here) {
                    const double drop = (after - before) * (after - before) / 8 / (before + after - 2 * here);
                    all.push_back({p, i, here - drop - (before + after - 2 * here)}); // a kink lies lower
                }
            }
        }
        const auto more = [](const Candidate& a, const Candidate& b) { return a.hoped < b.hoped; };
        const std::size_t kept = std::min(kMostRefined, all.size());
        std::partial_sort(all.begin(), all.begin() + static_cast<std::ptrdiff_t>(kept), all.end(), more);
        all.resize(kept);
        return all;
    }

    void offer(std::optional<Extreme>& best, const Extreme& extreme, double sign) const {
        if (!best || sign * extreme.value < sign * best->value) {
            best = extreme;
        }
    }

    void findExtreme(bool greatest) {
        const double sign = greatest ? -1 : 1;
        std::optional<Extreme> best;
        for (const auto& piece : m_curve.pieces) {
            for (std::size_t i = 0; i < piece.size(); ++i) {
                offer(best, {piece[i].at, piece[i].value, placeOf(piece, i), isUnbounded(piece[i].value)},
                      sign);
            }
        }
        for (const Candidate& candidate : candidates(sign)) {
            const auto& piece = m_curve.pieces[candidate.piece];
            const CurvePoint middle = piece[candidate.point];
            const Function function = [&](double at) -> std::optional<double> {
                const auto value = valueAt(at);
                return value ? std::optional(sign * unwrapped(*value, middle.value)) : std::nullopt;
            };
            const Lowest lowest = sharpened(function,
                                            lowestBetween(function, piece[candidate.point - 1].at, middle.at,
                                                          piece[candidate.point + 1].at),
                                            m_samples.spacing());
            if (isUnbounded(sign * lowest.value)) {
                m_poles.push_back(lowest.at);
            }
            offer(best,
                  {lowest.at, sign * lowest.value, Extreme::Where::inside, isUnbounded(sign * lowest.value)},
                  sign);
        }
        (greatest ? m_curve.greatest : m_curve.least) = best;
    }

    /// No line is drawn over a place where the curve leaves every sheet.
    void splitAt(double pole) {
        for (std::size_t p = 0; p < m_curve.pieces.size(); ++p) {
            auto& piece = m_curve.pieces[p];
            const auto behind = std::find_if(piece.begin(), piece.end(),
                                             [&](const CurvePoint& point) { return point.at > pole; });
            if (behind != piece.begin() && behind != piece.end()) {
                std::vector<CurvePoint> rest(behind, piece.end());
                piece.erase(behind, piece.end());
                m_curve.pieces.insert(m_curve.pieces.begin() + static_cast<std::ptrdiff_t>(p) + 1,
                                      std::move(rest));
                return;
            }
        }
    }

    const SweepAnswers& m_answers;
    const SweepSamples& m_samples;
    std::vector<double> m_poles;
    std::size_t m_which, m_branch;
    bool m_isDirection, m_isOpen = false;
    Curve m_curve;
};

/// Closer to touching than this, which of two answers is the first is a matter of rounding.
constexpr double kApart = 1e-6;

/// Where both branches have an answer of their own, by the first step with two.
std::optional<std::size_t> firstOfTwo(const SweepAnswers& answers, const SweepSamples& samples) {
    for (const SweepSample& sample : samples.all()) {
        if (sample.branches[0].exists && sample.branches[1].exists && sample.branches[0].openness > kApart) {
            return answers.firstBranch(sample.at);
        }
    }
    return std::nullopt;
}

bool hasAny(const SweepSamples& samples, std::size_t branch) {
    return std::any_of(samples.all().begin(), samples.all().end(),
                       [&](const SweepSample& sample) { return sample.branches[branch].exists; });
}

} // namespace

std::vector<Curve> curvesOf(const SweepAnswers& answers, const SweepSamples& samples) {
    const bool areTwo = hasAny(samples, 0) && hasAny(samples, 1);
    const std::size_t first = areTwo ? firstOfTwo(answers, samples).value_or(0) : hasAny(samples, 1) ? 1 : 0;
    std::vector<Curve> curves;
    for (std::size_t which = 0; which < answers.swept().size(); ++which) {
        for (const int answer : {1, 2}) {
            if (answer == 2 && !areTwo) {
                continue;
            }
            curves.push_back(Tracer(answers, samples, which, answer == 1 ? first : 1 - first).traced());
            curves.back().of.answer = areTwo ? answer : 0;
        }
    }
    return curves;
}

} // namespace tailpoint
