// SPDX-License-Identifier: MIT
// What one edit costs the core: solve, and solve with construct, against the bare sum of ready vectors.
#include "core/construct/construct.h"
#include "core/solve/solve.h"
#include "tests/benchmarks/ratios.h"

#include <Eigen/Core>
#include <cmath>

using namespace tailpoint;

namespace {

/// Forces of many sizes, spread round the point; the same every time.
Sketch sketchOf(int count) {
    Sketch sketch = emptySketch();
    for (int i = 0; i < count; ++i) {
        Force force;
        force.name = "F" + std::to_string(i + 1);
        force.magnitude.value = 100 + 37 * (i % 11);
        force.direction.form = AngleForm{-170 + 0.1 * ((i * 1237) % 3400)};
        sketch.forces.push_back(force);
    }
    return sketch;
}

std::vector<Eigen::Vector2d> vectorsOf(const Sketch& sketch) {
    std::vector<Eigen::Vector2d> vectors;
    for (const Force& force : sketch.forces) {
        const CosSin unit = *unitVector(force.direction, sketch);
        vectors.emplace_back(*force.magnitude.value * static_cast<double>(unit.cos),
                             *force.magnitude.value * static_cast<double>(unit.sin));
    }
    return vectors;
}

/// The bare work: add ready vectors up, one hypot, one atan2.
void bareSum(benchmark::State& state, int count) {
    const auto vectors = vectorsOf(sketchOf(count));
    for (auto _ : state) {
        benchmark::DoNotOptimize(vectors.data());
        Eigen::Vector2d sum(0, 0);
        for (const Eigen::Vector2d& vector : vectors)
            sum += vector;
        benchmark::DoNotOptimize(std::hypot(sum.x(), sum.y()));
        benchmark::DoNotOptimize(std::atan2(sum.y(), sum.x()));
    }
}

/// The same from polar input with the library's sine and cosine: what a quick program would do.
void polarSum(benchmark::State& state, int count) {
    const Sketch sketch = sketchOf(count);
    for (auto _ : state) {
        Eigen::Vector2d sum(0, 0);
        for (const Force& force : sketch.forces) {
            const double angle = std::get<AngleForm>(force.direction.form).value * M_PI / 180;
            sum += *force.magnitude.value * Eigen::Vector2d(std::cos(angle), std::sin(angle));
        }
        benchmark::DoNotOptimize(std::hypot(sum.x(), sum.y()));
        benchmark::DoNotOptimize(std::atan2(sum.y(), sum.x()));
    }
}

void solveOnly(benchmark::State& state, int count) {
    const Sketch sketch = sketchOf(count);
    for (auto _ : state)
        benchmark::DoNotOptimize(solve(sketch));
}

void solveAndConstruct(benchmark::State& state, int count) {
    const Sketch sketch = sketchOf(count);
    for (auto _ : state) {
        const Solved solved = solve(sketch);
        benchmark::DoNotOptimize(construct(sketch, solved));
    }
}

void registerRow(int count) {
    const std::string row = std::to_string(count) + " forces";
    benchmark::RegisterBenchmark((row + "/floor").c_str(), bareSum, count);
    benchmark::RegisterBenchmark((row + "/plain sum from polar").c_str(), polarSum, count);
    benchmark::RegisterBenchmark((row + "/solve").c_str(), solveOnly, count);
    benchmark::RegisterBenchmark((row + "/solve and construct").c_str(), solveAndConstruct, count);
}

} // namespace

int main(int argc, char** argv) {
    for (const int count : {2, 10, 1000})
        registerRow(count);
    return bench::runRatios(argc, argv,
                            "Recompute, against the bare sum of ready vectors with one hypot and one atan2");
}
