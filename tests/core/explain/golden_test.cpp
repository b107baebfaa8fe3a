// SPDX-License-Identifier: MIT
// Whole solutions of a dozen questions, each read by eye for its mechanics and its English before it was
// kept. TAILPOINT_WRITE_GOLDEN=1 writes them anew: read the difference before you keep it.
#include "core/explain/explain.h"
#include "core/explain/question.h"
#include "core/explain/ranges.h"
#include "core/explain/statement.h"
#include "tests/support/sketches.h"

#include <algorithm>
#include <cstdlib>
#include <fstream>
#include <gtest/gtest.h>
#include <sstream>

namespace tailpoint {
namespace TAILPOINT_FILE {

using namespace testing;

struct Golden {
    const char* file;
    Sketch sketch;
    ExplainOptions options;
    std::size_t solution = 0;
};

Sketch bearings() {
    Sketch s = emptySketch();
    s.forceUnit = ForceUnit::kip;
    s.reference = {90, Sense::cw};
    s.forces = {bearing("A", 1.2, 'N', 35, 'E'), slope("B", 0.9, -4, 3)};
    return s;
}

Sketch gons() {
    Sketch s = sketch({force("P", 5, 20), force("Q", 7, 140)});
    s.forceUnit = ForceUnit::kN;
    s.angleUnit = AngleUnit::gon;
    return s;
}

ExplainOptions byHand() {
    ExplainOptions options;
    options.handRounding = true;
    return options;
}

ExplainOptions by(Method method) {
    ExplainOptions options;
    options.method = method;
    return options;
}

ExplainOptions parallelograms() {
    ExplainOptions options;
    options.parallelograms = true;
    return options;
}

Sketch inKilonewtons(Sketch made) {
    made.forceUnit = ForceUnit::kN;
    return made;
}

Sketch bridle(double second) {
    return balanced({force("A", 2.5, 35), force("B", 2.5, second), force("W", kToFind, -90)});
}

Sketch leastGuy(double line) {
    return smallest(balanced({force("W", 12, -90), force("A", kToFind, line), force("B", kToFind, kToFind)}),
                    "B");
}

Sketch raftOnScales() {
    Sketch made = sketch({force("P", 340, 25), force("Q", 275, -40)});
    made.forces[0].magnitude.tolerance = plusMinus(5);
    made.forces[0].direction.tolerance = plusMinus(2);
    return made;
}

/// 12 kN on two lines that may come level.
Sketch lowGuys() {
    Sketch made =
        inKilonewtons(balanced({force("W", 12, -90), force("A", kToFind, 1.5), force("B", kToFind, 178.5)}));
    made.forces[1].direction.tolerance = made.forces[2].direction.tolerance = plusMinus(2);
    return made;
}

std::vector<Golden> goldens() {
    const Sketch raft = sketch({force("P", 340, 25), force("Q", 275, -40)});
    const Sketch two = sketch({force("P", kToFind, 40), force("Q", 260, kToFind)}, force("R", 400, 10));
    const Sketch five = sketch({force("P", 340, 25), force("Q", 275, -40), force("S", 160, 118),
                                force("T", 210, -152.5), force("U", 95, 90)});
    return {
        {"one-unknown", inKilonewtons(bridle(145)), {}},
        {"one-unknown-within-rounding", inKilonewtons(bridle(145.1)), {}},
        {"one-direction-of-a-sum",
         sketch({force("P", 3, 0), force("Q", 4, 90), force("T", 2, 200)}, force("R", 3.5, kToFind)),
         {}},
        {"smallest-at-rest", inKilonewtons(leastGuy(50)), {}},
        {"smallest-at-rest-by-components", inKilonewtons(leastGuy(50)), by(Method::components)},
        {"smallest-that-would-turn-the-other", inKilonewtons(leastGuy(-50)), {}},
        {"smallest-beside-a-force",
         smallest(sketch({force("A", kToFind, 60), force("B", kToFind, kToFind)}, force("R", 10, 90)), "B"),
         {}},
        {"raft", raft, {}},
        {"raft-by-hand", raft, byHand()},
        {"equal-forces", sketch({force("F1", 200, 70), force("F2", 200, 110)}), {}},
        {"obtuse-across-the-axis", sketch({force("P", 120, 170), force("Q", 200, -60)}), {}},
        {"two-answers-first", two, {}},
        {"two-answers-second", two, {}, 1},
        {"oblique-components",
         sketch({force("A", kToFind, 50), force("B", kToFind, -15)}, force("R", 400, 20)),
         {}},
        {"ring-at-rest",
         balanced({force("P", 500, 270), force("A", kToFind, 150), force("B", kToFind, 45)}),
         {}},
        {"ring-at-rest-by-lami",
         balanced({force("P", 500, 270), force("A", kToFind, 150), force("B", kToFind, 45)}),
         by(Method::triangle)},
        {"two-answers-by-components", two, by(Method::components)},
        {"smallest-force",
         smallest(sketch({force("P", 340, 25), force("Q", kToFind, kToFind)}, force("R", kToFind, 0)), "Q"),
         {}},
        {"two-directions",
         sketch({force("P", 300, kToFind), force("Q", 400, kToFind)}, force("R", 500, 0)),
         {}},
        {"missing-force",
         sketch({force("P", 700, 195), force("X", kToFind, kToFind)}, force("R", 500, 90)),
         {}},
        {"five-forces", five, {}},
        {"three-by-parallelograms", sketch({force("P", 30, 0), force("Q", 40, 90), force("S", 20, 200)}),
         parallelograms()},
        {"opposite", sketch({force("P", 250, 30), force("Q", 250, -150)}), {}},
        {"parallel", sketch({force("P", 30, 20), force("Q", 50, 20)}), {}},
        {"too-weak", sketch({force("P", kToFind, 40), force("Q", 150, kToFind)}, force("R", 400, 10)), {}},
        {"other-sense",
         sketch({either(force("P", kToFind, 115)), force("Q", 320, kToFind)}, force("R", 300, 10)),
         {},
         1},
        {"no-triangle", sketch({force("P", 150, kToFind), force("Q", 200, kToFind)}, force("R", 500, 0)), {}},
        {"along-parallel-lines",
         balanced({force("A", kToFind, 30), force("B", kToFind, -150), force("P", 500, 270)}),
         {}},
        {"against-the-sense",
         sketch({force("P", kToFind, 100), force("Q", kToFind, -60)}, force("R", 400, 170)),
         {}},
        {"too-few-given", sketch({force("P", kToFind, 40), force("Q", kToFind, kToFind)}), {}},
        {"bearings-and-slopes", bearings(), {}},
        {"gon", gons(), {}},
        {"missing-among-three",
         sketch({force("P", 340, 25), force("Q", 275, -40), force("S", kToFind, kToFind)},
                force("R", 700, 0)),
         {}},
        {"nearly-parallel", sketch({force("P", 310, 12), force("Q", 295, 10.5)}), {}},
        {"circles-that-coincide", balanced({force("P", 250, kToFind), force("Q", 250, kToFind)}), {}},
        {"tangent", sketch({force("P", kToFind, 40), force("Q", 200, kToFind)}, force("R", 400, 10)), {}},
        {"raft-with-tolerances", raftOnScales(), {}},
        {"low-guys-with-tolerances", lowGuys(), {}},
    };
}

std::string textOf(const Golden& golden) {
    const Solved solved = solve(golden.sketch);
    const Construction construction = construct(golden.sketch, solved, golden.solution);
    std::string text =
        toText(statement(golden.sketch).sentence) + "\n" + plain(question(golden.sketch)) + "\n\n";
    const auto ranges = tolerance::boxOf(golden.sketch).hasTolerance
                            ? tolerance::rangesOf(golden.sketch, solved)
                            : tolerance::Ranges();
    const Worked worked =
        explain(golden.sketch, solved, construction, golden.solution, golden.options, ranges);
    return text + toText(worked, Minus::typographic);
}

class GoldenText : public ::testing::TestWithParam<std::size_t> {};

TEST_P(GoldenText, IsAsItWasRead) {
    const Golden golden = goldens()[GetParam()];
    const std::string path =
        std::string(TAILPOINT_SOURCE) + "/tests/core/explain/golden/" + golden.file + ".txt";
    const std::string text = textOf(golden);
    if (std::getenv("TAILPOINT_WRITE_GOLDEN") != nullptr)
        std::ofstream(path) << text;
    std::ifstream in(path);
    ASSERT_TRUE(in) << path;
    std::ostringstream kept;
    kept << in.rdbuf();
    EXPECT_EQ(text, kept.str());
}

INSTANTIATE_TEST_SUITE_P(Explain, GoldenText, ::testing::Range<std::size_t>(0, goldens().size()),
                         [](const auto& row) {
                             std::string name = goldens()[row.param].file;
                             std::replace(name.begin(), name.end(), '-', '_');
                             return name;
                         });

} // namespace TAILPOINT_FILE
} // namespace tailpoint
