// SPDX-License-Identifier: MIT
// What the worked solution costs: the table of named things, the chain of calculation with its values,
// explain(), and its text, LaTeX and MathML, against solving the same question. The budget of a question of
// two forces is 0.1 ms, of its chain and values 30 microseconds.
#include "core/derive/chain.h"
#include "core/explain/handout.h"
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

Sketch raft() {
    Sketch sketch = emptySketch();
    sketch.forces = {forceOf("P", 340, 25), forceOf("Q", 275, -40)};
    return sketch;
}

Sketch twoAnswers() {
    Sketch sketch = emptySketch();
    sketch.forces = {forceOf("P", {}, 40), forceOf("Q", 260, {})};
    sketch.sum = forceOf("R", 400, 10);
    return sketch;
}

Sketch fiveForces() {
    Sketch sketch = raft();
    sketch.forces.push_back(forceOf("S", 160, 118));
    sketch.forces.push_back(forceOf("T", 210, -152.5));
    sketch.forces.push_back(forceOf("U", 95, 90));
    return sketch;
}

/// The floor: the numbers alone.
void solveAndConstruct(benchmark::State& state, const Sketch& sketch) {
    for (auto _ : state) {
        const Solved solved = solve(sketch);
        benchmark::DoNotOptimize(construct(sketch, solved));
    }
}

template <class Make>
void worked(benchmark::State& state, const Sketch& sketch, Make make) {
    const Solved solved = solve(sketch);
    const Construction construction = construct(sketch, solved);
    for (auto _ : state)
        benchmark::DoNotOptimize(make(explain(sketch, solved, construction)));
}

/// The table alone, then the first chain and what it comes to.
void things(benchmark::State& state, const Sketch& sketch) {
    for (auto _ : state)
        benchmark::DoNotOptimize(Things(sketch));
}

void chain(benchmark::State& state, const Sketch& sketch) {
    const Solved solved = solve(sketch);
    const Things table(sketch);
    const Route route = routesOf(sketch, solved).front();
    for (auto _ : state) {
        const Chain made = chainOf(sketch, solved, table, route);
        benchmark::DoNotOptimize(evaluate(made, givenValues(made, sketch)));
    }
}

std::string latexOf(Worked worked) {
    Handout handout;
    handout.answers.push_back(std::move(worked));
    return toLatex(handout);
}

std::string htmlOf(Worked worked) {
    Handout handout;
    handout.answers.push_back(std::move(worked));
    return toHtml(handout);
}

void registerRow(const std::string& row, const Sketch& sketch) {
    const auto add = [&](const char* what, auto make) {
        benchmark::RegisterBenchmark((row + "/" + what).c_str(), [sketch, make](benchmark::State& state) {
            worked(state, sketch, make);
        });
    };
    benchmark::RegisterBenchmark((row + "/floor").c_str(),
                                 [sketch](benchmark::State& state) { solveAndConstruct(state, sketch); });
    benchmark::RegisterBenchmark((row + "/things").c_str(),
                                 [sketch](benchmark::State& state) { things(state, sketch); });
    benchmark::RegisterBenchmark((row + "/chain and values").c_str(),
                                 [sketch](benchmark::State& state) { chain(state, sketch); });
    add("explain", [](Worked made) { return made; });
    add("explain, as text", [](const Worked& made) { return toText(made); });
    add("explain, as LaTeX", latexOf);
    add("explain, as HTML", htmlOf);
}

} // namespace

int main(int argc, char** argv) {
    registerRow("raft", raft());
    registerRow("two answers", twoAnswers());
    registerRow("five forces", fiveForces());
    return bench::runRatios(argc, argv,
                            "Worked solution, against solving and constructing the same question");
}
