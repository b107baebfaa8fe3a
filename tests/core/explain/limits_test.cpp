// SPDX-License-Identifier: MIT
// Limits: the rule and the numbers by hand and by Python (mpmath), named at each.
#include "core/explain/limits.h"
#include "core/solve/tolerance_box.h"

#include <gtest/gtest.h>

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
