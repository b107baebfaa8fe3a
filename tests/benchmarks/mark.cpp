// SPDX-License-Identifier: MIT
// What marking costs from nothing: a marker with all its slips, one answer that nothing single explains (so
// that pairs of slips are made), and one more, against solving the question and evaluating its chains. The
// budget of the first answer with pairs is 10 ms, of one more 1 ms.
#include "core/mark/mark.h"
#include "core/derive/chain.h"
#include "tests/benchmarks/ratios.h"

using namespace tailpoint;

namespace {

Force forceOf(const char* name, std::optional<double> magnitude, std::optional<double> degrees) {
    Force force;
    force.name = name;
    force.magnitude.value = magnitude;
    if (degrees)
        force.direction.form = AngleForm{*degrees};
    return force;
}

/// Of two to six forces.
Sketch resultantOf(std::size_t forces) {
    Sketch sketch = emptySketch();
    sketch.forces = {forceOf("P", 340, 25),     forceOf("Q", 275, -40), forceOf("S", 160, 118),
                     forceOf("T", 210, -152.5), forceOf("U", 95, 90),   forceOf("V", 130, 200)};
    sketch.forces.resize(forces);
    return sketch;
}

Sketch twoAnswers() {
    Sketch sketch = emptySketch();
    sketch.forces = {forceOf("P", {}, 40), forceOf("Q", 260, {})};
    sketch.sum = forceOf("R", 400, 10);
    return sketch;
}

/// The floor: the numbers alone.
void solveAndEvaluate(benchmark::State& state, const Sketch& sketch) {
    for (auto _ : state) {
        const Solved solved = solve(sketch);
        const Things things(sketch);
        for (const Route& route : routesOf(sketch, solved)) {
            const Chain chain = chainOf(sketch, solved, things, route);
            benchmark::DoNotOptimize(evaluate(chain, givenValues(chain, sketch)));
        }
    }
}

/// Wrong in every asked quantity, and of no known cause.
Attempt strayOf(const Marker& marker) {
    std::vector<std::string> answers;
    for (const Answerable& one : marker.quantities())
        if (one.asked)
            answers.push_back(one.name + (one.dimension == Dimension::force ? " = 377.7" : " = 51.37"));
    return std::get<Attempt>(marker.read(answers));
}

void made(benchmark::State& state, const Sketch& sketch) {
    const Solved solved = solve(sketch);
    for (auto _ : state)
        benchmark::DoNotOptimize(Marker(sketch, solved));
}

void firstWithPairs(benchmark::State& state, const Sketch& sketch) {
    const Solved solved = solve(sketch);
    for (auto _ : state) {
        const Marker marker(sketch, solved);
        benchmark::DoNotOptimize(marker.mark(strayOf(marker)));
    }
}

void oneMore(benchmark::State& state, const Sketch& sketch) {
    const Marker marker(sketch, solve(sketch));
    const Attempt stray = strayOf(marker);
    benchmark::DoNotOptimize(marker.mark(stray));
    for (auto _ : state)
        benchmark::DoNotOptimize(marker.mark(stray));
}

void registerRow(const std::string& row, const Sketch& sketch) {
    const auto add = [&](const char* what, void (*run)(benchmark::State&, const Sketch&)) {
        benchmark::RegisterBenchmark((row + "/" + what).c_str(),
                                     [sketch, run](benchmark::State& state) { run(state, sketch); });
    };
    add("floor", solveAndEvaluate);
    add("a marker", made);
    add("a marker and the first answer with pairs", firstWithPairs);
    add("one more", oneMore);
}

} // namespace

int main(int argc, char** argv) {
    for (std::size_t forces = 2; forces <= 6; ++forces)
        registerRow(std::to_string(forces) + " forces", resultantOf(forces));
    registerRow("two answers", twoAnswers());
    return bench::runRatios(argc, argv, "Marking, against solving and evaluating the same question");
}
