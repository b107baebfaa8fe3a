// SPDX-License-Identifier: MIT
// A check that can fail: one line of the solution is changed, and what the check says turns.
#include "core/derive/chain.h"
#include "core/explain/explain.h"
#include "tests/core/explain/questions.h"

#include <array>
#include <gtest/gtest.h>

namespace tailpoint {
namespace TAILPOINT_FILE {

using namespace testing;

constexpr const char* kSlip = "there is a slip";

std::string checkOf(const Sketch& sketch, const ExplainOptions& options, std::size_t solution = 0) {
    const Solved solved = solve(sketch);
    for (const Step& step :
         explain(sketch, solved, construct(sketch, solved, solution), solution, options).steps)
        if (step.key == StepKey::check)
            return toText(step, Minus::ascii, 10'000);
    return {};
}

bool tellsOfASlip(const std::string& text) {
    return text.find(kSlip) != std::string::npos;
}

ExplainOptions changed(const QuantityId& quantity, long double value) {
    ExplainOptions options;
    options.changed = {{quantity, value}};
    return options;
}

struct Row {
    const char* name;
    Sketch sketch;
    QuantityId line;
    double wrong;
    const char* right; ///< what is said of the right solution
    Method method = Method::suited;
};

/// Right: 28.648°, 959.78 N, 366.03 N, 20.285°, 143.69 N, 257.42 N, 53.130°, 36.870°
/// (tests/core/explain/golden); K_x = 350 − 120 cos 75° − 90 cos 140° = 387.89 N, and −90°.
std::vector<Row> rows() {
    const Force unknown = force("X", kToFind, kToFind);
    return {
        {"resultant",
         sketch({force("P", 340, 25), force("Q", 275, -40)}),
         {What::opposite, forceVector(1)},
         29.648,
         "Magnitude and direction are those found"},
        {"missing force", sketch({force("P", 700, 195), unknown}, force("R", 500, 90)),
         magnitudeId(forceVector(1)), 969.78, "both sides agree"},
        {"ring at rest", balanced({force("P", 500, 270), force("A", kToFind, 150), force("B", kToFind, 45)}),
         magnitudeId(forceVector(1)), 376.03, "the forces are in equilibrium", Method::triangle},
        {"two answers",
         sketch({force("P", kToFind, 40), force("Q", 260, kToFind)}, force("R", 400, 10)),
         {What::opposite, forceVector(0), {}, 1},
         21.285,
         "both sides agree"},
        {"smallest force",
         smallest(sketch({force("P", 340, 25), force("Q", kToFind, kToFind)}, force("R", kToFind, 0)), "Q"),
         magnitudeId(forceVector(1)), 159, "both sides agree"},
        {"table",
         sketch({force("P", 340, 25), force("Q", 275, -40), force("S", 160, 118), force("T", 210, -152.5),
                 force("U", 95, 90)}),
         {What::x, kSumVector},
         267.42,
         "so both ways agree"},
        {"two directions",
         sketch({force("P", 300, kToFind), force("Q", 400, kToFind)}, force("R", 500, 0)),
         {What::opposite, forceVector(1)},
         54.13,
         "both sides agree"},
        {"known forces added up, by components",
         sketch({force("A", 120, 75), force("B", 90, 140), force("P", kToFind, 20), force("Q", kToFind, -60)},
                force("R", 350, 0)),
         {What::x, kKnownVector},
         397.89,
         "both sides agree",
         Method::components},
        {"smallest, at right angles",
         smallest(sketch({force("P", 340, 25), force("Q", kToFind, kToFind)}, force("R", kToFind, 0)), "Q"),
         directionId(forceVector(1)), -88, "at right angles to it, and so the smallest"},
        {"by parallelograms",
         sketch({force("P", 30, 0), force("Q", 40, 90), force("S", 20, 200)}),
         {What::opposite, forceVector(0), {}, 0, 1},
         37.87,
         "both ways agree"},
    };
}

TEST(CheckByComponents, TellsOfAChangedLine) {
    for (const Row& row : rows()) {
        ExplainOptions plain;
        plain.parallelograms = std::string(row.name) == "by parallelograms";
        plain.method = row.method;
        const std::string right = checkOf(row.sketch, plain);
        EXPECT_NE(right.find(row.right), std::string::npos) << row.name << ":\n" << right;
        EXPECT_FALSE(tellsOfASlip(right)) << row.name;
        ExplainOptions slipped = changed(row.line, row.wrong);
        slipped.parallelograms = plain.parallelograms;
        slipped.method = plain.method;
        const std::string wrong = checkOf(row.sketch, slipped);
        EXPECT_TRUE(tellsOfASlip(wrong)) << row.name << ":\n" << wrong;
        EXPECT_EQ(wrong.find(row.right), std::string::npos) << row.name;
    }
}

/// Where all lie on one line nothing is worked out.
bool isLine(const Worked& worked, const QuantityId& quantity) {
    return std::any_of(worked.steps.begin(), worked.steps.end(), [&](const Step& step) {
        return std::find(step.lines.begin(), step.lines.end(), quantity) != step.lines.end();
    });
}

double scaleOf(const Solution& solution) {
    double scale = solution.sum.magnitude;
    for (const SolvedForce& force : solution.forces)
        scale += force.magnitude;
    return scale;
}

/// What is asked, changed by so much that no rounding explains it.
std::optional<std::pair<QuantityId, long double>> changedAnswer(const Sketch& sketch, const Solved& solved,
                                                                const Worked& worked, bool way) {
    const Solution& first = solved.solutions[0];
    for (const auto& [quantity, value] : solvedValues(sketch, solved)) {
        const bool angle = quantity.what == What::direction;
        const SolvedForce& vector = quantity.of == kSumVector ? first.sum : first.forces[quantity.of.index];
        if (angle != way || quantity.answer > 1 || !isLine(worked, quantity) ||
            vector.magnitude < 0.2 * scaleOf(first))
            continue;
        return std::pair(quantity, angle ? value + turnIn(sketch.angleUnit) / 40 : value * 1.2L);
    }
    return std::nullopt;
}

TEST(CheckByComponents, AgreesWithWhatIsRightAndWithNothingElse) {
    constexpr std::uint64_t seed = 20261129;
    constexpr int cases = 3000;
    Dice dice(seed);
    int right = 0, sizes = 0, ways = 0;
    for (int i = 0; i < cases; ++i) {
        const Sketch sketch = someQuestion(dice, i % kQuestionKinds);
        const Solved solved = solve(sketch);
        if (solved.solutions.empty())
            continue;
        const std::string told = checkOf(sketch, {});
        EXPECT_FALSE(tellsOfASlip(told)) << "seed " << seed << ", case " << i << ":\n" << told;
        ++right;
        for (const bool way : {false, true}) {
            const auto change =
                changedAnswer(sketch, solved, explain(sketch, solved, construct(sketch, solved)), way);
            if (!change || solved.solutions[0].sum.magnitude < 50)
                continue;
            const std::string wrong = checkOf(sketch, changed(change->first, change->second));
            EXPECT_TRUE(tellsOfASlip(wrong)) << "seed " << seed << ", case " << i << ":\n" << wrong;
            ++(way ? ways : sizes);
        }
    }
    EXPECT_GT(right, cases / 2);
    EXPECT_GT(sizes, cases / 4);
    EXPECT_GT(ways, cases / 4);
}

/// Whatever figures and decimals are shown: an angle with more places than the components' figures carry too.
TEST(Check, OfARightSolutionFindsNoSlipHoweverItIsRounded) {
    constexpr std::uint64_t seed = 20261130;
    constexpr int cases = 4000;
    Dice dice(seed);
    int told = 0;
    for (int i = 0; i < cases; ++i) {
        Sketch sketch = someQuestion(dice, i % kQuestionKinds);
        sketch.figures = 1 + i / 7 % 6;
        sketch.angleDecimals = i % 7;
        const Solved solved = solve(sketch);
        for (std::size_t answer = 0; answer < solved.solutions.size(); ++answer)
            for (const Method method : {Method::triangle, Method::components}) {
                ExplainOptions options;
                options.method = method;
                const std::string check = checkOf(sketch, options, answer);
                EXPECT_FALSE(tellsOfASlip(check))
                    << "seed " << seed << ", case " << i << ", figures " << sketch.figures << ", decimals "
                    << sketch.angleDecimals << ":\n"
                    << check;
                ++told;
            }
    }
    EXPECT_GT(told, cases);
}

/// Of a right solution nothing lies outside the estimate, and the check says so with numbers in every family.
TEST(Check, ReturnsToTheEstimate) {
    constexpr std::uint64_t seed = 20261129;
    constexpr int cases = 3000;
    Dice dice(seed);
    int returned = 0;
    for (int i = 0; i < cases; ++i) {
        const Sketch sketch = someQuestion(dice, i % kQuestionKinds);
        const Solved solved = solve(sketch);
        if (solved.solutions.empty())
            continue;
        ExplainOptions options;
        options.method = std::array{Method::suited, Method::triangle, Method::components}[dice.whole(3)];
        options.parallelograms = dice.toss();
        const std::string told = checkOf(sketch, options);
        EXPECT_NE(told.find("The estimate "), std::string::npos) << "seed " << seed << ", case " << i << ":\n"
                                                                 << told;
        EXPECT_EQ(told.find("or too much was rounded"), std::string::npos)
            << "seed " << seed << ", case " << i << ":\n"
            << told;
        ++returned;
    }
    EXPECT_GT(returned, cases / 2);
}

/// What each family's estimate said, and what came out (the numbers: tests/core/explain/golden and
/// outside_test.cpp).
TEST(Check, SetsTheAnswerBesideTheEstimatesNumbers) {
    const std::vector<std::pair<Sketch, std::string>> rows{
        {sketch({force("P", 340, 25), force("Q", 275, -40)}),
         "between 437 N and 615 N: R = 520 N lies between"},
        {sketch({force("P", 340, 25), force("Q", 275, -40)}), "β = 28.648° is less than half of φ, 32.5°"},
        {sketch({force("P", 310, 12), force("Q", 295, 10.5)}), "R = 604.95 N lies between"},
        {sketch({force("P", 300, 0), force("Q", 400, 90)}), "The estimate said 500 N: R = 500 N"},
        {sketch({force("P", kToFind, 40), force("Q", 260, kToFind)}, force("R", 400, 10)),
         "two answers, from 140 N to 660 N: P′ = 180 N and P″ = 513 N both lie there"},
        {balanced({force("P", 500, 270), force("A", kToFind, 150), force("B", kToFind, 45)}),
         "smaller than P = 500 N, and B the greater one, as they are: B = 448.29 N and A = 366.03 N"},
        {sketch({force("P", 300, kToFind), force("Q", 400, kToFind)}, force("R", 500, 0)),
         "36.870° is less than the 53.130° of"},
        {smallest(sketch({force("P", 340, 25), force("Q", kToFind, kToFind)}, force("R", kToFind, 0)), "Q"),
         "less than P = 340 N: Q = 144 N and R = 308 N both are"},
        {sketch({force("P", 700, 195), force("X", kToFind, kToFind)}, force("R", 500, 90)),
         "between 860 N and 1200 N: X = 960 N lies between"},
    };
    for (const auto& [asked, expected] : rows) {
        const std::string told = checkOf(asked, {});
        EXPECT_NE(told.find(expected), std::string::npos) << expected << ":\n" << told;
    }
}

/// By hand: 5.0° + 35.989° of the triangle is 40.989°, where the components have come to 40.990°.
TEST(CheckByTheTriangle, RepeatsItsOwnDigitsBesideTheEstimate) {
    ExplainOptions byComponents;
    byComponents.method = Method::components;
    const Sketch two = sketch({force("P", 250, kToFind), force("Q", 300, kToFind)}, force("R", 420, 5));
    for (const std::size_t answer : {0U, 1U}) {
        const std::string told = checkOf(two, byComponents, answer);
        EXPECT_NE(told.find("= 35.989°"), std::string::npos) << told;
        EXPECT_NE(told.find("35.989° is less than the 44.843° of"), std::string::npos) << told;
    }
}

TEST(CheckByTheTriangle, LeavesOutLinesThatLeadNowhere) {
    ExplainOptions byComponents;
    byComponents.method = Method::components;
    const Sketch held = balanced({force("P", 340, 25), force("Q", 275, -40), force("H", kToFind, kToFind)});
    const std::string told = checkOf(held, byComponents);
    EXPECT_NE(told.find("H = √(P² + Q² - 2PQ cos γ)"), std::string::npos) << told;
    EXPECT_EQ(told.find("φ"), std::string::npos) << "which only Lami's form takes:\n" << told;
}

/// By hand: 16.0 − 243 + 159 − 19.0 + 87.9 = 0.9, one place behind the point as in what is added.
TEST(CheckByComponents, ByHandSaysNoZerosThatItsTermsDoNotHave) {
    ExplainOptions byHand;
    byHand.handRounding = true;
    const std::string told = checkOf(sketch({force("P", 340, 25), force("Q", 275, -40), force("S", 160, 118),
                                             force("T", 210, -152.5), force("U", 95, 90)}),
                                     byHand);
    EXPECT_NE(told.find("= 0.9 N\n"), std::string::npos) << told;
    EXPECT_EQ(told.find("0.900 N"), std::string::npos) << told;
}

/// P = 420 N at 2.5°, Q = 419.9 N at −177.49°: R is the hypotenuse of 0.1 N and 420 · 0.01° · π/180 = 0.073
/// N, and (594/0.124)² has seven digits.
TEST(CancellingSquares, GiveWayToComponentsAndAreToldOf) {
    const Sketch nearly = sketch({force("P", 420, 2.5), force("Q", 419.9, -177.49)});
    const Solved solved = solve(nearly);
    const Worked worked = explain(nearly, solved, construct(nearly, solved));
    const std::string text = toText(worked, Minus::ascii, 10'000);
    EXPECT_NE(text.find("seven leading digits of the squares would cancel"), std::string::npos) << text;
    for (const Step& step : worked.steps)
        EXPECT_NE(step.key, StepKey::cosines);
    const Sketch plain = sketch({force("P", 420, 2.5), force("Q", 415, -178.5)});
    const Solved triangle = solve(plain);
    EXPECT_NE(toText(explain(plain, triangle, construct(plain, triangle))).find("law of cosines"),
              std::string::npos);
}

} // namespace TAILPOINT_FILE
} // namespace tailpoint
