// SPDX-License-Identifier: MIT
// Limits: the rule and the numbers by hand and by Python (mpmath), named at each.
#include "core/explain/limits.h"
#include "core/solve/tolerance_box.h"

#include <array>
#include <cmath>
#include <gtest/gtest.h>
#include <numbers>

namespace tailpoint {
namespace TAILPOINT_FILE {

Force at(const char* name, double magnitude, double direction) {
    Force force;
    force.name = name;
    force.magnitude.value = magnitude;
    force.direction.form = AngleForm{direction};
    return force;
}

Sketch pulls(double first, double second, double limit) {
    Sketch sketch = emptySketch();
    sketch.forceUnit = ForceUnit::kN;
    sketch.forces = {at("P", first, 75), at("Q", second, 140)};
    sketch.sum.limit = TypedForce{limit, ForceUnit::kN, {}};
    return sketch;
}

Solution answer(const Sketch& sketch) {
    return solve(sketch).solutions.at(0);
}

/// 6 kN at 75 and 6 kN at 140 degrees: 12 cos 32.5 = 10.1207 kN at 107.5 degrees; 101.21 per cent of 10 kN
/// reads 101.3 %; 17.5 degrees off 90.
TEST(Limits, AreJudgedByFullValuesAndRoundedUp) {
    Sketch sketch = pulls(6, 6, 10);
    sketch.sum.permitted = Permitted{90, 20};
    const Solution solution = answer(sketch);
    const auto limits = limitsOf(sketch, solution, nullptr);
    ASSERT_EQ(limits.size(), 1U);
    EXPECT_EQ(limits[0].verdict, Bound::over);
    EXPECT_NEAR(limits[0].utilisation.value(), 101.20697, 5e-5);
    EXPECT_EQ(utilisationText(*limits[0].utilisation), "101.3 %");
    const auto directions = permittedOf(sketch, solution, nullptr);
    ASSERT_EQ(directions.size(), 1U);
    EXPECT_EQ(directions[0].verdict, Bound::within);
    EXPECT_NEAR(directions[0].off, 17.5, 1e-9);
    const auto told = limitsTold(sketch, solution, nullptr);
    ASSERT_EQ(told.size(), 3U);
    EXPECT_EQ(toText(told[0]), "! R is over its limit: 101.3 % of 10 kN.");
    EXPECT_EQ(toText(told[2]), "Limits and permitted directions are typed by the user, not rated data.");
}

/// 10.04 beside 10 is 100.4 per cent, and 10.0001 beside 10 reads no 100.0 %.
TEST(Limits, RoundingHidesNone) {
    Sketch sketch = pulls(10.04, 0, 10);
    sketch.forces.pop_back();
    EXPECT_EQ(toText(limitsTold(sketch, answer(sketch), nullptr)[0]),
              "! R is over its limit: 100.4 % of 10 kN.");
    sketch.forces[0].magnitude.value = 10.0001;
    EXPECT_EQ(toText(limitsTold(sketch, answer(sketch), nullptr)[0]),
              "! R is over its limit: 100.1 % of 10 kN.");
    sketch.forces[0].magnitude.value = 10;
    EXPECT_EQ(toText(limitsTold(sketch, answer(sketch), nullptr)[0]),
              "R is within its limit: 100.0 % of 10 kN.");
}

/// In another unit than the sheet's: 1 t weighs 9.80665 kN (NIST SP 811, B.8), 12 cos 32.5 is 103.3 % of it.
TEST(Limits, KeepTheirOwnUnit) {
    Sketch sketch = pulls(6, 6, 1);
    sketch.sum.limit = TypedForce{1, MassUnit::t, {}};
    EXPECT_EQ(toText(limitsTold(sketch, answer(sketch), nullptr)[0]),
              "! R is over its limit: 103.3 % of 1 t.");
}

/// P 340 +- 5 at 25 +- 2 and Q 275 at -40: R from 509.747 to 529.901, its direction from -5.0506 to -2.2263
/// (dense grid over all inputs and a local zoom): 99.98 per cent of 530 N, 101.91 of 520 N.
TEST(Limits, GoByTheWorstEndOfTheRange) {
    Sketch sketch = emptySketch();
    sketch.forces = {at("P", 340, 25), at("Q", 275, -40)};
    sketch.forces[0].magnitude.tolerance = Tolerance{5, 5, false};
    sketch.forces[0].direction.tolerance = Tolerance{2, 2, false};
    const auto words = [&](double limit, double within) {
        sketch.sum.limit = TypedForce{limit, ForceUnit::N, {}};
        sketch.sum.permitted = Permitted{0, within};
        const Solved solved = solve(sketch);
        const auto ranges = tolerance::rangesOf(sketch, solved);
        const auto told = limitsTold(sketch, solved.solutions.at(0), &ranges.at(0));
        return toText(told[0]) + ' ' + toText(told[1]);
    };
    EXPECT_EQ(words(530, 6),
              "R is within its limit: 100.0 % of 530 N. The direction of R is permitted: 5.1\u00B0 off "
              "0.0\u00B0 at most, 6.0\u00B0 allowed.");
    EXPECT_EQ(words(520, 4),
              "! R straddles its limit: a part of the tolerance is over, at worst 102.0 % of 520 N. ! The "
              "direction of R is not permitted in a part of the tolerance: up to 5.1\u00B0 off "
              "0.0\u00B0, 4.0\u00B0 allowed.");
    EXPECT_EQ(words(500, 2),
              "! R is over its limit: 106.0 % of 500 N. ! The direction of R is not permitted: up to "
              "5.1\u00B0 off 0.0\u00B0, 2.0\u00B0 allowed.");
}

/// The end as it is typed: 9.9 + 0.1 is 10, though its bits are above; 9.9 + 0.10001 is not.
TEST(Limits, AreNotPassedByTheBitsOfATenth) {
    const std::vector<std::array<double, 3>> ties{{9.9, 0.1, 10}, {4.9, 0.1, 5},   {2.4, 0.1, 2.5},
                                                  {9.5, 0.5, 10}, {0.2, 0.1, 0.3}, {340, 5, 345}};
    for (const auto& [value, off, limit] : ties)
        for (const double more : {0.0, 1e-5}) {
            Sketch sketch = emptySketch();
            sketch.forces = {at("W", value, -90)};
            sketch.forces[0].magnitude.tolerance = Tolerance{off + more, off + more, false};
            sketch.forces[0].limit = sketch.sum.limit = TypedForce{limit, ForceUnit::N, {}};
            const Solved solved = solve(sketch);
            const auto uses = limitsOf(sketch, solved, 0, tolerance::rangesOf(sketch, solved));
            ASSERT_EQ(uses.size(), 2U);
            for (const LimitUse& use : uses) { // given, and found
                EXPECT_EQ(use.verdict, more == 0 ? Bound::within : Bound::straddles)
                    << value << ' ' << use.index;
                EXPECT_EQ(utilisationText(*use.utilisation) == "100.0 %", more == 0) << *use.utilisation;
            }
        }
}

/// What is given binds where nothing is found: everything given, and holding; or too little known.
TEST(Limits, OfWhatIsGivenBindWithoutAnAnswer) {
    Sketch balanced = emptySketch();
    balanced.forces = {at("A", 10, 0), at("B", 10, 180)};
    balanced.sum.magnitude.value = 0;
    balanced.forces[0].limit = TypedForce{5, ForceUnit::N, {}};
    balanced.forces[1].limit = TypedForce{20, ForceUnit::N, {}};
    balanced.forces[1].permitted = Permitted{90, 30};
    const auto told = [](const Sketch& sketch) {
        const Solved solved = solve(sketch);
        EXPECT_TRUE(solved.solutions.empty());
        Worked worked = explain(sketch, solved, construct(sketch, solved));
        tellLimits(worked, sketch, solved, 0, {});
        return toText(worked);
    };
    const std::string holds = told(balanced);
    EXPECT_NE(holds.find("! A is over its limit: 200.0 % of 5 N."), holds.npos) << holds;
    EXPECT_NE(holds.find("B is within its limit: 50.0 % of 20 N."), holds.npos) << holds;
    EXPECT_NE(holds.find("! The direction of B is not permitted: up to 90.0\u00B0 off 90.0\u00B0, 30.0\u00B0 "
                         "allowed."),
              holds.npos)
        << holds;
    Sketch tolerant = balanced;
    tolerant.forces[0].limit = TypedForce{10.5, ForceUnit::N, {}};
    tolerant.forces[0].magnitude.tolerance = Tolerance{1, 1, false};
    tolerant.forces[1].direction.tolerance = Tolerance{0, 65, false};
    const std::string straddles = told(tolerant); // 11 of 10.5 N: 104.76; 115 to 180 degrees, 25 to 90 off
    EXPECT_NE(straddles.find("This is so at the middle of the tolerances;"), straddles.npos) << straddles;
    EXPECT_EQ(holds.find("tolerances"), holds.npos) << holds;
    EXPECT_NE(straddles.find("! A straddles its limit: a part of the tolerance is over, at worst 104.8 % of "
                             "10.5 N."),
              straddles.npos)
        << straddles;
    EXPECT_NE(
        straddles.find("! The direction of B is not permitted in a part of the tolerance: up to 90.0\u00B0"),
        straddles.npos)
        << straddles;
    Sketch open = balanced;
    open.forces[1].magnitude.value.reset();
    open.forces[1].direction.form = ToFind{};
    open.sum = emptySketch().sum; // four unknowns: A alone is judged
    const Solved solved = solve(open);
    const auto uses = limitsOf(open, solved, 0, {});
    ASSERT_EQ(uses.size(), 1U);
    EXPECT_EQ(uses[0].index, 0);
    EXPECT_EQ(uses[0].verdict, Bound::over);
    EXPECT_TRUE(permittedOf(open, solved, 0, {}).empty());
}

/// A magnitude that no tolerance moves: one force, or one against another, whatever their direction.
TEST(Limits, AreNotPassedByAnOuterBound) {
    for (const bool inBalance : {true, false}) {
        Sketch sketch = emptySketch();
        sketch.forces = {at("W", 12, -90)};
        sketch.forces[0].direction.tolerance = Tolerance{2, 2, false};
        Force& found = inBalance ? sketch.forces.emplace_back() : sketch.sum;
        if (inBalance) {
            found.name = "T";
            sketch.sum.magnitude.value = 0;
        }
        found.limit = TypedForce{12, ForceUnit::N, {}};
        const Solved solved = solve(sketch);
        const auto ranges = tolerance::rangesOf(sketch, solved);
        const auto* range = ranges.at(0).find(inBalance ? 1 : kSumIndex);
        ASSERT_NE(range, nullptr);
        EXPECT_EQ(range->magnitude.least, 12);
        EXPECT_EQ(range->magnitude.greatest, 12);
        EXPECT_FALSE(range->isMarked());
        EXPECT_NEAR(range->direction.from, inBalance ? 88 : -92, 1e-12);
        EXPECT_NEAR(range->direction.to, inBalance ? 92 : -88, 1e-12);
        EXPECT_NEAR(range->y.least.value(), inBalance ? 12 * std::cos(2 * std::numbers::pi / 180) : -12,
                    1e-12);
        EXPECT_NEAR(range->x.greatest.value(), 12 * std::sin(2 * std::numbers::pi / 180), 1e-12);
        const auto uses = limitsOf(sketch, solved, 0, ranges);
        EXPECT_EQ(uses.at(0).verdict, Bound::within);
    }
}

/// One mark, that every font and terminal has, and none where all is within.
TEST(Limits, HaveOneMarkWhereverOneIsPassed) {
    EXPECT_EQ(marked(Bound::over, "over limit"), "! over limit");
    EXPECT_EQ(toText(marked(Bound::straddles, inProse("R straddles."))), "! R straddles.");
    EXPECT_EQ(marked(Bound::within, "within"), "within");
}

/// Across the half turn: a force at -178 is 4 degrees off an axis at 178, and 176 off one at 6.
TEST(Limits, GoAcrossTheHalfTurn) {
    Sketch sketch = emptySketch();
    sketch.forces = {at("P", 100, -178)};
    sketch.forces[0].permitted = Permitted{178, 5};
    EXPECT_NEAR(permittedOf(sketch, answer(sketch), nullptr).at(0).off, 4, 1e-9);
    sketch.forces[0].permitted = Permitted{6, 5};
    EXPECT_NEAR(permittedOf(sketch, answer(sketch), nullptr).at(0).off, 176, 1e-9);
    EXPECT_EQ(permittedOf(sketch, answer(sketch), nullptr).at(0).verdict, Bound::over);
    sketch.forces[0].direction.tolerance = Tolerance{3, 3, false}; // from 179 over 180 to 185
    sketch.forces[0].permitted = Permitted{0, 179};
    const auto ranges = tolerance::rangesOf(sketch, solve(sketch));
    EXPECT_EQ(permittedOf(sketch, answer(sketch), &ranges.at(0)).at(0).off, 180);
}

/// atan(8.05/6) = 53.3013 degrees (Python): not within 53.3, though both read 53.3 to one decimal.
TEST(Limits, RoundingHidesNoDirection) {
    Sketch sketch = emptySketch();
    sketch.forces = {at("P", 6, 0), at("Q", 8.05, 90)};
    const auto words = [&](double within) {
        sketch.sum.permitted = Permitted{0, within};
        return toText(limitsTold(sketch, answer(sketch), nullptr)[0]);
    };
    EXPECT_EQ(words(53.3),
              "! The direction of R is not permitted: up to 53.301\u00B0 off 0.0\u00B0, 53.300\u00B0 "
              "allowed.");
    EXPECT_EQ(words(53.302),
              "The direction of R is permitted: 53.301\u00B0 off 0.0\u00B0 at most, 53.302\u00B0 "
              "allowed.");
    EXPECT_EQ(words(60),
              "The direction of R is permitted: 53.3\u00B0 off 0.0\u00B0 at most, 60.0\u00B0 allowed.");
    EXPECT_EQ(permittedText(53.26, sketch), "53.26\u00B0") << "as it was stated";
    EXPECT_EQ(permittedText(1.0 / 3, sketch), "0.3\u00B0") << "as angles are shown";
}

/// One decimal, upwards; a tenth that was computed stays one, and only what is at the limit reads 100.0 %.
TEST(Limits, AShareIsATenthRoundedUp) {
    EXPECT_EQ(utilisationText(101.21), "101.3 %");
    EXPECT_EQ(utilisationText(100 * 1.013), "101.3 %");
    EXPECT_EQ(utilisationText(50.1), "50.1 %");
    EXPECT_EQ(utilisationText(100), "100.0 %");
    EXPECT_EQ(utilisationText(100.0000000001), "100.1 %");
    EXPECT_EQ(utilisationText(99.91), "100.0 %");
}
} // namespace TAILPOINT_FILE
} // namespace tailpoint
