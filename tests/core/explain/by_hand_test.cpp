// SPDX-License-Identifier: MIT
// What rounding by hand costs is told with numbers that follow from the line itself, and a slip's number is
// one that no rounding leads to.
#include "core/derive/printed.h"
#include "core/explain/explain.h"
#include "tests/support/sketches.h"

#include <gtest/gtest.h>

namespace tailpoint {
namespace TAILPOINT_FILE {

using namespace testing;

std::string told(const Sketch& sketch, Rounding rounding, Method method = Method::suited) {
    const Solved solved = solve(sketch);
    ExplainOptions options;
    options.handRounding = rounding == Rounding::hand;
    options.method = method;
    return toText(explain(sketch, solved, construct(sketch, solved), 0, options), Minus::ascii, 10'000);
}

bool contains(const std::string& text, const std::string& part) {
    return text.find(part) != std::string::npos;
}

/// Python: hypot(420 cos 2.5° + 415 cos 178.5°, 420 sin 2.5° − 415 sin 178.5°) = 8.8371, atan2 57.544°; by
/// hand hypot(5, 7.4) = 8.93 and 56.0°.
TEST(ByHand, SaysByHowManyTheLastPlaceHasMoved) {
    const std::string text =
        told(sketch({force("P", 420, 2.5), force("Q", 415, -178.5)}), Rounding::hand, Method::components);
    EXPECT_TRUE(contains(text,
                         "R = 8.93 N by hand, but with full values 8.8371 N, to three figures 8.84 N: the "
                         "rounding moved it by 0.0929 N, which changed it by 9 units in the last place."))
        << text;
    EXPECT_TRUE(contains(text, "moved it by 1.544°, which changed it by 15 units in the last place."))
        << text;
}

/// Python: 4.2 kip at bearing N30°E and 3.6 kip at S65°E make 5.76503 kip, which shows 5.77; by hand
/// from 5.36 and 2.12 kip 5.76.
TEST(ByHand, TellsTheFullValueWithTheFiguresThatDecideIt) {
    Sketch two = sketch({force("P", 4.2, 30), force("Q", 3.6, 115)});
    two.forceUnit = ForceUnit::kip;
    two.reference = {90, Sense::cw};
    const std::string text = told(two, Rounding::hand, Method::components);
    EXPECT_TRUE(contains(
        text, "R = 5.76 kip by hand, but with full values 5.76503 kip, to three figures 5.77 kip: "
              "the rounding moved it by 0.00503 kip, which changed it by one unit in the last place."))
        << text;
}

/// Half of 1.3°.
TEST(ByHand, HalfOfAnAngleHasOnePlaceMore) {
    const std::string text = told(sketch({force("P", 310, 17.5), force("Q", 295, 16.2)}), Rounding::hand);
    EXPECT_TRUE(contains(text, "β = 0.6° is less than half of φ, 0.65°.")) << text;
}

/// Half way between 17.5° and 16.2° is 16.85°, right is 16.87°: both within one unit of 16.9°.
TEST(Slip, IsNotToldWhereRoundingAloneLeadsToIt) {
    const Sketch nearly = sketch({force("P", 310, 17.5), force("Q", 295, 16.2)});
    for (const Rounding rounding : {Rounding::guarded, Rounding::hand}) {
        const std::string text = told(nearly, rounding);
        EXPECT_FALSE(contains(text, "16.8°")) << text;
        EXPECT_TRUE(contains(text, "The diagonal does not halve φ")) << text;
    }
    // Half way between 25° and −40° is −7.5°, right is −3.6°.
    EXPECT_TRUE(
        contains(told(sketch({force("P", 340, 25), force("Q", 275, -40)}), Rounding::guarded), "-7.5°"));
}

/// 340 cos 25° = 308.14, 275 cos 40° = 210.66; 308 + 211 = 519 and 144 − 177 = −33.
TEST(ByHand, RoundsWhatIsGivenThroughoutToo) {
    const Sketch given = sketch({force("P", 340, 25), force("Q", 275, -40)}, force("R", 520, -3.6));
    const std::string byHand = told(given, Rounding::hand), full = told(given, Rounding::guarded);
    EXPECT_TRUE(contains(byHand, "= 308 N\n") && contains(byHand, "= 308 N + 211 N\n")) << byHand;
    EXPECT_FALSE(contains(byHand, "308.1")) << byHand;
    EXPECT_TRUE(contains(full, "carried with four figures more")) << full;
    EXPECT_TRUE(contains(byHand, "the equation holds within rounding")) << byHand;
}

} // namespace TAILPOINT_FILE
} // namespace tailpoint
