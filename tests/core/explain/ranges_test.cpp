// SPDX-License-Identifier: MIT
#include "core/explain/ranges.h"

#include "core/construct/construct.h"
#include "tests/support/loose.h"
#include "tests/support/sketches.h"

#include <gtest/gtest.h>
#include <regex>

namespace tailpoint {
namespace TAILPOINT_FILE {

using testing::balanced;
using testing::either;
using testing::force;
using testing::kToFind;
using testing::loose;
using testing::sketch;

std::string told(std::optional<double> least, std::optional<double> greatest, const Sketch& on = sketch({})) {
    tolerance::Range range;
    range.least = least;
    range.greatest = greatest;
    return toText(rangeTold(range, on), Minus::ascii);
}

std::string arc(double from, double to, const Sketch& on = sketch({})) {
    tolerance::DirectionRange range;
    range.from = from;
    range.to = to;
    return toText(rangeTold(range, on), Minus::ascii);
}

// Rounded by hand: down at the least end, up at the greatest.
TEST(RangesTold, AreRoundedOutward) {
    EXPECT_EQ(told(509.747, 529.901), "509 to 530 N");
    EXPECT_EQ(told(508.01, 531.02), "508 to 532 N");
    EXPECT_EQ(told(9.997, 9.997001), "9.99 to 10.0 N") << "across a power of ten";
    EXPECT_EQ(told(99.96, 100.04), "99.9 to 101 N");
    EXPECT_EQ(told(-8.0579, 12.0567), "-8.06 to 12.1 N");
    EXPECT_EQ(told(-9.997, -9.993), "-10.0 to -9.99 N");
    EXPECT_EQ(told(0.0, 13.841), "0 to 13.9 N");
    EXPECT_EQ(told(335.0, 345.0), "335 to 345 N") << "an end that is shown in full stays";
    EXPECT_EQ(arc(-5.0506, -2.2263), "-5.1° to -2.2°");
    EXPECT_EQ(arc(31.985, 36.8699), "31.9° to 36.9°");
    EXPECT_EQ(arc(170, 190.01), "170.0° to 190.1°") << "unbroken through half a turn";
    EXPECT_EQ(arc(-0.04, 0.04), "-0.1° to 0.1°");
}

TEST(RangesTold, AnEndThatTheDigitsWouldHideIsNeverInside) {
    Sketch more = sketch({});
    more.moreAfterOne = true;
    EXPECT_EQ(told(1.99961, 2.004, more), "1.999 to 2.01 N");
    EXPECT_EQ(told(1.0004, 1.9991, more), "1.000 to 2.00 N");
    EXPECT_EQ(told(9.991, 9.997, more), "9.99 to 10.00 N");
}

/// One force of 100 ± 10 N at 30 degrees: no tolerance moves its resultant's direction, by hand.
TEST(RangesTold, ADirectionThatNothingMovesIsOneValue) {
    const Sketch one = sketch({loose(force("P", 100, 30), 10, 0)});
    const auto ranges = tolerance::rangesOf(one, solve(one));
    ASSERT_EQ(ranges.size(), 1U);
    EXPECT_EQ(toText(rangeTold(ranges[0].find(kSumIndex)->direction, one), Minus::ascii), "30.0°");
    EXPECT_TRUE(rangeRemarks(ranges[0], one).empty());
    EXPECT_TRUE(endsTold(ranges[0].find(kSumIndex)->direction, one).isOne);
}

TEST(RangesTold, SayWhatHasNoBound) {
    EXPECT_EQ(told(98.282, std::nullopt), "at least 98.2 N");
    EXPECT_EQ(told(std::nullopt, 3.001), "at most 3.01 N");
    EXPECT_EQ(told(std::nullopt, std::nullopt), "unbounded");
    tolerance::DirectionRange any;
    any.any = true;
    EXPECT_EQ(toText(rangeTold(any, sketch({}))), "any direction");
    tolerance::Range outer;
    outer.least = 1;
    outer.greatest = 2;
    outer.marked = true;
    EXPECT_EQ(toText(rangeTold(outer, sketch({}))), "1.00 to 2.00 N (an outer bound)");
    EXPECT_EQ(told(340.0, 340.0), "340 N") << "no range where nothing can vary";
}

struct Told {
    std::string answer, step;
};

Told solved(const Sketch& asked, std::size_t answer = 0) {
    const Solved solved = solve(asked);
    const Worked worked = explain(asked, solved, construct(asked, solved, answer), answer, {},
                                  tolerance::rangesOf(asked, solved));
    for (const Step& step : worked.steps)
        if (step.key == StepKey::answer)
            return {toText(worked.answer, Minus::ascii), toText(step, Minus::ascii, 10000)};
    return {};
}

void expectTold(const std::string& text, const std::string& part) {
    EXPECT_NE(text.find(part), std::string::npos) << part << "\n" << text;
}

// 509.747 to 529.901 N and -5.0506 to -2.2263 degrees: own dense grid over all inputs, ends included, then
// zoomed. R is least where P is least and the angle between P and Q greatest.
TEST(RangesTold, StandBesideWhatWasFound) {
    const Told raft = solved(sketch({loose(force("P", 340, 25), 5, 2), force("Q", 275, -40)}));
    const std::string answer =
        "R = 520 N, between 509 N and 530 N, 3.6° clockwise from +x, θ_R between -5.1° and -2.2°.";
    EXPECT_EQ(raft.answer, answer);
    expectTold(raft.step, answer);
    expectTold(raft.step, "R is least with P at 335 N and θ_P at 27.0°, greatest with P at 345 N and "
                          "θ_P at 23.0°.");
}

/// Where the symbol of something found has its number, and no range right behind it.
std::vector<std::string> bareIn(const std::string& text, const std::string& symbol, const std::string& unit) {
    std::vector<std::string> bare;
    const std::regex value("(?:^|[ (])" + symbol + " = [0-9.]+" + unit + "(.{0,12})");
    for (auto at = std::sregex_iterator(text.begin(), text.end(), value); at != std::sregex_iterator(); ++at)
        if (const std::string behind = (*at)[1]; !behind.starts_with(", between ") &&
                                                 !behind.starts_with(", at least ") &&
                                                 !behind.starts_with(" ("))
            bare.push_back(at->str());
    return bare;
}

TEST(RangesTold, NoSentenceHasAFoundValueWithoutItsRange) {
    struct Asked {
        Sketch sketch;
        std::vector<std::string> found;
    };
    const auto p = [] { return loose(force("P", 340, 25), 5, 2); };
    const std::vector<Asked> all{
        {sketch({p(), force("Q", 275, -40)}), {"R"}},
        {sketch({p(), force("Q", 275, -40), force("S", 120, 170)}), {"R"}},
        {sketch({p(), force("Q", kToFind, kToFind)}, force("R", 520, -4)), {"Q"}},
        {balanced({loose(force("W", 12, -90), 1, 0), force("A", kToFind, 30), force("B", kToFind, 140)}),
         {"A", "B"}},
        {sketch({loose(force("P", kToFind, 40), 0, 1), force("Q", 220, kToFind)}, force("R", 400, 10)),
         {"P′", "P″"}},
    };
    for (const Asked& asked : all) {
        const Solved solved = solve(asked.sketch);
        ASSERT_FALSE(solved.solutions.empty());
        const auto ranges = tolerance::rangesOf(asked.sketch, solved);
        for (const Method method : {Method::suited, Method::triangle, Method::components})
            for (std::size_t answer = 0; answer < solved.solutions.size(); ++answer) {
                ExplainOptions options;
                options.method = method;
                const Worked worked = explain(asked.sketch, solved, construct(asked.sketch, solved, answer),
                                              answer, options, ranges);
                std::string sentences = toText(worked.answer, Minus::ascii);
                for (const Step& step : worked.steps)
                    for (const auto* told : {&step.reasoning, &step.conclusion})
                        for (const Prose& prose : *told)
                            sentences += '\n' + toText(prose, Minus::ascii);
                for (const std::string& symbol : asked.found) {
                    EXPECT_NE(sentences.find(symbol + " = "), std::string::npos) << symbol << sentences;
                    for (const std::string& bare : bareIn(sentences, symbol, " N"))
                        ADD_FAILURE() << bare << "\n" << sentences;
                }
            }
    }
}

/// In the line that has computed it, too.
TEST(RangesTold, StandBehindTheLineThatFoundIt) {
    const Sketch raft = sketch({loose(force("P", 340, 25), 5, 2), force("Q", 275, -40)});
    const Solved solved = solve(raft);
    const Worked worked =
        explain(raft, solved, construct(raft, solved), 0, {}, tolerance::rangesOf(raft, solved));
    std::string results;
    for (const Step& step : worked.steps)
        results += fieldsOf(step).result + '\n';
    expectTold(results, "R = 519.86 N, to three figures 520 N, between 509 N and 530 N\n");
    expectTold(results, "-3.648°, to one decimal -3.6°, between -5.1° and -2.2°\n");
    expectTold(results, "R = 519.86 N, between 509 N and 530 N; θ_R = -3.648°, between -5.1° and -2.2°\n");
}

// 404.371 to 463.947 N and 235.749 to 281.363 N: own dense grid, as above.
TEST(RangesTold, EachOfTwoAnswersHasItsOwn) {
    Sketch two = sketch({loose(force("P", kToFind, 40), 0, 1), loose(force("Q", 220, kToFind), 5, 0)},
                        force("R", 400, 10));
    const Told first = solved(two, 0), second = solved(two, 1);
    EXPECT_NE(first.answer, second.answer);
    for (const char* range : {"between 404 N and 464 N", "between 235 N and 282 N"}) {
        expectTold(first.step, range);
        EXPECT_NE((first.answer + second.answer).find(range), std::string::npos) << range;
    }
}

// 12 / (2 sin a) where both legs rise by a; the least with both at 3.5 degrees is 12/(2 sin 3.5) = 98.28; at
// 0 degrees and below there is no answer.
TEST(RangesTold, SayThatAPartHasNoAnswer) {
    const Told flat = solved(balanced({force("W", 12, -90), loose(force("A", kToFind, 1.5), 0, 2),
                                       loose(force("B", kToFind, 178.5), 0, 2)}));
    expectTold(flat.answer, "A = 229 N, at least 98.2 N without an upper bound; B = 229 N, at least");
    expectTold(flat.step, "A part of the tolerances has no such answer");
}

TEST(RangesTold, NothingIsToldWithoutTolerances) {
    const Sketch plain = sketch({force("P", 340, 25), force("Q", 275, -40)});
    const Solved solved = solve(plain);
    const auto ranges = tolerance::rangesOf(plain, solved);
    ASSERT_EQ(ranges.size(), 1U) << "each of them one value";
    EXPECT_EQ(explain(plain, solved, construct(plain, solved), 0, {}, ranges),
              explain(plain, solved, construct(plain, solved)));
}

/// Ends by themselves, outward, for a table.
TEST(RangesTold, AsTwoEnds) {
    tolerance::Range range;
    range.least = 509.747;
    range.greatest = 529.901;
    const EndsTold both = endsTold(range, sketch({}));
    EXPECT_EQ(both.from + '|' + both.to, "509|530");
    EXPECT_FALSE(both.isOne);
    range.greatest.reset();
    EXPECT_EQ(endsTold(range, sketch({})).to, "");
    range.least = range.greatest = 340;
    EXPECT_TRUE(endsTold(range, sketch({})).isOne);
    EXPECT_EQ(endsTold(range, sketch({})).to, "340");
    tolerance::DirectionRange arc;
    arc.from = -5.0506;
    arc.to = -2.2263;
    EXPECT_EQ(endsTold(arc, sketch({})).from + '|' + endsTold(arc, sketch({})).to, "-5.1\u00B0|-2.2\u00B0");
    arc.any = true;
    EXPECT_EQ(endsTold(arc, sketch({})).from, "");
}
} // namespace TAILPOINT_FILE
} // namespace tailpoint
