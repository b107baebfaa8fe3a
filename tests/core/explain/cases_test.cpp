// SPDX-License-Identifier: MIT
// What the cases of a sketch come to. Numbers of the raft: by complex numbers in Python's cmath, two
// equations in two unknowns.
#include "core/explain/cases.h"

#include "core/sketch/cases.h"
#include "tests/support/sketches.h"

#include <gtest/gtest.h>

#include <cmath>
#include <numbers>
#include <random>

namespace tailpoint::testing {
namespace TAILPOINT_FILE {

Direction degrees(double value) {
    return {AngleForm{value}, {}};
}
Magnitude size(double value, std::optional<Tolerance> tolerance = {}) {
    return {value, tolerance};
}

/// A raft under the wind W on two lines, of which the magnitudes are sought.
Sketch raft() {
    Sketch made = balanced({force("W", 1.8, 5), force("A", kToFind, 140), force("B", kToFind, 220)});
    made.forceUnit = ForceUnit::kN;
    made.cases = {{"calm", {{"W", size(0.5), degrees(-10)}}},
                  {"storm", {{"W", size(6.4), degrees(20)}}},
                  {"low water", {{"W", size(6.4), degrees(20)}, {"B", {}, degrees(235)}}}};
    return made;
}

const Envelope& envelopeOf(const std::vector<Envelope>& all, int vector, CasePart part) {
    for (const Envelope& one : all)
        if (one.vector == vector && one.part == part)
            return one;
    static const Envelope none;
    ADD_FAILURE() << "no envelope of " << vector << ' ' << nameOf(part);
    return none;
}

std::string namesOf(const EnvelopeEnd& end, const std::vector<CaseState>& states) {
    std::string names;
    for (const CaseAnswer& which : end.by)
        names += (names.empty() ? "" : "; ") + nameOf(which, states);
    return names;
}

void expectEnd(const EnvelopeEnd& end, double value, const char* by, const std::vector<CaseState>& states) {
    ASSERT_TRUE(end.value);
    EXPECT_NEAR(*end.value, value, 1e-9 * std::max(1.0, std::abs(value)));
    EXPECT_EQ(namesOf(end, states), by);
}

TEST(CasesOfASketch, AreSolvedEachBehindWhatIsDrawn) {
    const auto states = caseStates(raft());
    ASSERT_EQ(states.size(), 4u);
    EXPECT_EQ(states[0].name, "as drawn");
    EXPECT_EQ(states[2].name, "storm");
    // Python: 1.0483645993585962, 5.628065546059628, 3.684911393002234
    EXPECT_NEAR(states[0].solved.solutions.at(0).forces[1].magnitude, 1.0483645993585962, 1e-12);
    EXPECT_NEAR(states[2].solved.solutions.at(0).forces[2].magnitude, 5.628065546059628, 1e-12);
    EXPECT_NEAR(states[3].solved.solutions.at(0).forces[1].magnitude, 3.684911393002234, 1e-12);
    EXPECT_TRUE(caseStates(asDrawn(raft())).empty());
}

TEST(TheEnvelope, SaysWhichCaseGovernsEachQuantity) {
    const auto states = caseStates(raft());
    const auto all = envelopesOf(states);
    EXPECT_EQ(all.size(), 6u) << "magnitude, x and y of A and B";
    // Python, the lines of the table in tests' own reckoning (see the head of this file)
    expectEnd(envelopeOf(all, 1, CasePart::magnitude).least, 0.388930956715103, "calm", states);
    expectEnd(envelopeOf(all, 1, CasePart::magnitude).greatest, 3.684911393002234, "low water", states);
    expectEnd(envelopeOf(all, 2, CasePart::magnitude).least, 0.2538566529714364, "calm", states);
    expectEnd(envelopeOf(all, 2, CasePart::magnitude).greatest, 5.628065546059628, "storm", states);
    expectEnd(envelopeOf(all, 1, CasePart::x).least, -2.8228058959951734, "low water", states);
    expectEnd(envelopeOf(all, 2, CasePart::x).least, -4.311348337068354, "storm", states);
    expectEnd(envelopeOf(all, 2, CasePart::y).least, -4.557544303498882, "low water", states);
    expectEnd(envelopeOf(all, 2, CasePart::y).greatest, -0.1631759111665349, "calm", states);
}

TEST(TheEnvelope, NamesEveryCaseThatReachesAnEnd) {
    Sketch made = raft();
    made.cases[2].changes.pop_back(); // the same as the storm
    const auto states = caseStates(made);
    expectEnd(envelopeOf(envelopesOf(states), 2, CasePart::magnitude).greatest, 5.628065546059628,
              "storm; low water", states);
}

TEST(TheEnvelope, GoesToTheEndsOfTheRanges) {
    Sketch made = sketch({force("P", 10, 0), force("Q", 5, 0)});
    made.forces[0].magnitude = size(10, plusMinus(1));
    made.cases = {{"more", {{"P", size(20, plusMinusPercent(10)), {}}}}};
    const auto states = withRanges(caseStates(made));
    const auto all = envelopesOf(states);
    // by hand: 10 - 1 + 5 and 20 + 2 + 5
    expectEnd(envelopeOf(all, kSumIndex, CasePart::magnitude).least, 14, "as drawn", states);
    expectEnd(envelopeOf(all, kSumIndex, CasePart::magnitude).greatest, 27, "more", states);
}

Sketch sumAt(double first, std::vector<double> others) {
    Sketch made = sketch({force("P", 10, first)});
    for (std::size_t i = 0; i < others.size(); ++i)
        made.cases.push_back({"case " + std::to_string(i + 1), {{"P", {}, degrees(others[i])}}});
    return made;
}

TEST(TheEnvelopeOfADirection, IsTheSmallestUnbrokenArc) {
    const auto of = [](const Sketch& made) {
        return envelopeOf(envelopesOf(caseStates(made)), kSumIndex, CasePart::direction);
    };
    // by hand
    Envelope arc = of(sumAt(170, {-170, -175}));
    EXPECT_NEAR(arc.least.value.value(), 170, 1e-9);
    EXPECT_NEAR(arc.greatest.value.value(), 190, 1e-9);
    EXPECT_EQ(arc.greatest.by, (std::vector<CaseAnswer>{{1, 0}}));
    arc = of(sumAt(10, {-20, 5}));
    EXPECT_NEAR(arc.least.value.value(), -20, 1e-9);
    EXPECT_NEAR(arc.greatest.value.value(), 10, 1e-9);
    arc = of(sumAt(40, {40}));
    EXPECT_NEAR(arc.least.value.value(), 40, 1e-9);
    EXPECT_NEAR(arc.greatest.value.value(), 40, 1e-9);
    EXPECT_EQ(arc.least.by.size(), 2u);
    arc = of(sumAt(0, {100, -110}));
    EXPECT_NEAR(arc.least.value.value(), -110, 1e-9);
    EXPECT_NEAR(arc.greatest.value.value(), 100, 1e-9);
}

TEST(TheEnvelopeOfADirection, IsAnyWhereTheRangesCoverTheCircle) {
    Sketch made = sumAt(0, {120, -120});
    made.forces[0].direction.tolerance = plusMinus(61);
    for (LoadCase& one : made.cases)
        one.changes[0].direction->tolerance = plusMinus(61);
    const auto all = envelopesOf(withRanges(caseStates(made)));
    EXPECT_TRUE(envelopeOf(all, kSumIndex, CasePart::direction).anyDirection);
}

TEST(TwoAnswers, AreMatchedByTheirOrderWhereEveryCaseHasTwo) {
    // R = 10 at 0 degrees from two forces of given magnitudes: a triangle and its mirror image.
    Sketch made = sketch({force("P", 8, kToFind), force("Q", 7, kToFind)}, force("R", 10, 0));
    made.cases = {{"more", {{"P", size(9), {}}}}};
    const auto states = caseStates(made);
    ASSERT_TRUE(areMatched(states));
    const auto all = envelopesOf(states);
    ASSERT_EQ(all.size(), 12u) << "direction, x, y of two forces, twice";
    // law of cosines by hand: cos = (8² + 10² - 7²) / 160 and (9² + 10² - 7²) / 180
    const double first = std::acos(115.0 / 160) * 180 / std::numbers::pi,
                 second = std::acos(132.0 / 180) * 180 / std::numbers::pi;
    for (const Envelope& one : all)
        if (one.vector == 0 && one.part == CasePart::direction) {
            const double sense = *one.least.value < 0 ? -1 : 1;
            EXPECT_NEAR(std::abs(*one.least.value), sense > 0 ? second : first, 1e-9);
            EXPECT_NEAR(std::abs(*one.greatest.value), sense > 0 ? first : second, 1e-9);
        }
}

TEST(TwoAnswers, AreAllInOneEnvelopeWhereACaseHasOne) {
    Sketch made = sketch({force("P", 8, kToFind), force("Q", 7, kToFind)}, force("R", 10, 0));
    made.cases = {{"tangent", {{"R", size(15), {}}}}}; // 8 + 7
    const auto states = caseStates(made);
    ASSERT_EQ(states[1].solved.solutions.size(), 1u);
    EXPECT_FALSE(areMatched(states));
    EXPECT_EQ(envelopesOf(states).size(), 6u);
}

std::string all(const std::vector<TableTold>& told) {
    std::string text;
    for (const TableTold& one : told) {
        text += one.heading + '\n';
        for (const auto& row : one.table.rows) {
            for (const Formula& cell : row)
                text += toText(cell) + " | ";
            text += '\n';
        }
        for (const Prose& remark : one.remarks)
            text += toText(remark) + '\n';
    }
    return text;
}

void expectIn(const std::string& part, const std::string& whole) {
    EXPECT_NE(whole.find(part), std::string::npos) << "'" << part << "' is not in\n" << whole;
}

TEST(CasesTold, SayWhatDiffersAndWhatGoverns) {
    Sketch made = raft();
    made.forces[2].limit = TypedForce{5, ForceUnit::kN, {}};
    const auto states = caseStates(made);
    const std::string text = all(casesTold(made, states));
    expectIn("calm | W = 0.500 kN at −10.0° | ", text);
    expectIn("low water | W = 6.40 kN at 20.0°; B at 235.0° | ", text);
    // Python: 5.628 - 1.2924 = 4.3356
    expectIn("storm | 5.63 kN | +4.34 kN | ", text);
    expectIn("B | 0.254 kN | calm | 5.63 kN | storm | ", text);
    // 5.628065546 / 5, rounded up
    expectIn("B is over its limit, most in storm: 112.6 % of 5 kN.", text);
}

TEST(CasesTold, NameTheSketchAsDrawnWithinASentence) {
    Sketch made = raft();
    made.forces[2].limit = TypedForce{5, ForceUnit::kN, {}};
    made.cases.resize(1);
    // law of sines: 1.8 sin 135° / sin 80° = 1.29243 kN, of 5 kN, rounded up
    expectIn("B is within its limit in every case; most in the sketch as drawn: 25.9 % of 5 kN.",
             all(casesTold(made, caseStates(made))));
}

TEST(CasesTold, SayWhereACaseHasNoAnswer) {
    Sketch made = sketch({force("P", 8, kToFind), force("Q", 7, kToFind)}, force("R", 10, 0));
    made.cases = {{"out of reach", {{"R", size(20), {}}}}};
    const std::string text = all(casesTold(made, caseStates(made)));
    expectIn("out of reach | no answer | – | ", text);
    expectIn("The case 'out of reach' has nothing that counts in the envelope. No answer", text);
}

/// W = 120 N down on bars at 20° and 110° from +x, at right angles: A = 120 sin 20° = 41.04 N; in the wind W
/// acts at −60° and A = −120 sin 10° = −20.84 N, which pushes: 61.9 N less.
TEST(CasesTold, SayWhereABarPushesThatPulledBefore) {
    Force a = force("A", kToFind, 20), b = force("B", kToFind, 110);
    a.lineOfActionOnly = b.lineOfActionOnly = true;
    Sketch made = balanced({a, b, force("W", 120, -90)});
    made.cases = {{"wind", {{"W", {}, degrees(-60)}}}};
    const std::string text = all(casesTold(made, caseStates(made)));
    expectIn("wind | 20.8 N, other sense | −61.9 N | ", text);
    expectIn("In wind A acts in the other sense of its line than in the sketch as drawn", text);
}

TEST(CasesTold, NeverGiveAValueWithoutItsRangeWhereThereIsOne) {
    Sketch made = sketch({force("P", 10, 0), force("Q", 5, 0)});
    made.cases = {{"more", {{"P", size(20, plusMinus(2)), {}}}}};
    const std::string text = all(casesTold(made, withRanges(caseStates(made))));
    expectIn("more | 25.0 N | 23.0 to 27.0 N | +10.0 N | ", text);
    expectIn("as drawn | 15.0 N | – | – | ", text);
}

/// Seeded sketches of every family with cases.
TEST(SeededCases, NeverCrashNorGiveANumberThatIsNone) {
    constexpr unsigned kSeed = 16'005;
    std::mt19937 dice(kSeed);
    const auto between = [&](double low, double high) {
        return low + (high - low) * (static_cast<double>(dice()) / 4294967295.0);
    };
    const auto given = [&](Force force) {
        if (dice() % 5 != 0)
            force.magnitude =
                size(dice() % 9 == 0 ? 0 : between(0.1, 100),
                     dice() % 4 == 0 ? std::optional(plusMinus(between(0.1, 20))) : std::nullopt);
        if (dice() % 4 != 0)
            force.direction = {AngleForm{between(-360, 360)},
                               dice() % 4 == 0 ? std::optional(plusMinus(between(0.1, 40))) : std::nullopt};
        return force;
    };
    int told = 0;
    for (int i = 0; i < 400; ++i) {
        SCOPED_TRACE("seed " + std::to_string(kSeed) + ", sketch " + std::to_string(i));
        Sketch made = emptySketch();
        for (std::size_t n = 1 + dice() % 4; n > 0; --n)
            made.forces.push_back(given(force("F" + std::to_string(n), kToFind, kToFind)));
        made.sum = dice() % 2 ? force("R", kToFind, kToFind) : given(made.sum);
        made.forces[0].limit = TypedForce{between(1, 50), ForceUnit::N, {}};
        for (int c = 0; c < 3; ++c) {
            LoadCase one{"case " + std::to_string(c), {}};
            for (const Force& base : made.forces) {
                const Force other = given(base);
                CaseChange change{base.name, {}, {}};
                if (isGiven(base.magnitude) && isGiven(other.magnitude))
                    change.magnitude = other.magnitude;
                if (isGiven(base.direction) && isGiven(other.direction))
                    change.direction = other.direction;
                if (change.magnitude || change.direction)
                    one.changes.push_back(change);
            }
            made.cases.push_back(one);
        }
        if (firstFault(made))
            continue;
        ++told;
        const auto states = withRanges(caseStates(made), tolerance::kWhileDragging);
        for (const Envelope& one : envelopesOf(states)) {
            for (const EnvelopeEnd* end : {&one.least, &one.greatest})
                if (end->value) {
                    EXPECT_TRUE(std::isfinite(*end->value));
                    EXPECT_FALSE(end->by.empty());
                }
            if (one.least.value && one.greatest.value) {
                EXPECT_LE(*one.least.value, *one.greatest.value);
            }
        }
        const std::string text = all(casesTold(made, states));
        EXPECT_EQ(text.find("nan"), std::string::npos) << text;
        EXPECT_EQ(text.find("inf "), std::string::npos) << text;
    }
    EXPECT_GT(told, 200);
}

} // namespace TAILPOINT_FILE
} // namespace tailpoint::testing
