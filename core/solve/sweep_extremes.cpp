// SPDX-License-Identifier: MIT
#include "core/solve/sweep_extremes.h"

#include <cmath>
#include <limits>

namespace tailpoint {
namespace {

constexpr double kGolden = 0.3819660112501051; // (3 - sqrt 5) / 2
constexpr int kMostHalvings = 120;
constexpr int kNewtonSteps = 4;
constexpr double kRoundoff = 0x1p-53;
/// A smooth least that Newton moved is as low as before within the solver's rounding.
constexpr double kSameValue = 16 * kRoundoff;

struct Slopes {
    double first = 0, second = 0; ///< times the step, times its square
};

/// Source: central differences of sixth order, M. Abramowitz, I. Stegun, Handbook of Mathematical Functions
/// (1964), table 25.2.
std::optional<Slopes> slopesAt(const Function& function, double at, double step) {
    const auto value = function(at);
    Slopes slopes;
    if (!value) {
        return std::nullopt;
    }
    constexpr double first[] = {0.75, -0.15, 1.0 / 60}, second[] = {1.5, -0.15, 1.0 / 90};
    for (int i = 1; i <= 3; ++i) {
        const auto before = function(at - i * step), after = function(at + i * step);
        if (!before || !after) {
            return std::nullopt;
        }
        slopes.first += first[i - 1] * (*after - *before);
        slopes.second += second[i - 1] * ((*after - *value) + (*before - *value));
    }
    return slopes;
}

} // namespace

Lowest lowestBetween(const Function& function, double left, double middle, double right) {
    Lowest found{middle, std::numeric_limits<double>::infinity(), {}};
    const auto value = [&](double at) {
        const auto known = function(at);
        if (!known && !found.missing) {
            found.missing = at;
        }
        return known.value_or(std::numeric_limits<double>::infinity());
    };
    found.value = value(middle);
    for (int i = 0; i < kMostHalvings; ++i) {
        const bool goesRight = right - found.at > found.at - left;
        const double next =
            goesRight ? found.at + kGolden * (right - found.at) : found.at - kGolden * (found.at - left);
        if (next <= left || next >= right || next == found.at) {
            break;
        }
        const double there = value(next);
        if (there < found.value) {
            (goesRight ? left : right) = found.at;
            found.at = next;
            found.value = there;
        } else {
            (goesRight ? right : left) = next;
        }
    }
    return found;
}

Lowest sharpened(const Function& function, const Lowest& lowest, double step) {
    Lowest found = lowest;
    double at = lowest.at;
    for (int i = 0; i < kNewtonSteps; ++i) {
        const auto slopes = slopesAt(function, at, step);
        if (!slopes || !(slopes->second > 0)) {
            return lowest;
        }
        const double by = step * slopes->first / slopes->second;
        if (!(std::fabs(by) < step)) {
            return lowest;
        }
        at -= by;
    }
    const auto value = function(at);
    if (!value || *value > lowest.value + kSameValue * std::fabs(lowest.value)) {
        return lowest;
    }
    found.at = at;
    found.value = *value;
    return found;
}

} // namespace tailpoint
