// SPDX-License-Identifier: MIT
// What is proved of a sweep's stretches, against points between: 240 sketches of all families, any given
// value varied.
#include "core/solve/sweep_answers.h"
#include "core/solve/sweep_bounds.h"
#include "tests/support/tolerances.h"

#include <algorithm>
#include <cmath>
#include <gtest/gtest.h>

namespace tailpoint::testing {
namespace TAILPOINT_FILE {

/// Values of one quantity in one branch, directions beside the one before; empty where none has it.
std::vector<double> valuesOf(const std::vector<Branches>& along, std::size_t branch, std::size_t which,
                             double turn, bool isDirection, std::size_t& missing) {
    std::vector<double> values;
    for (const Branches& at : along) {
        const auto value = at[branch].exists ? at[branch].value[which] : std::nullopt;
        if (!value) {
            ++missing;
            continue;
        }
        const double before = values.empty() ? *value : values.back();
        values.push_back(isDirection ? *value + turn * std::round((before - *value) / turn) : *value);
    }
    return values;
}

/// How far the values go back on their way from the first to the last.
double setback(const std::vector<double>& values) {
    const double sense = values.back() >= values.front() ? 1 : -1;
    double farthest = sense * values.front(), most = 0;
    for (const double value : values) {
        farthest = std::max(farthest, sense * value);
        most = std::max(most, farthest - sense * value);
    }
    return most;
}

TEST(SweepBounds, BetweenTheirPlacesEveryCurveOnlyRisesOrOnlyFalls) {
    long stretches = 0, halved = 0;
    for (std::uint64_t number = 0; number < 240 && !HasFailure(); ++number) {
        SCOPED_TRACE(number);
        Dice dice(5'000'011 * number + 3);
        const Sketch made = tolerantCase(dice, static_cast<Asked>(number % kAsked), 5, 5);
        const std::vector<Scalar> all = variable(made);
        const Scalar varied = all[dice.whole(all.size())];
        const double at = *presentValue(made, varied);
        const SweepRange range = varied.isDirection ? SweepRange{varied, at - 100, at + 200, 1}
                                                    : SweepRange{varied, 0.01 * at, 2.5 * at, 1};
        if (faultOf(range, made))
            continue;
        std::vector<double> grid;
        for (int i = 0; i <= 300; ++i)
            grid.push_back(range.from + (range.to - range.from) * i / 300);
        const std::vector<double> turns = SweepBounds(made, range).turns(grid).places;
        halved += static_cast<long>(turns.size());
        grid.insert(grid.end(), turns.begin(), turns.end());
        std::sort(grid.begin(), grid.end());
        const SweepAnswers answers(made, range);
        for (std::size_t i = 1; i < grid.size(); ++i) {
            if (grid[i] - grid[i - 1] < 1e-7 * (range.to - range.from))
                continue; // one of those that hold a turn
            ++stretches;
            std::vector<Branches> along;
            for (int part = 1; part < 8; ++part)
                along.push_back(answers.at(grid[i - 1] + (grid[i] - grid[i - 1]) * part / 8));
            for (const std::size_t branch : {0u, 1u})
                for (std::size_t which = 0; which < answers.swept().size(); ++which) {
                    std::size_t missing = 0;
                    const bool isDirection = answers.swept()[which].kind == Swept::Kind::direction;
                    const std::vector<double> values =
                        valuesOf(along, branch, which, answers.turn(), isDirection, missing);
                    EXPECT_TRUE(missing == 0 || missing == along.size()) << grid[i - 1];
                    if (!values.empty()) {
                        EXPECT_LE(setback(values), 1e-9 * (isDirection ? 360 : answers.scale()))
                            << grid[i - 1];
                    }
                }
        }
    }
    EXPECT_GT(stretches, 50'000);
    EXPECT_GT(halved, 500);
}

} // namespace TAILPOINT_FILE
} // namespace tailpoint::testing
