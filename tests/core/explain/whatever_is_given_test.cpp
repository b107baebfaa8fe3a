// SPDX-License-Identifier: MIT
// Whatever a sketch says of tolerances, masses, limits and permitted directions, and whatever is swept: no
// crash, no hang, no number that isn't one, in ranges, uncertainties, limits, curves and words. Seeded
// sketches of all families, adversarial values among them.
#include "core/explain/limits.h"
#include "core/explain/ranges.h"
#include "core/explain/uncertainty.h"
#include "core/solve/sweep.h"
#include "tests/support/tolerances.h"

#include <gtest/gtest.h>

namespace tailpoint::testing {
namespace TAILPOINT_FILE {

constexpr std::uint64_t kCases = 900;

Tolerance anyTolerance(Dice& dice, double value) {
    const double size = std::fmax(value, 1e-12) * dice.power(-14, 1);
    switch (dice.whole(4)) {
    case 0:
        return plusMinus(size);
    case 1:
        return plusMinusPercent(dice.power(-9, 2));
    case 2:
        return {size, 0, false};
    default:
        return {size / 3, size, false};
    }
}

/// Tolerances of every form, masses, limits, permitted directions.
void dress(Force& force, Dice& dice, const Sketch& sketch) {
    if (force.magnitude.value && *force.magnitude.value > 0) {
        if (dice.whole(5) == 0) { // a mass, in its own unit and with its own tolerance
            TypedForce typed{*force.magnitude.value / 9.80665, MassUnit::kg, {}};
            if (dice.toss())
                typed.tolerance = anyTolerance(dice, typed.value);
            force.magnitude = magnitudeOf(typed, sketch.forceUnit, sketch.gravity);
        } else if (dice.toss()) {
            force.magnitude.tolerance = anyTolerance(dice, *force.magnitude.value);
        }
    }
    if (isGiven(force.direction) && dice.toss())
        force.direction.tolerance =
            dice.whole(4) == 0 ? Tolerance{dice.power(-13, 2), 0, false} : plusMinus(dice.power(-13, 3));
    if (dice.whole(3) == 0)
        force.limit = TypedForce{dice.power(-3, 4), ForceUnit::N, {}};
    if (dice.whole(3) == 0)
        force.permitted = Permitted{dice.between(-180, 180), dice.power(-6, 2)};
    force.lineOfActionOnly = force.lineOfActionOnly || dice.whole(5) == 0;
}

/// Two to five forces at rest, one value of one of them asked for: that leaves nothing, or all but nothing,
/// over.
Sketch oneUnknownCase(Dice& dice) {
    std::vector<Force> forces;
    Eigen::Vector2d sum(0, 0);
    for (std::uint64_t i = 1 + dice.whole(4); i > 0; --i) {
        const double size = dice.power(-2, 4), at = dice.between(-180, 180) * std::numbers::pi / 180;
        forces.push_back(force("F" + std::to_string(i), size, at * 180 / std::numbers::pi));
        sum += size * Eigen::Vector2d(std::cos(at), std::sin(at));
    }
    const bool isDirection = dice.toss();
    const double back = std::atan2(-sum.y(), -sum.x()) * 180 / std::numbers::pi;
    forces.push_back(isDirection ? force("B", sum.norm(), kToFind) : force("B", kToFind, back));
    return sketch(std::move(forces), force("R", 0, kToFind));
}

Sketch dressedCase(std::uint64_t number) {
    Dice dice(6'000'011 * number + 29);
    Sketch made = number % 3 == 0   ? tolerantCase(dice, static_cast<Asked>(number / 3 % kAsked), 60, 90)
                  : number % 3 == 1 ? anyCase(dice, number)
                                    : oneUnknownCase(dice);
    for (int i = kSumIndex; i < static_cast<int>(made.forces.size()); ++i)
        if (i != kSumIndex || !isEquilibrium(made))
            dress(vectorOf(made, i), dice, made);
    return made;
}

void expectNumbers(const std::optional<double>& value) {
    EXPECT_TRUE(std::isfinite(value.value_or(0)));
}

void expectWords(const Prose& prose) {
    const std::string text = toText(prose);
    for (const char* bad : {"nan", "inf ", "{"})
        EXPECT_EQ(text.find(bad), std::string::npos) << text;
}

void expectSound(const tolerance::AnswerRange& range, const Sketch& sketch) {
    for (const tolerance::VectorRange& vector : range.vectors) {
        for (const tolerance::Range* each : {&vector.magnitude, &vector.x, &vector.y}) {
            expectNumbers(each->least);
            expectNumbers(each->greatest);
            if (each->least && each->greatest) {
                EXPECT_LE(*each->least, *each->greatest);
            }
            expectWords(rangeTold(*each, sketch));
            expectWords(betweenTold(*each, sketch));
        }
        EXPECT_TRUE(std::isfinite(vector.direction.from) && std::isfinite(vector.direction.to));
        EXPECT_LE(vector.direction.from, vector.direction.to);
        EXPECT_LE(vector.direction.to, vector.direction.from + turnIn(sketch.angleUnit) * (1 + 1e-12));
        expectWords(rangeTold(vector.direction, sketch));
    }
}

void expectUncertaintiesSound(const Sketch& sketch, const Solved& solved, const tolerance::Ranges& ranges) {
    for (const tolerance::Spread spread : {tolerance::Spread::rectangular, tolerance::Spread::normal}) {
        const tolerance::UncertaintyAsked asked{spread, 2, 60};
        const auto all = uncertaintiesOf(sketch, solved, ranges, asked);
        for (std::size_t answer = 0; answer < all.size(); ++answer) {
            for (const tolerance::VectorUncertainty& vector : all[answer])
                for (const auto* one : {&vector.magnitude, &vector.direction, &vector.x, &vector.y})
                    if (*one) {
                        EXPECT_TRUE(std::isfinite((*one)->standard) && std::isfinite((*one)->drawn));
                        for (const tolerance::Share& share : (*one)->shares)
                            EXPECT_TRUE(share.part >= 0 && share.part <= 1 + 1e-12);
                    }
            for (const Prose& sentence : uncertaintyTold(sketch, solved, answer, all, asked))
                expectWords(sentence);
        }
    }
}

void expectLimitsSound(const Sketch& sketch, const Solution& solution, const tolerance::AnswerRange* range) {
    for (const LimitUse& use : limitsOf(sketch, solution, range)) {
        EXPECT_TRUE(std::isfinite(use.limit));
        expectNumbers(use.utilisation);
    }
    for (const DirectionUse& use : permittedOf(sketch, solution, range))
        EXPECT_TRUE(use.off >= 0 && use.off <= turnIn(sketch.angleUnit) / 2 * (1 + 1e-12)) << use.off;
    for (const Prose& sentence : limitsTold(sketch, solution, range))
        expectWords(sentence);
}

/// The roots that a sense rules out, with that sense left open.
Sketch leftOpen(Sketch made, const Solution& lost) {
    for (std::size_t i = 0; i < lost.forces.size(); ++i)
        made.forces[i].lineOfActionOnly |= lost.forces[i].turned;
    made.sum.lineOfActionOnly |= lost.sum.turned;
    return made;
}

void expectAnswersSound(const Sketch& sketch) {
    const Solved solved = solve(sketch);
    const tolerance::Ranges ranges = rangesOf(sketch, solved, tolerance::Effort{40});
    EXPECT_TRUE(ranges.empty() || ranges.size() == solved.solutions.size());
    for (std::size_t answer = 0; answer < solved.solutions.size(); ++answer) {
        const auto* range = answer < ranges.size() ? &ranges[answer] : nullptr;
        if (range)
            expectSound(*range, sketch);
        expectLimitsSound(sketch, solved.solutions[answer], range);
    }
    expectUncertaintiesSound(sketch, solved, ranges);
}

struct Seen {
    int answered = 0, reversed = 0, oneUnknown = 0, ranged = 0, swept = 0;
};

TEST(WhateverIsGiven, RangesUncertaintiesAndLimitsAreNumbers) {
    Seen seen;
    for (std::uint64_t number = 0; number < kCases && !HasFailure(); ++number) {
        SCOPED_TRACE(number);
        const Sketch made = dressedCase(number);
        if (firstFault(made))
            continue;
        const Solved solved = solve(made);
        seen.answered += solved.solutions.empty() ? 0 : 1;
        seen.oneUnknown += solved.family == Family::oneUnknown && !solved.solutions.empty() ? 1 : 0;
        expectAnswersSound(made);
        for (const Solution& lost : solved.reversed) {
            ++seen.reversed;
            expectAnswersSound(leftOpen(made, lost));
        }
    }
    EXPECT_GT(seen.answered, 300);
    EXPECT_GT(seen.oneUnknown, 100);
    EXPECT_GT(seen.reversed, 20);
}

TEST(WhateverIsGiven, SweepsAreNumbers) {
    Seen seen;
    for (std::uint64_t number = 0; number < kCases / 6 && !HasFailure(); ++number) {
        SCOPED_TRACE(number);
        const Sketch made = dressedCase(number);
        Dice dice(number);
        const std::vector<Scalar> all = firstFault(made) ? std::vector<Scalar>{} : variable(made);
        if (all.empty())
            continue;
        const Scalar varied = all[dice.whole(all.size())];
        const double at = *presentValue(made, varied);
        const double off = varied.isDirection ? dice.power(-9, 2) : at * dice.part();
        const SweepRange range{varied, at - off, at + dice.power(-9, 2), 1 + dice.whole(40)};
        if (faultOf(range, made))
            continue;
        ++seen.swept;
        const Sweep swept = sweep(made, range);
        for (const Gap& gap : swept.gaps)
            EXPECT_LE(gap.from, gap.to);
        for (const Curve& curve : swept.curves) {
            for (const auto& piece : curve.pieces)
                for (std::size_t i = 0; i < piece.size(); ++i) {
                    EXPECT_TRUE(std::isfinite(piece[i].at) && std::isfinite(piece[i].value));
                    if (i > 0) {
                        EXPECT_LT(piece[i - 1].at, piece[i].at);
                    }
                }
            if (curve.least) {
                EXPECT_TRUE(std::isfinite(curve.least->value) && std::isfinite(curve.greatest->value));
            }
        }
    }
    EXPECT_GT(seen.swept, 60);
}

} // namespace TAILPOINT_FILE
} // namespace tailpoint::testing
