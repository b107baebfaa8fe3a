// SPDX-License-Identifier: MIT
// Slips that lie near one another, and numbers too coarse to tell any. By Python: 340 N at 25° and 275 N at
// -40° make 519.86019 N at -3.64794°, components 518.80687 N and -33.07638 N.
#include "tests/core/mark/marked.h"

#include <algorithm>

namespace tailpoint::testing {
namespace TAILPOINT_FILE {

Sketch raft() {
    return sketch({force("P", 340, 25), force("Q", 275, -40)});
}
Sketch raftFrom(double axis) {
    Sketch made = sketch({force("P", 340, 25 - axis), force("Q", 275, -40 - axis)});
    made.reference = {axis, Sense::ccw};
    return made;
}
/// Python: 278.47623 N at 22.42425°.
Sketch five() {
    return sketch({force("P", 340, 25), force("Q", 275, -40), force("S", 160, 118), force("T", 210, -152.5),
                   force("U", 95, 90)});
}

std::string firstOf(const Marking& marking) {
    return marking.slips.empty() ? "" : marking.slips.front().id;
}
bool isNamed(const Marking& marking, const std::string& id) {
    return std::any_of(marking.slips.begin(), marking.slips.end(), [&](const Finding& one) {
        return one.id == id || std::find(one.also.begin(), one.also.end(), id) != one.also.end();
    });
}
Marking raftAt(const std::string& direction) {
    return marked(raft(), {"R = 520", "theta_R = " + direction});
}

TEST(MarkToldApart, AnAngleCoarserThanWholeDegreesSaysNothingUnlessItsValueIsRight) {
    for (const char* angle : {"1e18", "1e2", "-1e2", "1000000000000000001", "9e1", "-0e2"}) {
        const Marking marking = raftAt(angle);
        EXPECT_EQ(verdictOf(marking, "theta_R"), Verdict::other) << angle << "\n" << toText(marking);
        EXPECT_TRUE(marking.slips.empty()) << angle;
    }
    EXPECT_EQ(verdictOf(raftAt("-4"), "theta_R"), Verdict::rounded);
    EXPECT_EQ(verdictOf(raftAt("4"), "theta_R"), Verdict::axis); // whole degrees tell
    // by hand: two forces of 100 N at 0° and 20° pull at 10°
    EXPECT_EQ(
        verdictOf(marked(sketch({force("P", 100, 0), force("Q", 100, 20)}), {"theta_R = 1e1"}), "theta_R"),
        Verdict::right);
    EXPECT_EQ(verdictOf(raftAt("359999996.352"), "theta_R"), Verdict::right); // by hand: -3.648 + 360 · 10⁶
}

TEST(MarkToldApart, ANoughtOfThousandsIsNoSlip) {
    for (const char* size : {"0e3", "0e2"}) {
        const Marking marking = marked(raft(), {std::string("R = ") + size});
        EXPECT_EQ(verdictOf(marking, "R"), Verdict::other) << size;
        EXPECT_TRUE(marking.slips.empty()) << size;
    }
}

TEST(MarkToldApart, APlainNoughtTellsTheSlipThatLeavesNothing) {
    // 7.5 kN at 34° along 76° and 0°. By Python: P = 7.5 sin 34° / sin 76° = 4.32234, Q = 7.5 sin 42° / sin
    // 76° = 5.17211; with the direction of Q, 0°, in place of the triangle's 34° P is nothing.
    const Sketch deck = sketch({force("P", {}, 76), force("Q", {}, 0)}, force("R", 7.5, 34));
    const Marking marking = marked(deck, {"P = 0", "Q = 5.17"});
    EXPECT_EQ(verdictOf(marking, "P"), Verdict::slip) << toText(marking);
    EXPECT_EQ(firstOf(marking), "axis-angle-in-triangle");
    EXPECT_TRUE(marked(deck, {"P = 0e2", "Q = 5.17"}).slips.empty());
    EXPECT_TRUE(marked(deck, {"P = 4.3", "Q = 0"}).slips.empty()); // no slip leaves nothing of Q
}

TEST(MarkToldApart, ANoughtIsNeitherInAnotherUnitNorADecimalPointMoved) {
    // by hand: -3.648° are -0.0637 rad; a tenth of it is -0.365
    for (const char* angle : {"0", "0.0", "along +x", "0.1", "-0.1"}) {
        const Marking marking = raftAt(angle);
        EXPECT_NE(verdictOf(marking, "theta_R"), Verdict::unit) << angle;
        for (const char* id : {"radians-for-degrees", "decimal-point"})
            EXPECT_FALSE(isNamed(marking, id)) << angle << "\n" << toText(marking);
    }
    for (const char* angle : {"0", "0.0", "along +x"})
        for (const char* id : {"radian-mode-once", "inverse-forgotten"})
            EXPECT_FALSE(isNamed(raftAt(angle), id)) << angle;
    for (const char* angle : {"-0.064", "-0.0637", "-0.06", "-0.0628"}) // the last of 3.6°
        EXPECT_EQ(firstOf(raftAt(angle)), "radians-for-degrees") << angle;
    for (const char* angle : {"-0.36", "-0.4", "-36", "-0.036"})
        EXPECT_TRUE(isNamed(raftAt(angle), "decimal-point")) << angle << "\n" << toText(raftAt(angle));
}

TEST(MarkToldApart, ASheetInRadiansTellsDegreesByTheirDigits) {
    Sketch asked = sketch({force("P", 340, 0.4), force("Q", 275, -0.7)});
    asked.angleUnit = AngleUnit::rad;
    // Python: the direction is -0.08529 rad, or -4.88680°
    const Marking marking = marked(asked, {"theta_R = -4.9"});
    EXPECT_EQ(verdictOf(marking, "theta_R"), Verdict::unit) << toText(marking);
    EXPECT_EQ(verdictOf(marked(asked, {"theta_R = -1e1"}), "theta_R"), Verdict::other);
}

TEST(MarkToldApart, TheRightDirectionCountsFromAnyOtherAxisButNeverReversed) {
    // by hand from -3.648: plus and minus 90, 90 and -90 and 180 less it
    for (const char* angle : {"86.4", "-93.6", "93.6", "-86.4", "183.6", "-176.4", "3.6"})
        EXPECT_EQ(verdictOf(raftAt(angle), "theta_R"), Verdict::axis) << angle << "\n"
                                                                      << toText(raftAt(angle));
    for (const char* angle : {"176.4", "-183.6"})
        EXPECT_EQ(firstOf(raftAt(angle)), "opposite") << angle;
    EXPECT_EQ(verdictOf(raftAt("176.4"), "theta_R"), Verdict::slip);
    EXPECT_EQ(verdictOf(marked(five(), {"theta_R = 112.4"}), "theta_R"), Verdict::axis);
    // Python: 180 N at 62° and 240 N at -71° pull at -22.68788°
    EXPECT_EQ(verdictOf(marked(sketch({force("P", 180, 62), force("Q", 240, -71)}), {"theta_R = -67.3"}),
                        "theta_R"),
              Verdict::axis);
}

TEST(MarkToldApart, ASheetOfAnotherAxisHasTheAxesOfXAndYBesides) {
    for (const double axis : {90.0, 35.0}) {
        // by hand: counted from +x both ways, from +y and from -y; what is right is -3.648 less the axis
        for (const char* angle : {"-3.6", "3.6", "-93.6", "93.6", "86.4"}) {
            if (axis == 90 && std::string(angle) == "-93.6")
                continue; // that is right
            if (axis == 90 && std::string(angle) == "86.4")
                continue; // and that is the arrow reversed
            const Marking marking = marked(raftFrom(axis), {std::string("theta_R = ") + angle});
            EXPECT_EQ(verdictOf(marking, "theta_R"), Verdict::axis) << axis << ": " << angle << "\n"
                                                                    << toText(marking);
        }
    }
    EXPECT_EQ(firstOf(marked(raftFrom(90), {"theta_R = 86.4"})), "opposite");
    EXPECT_EQ(firstOf(marked(raftFrom(35), {"theta_R = 141.4"})), "opposite"); // -38.648 + 180
}

TEST(MarkToldApart, SquareToTheAxisTheReversedArrowIsNoTurningSense) {
    // by hand: the smallest force is 340 sin 25° = 143.69 at -90°, R = 340 cos 25° = 308.14
    const Sketch least =
        smallest(sketch({force("P", 340, 25), force("Q", kToFind, kToFind)}, force("R", kToFind, 0)), "Q");
    const Marking marking = marked(least, {"Q = 144", "R = 308", "theta_Q = 90"});
    EXPECT_EQ(verdictOf(marking, "theta_Q"), Verdict::slip) << toText(marking);
    EXPECT_EQ(firstOf(marking), "opposite");
    EXPECT_FALSE(isNamed(marking, "wrong-turn"));
}

TEST(MarkToldApart, NeitherAMovedPointNorAnotherUnitIsWidenedByRounding) {
    // by hand: 400 at 10° of P at 40° and 260: the law of sines with the other side's angle gives
    // 260 sin 129.715° / sin 30° = 400.00; in pounds 180.27768 would be 397.444
    const Sketch two = sketch({force("P", kToFind, 40), force("Q", 260, kToFind)}, force("R", 400, 10));
    const Marking marking = marked(two, {"P = 400"});
    EXPECT_EQ(firstOf(marking), "sides-mismatched") << toText(marking);
    EXPECT_EQ(verdictOf(marking, "P"), Verdict::slip);
    EXPECT_FALSE(isNamed(marking, "unit-confused"));
    EXPECT_EQ(firstOf(marked(two, {"P = 397"})), "unit-confused");
    // by hand: 519.86 / 10 = 51.986
    EXPECT_EQ(firstOf(marked(raft(), {"R = 52.0"})), "decimal-point");
    EXPECT_FALSE(isNamed(marked(raft(), {"R = 52.1"}), "decimal-point"));
    // Python: 100 at 20° and 60 at 50° pull at 31.16764°, ten times 311.6764°, which is no -48.3°
    const Sketch up = sketch({force("P", 100, 20), force("Q", 60, 50)});
    EXPECT_FALSE(isNamed(marked(up, {"theta_R = -48.3"}), "decimal-point"));
    EXPECT_TRUE(isNamed(marked(up, {"theta_R = 312"}), "decimal-point"));
}

TEST(MarkToldApart, AnAngleKeyedInRadiansGivesItsOwnNumberAndNoNeighbours) {
    // Python: √(340² + 275² - 2 · 340 · 275 cos(115 rad)) = 502.1468
    const Marking near = marked(raft(), {"R = 515", "theta_R = -3.6"});
    EXPECT_FALSE(isNamed(near, "radian-mode-once")) << toText(near);
    const Marking exact = marked(raft(), {"R = 502.15", "theta_R = -3.6"});
    ASSERT_TRUE(isNamed(exact, "radian-mode-once")) << toText(exact);
    EXPECT_NE(toText(exact).find("cos(115 rad)"), std::string::npos) << toText(exact);
    EXPECT_EQ(toText(exact).find("180/π"), std::string::npos) << toText(exact);
}

TEST(MarkToldApart, OnASheetInGonAnAngleKeyedInDegreesIsShownAsItWasKeyed) {
    // Python: 2.4 cos 30° + 1.8 cos 50°, 2.4 sin 30° - 1.8 sin 50° for 30 and -50 gon: 3.24042 at -3.16449
    Sketch mooring = sketch({force("P", 2.4, 30), force("Q", 1.8, -50)});
    mooring.angleUnit = AngleUnit::gon;
    mooring.forceUnit = ForceUnit::kN;
    const Marking marking = marked(mooring, {"R = 3.240", "theta_R = -3.164"});
    EXPECT_EQ(firstOf(marking), "degree-mode") << toText(marking);
    EXPECT_NE(toText(marking).find("P_x = P cos θ_P = (2.40 kN) cos 30° = 2.0785 kN"), std::string::npos)
        << toText(marking);
}

TEST(MarkToldApart, OfSlipsThatFitAlikeTheNearerStandsInFront) {
    // Python: U twice gives 326.73741 at 38.01522, T_y left out 327.95262 at 38.28599
    const Marking marking = marked(five(), {"R = 327", "theta_R = 38.0"});
    EXPECT_EQ(firstOf(marking), "force-counted-twice") << toText(marking);
    ASSERT_GE(marking.slips.size(), 2U);
    EXPECT_EQ(marking.slips[1].id, "component-left-out");
    // by their own digits both are as near, and the commoner one stands in front
    EXPECT_EQ(firstOf(marked(five(), {"R = 327.95", "theta_R = 38.29"})), "component-left-out");
}

TEST(MarkToldApart, TheAngleBetweenTheTailsTakenForTheTrianglesIsTheSupplement) {
    // Python: with 65° in the law of cosines 334.95580, beta = arcsin(275 sin 65° / R) = 48.08033 and
    // 25 less it is -23.08033
    const Marking marking = marked(raft(), {"gamma = 65", "beta = 48.1", "R = 335", "theta_R = -23.1"});
    ASSERT_FALSE(marking.slips.empty());
    EXPECT_EQ(firstOf(marking), "supplement-in-cosines") << toText(marking);
    EXPECT_TRUE(marking.slips.front().isStrong);
    EXPECT_EQ(marking.slips.front().explains.size(), 4U);
    ASSERT_FALSE(marking.slips.front().lines.empty());
    EXPECT_EQ(toText(marking.slips.front().lines.front()),
              "γ = φ = 65.0°; right: γ = 180° - φ = 180° - 65.0° = 115.0°");
}

TEST(MarkToldApart, WithoutTheTrianglesAngleTheLawOfCosinesItselfIsShown) {
    const Marking marking = marked(raft(), {"R = 335"});
    EXPECT_EQ(firstOf(marking), "supplement-in-cosines");
    EXPECT_NE(toText(marking).find("334.96 N"), std::string::npos) << toText(marking);
}

TEST(MarkToldApart, ASumOfComponentsMayHaveTheWrongSign) {
    const Marking marking = marked(raft(), {"R_x = 519", "R_y = 33.1", "R = 520", "theta_R = 3.6"});
    EXPECT_EQ(firstOf(marking), "component-sign") << toText(marking);
    EXPECT_EQ(verdictOf(marking, "R_y"), Verdict::slip);
    EXPECT_EQ(verdictOf(marking, "theta_R"), Verdict::follows);
}

TEST(MarkToldApart, TwoTurningSensesInOneTextAreUnreadable) {
    for (const char* text :
         {"3.6 cw ccw", "3.6 clockwise counter-clockwise from +x", "3.6 above below +x", "3.6 cw above +x"})
        EXPECT_EQ(faultOf(raft(), {std::string("theta_R = ") + text}).code, AttemptFault::Code::unreadable)
            << text;
    EXPECT_EQ(verdictOf(raftAt("3.6 cw below +x"), "theta_R"), Verdict::right); // twice the same
}

TEST(MarkToldApart, AFactorOfUnitsIsToldInFiveFigures) {
    // by hand: 519.86019 · 4.4482216 = 2312.45, 519.86019 / 9.80665 = 53.0110
    EXPECT_NE(toText(marked(raft(), {"R = 2312.45"})).find("R·4.4482 "), std::string::npos);
    EXPECT_NE(toText(marked(raft(), {"R = 53.011"})).find("R/9.8067 "), std::string::npos)
        << toText(marked(raft(), {"R = 53.011"}));
}

/// Python: 4.2 kip at N30E and 3.6 kip at S65E make 5.765032 kip, or 25.644138 kN, 5765.03 lbf, 2614.97 kgf.
Sketch barge() {
    Sketch made = sketch({bearing("P", 4.2, 'N', 30, 'E'), bearing("Q", 3.6, 'S', 65, 'E')});
    made.forceUnit = ForceUnit::kip;
    return made;
}

TEST(MarkToldApart, AValueInAnotherUnitIsRightAtTheFiguresOfThatUnit) {
    for (const char* size :
         {"25.6 kN", "25.644 kN", "5770 lbf", "5765 lbf", "2610 kgf", "2615 kgf", "25600 N"})
        EXPECT_EQ(verdictOf(marked(barge(), {std::string("R = ") + size}), "R"), Verdict::right) << size;
    for (const char* size : {"26 kN", "25.7 kN"}) // two figures; 5.77 kip converted
        EXPECT_EQ(verdictOf(marked(barge(), {std::string("R = ") + size}), "R"), Verdict::rounded) << size;
    EXPECT_FALSE(marked(barge(), {"R = 27 kN", "theta_R = 68.5"}).isRight());
}

TEST(MarkToldApart, TheShownValueConvertedTheWrongWayIsAMatterOfTheUnit) {
    // by hand: 520 · 4.44822 = 2313.08 (the full 519.86019 would be 2312.45), 520 / 9.80665 = 53.025
    for (const char* size : {"2313", "2312", "2310", "53.025"})
        EXPECT_EQ(verdictOf(marked(raft(), {std::string("R = ") + size}), "R"), Verdict::unit) << size;
    EXPECT_EQ(verdictOf(marked(raft(), {"R = 2315"}), "R"), Verdict::other);
    EXPECT_NE(toText(marked(raft(), {"R = 2313.1"})).find("(520 N)·4.4482 = 2313.1 N"), std::string::npos)
        << toText(marked(raft(), {"R = 2313.1"}));
}

TEST(MarkToldApart, TheRightNumberWithAnyOtherUnitWrittenIsAMatterOfTheUnit) {
    for (const char* size : {"520 kN", "520 lbf", "520 kip", "520 kgf"})
        EXPECT_EQ(verdictOf(marked(raft(), {std::string("R = ") + size}), "R"), Verdict::unit) << size;
    for (const char* size : {"5.77 N", "5.77 kN", "5.77 lbf", "5.77 kgf", "25.6", "2610"})
        EXPECT_EQ(verdictOf(marked(barge(), {std::string("R = ") + size}), "R"), Verdict::unit) << size;
}

TEST(MarkToldApart, OneNumberHasAtMostThreeFurtherReadings) {
    const Sketch least =
        smallest(sketch({force("P", 340, 25), force("Q", kToFind, kToFind)}, force("R", kToFind, 0)), "Q");
    for (const Finding& finding : marked(least, {"Q = 144", "R = 308", "theta_Q = 90"}).slips) {
        EXPECT_GT(finding.also.size(), 3U);
        EXPECT_EQ(finding.readings.size(), 3U);
    }
}

} // namespace TAILPOINT_FILE
} // namespace tailpoint::testing
