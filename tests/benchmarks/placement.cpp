// SPDX-License-Identifier: MIT
// Placing the labels of twelve forces, as part of composing the whole figure. Floor: every text of the
// finished figure tested once against every stroke and every other text; nobody can say that nothing touches
// for less.
#include "core/figure/compose.h"
#include "core/figure/geometry.h"
#include "tests/benchmarks/ratios.h"
#include "tests/core/figure/figure_support.h"

#include <array>

using namespace tailpoint;

namespace {

/// Forces of many sizes, spread round the point or within a fan; the same every time.
Sketch sketchOf(int count, double spread) {
    std::vector<Force> forces;
    for (int i = 0; i < count; ++i)
        forces.push_back(testing::force("F" + std::to_string(i + 1), 100 + 37 * (i % 11),
                                        -170 + spread * ((i * 5) % count) / count));
    return testing::sketch(std::move(forces));
}

/// Small ones among large ones in one fan: of 600 seeded fans and stars of twelve the one that took longest.
Sketch tinyAndHuge() {
    constexpr std::array<double, 12> sizes{1942, 4729, 240, 169, 1993, 516, 408, 1659, 3660, 261, 1829, 142};
    std::vector<Force> forces;
    for (std::size_t i = 0; i < sizes.size(); ++i)
        forces.push_back(
            testing::force("F" + std::to_string(i + 1), sizes[i], -39.1 + 2.5 * static_cast<double>(i)));
    return testing::sketch(std::move(forces));
}

bool touches(const Box& box, const Item& item) {
    if (const auto* path = std::get_if<Path>(&item)) {
        const Box wide = grown(box, path->width / 2);
        for (std::size_t i = 0; i + 1 < path->points.size(); ++i)
            if (meets(wide, path->points[i], path->points[i + 1]))
                return true;
        return false;
    }
    if (const auto* arc = std::get_if<Arc>(&item))
        return ArcShape(arc->centre, arc->radius, arc->startDegrees, arc->sweepDegrees)
            .meets(grown(box, arc->width / 2));
    if (const auto* disc = std::get_if<Disc>(&item))
        return overlap(box, boxAround(disc->centre, 2 * disc->radius, 2 * disc->radius));
    return overlap(box, std::get<Text>(item).box);
}

int touching(const DisplayList& list) {
    int count = 0;
    for (const Group& own : list.groups)
        for (const Item& item : own.items)
            if (const auto* text = std::get_if<Text>(&item))
                for (const Group& group : list.groups)
                    if (group.role != Role::sheet && group.role != Role::grid)
                        for (const Item& other : group.items)
                            count += &other != &item && touches(text->box, other) ? 1 : 0;
    return count;
}

void testedOnce(benchmark::State& state, const testing::Drawn& drawn) {
    for (auto _ : state)
        benchmark::DoNotOptimize(touching(drawn.figure.list));
}

Figure composed(const testing::Drawn& drawn, const Placement& previous) {
    return compose(drawn.sketch, drawn.solved, drawn.construction, drawn.view, {}, testing::FixedMeasure(),
                   previous);
}

void composeAnew(benchmark::State& state, const testing::Drawn& drawn) {
    for (auto _ : state)
        benchmark::DoNotOptimize(composed(drawn, {}));
}

void composeHeld(benchmark::State& state, const testing::Drawn& drawn) {
    for (auto _ : state)
        benchmark::DoNotOptimize(composed(drawn, drawn.figure.placement));
}

void registerRow(const std::string& row, const testing::Drawn& drawn) {
    benchmark::RegisterBenchmark((row + "/floor").c_str(), testedOnce, drawn);
    benchmark::RegisterBenchmark((row + "/figure composed").c_str(), composeAnew, drawn);
    benchmark::RegisterBenchmark((row + "/figure composed in a drag").c_str(), composeHeld, drawn);
}

} // namespace

int main(int argc, char** argv) {
    registerRow("2 forces", testing::drawn(sketchOf(2, 180)));
    registerRow("12 forces all round", testing::drawn(sketchOf(12, 360)));
    registerRow("12 forces in a fan", testing::drawn(sketchOf(12, 40)));
    registerRow("12 forces in a fan of 20 degrees", testing::drawn(sketchOf(12, 20)));
    registerRow("12 forces in a fan of 8 degrees", testing::drawn(sketchOf(12, 8)));
    registerRow("12 forces, 1 to 33", testing::drawn(tinyAndHuge(), {}, 900, 600));
    return bench::runRatios(argc, argv,
                            "A figure with its labels placed, against testing its texts once (goal: 1 ms)");
}
