// SPDX-License-Identifier: MIT
// A worked example of every family, line by line. The sources' printed answers are among the rows; the lines
// between were computed by hand with seven-figure tables of sines (and once more with an independent
// program), not taken from this one.
#include "core/derive/chain.h"
#include "tests/support/printed.h"

#include <algorithm>

namespace tailpoint::testing {
namespace TAILPOINT_FILE {

/// A quantity by its plain name, and its printed value.
struct Row {
    const char* plain;
    const char* printed;
};

struct Example {
    const char* source;
    Sketch sketch;
    Route::Way way;
    const char* begun; ///< force at which the triangle is begun, or empty: as the first of the routes
    std::vector<Row> lines;
};

constexpr Route::Way kTriangle = Route::Way::triangle, kComponents = Route::Way::components,
                     kParallelograms = Route::Way::parallelograms;

Sketch byBearings() {
    Sketch made = sketch({bearing("A", 550, 'N', 43, 'E'), bearing("B", 25, 'N', 15, 'E')});
    made.reference = {90, Sense::cw};
    return made;
}

std::vector<Example> examples() {
    const Sketch two = sketch({force("P", 40, 20), force("Q", 60, 45)});
    const Sketch missing = sketch({force("P", 700, 195), force("X", kToFind, kToFind)}, force("R", 500, 90));
    const Sketch oblique = sketch({force("A", kToFind, -47), force("B", kToFind, 90)}, force("R", 280, 67));
    const Sketch hung = balanced({force("T1", kToFind, 150), force("T2", kToFind, 45), force("W", 147, 270)});
    const Sketch ambiguous = sketch({force("P", kToFind, 0), force("Q", 6, kToFind)}, force("R", 8, 35));
    const Sketch sides = sketch({force("P", 20, kToFind), force("Q", 18, kToFind)}, force("R", 25, 0));
    const Sketch least =
        smallest(sketch({force("A", 3.7, 240), force("B", 2, 150), force("U", kToFind, kToFind)},
                        force("R", kToFind, 180)),
                 "U");
    const Sketch leastSum =
        smallest(sketch({force("A", 5, 0), force("B", 4, 270), force("F", kToFind, 120)}), "R");
    return {
        {"Beer and Johnston, Statics, 9th ed., Sample Problem 2.1",
         two,
         kTriangle,
         "P",
         {{"phi", "25"},
          {"gamma", "155"},
          {"R^2", "9550.277"},
          {"R", "97.72552"},
          {"sin beta", "0.2594726"},
          {"beta", "15.03877"},
          {"theta_R", "35.03877"}}},
        {"the same, begun at the greater force",
         two,
         kTriangle,
         "Q",
         {{"R", "97.73"}, {"sin alpha", "0.1729817"}, {"alpha", "9.961229"}, {"theta_R", "35.04"}}},
        {"the same by components",
         two,
         kComponents,
         "",
         {{"P_x", "37.58770"},
          {"P_y", "13.68081"},
          {"Q_x", "42.42641"},
          {"Q_y", "42.42641"},
          {"R_x", "80.01411"},
          {"R_y", "56.10721"},
          {"R^2", "9550.277"},
          {"R", "97.73"},
          {"delta_R", "35.03877"},
          {"theta_R", "35.04"}}},
        {"OpenStax, Calculus, vol. 3, sec. 2.1, exercise 53; from north, clockwise",
         byBearings(),
         kTriangle,
         "A",
         {{"theta_A", "43"},
          {"theta_B", "15"},
          {"phi", "28"},
          {"gamma", "152"},
          {"R^2", "327406.1"},
          {"R", "572.19"},
          {"beta", "1.175328"},
          {"theta_R", "41.82"}}},
        {"Hibbeler, Statics, 14th ed., Problem 2-2",
         missing,
         kTriangle,
         "P",
         {{"beta", "105"},
          {"X^2", "921173.3"},
          {"X", "959.78"},
          {"sin gamma", "0.5032029"},
          {"gamma", "30.21213"},
          {"theta_X", "45.2"}}},
        {"the same, begun at the resultant",
         missing,
         kTriangle,
         "R",
         {{"sin alpha", "0.7044840"}, {"alpha", "44.78787"}, {"theta_X", "45.21213"}}},
        {"the same by components",
         missing,
         kComponents,
         "",
         {{"R_x", "0"},
          {"R_y", "500"},
          {"P_x", "-676.1481"},
          {"P_y", "-181.1733"},
          {"X_x", "676.1481"},
          {"X_y", "681.1733"},
          {"X", "959.78"},
          {"delta_X", "45.21213"},
          {"theta_X", "45.2"}}},
        {"Paulson, Statics notebooks (2020), notebook 2, example B",
         oblique,
         kTriangle,
         "",
         {{"gamma", "43"},
          {"alpha", "23"},
          {"beta", "114"},
          {"A", "160.4178578478851"},
          {"B", "375.063553109552"}}},
        {"the same by components",
         oblique,
         kComponents,
         "",
         {{"R_x", "109.4047"}, {"R_y", "257.7414"}, {"A", "160.4178578478851"}, {"B", "375.063553109552"}}},
        {"OpenStax, University Physics, vol. 1, Example 6.1 (15.0 kg, g = 9.80)",
         hung,
         kTriangle,
         "",
         {{"phi_T1", "135"},
          {"phi_T2", "120"},
          {"phi_W", "105"},
          {"T1", "108"},
          {"T2", "132"},
          {"T1", "107.6115"},
          {"T2", "131.7966"}}},
        {"the same by components",
         hung,
         kComponents,
         "",
         {{"W_x", "0"}, {"W_y", "-147"}, {"T1", "107.6115"}, {"T2", "131.7966"}}},
        {"OpenStax, Precalculus 2e, Example 8.1.2",
         ambiguous,
         kTriangle,
         "",
         {{"beta", "35"},
          {"d", "4.588611"},
          {"sin gamma", "0.7647686"},
          {"gamma_0", "49.9"},
          {"gamma'", "49.88641"},
          {"alpha'", "95.1"},
          {"P'", "10.4"},
          {"theta'_Q", "130.1136"},
          {"gamma''", "130.1"},
          {"alpha''", "14.9"},
          {"P''", "2.7"},
          {"theta''_Q", "49.88641"}}},
        {"the same by components",
         ambiguous,
         kComponents,
         "",
         {{"R_x", "6.553216"},
          {"R_y", "4.588611"},
          {"d", "4.588611"},
          {"d_1", "3.865830"},
          {"P'", "10.41905"},
          {"P''", "2.687386"},
          {"Q'_x", "-3.865830"},
          {"Q''_y", "4.588611"},
          {"theta'_Q", "130.1136"},
          {"theta''_Q", "49.88641"}}},
        {"OpenStax, Precalculus 2e, Example 8.2.2",
         sides,
         kTriangle,
         "",
         {{"cos gamma", "0.1375"},
          {"gamma", "82.09679"},
          {"sin alpha", "0.7924014"},
          {"alpha", "52.4"},
          {"beta", "45.49271"},
          {"theta'_P", "45.49271"},
          {"theta'_Q", "-52.41050"},
          {"theta''_P", "-45.49271"},
          {"theta''_Q", "52.41050"}}},
        {"the same by components",
         sides,
         kComponents,
         "",
         {{"P_u", "14.02"},
          {"d_1", "14.26323"},
          {"P'_x", "14.02"},
          {"P'_y", "14.26323"},
          {"Q'_x", "10.98"},
          {"theta'_P", "45.49271"},
          {"theta''_Q", "52.41050"}}},
        {"Paulson, Statics notebooks (2020), notebook 2, example D",
         least,
         kTriangle,
         "",
         {{"A_x", "-1.85"},
          {"B_y", "1"},
          {"K_x", "-3.582051"},
          {"K_y", "-2.204294"},
          {"K^2", "17.69"},
          {"K", "4.205948"},
          {"delta_K", "31.60698"},
          {"theta_K", "-148.3930"},
          {"beta", "31.60698"},
          {"U", "2.2042939940024224"},
          {"R", "3.582051"},
          {"theta_U", "90"}}},
        {"Hibbeler, Statics, 11th ed., Problem 2-51",
         leastSum,
         kTriangle,
         "",
         {{"K", "6.403124"},
          {"theta_K", "-38.65981"},
          {"gamma", "21.34019"},
          {"R", "2.33"},
          {"F", "5.96"},
          {"theta_R", "30.00000"}}},
        {"the same by components",
         leastSum,
         kComponents,
         "",
         {{"K_x", "5"},
          {"K_y", "-4"},
          {"F", "5.964102"},
          {"R_x", "2.017949"},
          {"R_y", "1.165064"},
          {"R", "2.330127"},
          {"theta_R", "30.00000"}}},
        {"Beer and Johnston, Statics, Sample Problem 2.3",
         sketch({force("A", 150, 30), force("B", 80, 110), force("C", 110, 270), force("D", 100, -15)}),
         kComponents,
         "",
         {{"A_x", "129.9"},
          {"A_y", "75.0"},
          {"B_x", "-27.4"},
          {"B_y", "75.2"},
          {"C_x", "0"},
          {"C_y", "-110.0"},
          {"D_x", "96.6"},
          {"D_y", "-25.9"},
          {"R_x", "199.1"},
          {"R_y", "14.3"},
          {"R", "199.6"},
          {"theta_R", "4.1"}}},
        {"by hand: 30, 40 and 20 N at 0, 90 and 200 degrees",
         sketch({force("P", 30, 0), force("Q", 40, 90), force("S", 20, 200)}),
         kParallelograms,
         "",
         {{"phi_1", "90"},
          {"gamma_1", "90"},
          {"K1^2", "2500"},
          {"K1", "50"},
          {"alpha_1", "36.86990"},
          {"theta_K1", "53.13010"},
          {"phi_2", "146.8699"},
          {"gamma_2", "33.13010"},
          {"R^2", "1225.137"},
          {"R", "35.00195"},
          {"alpha_2", "18.19743"},
          {"theta_R", "71.32753"}}},
        {"by hand: 30 and 50 N along one line, opposed",
         sketch({force("P", 30, 200), force("Q", 50, 20)}),
         kTriangle,
         "",
         {{"P_u", "-30"}, {"Q_u", "50"}, {"R_u", "20"}, {"R", "20"}, {"theta_R", "20"}}},
    };
}

Route routeOf(const Example& example, const Solved& solved) {
    for (const Route& route : routesOf(example.sketch, solved))
        if (route.way == example.way &&
            (std::string(example.begun).empty() || Things(example.sketch).name(route.begun) == example.begun))
            return route;
    ADD_FAILURE() << example.source << ": no such way";
    return {};
}

TEST(ChainExamples, ComeOutLineByLine) {
    for (const Example& example : examples()) {
        const Solved solved = solve(example.sketch);
        const Things things(example.sketch);
        const Chain chain = chainOf(example.sketch, solved, things, routeOf(example, solved));
        const Values values = evaluate(chain, givenValues(chain, example.sketch));
        for (const Row& row : example.lines) {
            const auto line = std::find_if(chain.lines.begin(), chain.lines.end(), [&](const Line& l) {
                return things.at(l.subject).plain == row.plain;
            });
            ASSERT_TRUE(line != chain.lines.end()) << example.source << ": no line for " << row.plain;
            const auto value = values.at(line->subject);
            ASSERT_TRUE(value) << example.source << ": " << row.plain;
            EXPECT_TRUE(agrees(static_cast<double>(*value), row.printed))
                << example.source << ": " << row.plain << " = " << static_cast<double>(*value) << ", printed "
                << row.printed;
        }
        for (const Line& line : chain.lines)
            if (line.kind == LineKind::check) {
                EXPECT_NEAR(static_cast<double>(values.at(line.subject).value_or(1)), 0, 1e-12)
                    << example.source;
            }
    }
}

/// 340 N at 25° and 275 N at −40°, and what comes of other numbers in the same lines.
struct Raft {
    Sketch sketch = testing::sketch({force("P", 340, 25), force("Q", 275, -40)});
    Solved solved = solve(sketch);
    Things things{sketch};
    Chain chain = chainOf(sketch, solved, things, {kTriangle, forceVector(0)});
    Values given = givenValues(chain, sketch);
    QuantityId id(const char* plain) const { return things.named(plain).value_or(QuantityId{}); }
    double at(const Values& values, const char* plain) const {
        return static_cast<double>(values.at(id(plain)).value_or(std::nan("")));
    }
};

TEST(ChainDecisions, AreTakenAnewWithEveryNumber) {
    const Raft raft;
    Values values = evaluate(raft.chain, raft.given);
    EXPECT_NEAR(raft.at(values, "phi"), 65, 1e-12);
    EXPECT_NEAR(raft.at(values, "R"), 519.8602, 1e-4);
    EXPECT_NEAR(raft.at(values, "theta_R"), -3.6479, 1e-4); // turned back from P

    Values across = raft.given; // the same two forces turned by 145°: across the axis
    across.set(raft.id("theta_P"), 170);
    across.set(raft.id("theta_Q"), -170);
    values = evaluate(raft.chain, across);
    EXPECT_NEAR(raft.at(values, "phi"), 20, 1e-12) << "what is left of the full turn";
    EXPECT_NEAR(raft.at(values, "theta_R"), 178.9323, 1e-4); // by components: atan2(11.28713, -605.6568)

    across.set(raft.id("theta_P"), -170); // the mirror image
    across.set(raft.id("theta_Q"), 170);
    values = evaluate(raft.chain, across);
    EXPECT_NEAR(raft.at(values, "phi"), 20, 1e-12);
    EXPECT_NEAR(raft.at(values, "theta_R"), -178.9323, 1e-4);

    Values obtuse = raft.given; // P much the smaller, nearly opposed: beside it lies an obtuse angle
    obtuse.set(raft.id("P"), 100);
    obtuse.set(raft.id("theta_Q"), -145);
    values = evaluate(raft.chain, obtuse); // by components: 100 at 25, 275 at -145
    EXPECT_NEAR(raft.at(values, "beta"), 164.3817, 1e-4);
    EXPECT_NEAR(raft.at(values, "theta_R"), -139.3817, 1e-4);
}

TEST(ChainDecisions, AWrongValueIsCarriedOn) {
    const Raft raft;
    // 334.96 is what a plus in place of the last minus gives; by the law of sines beta = 48.0803 follows.
    const Values values = evaluate(raft.chain, raft.given, {{raft.id("R"), 334.9558L}});
    EXPECT_NEAR(raft.at(values, "beta"), 48.0803, 2e-4);
    EXPECT_NEAR(raft.at(values, "theta_R"), 25 - 48.0803, 2e-4);
}

TEST(ChainDecisions, ALineWithoutAValueLeavesTheLaterOnesWithoutOne) {
    const Raft raft;
    const Values values = evaluate(raft.chain, raft.given, {{raft.id("R"), 200.0L}}); // 275 sin 115/200 > 1
    EXPECT_TRUE(values.at(raft.id("sin beta")));
    EXPECT_FALSE(values.at(raft.id("beta")));
    EXPECT_FALSE(values.at(raft.id("theta_R")));
    EXPECT_EQ(values.taken.size(), raft.chain.lines.size());
}

/// A circle through the tail of the line: U may be 8 cos 30 twice, or nothing at all.
TEST(ChainDecisions, AnAnswerOfNoLengthIsAnAnswer) {
    const Sketch isosceles = sketch({force("U", kToFind, 0), force("V", 8, kToFind)}, force("R", 8, 30));
    const Solved solved = solve(isosceles);
    ASSERT_EQ(solved.solutions.size(), 2U);
    const Things things(isosceles);
    for (const Route& route : routesOf(isosceles, solved)) {
        const Chain chain = chainOf(isosceles, solved, things, route);
        const Values values = evaluate(chain, givenValues(chain, isosceles));
        for (std::uint8_t answer = 1; answer <= 2; ++answer)
            EXPECT_NEAR(static_cast<double>(values.at(magnitudeId(forceVector(0), answer)).value_or(-1)),
                        answer == 1 ? 13.85641 : 0, 5e-6);
    }
}

TEST(ChainRoutes, AreThoseThatLeadToTheAnswer) {
    const auto ways = [](const Sketch& sketch) {
        std::string out;
        for (const Route& route : routesOf(sketch, solve(sketch)))
            out += route.way == kTriangle ? 't' : route.way == kComponents ? 'c' : 'p';
        return out;
    };
    EXPECT_EQ(ways(sketch({force("P", 1, 0), force("Q", 2, 90)})), "ttc");
    EXPECT_EQ(ways(sketch({force("P", 1, 0), force("Q", 2, 90), force("S", 2, 200)})), "cp");
    EXPECT_EQ(ways(sketch({force("P", kToFind, 0), force("Q", kToFind, 90)}, force("R", 2, 30))), "tc");
    EXPECT_EQ(ways(sketch({force("P", 1, 0), force("Q", 2, 0)})), "tc");
    EXPECT_EQ(ways(sketch({force("P", 1, 0), force("Q", 2, 90)}, force("R", 2, 30))), "")
        << "nothing is sought";
    EXPECT_EQ(ways(sketch({force("P", kToFind, 0), force("Q", 2, kToFind)}, force("R", 9, 90))), "")
        << "no answer";
}

} // namespace TAILPOINT_FILE
} // namespace tailpoint::testing
