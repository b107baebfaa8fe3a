// SPDX-License-Identifier: MIT
// Standard uncertainty in words. Numbers: derivatives by central differences of the closed forms, half-width
// over sqrt 3 (or k), outside of the program.
#include "core/explain/uncertainty.h"

#include "tests/support/loose.h"
#include "tests/support/sketches.h"

#include <gtest/gtest.h>

namespace tailpoint {
namespace TAILPOINT_FILE {

using testing::balanced;
using testing::force;
using testing::kToFind;
using testing::loose;
using testing::sketch;

const Sketch kRaft = sketch({loose(force("P", 340, 25), 5, 2), force("Q", 275, -40)});

std::string told(const Sketch& asked, const tolerance::UncertaintyAsked& how = {}, std::size_t answer = 0) {
    const Solved solved = solve(asked);
    const auto all = uncertaintiesOf(asked, solved, tolerance::rangesOf(asked, solved), how);
    std::string text;
    for (const Prose& sentence : uncertaintyTold(asked, solved, answer, all, how))
        text += toText(sentence, Minus::ascii) + '\n';
    return text;
}

// u(R) = 4.14846 N, of its variance 62.71 % by the direction and 37.29 % by the magnitude of P; u(theta_R) =
// 0.680076 degrees, 94.97 % and 5.03 %.
TEST(UncertaintyTold, HasTwoDigitsItsSharesAndIsExpanded) {
    EXPECT_EQ(
        told(kRaft),
        "R has the standard uncertainty 4.1 N: the direction of 𝑷 makes 63 per cent and the magnitude of "
        "𝑷 makes 37 per cent. Expanded with k = 2: 8.3 N.\n"
        "θ_R has the standard uncertainty 0.68°: the direction of 𝑷 makes 95 per cent and the magnitude "
        "of 𝑷 makes 5 per cent. Expanded with k = 2: 1.4°.\n"
        "Standard uncertainties are of first order; each tolerance is taken as a rectangular "
        "distribution, its half-width divided by √3.\n");
}

// 5 and 2 degrees over 2 in place of over sqrt 3: u(R) = 3.59267 N, u(theta_R) = 0.588963 degrees.
TEST(UncertaintyTold, SaysTheKOfANormalDistribution) {
    tolerance::UncertaintyAsked normal;
    normal.spread = tolerance::Spread::normal;
    const std::string text = told(kRaft, normal);
    for (const char* part :
         {"standard uncertainty 3.6 N", "Expanded with k = 2: 7.2 N", "standard uncertainty 0.59°",
          "taken as a normal distribution, its half-width as k = 2 standard uncertainties."})
        EXPECT_NE(text.find(part), std::string::npos) << part << '\n' << text;
}

// 12 (±0.3) down, lines at 50 (±2) and 115 (±2): u(A) = 0.212381, shares 79.41, 14.46, 6.13 %.
TEST(UncertaintyTold, RanksTheShares) {
    const Sketch load = balanced({loose(force("W", 12, -90), 0.3, 0), loose(force("A", kToFind, 50), 0, 2),
                                  loose(force("B", kToFind, 115), 0, 2)});
    const std::string text = told(load);
    EXPECT_NE(text.find("A has the standard uncertainty 0.21 N: the direction of 𝑩 makes 79 per cent, the "
                        "magnitude of 𝑾 makes 14 per cent and the direction of 𝑨 makes 6 per cent. Expanded "
                        "with k = 2: 0.42 N."),
              std::string::npos)
        << text;
}

// 12 down on lines at 3 (±2) and 177 (±2): the range goes from 69 to 344, first order would have 115 ± 76.
// At 1.5 and 178.5 degrees a part has no answer.
TEST(UncertaintyTold, IsWithheldWithTheReason) {
    const auto flat = [](double rise) {
        return balanced({force("W", 12, -90), loose(force("A", kToFind, rise), 0, 2),
                         loose(force("B", kToFind, 180 - rise), 0, 2)});
    };
    EXPECT_EQ(told(flat(3)),
              "The standard uncertainty of A is withheld: first order disagrees with the exact range.\n"
              "The standard uncertainty of B is withheld: first order disagrees with the exact range.\n");
    EXPECT_NE(told(flat(1.5)).find("withheld: a part of the tolerances has no such answer."),
              std::string::npos);
}

TEST(UncertaintyTold, SaysWhereNothingHasATolerance) {
    EXPECT_EQ(told(sketch({force("P", 340, 25), force("Q", 275, -40)})),
              "No given value has a tolerance: there is no standard uncertainty to tell.\n");
}

TEST(UncertaintyTold, StandsBehindTheAnswerOfTheSolution) {
    const Solved solved = solve(kRaft);
    Worked worked = explain(kRaft, solved, construct(kRaft, solved));
    const auto all = uncertaintiesOf(kRaft, solved, tolerance::rangesOf(kRaft, solved));
    const Worked before = worked;
    tellUncertainty(worked, kRaft, solved, 0, all, {});
    for (std::size_t i = 0; i < worked.steps.size(); ++i)
        if (worked.steps[i].key == StepKey::answer)
            EXPECT_EQ(worked.steps[i].conclusion.size(), before.steps[i].conclusion.size() + 3);
        else
            EXPECT_EQ(worked.steps[i], before.steps[i]);
}

} // namespace TAILPOINT_FILE
} // namespace tailpoint
