// SPDX-License-Identifier: MIT
// Each slip's number against its closed form, worked out by an independent program from the forces alone
// (Python, double precision; angles in degrees from +x). Every row of the table of slips is met.
#include "core/mark/mark.h"
#include "tests/support/sketches.h"

#include <algorithm>
#include <fstream>
#include <gtest/gtest.h>
#include <iterator>
#include <set>

namespace tailpoint::testing {
namespace TAILPOINT_FILE {

struct Row {
    std::string id;
    std::vector<std::string> answers;
};
struct Asked {
    std::string name;
    Sketch sketch;
    std::vector<Row> rows;
};

Force mass(std::string name, double kilogrammes, double direction) {
    Force made = force(std::move(name), kToFind, direction);
    made.magnitude = magnitudeOf({kilogrammes, ForceUnit::kgf, {}}, ForceUnit::N, kStandardGravity);
    return made;
}

Sketch inGon(Sketch made) {
    made.angleUnit = AngleUnit::gon;
    return made;
}

Asked twoForces() {
    return {"two forces",
            sketch({force("P", 345, 30), force("Q", 220, -45)}),
            {
                {"angles-added", {"R = 560.404", "theta_R = 24.1684"}},
                {"supplement-in-cosines", {"R = 357.961", "theta_R = -6.4165"}},
                {"root-forgotten", {"R = 206713.7", "theta_R = 29.9411"}},
                {"factor-two-lost", {"R = 432.515", "theta_R = 0.5726"}},
                {"bracket-left-open", {"theta_R = -32.4682"}},
                {"gon-mode", {"R = 423.480", "theta_R = -4.6575"}},
                {"gon-mode", {"R = 474.886", "theta_R = 1.8433"}}, // by components
                {"sine-in-cosines", {"R = 144.213"}},
                {"cosine-in-sines", {"theta_R = 37.1945"}},
                {"radian-mode", {"R = 451.666", "theta_R = 30.4924"}},
                {"radian-mode", {"R = 554.389", "theta_R = 178.7386"}}, // 180 - 1.2614: left of the axis
                {"diagonal-halves-angle", {"theta_R = -7.5000"}},
                {"sides-mismatched", {"theta_R = -17.1348"}},
                {"inverse-forgotten", {"theta_R = 29.5326"}},
                {"inverse-forgotten", {"theta_R = -44.2670"}},
                {"inverse-forgotten", {"theta_R = 0.0373"}},
                {"acute-for-obtuse", {"theta_R = -122.1348"}},
                {"acute-for-obtuse", {"theta_R = 87.8652"}},
                {"referral-turned", {"theta_R = 57.8652"}},
                {"referral-turned", {"theta_R = -92.1348"}},
                {"referral-forgotten", {"theta_R = 27.8652"}},
                {"referral-forgotten", {"theta_R = 47.1348"}},
                {"from-other-force", {"theta_R = -17.1348"}},
                {"right-triangle-assumed", {"R = 409.176", "theta_R = -2.5249"}},
                {"right-triangle-assumed", {"R = 409.176", "theta_R = 12.4751"}},
                {"sine-cosine-exchanged", {"theta_R = 87.8652"}},
                {"sine-cosine-exchanged-once", {"R = 357.961", "theta_R = 66.4165"}},
                {"sine-cosine-exchanged-once", {"R = 357.961", "theta_R = 23.5836"}},
                {"signs-of-directions", {"R_y = -16.9365", "theta_R = -2.1348"}},
                {"component-sign", {"R = 560.404", "theta_R = 35.8316"}},
                {"component-left-out", {"R = 299.258", "theta_R = 3.2444"}},
                {"component-whole", {"R = 500.850", "theta_R = 1.9379"}},
                {"component-whole", {"R = 456.818", "theta_R = -5.9684"}},
                {"components-added", {"R = 471.279"}},
                {"component-for-force", {"R = 16.9365"}},
                {"tangent-inverted", {"theta_R = 87.8652"}},
                {"equation-sign", {"R = 560.404", "theta_R = 35.8316"}},
                {"magnitudes-added", {"R = 565.000"}},
                {"magnitudes-subtracted", {"R = 125.000"}},
                {"direction-averaged", {"theta_R = -7.5000"}},
                {"direction-averaged", {"theta_R = 0.7965"}},
                {"difference-taken", {"R = 357.961", "theta_R = 66.4165"}},
                {"difference-taken", {"R = 357.961", "theta_R = -113.5835"}},
                {"other-sense-read", {"R = 357.961", "theta_R = 66.4165"}},
                {"sign-of-direction", {"R = 560.404", "theta_R = 35.8316"}},
                {"other-axis-read", {"R = 357.961", "theta_R = 23.5836"}},
                {"other-axis-read", {"theta_R = 87.8652"}},
                {"magnitudes-exchanged", {"theta_R = -17.1348"}},
                {"wrong-axis", {"theta_R = 87.8652"}},
                {"wrong-axis", {"theta_R = -87.8652"}},
                {"supplement", {"theta_R = 177.8652"}},
                {"complement", {"theta_R = 87.8652"}},
                {"wrong-turn", {"theta_R = -2.1348"}},
                {"opposite", {"theta_R = -177.8652"}},
                {"unit-confused", {"R = 0.454658"}},
                {"unit-confused", {"R = 102.2111"}},
                {"unit-confused", {"R = 46.36219"}},
                {"unit-confused", {"R = 2022.419"}},
                {"radians-for-degrees", {"theta_R = 0.037260"}},
                {"gons-for-degrees", {"theta_R = 2.37203"}},
                {"decimal-point", {"R = 45.4658"}},
                {"digits-exchanged", {"R = 545"}},
                {"tip-at-midpoint", {"R = 227.329"}},
            }};
}

std::vector<Asked> questions() {
    return {
        twoForces(),
        {"slopes",
         sketch({slope("P", 345, 4, 3), slope("Q", 220, 5, -12)}),
         {{"slope-exchanged", {"R = 300.595", "theta_R = 14.0398"}},
          {"slope-ratio-taken", {"R = 544.630", "theta_R = 0.4127"}},
          {"slope-ratio-taken", {"R = 364.888", "theta_R = 8.7762"}},
          {"slope-shares", {"R = 287.118", "theta_R = -11.0885"}},
          {"slope-shares", {"R = 261.954", "theta_R = -1.6269"}}}}, // both
        {"in gon",
         inGon(sketch({force("P", 2.4, 30), force("Q", 1.8, -50)})),
         {{"degree-mode", {"R = 3.24042", "theta_R = -3.1645"}}, // by components
          {"degree-mode", {"R = 3.64966", "theta_R = 4.7150"}}}},
        {"bearings",
         sketch({bearing("P", 345, 'N', 30, 'E'), bearing("Q", 220, 'N', 70, 'W')}),
         {{"bearing-as-angle", {"R = 264.291", "theta_R = 69.6181"}},
          {"bearing-as-angle", {"R = 514.782", "theta_R = 79.1099"}},
          {"bearing-as-angle", {"R = 440.210", "theta_R = 59.4833"}},
          {"bearing-as-angle", {"R = 532.645", "theta_R = 45.3962"}}}},
        {"three forces",
         sketch({force("A", 100, 20), force("B", 150, 135), force("C", 80, -60)}),
         {{"force-left-out", {"R = 140.789", "theta_R = 94.9290"}},
          {"force-counted-twice", {"R = 193.538", "theta_R = 113.8199"}},
          {"magnitudes-added", {"R = 330.000"}}}},
        {"a missing force",
         sketch({force("P", 345, 30), force("X", kToFind, kToFind)}, force("R", 500, 80)),
         {{"resultant-as-a-force", {"X = 768.627", "theta_X = 59.8889"}}}},
        {"a balancing force",
         balanced({force("P", 345, 30), force("Q", 220, -45), force("X", kToFind, kToFind)}),
         {{"no-sum-turned", {"X = 455", "theta_X = 2.1348"}}}},
        {"a load on two ropes",
         balanced({force("T_A", kToFind, 150), force("T_B", kToFind, 45), force("W", 147, 270)}),
         {{"halved-load", {"T_A = 73.500", "T_B = 73.500"}},
          {"half-load-each", {"T_A = 147.000", "T_B = 103.945"}},
          {"half-load-each", {"T_A = 36.7500", "T_B = 51.9723"}},
          {"equal-tensions", {"T_A = 121.779", "T_B = 121.779"}},
          {"answers-exchanged", {"T_A = 131.797", "T_B = 107.611"}},
          {"cosine-in-sines", {"T_A = 401.611", "T_B = 283.982"}},
          {"cosine-in-sines", {"T_A = 107.611", "T_B = 76.0928"}}, // above the bar alone
          {"ratio-inverted", {"T_A = 200.806", "T_B = 163.957"}},
          {"sides-mismatched", {"T_A = 131.797", "T_B = 107.611"}},
          {"sine-cosine-exchanged", {"T_A = 107.611", "T_B = 76.0928"}},
          {"sine-cosine-exchanged-once", {"T_A = 107.611", "T_B = 76.0928"}},
          {"equation-sign", {"T_A = 401.611", "T_B = 491.872"}}}},
        {"components along oblique lines",
         sketch({force("A", kToFind, -47), force("B", kToFind, 90)}, force("R", 280, 67)),
         {{"perpendicular-for-oblique", {"A = 113.886", "B = 257.741"}},
          {"axis-angle-in-triangle", {"A = 410.558", "B = 300.263"}},
          {"right-side-lost", {"A = 160", "B = 117.322"}},
          {"sides-mismatched", {"A = 375.064", "B = 375"}}}},
        {"two answers",
         sketch({force("P", kToFind, 0), force("Q", 6, kToFind)}, force("R", 8, 35)),
         {{"included-angle-assumed", {"P = 4.62184"}},
          {"discriminant-forgotten", {"P = 6.55322"}},
          {"answers-mixed", {"P = 10.4", "theta_Q = 49.8864"}}}},
        {"the smallest force",
         smallest(sketch({force("A", 3.7, 20), force("U", kToFind, kToFind)}, force("R", kToFind, 60)), "U"),
         {{"smallest-to-the-force", {"U = 3.10467", "theta_U = 110.000", "R = 4.83001"}}}},
        {"left of the axis",
         sketch({force("P", 345, 150), force("Q", 220, -100)}),
         {{"sine-cosine-exchanged-once", {"R = 226.140", "theta_R = 158.7067"}}, // of P, the signs kept
          {"sine-cosine-exchanged", {"R = 468.341", "theta_R = 146.1941"}},      // of both
          {"quadrant-missed", {"theta_R = 7.4655"}},
          {"tangent-inverted", {"theta_R = 82.5346"}},
          {"tangent-inverted", {"theta_R = -97.4655"}}}},
        {"left of the axis and above",
         sketch({force("P", 345, 150), force("Q", 220, 100)}),
         {{"negative-squared", {"R = 194.647"}}}},
        {"one answer of a line and a circle",
         sketch({force("P", kToFind, 0), force("Q", 10, kToFind)}, force("R", 8, 35)),
         {{"given-angle-supplement", {"P = 2.33186"}}}},
        {"a mass",
         balanced({force("T_A", kToFind, 150), force("T_B", kToFind, 45), mass("W", 25, 270)}),
         {{"g-rounded", {"T_A = 183.013", "T_B = 224.144"}},
          {"mass-as-weight", {"T_A = 18.3013", "T_B = 22.4144"}}}},
    };
}

bool isNamed(const Marking& marking, const std::string& id) {
    return std::any_of(marking.slips.begin(), marking.slips.end(), [&](const Finding& finding) {
        return finding.id == id ||
               std::find(finding.also.begin(), finding.also.end(), id) != finding.also.end();
    });
}

std::string joined(const std::vector<std::string>& texts) {
    std::string all;
    for (const std::string& text : texts)
        all += (all.empty() ? "" : ", ") + text;
    return all;
}

TEST(MarkClosedForms, EverySlipIsNamedForItsNumber) {
    for (const Asked& asked : questions()) {
        const Marker marker(asked.sketch, solve(asked.sketch));
        ASSERT_FALSE(marker.refusal()) << asked.name;
        for (const Row& row : asked.rows) {
            const auto read = marker.read(row.answers);
            ASSERT_TRUE(std::holds_alternative<Attempt>(read))
                << asked.name << ": " << std::get<AttemptFault>(read).message;
            const Marking marking = marker.mark(std::get<Attempt>(read));
            EXPECT_TRUE(isNamed(marking, row.id))
                << asked.name << ", " << row.id << ", " << joined(row.answers) << "\n"
                << toText(marking);
        }
    }
}

TEST(MarkClosedForms, TheTableOfTestsMeetsEverySlip) {
    std::set<std::string> met{"order-of-operations", "radian-mode-once", "sense-turned"}; // in tests of their own
    for (const Asked& asked : questions())
        for (const Row& row : asked.rows)
            met.insert(row.id);
    for (const SlipEntry& entry : slipEntries())
        EXPECT_TRUE(met.contains(std::string(entry.id))) << entry.id;
}

TEST(MarkClosedForms, TheGuideHasALineForEverySlip) {
    std::ifstream file(TAILPOINT_SOURCE "/DEVELOPERS.md");
    const std::string guide((std::istreambuf_iterator<char>(file)), std::istreambuf_iterator<char>());
    ASSERT_FALSE(guide.empty());
    for (const SlipEntry& entry : slipEntries())
        EXPECT_NE(guide.find("| " + std::string(entry.id) + " |"), std::string::npos) << entry.id;
}

std::string firstId(const Sketch& asked, const std::vector<std::string>& answers) {
    const Marker marker(asked, solve(asked));
    const auto read = marker.read(answers);
    const auto* attempt = std::get_if<Attempt>(&read);
    const Marking marking = attempt ? marker.mark(*attempt) : Marking();
    return marking.slips.empty() ? "" : marking.slips.front().id;
}

TEST(MarkClosedForms, TheOrderOfOperationsMattersWhereTheCosineIsPositive) {
    // By hand: A = 100 at 0, B = 60 at 120: phi = 120, gamma = 60, (100² + 60² - 2 · 100 · 60) cos 60 = 800
    EXPECT_EQ(firstId(sketch({force("A", 100, 0), force("B", 60, 120)}), {"R = 28.2843"}),
              "order-of-operations");
}

TEST(MarkClosedForms, OneFunctionInRadiansIsFoundAmongTheOthers) {
    // Python: R by sqrt(P² + Q² - 2PQ cos(105 rad)) = 451.666, its sine taken in degrees again:
    // 30 - asin(220 sin 105° / 451.666) = 1.9340
    EXPECT_EQ(
        firstId(sketch({force("P", 345, 30), force("Q", 220, -45)}), {"R = 451.666", "theta_R = 1.9340"}),
        "radian-mode-once");
}

TEST(MarkClosedForms, EqualForcesHalveTheAngleAndNoSlipIsNamedForIt) {
    const Sketch asked = sketch({force("P", 100, 0), force("Q", 100, 60)});
    const Marker marker(asked, solve(asked));
    // By hand: 2 · 100 cos 30 = 173.2 at half of 60
    const Marking marking = marker.mark(std::get<Attempt>(marker.read({"R = 173", "theta_R = 30"})));
    EXPECT_EQ(marking.verdict, Verdict::right);
    EXPECT_TRUE(marking.slips.empty());
}

} // namespace TAILPOINT_FILE
} // namespace tailpoint::testing
