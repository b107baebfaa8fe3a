// SPDX-License-Identifier: MIT
// From the best points found to the top nearby: where an extreme lies.
#include "core/solve/tolerance_search.h"

#include <algorithm>
#include <cmath>
#include <limits>

namespace tailpoint::tolerance {

// Each input of the known vectors in turn as it brings what they leave nearest to `own`.
void Search::closeIn(Point& point, kernel::Vec own, int sweeps) const {
    const auto closeBy = [&](std::size_t i) {
        const Input& input = problem_.inputs[i];
        const kernel::Vec unit = problem_.unitAt(point, input.vector);
        const long double magnitude = problem_.magnitudeAt(point, input.vector);
        const kernel::Vec wanted = problem_.targetAt(point) - own + magnitude * unit;
        if (!input.isDirection) {
            point[i] = std::clamp(kernel::dot(wanted, unit), input.least, input.greatest);
        } else if (kernel::length(wanted) > 0) {
            const long double off = std::atan2(kernel::cross(unit, wanted), kernel::dot(unit, wanted));
            point[i] = std::clamp(point[i] + off, input.least, input.greatest);
        }
    };
    for (int sweep = 0; sweep < sweeps; ++sweep) {
        for (const std::size_t vector : problem_.loose) {
            for (const int input : problem_.inputOf[vector]) {
                if (input >= 0) {
                    closeBy(static_cast<std::size_t>(input));
                }
            }
        }
    }
}

// One vector wholly unknown that may vanish: each input in turn as it leaves least over, from the least that
// was found so far.
void Search::tryClosed() {
    const Best best = best_[static_cast<std::size_t>(Goal::leastMagnitude)];
    if (!best.isThere || best.value == 0 || pieces_[best.piece].rule != Rule::alone) {
        return;
    }
    Point point = best.point;
    closeIn(point, {}, 200);
    tryPoint(best.piece, point);
}

// The value with one input of the best point moved; none where there is no answer.
long double Search::valueWith(Goal goal, std::size_t input, long double value) const {
    const Best& best = best_[static_cast<std::size_t>(goal)];
    Point point = best.point;
    point[input] = value;
    const std::optional<Tips> tips = tipsAt(problem_, pieces_[best.piece], point);
    return tips ? valueOf(goal, *tips) : std::numeric_limits<long double>::quiet_NaN();
}

// One input by itself: to its ends, away from an end that it should leave, and within them to the top of a
// parabola through three points.
void Search::settleInput(Goal goal, std::size_t i) {
    const Best& best = best_[static_cast<std::size_t>(goal)];
    const Input& input = problem_.inputs[i];
    const long double span = input.greatest - input.least;
    const auto attempt = [&](long double value) {
        Point point = best.point;
        point[i] = std::clamp(value, input.least, input.greatest);
        tryPoint(best.piece, point);
    };
    attempt(input.least);
    attempt(input.greatest);
    if (const long double end = best.point[i]; end == input.least || end == input.greatest) {
        const long double inward = end == input.least ? span : -span;
        if (!(valueWith(goal, i, end + inward / 1024) > best.value)) {
            return;
        }
        for (const long double part : {1.0L / 64, 1.0L / 16, 0.25L, 0.5L, 0.75L}) {
            attempt(end + part * inward);
        }
    }
    // Closer every time: through places so far apart a parabola keeps its own distance from a lopsided top.
    for (const long double reach : {span / 0x1p10L, span / 0x1p14L, span / 0x1p18L}) {
        const long double at = best.point[i];
        const long double step = std::fmin(std::fmin(at - input.least, input.greatest - at), reach);
        const long double below = valueWith(goal, i, at - step), above = valueWith(goal, i, at + step);
        const long double bend = 2 * best.value - below - above;
        if (!(step > 0 && bend > 0)) {
            return;
        }
        attempt(at + std::clamp(step * (above - below) / (2 * bend), -span / 4, span / 4));
    }
}

void Search::settle(Goal goal) {
    const bool isThere = best_[static_cast<std::size_t>(goal)].isThere;
    for (int sweep = 0; isThere && sweep < 3; ++sweep) {
        for (std::size_t i = 0; i < problem_.inputs.size(); ++i) {
            settleInput(goal, i);
        }
    }
}

// From the best point by steps along each input, and by what led up as a whole: a ridge across several inputs
// is followed. Source: R. Hooke, T. A. Jeeves, 'Direct search solution of numerical and statistical
// problems', Journal of the ACM 8 (1961) 212-229.
void Search::climb(Goal goal) {
    constexpr int kMostTried = 1500;
    constexpr long double kLeastStep = 0x1p-24L;
    const Best& best = best_[static_cast<std::size_t>(goal)];
    if (!best.isThere) {
        return;
    }
    int tried = 0;
    const auto attempt = [&](Point point) {
        for (std::size_t i = 0; i < point.size(); ++i) {
            point[i] = std::clamp(point[i], problem_.inputs[i].least, problem_.inputs[i].greatest);
        }
        const long double before = best.value;
        ++tried;
        return tryPoint(best.piece, point) && best.value > before;
    };
    for (long double step = 0.25L; step > kLeastStep && tried < kMostTried;) {
        const Point from = best.point;
        const long double before = best.value;
        for (std::size_t i = 0; i < from.size(); ++i) {
            const long double by = step * (problem_.inputs[i].greatest - problem_.inputs[i].least);
            for (const long double move : {by, -by}) {
                Point point = best.point;
                point[i] += move;
                if (attempt(point)) {
                    break;
                }
            }
        }
        if (!(best.value > before)) {
            step /= 2;
            continue;
        }
        bool leads = true;
        while (leads && tried < kMostTried) {
            Point point = best.point;
            for (std::size_t i = 0; i < point.size(); ++i) {
                point[i] += point[i] - from[i];
            }
            leads = attempt(point);
        }
    }
}

// Whether a point is found next to a bound that was proved of a cell as thin as can be.
bool Search::isReached(Goal goal, double bound, const Cell& cell, bool thoroughly) {
    const Best& best = best_[static_cast<std::size_t>(goal)];
    const auto isNear = [&] {
        return best.isThere && bound - static_cast<double>(best.value) <= kEnough * width(goal);
    };
    if (!thoroughly || isNear()) {
        return isNear();
    }
    tryCell(goal, cell, true);
    tryOtherPieces(goal);
    settle(goal);
    if (!isNear()) {
        climb(goal);
    }
    return isNear();
}

// Whether no input by itself leads farther, and all lead somewhere: by a wide step, and by one so short that
// it tells the top from a place beside it.
bool Search::isSettled(Goal goal) const {
    const Best& best = best_[static_cast<std::size_t>(goal)];
    for (std::size_t i = 0; i < problem_.inputs.size(); ++i) {
        const Input& input = problem_.inputs[i];
        for (const long double part : {0x1p-12L, -0x1p-12L, 0x1p-20L, -0x1p-20L}) {
            const long double step = part * (input.greatest - input.least);
            const long double at = std::clamp(best.point[i] + step, input.least, input.greatest);
            if (at != best.point[i] && !(valueWith(goal, i, at) <= best.value)) {
                return false;
            }
        }
    }
    return true;
}

} // namespace tailpoint::tolerance
