// SPDX-License-Identifier: MIT
// Values that a figure keeps to itself, by ids: of two that read alike the one that is meant.
#include "tests/core/figure/figure_support.h"

#include <gtest/gtest.h>

namespace tailpoint::testing {
namespace TAILPOINT_FILE {

using Strings = std::vector<std::string>;

const VectorId kP = forceVector(0), kQ = forceVector(1);

/// Two equal forces at 120 degrees: their resultant is as great as each of them, and all angles of the
/// triangle are 60 degrees.
Sketch alike() {
    return sketch({force("P", 100, 0), force("Q", 100, 120)});
}

Figure hiding(std::vector<QuantityId> hidden, ConstructionKind kind = ConstructionKind::parallelogram) {
    FigureOptions options;
    options.construction = kind;
    options.hidden = std::move(hidden);
    return drawn(alike(), options).figure;
}

Strings textsOf(const Figure& figure, const char* id) {
    return testing::textsOf(groupOf(figure, id));
}

TEST(HiddenValues, OfThreeForcesThatReadAlikeTheOneThatIsMeant) {
    const Figure whole = hiding({});
    ASSERT_EQ(textsOf(whole, "force-P"), Strings{"P = 100 N"});
    ASSERT_EQ(textsOf(whole, "sum"), Strings{"R = 100 N"});
    const Figure figure = hiding({magnitudeId(kSumVector)});
    EXPECT_EQ(textsOf(figure, "sum"), Strings{"R"});
    EXPECT_EQ(textsOf(figure, "force-P"), Strings{"P = 100 N"});
    EXPECT_EQ(textsOf(figure, "force-Q"), Strings{"Q = 100 N"});
}

TEST(HiddenValues, OfThreeAnglesThatReadAlikeTheOneThatIsMeant) {
    const Figure figure = hiding({oppositeId(kQ)}, ConstructionKind::triangle);
    EXPECT_EQ(textsOf(figure, "opposite-P"), Strings{"60.0°"});
    EXPECT_EQ(textsOf(figure, "opposite-R"), Strings{"60.0°"});
    EXPECT_EQ(textsOf(figure, "opposite-Q"), Strings{});
    EXPECT_NE(groupOf(figure, "opposite-Q"), nullptr) << "the arc stays";
}

TEST(HiddenValues, AnAngleBetweenTailsInEitherOrder) {
    for (const QuantityId& hidden : {betweenId(kP, kQ), betweenId(kQ, kP)})
        EXPECT_EQ(textsOf(hiding({hidden}), "angle-tails"), Strings{});
    EXPECT_EQ(textsOf(hiding({betweenId(kP, kQ, 1)}), "angle-tails"), Strings{"120.0°"})
        << "one of a parallelogram among several is another";
}

TEST(HiddenValues, ANamedAngleKeepsItsSymbol) {
    FigureOptions options;
    options.names = {{betweenId(kP, kQ), "φ"}};
    EXPECT_EQ(textsOf(drawn(alike(), options).figure, "angle-tails"), Strings{"φ = 120.0°"});
    options.hidden = {betweenId(kP, kQ)};
    EXPECT_EQ(textsOf(drawn(alike(), options).figure, "angle-tails"), Strings{"φ"});
}

/// P = 300 along +x and the line of Q at 150 degrees, R = 200: by the law of cosines Q² − 300√3·Q + 50000 =
/// 0, so Q = 392 or 128.
TEST(HiddenValues, OfTwoAnswersTheOneWhoseNumberTheIdHas) {
    const Sketch two = sketch({force("P", 300, 0), force("Q", kToFind, 150)}, force("R", 200, kToFind));
    const auto says = [&](const char* group, std::size_t solution, QuantityId hidden) {
        FigureOptions options;
        options.solution = solution;
        options.hidden = {hidden};
        return textsOf(drawn(two, options, 1000, 700).figure, group);
    };
    const Strings first{"Q = 392 N"}, second{"Q = 128 N"}, name{"Q"};
    const auto q = [](std::uint8_t answer) { return magnitudeId(kQ, answer); };
    ASSERT_EQ(says("force-Q", 0, magnitudeId(kP)), first);
    ASSERT_EQ(says("force-Q", 1, magnitudeId(kP)), second);
    ASSERT_EQ(says("other-force-Q", 1, magnitudeId(kP)), first);
    EXPECT_EQ(says("force-Q", 0, q(1)), name);
    EXPECT_EQ(says("force-Q", 0, q(2)), first);
    EXPECT_EQ(says("force-Q", 1, q(1)), second);
    EXPECT_EQ(says("force-Q", 1, q(2)), name);
    EXPECT_EQ(says("force-Q", 1, q(0)), name);
    EXPECT_EQ(says("other-force-Q", 1, q(1)), name);
    EXPECT_EQ(says("other-force-Q", 1, q(2)), first);
    EXPECT_EQ(says("other-force-Q", 1, q(0)), name);
}

} // namespace TAILPOINT_FILE
} // namespace tailpoint::testing
