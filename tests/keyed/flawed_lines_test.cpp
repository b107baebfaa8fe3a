// SPDX-License-Identifier: MIT
// Solutions with a slip in a line, for who has to find it: the line computes, wrong as it is.
#include "core/practice/faded.h"
#include "core/practice/families.h"
#include "core/practice/problem.h"
#include "core/solve/solve.h"
#include "tests/keyed/calculator.h"

#include <gtest/gtest.h>

namespace tailpoint::keyed {
namespace TAILPOINT_FILE {

/// Keyed into the calculator of its own, a printed line gives what is printed.
bool isKeyedTo(const std::string& line, const std::string& result) {
    const auto outcome = keyIn(line, Angles::degrees);
    const auto printed = printedNumber(result, Angles::degrees);
    if (outcome.kind != Outcome::Kind::value || !printed)
        return false;
    const Big off = abs(outcome.amount.value - printed->amount.value) * powerOfTen(printed->decimals);
    return off <= Big("0.500000000001");
}

/// 11 families at two levels and every slip in a calculation: about 250 lines.
TEST(FlawedSolutions, TheFlawedLineComputesAsItIsPrinted) {
    int keyed = 0;
    for (const FamilyEntry& family : problemFamilies())
        for (const int level : {1, 3}) {
            const auto made = problem({std::string(family.id), level, 74});
            int found = 0;
            for (const SlipEntry& slip : slipEntries()) {
                const auto one =
                    slip.place == SlipPlace::calculation ? flawed(made->sketch, slip.id, 3) : std::nullopt;
                if (!one)
                    continue;
                ++found;
                const Working& line = one->worked.steps[one->flaw.step].workings[one->flaw.working];
                EXPECT_NE(toText(*line.value), toText(*one->right.value)) << slip.id;
                if (!line.substituted || slip.id.starts_with("radian-mode")) // keyed in radians
                    continue;
                ++keyed;
                EXPECT_TRUE(
                    isKeyedTo(toText(*line.substituted, Minus::ascii), toText(*line.value, Minus::ascii)))
                    << slip.id << '\n'
                    << toText(one->worked);
            }
            EXPECT_GE(found, 1) << family.id << ' ' << level;
        }
    EXPECT_GT(keyed, 100);
}

/// What is picked for a sheet, 1320 solutions: it computes, and it is no component of what points along an
/// axis, where nobody slips.
TEST(FlawedSolutions, ThePickedLineIsOneThatIsCalculated) {
    int keyed = 0;
    for (const FamilyEntry& family : problemFamilies())
        for (int level = 1; level <= kLevels; ++level)
            for (std::uint32_t seed = 1; seed <= 40; ++seed) {
                const auto made = problem({std::string(family.id), level, 100 + seed});
                const auto& likely = family.levels[static_cast<std::size_t>(level - 1)].slips;
                const auto one = flawedBySome(made->sketch, likely, seed);
                ASSERT_TRUE(one) << made->code;
                const Working& line = one->worked.steps[one->flaw.step].workings[one->flaw.working];
                const std::string subject = toText(*line.subject);
                const Solved solved = solve(made->sketch);
                for (const SolvedForce& force : solved.solutions.front().forces) {
                    const bool isOfAnAxis = force.vector.cwiseAbs().minCoeff() < 1e-9 * force.magnitude;
                    EXPECT_FALSE(isOfAnAxis && (subject == force.name + "_x" || subject == force.name + "_y"))
                        << made->code << ' ' << subject;
                }
                if (!line.substituted || one->slip.starts_with("radian-mode"))
                    continue;
                ++keyed;
                EXPECT_TRUE(
                    isKeyedTo(toText(*line.substituted, Minus::ascii), toText(*line.value, Minus::ascii)))
                    << made->code << ' ' << one->slip << '\n'
                    << toText(one->worked);
            }
    EXPECT_GT(keyed, 1000);
}

} // namespace TAILPOINT_FILE
} // namespace tailpoint::keyed
