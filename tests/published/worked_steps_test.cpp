// SPDX-License-Identifier: MIT
// Intermediate values that a source prints on its way (angles of the triangle, sides, components), each
// looked up in the steps of the worked solution. Numbers only; the sources' words are not carried over.
#include "core/explain/explain.h"
#include "tests/support/printed.h"
#include "tests/support/steps.h"

namespace tailpoint::testing {
namespace TAILPOINT_FILE {

/// A printed value and the step in which it must come out.
struct Printed {
    const char* step; ///< key
    const char* value;
};

struct Example {
    const char* name;
    const char* source;
    Sketch given;
    std::vector<Printed> printed;
    std::size_t answer = 0;
};

using Numbers = std::vector<double>;

void collect(const Formula& formula, Numbers& out) {
    if (formula.kind == FormulaKind::number)
        out.push_back(formula.value);
    for (const Formula& part : formula.parts)
        collect(part, out);
}

/// Results of the step: values of its workings, cells of its table, numbers that its conclusion states.
Numbers resultsOf(const Step& step) {
    Numbers out;
    for (const Working& working : step.workings)
        if (working.value)
            collect(*working.value, out);
    if (step.table)
        for (const auto& row : step.table->rows)
            for (const Formula& cell : row)
                collect(cell, out);
    for (const Prose& prose : step.conclusion)
        for (const Piece& piece : prose.pieces)
            if (const auto* formula = std::get_if<Formula>(&piece))
                collect(*formula, out);
    return out;
}

/// Anywhere in the steps of that key.
bool comesOut(const Worked& worked, const Printed& printed) {
    for (const Step& step : worked.steps)
        if (testing::keyOf(step) == printed.step)
            for (const double value : resultsOf(step))
                if (agrees(value, printed.value))
                    return true;
    return false;
}

/// Two sides of a triangle and an angle that does not lie between them, as the forces of a question: Q of
/// magnitude `opposite` faces the angle, R is the other side.
Sketch ambiguous(double angle, double opposite, double other) {
    return sketch({force("P", kToFind, angle), force("Q", opposite, kToFind)}, force("R", other, 0));
}

/// Two sides and the angle between them, laid tip to tail.
Sketch included(double first, double second, double angle) {
    return sketch({force("P", first, 0), force("Q", second, 180 - angle)});
}

Sketch threeSides(double a, double b, double c) {
    return sketch({force("P", a, kToFind), force("Q", b, kToFind)}, force("R", c, 0));
}

/// As given; the sheet shows more figures than any source prints.
std::vector<Example> examples() {
    return {
        {"two pulls on a bolt",
         "Beer & Johnston, 9e, sample problem 2.1 (p. 22)",
         sketch({force("P", 40, 20), force("Q", 60, 45)}),
         {{"tails", "25"}, {"parallelogram", "155"}, {"cosines", "97.73"}, {"direction", "35.04"}}},
        {"two cables by slopes",
         "Beer & Johnston, prob. 2.13",
         sketch({slope("P", 120, 8, 10), slope("Q", 40, -6, 10)}),
         {{"cosines", "139.08"}, {"parallelogram", "110.38"}, {"sines", "15.64"}, {"direction", "66.98"}}},
        {"two forces at 30 degrees",
         "A. K. Tayal, Engineering Mechanics, ex. 2.1, 2.2",
         sketch({force("P", 50, 15), force("Q", 100, 45)}),
         {{"tails", "30"}, {"cosines", "145.47"}, {"direction", "35.1"}}},
        {"two forces at 60 degrees",
         "R. K. Bansal, ex. 2.2 (p. 34)",
         sketch({force("P", 240, 0), force("Q", 200, 60)}),
         {{"tails", "60"}, {"parallelogram", "120"}, {"cosines", "381.58"}, {"sines", "26.996"}}},
        {"two forces far apart",
         "Hibbeler, 14e, prob. 2-1",
         sketch({force("P", 450, 60), force("Q", 700, 195)}),
         {{"tails", "135"}, {"parallelogram", "45"}, {"cosines", "497.0138"}, {"direction", "155.19"}}},
        {"a force and its neighbour",
         "Hibbeler, example 2.1 (from memory)",
         sketch({force("P", 100, 15), force("Q", 150, 80)}),
         {{"tails", "65"}, {"parallelogram", "115"}, {"cosines", "213"}, {"direction", "54.8"}}},
        {"components of two legs",
         "Baker & Haynes, Engineering Statics: Open and Interactive, ch. 2",
         sketch({force("A", 200, 45), force("B", 300, 160)}),
         {{"check", "-140.5"}, {"check", "244.0"}, {"cosines", "281.6"}, {"direction", "119.9"}}},
        {"the parallelogram's short diagonal",
         "OpenStax, Precalculus, 2e, example 8.2.4",
         sketch({force("P", 10, 0), force("Q", 8, 20)}),
         {{"parallelogram", "160"}, {"cosines", "17.7"}}},
        {"two sides and the angle between: 10, 12, 30",
         "OpenStax, Precalculus, 2e, example 8.2.1",
         included(10, 12, 30),
         {{"parallelogram", "30"}, {"cosines", "6.013"}, {"sines", "56.3"}}},
        {"two sides and the angle between: 8, 11, 35",
         "OpenStax, Precalculus, 2e, sec. 8.2, exercise 21",
         included(8, 11, 35),
         {{"parallelogram", "35"}, {"cosines", "6.4"}, {"sines", "45.9"}}},
        {"two triangles, the obtuse angle",
         "OpenStax, Precalculus, 2e, example 8.1.2",
         ambiguous(35, 6, 8),
         {{"sines", "49.9"},
          {"sines", "130.1"},
          {"first", "14.9"},
          {"first", "2.7"},
          {"second", "95.1"},
          {"second", "10.4"}}},
        {"two triangles again",
         "OpenStax, Precalculus, 2e, sec. 8.1, exercise 17",
         ambiguous(35, 12, 17),
         {{"sines", "54.3"},
          {"sines", "125.7"},
          {"first", "19.3"},
          {"first", "6.9"},
          {"second", "90.7"},
          {"second", "20.9"}}},
        {"two slender triangles",
         "OpenStax, Precalculus, 2e, sec. 8.1, exercise 21",
         ambiguous(10, 5, 13),
         {{"sines", "26.8"},
          {"sines", "153.2"},
          {"first", "16.8"},
          {"first", "8.3"},
          {"second", "143.2"},
          {"second", "17.3"}}},
        {"two angles in one sine",
         "OpenStax, Precalculus, 2e, sec. 8.1, exercise 39",
         ambiguous(22, 5, 13),
         {{"sines", "76.9"}, {"sines", "103.1"}}},
        {"one triangle",
         "OpenStax, Precalculus, 2e, example 8.1.3",
         ambiguous(85, 12, 9),
         {{"sines", "48.3"}, {"rest", "46.7"}, {"rest", "8.8"}}},
        {"one triangle with an obtuse angle",
         "OpenStax, Precalculus, 2e, sec. 8.1, exercise 43",
         ambiguous(93, 32.6, 24.1),
         {{"sines", "47.6"}, {"rest", "39.4"}, {"rest", "20.7"}}},
        {"three sides: 20, 25, 18",
         "OpenStax, Precalculus, 2e, example 8.2.2",
         threeSides(20, 25, 18),
         {{"sines", "52.4"}}},
        {"three sides: 5, 7, 10",
         "OpenStax, Precalculus, 2e, try it 8.2.2",
         threeSides(5, 7, 10),
         {{"cosines", "111.8"}, {"sines", "40.5"}, {"sines", "27.7"}}},
        {"components along two lines",
         "Hibbeler, 13e, prob. 2-8",
         sketch({force("U", kToFind, 60), force("V", kToFind, -45)}, force("R", 350, 0)),
         {{"angles", "75"}, {"angles", "60"}, {"angles", "45"}, {"sines", "314"}, {"sines", "256"}}},
        {"a component larger than the force",
         "Hibbeler, example 2.2 (from memory)",
         sketch({force("U", kToFind, 0), force("V", kToFind, 150)}, force("R", 600, 30)),
         {{"sines", "1039"}, {"sines", "600"}}},
        {"the mass on two wires",
         "OpenStax, University Physics, vol. 1, example 6.1",
         balanced({force("W", 15.0 * 9.80, 270), force("T1", kToFind, 150), force("T2", kToFind, 45)}),
         {{"elimination", "108"}, {"elimination", "132"}}},
        {"the smallest force",
         "Hibbeler, example 2.4 (from memory)",
         smallest(sketch({force("P", 800, 60), force("Q", kToFind, kToFind)}, force("R", kToFind, 0)), "Q"),
         {{"legs", "693"}, {"legs", "400"}}},
        {"the missing force",
         "Hibbeler, 14e, prob. 2-2",
         sketch({force("P", 700, 195), force("F", kToFind, kToFind)}, force("R", 500, 90)),
         {{"cosines", "959.78"}, {"direction", "45.2"}}},
        {"three displacements",
         "OpenStax, University Physics, vol. 1, example 2.9",
         sketch({force("A", 10.0, 35), force("B", 7.0, -110), force("C", 8.0, 30)}),
         {{"components", "12.73"}, {"magnitude", "13.11"}, {"direction", "13.9"}}},
        {"four pulls",
         "Beer & Johnston, sample problem 2.3 (from memory)",
         sketch({force("A", 150, 30), force("B", 80, 110), force("C", 110, 270), force("D", 100, -15)}),
         {{"components", "199.1"}, {"components", "14.3"}, {"magnitude", "199.6"}, {"direction", "4.1"}}},
    };
}

class WorkedSteps : public ::testing::TestWithParam<std::size_t> {};

TEST_P(WorkedSteps, ShowWhatTheSourcePrintsOnTheWay) {
    Example example = examples()[GetParam()];
    example.given.figures = 6;
    example.given.angleDecimals = 4;
    SCOPED_TRACE(std::string(example.name) + " (" + example.source + ")");
    const Solved solved = solve(example.given);
    ASSERT_LT(example.answer, solved.solutions.size());
    const Worked worked =
        explain(example.given, solved, construct(example.given, solved, example.answer), example.answer);
    for (const Printed& printed : example.printed)
        EXPECT_TRUE(comesOut(worked, printed))
            << printed.value << " does not come out in step '" << printed.step << "' of\n"
            << toText(worked);
}

INSTANTIATE_TEST_SUITE_P(Published, WorkedSteps, ::testing::Range<std::size_t>(0, examples().size()));

} // namespace TAILPOINT_FILE
} // namespace tailpoint::testing
