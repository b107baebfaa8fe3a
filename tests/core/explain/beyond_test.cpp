// SPDX-License-Identifier: MIT
// What is told beyond an answer: how small or great a vector can be where a value too few is given, and what
// would hold at a point that a given sense rules out. Both against vectors put together here.
#include "core/explain/explain.h"
#include "tests/core/explain/questions.h"

#include <algorithm>
#include <cmath>
#include <gtest/gtest.h>
#include <numbers>
#include <regex>

namespace tailpoint {
namespace TAILPOINT_FILE {

using namespace testing;

constexpr std::uint64_t kSeed = 20261201;
constexpr int kCases = 400;
constexpr double kRadians = std::numbers::pi / 180;

Eigen::Vector2d polar(double size, double degrees) {
    return size * Eigen::Vector2d(std::cos(degrees * kRadians), std::sin(degrees * kRadians));
}

Worked worked(const Sketch& sketch, const ExplainOptions& options = {}) {
    const Solved solved = solve(sketch);
    return explain(sketch, solved, construct(sketch, solved), 0, options);
}

std::string estimateOf(const Sketch& sketch, const ExplainOptions& options = {}) {
    for (const Step& step : worked(sketch, options).steps)
        if (step.key == StepKey::estimate)
            return toText(step, Minus::ascii, 10'000);
    return {};
}

/// The last number before or behind the sign.
double lastOf(const std::string& text, const std::regex& pattern) {
    double found = std::numeric_limits<double>::quiet_NaN();
    for (std::sregex_iterator i(text.begin(), text.end(), pattern), end; i != end; ++i)
        found = std::stod((*i)[1]);
    return found;
}

const std::regex kAtLeast("(?:≥ )([0-9.]+) N"), kFrom("([0-9.]+) N ≤"), kUpTo("≤ ([0-9.]+) N");

/// P on its line, Q to find whole; `makes`: P and Q make R, else P and the known K hold or make R.
struct Question {
    double known, at, line;
    bool makes, isEither, atRest;

    Sketch sketch() const {
        Force p = force("P", kToFind, line);
        p.lineOfActionOnly = isEither;
        const Force q = force("Q", kToFind, kToFind), k = force("K", known, at);
        if (makes)
            return testing::sketch({p, q}, force("R", known, at));
        return atRest ? balanced({k, p, q}) : testing::sketch({k, p}, force("Q", kToFind, kToFind));
    }
    /// Every P in turn, 0.1 % of the known force apart.
    double least() const {
        double least = known;
        for (double size = isEither ? -3 * known : 0; size <= 3 * known; size += known / 1000) {
            const Eigen::Vector2d p = polar(size, line), k = polar(known, at);
            least = std::min(least, (makes ? Eigen::Vector2d(k - p) : Eigen::Vector2d(k + p)).norm());
        }
        return least;
    }
};

TEST(OneValueTooFew, TheLeastIsReachedAndNotUndercut) {
    Dice dice(kSeed);
    int told = 0;
    for (int i = 0; i < kCases; ++i) {
        Question q{std::round(dice.between(20, 900)),
                   std::round(dice.between(-1800, 1800)) / 10,
                   std::round(dice.between(-1800, 1800)) / 10,
                   dice.toss(),
                   dice.toss(),
                   dice.toss()};
        const std::string text = estimateOf(q.sketch());
        const double least = lastOf(text, kAtLeast);
        if (std::isnan(least)) { // along the line of K itself
            EXPECT_LT(std::abs(std::sin((q.at - q.line) * kRadians)), 1e-9) << text;
            continue;
        }
        EXPECT_NEAR(least, q.least(), 2e-3 * q.known) << "seed " << kSeed << ", case " << i << "\n" << text;
        ++told;
    }
    EXPECT_GT(told, kCases * 9 / 10);
}

TEST(OneValueTooFew, AForceOfKnownSizeBoundsTheOtherFromBothSides) {
    // by hand: 400 − 260 and 400 + 260
    const Sketch open = sketch({force("P", kToFind, kToFind), force("Q", 260, kToFind)}, force("R", 400, 10));
    const std::string text = estimateOf(open);
    EXPECT_DOUBLE_EQ(lastOf(text, kFrom), 140) << text;
    EXPECT_DOUBLE_EQ(lastOf(text, kUpTo), 660) << text;
}

TEST(OneValueTooFew, TheSampleIsToldWithItsLine) {
    // by hand: 400 sin 15° = 103.5276
    const std::string text =
        estimateOf(sketch({force("P", kToFind, 25), force("Q", kToFind, kToFind)}, force("R", 400, 10)));
    EXPECT_NE(text.find("Q ≥ (400 N) sin 15.0°"), std::string::npos) << text;
    EXPECT_NE(text.find("Q ≥ 103.53 N"), std::string::npos) << text;
}

TEST(OneValueTooFew, WhereNothingIsBoundedThatIsSaid) {
    const Force p = force("P", kToFind, 40), q = force("Q", kToFind, 100), s = force("S", kToFind, -80);
    for (const Sketch& open : {sketch({p, force("Q", kToFind, kToFind)}), balanced({p, q, s})})
        EXPECT_NE(estimateOf(open).find("No estimate can be made"), std::string::npos);
    const Sketch several =
        sketch({p, force("Q", kToFind, kToFind), force("S", 100, 30)}, force("R", 400, 10));
    EXPECT_NE(estimateOf(several).find("Draw what is known tip to tail"), std::string::npos);
}

/// By hand a bound is the sum of what was typed: 700 + 340 + 275 = 1315, and 4.20 − 3.60 = 0.600.
TEST(ByHand, ABoundKeepsItsOwnDigits) {
    ExplainOptions byHand;
    byHand.handRounding = true;
    const std::string three = estimateOf(
        sketch({force("P", 340, 25), force("Q", 275, -40), force("S", kToFind, kToFind)}, force("R", 700, 0)),
        byHand);
    EXPECT_NE(three.find("S ≤ 1315 N"), std::string::npos) << three;
    const std::string two = estimateOf(sketch({force("P", 4.2, 60), force("Q", 3.6, -25)}), byHand);
    EXPECT_NE(two.find("0.600 N ≤ R ≤ 7.80 N"), std::string::npos) << two;
}

/// What a direction comes to in a step; none: not told there.
std::optional<double> wayTold(const Worked& worked, StepKey key, VectorId vector) {
    std::optional<double> way;
    for (const Step& step : worked.steps)
        for (const Working& working : step.workings)
            if (step.key == key && working.subject && working.value &&
                working.subject->id.what == What::direction && working.subject->id.of == vector)
                way = working.value->value;
    return way;
}

TEST(RuledOut, TheDirectionsThereAreToldByEitherWay) {
    Dice dice(kSeed);
    int told = 0;
    for (int i = 0; i < kCases; ++i) {
        Sketch question = sheet(AngleUnit::deg, dice.toss() ? 0 : 90, dice.toss() ? Sense::ccw : Sense::cw);
        const double line = std::round(dice.between(-1800, 1800)) / 10,
                     size = std::round(dice.between(20, 900));
        const Force k =
            force("K", std::round(size * dice.between(0.2, 0.95)), std::round(dice.between(-180, 180)));
        question.forces = {force("P", kToFind, line), force("Q", size, kToFind)};
        question.sum = k;
        if (dice.toss()) {
            question.forces.push_back(k);
            question.sum = force("R", 0, kToFind);
        }
        const Solved solved = solve(question);
        if (solved.solutions.size() != 1 || solved.reversed.size() != 1 || solved.tangent)
            continue;
        for (const Method method : {Method::triangle, Method::components}) {
            ExplainOptions options;
            options.method = method;
            const Worked text = worked(question, options);
            for (const std::size_t force : {0U, 1U}) {
                const auto way = wayTold(text, StepKey::quadratic, forceVector(force));
                ASSERT_TRUE(way) << "case " << i << " by " << nameOf(method) << "\n"
                                 << toText(text, Minus::ascii, 1000);
                EXPECT_NEAR(normalized(*way - *solved.reversed[0].forces[force].direction, AngleUnit::deg), 0,
                            0.05)
                    << "seed " << kSeed << ", case " << i << " by " << nameOf(method) << "\n"
                    << toText(text, Minus::ascii, 1000);
            }
            ++told;
        }
    }
    EXPECT_GT(told, kCases);
}

TEST(RuledOut, WhereBothPointsAreLostTheDirectionsThereAreTold) {
    Dice dice(kSeed);
    int told = 0;
    for (int i = 0; i < 4 * kCases; ++i) {
        Sketch question = sheet(AngleUnit::deg, dice.toss() ? 0 : 90, dice.toss() ? Sense::ccw : Sense::cw);
        const double size = std::round(dice.between(20, 900));
        const Force k =
            force("K", std::round(size * dice.between(1.05, 2)), std::round(dice.between(-180, 180)));
        question.forces = {force("P", kToFind, std::round(dice.between(-180, 180))),
                           force("Q", size, kToFind)};
        question.sum = k;
        if (dice.toss()) {
            question.forces.push_back(k);
            question.sum = force("R", 0, kToFind);
        }
        const Solved solved = solve(question);
        if (!solved.solutions.empty() || solved.reversed.size() != 2)
            continue;
        std::vector<double> ways, wanted;
        for (const Step& step : worked(question).steps)
            for (const Working& working : step.workings)
                if (step.key == StepKey::reach && working.subject &&
                    working.subject->id.what == What::direction)
                    ways.push_back(working.value->value);
        for (const Solution& lost : solved.reversed)
            wanted.push_back(*lost.forces[1].direction);
        ASSERT_EQ(ways.size(), 2U) << "case " << i;
        std::sort(ways.begin(), ways.end());
        std::sort(wanted.begin(), wanted.end());
        for (const std::size_t point : {0U, 1U})
            EXPECT_NEAR(ways[point], wanted[point], 0.05) << "seed " << kSeed << ", case " << i;
        ++told;
    }
    EXPECT_GT(told, kCases / 4);
}

TEST(AllGiven, TheMagnitudeOfWhatTheForcesMakeHasItsLine) {
    // Python: hypot(340 cos 25° + 275 cos 40°, 340 sin 25° − 275 sin 40°) = 519.8602
    const std::string text =
        toText(worked(sketch({force("P", 340, 25), force("Q", 275, -40)}, force("R", 520, -3.6))),
               Minus::ascii, 10'000);
    const auto line = text.find("|ΣF| = √(");
    ASSERT_NE(line, std::string::npos) << text;
    EXPECT_NEAR(lastOf(text.substr(line, text.find("Can rounding") - line), std::regex("= ([0-9.]+) N\n")),
                519.8602, 0.001);
    EXPECT_LT(text.find("Δ = √("), text.find("Δ would come out")) << "told before it is used";
}

} // namespace TAILPOINT_FILE
} // namespace tailpoint
