// SPDX-License-Identifier: MIT
// Ranges and outlines of seeded sketches with tolerances, by family: exact, and as while dragging. Goals:
// median under 5 ms, 99 % under 20 ms up to six forces; 2 ms while dragging. The whole distribution
// prints tests/tolerant.
#include "core/solve/tolerance.h"
#include "tests/support/tolerances.h"

#include <benchmark/benchmark.h>
#include <vector>

using namespace tailpoint;
using namespace tailpoint::testing;

namespace {

struct Case {
    Sketch sketch;
    Solved solved;
};

/// 32 answered ones of a family, tolerances up to 5 % and 3 degrees.
std::vector<Case> casesOf(Asked asked) {
    std::vector<Case> cases;
    for (std::uint64_t number = 0; cases.size() < 32; ++number) {
        Dice dice(1'000'003 * number + 17);
        Case made{tolerantCase(dice, asked, 5, 3), {}};
        made.solved = solve(made.sketch);
        if (!made.solved.solutions.empty()) {
            cases.push_back(std::move(made));
        }
    }
    return cases;
}

void ranges(benchmark::State& state, tolerance::Effort effort) {
    const std::vector<Case> cases = casesOf(static_cast<Asked>(state.range(0)));
    std::size_t next = 0;
    for (auto _ : state) {
        const Case& each = cases[next++ % cases.size()];
        benchmark::DoNotOptimize(tolerance::rangesOf(each.sketch, each.solved, effort));
    }
}

void outlines(benchmark::State& state, tolerance::Effort effort) {
    const std::vector<Case> cases = casesOf(static_cast<Asked>(state.range(0)));
    std::size_t next = 0;
    for (auto _ : state) {
        const Case& each = cases[next++ % cases.size()];
        benchmark::DoNotOptimize(tolerance::tipRegions(each.sketch, each.solved, 0, effort));
    }
}

BENCHMARK_CAPTURE(ranges, exact, tolerance::kExact)->DenseRange(0, kAsked - 1)->Unit(benchmark::kMillisecond);
BENCHMARK_CAPTURE(ranges, dragging, tolerance::kWhileDragging)
    ->DenseRange(0, kAsked - 1)
    ->Unit(benchmark::kMillisecond);
BENCHMARK_CAPTURE(outlines, exact, tolerance::kExact)
    ->DenseRange(0, kAsked - 1)
    ->Unit(benchmark::kMillisecond);
BENCHMARK_CAPTURE(outlines, dragging, tolerance::kWhileDragging)
    ->DenseRange(0, kAsked - 1)
    ->Unit(benchmark::kMillisecond);

} // namespace
