// SPDX-License-Identifier: MIT
// Tolerances: exact ranges, and first-order uncertainty against JCGM 100, annex H.2.
//
// H.2 of the GUM (JCGM 100:2008) has R = (V/I) cos phi and X = (V/I) sin phi, from five sets of V, I and phi
// that are correlated. As forces at a point: one force of magnitude Z = V/I at the angle phi, whose
// components are R and X. What is checked of it: our derivatives of the components by Z and phi, combined
// here (not in the program) with the covariances of H.2's own data, give H.2's uncertainties. What is not:
// the program's standard uncertainty takes given values to be independent, and so is another number, which is
// checked too; V and I themselves are no forces. H.1 (a gauge block's length) has nothing of vectors.
#include "core/solve/sweep.h"
#include "core/solve/tolerance_sensitivity.h"
#include "core/solve/tolerance_uncertainty.h"
#include "tests/support/loose.h"
#include "tests/support/sketches.h"

#include <gtest/gtest.h>

#include <array>
#include <cmath>
#include <numbers>

namespace tailpoint::testing {
namespace TAILPOINT_FILE {

using namespace tolerance;

// --- own numbers: a dense grid over all inputs, ends included, then zoomed; u_c by central differences.
// Among them are two that no corner of the box has: the sum beside Q at 130 ± 20 (corners: up to 35.352
// only), and the one nearly opposite (corners: from 11.166). ---

struct Row {
    const char* what;
    Sketch sketch;
    int vector;
    bool isDirection;
    double value, least, greatest, standard; ///< to the digits in which they are written; standard 0: none
    double digit;                            ///< the last one of value, least and greatest
};

const Sketch kRaft = sketch({loose(force("P", 340, 25), 5, 2), force("Q", 275, -40)});
const Sketch kSideways = sketch({force("P", 100, 0), loose(force("Q", 60, 130), 0, 20)});
const Sketch kOpposed = sketch({force("P", 100, 0), loose(force("Q", 90, 178), 0, 5)});
const Sketch kLoad = balanced({loose(force("W", 12, -90), 0.3, 0), loose(force("A", kToFind, 50), 0, 2),
                               loose(force("B", kToFind, 115), 0, 2)});
const Sketch kFlat = balanced(
    {force("W", 12, -90), loose(force("A", kToFind, 3), 0, 2), loose(force("B", kToFind, 177), 0, 2)});
const Sketch kTwo = sketch({loose(force("P", kToFind, 40), 0, 1), loose(force("Q", 220, kToFind), 5, 0)},
                           force("R", 400, 10));

const Row kRows[] = {
    {"the raft's sum", kRaft, kSumIndex, false, 519.860, 509.747, 529.901, 4.148, 1e-3},
    {"its direction", kRaft, kSumIndex, true, -3.6479, -5.0506, -2.2263, 0.6801, 1e-4},
    {"an extreme within", kSideways, kSumIndex, true, 36.803, 31.985, 36.870, 0.504, 1e-3},
    {"nearly opposite", kOpposed, kSumIndex, false, 10.534, 10.000, 15.303, 1.502, 1e-3},
    {"a load's left line", kLoad, 1, false, 5.5957, 5.0442, 6.1614, 0.2124, 1e-4},
    {"its right line", kLoad, 2, false, 8.5109, 7.9479, 9.0811, 0.1923, 1e-4},
    {"a flat bridle", kFlat, 1, false, 114.644, 68.842, 343.792, 0, 1e-3},
    {"the same leg's twin", kFlat, 2, false, 114.644, 68.842, 343.792, 0, 1e-3},
    {"two answers", kTwo, 0, false, 438.062, 404.371, 463.947, 11.87, 1e-3},
    {"two answers", kTwo, 0, false, 254.759, 235.749, 281.363, 8.91, 1e-3},
};

std::size_t answerWith(const Row& row, const Solved& solved) {
    for (std::size_t i = 0; i + 1 < solved.solutions.size(); ++i)
        if (std::fabs(solved.solutions[i].forces[0].magnitude - row.value) < 1)
            return i;
    return solved.solutions.size() - 1;
}

TEST(Tolerances, AreTheRowsOfADenseGrid) {
    for (const Row& row : kRows) {
        SCOPED_TRACE(row.what);
        const Solved solved = solve(row.sketch);
        const std::size_t answer = answerWith(row, solved);
        const Solution& solution = solved.solutions.at(answer);
        const SolvedForce& found =
            row.vector == kSumIndex ? solution.sum : solution.forces[static_cast<std::size_t>(row.vector)];
        EXPECT_NEAR(row.isDirection ? *found.direction : found.magnitude, row.value, 0.51 * row.digit);
        const AnswerRange range = rangesOf(row.sketch, solved).at(answer);
        const VectorRange* own = range.find(row.vector);
        // No end farther off than a twentieth of a per cent of the width, which is outward.
        const double room = 0.51 * row.digit + 5e-4 * (row.greatest - row.least);
        EXPECT_NEAR(row.isDirection ? own->direction.from : *own->magnitude.least, row.least, room);
        EXPECT_NEAR(row.isDirection ? own->direction.to : *own->magnitude.greatest, row.greatest, room);
        if (row.standard == 0)
            continue;
        for (const VectorUncertainty& each : uncertaintyOf(row.sketch, solved, answer, range))
            if (each.index == row.vector) {
                const Uncertain& one = row.isDirection ? *each.direction : *each.magnitude;
                EXPECT_NEAR(one.standard, row.standard, row.standard < 1 ? 6e-4 : 6e-3);
            }
    }
}

// P 100 ± 5 at 0 ± 2, Q 98 ± 5 at 180 ± 2: the region of the sum holds the common point.
TEST(Tolerances, OfASumThatMayVanish) {
    const Sketch made = sketch({loose(force("P", 100, 0), 5, 2), loose(force("Q", 98, 180), 5, 2)});
    const Solved solved = solve(made);
    const AnswerRange range = rangesOf(made, solved).at(0);
    const VectorRange& sum = *range.find(kSumIndex);
    EXPECT_NEAR(*sum.magnitude.least, 0, 1e-9);
    EXPECT_NEAR(*sum.magnitude.greatest, 13.841, 0.008);
    EXPECT_TRUE(sum.direction.any);
    EXPECT_NEAR(*sum.x.least, -8.0579, 0.011);
    EXPECT_NEAR(*sum.x.greatest, 12.0567, 0.011);
    EXPECT_NEAR(uncertaintyOf(made, solved, 0, range).at(0).magnitude->standard, 4.08, 0.006);
}

// 12 down on lines at 1.5 ± 2 and 178.5 ± 2: 98.282 and no bound, and a part of the box has no answer.
TEST(Tolerances, OfLinesThatMayBeParallel) {
    const Sketch made = balanced({force("W", 12, -90), loose(force("A", kToFind, 1.5), 0, 2),
                                  loose(force("B", kToFind, 178.5), 0, 2)});
    const AnswerRange range = rangesOf(made, solve(made)).at(0);
    EXPECT_FALSE(range.everywhere);
    EXPECT_NEAR(*range.find(1)->magnitude.least, 98.282, 0.1);
    EXPECT_FALSE(range.find(1)->magnitude.greatest);
}

// The standard acceleration of free fall, 9.80665 m/s2 exactly (3rd CGPM, 1901), and 1 kip = 4448.2216152605
// N (NIST SP 811, B.8): 850 kg = 8.3356525 kN = 1.873929 kip.
TEST(Tolerances, TheWeightOfAMassBesideThem) {
    EXPECT_DOUBLE_EQ(convert(850, MassUnit::kg, ForceUnit::kN, kStandardGravity), 8.3356525);
    EXPECT_NEAR(convert(850, MassUnit::kg, ForceUnit::kip, kStandardGravity), 1.873929, 5e-7);
}

// Tension over load of a leg at 60, 45 and 30 degrees from the horizontal is 1 / sin of it for the vertical
// part that it carries: 1.155, 1.414, 2.000 (common practice). Two such legs share the load, so that each has
// half of that.
TEST(Tolerances, ALegsTensionOverItsShareOfTheLoad) {
    const std::pair<double, double> kFactors[] = {{60, 1.155}, {45, 1.414}, {30, 2.000}};
    for (const auto& [angle, factor] : kFactors) {
        const Sketch legs =
            balanced({force("W", 10, -90), force("A", kToFind, angle), force("B", kToFind, 180 - angle)});
        EXPECT_NEAR(solve(legs).solutions.at(0).forces[1].magnitude / 5, factor, 5e-4) << angle;
    }
}

// By hand: 2 * 2.5 * sin 35 deg = 2.867882; 850 * 9.80665 N on legs at 50 and 65 degrees; 6 and 6 at 75 and
// 140 degrees make 101.21 per cent of 10, 17.5 degrees off 90.
TEST(Tolerances, PlainValuesBesideThem) {
    const Sketch legs = balanced({force("A", 2.5, 35), force("B", 2.5, 145), force("W", kToFind, -90)});
    EXPECT_NEAR(solve(legs).solutions.at(0).forces[2].magnitude, 2.867882, 5e-7);
    const Sketch bridle =
        balanced({force("W", 8.3356525, -90), force("A", kToFind, 50), force("B", kToFind, 115)});
    EXPECT_NEAR(solve(bridle).solutions.at(0).forces[1].magnitude, 3.886979, 5e-7);
    EXPECT_NEAR(solve(bridle).solutions.at(0).forces[2].magnitude, 5.911959, 5e-7);
    const SolvedForce pull = solve(sketch({force("P", 6, 75), force("Q", 6, 140)})).solutions.at(0).sum;
    EXPECT_NEAR(pull.magnitude, 10.1207, 5e-5);
    EXPECT_NEAR(*pull.direction, 107.5, 1e-9);
    EXPECT_NEAR(100 * pull.magnitude / 10, 101.21, 5e-3);
    EXPECT_NEAR(*pull.direction - 90, 17.5, 1e-9);
}

// --- JCGM 100:2008, annex H.2, table H.2 ---

constexpr std::array kVolts{5.007, 4.994, 5.005, 4.990, 4.999};
constexpr std::array kMilliamperes{19.663, 19.639, 19.640, 19.685, 19.678};
constexpr std::array kRadians{1.0456, 1.0438, 1.0468, 1.0428, 1.0433};

double mean(const std::array<double, 5>& values) {
    double sum = 0;
    for (const double value : values)
        sum += value;
    return sum / 5;
}

/// Of the means. Source: JCGM 100:2008, 5.2.3, formula (17).
double covariance(const std::array<double, 5>& a, const std::array<double, 5>& b) {
    double sum = 0;
    for (std::size_t i = 0; i < 5; ++i)
        sum += (a[i] - mean(a)) * (b[i] - mean(b));
    return sum / (5 * 4);
}

/// Z = V/I in ohm and phi, with the covariances that those of V, I and phi make of them.
struct Impedance {
    double size = 1e3 * mean(kVolts) / mean(kMilliamperes), angle = mean(kRadians);
    double variance = 0, covarianceWithAngle = 0, angleVariance = covariance(kRadians, kRadians);
    Impedance() {
        const double byV = size / mean(kVolts), byI = -size / mean(kMilliamperes);
        variance = byV * byV * covariance(kVolts, kVolts) +
                   byI * byI * covariance(kMilliamperes, kMilliamperes) +
                   2 * byV * byI * covariance(kVolts, kMilliamperes);
        covarianceWithAngle = byV * covariance(kVolts, kRadians) + byI * covariance(kMilliamperes, kRadians);
    }
};

Sketch phasor(const Impedance& z) {
    Sketch made = sketch({force("Z", z.size, z.angle)});
    made.angleUnit = AngleUnit::rad;
    return made;
}

// Table H.4: R = 127.732, u 0.071; X = 219.847, u 0.295; Z = 254.260, u 0.236. To a unit of the last digit:
// of X the data themselves give 0.2956.
TEST(GumH2, OurDerivativesAndItsCovariancesMakeItsUncertainties) {
    const Impedance z;
    EXPECT_NEAR(z.size, 254.260, 0.0005);
    EXPECT_NEAR(std::sqrt(z.variance), 0.236, 0.001);
    const Sketch made = phasor(z);
    const Solved solved = solve(made);
    const SolvedForce& sum = solved.solutions.at(0).sum;
    EXPECT_NEAR(sum.vector.x(), 127.732, 0.0005);
    EXPECT_NEAR(sum.vector.y(), 219.847, 0.0006);
    const auto slopes = *sensitivityOf(made, solved, 0);
    ASSERT_EQ(slopes.size(), 2u);
    const Change &bySize = slopes[0].vectors.back(), &byAngle = slopes[1].vectors.back();
    const auto combined = [&](double size, double angle) {
        return std::sqrt(size * size * z.variance + angle * angle * z.angleVariance +
                         2 * size * angle * z.covarianceWithAngle);
    };
    EXPECT_NEAR(combined(bySize.x, byAngle.x), 0.071, 0.001);
    EXPECT_NEAR(combined(bySize.y, byAngle.y), 0.295, 0.001);
    // Table H.4's correlation coefficients: R and X -0.588, R and Z -0.485, X and Z 0.993.
    const auto together = [&](double size, double angle, double otherSize, double otherAngle) {
        const double product = size * otherSize * z.variance + angle * otherAngle * z.angleVariance +
                               (size * otherAngle + angle * otherSize) * z.covarianceWithAngle;
        return product / (combined(size, angle) * combined(otherSize, otherAngle));
    };
    EXPECT_NEAR(together(bySize.x, byAngle.x, bySize.y, byAngle.y), -0.588, 0.0005);
    EXPECT_NEAR(together(bySize.x, byAngle.x, 1, 0), -0.485, 0.0005);
    EXPECT_NEAR(together(bySize.y, byAngle.y, 1, 0), 0.993, 0.0005);
}

// Table H.2's means, their standard uncertainties and correlation coefficients, as printed there.
TEST(GumH2, ItsInputsAreThoseOfItsTable) {
    const auto uncertainty = [](const std::array<double, 5>& values) {
        return std::sqrt(covariance(values, values));
    };
    const auto correlation = [&](const std::array<double, 5>& a, const std::array<double, 5>& b) {
        return covariance(a, b) / (uncertainty(a) * uncertainty(b));
    };
    EXPECT_NEAR(mean(kVolts), 4.9990, 5e-5);
    EXPECT_NEAR(mean(kMilliamperes), 19.6610, 5e-5);
    EXPECT_NEAR(mean(kRadians), 1.04446, 5e-6);
    EXPECT_NEAR(uncertainty(kVolts), 0.0032, 5e-5);
    EXPECT_NEAR(uncertainty(kMilliamperes), 0.0095, 5e-5);
    EXPECT_NEAR(uncertainty(kRadians), 0.00075, 5e-6);
    EXPECT_NEAR(correlation(kVolts, kMilliamperes), -0.36, 0.005);
    EXPECT_NEAR(correlation(kVolts, kRadians), 0.86, 0.005);
    EXPECT_NEAR(correlation(kMilliamperes, kRadians), -0.65, 0.005);
}

// The same inputs taken as independent, by the same law without its last term, outside of the program:
// 0.203551 and 0.225802.
TEST(GumH2, WithoutCorrelationTheProgramsOwn) {
    const Impedance z;
    Sketch made = phasor(z);
    made.forces[0].magnitude.tolerance = plusMinus(std::sqrt(z.variance));
    made.forces[0].direction.tolerance = plusMinus(std::sqrt(z.angleVariance));
    const Solved solved = solve(made);
    UncertaintyAsked asked;
    asked.spread = Spread::normal;
    asked.k = 1;
    const auto sum = uncertaintyOf(made, solved, 0, rangesOf(made, solved).at(0), asked).at(0);
    EXPECT_NEAR(sum.x->standard, 0.203551, 1e-6);
    EXPECT_NEAR(sum.y->standard, 0.225802, 1e-6);
    EXPECT_EQ(sum.x->withheld, Withheld::no);
    EXPECT_NEAR(sum.x->drawn, 0.203551, 0.003);
}

// A flagpole B = 15 m (u 0.03) away, its top at 38 degrees (u 2): H = B tan = 11.71928439760076, u
// 0.84353295110757, as printed in the documentation of an open uncertainty library. As forces: B along +x and
// H straight up make a sum at 38 degrees.
TEST(Flagpole, IsAForceBesideASumOfGivenDirection) {
    const Sketch made = sketch({loose(force("B", 15, 0), 0.03, 0), force("H", kToFind, 90)},
                               loose(force("R", kToFind, 38), 0, 2));
    const Solved solved = solve(made);
    EXPECT_NEAR(solved.solutions.at(0).forces[1].magnitude, 11.71928439760076, 1e-13);
    UncertaintyAsked asked;
    asked.spread = Spread::normal;
    asked.k = 1;
    const auto all = uncertaintyOf(made, solved, 0, rangesOf(made, solved).at(0), asked);
    EXPECT_NEAR(all.at(0).magnitude->standard, 0.84353295110757, 1e-12);
}

// 12 down, B at 115, A from 0 to 90 degrees: A least 5.07142 = 12 sin 25 at 25 degrees; the larger of the two
// least 6.62027 at 65, where both are the same.
TEST(Swept, ALoadsLineIsLeastWhereItIsSquareToTheOther) {
    const Sketch made = balanced({force("W", 12, -90), force("A", kToFind, 50), force("B", kToFind, 115)});
    const Sweep swept = sweep(made, {{1, true}, 0, 90, 90});
    for (const Curve& curve : swept.curves) {
        if (curve.of.kind == Swept::Kind::magnitude && curve.of.vector == 1) {
            EXPECT_NEAR(curve.least->value, 5.07142, 5e-6);
            EXPECT_NEAR(curve.least->at, 25, 1e-6);
        } else if (curve.of.kind == Swept::Kind::larger) {
            EXPECT_NEAR(curve.least->value, 6.62027, 5e-6);
            EXPECT_NEAR(curve.least->at, 65, 1e-6);
        }
    }
}

} // namespace TAILPOINT_FILE
} // namespace tailpoint::testing
