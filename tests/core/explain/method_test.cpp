// SPDX-License-Identifier: MIT
// The choice of method: by the force triangle or by components, each the other's check.
#include "core/explain/explain.h"
#include "tests/core/explain/questions.h"
#include "tests/support/sketches.h"

#include <algorithm>
#include <cmath>
#include <gtest/gtest.h>
#include <map>

namespace tailpoint {
namespace TAILPOINT_FILE {

using namespace testing;

Worked workedBy(Method method, const Sketch& sketch, const Solved& solved, std::size_t solution = 0) {
    ExplainOptions options;
    options.method = method;
    return explain(sketch, solved, construct(sketch, solved, solution), solution, options);
}

std::string workedText(Method method, const Sketch& sketch) {
    return toText(workedBy(method, sketch, solve(sketch)), Minus::ascii, 1000);
}

bool hasStep(const Worked& worked, StepKey key) {
    return std::any_of(worked.steps.begin(), worked.steps.end(),
                       [&](const Step& step) { return step.key == key; });
}

bool contains(const std::string& text, const std::string& words) {
    return text.find(words) != std::string::npos;
}

double scaleOf(const Solution& solution) {
    double scale = solution.sum.magnitude;
    for (const SolvedForce& force : solution.forces)
        scale += force.magnitude;
    return scale;
}

/// Three cables hold a ring: P = 300 N at 20°, the others along 135° and −100°. By hand, by Lami's form:
/// Q = 300 sin 120°/sin 125° = 317.17, S = 300 sin 115°/sin 125° = 331.92 (common practice, no source).
Sketch ring() {
    return sketch({force("P", 300, 20), force("Q", kToFind, 135), force("S", kToFind, -100)},
                  force("R", 0, kToFind));
}

TEST(Method, ByComponentsWritesBothEquationsAndEliminates) {
    const std::string text = workedText(Method::components, ring());
    EXPECT_NEAR(300 * std::sin(2 * M_PI / 3) / std::sin(125 * M_PI / 180), 317.17, 0.005);
    EXPECT_NEAR(300 * std::sin(115 * M_PI / 180) / std::sin(125 * M_PI / 180), 331.92, 0.005);
    for (const char* line : {"Q cos θ_Q + S cos θ_S + P_x = 0", "Q sin θ_Q + S sin θ_S + P_y = 0", "= 317 N",
                             "= 332 N", "Check by the force triangle", "Both ways give the same numbers."})
        EXPECT_TRUE(contains(text, line)) << line << "\n" << text;
    EXPECT_TRUE(contains(text, "by Lami's form of the law of sines")) << "as the check";
}

TEST(Method, ByTheTriangleIsCheckedByComponents) {
    const std::string text = workedText(Method::triangle, ring());
    EXPECT_TRUE(contains(text, "Lami"));
    EXPECT_TRUE(contains(text, "Check by components"));
    EXPECT_FALSE(contains(text, "The two equations"));
}

/// A negative result is read in words: the line of S taken at 80°, against the −100° at which it acts.
TEST(Method, ReadsANegativeMagnitudeAsTheOtherSense) {
    Sketch against = ring();
    against.forces[2] = either(force("S", kToFind, 80));
    const std::string text = workedText(Method::components, against);
    EXPECT_TRUE(contains(text, "is negative: 𝑺 acts against the sense assumed")) << text;
    EXPECT_TRUE(contains(text, "S = |S_u|")) << text;
    EXPECT_TRUE(contains(text, "= 332 N")) << text;
}

/// Q = 260 N, P along 40°, R = 400 N at 10°: p = 400 cos 30° = 346.41, d = |−200|, √(260² − 200²) = 166.13.
TEST(Method, OfTwoAnswersIsAQuadraticWhoseDiscriminantDecides) {
    Sketch two = sketch({force("P", kToFind, 40), force("Q", 260, kToFind)}, force("R", 400, 10));
    std::string text = workedText(Method::components, two);
    for (const char* words :
         {"a quadratic equation for P is left", "is positive: there are two roots", "= 346.41 N",
          "= 200.00 N", "= 166.13 N", "to three figures 180 N", "to three figures 513 N"})
        EXPECT_TRUE(contains(text, words)) << words << "\n" << text;
    two.forces[1].magnitude.value = 200; // just touches
    text = workedText(Method::components, two);
    EXPECT_TRUE(contains(text, "is zero: both roots are")) << text;
    two.forces[1].magnitude.value = 500; // beyond R: the other root is negative
    text = workedText(Method::components, two);
    EXPECT_TRUE(contains(text, "One of them is negative")) << text;
}

TEST(Method, SaysWhyThereIsButOneWay) {
    Sketch flat = sketch({force("P", 100, 30), force("Q", kToFind, 30), force("S", kToFind, 120)},
                         force("R", 0, kToFind));
    const Sketch many =
        sketch({force("A", 10, 0), force("B", 20, 50), force("C", 30, 100), force("D", 40, 150),
                force("E", 50, 200), force("F", 60, 250), force("G", 70, 300)});
    EXPECT_TRUE(
        contains(workedText(Method::triangle, many), "So many forces do not come down to one triangle"));
    EXPECT_FALSE(contains(workedText(Method::components, many), "do not come down to"));
    flat.forces[1].direction.form = AngleForm{-150.0};
    EXPECT_TRUE(
        contains(workedText(Method::components, flat), "All vectors lie along one line, and their signs"));
}

/// The check is worked from what is given: a line that is wrong is found out.
TEST(Method, TheTrianglesCheckCanFail) {
    const Sketch asked = ring();
    const Solved solved = solve(asked);
    ExplainOptions options;
    options.changed = {{{What::x, forceVector(0)}, 290.0L}}; // P_x = 300 cos 20° = 281.91
    const std::string text =
        toText(explain(asked, solved, construct(asked, solved), 0, options), Minus::ascii, 1000);
    EXPECT_TRUE(contains(text, "the two ways differ")) << text;
    EXPECT_FALSE(contains(text, "Both ways give the same numbers"));
}

/// Half a unit of the last digit that is shown; of trailing zeros none is taken for a digit.
double halfAUnit(const Formula& number) {
    const std::string& text = number.text;
    const auto point = text.find('.');
    if (point != std::string::npos)
        return 0.5 * std::pow(10.0, -static_cast<double>(text.size() - point - 1));
    const auto last = text.find_last_not_of('0');
    return last == std::string::npos ? 0.5
                                     : 0.5 * std::pow(10.0, static_cast<double>(text.size() - last - 1));
}

bool isTurned(const Solution& solution) {
    return solution.sum.turned || std::any_of(solution.forces.begin(), solution.forces.end(),
                                              [](const SolvedForce& force) { return force.turned; });
}

/// 6,000 seeded questions of every family, by both methods: the answer is the same sentence, each
/// substitution comes to its result, and the found values put into the equations balance them.
TEST(Method, EitherWayLeadsToTheSameAnswer) {
    Dice dice(20261129);
    int byComponents = 0, equations = 0, differ = 0;
    constexpr double kPrinted = 1e-3; // of all magnitudes: two figures and two guard figures in each term
    for (int i = 0; i < 6000 && !HasFailure(); ++i) {
        const Sketch question = someQuestion(dice, i % kQuestionKinds);
        const Solved solved = solve(question);
        for (std::size_t solution = 0; solution < solved.solutions.size(); ++solution) {
            const std::string answer = toText(workedBy(Method::suited, question, solved, solution).answer);
            const double slack = kPrinted * scaleOf(solved.solutions[solution]);
            for (const Method method : {Method::triangle, Method::components}) {
                const Worked worked = workedBy(method, question, solved, solution);
                EXPECT_EQ(toText(worked.answer), answer) << "case " << i;
                byComponents += hasStep(worked, StepKey::equations) ? 1 : 0;
                ExplainOptions options;
                options.method = method;
                std::map<QuantityId, double> values;
                for (const WorkedQuantity& one :
                     quantitiesOf(question, solved, construct(question, solved, solution), options))
                    values[one.thing.id] = one.value;
                const auto lookUp = [&](const Formula& symbol) -> std::optional<long double> {
                    const auto found = values.find(symbol.id);
                    return found == values.end() ? std::nullopt : std::optional<long double>(found->second);
                };
                for (const Step& step : worked.steps)
                    for (const Working& w : step.workings) {
                        if (step.key == StepKey::equations && w.general && !w.subject &&
                            solved.solutions.size() == 1 && !isTurned(solved.solutions[0])) {
                            const auto left = evaluate(w.general->parts[0], question.angleUnit, lookUp),
                                       right = evaluate(w.general->parts[1], question.angleUnit, lookUp);
                            if (left && right) {
                                ++equations;
                                EXPECT_NEAR(static_cast<double>(*left), static_cast<double>(*right), slack)
                                    << "case " << i << ": " << toText(*w.general);
                            }
                        }
                        if (!w.substituted || !w.value || w.value->sub == "°" || w.value->sub == "rad" ||
                            w.value->sub == "gon" || w.value->text.find('e') != std::string::npos)
                            continue;
                        const auto value = evaluate(*w.substituted, question.angleUnit);
                        ASSERT_TRUE(value) << "case " << i << ": " << toText(*w.substituted);
                        EXPECT_NEAR(static_cast<double>(*value), shownValue(*w.value),
                                    1.000001 * halfAUnit(*w.value) + 1e-9)
                            << "case " << i << ", step " << nameOf(step.key) << ": "
                            << toText(*w.substituted);
                    }
                differ += contains(toText(worked, Minus::ascii, 1000), "the two ways differ") ? 1 : 0;
            }
        }
    }
    EXPECT_GT(byComponents, 1500);
    EXPECT_GT(equations, 2000);
    EXPECT_EQ(differ, 0) << "checks that find a right answer wrong";
}

} // namespace TAILPOINT_FILE
} // namespace tailpoint
