// SPDX-License-Identifier: MIT
// Values as hands write them, and what is told of them: words for the sense, kilograms, minutes, bearings,
// two values in one cell, a negative size, an arrow that is drawn.
#include "tests/core/mark/marked.h"

namespace tailpoint::testing {
namespace TAILPOINT_FILE {

/// Python: 345 N at 30° and 220 N at -45° make 454.65782 N at 2.13483°.
Sketch two() {
    return sketch({force("P", 345, 30), force("Q", 220, -45)});
}

/// Python: A = 5 cos 155 / sin(145 - 155) = 26.096 pulls, B = -5 cos 145 / sin(145 - 155) = -23.587 pushes.
Sketch held() {
    return balanced({either(force("A", kToFind, 145)), either(force("B", kToFind, 155)), force("W", 5, 270)});
}

Force toBearing(std::string name, double magnitude, char from, double degrees, char toward) {
    Force one = force(std::move(name), magnitude, 0);
    one.direction.form = BearingForm{from, degrees, toward};
    return one;
}

TEST(MarkWritten, AWordSaysTheSenseWhereTheSignCounts) {
    MarkOptions options;
    options.signedSenses = true;
    for (const char* value :
         {"26.1 (T)", "26.1 T", "26.1 N pull", "26.1 N in tension", "pull 26.1", "26.1(T)"})
        EXPECT_EQ(verdictOf(marked(held(), {std::string("A = ") + value}, options), "A"), Verdict::right)
            << value;
    for (const char* value : {"23.6 (C)", "23.6 C", "23.6 N push", "-23.6 push", "23.6 N compression"})
        EXPECT_EQ(verdictOf(marked(held(), {std::string("B = ") + value}, options), "B"), Verdict::right)
            << value;
    EXPECT_EQ(verdictOf(marked(held(), {"B = 23.6 (T)"}, options), "B"), Verdict::slip);
    EXPECT_EQ(faultOf(held(), {"A = -26.1 N pull"}).code, AttemptFault::Code::unreadable);
    EXPECT_EQ(faultOf(two(), {"R = 455 N push"}).code, AttemptFault::Code::unreadable)
        << "its sense is sought";
    EXPECT_EQ(verdictOf(marked(two(), {"R = 455 N (T)"}), "R"), Verdict::right);
}

/// By hand: 454.65782 N / 9.80665 = 46.362 kg of weight.
TEST(MarkWritten, KilogramsAreAnotherUnit) {
    for (const char* value : {"R = 455 kg", "R = 46.4 kg", "R = 46.362 kilograms"}) {
        const Marking marking = marked(two(), {value, "theta_R = 2.1"});
        EXPECT_EQ(verdictOf(marking, "R"), Verdict::unit) << toText(marking);
        EXPECT_EQ(marking.points, 1);
    }
    EXPECT_EQ(verdictOf(marked(two(), {"R = 46.4 kgf"}), "R"), Verdict::right);
    for (const char* value : {"R = 0.0464 t", "R = 0.0464t", "R = 0.046362 tonnes"})
        EXPECT_EQ(verdictOf(marked(two(), {value}), "R"), Verdict::unit) << value;
    EXPECT_EQ(faultOf(two(), {"R = 0.0464 foot"}).code, AttemptFault::Code::unreadable);
}

/// By hand: 2.13483° is 2° 8.09′, or 2° 8′ 5.4″.
TEST(MarkWritten, AnAngleMayBeStatedInMinutes) {
    for (const char* value : {"2° 8′", "2°8'", "2° 8′ 5″", "2° 08′", "-357° 52′"})
        EXPECT_EQ(verdictOf(marked(two(), {std::string("theta_R = ") + value}), "theta_R"), Verdict::right)
            << value;
    EXPECT_NE(verdictOf(marked(two(), {"theta_R = 2° 30′"}), "theta_R"), Verdict::right);
    EXPECT_EQ(faultOf(two(), {"theta_R = 2° 80′"}).code, AttemptFault::Code::unreadable);
}

/// By hand: 300 N to N30E is at 60°, 400 N to S60E at -30°: at right angles, 500 N at 60° -
/// arctan(4/3), 6.870°, which is N83.1E.
TEST(MarkWritten, ABearingIsToldAsABearing) {
    const Sketch bearings = sketch({toBearing("P", 300, 'N', 30, 'E'), toBearing("Q", 400, 'S', 60, 'E')});
    const Marking marking = marked(bearings, {"R = 500", "theta_R = N70E"});
    EXPECT_EQ(quantity(marking, "theta_R").expectedText, "N83.1°E");
    for (const char* value : {"N83.1E", "N83.1°E", "N83° 8′E"})
        EXPECT_EQ(verdictOf(marked(bearings, {std::string("theta_R = ") + value}), "theta_R"), Verdict::right)
            << value;
}

TEST(MarkWritten, TheQuantitysOwnNameMayStandInFrontOfItsValue) {
    const Marker marker(two(), solve(two()));
    for (const char* value : {"R=455", " R = 455 N", "455"})
        EXPECT_TRUE(std::holds_alternative<GivenValue>(marker.read("R", value))) << value;
    EXPECT_TRUE(std::holds_alternative<GivenValue>(marker.read("theta_R", "θ_R = 2.1")));
    EXPECT_TRUE(std::holds_alternative<AttemptFault>(marker.read("R", "theta_R = 2.1")));
}

/// Python: P = 10.41905 with theta_Q = 130.11359, P = 2.68739 with 49.88641.
TEST(MarkWritten, TwoValuesMayHaveAWordBetweenThem) {
    const Sketch asked = sketch({force("P", kToFind, 0), force("Q", 6, kToFind)}, force("R", 8, 35));
    for (const char* between : {"; ", " or ", " and "}) {
        const Marking marking = marked(asked, {std::string("P = 10.4") + between + "2.69",
                                               std::string("theta_Q = 130.1") + between + "49.9"});
        EXPECT_EQ(marking.verdict, Verdict::right) << between;
        EXPECT_EQ(marking.quantities.size(), 4U);
    }
    EXPECT_EQ(Marker(asked, solve(asked)).answers(), 2U);
    EXPECT_EQ(Marker(two(), solve(two())).answers(), 1U);
}

/// 335 is the other diagonal's size; a minus in front of it is what is wrong first.
TEST(MarkWritten, ANegativeSizeAloneIsToldAsThat) {
    const Sketch raft = sketch({force("P", 340, 25), force("Q", 275, -40)});
    const Marking marking = marked(raft, {"R = -335"});
    EXPECT_EQ(verdictOf(marking, "R"), Verdict::other);
    EXPECT_TRUE(marking.slips.empty()) << toText(marking);
    ASSERT_EQ(quantity(marking, "R").remarks.size(), 1U);
    EXPECT_NE(toText(quantity(marking, "R").remarks[0]).find("never negative"), std::string::npos);
}

/// 454 for 454.66 has the three figures that are asked, 450 and 4.5e2 have two.
TEST(MarkWritten, ALastFigureThatIsOffIsNoMissingFigure) {
    const auto isLast = [](const char* value) {
        return quantity(marked(two(), {std::string("R = ") + value}), "R").isLastFigure;
    };
    EXPECT_TRUE(isLast("454"));
    EXPECT_FALSE(isLast("450"));
    EXPECT_FALSE(isLast("4.5e2"));
    EXPECT_FALSE(isLast("455")) << "right";
    EXPECT_TRUE(quantity(marked(two(), {"theta_R = 2.2"}), "theta_R").isLastFigure);
    EXPECT_FALSE(quantity(marked(two(), {"theta_R = 2"}), "theta_R").isLastFigure);
}

/// Drawn, a vector has no unit, no axis, no digits: a turn of the right one by as much as such slips make is
/// not right, and they are not named. Opposite to the right one is told.
TEST(MarkWritten, NoSlipOfWritingIsSoughtInAnArrow) {
    const Marker marker(two(), solve(two()));
    const auto at = [&](double size, double degrees) {
        const double radians = std::acos(-1.0) / 180 * degrees;
        return marker.mark({marker.drawn(kSumVector, size * std::cos(radians), size * std::sin(radians))});
    };
    for (const double degrees : {-2.13, 87.87, 92.13, 177.87, 0.0373, 2.372, 21.35}) {
        const Marking marking = at(454.66, degrees);
        for (const Finding& slip : marking.slips)
            EXPECT_NE(slip.place, SlipPlace::reporting) << degrees << ": " << slip.id;
        EXPECT_NE(verdictOf(marking, "theta_R"), Verdict::axis) << degrees;
        EXPECT_NE(verdictOf(marking, "theta_R"), Verdict::unit) << degrees;
    }
    for (const double size : {45.466, 46.362, 102.2, 4546.6, 544.66})
        EXPECT_NE(verdictOf(at(size, 2.13), "R"), Verdict::unit) << size;
    ASSERT_FALSE(at(454.66, 182.13).slips.empty());
    EXPECT_EQ(at(454.66, 182.13).slips.front().id, "opposite");
}

TEST(MarkWritten, WhatCantBeReadIsMarkedUnreadBesideTheRest) {
    const Marker marker(two(), solve(two()));
    auto read = marker.read({"theta_R = 2.1"});
    Attempt attempt = std::get<Attempt>(std::move(read));
    attempt.unread.push_back({magnitudeId(kSumVector), "much"});
    const Marking marking = marker.mark(attempt);
    EXPECT_EQ(marking.verdict, Verdict::unread);
    EXPECT_EQ(nameOf(marking.verdict), "unread");
    EXPECT_EQ(verdictOf(marking, "R"), Verdict::unread);
    EXPECT_EQ(quantity(marking, "R").givenText, "much");
    EXPECT_EQ(verdictOf(marking, "theta_R"), Verdict::right);
    EXPECT_EQ(marking.points, 1);
    EXPECT_NE(toText(marking).find("R = much: unread"), std::string::npos);
}

} // namespace TAILPOINT_FILE
} // namespace tailpoint::testing
