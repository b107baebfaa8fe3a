// SPDX-License-Identifier: MIT
// A worked example of every family whose quantities were computed outside the program, by complex numbers and
// Cramer's rule on the sums of components, not by the laws of the triangle. Of angles: between two vectors,
// the argument of their quotient.
#include "core/explain/explain.h"
#include "core/quantity/decimals.h"
#include "tests/support/sketches.h"

#include <gtest/gtest.h>

#include <algorithm>

namespace tailpoint {
namespace TAILPOINT_FILE {

using namespace testing;

struct Value {
    const char* name;
    int answer;
    double value;
};
struct Example {
    const char* name;
    Sketch sketch;
    std::vector<Value> values;
    ExplainOptions options{};
};

ExplainOptions byTriangle() {
    ExplainOptions options;
    options.method = Method::triangle;
    return options;
}

ExplainOptions byComponents() {
    ExplainOptions options;
    options.method = Method::components;
    return options;
}

ExplainOptions byParallelograms() {
    ExplainOptions options;
    options.parallelograms = true;
    return options;
}

std::vector<Example> examples() {
    return {
        {"resultant",
         sketch({force("P", 340, 25), force("Q", 275, -40)}),
         {{"phi", 0, 65.0},
          {"gamma", 0, 115.0},
          {"beta", 0, 28.6479388439346},
          {"R", 0, 519.8601878827717},
          {"theta_R", 0, -3.6479388439345968}}},
        {"equal forces",
         sketch({force("P", 150, 80), force("Q", 150, 10)}),
         {{"phi", 0, 70}, {"beta", 0, 35}, {"R", 0, 245.74561328669753}, {"theta_R", 0, 45.0}}},
        {"along one line",
         sketch({force("P", 410, 30), force("Q", 160, -150)}),
         {{"P_u", 0, 410}, {"Q_u", 0, -160}, {"R", 0, 250}, {"theta_R", 0, 30}}},
        {"four forces",
         sketch({force("A", 120, 15), force("B", 95, 110), force("C", 60, -140), force("D", 80, -75)}),
         {{"A_x", 0, 115.9110991546882},
          {"C_y", 0, -38.56725658119237},
          {"R_x", 0, 58.16204255981266},
          {"R_y", 0, 4.487761702645955},
          {"R", 0, 58.33492264355199},
          {"theta_R", 0, 4.412178895828635}}},
        {"missing force",
         sketch({force("P", 700, 195), force("X", kToFind, kToFind)}, force("R", 500, 90)),
         {{"beta", 0, 105.00000000000001},
          {"X", 0, 959.7777511339615},
          {"gamma", 0, 30.21212697297037},
          {"theta_X", 0, 45.21212697297038}}},
        {"equilibrant",
         sketch({force("P", 300, 20), force("Q", 240, 130), force("X", kToFind, kToFind)},
                force("R", 0, kToFind)),
         {{"gamma", 0, 69.99999999999999}, {"X", 0, 313.6065996772129}, {"theta_X", 0, -114.01669307206257}}},
        {"oblique components",
         sketch({force("A", kToFind, 50), force("B", kToFind, -15)}, force("R", 400, 20)),
         {{"alpha", 0, 35},
          {"beta", 0, 30},
          {"gamma", 0, 115},
          {"A", 0, 253.14862988277574},
          {"B", 0, 220.67558379249834}}},
        {"ring at rest",
         sketch({force("W", 600, -90), force("A", kToFind, 140), force("B", kToFind, 25)},
                force("R", 0, kToFind)),
         {{"phi_W", 0, 115},
          {"phi_A", 0, 115},
          {"phi_B", 0, 130},
          {"A", 0, 599.9999999999999},
          {"B", 0, 507.1419140888392}},
         byTriangle()},
        {"ring at rest by components", // by Cramer's rule in double precision, Python 3
         balanced({force("P", 300, 20), force("Q", kToFind, 135), force("S", kToFind, -100)}),
         {{"P_x", 0, 281.9077862357725},
          {"P_y", 0, 102.60604299770063},
          {"Q", 0, 317.16654184857657},
          {"S", 0, 331.9192548032915}}},
        {"two answers by components",
         sketch({force("P", kToFind, 40), force("Q", 260, kToFind)}, force("R", 400, 10)),
         {{"R_x", 0, 393.9231012048832},
          {"R_y", 0, 69.45927106677214},
          {"d", 0, 200},
          {"P", 1, 180.27768425541402},
          {"P", 2, 512.542638772137}},
         byComponents()},
        {"a force and the sum",
         sketch({force("P", 200, 0), force("Q", kToFind, 90)}, force("R", kToFind, 40)),
         {{"Q", 0, 167.819926235456}, {"R", 0, 261.0814578664557}}},
        {"two answers",
         sketch({force("P", kToFind, 40), force("Q", 260, kToFind)}, force("R", 400, 10)),
         {{"beta", 0, 30},
          {"d", 0, 199.99999999999994},
          {"P", 1, 180.27768425541382},
          {"theta_Q", 1, -10.284862768173769},
          {"gamma", 1, 129.71513723182625},
          {"P", 2, 512.542638772137},
          {"theta_Q", 2, -89.71513723182622},
          {"gamma", 2, 50.28486276817379}}},
        {"two directions",
         sketch({force("P", 300, kToFind), force("Q", 400, kToFind)}, force("R", 500, 0)),
         {{"gamma", 0, 90},
          {"beta", 0, 53.13010235415599},
          {"alpha", 0, 36.86989764584402},
          {"theta_P", 1, 53.13010235415599},
          {"theta_Q", 1, -36.86989764584401},
          {"theta_P", 2, -53.13010235415599},
          {"theta_Q", 2, 36.86989764584401}}},
        {"smallest force",
         smallest(sketch({force("P", 340, 25), force("Q", kToFind, kToFind)}, force("R", kToFind, 0)), "Q"),
         {{"beta", 0, 25}, {"Q", 0, 143.6902089918378}, {"R", 0, 308.14464759246096}, {"theta_Q", 0, -90}}},
        {"smallest sum",
         smallest(sketch({force("P", 400, 35), force("Q", kToFind, -100)}, force("R", kToFind, kToFind)),
                  "R"),
         {{"Q", 0, 282.84271247461896}, {"R", 0, 282.842712474619}, {"theta_R", 0, -9.999999999999991}}},
        {"by parallelograms",
         sketch({force("A", 120, 15), force("B", 95, 110), force("C", 60, -140)}),
         {{"K1", 0, 146.4166966754591},
          {"theta_K1", 0, 55.26802818368714},
          {"R", 0, 89.93323800527261},
          {"theta_R", 0, 65.38665858849313}},
         byParallelograms()},
        {"known forces added up",
         sketch({force("A", 100, 0), force("B", 50, 90), force("U", kToFind, 150), force("V", kToFind, -100)},
                force("R", 0, kToFind)),
         {{"K_x", 0, 100},
          {"K_y", 0, 50},
          {"K", 0, 111.80339887498948},
          {"theta_K", 0, 26.56505117707799},
          {"U", 0, 95.56142554654922},
          {"V", 0, 99.2891378791394}}},
        {"out of reach",
         sketch({force("P", kToFind, 40), force("Q", 120, kToFind)}, force("R", 400, 10)),
         {{"beta", 0, 30}, {"d", 0, 200}}},
        // From here on by mpmath 1.3 with 30 digits: vectors as complex numbers, angles as arguments of
        // quotients, components along a line as the real part of a quotient, magnitudes by Cramer's rule.
        {"nearly parallel",
         sketch({force("P", 310, 12), force("Q", 295, 10.5)}),
         {{"phi", 0, 1.5},
          {"gamma", 0, 178.5},
          {"R", 0, 604.9482000452844},
          {"beta", 0, 0.7314038971878341},
          {"theta_R", 0, 11.26859610281217}}},
        {"tangent",
         sketch({force("P", kToFind, 40), force("Q", 200, kToFind)}, force("R", 400, 10)),
         {{"beta", 0, 30},
          {"d", 0, 200},
          {"gamma", 0, 90},
          {"alpha", 0, 60},
          {"P", 0, 346.4101615137755},
          {"theta_Q", 0, -50}}},
        {"missing among three",
         sketch({force("P", 340, 25), force("Q", 275, -40), force("S", kToFind, kToFind)},
                force("R", 700, 0)),
         {{"P_x", 0, 308.144647592461},
          {"P_y", 0, 143.6902089918378},
          {"Q_x", 0, 210.662221857719},
          {"Q_y", 0, -176.7665926637983},
          {"K_x", 0, 518.8068694501799},
          {"K_y", 0, -33.07638367196051},
          {"S_x", 0, 181.1931305498201},
          {"S_y", 0, 33.07638367196051},
          {"S", 0, 184.1873983617198},
          {"theta_S", 0, 10.34530033142765}}},
        {"along one line in the same sense",
         sketch({force("P", 30, 20), force("Q", 50, 20)}),
         {{"P_u", 0, 30}, {"Q_u", 0, 50}, {"R", 0, 80}, {"theta_R", 0, 20}}},
        {"one force zero",
         sketch({force("P", 250, 30), force("Q", 0, 80)}),
         {{"R", 0, 250}, {"theta_R", 0, 30}}},
        {"the known on a line of action",
         sketch({force("P", kToFind, 20), force("Q", kToFind, 80)}, force("R", 300, 20)),
         {{"alpha", 0, 60}, {"beta", 0, 0}, {"gamma", 0, 120}, {"P", 0, 300}, {"Q", 0, 0}}},
        {"the circle's centre on the line",
         sketch({force("P", kToFind, 20), force("Q", 200, kToFind)}, force("R", 300, 20)),
         {{"R_u", 0, 300}, {"P", 1, 500}, {"theta_Q", 1, -160}, {"P", 2, 100}, {"theta_Q", 2, 20}}},
        {"circles that touch within each other",
         sketch({force("P", 700, kToFind), force("Q", 300, kToFind)}, force("R", 400, 20)),
         {{"P_u", 0, 700}, {"Q_u", 0, -300}, {"R_u", 0, 400}, {"theta_P", 0, 20}, {"theta_Q", 0, -160}}},
        {"smallest force on the line",
         smallest(sketch({force("P", 340, 25), force("Q", kToFind, kToFind)}, force("R", kToFind, 25)), "Q"),
         {{"beta", 0, 0}, {"Q", 0, 0}, {"R", 0, 340}}},
        {"smallest sum without the force",
         smallest(sketch({force("P", 340, 25), force("Q", kToFind, 60)}, force("R", kToFind, kToFind)), "R"),
         {{"phi", 0, 35}, {"P_u", 0, 278.5116950582572}, {"Q", 0, 0}, {"R", 0, 340}, {"theta_R", 0, 25}}},
        {"lines that never meet",
         sketch({force("P", kToFind, 35), force("Q", kToFind, 35)}, force("R", 300, 80)),
         {{"d", 0, 212.1320343559643}, {"R_u", 0, 212.1320343559643}}},
        {"lines that meet behind",
         sketch({force("P", kToFind, 100), force("Q", kToFind, -60)}, force("R", 400, 170)),
         {{"P_u", 0, -895.9056454046999}, {"Q_u", 0, -1098.990967781849}}},
        {"line and circle that meet behind",
         sketch({force("P", kToFind, 150), force("Q", 320, kToFind)}, force("R", 400, 10)),
         {{"d", 0, 257.1150438746157},
          {"R_u", 0, -306.4177772475912},
          {"d_1", 0, 190.5042104872079},
          {"P_u", 1, -115.9135667603833},
          {"P_u", 2, -496.9219877347992}}},
    };
}

/// What the steps say where a quantity has no place in the list of them: differences, and what slips would
/// give. The numbers by mpmath 1.3 with 30 digits, vectors as complex numbers.
struct Told {
    const char* name;
    Sketch sketch;
    std::vector<std::pair<const char*, double>> numbers; ///< words before a number, the number in full
};

std::vector<Told> told() {
    return {
        {"circles that coincide: |v(30°) + v(−30°)|, |2v(30°)|, v(30°) + v(−150°)",
         balanced({force("P", 250, kToFind), force("Q", 250, kToFind)}),
         {
             {"mirrored in the axis, they would leave ", 433.0127018922193},
             {"In one common direction they would make ", 500},
         }},
        {"all given: v(340, 25°) + v(275, −40°) − v(520, −3.6°)",
         sketch({force("P", 340, 25), force("Q", 275, -40)}, force("R", 520, -3.6)),
         {{"Δ = ", 0.4569358657679979}, {"of what the forces add up to: |ΣF| = ", 519.8601878827717}}},
        {"out of reach: 500 − (150 + 200)",
         sketch({force("P", 150, kToFind), force("Q", 200, kToFind)}, force("R", 500, 0)),
         {{"R is ", 150}}},
        {"too weak: 400 sin 30° − 150",
         sketch({force("P", kToFind, 40), force("Q", 150, kToFind)}, force("R", 400, 10)),
         {{"is smaller than d = 200 N, by ", 50},
          {"in place of the sine it would come out as ", 346.4101615137755}}},
    };
}

constexpr double kOutside = 1e-9; // what doubles leave of some 700 N and 180°, with room

void expectAll(const Example& example) {
    const Solved solved = solve(example.sketch);
    const auto found =
        quantitiesOf(example.sketch, solved, construct(example.sketch, solved), example.options);
    for (const Value& expected : example.values) {
        const auto at = std::find_if(found.begin(), found.end(), [&](const WorkedQuantity& one) {
            return one.name == expected.name && one.thing.id.answer == expected.answer;
        });
        ASSERT_NE(at, found.end()) << example.name << ": " << expected.name << ", " << expected.answer;
        EXPECT_NEAR(at->value, expected.value, kOutside) << example.name << ": " << expected.name;
    }
}

TEST(OutsideNumbers, HoldForAnExampleOfEveryFamily) {
    for (const Example& example : examples())
        expectAll(example);
}

TEST(OutsideNumbers, HoldForWhatTheStepsSay) {
    for (const Told& row : told()) {
        const Solved solved = solve(row.sketch);
        const std::string text =
            toText(explain(row.sketch, solved, construct(row.sketch, solved)), Minus::ascii, 10'000);
        for (const auto& [words, number] : row.numbers) {
            const auto at = text.rfind(words);
            ASSERT_NE(at, std::string::npos) << row.name << ": " << words << "\n" << text;
            const double said = std::stod(text.substr(at + std::string(words).size()));
            EXPECT_DOUBLE_EQ(roundedToFigures(said, 3), roundedToFigures(number, 3))
                << row.name << ": " << words;
        }
    }
}

/// A line of the solution carries the number that was computed outside, to the digits of an answer.
TEST(OutsideNumbers, AreWhatTheStepsShow) {
    std::size_t shown = 0;
    for (const Example& example : examples()) {
        const Solved solved = solve(example.sketch);
        const Things things(example.sketch);
        const Worked worked =
            explain(example.sketch, solved, construct(example.sketch, solved), 0, example.options);
        for (const Step& step : worked.steps)
            for (const Working& working : step.workings)
                for (const Value& expected : example.values) {
                    if (!working.subject || !working.value || working.value->id.answer != expected.answer)
                        continue;
                    QuantityId common = working.value->id;
                    common.answer = 0;
                    if (common.what == What::none || things.at(common).plain != expected.name)
                        continue;
                    const bool angle = dimensionOf(common.what) == Dimension::angle;
                    const double rounded = angle ? roundedToDecimals(expected.value, 1)
                                                 : roundedToFigures(expected.value, example.sketch.figures);
                    const double carried = shownValue(*working.value);
                    EXPECT_DOUBLE_EQ(angle ? roundedToDecimals(carried, 1)
                                           : roundedToFigures(carried, example.sketch.figures),
                                     rounded)
                        << example.name << ": " << toText(*working.subject);
                    ++shown;
                }
    }
    EXPECT_GT(shown, 40U);
}

} // namespace TAILPOINT_FILE
} // namespace tailpoint
